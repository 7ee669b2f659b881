import type { Kit } from "@captray/notebook/answers";
import type { RecordSet } from "@captray/notebook/journal";
import type {
  AnyRecord,
  ExposureIndex,
  FieldSet,
  Hand,
  Json,
  Lens,
  Meter,
  PaperBox,
  Result,
  Scene,
} from "@captray/notebook/records";
import { planDefaults } from "@captray/science/exposure";
import { parseEv, parseExposureIndex, parseLength, parseNumber, parseTime } from "@captray/science/notation";
import { withSet } from "../recordMerge.ts";
import type { Draft, HowFound } from "./draft.ts";
import { fieldValue, isSensible, saysDistant, saysEv } from "./readTexts.ts";

/** What of the Shelf the page needs to know: to find the lens, the box and the index that are there already. */
export interface ShelfView {
  readonly lenses: readonly Lens[];
  readonly meters: readonly Meter[];
  readonly boxes: readonly PaperBox[];
  readonly indexes: readonly ExposureIndex[];
  readonly scenes: readonly Scene[];
  readonly hands: readonly Hand[];
}

/** Ids for whatever must be made: drawn once for a page, so that what is shown and what is kept are the same records. */
export interface FreshIds {
  readonly lens: string;
  readonly stop: string;
  readonly meter: string;
  readonly box: string;
  readonly negative: string;
  readonly positive: string;
  readonly scene: string;
  readonly area: string;
  readonly reading: string;
}

export interface DraftRecords {
  readonly kit: Kit;
  /** What keeping the draft writes, kit first; empty sets are left out. */
  readonly sets: readonly RecordSet[];
  readonly sceneId: string;
}

type Moment = { readonly at: number; readonly offsetMin: number };

/**
 * The records a draft amounts to: kit that is on the shelf is found there by what was typed, the rest is made.
 *
 * The same focal length is the same lens, and another f-number on it another of its stops. One exposure index is kept for each box and result.
 */
export function draftRecords({
  draft,
  shelf,
  fresh,
  takenAt,
}: {
  readonly draft: Draft;
  readonly shelf: ShelfView;
  readonly fresh: FreshIds;
  readonly takenAt: Moment;
}): DraftRecords {
  const sets: RecordSet[] = [];
  const keep = <R extends AnyRecord>(base: R | undefined, kind: R["kind"], id: string, set: FieldSet): R => {
    const changed = base === undefined ? set : onlyChanges(base, set);
    const change: RecordSet = { id, kind, set: changed };
    if (base === undefined || Object.keys(changed).length > 0) sets.push(change);
    return withSet<R>(base, change);
  };

  const { lens, stopId } = keepLens(draft, shelf, fresh, keep);
  const meter = keepMeter(draft, shelf, fresh, keep);
  const { paperBox, exposureIndex } = keepPaper(draft, shelf, fresh, keep);
  const scene = keepScene({ draft, shelf, fresh, keep, takenAt, lens, stopId, meter, paperBox, exposureIndex });
  const hand = shelf.hands.find(({ id }) => id === scene.handId) ?? shelf.hands[0];
  return { kit: { scene, lens, meter, paperBox, exposureIndex, hand }, sets, sceneId: scene.id };
}

type Keep = <R extends AnyRecord>(base: R | undefined, kind: R["kind"], id: string, set: FieldSet) => R;

function keepLens(draft: Draft, shelf: ShelfView, fresh: FreshIds, keep: Keep): { lens?: Lens; stopId?: string } {
  const focalLength = fieldValue(draft, "focalLength");
  const aperture = fieldValue(draft, "lensFNumber");
  if (focalLength === undefined && aperture === undefined) return {};
  const known = shelf.lenses.find((lens) => sameLens(lens, focalLength?.value));
  const stop = known?.stops.find((one) => sameStop(one, aperture));
  const stopId = stop?.id ?? fresh.stop;
  const set: Record<string, Json> = {};
  if (known === undefined) {
    set.name = focalLength ? `${focalLength.text} ${/[a-z"]/i.test(focalLength.text) ? "" : "mm"}`.trim() : "";
    set.sort = "lens";
    if (focalLength) set.markedFocalLengthMm = typed(focalLength);
  }
  if (stop === undefined && aperture !== undefined) {
    if (aperture.mark === true) set[`stops.${stopId}.marked`] = typed(aperture);
    else set[`stops.${stopId}.measuredFNumber`] = { value: aperture.value, sdStops: planDefaults.lens.apertureSdStops };
  }
  const infinityMm = parsed(() => parseLength({ text: draft.better.infinityExtension ?? "" }));
  if (infinityMm !== undefined && infinityMm > 0) set.infinityExtensionMm = { value: infinityMm, sd: 1 };
  const transmission = parsed(() => parseNumber({ text: draft.better.transmission ?? "" }));
  if (transmission !== undefined && transmission > 0 && transmission <= 1) {
    set.transmission = { value: transmission, sdStops: planDefaults.lens.transmissionSdStops };
  }
  return { lens: keep<Lens>(known, "lens", known?.id ?? fresh.lens, set), stopId };
}

function sameLens(lens: Lens, focalLengthMm: number | undefined): boolean {
  return lens.sort === "lens" && focalLengthMm !== undefined && lens.markedFocalLengthMm?.value === focalLengthMm;
}

function sameStop(stop: Lens["stops"][number], aperture: { value: number; mark?: boolean } | undefined): boolean {
  if (aperture === undefined) return false;
  const held = aperture.mark === true ? stop.marked?.value : stop.measuredFNumber?.value;
  return held !== undefined && Math.abs(held / aperture.value - 1) < 1e-9;
}

function keepMeter(draft: Draft, shelf: ShelfView, fresh: FreshIds, keep: Keep): Meter {
  const known = shelf.meters.find((meter) => meter.id === draft.meterId) ?? shelf.meters.at(-1);
  const set: Record<string, Json> =
    known === undefined ? { name: "Meter", reads: "reflected", assumed: ["name", "reads"] } : {};
  const offset = parsed(() => parseEv({ text: draft.better.meterOffset ?? "" }));
  if (offset !== undefined) set.offsetStops = { value: offset, sd: 0.1 };
  return keep<Meter>(known, "meter", known?.id ?? fresh.meter, set);
}

function keepPaper(
  draft: Draft,
  shelf: ShelfView,
  fresh: FreshIds,
  keep: Keep,
): { paperBox?: PaperBox; exposureIndex?: ExposureIndex } {
  const { result } = draft;
  if (result === undefined) return {};
  const known = shelf.boxes.find((box) => box.id === draft.paperBoxId) ?? shelf.boxes.at(-1);
  const boxSet: Record<string, Json> =
    known === undefined ? { name: "Box 1", sensitivity: "blue", assumed: ["name", "sensitivity"] } : {};
  const exponent = parsed(() => parseNumber({ text: draft.better.exponent ?? "" }));
  if (exponent !== undefined && exponent > 0.5 && exponent <= 1) boxSet.reciprocity = { exponent, fromS: 1 };
  const paperBox = keep<PaperBox>(known, "paperBox", known?.id ?? fresh.box, boxSet);

  const index = indexOf(shelf, paperBox.id, result);
  const indexSet: Record<string, Json> = {};
  if (index === undefined) Object.assign(indexSet, { paperBoxId: paperBox.id, result });
  const text = draft.better.exposureIndex[result];
  const value = parsed(() => parseExposureIndex({ text: text ?? "" })) ?? index?.value?.value ?? guessedIndex(result);
  const how = draft.better.howFound[result];
  const sdStops = how === undefined ? (index?.value?.sdStops ?? sdOf("guessed")) : sdOf(how);
  if (index?.value?.value !== value || index.value.sdStops !== sdStops) indexSet.value = { value, sdStops };
  if (text !== undefined && text.trim() !== "" && index?.text !== text.trim()) indexSet.text = text.trim();
  if (how !== undefined || index === undefined) indexSet.found = foundBy(how ?? "guessed");
  const exposureIndex = keep<ExposureIndex>(index, "exposureIndex", index?.id ?? fresh[result], indexSet);
  return { paperBox, exposureIndex };
}

/** The index kept for a box and a result. */
export function indexOf(shelf: ShelfView, paperBoxId: string | undefined, result: Result): ExposureIndex | undefined {
  return shelf.indexes.find((one) => one.paperBoxId === paperBoxId && one.result === result);
}

/** What a box nobody has tested is taken for. */
export function guessedIndex(result: Result): number {
  return result === "negative" ? planDefaults.exposureIndex.negative : planDefaults.exposureIndex.directPositive;
}

function sdOf(how: HowFound): number {
  return planDefaults.exposureIndexSdStops[how];
}

function foundBy(how: HowFound): Json {
  if (how === "guessed" || how === "told") return { how };
  return { how: "ownSheets" };
}

interface SceneParts {
  readonly draft: Draft;
  readonly shelf: ShelfView;
  readonly fresh: FreshIds;
  readonly keep: Keep;
  readonly takenAt: Moment;
  readonly lens: Lens | undefined;
  readonly stopId: string | undefined;
  readonly meter: Meter;
  readonly paperBox: PaperBox | undefined;
  readonly exposureIndex: ExposureIndex | undefined;
}

function keepScene(parts: SceneParts): Scene {
  const { draft, shelf, fresh, keep, takenAt, lens, stopId, meter, paperBox, exposureIndex } = parts;
  const known = shelf.scenes.find((scene) => scene.id === draft.sceneId);
  const set: Record<string, Json> = { meterId: meter.id };
  if (known === undefined) set.createdAt = { ...takenAt };
  if (lens) set.lensId = lens.id;
  if (stopId !== undefined) set.stopId = stopId;
  if (paperBox) set.paperBoxId = paperBox.id;
  if (exposureIndex) set.exposureIndexId = exposureIndex.id;
  if (draft.result) set.result = draft.result;
  if (draft.better.light !== undefined) set.light = { source: draft.better.light };

  const extension = fieldValue(draft, "extension");
  if (saysDistant(draft.texts.extension)) set.focus = { by: "distant" };
  else if (extension) set.focus = { by: "extension", extensionMm: typed(extension) };
  else if (known?.focus !== undefined && draft.texts.extension.trim() === "") set.focus = null;

  const area = known?.areas[0];
  const areaId = area?.id ?? fresh.area;
  const reading = readingFrom(draft);
  const held = known?.readings.find((one) => one.id === area?.readingId);
  if (reading !== undefined && !sameJson(held?.reading, reading)) {
    set[`readings.${fresh.reading}.areaId`] = areaId;
    set[`readings.${fresh.reading}.reading`] = reading;
    set[`readings.${fresh.reading}.takenAt`] = { ...takenAt };
    set[`areas.${areaId}.readingId`] = fresh.reading;
    if (area === undefined) set[`areas.${areaId}.name`] = "";
  }
  const saidS = parsed(() => parseTime({ text: draft.said }));
  if (saidS !== undefined && saidS > 0) set.saidTime = { timeS: { value: saidS, text: draft.said.trim() } };
  else if (known?.saidTime !== undefined) set.saidTime = null;
  const placeStops = parsed(() => parseEv({ text: draft.better.placeStops ?? "" }));
  if (reading !== undefined || area !== undefined) {
    set.place = { areaId, stops: placeStops ?? known?.place?.stops ?? 0 };
  }
  return keep<Scene>(known, "scene", known?.id ?? fresh.scene, set);
}

function readingFrom(draft: Draft): Json | undefined {
  const first = fieldValue(draft, "time");
  const iso = fieldValue(draft, "iso");
  if (first === undefined || iso === undefined) return undefined;
  if (saysEv(draft.texts.time)) return { way: "ev", ev: typed(first), iso: typed(iso) };
  const fNumber = fieldValue(draft, "meterFNumber");
  if (fNumber === undefined) return undefined;
  return { way: "time", timeS: typed(first), fNumber: typed(fNumber), iso: typed(iso) };
}

function typed({ value, text, mark }: { value: number; text: string; mark?: boolean }): { [key: string]: Json } {
  return { value, text, ...(mark === true && { mark }) };
}

function onlyChanges(base: AnyRecord, set: FieldSet): FieldSet {
  return Object.fromEntries(
    Object.entries(set).filter(([path, value]) => {
      const [field = "", itemId] = path.split(".");
      if (itemId !== undefined) return true;
      const held = (base as unknown as Record<string, unknown>)[field];
      return value === null ? held !== undefined : !sameJson(held, value);
    }),
  );
}

function sameJson(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (typeof one !== "object" || typeof other !== "object" || one === null || other === null) return false;
  const keys = Object.keys(one);
  if (keys.length !== Object.keys(other).length) return false;
  return keys.every((key) => sameJson((one as Record<string, unknown>)[key], (other as Record<string, unknown>)[key]));
}

/** What a text says, or nothing where it is empty or cannot be read: the field itself says why. */
function parsed(read: () => number): number | undefined {
  try {
    const value = read();
    return isSensible(value) ? value : undefined;
  } catch {
    return undefined;
  }
}
