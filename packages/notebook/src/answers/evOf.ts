import { ev100, illuminanceFromEv100, luminanceFromEv100 } from "@captray/science/light";
import type { Reading } from "../records/index.ts";

/** A reading as EV at ISO 100, by the meter's usual constants. Inner helper of these answers. */
export function evOf(reading: Reading): number {
  switch (reading.way) {
    case "time":
      return ev100({ fNumber: reading.fNumber.value, timeS: reading.timeS.value, iso: reading.iso.value });
    case "ev":
      return reading.ev.value - Math.log2(reading.iso.value / 100);
    case "ev100":
      return reading.ev100.value;
    case "luminance":
      return Math.log2(reading.luminanceCdM2.value / luminanceFromEv100({ ev100: 0 }));
    case "illuminance":
      return Math.log2(reading.illuminanceLx.value / illuminanceFromEv100({ ev100: 0 }));
  }
}

/** Whether the light itself was read, and not what an area throws back. Inner helper of these answers. */
export function isIncident(reading: Reading): boolean {
  return reading.way === "illuminance" || ("kind" in reading && reading.kind === "incident");
}
