import type { SideShown } from "./sideSaid.ts";
import "./Sides.css";

export interface PressedSide extends SideShown {
  /** In a thick frame: it is meant, or was chosen. */
  readonly chosen?: boolean;
  /** What a press on it does; without it the side only shows. */
  readonly onPress?: () => void;
}

/** The sides of a holder drawn side by side: what is in each, hatched where a picture lies in it. */
export function Sides({ label, sides }: { readonly label: string; readonly sides: readonly PressedSide[] }) {
  return (
    <ul className="Kit-Sides" aria-label={label}>
      {sides.map(({ id, name, head, line, exposed, chosen, onPress }) => {
        const words = (
          <>
            {exposed && <Hatching />}
            <span className="Kit-Sides-words">
              <span>
                <b>{name}</b> <span>{head}</span>
              </span>
              <span className="small">{line}</span>
            </span>
          </>
        );
        return (
          <li key={id} data-exposed={exposed || undefined} data-chosen={chosen || undefined}>
            {onPress === undefined ? (
              <div aria-current={chosen ? "step" : undefined}>{words}</div>
            ) : (
              <button type="button" aria-pressed={chosen === true} onClick={onPress}>
                {words}
              </button>
            )}
          </li>
        );
      })}
    </ul>
  );
}

/** Drawn, not a background: it stays in print and where colours are forced. */
function Hatching() {
  return (
    <svg className="Kit-Sides-hatching" aria-hidden="true">
      <defs>
        <pattern id="Kit-Sides-hatch" width="8" height="8" patternUnits="userSpaceOnUse">
          <path d="M-2 10L10 -2M-2 2L2 -2M6 10L10 6" stroke="currentColor" strokeWidth="1" />
        </pattern>
      </defs>
      <rect width="100%" height="100%" fill="url(#Kit-Sides-hatch)" />
    </svg>
  );
}
