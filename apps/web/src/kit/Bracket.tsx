import { bracketLengthPx, bracketWidthPx } from "./ledgerBrackets.ts";

/** A doubt drawn at scale: its length is the ± itself. All brackets of a ledger share one scale and one right end. */
export function Bracket({ sd, perStop }: { readonly sd: number; readonly perStop: number }) {
  const right = bracketWidthPx - 1;
  const left = right - bracketLengthPx({ sd, perStop });
  return (
    <svg
      className="Kit-Bracket"
      width={bracketWidthPx}
      height="11"
      viewBox={`0 0 ${bracketWidthPx} 11`}
      aria-hidden="true"
      stroke="currentColor"
      strokeWidth="1.5"
      fill="none"
    >
      <path d={`M${left.toFixed(1)} 5.5H${right}M${left.toFixed(1)} 1.5v8M${right} 1.5v8`} />
    </svg>
  );
}
