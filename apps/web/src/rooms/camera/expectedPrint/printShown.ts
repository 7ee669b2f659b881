import type { ExpectedPrint } from "@captray/notebook/answers";

/** The expected print as it is drawn at this moment, also while a finger slides. */
export interface PrintShown {
  readonly now: () => ExpectedPrint | undefined;
  readonly follow: (changed: () => void) => () => void;
  readonly show: (print: ExpectedPrint | undefined) => void;
}

/** Where chips, table and bar find what the expected print shows, without the page being drawn anew at each frame. */
export function newPrintShown(): PrintShown {
  let print: ExpectedPrint | undefined;
  const followers = new Set<() => void>();
  return {
    now: () => print,
    follow: (changed) => {
      followers.add(changed);
      return () => followers.delete(changed);
    },
    show: (next) => {
      if (next === print) return;
      print = next;
      for (const changed of followers) changed();
    },
  };
}
