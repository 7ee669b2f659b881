import { useSyncExternalStore } from "react";

interface InstallEvent extends Event {
  prompt(): Promise<unknown>;
}

let offered: InstallEvent | undefined;
const listeners = new Set<() => void>();

/** Starts to listen for the browser's offer to install; its own banner stays away. */
export function watchInstall(): void {
  addEventListener("beforeinstallprompt", (event) => {
    event.preventDefault();
    tell(event as InstallEvent);
  });
  addEventListener("appinstalled", () => tell(undefined));
}

/** Installs the app, where the browser offers it; else undefined. */
export function useInstall(): (() => void) | undefined {
  const offer = useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => offered,
  );
  if (offer === undefined) return undefined;
  return () => {
    tell(undefined);
    offer.prompt().catch(() => undefined); // put away by the person: nothing to say
  };
}

function tell(next: InstallEvent | undefined): void {
  offered = next;
  for (const listener of listeners) listener();
}
