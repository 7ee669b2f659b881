import { bathPrior, bathWear, type Half, type WearRange, type WearReason } from "@captray/science/chemistry";
import type { Bath, BathRole } from "../records/index.ts";

/** Paper that went through a bath, and when. */
export interface Passed {
  readonly at: number;
  readonly areaM2: number;
  readonly sheets: number;
}

export interface BathWearOfInput {
  readonly bath: Bath;
  /** The moment it is asked of, ms since 1970. */
  readonly atMs: number;
  /** Found in the runs; what was counted by hand is in the record. */
  readonly passed?: readonly Passed[];
}

export type BathVerdict = "use" | "longer" | "replace" | "over" | "discarded";

export interface BathWearOf {
  readonly verdict: BathVerdict;
  /** Why, the weightiest first. */
  readonly reasons: readonly (WearReason | "lasts" | "volumeUnknown")[];
  readonly ageH: number | undefined;
  readonly areaM2: number;
  readonly sheets: number;
  readonly strength: WearRange;
  /** How many times longer the step takes now. */
  readonly timeFactor: WearRange;
  /** When it is worn by half, if nothing more goes through; a last hour ends it before. */
  readonly goodUntilMs: WearRange | undefined;
  readonly lastHourMs: number | undefined;
  /** Paper at which it is worn by half, what went through counted with it, if the rest followed at once. */
  readonly wornAtM2: WearRange | undefined;
  /** What went through, as it came. */
  readonly through: readonly Passed[];
  /** What its life rests on. */
  readonly ground: "prior" | "learnt" | "told";
  /** The two halves as they are believed now; nothing for water. */
  readonly halves: { readonly halfLifeH: Half; readonly halfAreaM2L: Half } | undefined;
}

const hourMs = 3_600_000;
/** Of a bath whose volume nobody wrote down: half a litre, and more doubt (assumed). */
const unknownVolume = { litres: 0.5, sdLn: 0.5 } as const;
const nineInTen = 1.645;
const whole: WearRange = { value: 1, low: 1, high: 1 };

/**
 * How worn a bath is by its age and the paper that went through it, with doubt and reason, and what to do with it.
 *
 * Its last hour, once passed, ends it whatever it has done. Strips that were timed in it correct what is believed of its life.
 */
export function bathWearOf({ bath, atMs, passed = [] }: BathWearOfInput): BathWearOf {
  const { role = "water", volumeMl, mixedAt } = bath;
  const through = passedBy(bath, passed, atMs);
  const areaM2 = through.reduce((sum, one) => sum + one.areaM2, 0);
  const sheets = through.reduce((sum, one) => sum + one.sheets, 0);
  const ageH = mixedAt && Math.max(0, (atMs - mixedAt.at) / hourMs);
  const lastHourMs = bath.lastHourAt?.at;
  const common = { ageH, areaM2, sheets, lastHourMs, through };
  // Water does not wear: it is changed.
  if (role === "water") {
    return {
      ...common,
      verdict: bath.discardedAt ? "discarded" : "use",
      reasons: ["lasts"],
      strength: whole,
      timeFactor: whole,
      goodUntilMs: undefined,
      wornAtM2: undefined,
      ground: "prior",
      halves: undefined,
    };
  }
  const litres = volumeMl === undefined ? unknownVolume.litres : volumeMl / 1000;
  const { halfLifeH, halfAreaM2L } = halvesOf(bath, role);
  const strips = stripsOf({ bath, through });
  const wear = bathWear({
    role,
    ageH: ageH ?? null,
    areaM2,
    volumeL: litres,
    halfLifeH,
    halfAreaM2L:
      volumeMl === undefined ? { ...halfAreaM2L, sdLn: Math.hypot(halfAreaM2L.sdLn, unknownVolume.sdLn) } : halfAreaM2L,
    strips,
    bubbles: bath.bubblesAt !== undefined && bath.bubblesAt.at <= atMs && bleaches.has(role),
  });
  const isOver = lastHourMs !== undefined && atMs >= lastHourMs;
  const { wornInH } = wear;
  const until = (hours: number) => Math.min(lastHourMs ?? Number.MAX_SAFE_INTEGER, atMs + hours * hourMs);
  const { halfAreaM2L: area, halfLifeH: life } = wear.learnt;
  const wornM2 = Math.max(0, 1 - (ageH ?? 0) / life.value) * area.value * litres;
  return {
    ...common,
    verdict: bath.discardedAt ? "discarded" : isOver ? "over" : wear.verdict,
    reasons: [
      ...(isOver && !wear.reasons.includes("pastLastHour") ? (["pastLastHour"] as const) : []),
      ...wear.reasons,
      ...(volumeMl === undefined ? (["volumeUnknown"] as const) : []),
    ],
    strength: wear.strength,
    timeFactor: wear.timeFactor,
    goodUntilMs:
      wornInH === null
        ? undefined
        : { value: until(wornInH.value), low: until(wornInH.low), high: until(wornInH.high) },
    wornAtM2: {
      value: wornM2,
      low: wornM2 * Math.exp(-nineInTen * area.sdLn),
      high: wornM2 * Math.exp(nineInTen * area.sdLn),
    },
    ground: strips.length > 0 ? "learnt" : (bath.halfLifeH?.ground ?? "prior"),
    halves: strips.length > 0 ? wear.learnt : { halfLifeH, halfAreaM2L },
  };
}

const bleaches: ReadonlySet<BathRole> = new Set(["peroxide", "acidAndPeroxide"]);

/** Hours in a full bottle that halve a bath; of the rest an open tray is supposed. Middles of common practice, no source. */
const bottledH: Readonly<Record<ReturnType<typeof bathPrior>["keeps"], number | undefined>> = {
  notAtAll: undefined,
  doNotReturn: undefined,
  days: 72,
  weeks: 240,
  months: 1440,
};

/** What is believed of a bath before its strips: as it was kept with it, or what is common practice. */
function halvesOf(bath: Bath, role: BathRole): { readonly halfLifeH: Half; readonly halfAreaM2L: Half } {
  const prior = bathPrior({ role });
  const bottleH = bath.keptIn === "bottle" ? bottledH[prior.keeps] : undefined;
  const half = ({ value, sdLn }: Half): Half => ({ value, sdLn });
  return {
    // In a bottle the life of the tray says nothing.
    halfLifeH: bottleH === undefined ? half(bath.halfLifeH ?? prior.halfLifeH) : { ...prior.halfLifeH, value: bottleH },
    halfAreaM2L: half(bath.halfAreaM2L ?? prior.halfAreaM2L),
  };
}

function passedBy(bath: Bath, passed: readonly Passed[], atMs: number): readonly Passed[] {
  const byHand = (bath.byHand ?? []).map(({ at, areaM2, sheets }) => ({ at: at.at, areaM2, sheets }));
  return [...passed, ...byHand].filter(({ at }) => at <= atMs).sort((a, b) => a.at - b.at);
}

/** What the strips said: against the first of them, timed while the bath was fresh. */
function stripsOf({ bath, through }: { readonly bath: Bath; readonly through: readonly Passed[] }) {
  const { mixedAt, strips = [] } = bath;
  const [fresh, ...later] = strips.toSorted((a, b) => a.at.at - b.at.at);
  if (mixedAt === undefined || fresh === undefined) return [];
  const paperAt = (at: number) => through.filter((one) => one.at <= at).reduce((sum, { areaM2 }) => sum + areaM2, 0);
  return later.map(({ at, timeS }) => ({
    ageH: Math.max(0, (at.at - fresh.at.at) / hourMs),
    areaM2: paperAt(at.at) - paperAt(fresh.at.at),
    timeFactor: timeS / fresh.timeS,
  }));
}
