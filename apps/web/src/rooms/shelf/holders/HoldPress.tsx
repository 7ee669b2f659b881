import { type MouseEvent, type ReactNode, useEffect, useRef, useState } from "react";

/** So long a finger lies on it: a sleeve or a drop is no press. */
const holdMs = 2000;

/** The foot of a page in the dark: held for two seconds it opens; by key, or by whatever clicks for a person, at once. */
export function HoldPress({ children, onHeld }: { readonly children: ReactNode; readonly onHeld: () => void }) {
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
      className="Shelf-Dark-foot"
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
