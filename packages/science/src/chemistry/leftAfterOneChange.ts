import { requirePositive } from "../errors/index.ts";

/** One change of the wash. */
export interface WashChange {
  /** Liquid in the wet sheet. */
  readonly carryMl: number;
  readonly volumeMl: number;
  readonly changeMin: number;
  /** Minutes in which what the paper holds comes out to a third. */
  readonly timeConstantMin: number;
}

/** Share that one change of water leaves. Inner helper of the wash. */
export function leftAfterOneChange({ carryMl, volumeMl, changeMin, timeConstantMin }: WashChange): number {
  requirePositive({ carryMl, volumeMl, changeMin, timeConstantMin });
  const shared = carryMl / (carryMl + volumeMl);
  return shared + (1 - shared) * Math.exp(-changeMin / timeConstantMin);
}
