import { useEffect, useState } from "react";

const lockAgainMs = 2000;

/** Whether this page is the one that sounds the cues of a run: the first that has it in hand; another one looks on. */
export function useFirstPage(runId: string): boolean {
  const [puts, setPuts] = useState(true);
  useEffect(() => {
    if (!("locks" in navigator)) return;
    let letGo: () => void = () => undefined;
    let again: ReturnType<typeof setTimeout> | undefined;
    let left = false;
    const ask = () => {
      void navigator.locks
        .request(`captray-run-${runId}`, { ifAvailable: true }, (lock) => {
          if (left) return undefined;
          setPuts(lock !== null);
          // A page that was killed holds on to it for a moment.
          if (lock === null) {
            again = setTimeout(ask, lockAgainMs);
            return undefined;
          }
          return new Promise<void>((done) => {
            letGo = done;
          });
        })
        .catch(() => undefined);
    };
    ask();
    return () => {
      left = true;
      clearTimeout(again);
      letGo();
    };
  }, [runId]);
  return puts;
}
