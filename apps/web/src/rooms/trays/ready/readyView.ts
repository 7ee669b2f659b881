import {
  bathWearOf,
  piecesOf,
  processRecipeOf,
  recipeFindingsOf,
  sheetInRun,
  type TimetableOf,
  timetableOf,
} from "@captray/notebook/answers";
import type { SheetCard } from "@captray/notebook/journal";
import type { Bath, BathRole, Recipe, RecipeStep, Run, Sheet } from "@captray/notebook/records";
import type { ReadyDraft } from "./readyDraft.ts";

/** One sheet or piece that may go in. */
export interface Candidate {
  readonly key: string;
  readonly sheetId: string;
  readonly letter?: string | undefined;
  readonly code: string;
  readonly what: string;
  readonly kind: "negative" | "positive" | undefined;
  readonly owesFlash: boolean;
  readonly exposedMs: number;
  readonly chosen: boolean;
}

export interface BathChoice {
  readonly role: BathRole;
  /** The step it is first used in. */
  readonly name: string;
  readonly options: readonly { readonly id: string; readonly name: string; readonly detail: string }[];
  readonly chosenId: string;
}

export interface Temperature {
  readonly role: BathRole;
  readonly name: string;
  readonly bathC: number;
  readonly writtenC: number;
}

export interface ReadyLane {
  readonly code: string;
  readonly sheetIds: readonly string[];
  readonly pieces: readonly { readonly sheetId: string; readonly letter: string }[];
}

export interface ReadyView {
  readonly candidates: readonly Candidate[];
  /** Codes of sheets that lie in a run that goes on. */
  readonly elsewhere: readonly string[];
  readonly recipes: readonly { readonly id: string; readonly name: string; readonly detail: string }[];
  readonly recipe: Recipe | undefined;
  readonly lanes: readonly ReadyLane[];
  readonly timetable: TimetableOf | undefined;
  readonly baths: readonly BathChoice[];
  readonly temperatures: readonly Temperature[];
  /** Sheets that still owe their flash. */
  readonly owing: readonly Candidate[];
  /** Nonsense in the recipe that nobody goes on with knowingly. */
  readonly nonsense: readonly { readonly message: string; readonly hint: string }[];
  readonly doubtful: readonly string[];
  /** A run of this notebook that is not over. */
  readonly goingOn: string | undefined;
  /** Why it cannot begin yet. */
  readonly waits: string | undefined;
}

interface ViewInput {
  readonly draft: ReadyDraft;
  readonly cards: readonly SheetCard[];
  readonly sheetOf: (id: string) => Sheet | undefined;
  readonly subjectOf: (id: string | undefined) => string;
  readonly recipes: readonly Recipe[];
  readonly baths: readonly Bath[];
  readonly runs: readonly Run[];
  readonly nowMs: number;
}

const timed: ReadonlySet<RecipeStep["does"]> = new Set(["develop", "firstDevelop", "redevelop"]);
const kindWords = { negative: "paper negative", positive: "direct positive" } as const;

/** What is ready for a run, and what is still to be said. */
export function readyView(input: ViewInput): ReadyView {
  const { draft, cards, recipes, runs } = input;
  const goingOn = runs.findLast(({ endedAt }) => endedAt === undefined);
  const candidates = candidatesOf(input);
  const chosen = draft.keys.flatMap((key) => candidates.find((one) => one.key === key && one.chosen) ?? []);
  const kinds = new Set(chosen.flatMap(({ kind }) => kind ?? []));
  const [kind] = kinds;
  const fitting = recipes.filter(
    ({ steps = [], result }) => steps.length > 0 && (kind === undefined || result === kind),
  );
  const recipe =
    kinds.size > 1 ? undefined : (fitting.find(({ id }) => id === draft.recipeId) ?? usualOf(fitting, chosen, input));
  const lanes = lanesOf(chosen, draft.goes);
  const findings = recipe === undefined ? [] : recipeFindingsOf({ recipe });
  const nonsense = findings.filter(({ weight, known }) => weight === "impossible" || (weight === "nonsense" && !known));
  const timetable =
    recipe === undefined || lanes.length === 0 || nonsense.length > 0
      ? undefined
      : timetableOf({ recipe, codes: lanes.map(({ code }) => code), bathC: draft.bathC, handS });
  return {
    candidates,
    elsewhere: cards.flatMap(({ id, code }) => (isFree(runs, id) ? [] : [code])),
    recipes: fitting.map((one) => ({
      id: one.id,
      name: one.name,
      detail: one.result === undefined ? "" : kindWords[one.result],
    })),
    recipe,
    lanes,
    timetable,
    baths: recipe === undefined ? [] : bathsOf(recipe, input),
    temperatures: recipe === undefined ? [] : temperaturesOf(recipe, draft),
    owing: chosen.filter(({ owesFlash }) => owesFlash),
    nonsense,
    doubtful: findings.filter(({ weight }) => weight === "doubtful").map(({ message }) => message),
    goingOn: goingOn?.id,
    waits:
      goingOn !== undefined
        ? "another run goes on"
        : chosen.length === 0
          ? "no sheet is chosen"
          : kinds.size > 1
            ? "negatives and positives are two runs"
            : recipe === undefined
              ? "no recipe for it"
              : nonsense.length > 0
                ? "the recipe cannot be run as it stands"
                : undefined,
  };
}

/** How long one move keeps the hands busy (common practice, no source). */
export const handS = 8;

/** Neither it nor a piece of it is in a run that goes on. */
function isFree(runs: readonly Run[], sheetId: string, letter?: string): boolean {
  return sheetInRun({ runs, sheetId, letter }).kind === "free";
}

function candidatesOf({ draft, cards, sheetOf, subjectOf, runs }: ViewInput): readonly Candidate[] {
  return cards
    .filter(({ state }) => state === "exposed" || state === "flashOwed" || state === "inProcess")
    .flatMap((card): readonly Candidate[] => {
      const { id, code, state, result: kind } = card;
      const sheet = sheetOf(id);
      const what = [kind === undefined ? "sheet" : kindWords[kind], subjectOf(card.links.sceneId)]
        .filter(Boolean)
        .join(", ");
      const pieces = sheet === undefined ? [] : piecesOf({ sheet });
      const common = {
        sheetId: id,
        what,
        kind,
        owesFlash: state === "flashOwed",
        exposedMs: card.dates.exposedAt?.at ?? 0,
      };
      if (pieces.length > 0) {
        return pieces
          .filter(({ piece, state: is }) => (is === "exposed" || is === "flashOwed") && isFree(runs, id, piece.letter))
          .map((piece) => {
            const key = `${id}/${piece.piece.letter}`;
            return { ...common, key, letter: piece.piece.letter, code: piece.code, chosen: draft.keys.includes(key) };
          });
      }
      if (state === "inProcess" || !isFree(runs, id)) return [];
      return [{ ...common, key: id, code: code === "" ? "no code" : code, chosen: draft.keys.includes(id) }];
    })
    .sort(
      (a, b) => Number(b.owesFlash) - Number(a.owesFlash) || a.exposedMs - b.exposedMs || (a.code < b.code ? -1 : 1),
    );
}

/** The recipe the first sheet was planned with, else the last one of its kind. */
function usualOf(fitting: readonly Recipe[], chosen: readonly Candidate[], { sheetOf }: ViewInput): Recipe | undefined {
  const planned = chosen[0] && sheetOf(chosen[0].sheetId)?.recipeId;
  return fitting.find(({ id }) => id === planned) ?? fitting.at(-1);
}

function lanesOf(chosen: readonly Candidate[], goes: ReadyDraft["goes"]): readonly ReadyLane[] {
  const lane = (some: readonly Candidate[]): ReadyLane => ({
    code: codeOf(some.map(({ code }) => code)),
    sheetIds: some.flatMap(({ sheetId, letter }) => (letter === undefined ? [sheetId] : [])),
    pieces: some.flatMap(({ sheetId, letter }) => (letter === undefined ? [] : [{ sheetId, letter }])),
  });
  if (chosen.length === 0) return [];
  return goes === "together" ? [lane(chosen)] : chosen.map((one) => lane([one]));
}

const mostSigns = 60;

/** What is called out in the dark; of more codes than a record takes, how many more. */
function codeOf(codes: readonly string[]): string {
  for (let shown = codes.length; shown > 0; shown--) {
    const left = codes.length - shown;
    const text = [...codes.slice(0, shown), ...(left > 0 ? [`+${left}`] : [])].join(", ");
    if (text.length <= mostSigns) return text;
  }
  return `${codes.length} sheets`;
}

function bathsOf({ steps = [] }: Recipe, { draft, baths, nowMs }: ViewInput): readonly BathChoice[] {
  const roles = new Map<BathRole, string>();
  for (const { bath, name } of steps)
    if (bath !== undefined && bath !== "water" && !roles.has(bath)) roles.set(bath, name);
  return [...roles].map(([role, name]) => {
    const usable = baths
      .filter((bath) => bath.role === role && bath.discardedAt === undefined)
      .map((bath) => ({ bath, wear: bathWearOf({ bath, atMs: nowMs }) }))
      .filter(({ wear }) => wear.verdict !== "over" && wear.verdict !== "discarded")
      .reverse();
    const options = usable.map(({ bath, wear }) => ({
      id: bath.id as string,
      name: bath.name === "" ? name : bath.name,
      detail: { use: "good", longer: "longer than written", replace: "worn: replace it", over: "", discarded: "" }[
        wear.verdict
      ],
    }));
    const asked = draft.baths[role];
    return {
      role,
      name,
      options,
      chosenId: asked === "none" ? "none" : (options.find(({ id }) => id === asked)?.id ?? options[0]?.id ?? "none"),
    };
  });
}

function temperaturesOf(recipe: Recipe, { bathC }: ReadyDraft): readonly Temperature[] {
  const seen = new Set<BathRole>();
  return (recipe.steps ?? []).flatMap(({ does, bath, name, tempC }) => {
    if (!timed.has(does) || bath === undefined || tempC === undefined || seen.has(bath)) return [];
    seen.add(bath);
    return [{ role: bath, name, bathC: bathC[bath] ?? tempC.aim, writtenC: tempC.aim }];
  });
}

/** The time of the first development as this evening's bath asks for it, and as it is written. */
export function developsS(
  recipe: Recipe,
  bathC: ReadyDraft["bathC"],
): { readonly writtenS: number; readonly dueS: number } | undefined {
  const { steps } = processRecipeOf({ recipe, bathC });
  const step = steps.find(({ does }) => does === "firstDevelop" || does === "develop");
  if (step === undefined) return undefined;
  const { timeS, bathC: hereC, referenceC = 20, q10 = 2 } = step;
  return { writtenS: timeS, dueS: hereC === undefined ? timeS : timeS * q10 ** ((referenceC - hereC) / 10) };
}
