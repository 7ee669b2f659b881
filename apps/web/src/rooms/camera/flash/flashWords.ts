import type { FlashStripAnswer, FlashStripPlan } from "@captray/notebook/answers";
import type { FlashLamp, Moment, Sheet, Test } from "@captray/notebook/records";
import { secondsWords } from "../capPage/capWords.ts";

const nineInTen = 1.645;
const days = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric", timeZone: "UTC" });

/** The day of a moment as the person lived it. */
export function dayOf({ at, offsetMin }: Moment): string {
  return days.format(at + offsetMin * 60_000);
}

/** A set-up by its name. */
export function lampName(lamp: Pick<FlashLamp, "name"> | undefined): string {
  if (lamp === undefined) return "a lamp that is not in the notebook";
  return lamp.name === "" ? "Set-up without a name" : lamp.name;
}

/** How it stands, in one line. */
export function lampWords(lamp: FlashLamp): string {
  const distance = lamp.distanceMm && (lamp.distanceMm.text ?? `${Math.round(lamp.distanceMm.value)} mm`);
  return [
    lamp.dimming,
    distance && `${/^[\d.,]+$/.test(distance) ? `${distance} mm` : distance} from the paper`,
    lamp.diffuser,
    lamp.where,
  ]
    .filter((words) => words !== undefined && words !== "")
    .join(", ");
}

/** Its rate, or what is to be done for one. */
export function rateWords(lamp: FlashLamp): string {
  const { rate } = lamp;
  if (rate === undefined) return "not tested: make a flash strip first";
  const since = rate.foundAt === undefined ? "" : `, strip of ${dayOf(rate.foundAt)}`;
  return `${lightRange(rate.valueLx, rate.sdLn)}${since}`;
}

/** A lamp's light with its range, nine in ten: "0.12 lx·s a second, 0.05 to 0.3". */
export function lightRange(value: number, sdLn: number): string {
  const spread = Math.exp(nineInTen * sdLn);
  return `${two(value)} lx·s a second, ${two(value / spread)} to ${two(value * spread)}`;
}

/** "4 to 9 s". */
export function secondsRange([low, high]: readonly [number, number]): string {
  const words = (timeS: number) => (timeS < 10 ? two(timeS) : String(Math.round(timeS)));
  return high >= 99.5 ? `${secondsWords(low)} to ${secondsWords(high)}` : `${words(low)} to ${words(high)} s`;
}

/** Two figures, as spoken: 0.12, 3.4, 25. */
export function two(value: number): string {
  return String(Number(value.toPrecision(2)));
}

/** How far a strip has come, for the list. */
export function stripWords(test: Test, answer: FlashStripAnswer): string {
  if (test.doneAt === undefined) return "planned, not given yet";
  const given = `given ${dayOf(test.doneAt)}`;
  switch (answer.kind) {
    case "open":
      return `${given}; which step shows is still to be said`;
    case "seen":
      return `${given}; shows between ${two(answer.lastUnseenS)} and ${two(answer.firstSeenS)} s`;
    case "measured":
      return `${given}; measured, ${answer.used} ${answer.used === 1 ? "step tells" : "steps tell"}`;
    case "allShow":
      return `${given}; even ${two(answer.firstS)} s shows, too bright for this strip`;
    case "noneShow":
      return `${given}; not even ${two(answer.lastS)} s shows, too dim for this strip`;
    case "refused":
      return `${given}; what it says does not fit together`;
  }
}

/** What a plan begins from. */
export function basisWords(plan: Extract<FlashStripPlan, { kind: "plan" }>): string {
  const light = `${two(plan.rateLx)} lx·s a second`;
  switch (plan.basis) {
    case "nothing":
      return `Nobody has measured this lamp: it begins from a guess, ${light}, a factor of five either way.`;
    case "meter":
      return `It begins from what the meter said at the paper, ${light}; what the paper makes of the lamp’s colour is not known.`;
    case "strip":
      return `It begins from the strip before, ${light}.`;
    case "boundOfStrip":
      return `The strip before only gave a bound: this one looks beyond it, about ${light}.`;
  }
}

/** Why a lamp should be changed first, or nothing. */
export function verdictWords(
  plan: Extract<FlashStripPlan, { kind: "plan" }>,
): { readonly head: string; readonly say: string } | null {
  if (plan.verdict === "lampTooBright") {
    return {
      head: "Too bright for a hand",
      say: `By that guess the paper shows after ${secondsWords(plan.middleS)} already. Dim the lamp, or take it twice as far: that is four times the seconds.`,
    };
  }
  if (plan.verdict === "lampTooDim") {
    return {
      head: "Too dim to wait for",
      say: `By that guess the paper shows only after ${secondsWords(plan.middleS)}. Bring the lamp to half the distance: that is a quarter of the seconds.`,
    };
  }
  return null;
}

export type FlashWhen = NonNullable<Sheet["flashPlanned"]>["when"];

export const whens: readonly { readonly value: FlashWhen; readonly name: string; readonly detail: string }[] = [
  { value: "beforeLoading", name: "before loading", detail: "in the dark, then into the holder" },
  { value: "inCamera", name: "in the camera", detail: "through a diffuser before the lens" },
  { value: "afterExposure", name: "after the exposure", detail: "before the first bath" },
];

/** What the hands do, for each moment a flash can be given at. */
export const whenSteps: Readonly<Record<FlashWhen, readonly string[]>> = {
  beforeLoading: [
    "Red light, boxes shut. One sheet under the lamp, its light-sensitive side up, flat.",
    "The lamp burns for the seconds, as it stood for its strip; nothing between it and the sheet.",
    "Into the holder, slide in, and its code with the pencil.",
  ],
  inCamera: [
    "Holder in, nothing moved since the focus. An even, white diffuser close before the lens, lit so that the whole frame is alike.",
    "Slide out, cap off for the seconds, cap on. The stop stays as it was for its strip.",
    "Only a strip made just this way, through this lens and diffuser, tells its seconds: common practice, and uneven light shows in the shadows.",
  ],
  afterExposure: [
    "The sheet stays in its holder, marked “flash owed”, until the trays are ready.",
    "Red light, boxes shut. Out of the holder, under the lamp, its light-sensitive side up.",
    "The lamp burns for the seconds; then straight into the first bath.",
  ],
};

/** When in words, for a list. */
export function whenWords(when: FlashWhen): string {
  return whens.find(({ value }) => value === when)?.name ?? "";
}
