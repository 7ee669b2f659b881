import { useSyncExternalStore } from "react";
import { currentHouse, followHouse, type House } from "./house.ts";

/** Which notebook lies open: to say that it is the demo, or that nothing can be kept. */
export function useHouse(): House {
  return useSyncExternalStore(followHouse, currentHouse);
}
