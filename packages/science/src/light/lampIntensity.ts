import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requirePositive } from "../errors/require.ts";
import { requireWord } from "./requireWord.ts";

export type LampSpread = "bare" | "panel" | "cone";

export interface LampIntensityInput {
  readonly luminousFluxLm: number;
  readonly spread: LampSpread;
  /** The full angle of the cone; with "cone" only. */
  readonly coneDeg?: number | undefined;
}

/**
 * How strongly a lamp shines forward, from the lumens on its box.
 *
 * Formula  I = Φ / 4π for a bare bulb; Φ / π in front of an even panel; Φ / (2π · (1 − cos(α / 2))) inside an even cone.
 * Units    I in cd; Φ in lm; α, the full angle of the cone, in degrees.
 * Holds    for α from above 0 to 360, where the cone is a bare bulb. Lumens are those of the lamp as it stands, shade included.
 * Error    real bulbs and reflectors are uneven: ±0.5 stop; metering the subject is better.
 *
 * @throws {OutOfDomain} notPositive, unknownWord, missingKey, unknownKey, coneAngle
 * @source photometry: intensity is flux by solid angle (from memory)
 * @example lampIntensity({ luminousFluxLm: 806, spread: "bare" }) // 64.139442, in cd
 */
export function lampIntensity({ luminousFluxLm, spread, coneDeg }: LampIntensityInput): number {
  requirePositive({ luminousFluxLm });
  requireWord({ spread }, ["bare", "panel", "cone"]);
  if (spread !== "cone") {
    if (coneDeg !== undefined) throw new OutOfDomain("unknownKey", { coneDeg, spread });
    return luminousFluxLm / (spread === "bare" ? 4 * Math.PI : Math.PI);
  }
  if (coneDeg === undefined) throw new OutOfDomain("missingKey", { spread }, "coneDeg");
  requireFinite({ coneDeg });
  if (coneDeg <= 0 || coneDeg > 360) throw new OutOfDomain("coneAngle", { coneDeg });
  // 1 − cos(α/2) as 2 sin²(α/4): a narrow beam keeps its digits.
  return luminousFluxLm / (4 * Math.PI * Math.sin((coneDeg * Math.PI) / 720) ** 2);
}
