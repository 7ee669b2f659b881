import type { Mirror } from "../../../devices/mirror.ts";
import type { CapWay } from "./capPlan.ts";

/** How this device gives an exposure: remembered from sheet to sheet. */
export interface CapSettings {
  readonly way: CapWay;
  readonly countIn: boolean;
}

const name = "captray-cap-settings";
const start: CapSettings = { way: "ticks", countIn: true };

/** What was chosen last on this device; where nothing was, to the ticks, counted in. */
export function readCapSettings(mirror: Mirror): CapSettings {
  const held = mirror.read(name);
  if (typeof held !== "object" || held === null) return start;
  const { way, countIn } = held as Partial<Record<keyof CapSettings, unknown>>;
  return { way: way === "counted" ? "counted" : "ticks", countIn: countIn !== false };
}

/** Remembers how it is given. */
export function writeCapSettings(mirror: Mirror, settings: CapSettings): void {
  mirror.write(name, settings);
}
