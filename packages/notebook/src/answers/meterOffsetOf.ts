import { planDefaults } from "@captray/science/exposure";
import {
  daylight,
  ev100,
  illuminanceFromReading,
  luminanceFromReading,
  luminanceOfSurface,
} from "@captray/science/light";
import type { Meter } from "../records/index.ts";
import type { Measured } from "./doubtOf.ts";

export interface DialReading {
  readonly timeS: number;
  readonly fNumber: number;
  readonly iso: number;
}

/** The light a meter is held against. */
export type KnownLight =
  | { readonly by: "otherMeter"; readonly reading: DialReading }
  /** A grey card held square to the sun, or an incident meter turned to it, under a clear sky. */
  | { readonly by: "fullSun"; readonly altitudeDeg: number; readonly dayOfYear: number }
  | { readonly by: "knownLight"; readonly luminanceCdM2: number }
  | { readonly by: "knownLight"; readonly illuminanceLx: number };

export interface MeterOffset {
  /** The meter shows so much too much light. */
  readonly offsetStops: Measured;
  /** Nine in ten include 0: nothing was found that this light could tell. */
  readonly withinDoubt: boolean;
}

const greyCard = 0.18;
/** What the light itself may be off, in stops: another meter's constant, the clear sky's model, a lamp or lux meter one trusts. */
const lightSdStops = { otherMeter: planDefaults.meter.sdStops, fullSun: 0.5, knownLight: 0.15 } as const;

/** By how much a meter is off against a light that is known, with the doubt of that light and of reading the dial. */
export function meterOffsetOf({
  reading,
  light,
  meter,
}: {
  readonly reading: DialReading;
  readonly light: KnownLight;
  readonly meter?: Pick<Meter, "reads" | "meterK" | "meterC"> | undefined;
}): MeterOffset {
  const readingSd = planDefaults.meter.readingSdStops;
  const sd = Math.hypot(lightSdStops[light.by], readingSd, light.by === "otherMeter" ? readingSd : 0);
  const value = stopsOver({ reading, light, meter });
  return { offsetStops: { value, sd }, withinDoubt: Math.abs(value) <= 1.645 * sd };
}

function stopsOver({
  reading,
  light,
  meter,
}: {
  readonly reading: DialReading;
  readonly light: KnownLight;
  readonly meter?: Pick<Meter, "reads" | "meterK" | "meterC"> | undefined;
}): number {
  if (light.by === "otherMeter") return ev100(reading) - ev100(light.reading);
  const { meterK = planDefaults.meter.meterK, meterC = planDefaults.meter.meterC } = meter ?? {};
  if (light.by === "fullSun") {
    const sun = daylight({ altitudeDeg: light.altitudeDeg, dayOfYear: light.dayOfYear });
    const illuminanceLx = sun.directNormalLx + sun.skyHorizontalLx;
    return meter?.reads === "incident"
      ? Math.log2(illuminanceFromReading({ ...reading, meterC }) / illuminanceLx)
      : Math.log2(
          luminanceFromReading({ ...reading, meterK }) / luminanceOfSurface({ illuminanceLx, reflectance: greyCard }),
        );
  }
  return "luminanceCdM2" in light
    ? Math.log2(luminanceFromReading({ ...reading, meterK }) / light.luminanceCdM2)
    : Math.log2(illuminanceFromReading({ ...reading, meterC }) / light.illuminanceLx);
}
