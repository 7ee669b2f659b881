import { requireNotNegative, requirePositive } from "../errors/index.ts";

export interface TrayVolumeInput {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly depthMm: number;
  /** Room around the sheet on every side. */
  readonly marginMm?: number;
}

/**
 * How much bath fills a tray to a depth.
 *
 * Formula  V = (w + 2 m) · (h + 2 m) · d / 1000
 * Units    mL; lengths in mm
 * Holds    for upright walls; some 10 mm of depth covers one sheet (common practice).
 *
 * @throws {OutOfDomain} notFinite, negative, notPositive
 * @source general-chemistry: 1 mL is 1 cm³ (from memory)
 * @example trayVolume({ widthMm: 250, heightMm: 300, depthMm: 10 }) // 750
 */
export function trayVolume({ widthMm, heightMm, depthMm, marginMm = 0 }: TrayVolumeInput): number {
  requirePositive({ widthMm, heightMm, depthMm });
  requireNotNegative({ marginMm });
  return ((widthMm + 2 * marginMm) * (heightMm + 2 * marginMm) * depthMm) / 1000;
}
