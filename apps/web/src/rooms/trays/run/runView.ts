import type { RecipeStep } from "@captray/notebook/records";
import type { LaneMeaning } from "@captray/science/process";
import { benchOf, figureOf } from "./benchOf.ts";
import { cautionWords } from "./cautionWords.ts";
import { dueOf, laneInOrder } from "./nextLane.ts";
import { edgeOf, rockEveryS, rockingsIn } from "./rockings.ts";
import type { LaneInHand, RunInHand, RunPress, RunView } from "./runTypes.ts";
import { atHead, codesWords, goWord, passedTime, saidTime, theBath, trayTime } from "./runWords.ts";
import { stillUnstarted, whiteWaitsFor } from "./whiteLight.ts";

/** So long before the end of a round the two halves stand there: time to look. */
const asksBeforeS = 20;

const counts = ["no sheet", "one sheet", "two sheets", "three sheets", "four sheets", "five sheets", "six sheets"];

/** The page of a run: the one next move, and everything round it. */
export function runView(run: RunInHand): RunView {
  const { recipeName, lanes, nowS } = run;
  const next = laneInOrder(run, 0);
  const steps = next?.steps ?? lanes[0]?.steps ?? [];
  const all = lanes.flatMap(({ codes }) => codes);
  const top = `${recipeName === "" ? "The run" : atHead(recipeName)}, ${counts[all.length] ?? `${all.length} sheets`}`;
  const since = `${passedTime(nowS)} since the start`;
  const stay = next?.state.stay ?? null;
  const leftS = stay === null ? (next === undefined ? 0 : next.plannedStartS - nowS) : stay.endS - nowS;
  const means = next?.state.means ?? null;
  const move = moveWords(next, means);
  const at = stay?.at ?? 0;
  const here = steps[at];
  const to = targetOf(means);
  const ways = wayWords(next, means);
  const lines = linesOf({ run, next, means });
  const figure = stay === null ? trayTime(leftS) : figureOf(leftS);
  const spoken = spokenOf({ next, move, leftS, stay, lanes, nowS, ways });
  return {
    laneId: next?.id ?? null,
    press: pressOf(means),
    top,
    since,
    figure,
    bench: benchOf({ steps, lanes: lanes.filter((lane) => sameBench(lane.steps, steps)), next, nowS, says: spoken }),
    move,
    rock: rockOf({ step: stay === null ? undefined : here, stay, nowS }),
    lift: liftWords({ next, nowS }),
    lines,
    caution: cautionWords([stay === null ? undefined : here, to === null ? undefined : steps[to]]),
    means: ways,
    noPress: noPressWords({ next, nowS }),
    round: roundOf({ run, next, means }),
    paused: next?.state.state === "paused",
    over: next === undefined,
    spoken,
  };
}

/** Whether two lanes go through one line of trays. */
function sameBench(one: readonly RecipeStep[], other: readonly RecipeStep[]): boolean {
  return one === other || (one.length === other.length && one.every(({ id }, place) => id === other[place]?.id));
}

/** What the big press does to its lane. */
function pressOf(means: LaneMeaning | null): RunPress | null {
  if (means === null) return null;
  return means.kind === "start" ? "start" : "next";
}

/** The step the sheet goes into next. */
function targetOf(means: LaneMeaning | null): number | null {
  switch (means?.kind) {
    case "start":
    case "next":
    case "again":
      return means.to.at;
    case "round":
      return means.another.at;
    default:
      return null;
  }
}

function moveWords(next: LaneInHand | undefined, means: LaneMeaning | null): string {
  if (next === undefined || means === null) return "Everything is out of the trays";
  const who = codesWords(next.codes);
  switch (means.kind) {
    case "start":
      return `${who}: into ${theBath(means.to.step)}`;
    case "next":
      return `${who}: ${inside(means.from.step)} to ${inside(means.to.step)}`;
    case "again":
      return `${who}: ${inside(means.from.step)} again`;
    case "round":
      return `${who}: look at it`;
    case "out":
      return `${who}: out of ${theBath(means.from.step)}`;
  }
}

function wayWords(next: LaneInHand | undefined, means: LaneMeaning | null): readonly [string, string] | null {
  if (next === undefined || means === null) return null;
  const who = codesWords(next.codes);
  const go = goWord(next.codes);
  switch (means.kind) {
    case "start":
    case "next":
      return [`Press as ${who}`, `${go} into ${theBath(means.to.step)}`];
    case "again":
      return [`Press as ${who}`, `${go} into it again`];
    case "round":
      return [`Press as ${who}`, `${go} into ${theBath(means.another.step)}`];
    case "out":
      return [`Press as ${who}`, `${next.codes.length > 1 ? "come" : "comes"} out of ${theBath(means.from.step)}`];
  }
}

function inside(name: string): string {
  return theBath(name).replace(/^the /, "");
}

function rockOf({
  step,
  stay,
  nowS,
}: {
  readonly step: RecipeStep | undefined;
  readonly stay: NonNullable<LaneInHand["state"]["stay"]> | null;
  readonly nowS: number;
}): RunView["rock"] {
  if (step === undefined || stay === null) return null;
  const inS = nowS - stay.startS;
  const liftS = stay.liftS - stay.startS;
  if (inS >= liftS) return null;
  const everyS = rockEveryS(step.agitation);
  const times = rockingsIn({ everyS, untilS: liftS });
  const place = times.findIndex((atS) => atS > inS);
  if (place < 0) {
    const words = step.agitation ?? "";
    return words === "" || everyS !== undefined ? null : { edge: null, words: atHead(words) };
  }
  const edge = edgeOf(place);
  const inWords = Math.ceil((times[place] ?? 0) - inS);
  return { edge, words: `Rock in ${inWords} s: ${edge} edge up` };
}

function liftWords({ next, nowS }: { readonly next: LaneInHand | undefined; readonly nowS: number }): string {
  const stay = next?.state.stay;
  if (next === undefined) return "";
  if (!stay) {
    const inS = next.plannedStartS - nowS;
    return inS > 1 ? `in ${trayTime(inS)}, as the timetable has it` : "now, as the timetable has it";
  }
  if (stay.drainS <= 0) return nowS >= stay.endS ? "now, straight over" : "straight over, no drain";
  if (nowS >= stay.endS) return "now, into the next";
  if (nowS >= stay.liftS) return "lift now, let it drain";
  return `lift at ${trayTime(stay.endS - stay.liftS)}, let it drain`;
}

function noPressWords({ next, nowS }: { readonly next: LaneInHand | undefined; readonly nowS: number }): string {
  const stay = next?.state.stay;
  if (next === undefined) return "";
  if (next.state.state === "paused") return "paused: no cues, the bath goes on working";
  if (!stay || stay.goesOnS === null) return "no press: it waits for you";
  if (nowS > stay.endS) return `no press: it goes on in ${trayTime(stay.goesOnS - nowS)}, marked “assumed”`;
  return "no press: it goes on, marked “assumed”";
}

function linesOf({
  run,
  next,
  means,
}: {
  readonly run: RunInHand;
  readonly next: LaneInHand | undefined;
  readonly means: LaneMeaning | null;
}): readonly string[] {
  const { lanes, nowS } = run;
  const lines: string[] = [];
  if (next === undefined) return lines;
  const { steps } = next;
  const to = targetOf(means);
  const target = to === null ? undefined : steps[to];
  const white = target?.light === "whiteRequired" ? whiteWaitsFor({ lanes, beside: next }) : [];
  if (white.length > 0) lines.push(`White light waits for ${codesWords(white)}.`);
  else if (target?.light === "whiteRequired") {
    const boxed = stillUnstarted(lanes);
    lines.push(boxed.length > 0 ? `White light then: box of ${codesWords(boxed)} shut first.` : "White light then.");
  }
  const leavesOut = next.state.stay?.leavesOut ?? [];
  if (leavesOut.length > 0) lines.push(`Left out: ${leavesOut.join(", ")}.`);
  if (to !== null && isLookedAt(steps, to)) lines.push(`Then look at ${codesWords(next.codes)}.`);
  const other = laneInOrder(run, 1);
  const due = other === undefined ? undefined : dueOf(other);
  if (other !== undefined && due !== undefined) {
    const isIn = other.state.stay !== null;
    const what =
      other.state.stay === null ? goWord(other.codes).concat(" in") : `leaves ${theBath(other.state.stay.step)}`;
    const when = due - nowS > 1 ? `${isIn ? "in" : "after"} ${trayTime(due - nowS)}` : "now";
    lines.push(`${codesWords(other.codes)} ${what} ${when}.`);
  }
  lines.push(...clashLines(run));
  const washing = lanes.filter(
    (lane) => lane !== other && lane !== next && lane.state.stay && lane.steps[lane.state.stay.at]?.does === "wash",
  );
  if (washing.length > 0) {
    const each = washing.map(
      ({ codes, state }) => `${codesWords(codes)} ${figureOf((state.stay?.endS ?? nowS) - nowS)}`,
    );
    lines.push(`Wash: ${each.join(", ")}.`);
  }
  return lines;
}

/** So long before two moves fall together it is told who waits. */
const toldBeforeS = 120;

function clashLines({ lanes, clash, nowS }: RunInHand): readonly string[] {
  if (clash === undefined || clash.atS - nowS > toldBeforeS) return [];
  const codesOf = (laneId: string) => codesWords(lanes.find(({ id }) => id === laneId)?.codes ?? []);
  const when = clash.atS - nowS > 1 ? `In ${trayTime(clash.atS - nowS)} two moves` : "Two moves at once";
  return [`${when}: ${codesOf(clash.firstId)} first, ${codesOf(clash.loserId)} waits in ${theBath(clash.step)}.`];
}

/** The last bath of a round that ends by eye. */
function isLookedAt(steps: readonly RecipeStep[], at: number): boolean {
  const group = steps[at]?.group;
  return group?.until === "noDarkSilver" && steps[at + 1]?.group?.id !== group.id;
}

function roundOf({
  run,
  next,
  means,
}: {
  readonly run: RunInHand;
  readonly next: LaneInHand | undefined;
  readonly means: LaneMeaning | null;
}): RunView["round"] {
  const stay = next?.state.stay;
  if (next === undefined || means?.kind !== "round" || !stay || next.state.state === "paused") return null;
  const { lanes, nowS } = run;
  const { steps } = next;
  // Until then it rinses, and the whole screen is one press.
  if (!means.mustSay && nowS < stay.endS - Math.max(asksBeforeS, stay.drainS + asksBeforeS / 2)) return null;
  const group = steps[means.from.at]?.group;
  const names = steps.filter((step) => step.group?.id === group?.id).map(({ name }) => inside(name));
  const leftS = stay.endS - nowS;
  const white = whiteWaitsFor({ lanes, beside: next });
  const itself = `${atHead(inside(means.from.step))} ${figureOf(leftS)}.`;
  const clearTo = means.clear === null ? "out of the trays" : theBath(means.clear.step).replace(/^the /, "");
  return {
    top: `${codesWords(next.codes)}, after bleach round ${means.from.round}`,
    head: "Is dark silver left in it?",
    say: `${itself} Look while it lies in ${theBath(means.from.step)}, under the red lamp.`,
    halves: [
      {
        press: "another",
        word: "Still dark",
        line: "another round",
        more: `${names.join(", ")}; round ${means.another.round} of ${group?.max ?? means.another.round} at most`,
        noPress: means.mustSay
          ? "No press: it waits for you"
          : stay.goesOnS === null
            ? "No press: it waits for you"
            : `No press: this, in ${trayTime(Math.max(0, stay.goesOnS - nowS))}`,
      },
      {
        press: "clear",
        word: "Clear",
        line: "go on",
        more:
          white.length > 0
            ? `${clearTo}; white light only when ${codesWords(white)} ${white.length > 1 ? "are" : "is"} past the bleach too`
            : clearTo,
      },
    ],
  };
}

function spokenOf({
  next,
  move,
  leftS,
  stay,
  lanes,
  nowS,
  ways,
}: {
  readonly next: LaneInHand | undefined;
  readonly move: string;
  readonly leftS: number;
  readonly stay: LaneInHand["state"]["stay"];
  readonly lanes: readonly LaneInHand[];
  readonly nowS: number;
  readonly ways: readonly [string, string] | null;
}): string {
  if (next === undefined) return "Everything is out of the trays.";
  const when = leftS > 1 ? `in ${saidTime(leftS)}` : "now";
  const lift =
    stay && stay.drainS > 0 && nowS < stay.liftS ? `; lift it out ${saidTime(stay.endS - stay.liftS)} before` : "";
  const round = stay && stay.round > 1 ? ` Round ${stay.round}.` : "";
  const others = lanes
    .filter((lane) => lane !== next && lane.state.stay !== null && lane.state.state !== "done")
    .map(
      ({ codes, state }) =>
        `${codesWords(codes)} in ${theBath(state.stay?.step ?? "")}, ${saidTime((state.stay?.endS ?? nowS) - nowS)} left.`,
    );
  return [`Next move: ${move}, ${when}${lift}.${round}`, ...others, ways === null ? "" : `${ways.join(" ")}.`]
    .filter(Boolean)
    .join(" ");
}
