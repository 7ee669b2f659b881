import { bathPrior, carryOver, type HalideAdvice, halideAdvice } from "@captray/science/chemistry";
import type { BathRole } from "../records/index.ts";

export interface MixingAdviceInput {
  readonly role: BathRole;
  readonly volumeMl: number;
  /** One sheet. */
  readonly areaM2: number;
  /** Sheets to come this sitting. */
  readonly sheets: number;
  /** Left out: nobody said, and both are told. */
  readonly paperBase?: "rc" | "fibre" | undefined;
  /** 0: deionised. Left out: tap water of an unknown kind. */
  readonly waterChlorideMgL?: number | undefined;
}

export interface MixingAdvice {
  /** Share of the bath that came from the bath before, after all sheets: little paper carries, and much. */
  readonly carried: { readonly rc: number; readonly fibre: number } | undefined;
  /** Bath that the paper of the sitting asks for, however small the tray. */
  readonly areaMl: { readonly value: number; readonly low: number; readonly high: number } | undefined;
  /** Of a bleach: how much of a sheet's silver water and developer may bring back as halide. */
  readonly halide: HalideAdvice | undefined;
}

/** Liquid on drained paper, ml to the square metre: common practice, no source. */
const carryMlM2 = { rc: 15, fibre: 80 } as const;
/** What stop and rinse leave of the developer's liquid, where both were given (assumed). */
const rinsedTo = 0.05;
const bleaches: ReadonlySet<BathRole> = new Set(["acid", "peroxide", "acidAndPeroxide"]);

/** What belongs to the amounts of a bath: what the sheets carry into it, how much the sitting asks for, what its water brings. */
export function mixingAdviceOf(asked: MixingAdviceInput): MixingAdvice {
  const { role, volumeMl, areaM2, sheets, paperBase = "rc", waterChlorideMgL } = asked;
  const before = (mlM2: number): number => {
    const carryMl = mlM2 * areaM2;
    return carryMl >= volumeMl ? 1 : carryOver({ volumeMl, carryMl, sheets }).before;
  };
  const { halfAreaM2L } = bathPrior({ role });
  const needMl = ((areaM2 * sheets) / halfAreaM2L.value) * 1000;
  const spread = Math.exp(1.645 * halfAreaM2L.sdLn);
  const water = waterChlorideMgL === undefined ? {} : { waterChlorideMgL };
  const isTiny = carryMlM2.fibre * areaM2 >= volumeMl;
  return {
    carried: sheets > 0 ? { rc: before(carryMlM2.rc), fibre: before(carryMlM2.fibre) } : undefined,
    areaMl:
      role === "water" || sheets === 0 ? undefined : { value: needMl, low: needMl / spread, high: needMl * spread },
    halide:
      bleaches.has(role) && sheets > 0 && !isTiny
        ? halideAdvice({ areaM2, paperBase, rinsedTo, bathMl: volumeMl, sheets, ...water })
        : undefined,
  };
}
