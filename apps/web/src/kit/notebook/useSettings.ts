import { useSyncExternalStore } from "react";
import type { Settings } from "./deviceState.ts";
import { currentSettings, followHouse } from "./house.ts";

/** How this device shows things: mm or inches, °C or °F, sounds. */
export function useSettings(): Settings {
  return useSyncExternalStore(followHouse, currentSettings);
}
