import { useSyncExternalStore } from "react";

/** Whether the app works without a network: not here, not yet, yes, or yes and a newer one waits. */
export type Offline = "impossible" | "fetching" | "ready" | "newerWaits";

let state: Offline = "impossible";
let waiting: ServiceWorker | null = null;
const listeners = new Set<() => void>();

/** The state of working without a network, followed. */
export function useOffline(): Offline {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => state,
  );
}

/** Keeps the app on this machine, so that it opens without a network; a newer build waits until somebody takes it. */
export async function keepOffline(): Promise<void> {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  let hadOne = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (hadOne) location.reload();
    hadOne = true;
  });
  try {
    tell("fetching");
    const registration = await navigator.serviceWorker.register("./sw.js", { updateViaCache: "none" });
    const look = () => {
      waiting = registration.waiting;
      tell(
        waiting !== null && registration.active !== null
          ? "newerWaits"
          : registration.active !== null
            ? "ready"
            : "fetching",
      );
    };
    const watch = (worker: ServiceWorker | null) => worker?.addEventListener("statechange", look);
    registration.addEventListener("updatefound", () => watch(registration.installing));
    watch(registration.installing);
    look();
  } catch {
    tell("impossible");
  }
}

/** Takes the newer build; the page opens anew, in the light it had. */
export function takeNewer(): void {
  waiting?.postMessage("take-over");
}

function tell(next: Offline): void {
  state = next;
  for (const listener of listeners) listener();
}
