import { carryOver, returnedHalideShare } from "@captray/science/chemistry";
import type { BathRole } from "../records/index.ts";
import { bathPriors } from "./bathPriors.ts";

export interface MixingAdviceInput {
  readonly role: BathRole;
  readonly volumeMl: number;
  /** One sheet. */
  readonly areaM2: number;
  /** Sheets to come this sitting. */
  readonly sheets: number;
  /** What the waterworks say; without it a usual figure. */
  readonly waterChlorideMgL?: number | undefined;
}

export interface MixingAdvice {
  /** Share of the bath that came from the bath before, after all sheets: little paper carries, and much. */
  readonly carried: { readonly rc: number; readonly fibre: number } | undefined;
  /** Bath that the area of the sitting asks for, however small the tray. */
  readonly areaMl: { readonly value: number; readonly low: number; readonly high: number } | undefined;
  /** Bleach mixed with tap water: the most of a sheet's silver that its chloride brings back as halide. */
  readonly tapHalide:
    | { readonly share: number; readonly chlorideMgL: number; readonly isSupposed: boolean }
    | undefined;
}

/** Liquid on drained paper, ml to the square metre, and chloride of tap water: common practice, no source. */
const carryMlM2 = { rc: 15, fibre: 80 } as const;
const usualChlorideMgL = 50;
const bleaches: ReadonlySet<BathRole> = new Set(["acid", "peroxide", "acidAndPeroxide"]);

/** What belongs to the amounts of a bath: what the sheets carry into it, how much the sitting asks for, what its water brings. */
export function mixingAdviceOf(asked: MixingAdviceInput): MixingAdvice {
  const { role, volumeMl, areaM2, sheets, waterChlorideMgL } = asked;
  const halfArea = bathPriors({ role })?.halfAreaM2L;
  const before = (mlM2: number): number => {
    const carryMl = mlM2 * areaM2;
    return carryMl >= volumeMl ? 1 : carryOver({ volumeMl, carryMl, sheets }).before;
  };
  const chlorideMgL = waterChlorideMgL ?? usualChlorideMgL;
  const needMl = halfArea && ((areaM2 * sheets) / halfArea.value) * 1000;
  const spread = Math.exp(1.645 * (halfArea?.sdLn ?? 0));
  return {
    carried: sheets > 0 ? { rc: before(carryMlM2.rc), fibre: before(carryMlM2.fibre) } : undefined,
    areaMl:
      needMl === undefined || needMl === 0 ? undefined : { value: needMl, low: needMl / spread, high: needMl * spread },
    tapHalide: bleaches.has(role)
      ? {
          share: returnedHalideShare({
            areaM2,
            carryMlM2: 0,
            bathMlPerSheet: volumeMl,
            waterChlorideMgL: chlorideMgL,
            bathShare: 1,
          }).share,
          chlorideMgL,
          isSupposed: waterChlorideMgL === undefined,
        }
      : undefined,
  };
}
