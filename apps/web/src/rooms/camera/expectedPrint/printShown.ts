import type { ExpectedPrint } from "@captray/notebook/answers";

/** The expected print as it is drawn at this moment, also while a finger slides. */
export interface PrintShown {
  readonly now: () => ExpectedPrint | undefined;
  /** As it was when the finger was last off the scales: for what is too heavy to follow it. */
  readonly settled: () => ExpectedPrint | undefined;
  readonly follow: (changed: () => void) => () => void;
  readonly show: (print: ExpectedPrint | undefined, isSlid: boolean) => void;
}

/** Where chips, table and bar find what the expected print shows, without the page being drawn anew at each frame. */
export function newPrintShown(): PrintShown {
  let print: ExpectedPrint | undefined;
  let settled: ExpectedPrint | undefined;
  const followers = new Set<() => void>();
  return {
    now: () => print,
    settled: () => settled,
    follow: (changed) => {
      followers.add(changed);
      return () => followers.delete(changed);
    },
    show: (next, isSlid) => {
      if (next === print && (isSlid || settled === next)) return;
      print = next;
      if (!isSlid) settled = next;
      for (const changed of followers) changed();
    },
  };
}
