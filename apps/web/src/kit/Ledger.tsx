import { type ReactNode, useId, useState } from "react";
import { Bracket } from "./Bracket.tsx";
import { honestDigits } from "./honestDigits.ts";
import "./Ledger.css";

/** A sum read from top to bottom: lines, and at the end a `LedgerSum`. */
export function Ledger({ caption, children }: { readonly caption: string; readonly children: ReactNode }) {
  return (
    <table className="Kit-Ledger">
      <caption className="unseen">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">from the reading to the cap</th>
          <th scope="col" className="Kit-Ledger-number">
            stops
          </th>
          <th scope="col" className="Kit-Ledger-doubt">
            nine in ten
          </th>
        </tr>
      </thead>
      <tbody>{children}</tbody>
    </table>
  );
}

export interface LedgerLineProps {
  /** What was done: “Extension 248 mm”. */
  readonly name: string;
  /** What was known: “board to glass; subject at 1.37 m”. */
  readonly source?: ReactNode;
  readonly stops: number;
  /** One standard deviation in stops. */
  readonly sd: number;
  /** Already in the exposure index: says so in place of a bracket. */
  readonly inTheEi?: boolean;
  /** From `bracketScale`. */
  readonly perStop: number;
  /** The reason: three sentences at most, the sum with its numbers, what would make it surer. */
  readonly children?: ReactNode;
  readonly openAtFirst?: boolean;
}

/** One line of a ledger; the whole of it opens its reason. */
export function LedgerLine(props: LedgerLineProps) {
  const { name, source, stops, sd, inTheEi, perStop, children, openAtFirst = false } = props;
  const [open, setOpen] = useState(openAtFirst);
  const id = useId();
  const words = (
    <>
      <b>{name}</b>
      {source !== undefined && <span>{source}</span>}
    </>
  );
  return (
    <>
      <tr className="Kit-Ledger-line" data-open={open || undefined}>
        <th scope="row">
          {children === undefined ? (
            words
          ) : (
            <button
              type="button"
              aria-expanded={open}
              aria-controls={open ? id : undefined}
              onClick={() => setOpen(!open)}
            >
              {words}
            </button>
          )}
        </th>
        <td className="Kit-Ledger-number">
          <Stops stops={stops} sd={inTheEi ? 0 : sd} />
        </td>
        <td className="Kit-Ledger-doubt">
          {inTheEi ? <span className="soft">in the EI</span> : <Doubt sd={sd} perStop={perStop} />}
        </td>
      </tr>
      {open && (
        <tr className="Kit-Ledger-reason" id={id}>
          <td colSpan={3}>
            <div className="say">{children}</div>
          </td>
        </tr>
      )}
    </>
  );
}

/** The sum: under a single line, over a double one. */
export function LedgerSum(props: Pick<LedgerLineProps, "name" | "source" | "stops" | "sd" | "perStop">) {
  const { name, source, stops, sd, perStop } = props;
  return (
    <tr className="Kit-Ledger-sum">
      <th scope="row">
        <b>{name}</b>
        {source !== undefined && <span>{source}</span>}
      </th>
      <td className="Kit-Ledger-number">
        <b>
          <Stops stops={stops} sd={sd} />
        </b>
      </td>
      <td className="Kit-Ledger-doubt">
        <Doubt sd={sd} perStop={perStop} />
      </td>
    </tr>
  );
}

/** Decimals stand under each other: a missing last digit is an invisible nought. */
function Stops({ stops, sd }: { readonly stops: number; readonly sd: number }) {
  const { value } = honestDigits({ value: stops, sd, of: "stops", signed: true });
  const missing = 2 - (value.split(".")[1]?.length ?? 0);
  return (
    <>
      {value}
      <i aria-hidden="true">{"0".repeat(Math.max(0, missing))}</i>
    </>
  );
}

function Doubt({ sd, perStop }: { readonly sd: number; readonly perStop: number }) {
  if (sd === 0) return <span className="soft">no doubt</span>;
  const { plusMinus } = honestDigits({ value: 0, sd, of: "stops" });
  return (
    <>
      <span aria-hidden="true">±{plusMinus}</span>
      <span className="unseen">give or take {plusMinus}</span>
      <Bracket sd={sd} perStop={perStop} />
    </>
  );
}
