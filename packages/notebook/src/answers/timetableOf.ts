import { OutOfDomain } from "@captray/science/errors";
import { leastInterval, offeredPlan, type WaitingTrayStep } from "@captray/science/process";
import type { BathRole } from "../records/index.ts";
import { processRecipeOf, type RecipeAsked } from "./processRecipeOf.ts";
import { recipeTotalOf } from "./recipeTotalOf.ts";
import type { PlannedStay, TimetableOf } from "./timetableTypes.ts";
import { timetableWords } from "./timetableWords.ts";

export interface TimetableOfInput {
  readonly recipe: RecipeAsked;
  /** What is called out in the dark, one for each lane: "W31". */
  readonly codes: readonly string[];
  /** What the thermometer says that evening, by bath. */
  readonly bathC?: Readonly<Partial<Record<BathRole, number>>>;
  /** How many sheets find room in a step's tray, by the id of the step; 1, in the wash all. */
  readonly places?: Readonly<Record<string, number>>;
  /** How long one move keeps the hands busy. */
  readonly handS?: number;
}

/** A page that is being filled in waits for the answer: of a long line with many waits the best found so far has to do. */
const branches = 4000;

interface Visit extends WaitingTrayStep {
  readonly at: number;
  readonly round: number;
  readonly step: string;
}

type Moves = readonly (readonly number[])[];

/**
 * When which sheet goes into which bath: a recipe of the notebook, and the sheets of the evening.
 *
 * Rounds are counted as usual and come back to their own trays. Where a step needs white light, no sheet comes to it while
 * another may still be fogged: the first ones lie in water until the last is past the bleach.
 */
export function timetableOf(input: TimetableOfInput): TimetableOf {
  const { recipe, codes, handS = 8 } = input;
  const visits = visitsOf(input);
  const sheets = codes.length;
  try {
    const white = recipeLights(recipe, visits);
    const made =
      white === undefined || sheets < 2 ? inOneGo(visits, sheets, handS) : inTwo(visits, sheets, handS, white);
    const plan = { ...made, oneSheetS: visits.reduce((sum, { timeS }) => sum + timeS, 0) };
    const stays = staysOf(visits, plan.movesS);
    const { movesS, ...rest } = plan;
    const shown = { kind: "plan" as const, ...rest, startsS: movesS.map(([startS = 0]) => startS), stays };
    return { ...shown, says: timetableWords({ plan: shown, codes, recipe, handS }) };
  } catch (fault) {
    if (fault instanceof OutOfDomain) return { kind: "refused", fault };
    throw fault;
  }
}

/** Every stay of one sheet, round by round, in whole seconds at the temperature of the evening. */
function visitsOf({ recipe, codes, bathC, places = {} }: TimetableOfInput): readonly Visit[] {
  const { steps } = processRecipeOf({ recipe, ...(bathC && { bathC }) });
  const rounds = recipeTotalOf({ steps: recipe.steps ?? [], bleachRounds: recipe.bleachRounds }).visits;
  const visits: Visit[] = [];
  const visit = (at: number, round: number) => {
    const step = steps[at];
    if (step === undefined) return;
    const { timeS, bathC: hereC, referenceC = 20, q10 = 2, mayWaitUpToS = 0, does, id } = step;
    const dueS = hereC === undefined ? timeS : timeS * q10 ** ((referenceC - hereC) / 10);
    visits.push({
      at,
      round,
      step: step.step,
      timeS: Math.max(1, Math.round(dueS)),
      // What comes again, or follows a temperature, has no place to keep a wait of its own.
      mayWaitUpToS: (rounds[at] ?? 1) > 1 || hereC !== undefined ? 0 : Math.floor(mayWaitUpToS),
      sheets: places[id ?? ""] ?? (does === "wash" ? Math.max(1, codes.length) : 1),
      ...((rounds[at] ?? 1) > 1 && { tray: at }),
    });
  };
  for (let at = 0; at < steps.length; ) {
    const group = steps[at]?.group;
    let beyond = at + 1;
    while (group !== undefined && steps[beyond]?.group?.id === group.id) beyond += 1;
    for (let round = 1; round <= (rounds[at] ?? 1); round += 1) {
      for (let inside = at; inside < beyond; inside += 1) visit(inside, round);
    }
    at = beyond;
  }
  return visits;
}

/** Where white light is needed for the first time, and the last stay before it that would be fogged. */
function recipeLights({ steps = [] }: RecipeAsked, visits: readonly Visit[]) {
  const needs = visits.findIndex(({ at }) => steps[at]?.light === "whiteRequired");
  if (needs < 1) return undefined;
  const lastDark = visits
    .slice(0, needs)
    .findLastIndex(({ at }) => steps[at]?.light === "safelight" || steps[at]?.light === "dark");
  return lastDark < 0 ? undefined : { needs, lastDark };
}

function inOneGo(visits: readonly Visit[], sheets: number, handS: number) {
  const { kind, endS, movesS, proven } = offeredPlan({ steps: visits, sheets, handS, branches });
  const { intervalS, oneSheetS } = leastInterval({ steps: visits, handS });
  const even = sheets < 2 ? undefined : { intervalS, endS: oneSheetS + (sheets - 1) * intervalS };
  return { spacing: kind, endS, movesS, best: proven, even, whiteS: undefined };
}

/** What is done in the dark, then what needs white light; between them the sheets lie in water. */
function inTwo(
  visits: readonly Visit[],
  sheets: number,
  handS: number,
  { needs, lastDark }: { readonly needs: number; readonly lastDark: number },
) {
  const last = needs - 1;
  const darkSteps = visits.slice(0, needs).map((visit, index) => (index === last ? { ...visit, sheets } : visit));
  const dark = offeredPlan({ steps: darkSteps, sheets, handS, branches });
  const light = offeredPlan({ steps: visits.slice(needs), sheets, handS, branches });
  const early = dark.movesS.map((moves) => moves.slice(0, needs));
  const pastBleachS = dark.movesS.at(-1)?.[lastDark + 1] ?? dark.endS;
  let whiteS = pastBleachS;
  const fits = () =>
    light.movesS.every((moves, sheet) => {
      const beginS = (moves[0] ?? 0) + whiteS;
      if (beginS < (dark.movesS[sheet]?.[needs] ?? 0)) return false;
      const others = early.flatMap((known, other) => (other === sheet ? [] : known));
      return moves.every((moveS) => others.every((otherS) => Math.abs(moveS + whiteS - otherS) >= handS));
    });
  while (whiteS < dark.endS + handS && !fits()) whiteS += 1;
  const movesS: Moves = light.movesS.map((moves, sheet) => [
    ...(early[sheet] ?? []),
    ...moves.map((moveS) => moveS + whiteS),
  ]);
  return { spacing: dark.kind, endS: light.endS + whiteS, movesS, best: false, even: undefined, whiteS };
}

function staysOf(visits: readonly Visit[], movesS: Moves): readonly PlannedStay[] {
  return movesS
    .flatMap((moves, lane) =>
      visits.map(({ at, step, round, timeS }, index): PlannedStay => {
        const [inS = 0, outS = 0] = moves.slice(index, index + 2);
        return { lane, at, step, round, inS, outS, waitsS: outS - inS - timeS };
      }),
    )
    .sort((one, other) => one.inS - other.inS || one.lane - other.lane);
}
