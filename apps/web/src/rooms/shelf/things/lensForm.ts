import {
  bestHolesOf,
  type CardStop,
  cardStopsOf,
  glassPassesOf,
  lensFactsOf,
  type StopPlace,
} from "@captray/notebook/answers";
import { type FieldSet, type Json, kinds, type Lens } from "@captray/notebook/records";
import { messageOf } from "@captray/science/errors";
import { planDefaults } from "@captray/science/exposure";
import { formatLength } from "@captray/science/notation";
import { focalLengthFromDioptres } from "@captray/science/optics";
import { choice, figure, mm, stop, words } from "../form/fields.ts";
import type { FormField, FormPart, Texts } from "../form/formTypes.ts";
import { cleared, lengthText, plainText, saidIn, valueIn } from "../form/fromTexts.ts";
import { readCount, readMm, readStop, readWithin } from "../form/readers.ts";
import { plusMinus } from "../plusMinus.ts";

/** What a ruler in the hand is off by, one standard deviation in mm: common practice, no source. */
const sdMm = { pupil: 0.3, focal: 1, infinity: 1, hole: 0.2, pinhole: 0.03 } as const;

const readSurfaces = readCount("Whole surfaces, from 0 to 40.", 0, 40);
const readDioptres = readWithin("Dioptres from 0.25 to 50; a lens of minus dioptres makes no picture.", 0.25, 50);
const readRatio = readWithin("A pupil ratio lies between 0.2 and 5.", 0.2, 5);
const readShare = readWithin("A share of the light, above 0, up to 1.", 0.01, 1);
const readPerCent = readWithin("From 0 to 9.9 in a hundred.", 0, 9.9);

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
function focalIn(texts: Texts): number | undefined {
  if (texts.sort === "pinhole") return undefined;
  if (texts.sort !== "single") return valueIn(texts.focalLength, readMm);
  const dioptres = valueIn(texts.dioptres, readDioptres);
  return dioptres === undefined ? undefined : Math.round(focalLengthFromDioptres({ dioptres }) * 10) / 10;
}

function focalOf(lens: Lens): number | undefined {
  return lens.measuredFocalLengthMm?.value ?? lens.markedFocalLengthMm?.value;
}

function placeIn(texts: Texts): StopPlace | undefined {
  const distanceMm = valueIn(texts.placeDistance, readMm);
  if ((texts.place !== "front" && texts.place !== "behind") || distanceMm === undefined) return undefined;
  const glassMm = valueIn(texts.clearGlass, readMm);
  return { side: texts.place, distanceMm, ...(glassMm !== undefined && { glassMm }) };
}

function surfacesIn(texts: Texts): Lens["surfaces"] {
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

/** The parts of a lens's form; `id` leads to the pages that measure, for a lens that is kept. */
export function lensParts(
  texts: Texts,
  { id, usualExtensionMm }: { readonly id?: string | undefined; readonly usualExtensionMm?: number | undefined },
): readonly FormPart[] {
  const first = stopIdsOf(texts)[0] ?? "";
  const sort = choice("sort", "What it is", [
    { value: "lens", name: "a lens" },
    { value: "single", name: "one single glass", detail: "sold in dioptres" },
    { value: "pinhole", name: "a pinhole" },
  ]);
  const named = words("name", "What you call it", "the shed door lens");
  if (texts.sort === "pinhole") return [pinholePart(texts, [sort], named, usualExtensionMm)];
  const engraved: FormField[] =
    texts.sort === "single"
      ? [
          figure("dioptres", "Power in dioptres", readDioptres, { hint: "4", before: "+" }),
          stop(`${first}.marked`, "f-number", { hint: "11" }),
        ]
      : [mm("focalLength", "Focal length", { hint: "210" }), stop(`${first}.marked`, "f-number", { hint: "11" })];
  return [
    {
      head: texts.sort === "single" ? "What it was sold as" : "What is engraved on it",
      fields: [sort, ...engraved, named],
      says: dioptreWords(texts),
    },
    measuredPart(texts, first, id),
    glassPart(texts),
    stopsPart(texts, id),
    focusPart(texts),
  ];
}

function dioptreWords(texts: Texts): readonly string[] {
  const focal = texts.sort === "single" ? focalIn(texts) : undefined;
  if (focal === undefined) return [];
  return [
    `That is ${formatLength({ lengthMm: focal, unit: "mm" })}. Trade glasses are ground to steps of a quarter dioptre, so measure it once it is in the camera.`,
  ];
}

function measuredPart(texts: Texts, first: string, id: string | undefined): FormPart {
  const hasHole = (texts[`${first}.hole`] ?? "") !== "";
  return {
    head: "What you measured",
    aside: "goes before what is engraved",
    fields: [
      stop(`${first}.measured`, "f-number as measured", { aside: "a measured 11 is 11, no mark" }),
      ...(hasHole
        ? []
        : [
            mm(`${first}.diameter`, "Diameter of the pupil, seen from the front", {
              aside: "half a millimetre in 20 is 0.07 stop",
            }),
          ]),
      mm("measuredFocalLength", "Focal length as measured"),
      mm("infinityExtension", "Board to ground glass with a distant subject", {
        aside: "then only what you rack out beyond it counts",
      }),
    ],
    ...(id === undefined
      ? { says: ["Once it is on the shelf, its pupil and its focal length can be measured step by step."] }
      : {
          ways: [
            { word: "Measure the pupil", to: `/shelf/pupil/${id}` },
            { word: "Measure the focal length", to: `/shelf/focal/${id}` },
          ],
        }),
  };
}

const coatings = [
  { value: "bare", name: "bare", detail: "no sheen" },
  { value: "single", name: "one coat", detail: "a blue or amber sheen" },
  { value: "several", name: "several coats", detail: "a green or purple sheen" },
];

function glassPart(texts: Texts): FormPart {
  const glass = surfacesIn(texts);
  return {
    head: "The glass",
    aside: "what it swallows, what it covers",
    folded: true,
    fields: [
      figure("surfaces", "Surfaces between air and glass", readSurfaces, {
        hint: "4",
        aside: "count the reflections of a lamp in it",
      }),
      choice("coating", "Their coating", coatings),
      ...(glass === undefined
        ? [figure("transmission", "Light it passes, where that was measured", readShare, { hint: "0.83" })]
        : []),
      figure("pupilRatio", "Pupil ratio", readRatio, {
        hint: "1",
        aside: "pupil from behind by pupil from the front",
      }),
      mm("imageCircle", "Image circle for a distant subject"),
    ],
    says: glass === undefined ? [] : [glassWords(glass)],
  };
}

function glassWords(glass: NonNullable<Lens["surfaces"]>): string {
  const { value } = glassPassesOf(glass);
  const stops = Math.log2(planDefaults.lens.transmission / value);
  const more =
    Math.abs(stops) < 0.005 ? "nothing more" : `${Math.abs(stops).toFixed(2)} stop ${stops > 0 ? "more" : "less"}`;
  return `It passes about ${value.toFixed(2)} of the light; a meter supposes 0.90, so that the ledger asks for ${more}.`;
}

function stopsPart(texts: Texts, id: string | undefined): FormPart {
  const ids = stopIdsOf(texts);
  const place = placeIn(texts);
  const focal = valueIn(texts.measuredFocalLength, readMm) ?? focalIn(texts);
  const holes = ids.map((one) => valueIn(texts[`${one}.hole`], readMm));
  const cut = holes.map((holeMm) =>
    holeMm === undefined || focal === undefined
      ? undefined
      : cardStopsOf({ focalLengthMm: focal, place, holesMm: [holeMm] }),
  );
  const refused = cut.find((one) => one?.kind === "refused");
  const said = refused?.kind === "refused" ? messageOf(refused.fault) : undefined;
  return {
    head: "Stops cut from card",
    aside: ids.length > 1 ? `${ids.length} stops` : "holes, and where they stand",
    folded: true,
    fields: [
      choice("place", "The card stands", [
        { value: "", name: "at the glass" },
        { value: "front", name: "in front of it" },
        { value: "behind", name: "behind it" },
      ]),
      ...(texts.place === "front" || texts.place === "behind"
        ? [
            mm("placeDistance", "From the glass to the card"),
            mm("clearGlass", "Clear diameter of the glass", { aside: "then the corners are told too" }),
          ]
        : []),
      ...ids.flatMap((one, place) => [
        mm(`${one}.hole`, place === 0 ? "Hole" : `Hole of stop ${place + 1}`, { hint: "20" }),
        ...(place === 0
          ? []
          : [
              stop(`${one}.marked`, `f-number of stop ${place + 1}`, { aside: "where nothing was cut: as engraved" }),
              words(`${one}.name`, `What you call stop ${place + 1}`, "the small one"),
            ]),
      ]),
    ],
    says: cut.flatMap((one) => (one?.kind === "stops" ? one.stops.map(stopSentence) : [])),
    problem: said && { head: said.message, words: said.hint },
    ways: [
      { word: "Another stop", puts: (fresh) => ({ stops: [...ids, fresh()].join(" ") }) },
      ...(id === undefined ? [] : [{ word: "Which holes to cut", to: `/shelf/stops/${id}` }]),
    ],
  };
}

/** What a hole amounts to: “Hole 20 mm: f/11, pupil 22.7 mm, …”. */
function stopSentence({ holeMm, fNumber, diameterMm, corners }: CardStop): string {
  const length = (lengthMm: number) => formatLength({ lengthMm, unit: "mm" });
  const pupil = Math.abs(diameterMm - holeMm) < 0.05 ? "" : `, pupil ${length(diameterMm)}`;
  const lit =
    corners === undefined
      ? ""
      : ` It lights a circle of ${length(corners.fullCircleMm)} fully, and nothing beyond ${length(corners.noneCircleMm)} (distant subject).`;
  return `Hole ${length(holeMm)}: f/${Number(fNumber.toPrecision(3))}${pupil}.${lit}`;
}

function focusPart(texts: Texts): FormPart {
  const isSingle = (texts.correction || (texts.sort === "single" ? "single" : "")) === "single";
  return {
    head: "Focus for the paper",
    aside: "the eye sees yellow, the paper blue",
    folded: true,
    fields: [
      choice("correction", "Its glasses bring blue and yellow", [
        { value: "", name: texts.sort === "single" ? "as one glass does" : "not known" },
        { value: "single", name: "to two places", detail: "one glass, or old" },
        { value: "achromat", name: "to one place", detail: "cemented, later than 1840" },
      ]),
      ...(isSingle
        ? [
            figure("focusShare", "By a test, the paper’s focus is shorter by", readPerCent, {
              hint: "1.8",
              after: "in a hundred",
            }),
          ]
        : []),
    ],
    says: isSingle ? shiftWords(texts) : [],
  };
}

function shiftWords(texts: Texts): readonly string[] {
  const shift = lensFactsOf({ lens: asRecord(texts) }).chemicalShiftMm;
  if (shift === undefined) return [];
  const { value, plusMinus: doubt } = plusMinus(shift);
  return [
    `For blue-sensitive paper push the back in by ${value} mm ±${doubt} after focusing on a distant subject by eye, by more for a near one. ${
      texts.focusShare ? "From your own test." : "Supposed: one crown glass; photograph a slanted ruler to know."
    }`,
  ];
}

/** The lens that a form speaks of, before anything is kept. */
function asRecord(texts: Texts): Lens {
  const fields = new Map(Object.entries(lensSet(texts, undefined)));
  return kinds.lens.assemble("draft", fields);
}

function pinholePart(texts: Texts, sort: readonly FormField[], named: FormField, usual: number | undefined): FormPart {
  const typed = valueIn(texts.pinholeAt, readMm);
  const extensionMm = typed ?? usual;
  const hole = valueIn(texts.pinhole, readMm);
  const says: string[] = [];
  if (extensionMm !== undefined) {
    const { eyeMm, blueMm } = bestHolesOf({ extensionMm });
    says.push(
      `${formatLength({ lengthMm: extensionMm, unit: "mm" })} from the paper the sharpest hole is ${eyeMm.toFixed(2)} mm for the eye, ${blueMm.toFixed(2)} mm for paper that sees blue. A fifth more or less is hardly seen.`,
    );
    if (hole !== undefined) {
      says.push(`Yours is f/${Number((extensionMm / hole).toPrecision(3))} there; no bellows factor comes on top.`);
    }
  }
  return {
    head: "What it is",
    fields: [
      ...sort,
      mm("pinhole", "Diameter of the hole", { hint: "0.6", aside: "through a loupe, or from how it was drilled" }),
      mm("pinholeAt", "From the hole to the paper", { hint: "210", aside: "only to reckon the best hole with" }),
      named,
    ],
    says,
  };
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
