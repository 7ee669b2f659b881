import { type HonestInput, honestDigits } from "./honestDigits.ts";
import "./Estimate.css";

export interface EstimateProps extends HonestInput {
  /** "stop", "mm"; spoken and shown after the figures. */
  readonly unit?: string;
}

/** A measured or computed number with its ± (nine in ten), in honest digits; “give or take” for the ear. */
export function Estimate({ unit, ...input }: EstimateProps) {
  const { value, plusMinus } = honestDigits(input);
  const after = unit === undefined ? "" : ` ${unit}`;
  return (
    <span className="Kit-Estimate">
      <b>{value}</b>{" "}
      <span aria-hidden="true">
        ±{plusMinus}
        {after}
      </span>
      <span className="unseen">
        give or take {plusMinus}
        {after}
      </span>
    </span>
  );
}
