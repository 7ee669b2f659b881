import {
  eyeDecides,
  firstPlace,
  following,
  mostRoundsDone,
  named,
  type Place,
  roundOf,
  type Said,
  stepAt,
} from "./lanePlaces.ts";
import type {
  LaneAhead,
  LaneCue,
  LaneEvent,
  LaneMeaning,
  LanePress,
  LaneRefusal,
  LaneRefusalCode,
  LaneRow,
  LaneState,
  LaneStay,
  RunLaneInput,
} from "./laneTypes.ts";
import { type StayClock, stayClock } from "./stayClock.ts";

/** So long after its end a stay goes on by itself, if nobody presses. */
const goesOnAfterS = 20;
const mostAhead = 30;

interface Stay extends Place {
  readonly startS: number;
  /** From when it was known that the sheet is here: nothing sounds for what is past. */
  readonly knownS: number;
}

/** When a stay ends, and by which clock. */
interface End {
  readonly clock: StayClock;
  readonly endS: number;
  readonly liftS: number;
  readonly drainS: number;
  readonly dueS: number;
}

/** All that a press may change, so that taking one back restores it whole. */
interface Hold {
  readonly phase: "waiting" | "on" | "done";
  readonly stay: Stay | undefined;
  readonly done: readonly LaneRow[];
  readonly startedS: number | null;
  readonly endedS: number | null;
  readonly isPaused: boolean;
  readonly waits: boolean;
  /** How many of the next steps are left out. */
  readonly leftOut: number;
  readonly said: Said;
  /** When it was last let go on: what should have gone on before that was held by a person, who also has to say when it left. */
  readonly letGoS: number;
  readonly troubles: LaneState["troubles"];
}

/**
 * One lane of a run at a moment: sheets that go together, from the recipe, what was pressed and how far the clock has come.
 *
 * Method   a machine over events. A press means “into the next bath”, and a step lasts from touch to touch; 20 s after its end a stay goes
 *          on by itself from that end, and is marked as assumed; the cue `lift` comes a drain before the end, `change` at the end. Rounds
 *          that the eye ends go on unasked up to the recipe's most, and then wait; so does a stay that a person held past that moment. Every time is counted from its own touch, never from tick to tick, so
 *          that nothing drifts.
 * Units    s on the clock of the lane, temperatures in °C.
 * Holds    for recipes in which `recipeNonsense` finds nothing impossible; events in their order.
 * Error    a step that was assumed is as long as it was due, give or take 5 s or a drain.
 *
 * @source army-ss0509: drain within the step, from bath to bath (seen); none: the press, the 20 s, the rounds (common practice)
 * @example runLane({ recipe: { kind: "negative", steps: [{ step: "developer", does: "develop", timeS: 90 }] }, events: [{ atS: 93, press: "next" }], untilS: 100 }).endedAtS // 93
 */
export function runLane(input: RunLaneInput): LaneState {
  const { recipe, events, untilS, startS = 0, readings = [], washAnewS = [] } = input;
  const cues: LaneCue[] = [];
  const refused: LaneRefusal[] = [];
  const undo: { readonly press: LanePress; readonly hold: Hold }[] = [];
  let alive = true;
  let heardS = Number.NEGATIVE_INFINITY;
  let knownS = Number.NEGATIVE_INFINITY;
  const ends = new WeakMap<Stay, { readonly knownS: number; readonly end: End }>();
  let hold: Hold = {
    phase: "waiting",
    stay: undefined,
    done: [],
    startedS: null,
    endedS: null,
    isPaused: false,
    waits: input.waitForMe ?? false,
    leftOut: 0,
    said: undefined,
    letGoS: Number.NEGATIVE_INFINITY,
    troubles: [],
  };
  if (startS !== null) begin(startS);

  // What comes to be known by itself, a thermometer read or an unwashed sheet, moves ends; at one moment it comes before a press.
  const news = [...readings.map(({ atS }) => atS), ...washAnewS].filter((atS) => atS <= untilS).sort((a, b) => a - b);
  let heard = 0;
  for (const event of events) {
    hear(event.atS);
    goTo(event.atS, false);
    take(event);
  }
  hear(untilS);
  goTo(untilS, true);
  return state();

  function hear(toS: number): void {
    for (let atS = news[heard]; atS !== undefined && atS <= toS; atS = news[heard]) {
      heard += 1;
      goTo(atS, false);
      const was = hold.stay && endOf(hold.stay);
      knownS = atS;
      if (hold.stay === undefined || was === undefined) continue;
      // An end that has moved into the past is told now.
      const { liftS, endS } = endOf(hold.stay);
      if (was.liftS > atS && liftS < atS && endS > atS) sound("lift", atS);
      if (was.endS > atS && endS < atS) sound("change", atS);
    }
  }

  /** When a stay ends, by all that is known by now; asked again and again, reckoned once. */
  function endOf(stay: Stay): End {
    const held = ends.get(stay);
    if (held?.knownS === knownS) return held.end;
    const end = endFrom(stay);
    ends.set(stay, { knownS, end });
    return end;
  }

  function endFrom(stay: Stay): End {
    const step = stepAt(recipe, stay);
    const known = readings.filter(({ atS }) => atS <= knownS);
    const clock = stayClock(step, { startS: stay.startS, readings: known, at: stay.at });
    const anew = washAnewS.filter((atS) => atS <= knownS && atS > stay.startS);
    const fromS = step.does === "wash" ? Math.max(stay.startS, ...anew) : stay.startS;
    const endS = fromS + clock.dueS;
    const { drainS = 0 } = step;
    return { clock, endS, liftS: endS - drainS, drainS, dueS: fromS === stay.startS ? clock.dueS : endS - stay.startS };
  }

  function begin(atS: number): void {
    hold = { ...hold, phase: "on", startedS: atS, stay: { ...firstPlace, startS: atS, knownS: atS } };
    heardS = Number.NEGATIVE_INFINITY;
  }

  /** Lets the clock run: cues sound, and stays that nobody ends go on by themselves. */
  function goTo(toS: number, isLast: boolean): void {
    for (;;) {
      const { stay } = hold;
      if (stay === undefined) return;
      const end = endOf(stay);
      const onS = goesOnS(stay, end.endS);
      const goesOn = onS !== null && (onS < toS || (isLast && onS === toS));
      soundUpTo(stay, end, goesOn ? onS : toS);
      if (!goesOn) return;
      leave(end.endS, "assumed", onS);
    }
  }

  function goesOnS(stay: Stay, endS: number): number | null {
    if (hold.waits || hold.isPaused) return null;
    if (hold.said === undefined && eyeDecides(recipe, stay) && mostRoundsDone(recipe, stay)) return null;
    const onS = endS + goesOnAfterS;
    return onS < hold.letGoS ? null : onS;
  }

  function soundUpTo(stay: Stay, { liftS, endS, drainS }: End, toS: number): void {
    const due = (atS: number) => atS > heardS && atS >= Math.max(stay.startS, stay.knownS) && atS <= toS;
    if (drainS > 0 && due(liftS)) sound("lift", liftS);
    if (due(endS)) sound("change", endS);
    heardS = Math.max(heardS, toS);
  }

  function sound(cue: LaneCue["cue"], atS: number): void {
    if (alive && !hold.isPaused) cues.push({ atS, cue });
  }

  /** Out of this bath at a moment, and into whatever comes then. */
  function leave(atS: number, how: "tapped" | "assumed", knownAtS: number, late = false, again?: Place): void {
    const stay = hold.stay as Stay;
    const done = [...hold.done, rowOf(stay, atS, how, late)];
    let to = again ?? following(recipe, stay, hold.said);
    // What the eye has said ends with its round.
    let said = to !== undefined && to.ofGroup === stay.ofGroup && sameGroup(stay, to) ? hold.said : undefined;
    let { leftOut } = hold;
    for (; again === undefined && to !== undefined && leftOut > 0; leftOut -= 1) {
      // Rounds of the bath that was left are not its next step.
      if (to.at === stay.at && to.ofGroup === stay.ofGroup && done.length === hold.done.length + 1) break;
      done.push(skippedRow(to, atS));
      const next: Place | undefined = following(recipe, { ...to, own: stepAt(recipe, to).repeats ?? 1 }, said);
      if (next === undefined || !sameGroup(to, next) || next.ofGroup !== to.ofGroup) said = undefined;
      to = next;
    }
    if (to === undefined) {
      hold = { ...hold, phase: "done", stay: undefined, done, endedS: atS, leftOut: 0, said: undefined };
    } else {
      hold = { ...hold, stay: { ...to, startS: atS, knownS: knownAtS }, done, leftOut, said };
    }
    heardS = Number.NEGATIVE_INFINITY;
  }

  function sameGroup(one: Place, other: Place): boolean {
    const group = stepAt(recipe, one).group?.id;
    return group !== undefined && group === stepAt(recipe, other).group?.id;
  }

  function rowOf(stay: Stay, atS: number | null, how: LaneRow["how"], late: boolean): LaneRow {
    const { clock, dueS } = endOf(stay);
    const { step, id, timeS } = stepAt(recipe, stay);
    const actualS = atS === null ? null : how === "assumed" ? dueS : atS - stay.startS;
    const effectiveS = actualS === null ? null : clock.effectiveS(actualS);
    return {
      at: stay.at,
      step,
      id,
      round: roundOf(recipe, stay),
      startS: stay.startS,
      plannedS: timeS,
      dueS,
      actualS,
      bathC: clock.bathC,
      effectiveS,
      log2Ratio: effectiveS === null || effectiveS <= 0 ? null : Math.log2(effectiveS / timeS),
      late,
      how,
    };
  }

  function skippedRow(place: Place, atS: number): LaneRow {
    const row = rowOf({ ...place, startS: atS, knownS: atS }, null, "skipped", false);
    return { ...row, actualS: 0, effectiveS: 0, log2Ratio: null };
  }

  function take({ atS, press, note = "" }: LaneEvent): void {
    const refuse = (code: LaneRefusalCode) => refused.push({ atS, press, code });
    if (press === "killed" || press === "restored") {
      if (alive === (press === "restored")) refuse(alive ? "notGone" : "programGone");
      else alive = press === "restored";
      return;
    }
    if (!alive) return void refuse("programGone");
    if (press === "takeBack") {
      const last = undo.pop();
      if (last === undefined) return void refuse("nothingToTakeBack");
      hold = { ...last.hold, letGoS: atS };
      heardS = atS;
      return;
    }
    const before = hold;
    const code = act(atS, press, note);
    if (code !== undefined) return void refuse(code);
    undo.push({ press, hold: before });
  }

  /** Does what a press says, or gives the reason why it has no meaning now. */
  function act(atS: number, press: LanePress, note: string): LaneRefusalCode | undefined {
    const { stay, phase } = hold;
    if (press === "start") {
      if (phase !== "waiting") return "alreadyStarted";
      begin(atS);
      return undefined;
    }
    if (phase === "done") return "runIsOver";
    if (press === "waitOn" || press === "waitOff") {
      hold = { ...hold, waits: press === "waitOn", letGoS: atS };
      return undefined;
    }
    if (phase === "waiting" || stay === undefined) return "notStarted";
    switch (press) {
      case "next":
      case "late":
        if (hold.said === undefined && eyeDecides(recipe, stay) && mostRoundsDone(recipe, stay)) return "sayIfClear";
        leave(atS, "tapped", atS, press === "late");
        return undefined;
      case "repeat":
        leave(atS, "tapped", atS, false, { ...stay, own: stay.own + 1 });
        return undefined;
      case "skip":
        if (!canLeaveOut(stay)) return "nothingToSkip";
        hold = { ...hold, leftOut: hold.leftOut + 1 };
        return undefined;
      case "another":
      case "clear":
        return sayOfRound(stay, atS, press);
      case "pause":
        if (hold.isPaused) return "alreadyPaused";
        hold = { ...hold, isPaused: true };
        return undefined;
      case "resume":
        if (!hold.isPaused) return "notPaused";
        heardS = atS;
        hold = { ...hold, isPaused: false, letGoS: atS };
        return undefined;
      default:
        hold = {
          ...hold,
          troubles: [...hold.troubles, { atS, note, step: stepAt(recipe, stay).step }],
        };
        return undefined;
    }
  }

  /** At the end of a round the halves are presses into the next bath; said earlier, they hold for the end of the round. */
  function sayOfRound(stay: Stay, atS: number, press: "another" | "clear"): LaneRefusalCode | undefined {
    if (stepAt(recipe, stay).group?.until === undefined) return "noRoundHere";
    hold = { ...hold, said: press };
    const atItsEnd = eyeDecides(recipe, { ...stay, ofGroup: Number.POSITIVE_INFINITY });
    if (atItsEnd) leave(atS, "tapped", atS);
    return undefined;
  }

  function canLeaveOut(stay: Stay): boolean {
    let place: Place | undefined = { ...stay, own: stepAt(recipe, stay).repeats ?? 1 };
    for (let left = hold.leftOut; place !== undefined && left >= 0; left -= 1) {
      const next: Place | undefined = following(recipe, place, hold.said);
      place = next && { ...next, own: stepAt(recipe, next).repeats ?? 1 };
    }
    return place !== undefined;
  }

  function state(): LaneState {
    const { stay, phase, isPaused, done } = hold;
    return {
      state: phase === "on" ? (isPaused ? "paused" : "running") : phase,
      alive,
      startedAtS: hold.startedS,
      endedAtS: hold.endedS,
      waitForMe: hold.waits,
      rows: stay === undefined ? done : [...done, rowOf(stay, null, null, false)],
      cues,
      refused,
      troubles: hold.troubles,
      stay: stay === undefined ? null : stayNow(stay),
      means: meaning(),
      takesBack: undo.at(-1)?.press ?? null,
      ahead: stay === undefined ? [] : aheadOf(stay),
    };
  }

  function stayNow(stay: Stay): LaneStay {
    const { endS, liftS, drainS } = endOf(stay);
    return {
      ...named(recipe, stay),
      startS: stay.startS,
      endS,
      liftS,
      drainS,
      mustLeaveOnTime: stepAt(recipe, stay).mustLeaveOnTime ?? false,
      goesOnS: goesOnS(stay, endS),
      said: hold.said ?? null,
      leavesOut: leavesOut(stay),
    };
  }

  /** Where a press leads, steps that are left out passed over, and their names. */
  function over(stay: Place, said: Said): { readonly to: Place | undefined; readonly names: readonly string[] } {
    let to = following(recipe, stay, said);
    const names: string[] = [];
    for (let left = hold.leftOut; left > 0 && to !== undefined; left -= 1) {
      if (to.at === stay.at && to.ofGroup === stay.ofGroup) break;
      names.push(stepAt(recipe, to).step);
      to = following(recipe, { ...to, own: stepAt(recipe, to).repeats ?? 1 }, said);
    }
    return { to, names };
  }

  function leavesOut(stay: Place): readonly string[] {
    return over({ ...stay, own: stepAt(recipe, stay).repeats ?? 1 }, hold.said).names;
  }

  function meaning(): LaneMeaning | null {
    const { stay, phase, said } = hold;
    if (phase === "waiting") return { kind: "start", to: named(recipe, firstPlace) };
    if (stay === undefined) return null;
    const from = named(recipe, stay);
    if (said === undefined && eyeDecides(recipe, stay)) {
      const another = over(stay, "another").to ?? stay;
      const clear = over(stay, "clear").to;
      const halves = { another: named(recipe, another), clear: clear === undefined ? null : named(recipe, clear) };
      return { kind: "round", from, ...halves, mustSay: mostRoundsDone(recipe, stay) };
    }
    const { to } = over(stay, said);
    if (to === undefined) return { kind: "out", from };
    return { kind: to.at === stay.at ? "again" : "next", from, to: named(recipe, to) };
  }

  function aheadOf(stay: Stay): readonly LaneAhead[] {
    const ahead: LaneAhead[] = [];
    let { said } = hold;
    let fromS = endOf(stay).endS;
    let { to } = over(stay, said);
    while (to !== undefined && ahead.length < mostAhead) {
      const { endS } = endOf({ ...to, startS: fromS, knownS: fromS });
      const { mustLeaveOnTime = false } = stepAt(recipe, to);
      ahead.push({ ...named(recipe, to), startS: fromS, endS, mustLeaveOnTime });
      fromS = endS;
      if (!sameGroup(stay, to) || to.ofGroup !== stay.ofGroup) said = undefined;
      to = following(recipe, to, said);
    }
    return ahead;
  }
}
