import { type BathVolume, bathPrior, bathVolume } from "@captray/science/chemistry";
import type { BathRole } from "../records/index.ts";

export interface BathVolumeForInput {
  readonly role: BathRole;
  readonly sheet: { readonly widthMm: number; readonly heightMm: number };
  /** Sheets to come this sitting. */
  readonly sheets: number;
}

/** How much bath a tray for this sheet asks for, and how much the paper of the sitting: the larger rules. */
export function bathVolumeFor({ role, sheet, sheets }: BathVolumeForInput): BathVolume {
  const areaM2 = (sheet.widthMm * sheet.heightMm * sheets) / 1e6;
  return bathVolume({ ...sheet, areaM2, areaM2L: bathPrior({ role }).halfAreaM2L.value });
}
