import { type ReactNode, useSyncExternalStore } from "react";
import { createPortal } from "react-dom";
import { footPlace } from "./footPlace.ts";
import "./ExposureBar.css";

export interface ExposureBarProps {
  /** The figures of the time, "25" or "1:20"; nothing while there is no answer yet. */
  readonly time?: string | undefined;
  readonly unit?: string;
  /** How it is done, how sure it is, how old the reading is. */
  readonly children: ReactNode;
  /** The one press: “To the cap”. */
  readonly action?: ReactNode;
}

/** The answer, always in sight: a dark bar at the foot of the Camera room. */
export function ExposureBar({ time, unit = "s", children, action }: ExposureBarProps) {
  const place = useSyncExternalStore(footPlace.follow, footPlace.now);
  if (place === undefined) return null;
  return createPortal(
    <section className="Kit-ExposureBar" data-ground="dark" aria-label="Exposure">
      {time !== undefined && (
        <p className="Kit-ExposureBar-time">
          {time}
          <small> {unit}</small>
        </p>
      )}
      <div className="Kit-ExposureBar-how">{children}</div>
      {action}
    </section>,
    place,
  );
}
