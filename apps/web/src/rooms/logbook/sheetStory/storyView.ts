import type { OlderValue } from "@captray/notebook/journal";
import {
  type AnyRecord,
  type Mishap,
  type Moment,
  type Sheet,
  type StepDate,
  sheetState,
} from "@captray/notebook/records";
import { timingSdStops } from "@captray/science/exposure";
import { showFNumber } from "@captray/science/notation";
import { mishapWords } from "../../../kit/mishapWords.ts";
import { sideWords } from "../../../kit/sideWords.ts";
import { dayWords, givenWords, stateWords, timeWords } from "../logbookWords.ts";

type HeldOpening = NonNullable<Sheet["openings"][number]["opening"]>;

/** A step of a sheet's way. */
export interface WayStep {
  readonly step: StepDate;
  readonly when: string;
  readonly word: string;
  readonly text: string;
  readonly planned: string;
  readonly done: boolean;
}

/** A step that has no date. */
export interface ComingStep {
  readonly step: StepDate;
  readonly word: string;
  readonly planned: string;
}

/** A sheet's whole story in words. */
export interface StoryView {
  readonly code: string;
  readonly subject: string;
  readonly kind: string;
  /** `to`: where its words lead. */
  readonly facts: readonly { readonly what: string; readonly words: string; readonly to?: string }[];
  /** All openings together, with their doubt; null before the cap was off. */
  readonly given: { readonly timeS: number; readonly sdS: number; readonly compared: string } | null;
  readonly openings: readonly { readonly id: string; readonly words: string }[];
  readonly mishaps: readonly string[];
  readonly way: readonly WayStep[];
  /** What can be dated next, with a press. */
  readonly next: readonly ComingStep[];
  /** The other steps without a date: rarer, and one press further away. */
  readonly rarer: readonly ComingStep[];
  /** Exposed, and the flash that was planned for after it is still to be given, in seconds. */
  readonly flashOwedS: number | null;
  readonly atTheCap: boolean;
  readonly canGoAgain: boolean;
  /** A flash is planned that the sheet has not had, and it can still have it. */
  readonly flashToGive: boolean;
  /** There is a picture on it to look at: faults can be marked. */
  readonly wasSeen: boolean;
  /** It has been exposed, and is not kept or discarded whole. */
  readonly canBeCut: boolean;
  readonly sizeMm: { readonly widthMm: number; readonly heightMm: number } | undefined;
}

/** The steps of the way in the words of the page. */
export const stepWords: readonly { readonly step: StepDate; readonly word: string }[] = [
  { step: "loadedAt", word: "Loaded" },
  { step: "flashedAt", word: "Flashed" },
  { step: "exposedAt", word: "Exposed" },
  { step: "inProcessAt", word: "In the trays" },
  { step: "dryingAt", word: "Drying" },
  { step: "measuredAt", word: "Measured" },
  { step: "keptAt", word: "Kept" },
  { step: "discardedAt", word: "Discarded" },
];

/** Puts a sheet's story together from its record and what it links to. */
export function storyView({
  sheet,
  peek,
  nowMs,
}: {
  readonly sheet: Sheet;
  readonly peek: (id: string) => AnyRecord | undefined;
  readonly nowMs: number;
}): StoryView {
  const state = sheetState(sheet);
  const scene = find(peek, sheet.sceneId, "scene");
  const openings = sheet.openings.flatMap(({ id, opening }) => (opening ? [{ id, opening }] : []));
  const timeS = openings.reduce((sum, { opening }) => sum + opening.givenS.value, 0);
  const sdS = Math.hypot(0, ...openings.map(({ opening }) => opening.givenS.sd));
  const mishaps = sheet.mishaps.flatMap(({ what }) => (what ? [mishapWords[what as Mishap]] : []));
  const kind = sheet.result === undefined ? "" : sheet.result === "negative" ? "paper negative" : "direct positive";
  return {
    code: sheet.code ?? "Sheet",
    subject: scene?.subject ?? "",
    kind: [kind, stateWords[state]].filter(Boolean).join(", "),
    facts: factsOf(sheet, peek),
    given: timeS > 0 ? { timeS, sdS, compared: compared(timeS, sdS, sheet.planned?.timeS) } : null,
    openings: openings.map(({ id, opening }) => ({ id, words: openingWords(opening) })),
    mishaps,
    way: wayOf(
      sheet,
      openings.map(({ opening }) => opening),
      peek,
      nowMs,
    ),
    ...comingSteps(sheet),
    flashOwedS: state === "flashOwed" ? (sheet.flashPlanned?.timeS ?? null) : null,
    atTheCap:
      openings.length === 0 && sheet.exposedAt === undefined && sheet.planned !== undefined && state !== "discarded",
    flashToGive:
      sheet.flashPlanned !== undefined &&
      sheet.flashedAt === undefined &&
      ["blank", "loaded", "exposed", "flashOwed"].includes(state),
    wasSeen: (sheet.inProcessAt ?? sheet.dryingAt ?? sheet.measuredAt ?? sheet.keptAt ?? sheet.faults) !== undefined,
    canBeCut: sheet.pieces !== undefined || (sheet.exposedAt !== undefined && !sheet.keptAt && !sheet.discardedAt),
    sizeMm: find(peek, sheet.paperBoxId, "paperBox")?.size,
    canGoAgain: sheet.sceneId !== undefined && scene !== undefined,
  };
}

/** "13.6 s, to the ticks", "13 s, taken as planned". */
function openingWords(opening: HeldOpening, withTime = true): string {
  const manner = { ticks: "to the ticks", counted: "counted in the head", takenAsPlanned: "taken as planned" }[
    opening.manner
  ];
  const at = withTime && opening.startedAt ? ` at ${timeWords({ moment: opening.startedAt })}` : "";
  return `${givenWords(opening.givenS.value)}, ${manner}${opening.corrected ? ", corrected" : ""}${at}`;
}

/** What a field has been before, newest first, in words; without what it holds now and without repetitions. */
export function olderWords({
  values,
  say,
}: {
  readonly values: readonly OlderValue[];
  readonly say: (value: unknown) => string | null;
}): readonly { readonly name: string; readonly at: number; readonly words: string }[] {
  const told: { name: string; at: number; words: string }[] = [];
  let above = values.find(({ stands }) => stands);
  let last = above ? say(above.value) : null;
  for (const one of values) {
    if (one.stands || (above && one.name > above.name)) continue;
    const words = one.value === null ? null : say(one.value);
    if (words === null || words === last) continue;
    told.push({ name: one.name, at: one.at, words });
    last = words;
    above = one;
  }
  return told;
}

/** The history of an opening as words, or nothing for what is no opening. */
export function sayOpening(value: unknown): string | null {
  const held = value as HeldOpening | null;
  return held?.givenS && held.manner ? openingWords(held) : null;
}

function factsOf(sheet: Sheet, peek: (id: string) => AnyRecord | undefined): StoryView["facts"] {
  const box = find(peek, sheet.paperBoxId, "paperBox");
  const index = find(peek, sheet.exposureIndexId, "exposureIndex");
  const lens = find(peek, sheet.lensId, "lens");
  const camera = find(peek, sheet.cameraId, "camera");
  const scene = find(peek, sheet.sceneId, "scene");
  const holder = find(peek, sheet.holderSide?.holderId, "holder");
  const recipe = find(peek, sheet.recipeId, "recipe");
  const side = holder?.sides.find(({ id }) => id === sheet.holderSide?.sideId);
  const stop = lens?.stops.find(({ id }) => id === (sheet.stopId ?? scene?.stopId));
  const mark = stop?.marked?.text?.replace(/^f\/?/i, "");
  const fNumber = stop?.marked?.value ?? stop?.measuredFNumber?.value;
  const aperture = mark ? `f/${mark}` : fNumber === undefined ? "" : showFNumber({ fNumber });
  const paper = [box?.name, box?.grade ? `grade ${box.grade}` : "", usedIndex(sheet, index?.value?.value)];
  const kit = [camera?.name, lens?.name, aperture, extensionWords(sheet)];
  const facts = [
    { what: "paper", words: joined(paper) },
    { what: "kit", words: joined(kit) },
    { what: "holder", words: holder ? sideWords({ holder, side }) : "" },
    {
      what: "recipe",
      words: recipe ? recipe.name || "a recipe" : "",
      ...(recipe && { to: `/shelf/recipe/${recipe.id}` }),
    },
    { what: "flash", words: flashWords(sheet) },
    { what: "where", words: scene?.where ?? "" },
  ];
  return facts.filter(({ words }) => words !== "");
}

/** What flash was planned and what was given: the owed one is said so by the sheet's state. */
function flashWords({ flashPlanned, flashGivenS }: Sheet): string {
  const when = { beforeLoading: "before loading", inCamera: "in the camera", afterExposure: "after the exposure" };
  const plan = flashPlanned && `plan ${givenWords(flashPlanned.timeS)} ${when[flashPlanned.when]}`;
  const given = flashGivenS !== undefined && `given ${givenWords(flashGivenS)}`;
  return joined([plan || undefined, given || undefined]);
}

/** The index that was reckoned with that day; where the sheet does not say, the one that is kept now. */
function usedIndex(sheet: Sheet, now: number | undefined): string {
  const input = sheet.planned?.input as { readonly paper?: { readonly exposureIndex?: unknown } } | undefined;
  const then = input?.paper?.exposureIndex;
  const value = typeof then === "number" ? then : now;
  return value === undefined ? "" : `EI ${Number(value.toPrecision(2))}`;
}

function extensionWords(sheet: Sheet): string {
  const answer = sheet.planned?.answer as { readonly optics?: { readonly extensionMm?: unknown } } | undefined;
  const extensionMm = answer?.optics?.extensionMm;
  return typeof extensionMm === "number" ? `extension ${Math.round(extensionMm)} mm` : "";
}

function compared(timeS: number, sdS: number, plannedS: number | undefined): string {
  const hand = `hand ±${(1.645 * timingSdStops({ timeS, sdS })).toFixed(2)} stop`;
  if (plannedS === undefined) return hand;
  const stops = Math.log2(timeS / plannedS);
  if (Math.abs(stops) < 0.005) return `as planned; ${hand}`;
  const size = Math.abs(stops);
  const digits = size < 0.095 ? size.toFixed(2) : size.toFixed(1);
  const words = `${digits} ${Number(digits) > 1 ? "stops" : "stop"} ${stops > 0 ? "more" : "less"} than planned`;
  return `${words}; ${hand}`;
}

function wayOf(
  sheet: Sheet,
  openings: readonly HeldOpening[],
  peek: (id: string) => AnyRecord | undefined,
  nowMs: number,
): readonly WayStep[] {
  const holder = find(peek, sheet.holderSide?.holderId, "holder");
  const side = holder?.sides.find(({ id }) => id === sheet.holderSide?.sideId);
  let formerDay = "";
  return stepWords
    .flatMap(({ step, word }) => {
      const moment: Moment | undefined = sheet[step];
      return moment ? [{ step, word, moment }] : [];
    })
    .sort((a, b) => a.moment.at - b.moment.at)
    .map(({ step, word, moment }) => {
      const day = dayWords({ moment, nowMs });
      const when = day === formerDay ? timeWords({ moment }) : `${day}, ${timeWords({ moment })}`;
      formerDay = day;
      const { text, planned } = stepText(step, sheet, openings, holder ? sideWords({ holder, side }) : "");
      return { step, when, word, text, planned, done: true };
    });
}

function stepText(
  step: StepDate,
  sheet: Sheet,
  openings: readonly HeldOpening[],
  place: string,
): { readonly text: string; readonly planned: string } {
  switch (step) {
    case "loadedAt":
      return { text: place === "" ? "" : `in ${place}`, planned: "" };
    case "flashedAt":
      return {
        text: sheet.flashGivenS ? givenWords(sheet.flashGivenS) : "",
        planned: sheet.flashPlanned ? `plan ${givenWords(sheet.flashPlanned.timeS)}` : "",
      };
    case "exposedAt": {
      const total = openings.reduce((sum, { givenS }) => sum + givenS.value, 0);
      const [only] = openings;
      const text =
        openings.length === 0 || only === undefined
          ? ""
          : openings.length === 1
            ? `in one opening of ${openingWords(only, false)}`
            : `in ${openings.length} openings, ${givenWords(total)} together`;
      return { text, planned: sheet.planned ? `plan ${givenWords(sheet.planned.timeS)}` : "" };
    }
    default:
      return { text: "", planned: "" };
  }
}

/** What most likely comes next stands open; every other step without a date can be told too, in whatever order. */
function comingSteps(sheet: Sheet): Pick<StoryView, "next" | "rarer"> {
  const likely = likelySteps(sheet);
  const coming = stepWords
    .filter(({ step }) => sheet[step] === undefined)
    .map(({ step, word }) => ({ step, word, planned: stepText(step, sheet, [], "").planned }));
  return {
    next: coming.filter(({ step }) => likely.includes(step)),
    rarer: coming.filter(({ step }) => !likely.includes(step)),
  };
}

function likelySteps(sheet: Sheet): readonly StepDate[] {
  if (sheet.keptAt || sheet.discardedAt) return [];
  const flash: StepDate[] = sheet.flashPlanned && !sheet.flashedAt && !sheet.inProcessAt ? ["flashedAt"] : [];
  if (!sheet.exposedAt) return sheet.loadedAt ? flash : [...flash, "loadedAt"];
  if (!sheet.inProcessAt) return [...flash, "inProcessAt", "discardedAt"];
  if (!sheet.dryingAt) return ["dryingAt", "discardedAt"];
  return ["measuredAt", "keptAt", "discardedAt"];
}

function find<K extends AnyRecord["kind"]>(
  peek: (id: string) => AnyRecord | undefined,
  id: string | undefined,
  kind: K,
): Extract<AnyRecord, { kind: K }> | undefined {
  const held = id === undefined ? undefined : peek(id);
  return held?.kind === kind ? (held as Extract<AnyRecord, { kind: K }>) : undefined;
}

function joined(words: readonly (string | undefined)[]): string {
  return words.filter(Boolean).join(", ");
}
