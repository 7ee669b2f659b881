import { OutOfDomain, requireWithin } from "../errors/index.ts";
import { CAUTIONS } from "./cautionTable.ts";
import type { Caution, CautionAct, CautionWhen, Substance } from "./cautionTypes.ts";

export interface Held {
  readonly substance: Substance;
  /** Strength in % w/w; left out: unknown, and taken for the strongest that is sold. */
  readonly percentWw?: number;
}

export interface CautionsForInput {
  /** What is in the bath, or is poured. */
  readonly held: readonly Held[];
  /** What stands beside it, comes before or after it, or is in the room; left out: nobody said. */
  readonly beside?: readonly Substance[];
  readonly act?: CautionAct;
  /** How a solid is handled; left out: a developer that is mixed may be powder. */
  readonly form?: "powder" | "liquid";
  /** Ids that were shown earlier in this sitting. */
  readonly seen?: readonly string[];
}

/** A caution as it is shown. */
export type ShownCaution = Pick<Caution, "id" | "text" | "dismissible" | "family" | "source">;

/** What a substance also is. */
const ALSO: Partial<Record<Substance, readonly Substance[]>> = {
  acetic: ["acid"],
  citric: ["acid"],
  sulfuric: ["acid"],
  fixer: ["thiosulfate"],
  "ammonium thiosulfate": ["thiosulfate", "fixer"],
  thiosulfate: ["fixer"],
  metabisulfite: ["sulfite"],
  acetone: ["solvent"],
  alcohol: ["solvent"],
  dichromate: ["bleach"],
  permanganate: ["bleach"],
};

const KNOWN: readonly Substance[] = [
  ...new Set(CAUTIONS.flatMap(({ when }) => namedIn(when))),
  "acetone",
  "alcohol",
  "hypochlorite",
];

/**
 * The cautions for an act, at the strengths really reached: of each family the strongest, `help` last.
 *
 * Method   every row of the table whose condition holds; what was seen in this sitting is left out unless it has got worse or must stay.
 * Units    % w/w; a strength nobody knows counts as the strongest that is sold
 * Holds    as a reminder only: the supplier's safety data sheet and local rules come first.
 *
 * @throws {OutOfDomain} notFinite, outOfRange, unknownWord
 * @source echa-peroxide: limits (second hand); eu-2019-1148: 12 and 15 % (second hand); clp-acetic: limits (second hand); none: the rest, by table
 * @example cautionsFor({ held: [{ substance: "h2o2", percentWw: 11 }], act: "run", beside: [] }).map(({ id }) => id) // ["ox-eye8", "mains", "air", "help"]
 */
export function cautionsFor({ held, beside, act = "mix", form, seen = [] }: CautionsForInput): readonly ShownCaution[] {
  for (const [index, { substance, percentWw = 0 }] of held.entries()) {
    requireKnown(substance, `held/${index}/substance`);
    requireWithin({ percentWw }, { least: 0, most: 100 });
  }
  for (const [index, substance] of (beside ?? []).entries()) requireKnown(substance, `beside/${index}`);
  const inside = withWhatTheyAre(
    held.map(({ substance }) => substance),
    act,
  );
  const around = withWhatTheyAre(beside ?? [], act);
  const facts: Facts = { held, inside, around, roomKnown: beside !== undefined, act, form };
  const due = CAUTIONS.filter(({ when }) => holds(when, facts));
  const strongest = due.filter(
    ({ family, rank }) => !due.some((other) => other.family === family && other.rank > rank),
  );
  const seenBefore = CAUTIONS.filter(({ id }) => seen.includes(id));
  const left = strongest.filter(
    ({ dismissible, family, rank }) =>
      !dismissible || !seenBefore.some((other) => other.family === family && other.rank >= rank),
  );
  return [...left.filter(({ id }) => id !== "help"), ...left.filter(({ id }) => id === "help")].map(
    ({ id, text, dismissible, family, source }) => ({ id, text, dismissible, family, source }),
  );
}

interface Facts {
  readonly held: readonly Held[];
  readonly inside: ReadonlySet<Substance>;
  readonly around: ReadonlySet<Substance>;
  readonly roomKnown: boolean;
  readonly act: CautionAct;
  readonly form: "powder" | "liquid" | undefined;
}

function holds(when: CautionWhen, facts: Facts): boolean {
  const { inside, around, act } = facts;
  const anywhere = (substance: Substance) => inside.has(substance) || around.has(substance);
  if (when.act !== undefined && !when.act.includes(act)) return false;
  if (when.has !== undefined && !isAsStrong(when.has, when.minW ?? 0, facts)) return false;
  if (when.any !== undefined && !when.any.some((each) => inside.has(each))) return false;
  if (when.all !== undefined && !(when.all.every(anywhere) && when.all.some((each) => inside.has(each)))) return false;
  if (when.with !== undefined && !when.with.some(anywhere)) return false;
  if (when.room !== undefined && facts.roomKnown && !anywhere(when.room)) return false;
  return when.form === undefined || (facts.form ?? (act === "mix" ? "powder" : "liquid")) === when.form;
}

function isAsStrong(substance: Substance, minW: number, { held, inside }: Facts): boolean {
  if (minW === 0) return inside.has(substance);
  return held.some(
    (each) => each.substance === substance && (each.percentWw ?? STRONGEST_SOLD[substance] ?? 100) >= minW,
  );
}

/** % w/w of what a private person meets without a licence, in a bottle without a figure on it. */
const STRONGEST_SOLD: Partial<Record<Substance, number>> = { h2o2: 12, sulfuric: 15 };

function withWhatTheyAre(substances: readonly Substance[], act: CautionAct): ReadonlySet<Substance> {
  const all = new Set<Substance>(substances);
  for (const substance of substances) for (const also of ALSO[substance] ?? []) all.add(also);
  // Peroxide that is discarded has bleached silver.
  if (act === "discard" && all.has("h2o2")) all.add("bleach");
  return all;
}

function namedIn({ has, any = [], all = [], with: beside = [], room }: CautionWhen): readonly Substance[] {
  return [...(has === undefined ? [] : [has]), ...any, ...all, ...beside, ...(room === undefined ? [] : [room])];
}

function requireKnown(substance: Substance, key: string): void {
  if (!KNOWN.includes(substance)) throw new OutOfDomain("unknownWord", { substance, choices: KNOWN }, key);
}
