import { useSyncExternalStore } from "react";

const onDesk = matchMedia("(min-width: 68.75em)");

/** Whether the page is as wide as a desk: where a table stands in place of chips. */
export function useDesk(): boolean {
  return useSyncExternalStore(follow, () => onDesk.matches);
}

function follow(listener: () => void): () => void {
  onDesk.addEventListener("change", listener);
  return () => onDesk.removeEventListener("change", listener);
}
