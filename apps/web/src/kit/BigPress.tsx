import { type MouseEvent, type PointerEvent, type ReactNode, useRef } from "react";

export interface BigPressProps {
  readonly className: string;
  readonly children: ReactNode;
  /** What it does now; a finger put down on one meaning never sets off another. */
  readonly means: string;
  /** `stampMs`: when it was pressed, on the page's own time. */
  readonly onPress: (stampMs: number) => void;
  /** Counts from the moment the finger comes down, not when it is lifted. */
  readonly instant: boolean;
  /** The big target of the page, which any key presses. */
  readonly main?: boolean;
  readonly describedBy?: string;
}

/** A press that is timed: by finger as it comes down, by key, or by whatever clicks for a person. */
export function BigPress({ className, children, means, onPress, instant, main, describedBy }: BigPressProps) {
  const down = useRef<string | null>(null);
  const onPointerDown = (event: PointerEvent) => {
    if (!event.isPrimary || event.button !== 0) return;
    down.current = means;
    if (instant) onPress(event.timeStamp);
  };
  const onClick = (event: MouseEvent) => {
    const began = down.current;
    down.current = null;
    if (event.detail === 0) return onPress(event.timeStamp); // a key, or a screen reader's click
    if (began === null && instant) return onPress(event.timeStamp);
    if (began === means && !instant) onPress(event.timeStamp);
  };
  return (
    <button
      type="button"
      className={className}
      data-press={main || undefined}
      aria-describedby={describedBy}
      onPointerDown={onPointerDown}
      // A finger leaves the focus where it is: a pedal that sends Enter must not press the foot next.
      onMouseDown={(event) => event.preventDefault()}
      onClick={onClick}
    >
      {children}
    </button>
  );
}
