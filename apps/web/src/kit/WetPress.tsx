import { type MouseEvent, type PointerEvent, type ReactNode, useRef } from "react";
import { dry, stampOf, stepWet, type WetEvent, type WetState } from "../devices/wetPress.ts";

export interface WetPressProps {
  readonly className: string;
  readonly children: ReactNode;
  /** What it does now; a finger put down on one meaning never sets off another. */
  readonly means: string;
  /** `stampMs`: when the finger came down, on the page's own time. */
  readonly onPress: (stampMs: number) => void;
  /** The target of the page that any key presses. */
  readonly main?: boolean;
  readonly describedBy?: string;
}

function stamp(event: { readonly timeStamp: number }): number {
  return stampOf({ stampMs: event.timeStamp, nowMs: performance.now() });
}

/** The press of the trays: one finger, down for 80 to 1500 ms; splashes, arms and leaning hands are none. */
export function WetPress({ className, children, means, onPress, main, describedBy }: WetPressProps) {
  const wet = useRef<WetState>(dry);
  const downOn = useRef(means);
  const tell = (event: WetEvent) => {
    const { state, pressMs } = stepWet({ state: wet.current, event });
    wet.current = state;
    if (pressMs !== undefined && downOn.current === means) onPress(pressMs);
  };
  const finger = (kind: "down" | "up" | "lost") => (event: PointerEvent) => {
    if (kind === "down") {
      if (event.button !== 0) return;
      if (wet.current.fingers.length === 0) downOn.current = means;
    }
    tell({ kind, finger: event.pointerId, stampMs: stamp(event) });
  };
  return (
    <button
      type="button"
      className={className}
      data-press={main || undefined}
      aria-describedby={describedBy}
      onPointerDown={finger("down")}
      onPointerUp={finger("up")}
      onPointerLeave={finger("lost")}
      onPointerCancel={finger("lost")}
      // A finger leaves the focus where it is: a pedal that sends Enter must not press the foot next.
      onMouseDown={(event) => event.preventDefault()}
      // A screen reader's click has no finger, and no splash makes one.
      onClick={(event: MouseEvent) => {
        if (event.detail !== 0) return;
        downOn.current = means;
        tell({ kind: "key", stampMs: stamp(event) });
      }}
    >
      {children}
    </button>
  );
}
