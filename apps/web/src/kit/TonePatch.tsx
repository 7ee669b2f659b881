import { greyOf } from "@captray/drawings/shapes";
import "./TonePatch.css";

export interface TonePatchProps {
  /** Nothing is known yet: a broken frame. */
  readonly density: number | undefined;
  /** Beyond the paper: a ring inside the patch. */
  readonly isBeyond?: boolean;
}

/** A small patch of an expected tone: it only tells areas apart, and has an outline. The words stand beside it. */
export function TonePatch({ density, isBeyond = false }: TonePatchProps) {
  return (
    <i
      className="Kit-TonePatch"
      aria-hidden="true"
      data-beyond={isBeyond || undefined}
      data-unknown={density === undefined || undefined}
      style={density === undefined ? undefined : { background: greyOf({ density }) }}
    />
  );
}
