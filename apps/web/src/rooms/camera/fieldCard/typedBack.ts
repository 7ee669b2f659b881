import { type FieldCard, type FindsRecords, type Kit, kitOf, planOf, practiceOf } from "@captray/notebook/answers";
import type { RecordSet, SheetCard } from "@captray/notebook/journal";
import { type Camera, type Json, nextSheetCode, type Reading, type Scene, sheetCode } from "@captray/notebook/records";
import { parseTime } from "@captray/science/notation";
import { openingSdS } from "../capPage/capHand.ts";
import { sheetForTheCap } from "../newSheet.ts";
import { readerOf, readMeter, saysDistant, saysEv } from "../readingNow/readTexts.ts";
import { withSet } from "../recordMerge.ts";

/** What was pencilled on a card, as it is typed. */
export interface CardTexts {
  readonly reading: string;
  readonly bed: string;
  readonly gave: string;
  readonly code: string;
}

export const emptyCardTexts: CardTexts = { reading: "", bed: "", gave: "", code: "" };

export type TypedBack =
  /** What is still missing, in a word. */
  | { readonly kind: "waits"; readonly waitsFor: string }
  | { readonly kind: "cannot"; readonly head: string; readonly say: string }
  | {
      readonly kind: "ready";
      readonly sets: readonly RecordSet[];
      readonly sheetId: string;
      readonly code: string;
      readonly plannedS: number;
      /** Nothing was pencilled: taken as planned. */
      readonly givenS: number | undefined;
    };

export interface TypedBackInput {
  readonly texts: CardTexts;
  readonly card: FieldCard;
  readonly kit: Kit;
  readonly camera: Camera | undefined;
  readonly notebook: FindsRecords;
  readonly cards: readonly SheetCard[];
  readonly now: { readonly at: number; readonly offsetMin: number };
  readonly newId: () => string;
}

/**
 * One row of a card as the records it amounts to: a scene like the card's with that reading and that bed mark, a sheet with its ledger, and
 * one opening. All of it is one change, so that it is taken back as one.
 *
 * An empty bed mark is the card's own, an empty time is taken as planned, an empty code is the next one. A code that a sheet has which
 * waits to be exposed is that sheet.
 */
export function typedBack(input: TypedBackInput): TypedBack {
  const { texts, kit, notebook, cards, now, newId } = input;
  const reading = readingOf(texts.reading, input.card);
  if (reading === undefined) return { kind: "waits", waitsFor: "the reading" };
  const givenS = secondsOf(texts.gave);
  if (givenS === undefined && texts.gave.trim() !== "") return { kind: "waits", waitsFor: "a time that can be read" };
  const focus = focusOf(input);
  if (focus === undefined) return { kind: "waits", waitsFor: "a mark that can be read" };
  const code = texts.code.trim() === "" ? nextSheetCode({ codes: cards.map((one) => one.code) }) : texts.code.trim();
  if (!sheetCode.safeParse(code).success) return { kind: "waits", waitsFor: "a code of up to 12 letters and figures" };
  const known = cards.find((one) => one.code.toLowerCase() === code.toLowerCase());
  if (known !== undefined && (known.dates.exposedAt !== undefined || known.dates.discardedAt !== undefined))
    return {
      kind: "cannot",
      head: `${known.code} has been exposed already`,
      say: "Another sheet bears this code. Look at the back of the print, or leave the code empty for the next one.",
    };

  const sceneSet = sceneLike(kit.scene, reading, focus, now, newId);
  const scene = withSet<Scene>(undefined, sceneSet);
  const newKit = kitOf({ notebook, scene });
  const plan = planOf(newKit);
  if (plan.kind !== "plan") return { kind: "waits", waitsFor: "a reading and a mark that give a time" };
  const sheet = sheetForTheCap({ kit: newKit, plan, cards: [], freshId: known?.id ?? newId(), now });
  const plannedS = plan.answer.timeS;
  const practice = practiceOf({ hand: newKit.hand, way: "ticks" }) ?? null;
  const openedS = givenS ?? plannedS;
  const set: Record<string, Json> = {
    ...sheet.set,
    ...(newKit.recipe && { recipeId: newKit.recipe.id }),
    exposedAt: { ...now },
    [`openings.${newId()}.opening`]: {
      plannedS,
      givenS: { value: openedS, sd: Number(openingSdS({ timeS: openedS, practice }).toFixed(4)) },
      manner: givenS === undefined ? "takenAsPlanned" : "ticks",
      ...(newKit.hand && { handId: newKit.hand.id }),
    },
  };
  if (known === undefined) set.code = code;
  else for (const field of ["code", "createdAt"]) delete set[field];
  return {
    kind: "ready",
    sets: [sceneSet, { ...sheet, set }],
    sheetId: sheet.id,
    code: known?.code ?? code,
    plannedS,
    givenS,
  };
}

/** A new scene with the kit, the light and the place of another, one area and its reading. */
function sceneLike(
  scene: Scene,
  reading: Reading,
  focus: Scene["focus"],
  now: TypedBackInput["now"],
  newId: () => string,
): RecordSet {
  const [id, areaId, readingId] = [newId(), newId(), newId()];
  const set: Record<string, Json> = { createdAt: { ...now } };
  for (const field of copied) {
    const value = scene[field];
    if (value !== undefined) set[field] = value as Json;
  }
  for (const { id: filterId, name, filter } of scene.filters) {
    set[`filters.${filterId}.name`] = name;
    if (filter !== undefined) set[`filters.${filterId}.filter`] = filter as Json;
  }
  if (focus !== undefined) set.focus = focus as Json;
  set.place = { areaId, stops: scene.place?.stops ?? 0 };
  const held = scene.areas.find((area) => area.id === scene.place?.areaId);
  set[`areas.${areaId}.name`] = held?.name ?? "";
  set[`areas.${areaId}.readingId`] = readingId;
  set[`readings.${readingId}.areaId`] = areaId;
  set[`readings.${readingId}.reading`] = reading as unknown as Json;
  set[`readings.${readingId}.takenAt`] = { ...now };
  return { id, kind: "scene", set };
}

const copied = [
  "subject",
  "where",
  "outdoors",
  "light",
  "result",
  "cameraId",
  "lensId",
  "stopId",
  "meterId",
  "paperBoxId",
  "exposureIndexId",
  "handId",
  "recipeId",
  "contrastFilter",
  "focusSdStops",
  "stillS",
] as const satisfies readonly (keyof Scene)[];

/** The reading as the card's dial has it. */
function readingOf(text: string, card: FieldCard): Reading | undefined {
  const read = readMeter(text);
  const frame = card.rows[0]?.reading;
  if (read.kind !== "read" || frame === undefined) return undefined;
  const typed = { value: read.value, text: text.trim().slice(0, 60), ...(read.marked === true && { mark: true }) };
  if (saysEv(text)) {
    if (frame.way === "ev") return { ...frame, ev: typed };
    if (frame.way === "ev100") return { ...frame, ev100: typed };
    return frame.way === "time"
      ? { way: "ev", ...(frame.kind && { kind: frame.kind }), ev: typed, iso: frame.iso }
      : undefined;
  }
  return frame.way === "time" && read.value > 0 ? { ...frame, timeS: typed } : undefined;
}

function focusOf({ texts, card, kit, camera }: TypedBackInput): Scene["focus"] | undefined {
  const text = texts.bed.trim();
  if (text === "") return kit.scene.focus ?? { by: "distant" };
  if (saysDistant(text)) return { by: "distant" };
  const read = readerOf("extension")(text);
  if (read.kind !== "read") return undefined;
  const typed = { value: read.value, text: text.slice(0, 60) };
  const infinityMm = camera?.infinityBedMm?.value;
  const onBed = infinityMm !== undefined && card.columns.some(({ bedMm }) => bedMm !== undefined);
  if (onBed) return { by: "travel", travelMm: { value: read.value - infinityMm, text: typed.text } };
  return read.value > 0 ? { by: "extension", extensionMm: typed } : undefined;
}

function secondsOf(text: string): number | undefined {
  try {
    const timeS = parseTime({ text });
    return timeS >= 1e-3 && timeS <= 1e6 ? timeS : undefined;
  } catch {
    return undefined;
  }
}
