import { memo, useId, useState } from "react";
import { honestDigits } from "../../../kit/honestDigits.ts";
import { Better, type BetterProps } from "./Better.tsx";
import type { Granted } from "./takenForGranted.ts";

/** What the cap time takes for granted, the largest doubt first; each opens to be said better. */
export function GrantedList({
  granted,
  ...rest
}: { readonly granted: readonly Granted[] } & Omit<BetterProps, "subject">) {
  return (
    <ul className="Camera-Granted">
      {granted.map((one) => (
        <GrantedLine key={one.subject} granted={one} {...rest} />
      ))}
    </ul>
  );
}

interface LineProps extends Omit<BetterProps, "subject"> {
  readonly granted: Granted;
}

const GrantedLine = memo(function GrantedLine({ granted, ...rest }: LineProps) {
  const [open, setOpen] = useState(false);
  const id = useId();
  const { plusMinus } = honestDigits({ value: 0, sd: granted.sdStops, of: "stops" });
  return (
    <li>
      <button type="button" aria-expanded={open} aria-controls={open ? id : undefined} onClick={() => setOpen(!open)}>
        <span>
          <b>{granted.name}</b>
          {granted.known !== "" && <span className="soft">{granted.known}</span>}
        </span>
        <span aria-hidden="true">±{plusMinus}</span>
        <span className="unseen">give or take {plusMinus} stop</span>
      </button>
      {open && (
        <div className="Camera-Granted-better" id={id}>
          <Better subject={granted.subject} {...rest} />
        </div>
      )}
    </li>
  );
}, sameLine);

/** The lines are worked out anew at every key, and mostly say the same. */
function sameLine(before: LineProps, now: LineProps): boolean {
  const [was, is] = [before.granted, now.granted];
  return (
    was.subject === is.subject &&
    was.name === is.name &&
    was.known === is.known &&
    was.sdStops === is.sdStops &&
    before.result === now.result &&
    before.better === now.better &&
    before.onBetter === now.onBetter
  );
}
