import { type CardStop, cardStopsOf, glassPassesOf, type StopPlace } from "@captray/notebook/answers";
import type { FieldSet, Json, Lens } from "@captray/notebook/records";
import { planDefaults } from "@captray/science/exposure";
import { formatLength } from "@captray/science/notation";
import { focalLengthFromDioptres } from "@captray/science/optics";
import type { Texts } from "../form/formTypes.ts";
import { cleared, lengthText, plainText, saidIn, valueIn } from "../form/fromTexts.ts";
import { readCount, readMm, readStop, readWithin } from "../form/readers.ts";

/** What a ruler in the hand is off by, one standard deviation in mm: common practice, no source. */
const sdMm = { pupil: 0.3, focal: 1, infinity: 1, hole: 0.2, pinhole: 0.03 } as const;

export const readSurfaces = readCount("Whole surfaces, from 0 to 40.", 0, 40);
export const readDioptres = readWithin(
  "Dioptres from 0.25 to 50; a lens of minus dioptres makes no picture.",
  0.25,
  50,
);
export const readRatio = readWithin("A pupil ratio lies between 0.2 and 5.", 0.2, 5);
export const readShare = readWithin("A share of the light, above 0, up to 1.", 0.01, 1);
export const readPerCent = readWithin("From 0 to 9.9 in a hundred.", 0, 9.9);

/** The stops of a form in their order. */
export function stopIdsOf(texts: Texts): readonly string[] {
  return (texts.stops ?? "").split(" ").filter(Boolean);
}

/** A lens as its form shows it; one not kept yet has a first stop of its own. */
export function lensTexts(lens: Lens | undefined, freshStopId: string, unit: "mm" | "inch" = "mm"): Texts {
  const ids = lens === undefined || lens.stops.length === 0 ? [freshStopId] : lens.stops.map(({ id }) => id);
  const derivedRatio = lens && ratioOfPlace(focalOf(lens), lens.stopPlace);
  const ratio = lens?.pupilRatio?.value;
  const isDerived = ratio !== undefined && derivedRatio !== undefined && Math.abs(ratio - derivedRatio) < 1e-6;
  return {
    sort: lens === undefined ? "lens" : lens.sort === "pinhole" ? "pinhole" : lens.dioptres ? "single" : "lens",
    name: lens?.name ?? "",
    focalLength: lens?.markedFocalLengthMm?.text ?? lengthText(lens?.markedFocalLengthMm?.value, unit),
    dioptres: lens?.dioptres?.text ?? plainText(lens?.dioptres?.value),
    pinhole: lengthText(lens?.holeMm?.value, unit),
    measuredFocalLength: lengthText(lens?.measuredFocalLengthMm?.value, unit),
    infinityExtension: lengthText(lens?.infinityExtensionMm?.value, unit),
    surfaces: plainText(lens?.surfaces?.count),
    coating: lens?.surfaces?.coating ?? "",
    transmission: lens?.surfaces === undefined ? plainText(lens?.transmission?.value) : "",
    pupilRatio: isDerived ? "" : plainText(ratio),
    imageCircle: lengthText(lens?.imageCircleMm, unit),
    place: lens?.stopPlace?.side ?? "",
    placeDistance: lengthText(lens?.stopPlace?.distanceMm, unit),
    clearGlass: lengthText(lens?.stopPlace?.glassMm, unit),
    correction: lens?.chemicalFocus?.correction ?? "",
    focusShare: plainText(lens?.chemicalFocus?.focusShare && lens.chemicalFocus.focusShare.value * 100),
    stops: ids.join(" "),
    ...Object.fromEntries(
      ids.flatMap((id) =>
        stopTexts(
          id,
          lens?.stops.find((one) => one.id === id),
          unit,
        ),
      ),
    ),
  };
}

function stopTexts(id: string, held: Lens["stops"][number] | undefined, unit: "mm" | "inch"): [string, string][] {
  return [
    [`${id}.name`, held?.name ?? ""],
    [`${id}.marked`, held?.marked?.text ?? plainText(held?.marked?.value)],
    [`${id}.measured`, plainText(held?.measuredFNumber?.value)],
    [`${id}.diameter`, held?.holeMm === undefined ? lengthText(held?.diameterMm?.value, unit) : ""],
    [`${id}.hole`, lengthText(held?.holeMm?.value, unit)],
  ];
}

/** What keeping a lens form writes; an emptied field is cleared. Starting doubts are those of the ledger. */
export function lensSet(texts: Texts, lens: Lens | undefined): FieldSet {
  const isPinhole = texts.sort === "pinhole";
  const dioptres = texts.sort === "single" ? saidIn(texts.dioptres, readDioptres) : undefined;
  const typedFocal = texts.sort === "lens" ? saidIn(texts.focalLength, readMm) : undefined;
  const measured = valueIn(texts.measuredFocalLength, readMm);
  const infinity = valueIn(texts.infinityExtension, readMm);
  const pinhole = valueIn(texts.pinhole, readMm);
  const marked = focalIn(texts);
  const place = placeIn(texts);
  const glass = surfacesIn(texts);
  const typedShare = valueIn(texts.transmission, readShare);
  const passes =
    glass === undefined
      ? typedShare && { value: typedShare, sdStops: planDefaults.lens.transmissionSdStops }
      : glassPassesOf(glass);
  const typedRatio = valueIn(texts.pupilRatio, readRatio);
  const placeRatio = ratioOfPlace(measured ?? marked, place);
  const ratio =
    typedRatio === undefined ? placeRatio && { value: placeRatio, sd: 0.02 } : { value: typedRatio, sd: 0.05 };
  const set: Record<string, Json | undefined> = {
    name: (texts.name ?? "").trim() || nameFor(texts),
    sort: isPinhole ? "pinhole" : "lens",
    markedFocalLengthMm:
      typedFocal === undefined
        ? dioptres && { value: marked ?? 0 }
        : { value: typedFocal.value, text: typedFocal.text },
    dioptres: dioptres && { value: dioptres.value, text: dioptres.text },
    measuredFocalLengthMm: isPinhole || measured === undefined ? undefined : { value: measured, sd: sdMm.focal },
    infinityExtensionMm: isPinhole || infinity === undefined ? undefined : { value: infinity, sd: sdMm.infinity },
    holeMm: isPinhole && pinhole !== undefined ? { value: pinhole, sd: sdMm.pinhole } : undefined,
    surfaces: glass,
    transmission: passes,
    pupilRatio: ratio,
    imageCircleMm: valueIn(texts.imageCircle, readMm),
    stopPlace: place as Json | undefined,
    chemicalFocus: chemicalFocusIn(texts),
  };
  for (const id of isPinhole ? [] : stopIdsOf(texts)) {
    for (const [field, value] of Object.entries(stopSet(texts, id, place, measured ?? marked))) {
      set[`stops.${id}.${field}`] = value;
    }
  }
  return cleared(set, lens === undefined);
}

function stopSet(
  texts: Texts,
  id: string,
  place: StopPlace | undefined,
  focalLengthMm: number | undefined,
): Record<string, Json | undefined> {
  const marked = saidIn(texts[`${id}.marked`], readStop);
  const measured = valueIn(texts[`${id}.measured`], readStop);
  const hole = valueIn(texts[`${id}.hole`], readMm);
  const diameter = valueIn(texts[`${id}.diameter`], readMm);
  const cut = hole === undefined || focalLengthMm === undefined ? undefined : cutStop(hole, focalLengthMm, place);
  return {
    name: (texts[`${id}.name`] ?? "").trim() || undefined,
    marked: marked && { value: marked.value, text: marked.text, ...(marked.mark && { mark: true }) },
    measuredFNumber: measured && {
      value: measuredAsCut(texts[`${id}.measured`], measured),
      sdStops: planDefaults.lens.apertureSdStops,
    },
    holeMm: hole && { value: hole, sd: sdMm.hole },
    diameterMm:
      cut && hole
        ? { value: cut.diameterMm, sd: (sdMm.hole * cut.diameterMm) / hole }
        : diameter && { value: diameter, sd: sdMm.pupil },
  };
}

/** A measured 11 is 11: no mark's exact member. */
function measuredAsCut(text: string | undefined, value: number): number {
  const plain = Number((text ?? "").trim().replace(/^f\/?/i, "").replace(",", "."));
  return plain > 0 ? plain : value;
}

function nameFor(texts: Texts): string {
  const focal = focalIn(texts) ?? valueIn(texts.measuredFocalLength, readMm);
  if (texts.sort === "pinhole") {
    const hole = valueIn(texts.pinhole, readMm);
    return hole === undefined ? "" : `${formatLength({ lengthMm: hole, unit: "mm" })} pinhole`;
  }
  return focal === undefined ? "" : formatLength({ lengthMm: focal, unit: "mm" });
}

/** The marked focal length, or that of the dioptres. */
export function focalIn(texts: Texts): number | undefined {
  if (texts.sort === "pinhole") return undefined;
  if (texts.sort !== "single") return valueIn(texts.focalLength, readMm);
  const dioptres = valueIn(texts.dioptres, readDioptres);
  return dioptres === undefined ? undefined : Math.round(focalLengthFromDioptres({ dioptres }) * 10) / 10;
}

function focalOf(lens: Lens): number | undefined {
  return lens.measuredFocalLengthMm?.value ?? lens.markedFocalLengthMm?.value;
}

export function placeIn(texts: Texts): StopPlace | undefined {
  const distanceMm = valueIn(texts.placeDistance, readMm);
  if ((texts.place !== "front" && texts.place !== "behind") || distanceMm === undefined) return undefined;
  const glassMm = valueIn(texts.clearGlass, readMm);
  return { side: texts.place, distanceMm, ...(glassMm !== undefined && { glassMm }) };
}

export function surfacesIn(texts: Texts): Lens["surfaces"] {
  const count = valueIn(texts.surfaces, readSurfaces);
  if (count === undefined) return undefined;
  const coating = texts.coating === "single" || texts.coating === "several" ? texts.coating : "bare";
  return { count, coating };
}

function chemicalFocusIn(texts: Texts): Json | undefined {
  const correction = texts.correction || (texts.sort === "single" ? "single" : "");
  if (correction !== "single" && correction !== "achromat") return undefined;
  const perCent = valueIn(texts.focusShare, readPerCent);
  return perCent === undefined
    ? { correction, found: "assumed" }
    : { correction, found: "test", focusShare: { value: perCent / 100, sd: 0.002 } };
}

function ratioOfPlace(focalLengthMm: number | undefined, place: StopPlace | undefined): number | undefined {
  if (focalLengthMm === undefined || place === undefined) return undefined;
  return cutStop(1, focalLengthMm, { side: place.side, distanceMm: place.distanceMm })?.pupilRatio;
}

function cutStop(holeMm: number, focalLengthMm: number, place: StopPlace | undefined): CardStop | undefined {
  const answer = cardStopsOf({ focalLengthMm, place, holesMm: [holeMm] });
  return answer.kind === "stops" ? answer.stops[0] : undefined;
}

/** What is still missing for a lens to be of use. */
export function lensWaits(texts: Texts): string | undefined {
  if (texts.sort === "pinhole")
    return valueIn(texts.pinhole, readMm) === undefined ? "the diameter of the hole" : undefined;
  const focal = focalIn(texts) ?? valueIn(texts.measuredFocalLength, readMm);
  if (focal !== undefined) return undefined;
  return texts.sort === "single" ? "its dioptres, or a measured focal length" : "a focal length";
}

/** What the ledger takes for granted of a lens until it is said. */
export function lensGranted(texts: Texts): readonly string[] {
  if (texts.sort === "pinhole") return [];
  const first = stopIdsOf(texts)[0] ?? "";
  const doubt = (sd: number) => (1.645 * sd).toFixed(2);
  const measured = [`${first}.measured`, `${first}.diameter`, `${first}.hole`].some((key) => (texts[key] ?? "") !== "");
  return [
    ...(measured ? [] : [`f-number as engraved, ±${doubt(planDefaults.lens.markedApertureSdStops)} stop`]),
    ...(texts.measuredFocalLength || texts.infinityExtension ? [] : ["the middle of the lens lies in the lens board"]),
    ...(texts.surfaces || texts.transmission
      ? []
      : [`the glass passes what a meter supposes, 0.90, ±${doubt(planDefaults.lens.transmissionSdStops)} stop`]),
    ...(texts.pupilRatio || texts.place ? [] : ["pupil ratio 1: the stop looks as wide from behind as from the front"]),
  ];
}
