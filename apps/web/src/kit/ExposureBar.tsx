import { type ReactNode, useSyncExternalStore } from "react";
import { createPortal } from "react-dom";
import { footPlace } from "./footPlace.ts";
import "./ExposureBar.css";

/** A head and a sentence of the bar at a desk. */
export interface BarPart {
  readonly head: string;
  readonly say: string;
}

export interface ExposureBarProps {
  /** The figures of the time, "25" or "1:20"; nothing while there is no answer yet. */
  readonly time?: ReactNode;
  /** Left out where the time brings its own. */
  readonly unit?: string | undefined;
  /** How it is done, how sure it is, how old the reading is. */
  readonly children: ReactNode;
  /** On wide pages also how the time is given, and what flash; narrow ones say it further up. */
  readonly parts?: readonly [hand: BarPart, flash: BarPart] | undefined;
  /** The one press: “To the cap”. */
  readonly action?: ReactNode;
}

/** The answer, always in sight: a dark bar at the foot of the Camera room. */
export function ExposureBar({ time, unit, children, parts, action }: ExposureBarProps) {
  const place = useSyncExternalStore(footPlace.follow, footPlace.now);
  if (place === undefined) return null;
  return createPortal(
    <section
      className="Kit-ExposureBar"
      data-ground="dark"
      data-parts={parts === undefined ? undefined : true}
      aria-label="Exposure"
    >
      <div className="Kit-ExposureBar-answer">
        {time !== undefined && (
          <p className="Kit-ExposureBar-time">
            {time}
            {unit !== undefined && <small> {unit}</small>}
          </p>
        )}
        <div className="Kit-ExposureBar-how">{children}</div>
      </div>
      {parts?.map(({ head, say }, place) => (
        <div key={place === 0 ? "hand" : "flash"} className="Kit-ExposureBar-part">
          <h3>{head}</h3>
          <p>{say}</p>
        </div>
      ))}
      {action}
    </section>,
    place,
  );
}
