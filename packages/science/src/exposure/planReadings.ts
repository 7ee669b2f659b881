import type { ReadingFacts } from "../errors/ledgerFacts.ts";
import { OutOfDomain } from "../errors/outOfDomain.ts";
import { planDefaults } from "./planDefaults.ts";
import type { LensOnTheBoard } from "./planLens.ts";
import type { PlanInput, PlanReading } from "./planTypes.ts";
import { finiteAt, missing, notNegativeAt, oneWayOf, positiveAt, wordAt } from "./valuesAt.ts";

const ways = ["timeS", "ev", "ev100", "luminanceCdM2", "illuminanceLx"] as const;
const partsOf: Readonly<Record<(typeof ways)[number], readonly ("fNumber" | "iso")[]>> = {
  timeS: ["fNumber", "iso"],
  ev: ["iso"],
  ev100: [],
  luminanceCdM2: [],
  illuminanceLx: [],
};

/** A reading with its kind and its way of being read, checked; its EV waits for the meter. */
export interface CheckedReading {
  readonly area: string | null;
  readonly kind: "reflected" | "incident";
  readonly way: (typeof ways)[number];
  readonly read: number;
  readonly fNumber: number | null;
  readonly iso: number | null;
  readonly text: string | undefined;
}

/** The readings, checked in the order of their keys. Inner helper of `plan`. */
export function checkedReadings(readings: PlanInput["readings"]): readonly CheckedReading[] {
  if (readings.length === 0) throw new OutOfDomain("noReadings", {}, "readings");
  const areas = new Set<string>();
  return readings.map((reading, index) => {
    const path = `readings/${index}`;
    if (reading.area !== undefined) {
      if (areas.has(reading.area)) {
        throw new OutOfDomain("outOfRange", { area: reading.area, twice: true }, `${path}/area`);
      }
      areas.add(reading.area);
    }
    return checkedReading(reading, path);
  });
}

function checkedReading(reading: PlanReading, path: string): CheckedReading {
  const way = oneWayOf(reading, ways, path);
  if (way === undefined) throw missing(path, "timeS", ways);
  const parts = partsOf[way];
  for (const part of ["fNumber", "iso"] as const) {
    const wanted = parts.includes(part);
    if (wanted && reading[part] === undefined) throw missing(path, part);
    if (!wanted && reading[part] !== undefined) {
      throw new OutOfDomain(
        "twoOfOne",
        { goesWith: part === "fNumber" ? "timeS" : "ev", key: part },
        `${path}/${part}`,
      );
    }
  }
  const byWay = way === "illuminanceLx" ? "incident" : planDefaults.reading.kind;
  const kind = wordAt(reading.kind ?? byWay, ["reflected", "incident"], path, "kind");
  if ((way === "luminanceCdM2" && kind === "incident") || (way === "illuminanceLx" && kind === "reflected")) {
    throw new OutOfDomain("unknownWord", { kind, choices: [byWay] }, `${path}/kind`);
  }
  const read = reading[way] as number;
  return {
    area: reading.area ?? null,
    kind,
    way,
    read: way === "ev" || way === "ev100" ? finiteAt(read, path, way) : positiveAt(read, path, way),
    fNumber: reading.fNumber === undefined ? null : positiveAt(reading.fNumber, path, "fNumber"),
    iso: reading.iso === undefined ? null : positiveAt(reading.iso, path, "iso"),
    text: reading.text,
  };
}

/** The meter with every default filled in. */
export interface CheckedMeter {
  readonly meterK: number;
  readonly meterC: number;
  readonly sdStops: number;
  readonly readingSdStops: number;
  readonly offsetStops: number;
  readonly clickStops: number;
}

/** The meter as it is read for one kind of light. Inner helper of `plan`. */
export function checkedMeter(meter: PlanInput["meter"], kind: "reflected" | "incident"): CheckedMeter {
  const defaults = planDefaults.meter;
  const sdStops = kind === "incident" ? defaults.incidentSdStops : defaults.sdStops;
  return {
    meterK: positiveAt(meter?.meterK ?? defaults.meterK, "meter", "meterK"),
    meterC: positiveAt(meter?.meterC ?? defaults.meterC, "meter", "meterC"),
    sdStops: notNegativeAt(meter?.sdStops ?? sdStops, "meter", "sdStops"),
    readingSdStops: notNegativeAt(meter?.readingSdStops ?? defaults.readingSdStops, "meter", "readingSdStops"),
    offsetStops: finiteAt(meter?.offsetStops ?? defaults.offsetStops, "meter", "offsetStops"),
    clickStops: positiveAt(meter?.clickStops ?? defaults.clickStops, "meter", "clickStops"),
  };
}

/** The reading the exposure is based on: one area, or the mean of all. */
export interface Ground {
  readonly area: string | null;
  readonly kind: "reflected" | "incident";
  /** The readings that bear it; the first one gives the frame. */
  readonly readings: readonly CheckedReading[];
  readonly placeStops: number;
}

/** Finds the ground of the exposure. Inner helper of `plan`. */
export function groundOf(place: PlanInput["place"], readings: readonly CheckedReading[]): Ground {
  const area = place?.area ?? null;
  const placeStops = finiteAt(place?.stops ?? planDefaults.place.stops, "place", "stops");
  if (area !== null) {
    const placed = readings.find((reading) => reading.area === area);
    if (placed === undefined) {
      throw new OutOfDomain(
        "unknownArea",
        { area, areas: readings.flatMap((reading) => reading.area ?? []) },
        "place/area",
      );
    }
    return { area, kind: placed.kind, readings: [placed], placeStops };
  }
  const kind = readings[0]?.kind ?? "reflected";
  if (readings.some((reading) => reading.kind !== kind)) {
    throw new OutOfDomain("mixedIncidentAndReflected", {}, "readings");
  }
  const name = readings.length === 1 ? (readings[0]?.area ?? null) : null;
  return { area: name, kind, readings, placeStops };
}

/** The light of a reading as an EV at ISO 100. Inner helper of `plan`. */
export function ev100Of(reading: CheckedReading, meter: CheckedMeter): number {
  const { way, read } = reading;
  if (way === "timeS") {
    return 2 * Math.log2(reading.fNumber as number) - Math.log2(read) - Math.log2((reading.iso as number) / 100);
  }
  if (way === "ev") return read - Math.log2((reading.iso as number) / 100);
  if (way === "ev100") return read;
  return way === "luminanceCdM2" ? Math.log2((100 / meter.meterK) * read) : Math.log2((100 / meter.meterC) * read);
}

/** The ledger's first line: the time the meter shows, or would show, for the ground. Inner helper of `plan`. */
export function readingLine(input: {
  readonly ground: Ground;
  readonly ev100: number;
  readonly meter: CheckedMeter;
  readonly lens: LensOnTheBoard;
  readonly exposureIndex: number;
}): ReadingFacts {
  const { ground, ev100, meter, lens, exposureIndex } = input;
  const first = ground.readings[0] as CheckedReading;
  const averaged = ground.readings.length;
  const fNumber = first.fNumber ?? lens.fNumber;
  const iso = first.iso ?? exposureIndex;
  const readStops = 2 * Math.log2(fNumber) - ev100 - Math.log2(iso / 100);
  return {
    stops: readStops + meter.offsetStops,
    sd: Math.hypot(meter.sdStops, meter.readingSdStops / Math.sqrt(averaged)),
    area: ground.area,
    averaged,
    kind: ground.kind,
    way: first.way,
    read: first.read,
    ev100,
    timeS: averaged === 1 && first.way === "timeS" ? first.read : 2 ** readStops,
    fNumber,
    iso,
    offsetStops: meter.offsetStops,
    meterSd: meter.sdStops,
    readingSd: meter.readingSdStops,
    ...(averaged === 1 && first.text !== undefined && { text: first.text }),
  };
}
