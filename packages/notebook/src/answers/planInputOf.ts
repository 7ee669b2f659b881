import type {
  PlanFilter,
  PlanFocus,
  PlanInput,
  PlanLens,
  PlanMeter,
  PlanPaper,
  PlanPinhole,
  PlanReading,
} from "@captray/science/exposure";
import type { Lens, Reading, Scene } from "../records/index.ts";
import type { Kit } from "./kit.ts";
import { planHandOf } from "./planHandOf.ts";

/** What a cap time cannot do without. */
export type MissingPart = "reading" | "focalLength" | "aperture" | "exposureIndex" | "pinholeExtension";

export type PlanInputOf =
  | { readonly kind: "ready"; readonly input: PlanInput }
  | { readonly kind: "missing"; readonly missing: readonly MissingPart[] };

/** The light a told or guessed exposure index is taken to be for, while nobody has said which light there is. */
export const supposedSource = "daylight:5500";

/**
 * The input of `plan`, put together from records: the one place where rooms, write-up and terminal do so.
 *
 * The ground is the scene's placed area, without one the mean of all readings. Of a lens the measured values go before the marked ones,
 * and where its infinity extension is known only the travel beyond it counts. An exposure index found with own sheets already holds light,
 * lens and meter, and with the same meter also that meter's doubt; a told or guessed one is taken for daylight until the scene says which
 * light there is.
 */
export function planInputOf(kit: Kit): PlanInputOf {
  const { scene, exposureIndex } = kit;
  const missing: MissingPart[] = [];
  const areas = scene.areas.flatMap((area) => {
    const held = scene.readings.find((reading) => reading.id === area.readingId);
    return held?.reading === undefined ? [] : [{ id: area.id, name: area.name, reading: held.reading }];
  });
  if (areas.length === 0) missing.push("reading");
  const lens = lensOf(kit, missing);
  if (exposureIndex?.value === undefined) missing.push("exposureIndex");
  if (missing.length > 0 || lens === undefined || exposureIndex?.value === undefined)
    return { kind: "missing", missing };

  const names = namesOf(areas);
  const ground = scene.place && areas.find((area) => area.id === scene.place?.areaId);
  const light = scene.light?.source ?? (exposureIndex.found.how === "ownSheets" ? undefined : supposedSource);
  const hand = planHandOf({ hand: kit.hand });
  const focus = lens.kind === "pinhole" ? undefined : planFocusOf(scene, kit.lens);
  const filters = [...scene.filters.flatMap(filterOf), ...contrastFilterOf(kit)];
  return {
    kind: "ready",
    input: {
      lens,
      ...(focus && { focus }),
      paper: paperOf(kit, exposureIndex.value),
      readings: areas.map(({ id, reading }) => ({ ...planReadingOf(reading), area: names.get(id) })),
      ...(ground && { place: { area: names.get(ground.id), stops: scene.place?.stops ?? 0 } }),
      meter: meterOf(kit, incidentGround(ground?.reading ?? areas[0]?.reading)),
      ...(filters.length > 0 && { filters }),
      ...(light !== undefined && { light: { source: light } }),
      ...(hand && { hand }),
      ...(scene.saidTime && {
        saidTimeS: scene.saidTime.timeS.value,
        ...(scene.saidTime.roundingS !== undefined && { saidRoundingS: scene.saidTime.roundingS }),
      }),
    },
  };
}

/** Areas are named once each: a second “hull” becomes “hull 2”, and a nameless one is what was pointed at. */
function namesOf(areas: readonly { readonly id: string; readonly name: string }[]): Map<string, string> {
  const names = new Map<string, string>();
  const taken = new Set<string>();
  for (const { id, name } of areas) {
    const wanted = name.trim() === "" ? "subject" : name.trim();
    let free = wanted;
    for (let count = 2; taken.has(free); count++) free = `${wanted} ${count}`;
    taken.add(free);
    names.set(id, free);
  }
  return names;
}

function lensOf({ lens, scene }: Kit, missing: MissingPart[]): PlanLens | PlanPinhole | undefined {
  if (lens === undefined) {
    missing.push("focalLength", "aperture");
    return undefined;
  }
  const glass = {
    ...(lens.glass && { glass: lens.glass }),
    ...(lens.transmission && { transmission: lens.transmission.value, transmissionSdStops: lens.transmission.sdStops }),
  };
  if (lens.sort === "pinhole") {
    const extensionMm = scene.focus?.by === "extension" ? scene.focus.extensionMm.value : undefined;
    if (lens.holeMm === undefined) missing.push("aperture");
    if (extensionMm === undefined) missing.push("pinholeExtension");
    if (lens.holeMm === undefined || extensionMm === undefined) return undefined;
    return {
      kind: "pinhole",
      holeMm: lens.holeMm.value,
      extensionMm,
      apertureSdStops: sdStopsOf(lens.holeMm),
      ...glass,
    };
  }
  const focalLengthMm = lens.measuredFocalLengthMm?.value ?? lens.markedFocalLengthMm?.value;
  const aperture = apertureOf(lens, scene);
  if (focalLengthMm === undefined) missing.push("focalLength");
  if (aperture === undefined) missing.push("aperture");
  if (focalLengthMm === undefined || aperture === undefined) return undefined;
  return { focalLengthMm, ...aperture, ...glass, ...(lens.pupilRatio && { pupilRatio: lens.pupilRatio.value }) };
}

/** The stop in use, as `plan` takes it. Inner helper of these answers. */
export function apertureOf(lens: Lens, scene: Scene): Partial<PlanLens> | undefined {
  const stop = lens.stops.find((one) => one.id === scene.stopId) ?? lens.stops[0];
  const marked = stop?.marked;
  if (stop?.measuredFNumber) {
    return {
      fNumber: stop.measuredFNumber.value,
      apertureSdStops: stop.measuredFNumber.sdStops,
      ...(marked && { markedFNumber: marked.value }),
    };
  }
  if (stop?.diameterMm) {
    return {
      diameterMm: stop.diameterMm.value,
      apertureSdStops: sdStopsOf(stop.diameterMm),
      ...(marked && { markedFNumber: marked.value }),
    };
  }
  if (marked) return { fNumber: marked.value, fNumberMarked: marked.mark === true };
  return undefined;
}

/** The doubt of a diameter as stops of light. */
function sdStopsOf({ value, sd }: { readonly value: number; readonly sd: number }): number {
  return (2 * sd) / (value * Math.LN2);
}

/** How the camera stands, as `plan` takes it; nothing for a distant subject. Inner helper of these answers. */
export function planFocusOf({ focus, focusSdStops }: Scene, lens: Lens | undefined): PlanFocus | undefined {
  const sd = focusSdStops === undefined ? {} : { sdStops: focusSdStops };
  switch (focus?.by) {
    case "extension": {
      const infinityMm = lens?.infinityExtensionMm?.value;
      const extensionMm = focus.extensionMm.value;
      return infinityMm === undefined ? { extensionMm, ...sd } : { travelMm: extensionMm - infinityMm, ...sd };
    }
    case "travel":
      return { travelMm: focus.travelMm.value, ...sd };
    case "magnification":
      return { magnification: focus.magnification.value, ...sd };
    case "imageSize":
      return { imageSizeMm: focus.imageSizeMm.value, subjectSizeMm: focus.subjectSizeMm.value, ...sd };
    case "subjectDistance":
      return { subjectDistanceMm: focus.subjectDistanceMm.value, ...sd };
    case "totalDistance":
      return {
        totalDistanceMm: focus.totalDistanceMm.value,
        ...(focus.hiatusMm !== undefined && { hiatusMm: focus.hiatusMm }),
        ...(focus.larger !== undefined && { larger: focus.larger }),
        ...sd,
      };
    default:
      return undefined;
  }
}

function paperOf(
  { paperBox, exposureIndex }: Kit,
  value: { readonly value: number; readonly sdStops: number },
): PlanPaper {
  const found = exposureIndex?.found;
  return {
    exposureIndex: value.value,
    exposureIndexSdStops: value.sdStops,
    ...(paperBox?.sensitivity && { sensitivity: paperBox.sensitivity }),
    ...reciprocityOf(paperBox),
    ...(found?.how === "ownSheets" && {
      foundWith: {
        ...(found.source && { source: found.source }),
        ...(found.glass && { glass: found.glass }),
        ...(found.transmission !== undefined && { transmission: found.transmission }),
      },
    }),
  };
}

/** The box's own table goes before an exponent; a single row is no table. */
function reciprocityOf(box: Kit["paperBox"]): Pick<PlanPaper, "reciprocity"> {
  const table = box?.reciprocityTable ?? [];
  if (table.length >= 2) {
    return { reciprocity: { table: table.map(({ meteredS, neededS }) => [meteredS, neededS] as const) } };
  }
  return box?.reciprocity ? { reciprocity: box.reciprocity } : {};
}

/** A reading as `plan` takes it, without the name of its area. */
export function planReadingOf(reading: Reading): PlanReading {
  switch (reading.way) {
    case "time":
      return {
        ...(reading.kind && { kind: reading.kind }),
        timeS: reading.timeS.value,
        ...(reading.timeS.text !== undefined && { text: reading.timeS.text }),
        fNumber: reading.fNumber.value,
        iso: reading.iso.value,
      };
    case "ev":
      return { ...(reading.kind && { kind: reading.kind }), ev: reading.ev.value, iso: reading.iso.value };
    case "ev100":
      return { ...(reading.kind && { kind: reading.kind }), ev100: reading.ev100.value };
    case "luminance":
      return { luminanceCdM2: reading.luminanceCdM2.value };
    case "illuminance":
      return { illuminanceLx: reading.illuminanceLx.value };
  }
}

function incidentGround(reading: Reading | undefined): boolean {
  if (reading === undefined) return false;
  return reading.way === "illuminance" || ("kind" in reading && reading.kind === "incident");
}

/**
 * The meter's own offset and doubt; an index found with own sheets holds those of the meter used then. Without a meter
 * in the scene it is taken to be that one.
 */
function meterOf({ meter, meterThen, exposureIndex }: Kit, incident: boolean): PlanMeter {
  const ownSheets = exposureIndex?.found.how === "ownSheets";
  const sameMeter = ownSheets && (meter === undefined || meterThen === undefined);
  const own = meter?.offsetStops?.value ?? 0;
  const inIndex = ownSheets && meterThen !== undefined ? (meterThen.offsetStops?.value ?? 0) : 0;
  const offsetStops = sameMeter ? 0 : own - inIndex;
  // A meter that reads both ways has two constants, and the sheets were read by the reflected one.
  const doubtInIndex = sameMeter && (!incident || meter?.reads === "incident");
  const sdStops = doubtInIndex ? 0 : incident ? meter?.incidentSdStops : meter?.reflectedSdStops;
  return {
    ...(meter?.meterK !== undefined && { meterK: meter.meterK }),
    ...(meter?.meterC !== undefined && { meterC: meter.meterC }),
    ...(sdStops !== undefined && { sdStops }),
    ...(meter?.readingSdStops !== undefined && { readingSdStops: meter.readingSdStops }),
    ...(offsetStops !== 0 && { offsetStops }),
    ...(meter?.clickStops !== undefined && { clickStops: meter.clickStops }),
  };
}

/** What the variable-contrast filter in use asks for more than none. */
function contrastFilterOf({ scene, paperBox }: Kit): PlanFilter[] {
  const used = paperBox?.contrastFilters?.find(({ name }) => name === scene.contrastFilter);
  return used === undefined ? [] : [{ name: used.name, stops: used.extraStops }];
}

function filterOf({ name, filter }: Scene["filters"][number]): PlanFilter[] {
  if (filter === undefined) return [];
  return [{ name, [filter.by]: filter.value, ...(filter.sdStops !== undefined && { sdStops: filter.sdStops }) }];
}
