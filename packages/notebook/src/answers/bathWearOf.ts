import type { Bath, BathRole } from "../records/index.ts";
import { bathPriors, type Half } from "./bathPriors.ts";
import { type StripSaid, spreadOf, wearGrid } from "./wearGrid.ts";

/** Paper that went through a bath, and when. */
export interface Passed {
  readonly at: number;
  readonly areaM2: number;
  readonly sheets: number;
}

export interface BathWearInput {
  readonly bath: Bath;
  /** The moment it is asked of, ms since 1970. */
  readonly atMs: number;
  /** Found in the runs; what was counted by hand is in the record. */
  readonly passed?: readonly Passed[];
}

/** A middle with its nine in ten. */
export interface Spread {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export type BathVerdict = "use" | "longer" | "replace" | "over" | "discarded";

export interface BathWear {
  readonly verdict: BathVerdict;
  /** What it was good for and is not any more: why the verdict is what it is. */
  readonly because: "fresh" | "age" | "area" | "lastHour" | "discarded" | "bubbles" | "lasts";
  readonly ageH: number | undefined;
  readonly areaM2: number;
  readonly sheets: number;
  readonly strength: Spread;
  /** How many times longer the step takes now. */
  readonly timeFactor: Spread;
  /** Halvings so far by age and by paper, in the middle. */
  readonly byAge: number;
  readonly byArea: number;
  /** When it is worn by half, if nothing more goes through; a last hour ends it before. */
  readonly goodUntilMs: Spread | undefined;
  /** Paper to come until it is worn by half, if it went through at once. */
  readonly areaLeftM2: Spread | undefined;
  readonly lastHourMs: number | undefined;
  /** What its life rests on. */
  readonly ground: Half["ground"];
  /** What nobody wrote down; the spread then holds what it may be. */
  readonly unknown: readonly ("age" | "volume")[];
  /** The two halves as they are believed now. */
  readonly halves: { readonly halfLifeH: Half; readonly halfAreaM2L: Half } | undefined;
}

/** Worn by half: longer from here on; to be replaced half a halving later (assumed). */
const worn = 1;
const spent = 1.5;
const hourMs = 3_600_000;
/** Half a day and half a litre, give or take a factor, where nobody wrote it down. */
const unknownAge = 0.5;
const unknownVolumeL = 0.5;

/**
 * How worn a bath is by its age and the paper that went through it, with doubt and reason, and what to do with it.
 *
 * Never by stoichiometry alone: a bath dies of age and gas first. Strips that were timed in it correct what is believed of its life.
 */
export function bathWearOf({ bath, atMs, passed = [] }: BathWearInput): BathWear {
  const role = bath.role ?? "water";
  const priors = bathPriors({ role, keptIn: bath.keptIn });
  const through = [...passed, ...(bath.byHand ?? []).map(({ at, ...rest }) => ({ at: at.at, ...rest }))].filter(
    ({ at }) => at <= atMs,
  );
  const areaM2 = through.reduce((sum, one) => sum + one.areaM2, 0);
  const sheets = through.reduce((sum, one) => sum + one.sheets, 0);
  const ageH = bath.mixedAt && Math.max(0, (atMs - bath.mixedAt.at) / hourMs);
  const lastHourMs = bath.lastHourAt?.at;
  const common = { ageH, areaM2, sheets, lastHourMs };
  if (priors === undefined) return lasting(common, bath);
  const volumeL = bath.volumeMl === undefined ? unknownVolumeL : bath.volumeMl / 1000;
  const first = { halfLifeH: bath.halfLifeH ?? priors.halfLifeH, halfAreaM2L: bath.halfAreaM2L ?? priors.halfAreaM2L };
  const strips = stripsOf({ bath, through, volumeL });
  const points = wearGrid({ ...first, strips });
  const age = ageH ?? unknownAge * first.halfLifeH.value;
  const areaM2L = areaM2 / volumeL;
  const halvings = spreadOf(points, (one) => age / one.halfLifeH + areaM2L / one.halfAreaM2L);
  const middle = spreadOf(points, ({ halfLifeH }) => halfLifeH).value;
  const middleArea = spreadOf(points, ({ halfAreaM2L }) => halfAreaM2L).value;
  const [byAge, byArea] = [age / middle, areaM2L / middleArea];
  const goodUntilMs =
    bath.mixedAt &&
    spreadOf(points, (one) => {
      const hours = Math.max(0, one.halfLifeH * (worn - areaM2L / one.halfAreaM2L));
      return Math.min(lastHourMs ?? Number.MAX_SAFE_INTEGER, (bath.mixedAt?.at ?? 0) + hours * hourMs);
    });
  return {
    ...common,
    ...verdictOf({ bath, role, halvings: halvings.value, byAge, byArea, atMs }),
    strength: { value: 2 ** -halvings.value, low: 2 ** -halvings.high, high: 2 ** -halvings.low },
    timeFactor: { value: 2 ** halvings.value, low: 2 ** halvings.low, high: 2 ** halvings.high },
    byAge,
    byArea,
    goodUntilMs,
    areaLeftM2: spreadOf(points, (one) =>
      Math.max(0, (worn - age / one.halfLifeH) * one.halfAreaM2L * volumeL - areaM2),
    ),
    ground: strips.length > 0 ? "learnt" : first.halfLifeH.ground,
    unknown: [
      ...(ageH === undefined ? (["age"] as const) : []),
      ...(bath.volumeMl === undefined ? (["volume"] as const) : []),
    ],
    halves: strips.length === 0 ? first : learnt(points),
  };
}

function verdictOf(asked: {
  readonly bath: Bath;
  readonly role: BathRole;
  readonly halvings: number;
  readonly byAge: number;
  readonly byArea: number;
  readonly atMs: number;
}): Pick<BathWear, "verdict" | "because"> {
  const { bath, role, halvings, byAge, byArea, atMs } = asked;
  if (bath.discardedAt) return { verdict: "discarded", because: "discarded" };
  if (bath.lastHourAt && atMs >= bath.lastHourAt.at) return { verdict: "over", because: "lastHour" };
  const because = byAge >= byArea ? "age" : "area";
  // A longer first development does not undo a tired bath: it is richer in bromide besides, and nothing repairs it.
  if (halvings >= (role === "firstDeveloper" ? worn : spent)) return { verdict: "replace", because };
  const foams = bath.bubblesAt !== undefined && bath.bubblesAt.at <= atMs && bleaches.has(role);
  if (foams) return { verdict: "replace", because: "bubbles" };
  return halvings >= worn ? { verdict: "longer", because } : { verdict: "use", because: "fresh" };
}

const bleaches: ReadonlySet<BathRole> = new Set(["peroxide", "acidAndPeroxide"]);

/** What the strips said: against the first of them, timed while the bath was fresh. */
function stripsOf({
  bath,
  through,
  volumeL,
}: {
  readonly bath: Bath;
  readonly through: readonly Passed[];
  readonly volumeL: number;
}): readonly StripSaid[] {
  const { mixedAt, strips = [] } = bath;
  const [fresh, ...later] = strips.toSorted((a, b) => a.at.at - b.at.at);
  if (mixedAt === undefined || fresh === undefined) return [];
  const stateAt = (at: number) => ({
    ageH: Math.max(0, (at - mixedAt.at) / hourMs),
    areaM2L: through.filter((one) => one.at <= at).reduce((sum, { areaM2 }) => sum + areaM2, 0) / volumeL,
  });
  const begun = stateAt(fresh.at.at);
  return later.map(({ at, timeS }) => {
    const now = stateAt(at.at);
    return {
      ageH: now.ageH - begun.ageH,
      areaM2L: now.areaM2L - begun.areaM2L,
      halvings: Math.max(0, Math.log2(timeS / fresh.timeS)),
    };
  });
}

function learnt(points: ReturnType<typeof wearGrid>): NonNullable<BathWear["halves"]> {
  const half = (of: (point: (typeof points)[number]) => number): Half => {
    const ln = spreadOf(points, (point) => Math.log(of(point)));
    return { value: Math.exp(ln.value), sdLn: (ln.high - ln.low) / (2 * 1.645), ground: "learnt" };
  };
  return { halfLifeH: half(({ halfLifeH }) => halfLifeH), halfAreaM2L: half(({ halfAreaM2L }) => halfAreaM2L) };
}

/** Water does not wear: it is changed. */
function lasting(common: Pick<BathWear, "ageH" | "areaM2" | "sheets" | "lastHourMs">, bath: Bath): BathWear {
  const one = { value: 1, low: 1, high: 1 };
  return {
    ...common,
    verdict: bath.discardedAt ? "discarded" : "use",
    because: bath.discardedAt ? "discarded" : "lasts",
    strength: one,
    timeFactor: one,
    byAge: 0,
    byArea: 0,
    goodUntilMs: undefined,
    areaLeftM2: undefined,
    ground: "prior",
    unknown: [],
    halves: undefined,
  };
}
