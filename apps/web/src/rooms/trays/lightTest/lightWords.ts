import type { LightSide, LightTestAnswer, LightVerdict } from "@captray/notebook/answers";
import type { Test } from "@captray/notebook/records";

const days = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric", timeZone: "UTC" });

/** "3 min", "45 s", "1 min 30", rounded down to what a person counts, since it is a limit. */
export function limitWords(timeS: number): string {
  if (timeS < 60) return `${Math.floor(timeS)} s`;
  if (timeS >= 600) return `${Math.floor(timeS / 60)} min`;
  const tens = Math.floor((timeS % 60) / 10) * 10;
  const minutes = Math.floor(timeS / 60);
  return tens === 0 ? `${minutes} min` : `${minutes} min ${tens}`;
}

/** A planned time of a band: "0", "30 s", "1 min". */
export function bandWords(timeS: number): string {
  if (timeS === 0) return "0";
  const minutes = timeS / 60;
  if (timeS < 60) return `${Math.round(timeS)} s`;
  return Number.isInteger(minutes) ? `${minutes} min` : limitWords(timeS);
}

/** Which light, in one word of the person's own. */
export function lightName(test: Pick<Test, "light" | "lightName">): string {
  if (test.light === "screen") return "This screen, all red";
  return test.lightName === undefined || test.lightName === "" ? "The safelight" : test.lightName;
}

/** "1.2 m", "50 cm": how it was typed, else rounded. */
function distanceWords(test: Pick<Test, "distanceMm">): string {
  const { distanceMm } = test;
  if (distanceMm === undefined) return "this distance";
  if (distanceMm.text !== undefined)
    return /[a-z"″]/i.test(distanceMm.text) ? distanceMm.text : `${distanceMm.text} mm`;
  return `${Math.round(distanceMm.value)} mm`;
}

const sideWords: Readonly<Record<LightSide, string>> = {
  before: "where the light came before the exposure",
  after: "where the light came after the exposure",
  alone: "on bare paper",
};

/** The answer of a test: the head, and what it rests on. */
export function answerWords(
  test: Test,
  answer: Exclude<LightTestAnswer, { readonly kind: "open" }>,
): { readonly head: string; readonly say: string } {
  const at = test.light === "screen" ? `at ${distanceWords(test)} from the paper` : `at ${distanceWords(test)}`;
  if (answer.kind === "notSafe") {
    const first = limitWords(answer.firstS);
    const nearer =
      test.light === "screen"
        ? "Farther away, turned aside, dimmer, or under a red filter sheet; then test again."
        : "A weaker bulb, a fresh filter, twice the distance, or bounced off a wall; then test again.";
    return {
      head: `Not safe even for ${first}`,
      say: `It shows ${sideWords[answer.side]}, ${at}. ${nearer}`,
    };
  }
  const { safeS, adviseS, reached, side, by, longestS } = answer;
  const safe = limitWords(safeS);
  const ground = by === "densities" ? "by densities" : "by eye";
  const limit = reached
    ? `The first change comes ${sideWords[side]}.`
    : `Nothing was seen in ${limitWords(longestS)}; longer was not tried.`;
  return {
    head: `Safe for ${safe} ${at}`,
    say: `${limit} Stay within ${limitWords(adviseS)} for each sheet, before and after the exposure together, until the stop (${ground}). No light is safe for ever: test again when ${test.light === "screen" ? "screen, brightness" : "bulb, filter"} or paper change.`,
  };
}

/** One line for a list: the light, its verdict, its paper and day. */
export function verdictLine(verdict: LightVerdict, paper: string): string {
  const { test, answer, otherPaper } = verdict;
  const when = test.doneAt === undefined ? "" : `, ${dayOf(test.doneAt)}`;
  const on = paper === "" ? "" : ` (${paper}${when})`;
  const what =
    answer.kind === "notSafe"
      ? `not safe even for ${limitWords(answer.firstS)}`
      : `within ${limitWords(answer.adviseS)} at ${distanceWords(test)}`;
  return `${what}${on}${otherPaper ? "; not tried on this paper" : ""}`;
}

/** The day of a moment as the person lived it. */
export function dayOf({ at, offsetMin }: { readonly at: number; readonly offsetMin: number }): string {
  return days.format(at + offsetMin * 60_000);
}
