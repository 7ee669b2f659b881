import { useEffect, useRef, useState } from "react";

/** How long after the last key what was typed is taken for meant. */
const settledMs = 700;

/**
 * A text that is typed key by key and written once it has settled: after a pause, or when the page is left.
 *
 * The record's own text shows until something is typed, and again when the record changes from elsewhere.
 */
export function useSettled(stored: string, write: (text: string) => void): readonly [string, (text: string) => void] {
  const [typed, setTyped] = useState<{ readonly text: string; readonly over: string } | undefined>(undefined);
  const writing = useRef(write);
  writing.current = write;
  const waiting = useRef<{ timer: ReturnType<typeof setTimeout>; text: string } | undefined>(undefined);

  const flush = useRef(() => {
    if (waiting.current === undefined) return;
    clearTimeout(waiting.current.timer);
    const { text } = waiting.current;
    waiting.current = undefined;
    writing.current(text);
  }).current;

  useEffect(() => flush, [flush]);

  const onText = (text: string) => {
    setTyped({ text, over: stored });
    if (waiting.current !== undefined) clearTimeout(waiting.current.timer);
    waiting.current = { text, timer: setTimeout(flush, settledMs) };
  };
  const shown = typed !== undefined && (typed.over === stored || waiting.current !== undefined) ? typed.text : stored;
  return [shown, onText];
}
