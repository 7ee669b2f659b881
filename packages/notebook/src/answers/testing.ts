/** What the tests of this folder share: records made from fields, and the invented notebook's kit. */

import type { Notebook } from "../journal/index.ts";
import { openForTest } from "../journal/testing.ts";
import {
  type AnyRecord,
  type Json,
  type Kind,
  kinds,
  newId,
  type RecordId,
  type RecordOf,
  type Sheet,
} from "../records/index.ts";
import { fillDemo } from "../starters/index.ts";
import type { Kit } from "./kit.ts";
import { kitOf } from "./kitOf.ts";

/** The n-th id of a test. */
export function idNumber(n: number): RecordId {
  let place = 16;
  return newId({ now: 1_764_000_000_000, random: () => (Math.floor(n / 32 ** --place) % 32) / 32 });
}

/** A record as the journal would build it from these fields. */
export function recordOf<K extends Kind>(kind: K, id: RecordId, fields: Readonly<Record<string, Json>>): RecordOf<K> {
  return kinds[kind].assemble(id, new Map(Object.entries(fields))) as RecordOf<K>;
}

export function dial(timeS: number, text?: string): Json {
  return {
    way: "time",
    timeS: { value: timeS, ...(text === undefined ? {} : { text, mark: true }) },
    fNumber: { value: 8 },
    iso: { value: 100 },
  };
}

/** Fields of a scene whose areas have these names and readings, in this order; the first one is placed. */
export function areasOf(readings: readonly (readonly [name: string, reading: Json])[]): Record<string, Json> {
  const fields: Record<string, Json> = {};
  for (const [place, [name, reading]] of readings.entries()) {
    const [areaId, readingId] = [idNumber(100 + place), idNumber(200 + place)];
    fields[`areas.${areaId}.name`] = name;
    fields[`areas.${areaId}.readingId`] = readingId;
    fields[`readings.${readingId}.areaId`] = areaId;
    fields[`readings.${readingId}.reading`] = reading;
  }
  fields.place = { areaId: idNumber(100), stops: 0 };
  return fields;
}

/** A hull read 1/15 at f/8 and ISO 100, a 210 mm lens at f/11 racked out to 248 mm, a told index of 1.4. */
export function someKit(change: {
  readonly scene?: Readonly<Record<string, Json>>;
  readonly lens?: Readonly<Record<string, Json>>;
  readonly meter?: Readonly<Record<string, Json>>;
  readonly meterThen?: Readonly<Record<string, Json>>;
  readonly paperBox?: Readonly<Record<string, Json>>;
  readonly exposureIndex?: Readonly<Record<string, Json>>;
  readonly hand?: Readonly<Record<string, Json>>;
}): Kit {
  return {
    scene: recordOf("scene", idNumber(1), {
      ...areasOf([["hull", dial(1 / 16, "1/15")]]),
      focus: { by: "extension", extensionMm: { value: 248 } },
      ...change.scene,
    }),
    lens: recordOf("lens", idNumber(2), {
      markedFocalLengthMm: { value: 210 },
      [`stops.${idNumber(20)}.marked`]: { value: 2 ** 3.5, text: "f/11", mark: true },
      ...change.lens,
    }),
    meter: change.meter && recordOf("meter", idNumber(3), change.meter),
    meterThen: change.meterThen && recordOf("meter", idNumber(4), change.meterThen),
    paperBox: recordOf("paperBox", idNumber(5), { sensitivity: "blue", ...change.paperBox }),
    exposureIndex: recordOf("exposureIndex", idNumber(6), {
      value: { value: 1.4, sdStops: 0.5 },
      found: { how: "told" },
      ...change.exposureIndex,
    }),
    hand: change.hand && recordOf("hand", idNumber(7), change.hand),
  };
}

/** A sheet of the invented notebook by its code, with the scene it is of. */
export async function demoSheet(code: string): Promise<{ notebook: Notebook; sheet: Sheet; kit: Kit }> {
  const notebook = await openForTest();
  await fillDemo({ notebook });
  const card = notebook.cards().find((one) => one.code === code);
  const sheet = (await notebook.load(card?.id ?? "")) as Sheet;
  const scene = notebook.peek(sheet.sceneId ?? "") as Extract<AnyRecord, { kind: "scene" }>;
  return { notebook, sheet, kit: kitOf({ notebook, scene, sheet }) };
}
