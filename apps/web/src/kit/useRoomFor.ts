import { type RefCallback, useCallback, useRef, useState } from "react";

/** Letters of a drawing are never smaller than this share of the page's own. */
const smallLetters = 15 / 16;

/** How wide a drawing may be and how large its letters: measured where it will stand, anew when that place or the letters grow. */
export function useRoomFor(): readonly [widthPx: number, letterPx: number, place: RefCallback<HTMLElement>] {
  const [room, setRoom] = useState({ widthPx: 0, letterPx: 15 });
  const watch = useRef<ResizeObserver | undefined>(undefined);
  const place = useCallback((element: HTMLElement | null) => {
    watch.current?.disconnect();
    if (element === null) return;
    watch.current = new ResizeObserver(([entry]) => {
      const widthPx = Math.floor(entry?.contentRect.width ?? 0);
      const letterPx = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) * smallLetters;
      setRoom((now) => (now.widthPx === widthPx && now.letterPx === letterPx ? now : { widthPx, letterPx }));
    });
    watch.current.observe(element);
  }, []);
  return [room.widthPx, room.letterPx, place];
}
