import { requireNotNegative, requirePositive } from "../errors/index.ts";
import { trayVolume } from "./trayVolume.ts";

export interface BathVolumeInput {
  /** Of the sheet, or of the bottom of the tray with `marginMm: 0`. */
  readonly widthMm: number;
  readonly heightMm: number;
  /** Room around the sheet on every side. */
  readonly marginMm?: number;
  readonly depthMm?: number;
  /** Paper that is to go through. */
  readonly areaM2?: number;
  /** Paper that a litre of this bath does; left out: only the tray counts. */
  readonly areaM2L?: number;
}

export interface BathVolume {
  readonly volumeMl: number;
  /** Which of the two rules asks for more. */
  readonly by: "tray" | "area";
  readonly trayMl: number;
  readonly areaMl: number;
}

/**
 * How much bath to mix: enough to cover the sheet, and enough for the paper of the evening.
 *
 * Formula  V = max((w + 2 m)(h + 2 m) d / 1000, 1000 A / a)
 * Units    mm, m², m²/L, mL
 * Holds    from 8 mm of depth, one sheet face up; 10 to 15 mm are usual, 20 to 25 mm around it.
 *
 * @throws {OutOfDomain} notFinite, notPositive, negative
 * @source none: depth and margin (common practice)
 * @example bathVolume({ widthMm: 210, heightMm: 260 }).volumeMl // 750
 */
export function bathVolume(input: BathVolumeInput): BathVolume {
  const { widthMm, heightMm, marginMm = 20, depthMm = 10, areaM2 = 0, areaM2L } = input;
  requireNotNegative({ areaM2 });
  if (areaM2L !== undefined) requirePositive({ areaM2L });
  const trayMl = trayVolume({ widthMm, heightMm, depthMm, marginMm });
  const areaMl = areaM2L === undefined ? 0 : (1000 * areaM2) / areaM2L;
  return { volumeMl: Math.max(trayMl, areaMl), by: areaMl > trayMl ? "area" : "tray", trayMl, areaMl };
}
