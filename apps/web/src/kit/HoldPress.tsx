import { type MouseEvent, type ReactNode, useEffect, useRef, useState } from "react";
import "./HoldPress.css";

/** So long a finger lies on it: a sleeve or a drop is no press. */
const holdMs = 2000;

export interface HoldPressProps {
  readonly className: string;
  readonly children: ReactNode;
  readonly onHeld: () => void;
}

/** A press that is held for two seconds, and says so by a line that fills; by key, or by whatever clicks for a person, at once. */
export function HoldPress({ className, children, onHeld }: HoldPressProps) {
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const [held, setHeld] = useState(false);
  const stop = () => {
    clearTimeout(timer.current);
    setHeld(false);
  };
  useEffect(() => () => clearTimeout(timer.current), []);
  return (
    <button
      type="button"
      className={`Kit-HoldPress ${className}`}
      data-held={held || undefined}
      onPointerDown={(event) => {
        if (!event.isPrimary || event.button !== 0) return;
        setHeld(true);
        timer.current = setTimeout(() => {
          setHeld(false);
          onHeld();
        }, holdMs);
      }}
      onPointerUp={stop}
      onPointerLeave={stop}
      onPointerCancel={stop}
      onMouseDown={(event) => event.preventDefault()}
      onClick={(event: MouseEvent) => event.detail === 0 && onHeld()}
    >
      {children}
    </button>
  );
}
