import { type RefCallback, useCallback, useRef, useState } from "react";

/** Letters of the bench against the page's own: they are read from two metres. */
const letters = 17 / 16;

/** How wide and high the bench may be drawn where it stands, and how large its letters are. */
export function useBenchRoom(): {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly letterPx: number;
  readonly place: RefCallback<HTMLElement>;
} {
  const [room, setRoom] = useState({ widthPx: 0, heightPx: 0, letterPx: 17 });
  const watch = useRef<ResizeObserver | undefined>(undefined);
  const place = useCallback((element: HTMLElement | null) => {
    watch.current?.disconnect();
    if (element === null) return;
    watch.current = new ResizeObserver(([entry]) => {
      const widthPx = Math.floor(entry?.contentRect.width ?? 0);
      const heightPx = Math.floor(entry?.contentRect.height ?? 0);
      const letterPx = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) * letters;
      setRoom((now) =>
        now.widthPx === widthPx && now.heightPx === heightPx && now.letterPx === letterPx
          ? now
          : { widthPx, heightPx, letterPx },
      );
    });
    watch.current.observe(element);
  }, []);
  return { ...room, place };
}
