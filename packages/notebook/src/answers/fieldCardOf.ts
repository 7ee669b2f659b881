import type { OutOfDomain } from "@captray/science/errors";
import type { Camera, Focus, Reading, RecordId, Scene } from "../records/index.ts";
import { focusOf } from "./focusOf.ts";
import type { Kit } from "./kit.ts";
import type { MissingPart } from "./planInputOf.ts";
import { type PlanOf, planOf } from "./planOf.ts";

export interface FieldCardRow {
  readonly reading: Reading;
  /** As the dial marks it: "1/15", "EV 11". */
  readonly text: string;
  /** The reading of the scene itself. */
  readonly isOwn: boolean;
}

export interface FieldCardColumn {
  readonly focus: Focus;
  /** null: a distant subject. Nothing for a pinhole, which has no distance of its own. */
  readonly distanceMm: number | null | undefined;
  /** Where the board stands on the bed's own scale, where that is known. */
  readonly bedMm: number | undefined;
  readonly extensionMm: number;
  readonly isOwn: boolean;
}

export interface FieldCardCell {
  /** `tooLong`: nobody stands by the cap for it. `none`: it cannot be. */
  readonly kind: "time" | "tooShort" | "tooLong" | "none";
  readonly timeS: number;
}

export interface FieldCard {
  readonly kind: "card";
  readonly rows: readonly FieldCardRow[];
  readonly columns: readonly FieldCardColumn[];
  /** By row, then by column. */
  readonly cells: readonly (readonly FieldCardCell[])[];
  /** The whole plan at the scene's own reading and focus, or in the middle of the card. */
  readonly own: Extract<PlanOf, { kind: "plan" }>;
  /** The largest doubt of any time on the card, one standard deviation in stops. */
  readonly mostSdStops: number;
  /** The shortest time a cap can honestly give. */
  readonly shortestS: number;
}

export type FieldCardOf =
  | FieldCard
  | { readonly kind: "missing"; readonly missing: readonly MissingPart[] }
  | { readonly kind: "refused"; readonly fault: OutOfDomain };

/** Longer than this is no field work: a card says so instead of a time. */
export const longestOnCardS = 3600;

const rowCount = 10;
const columnCount = 5;
/** Columns nearer to each other than this are one. */
const leastStepStops = 0.15;

/** Whole and half stops of a dial: the mark, and how many stops it is below 1 s. */
const ladder: readonly { readonly text: string; readonly stops: number }[] = [
  "30 s,20 s,15 s,10 s,8 s,6 s,4 s,3 s,2 s,1.5 s",
  "1 s,0.7 s,1/2,0.3 s,1/4,1/6,1/8,1/10,1/15,1/20,1/30,1/45,1/60,1/90,1/125,1/180,1/250,1/350,1/500,1/750,1/1000",
]
  .join(",")
  .split(",")
  .map((text, place) => ({ text, stops: place / 2 - 5 }));

const distancesMm = [10_000, 5000, 3000, 2000, 1500, 1200, 1000, 800, 700, 600, 500, 400, 350, 300, 250, 200, 150, 100];

/**
 * The cap times of a field card: for the lens, stop, box, recipe and light of a scene, the meter's reading down and the focus across.
 *
 * Every cell is the plan of the scene with that reading and that focus, so that long exposures and the hand are in it. Readings are whole
 * or half stops of the scene's own dial, distances those that change the time and that the bellows allow; the scene's own are among them.
 */
export function fieldCardOf({
  kit,
  camera,
  step,
}: {
  readonly kit: Kit;
  readonly camera?: Camera | undefined;
  readonly step: "whole" | "half";
}): FieldCardOf {
  const rows = rowsOf(kit, step);
  const columns = columnsOf(kit, camera);
  const plans = rows.map(({ reading }) =>
    columns.map(({ focus }) => planOf({ ...kit, scene: sceneAt(kit.scene, reading, focus) })),
  );
  const [ownRow, ownColumn] = [placeOfOwn(rows), placeOfOwn(columns)];
  const own =
    plans[ownRow]?.[ownColumn] ?? planOf({ ...kit, scene: sceneAt(kit.scene, rows[0]?.reading, kit.scene.focus) });
  if (own.kind !== "plan") return own;
  const answers = plans.flat().flatMap((one) => (one.kind === "plan" ? [one.answer] : []));
  return {
    kind: "card",
    rows,
    columns,
    cells: plans.map((line) => line.map(cellOf)),
    own,
    mostSdStops: Math.max(...answers.map(({ timeStops }) => timeStops.sd)),
    shortestS: own.answer.byHand.shortestS,
  };
}

function cellOf(plan: PlanOf): FieldCardCell {
  if (plan.kind !== "plan") return { kind: "none", timeS: 0 };
  const { timeS, byHand } = plan.answer;
  const kind = byHand.how === "tooShort" ? "tooShort" : timeS > longestOnCardS ? "tooLong" : "time";
  return { kind, timeS };
}

/** The scene as it would be with one reading of one area, placed as its ground is placed. */
function sceneAt(scene: Scene, reading: Reading | undefined, focus: Focus | undefined): Scene {
  const { focus: _, ...rest } = scene;
  const areaId = scene.id as RecordId;
  return {
    ...rest,
    ...(focus && { focus }),
    place: { areaId, stops: scene.place?.stops ?? 0 },
    areas: [{ id: areaId, name: "", readingId: areaId }],
    readings: reading === undefined ? [] : [{ id: areaId, areaId, reading }],
  };
}

function placeOfOwn(all: readonly { readonly isOwn: boolean }[]): number {
  const place = all.findIndex(({ isOwn }) => isOwn);
  return place < 0 ? Math.floor(all.length / 2) : place;
}

/** The reading that the card is laid out around: of the placed area, else the last one taken. */
function ownReading({ readings, areas, place }: Scene): Reading | undefined {
  const placed = areas.find(({ id }) => id === place?.areaId);
  const held = readings.find(({ id }) => id === placed?.readingId) ?? readings.at(-1);
  return held?.reading;
}

function rowsOf({ scene, meter }: Kit, step: "whole" | "half"): readonly FieldCardRow[] {
  const reading = ownReading(scene);
  if (reading?.way === "ev" || reading?.way === "ev100") return evRows(reading, step);
  const dial = reading?.way === "time" ? reading : undefined;
  const ownStops = dial && -Math.log2(dial.timeS.value);
  const marks = ladder.filter(({ stops }) => step === "half" || Number.isInteger(stops));
  const at = (wanted: number) =>
    Math.max(
      0,
      marks.findIndex(({ stops }) => stops >= wanted - 1e-9),
    );
  // Whole stops run from 1 s to 1/500, or on from a longer reading; half stops lie around the reading.
  const from = step === "whole" ? Math.min(at(0), at(ownStops ?? 0)) : at((ownStops ?? 4) - 2);
  const isIncident = dial === undefined ? meter?.reads === "incident" : dial.kind === "incident";
  const fNumber = dial?.fNumber ?? { value: 8, text: "f/8", mark: true };
  const iso = dial?.iso ?? { value: Math.max(100, meter?.lowestIso ?? 100) };
  return marks
    .slice(Math.min(from, marks.length - rowCount), Math.min(from, marks.length - rowCount) + rowCount)
    .map(({ text, stops }) => ({
      reading: {
        way: "time",
        ...(isIncident && { kind: "incident" as const }),
        timeS: { value: 2 ** -stops, text, mark: true },
        fNumber,
        iso,
      },
      text,
      isOwn: ownStops !== undefined && Math.abs(stops - ownStops) < 0.05,
    }));
}

function evRows(reading: Extract<Reading, { way: "ev" | "ev100" }>, step: "whole" | "half"): readonly FieldCardRow[] {
  const own = reading.way === "ev" ? reading.ev.value : reading.ev100.value;
  const by = step === "whole" ? 1 : 0.5;
  const first = Math.round(own / by) * by - by * (rowCount / 2 - 1);
  return Array.from({ length: rowCount }, (_, row) => {
    const value = first + by * row;
    const text = `EV ${value < 0 ? "−" : ""}${Math.abs(value)}`;
    const ev = { value, text };
    return {
      reading: reading.way === "ev" ? { ...reading, ev } : { ...reading, ev100: ev },
      text,
      isOwn: Math.abs(value - own) < 0.05,
    };
  });
}

function columnsOf(kit: Kit, camera: Camera | undefined): readonly FieldCardColumn[] {
  const own = columnAt(kit, camera, kit.scene.focus ?? { by: "distant" }, true);
  if (own === undefined || own.distanceMm === undefined) return own === undefined ? [] : [own];
  const distant = own.distanceMm === null ? own : columnAt(kit, camera, { by: "distant" }, false);
  const others = distancesMm.flatMap((distanceMm) => {
    const focus: Focus = { by: "subjectDistance", subjectDistanceMm: { value: distanceMm } };
    return columnAt(kit, camera, focus, false) ?? [];
  });
  const kept: (FieldCardColumn & { readonly stops: number })[] = [];
  for (const column of [distant, own, ...others]) {
    if (column === undefined || kept.length === columnCount) continue;
    const stops = 2 * Math.log2(column.extensionMm);
    if (kept.every((one) => one.focus === column.focus || Math.abs(one.stops - stops) >= leastStepStops)) {
      if (!kept.some((one) => one.focus === column.focus)) kept.push({ ...column, stops });
    }
  }
  return kept.sort((a, b) => a.stops - b.stops).map(({ stops: _, ...column }) => column);
}

/** One column, or nothing where the camera cannot stand so. */
function columnAt(kit: Kit, camera: Camera | undefined, focus: Focus, isOwn: boolean): FieldCardColumn | undefined {
  const found = focusOf({ scene: { ...kit.scene, focus }, lens: kit.lens, camera });
  if (found.kind === "pinhole" && found.extensionMm !== undefined) {
    return { focus, distanceMm: undefined, bedMm: undefined, extensionMm: found.extensionMm, isOwn };
  }
  if (found.kind !== "focus") return undefined;
  const cannot = found.reach === "tooLong" || found.reach === "tooShort" || found.magnification.value > 1.0001;
  if (cannot && !isOwn) return undefined;
  const infinityMm = camera?.infinityBedMm?.value;
  return {
    focus,
    distanceMm: found.subjectDistanceMm === null ? null : found.subjectDistanceMm.value,
    bedMm: infinityMm === undefined ? undefined : infinityMm + found.travelMm.value,
    extensionMm: found.extensionMm.value,
    isOwn,
  };
}
