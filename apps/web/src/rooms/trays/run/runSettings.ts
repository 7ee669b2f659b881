import type { Mirror } from "../../../devices/mirror.ts";

/** What this device does at a cue, each for itself. */
export interface RunSettings {
  readonly voice: boolean;
  readonly tones: boolean;
  readonly shakes: boolean;
}

const name = "captray-trays-settings";

/** What was chosen last on this device; where nothing was, all of it. */
export function readRunSettings(mirror: Mirror): RunSettings {
  const held = mirror.read(name);
  const { voice, tones, shakes } = (typeof held === "object" && held !== null ? held : {}) as Partial<
    Record<keyof RunSettings, unknown>
  >;
  return { voice: voice !== false, tones: tones !== false, shakes: shakes !== false };
}

export function writeRunSettings(mirror: Mirror, settings: RunSettings): void {
  mirror.write(name, settings);
}
