/** Keys that have a meaning of their own and so never press the big target. */
const assigned = new Set([
  "Tab",
  "Escape",
  "Backspace",
  "Delete",
  "Shift",
  "Control",
  "Alt",
  "AltGraph",
  "Meta",
  "ContextMenu",
  "CapsLock",
  "NumLock",
  "ScrollLock",
  "Fn",
  "FnLock",
  "Insert",
  "PrintScreen",
  "Pause",
  "Dead",
  "Process",
  "Unidentified",
  "AudioVolumeUp",
  "AudioVolumeDown",
  "AudioVolumeMute",
  "BrowserBack",
  "BrowserForward",
  "BrowserRefresh",
  "Power",
  "Sleep",
  "WakeUp",
]);

type KeyOnPage = Pick<KeyboardEvent, "key" | "repeat" | "ctrlKey" | "altKey" | "metaKey" | "isComposing"> & {
  readonly target: unknown;
};

/**
 * What a key means on a page with one big press (the part marked `data-press`): the press, nothing, or its own business.
 *
 * Any key without a meaning of its own presses, so that a foot pedal works whichever key it sends. Held down it is one
 * press: what it repeats is `swallowed`. Space and Enter stay with another button, a link or a field that has the focus.
 */
export function pressKey(event: KeyOnPage): "press" | "swallowed" | "left" {
  if (event.ctrlKey || event.altKey || event.metaKey || event.isComposing) return "left";
  if (assigned.has(event.key) || /^F\d{1,2}$/.test(event.key)) return "left";
  const target = event.target as { closest?: (selector: string) => unknown } | null;
  if (target?.closest?.("input, textarea, select, [contenteditable]")) return "left";
  const activates = event.key === " " || event.key === "Enter";
  const onOther = target?.closest?.("button, a, summary, [role=button]") && !target.closest("[data-press]");
  if (activates && onOther) return "left";
  return event.repeat ? "swallowed" : "press";
}

/** Calls `onPress` for every key that is the press, with its time on the page's clock, until the returned function is called. */
export function listenForPress({ onPress }: { readonly onPress: (stampMs: number) => void }): () => void {
  const onDown = (event: KeyboardEvent) => {
    const meaning = pressKey(event);
    if (meaning === "left") return;
    event.preventDefault();
    if (meaning === "press") onPress(event.timeStamp);
  };
  // A button is clicked as Space comes up: that would be a second press.
  const onUp = (event: KeyboardEvent) => {
    if (event.key === " " && pressKey(event) !== "left") event.preventDefault();
  };
  window.addEventListener("keydown", onDown);
  window.addEventListener("keyup", onUp);
  return () => {
    window.removeEventListener("keydown", onDown);
    window.removeEventListener("keyup", onUp);
  };
}
