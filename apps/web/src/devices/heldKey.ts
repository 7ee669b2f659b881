/**
 * Calls `onHeld` when a key has been down for `forMs`, once for each time it is held; not while something is typed.
 * The returned function ends it.
 */
export function listenForHeldKey({
  key,
  forMs,
  onHeld,
}: {
  readonly key: string;
  readonly forMs: number;
  readonly onHeld: () => void;
}): () => void {
  let timer: ReturnType<typeof setTimeout> | null = null;
  const stop = () => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
  };
  const down = (event: KeyboardEvent) => {
    const target = event.target as Element | null;
    if (event.key !== key || event.repeat || target?.closest?.("input, textarea, [contenteditable]")) return;
    stop();
    timer = setTimeout(onHeld, forMs);
  };
  const up = (event: KeyboardEvent) => event.key === key && stop();
  window.addEventListener("keydown", down);
  window.addEventListener("keyup", up);
  window.addEventListener("blur", stop);
  return () => {
    stop();
    window.removeEventListener("keydown", down);
    window.removeEventListener("keyup", up);
    window.removeEventListener("blur", stop);
  };
}
