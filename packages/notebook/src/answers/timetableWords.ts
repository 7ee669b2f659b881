import type { RecipeAsked } from "./processRecipeOf.ts";
import { recipeTotalOf } from "./recipeTotalOf.ts";
import type { TimetablePlan } from "./timetableTypes.ts";

/** What is told by name before the rest is summed up. */
const mostNamed = 3;
const mostStarts = 6;

/** A timetable in sentences: when each sheet goes in, where one waits, when white light comes on, what is supposed. */
export function timetableWords({
  plan,
  codes,
  recipe,
  handS,
}: {
  readonly plan: Omit<TimetablePlan, "says">;
  readonly codes: readonly string[];
  readonly recipe: RecipeAsked;
  readonly handS: number;
}): readonly string[] {
  const { startsS, endS, even, whiteS, stays } = plan;
  const first = stays.find(({ lane }) => lane === 0)?.step ?? "first bath";
  const last = stays.at(-1)?.step ?? "last bath";
  if (codes.length < 2) {
    return [`${nameOf(codes, 0)} is out of ${the(last)} at ${clock(endS)}.`, ...roundsWords(recipe)];
  }
  const gapS = startsS[1] ?? 0;
  const isEven = startsS.every((startS, lane) => startS === lane * gapS);
  const apart = isEven
    ? `${codes.length} sheets, one every ${clock(gapS)}`
    : `${codes.length} sheets, into ${the(first)} ${codes.length > mostStarts ? `from 0:00 to ${clock(startsS.at(-1) ?? 0)}` : `at ${listed(startsS.map(clock))}`}`;
  return [
    `${apart}: the last is out of ${the(last)} at ${clock(endS)}.`,
    ...waitsWords(plan, codes),
    ...(whiteS === undefined
      ? []
      : [
          `White light at ${clock(whiteS)}, when ${nameOf(codes, codes.length - 1)} is past the bleach; until then the others lie in water.`,
        ]),
    ...(even === undefined || even.endS <= endS || isEven
      ? []
      : [`Evenly spaced, one every ${clock(even.intervalS)}, it would take ${clock(even.endS - endS)} longer.`]),
    ...roundsWords(recipe),
    `No two moves of different sheets are nearer than ${handS} s.`,
  ];
}

function waitsWords({ stays, whiteS }: Omit<TimetablePlan, "says">, codes: readonly string[]): readonly string[] {
  // What lies in water until white light is told there.
  const waits = stays.filter(({ waitsS, outS }) => waitsS > 0 && (whiteS === undefined || outS < whiteS));
  if (waits.length <= mostNamed) {
    return waits.map(
      ({ lane, step, waitsS }) => `${nameOf(codes, lane)} stays ${clock(waitsS)} longer in ${the(step)}.`,
    );
  }
  const places = [...new Set(waits.map(({ step }) => the(step)))];
  const longestS = Math.max(...waits.map(({ waitsS }) => waitsS));
  return [`Some sheets stay up to ${clock(longestS)} longer in ${listed(places)}.`];
}

function roundsWords({ steps = [], bleachRounds }: RecipeAsked): readonly string[] {
  const { visits } = recipeTotalOf({ steps, bleachRounds });
  const byEye = steps.findIndex(({ group }) => group?.until !== undefined);
  const rounds = visits[byEye];
  if (rounds === undefined) return [];
  const times = rounds === 1 ? "one round" : `${rounds} rounds`;
  return [`Planned for ${times} of bleach; a sheet that needs another holds up those behind it.`];
}

function nameOf(codes: readonly string[], lane: number): string {
  const code = codes[lane] ?? "";
  return code === "" ? "The sheet" : code;
}

function the(step: string): string {
  return /^(?:the|my|our|a|an)\s/i.test(step) ? step : `the ${step}`;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

/** A time on the clock of the trays: 0:08, 12:40, 1:02:05. */
function clock(seconds: number): string {
  const two = (value: number) => String(value).padStart(2, "0");
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor((seconds % 3600) / 60);
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds % 60)}` : `${minutes}:${two(seconds % 60)}`;
}
