import { bestHolesOf, type CardStop, cardStopsOf, glassPassesOf, lensFactsOf } from "@captray/notebook/answers";
import { kinds, type Lens } from "@captray/notebook/records";
import { messageOf } from "@captray/science/errors";
import { planDefaults } from "@captray/science/exposure";
import { formatLength } from "@captray/science/notation";
import { choice, figure, mm, stop, words } from "../form/fields.ts";
import type { FormField, FormPart, Texts } from "../form/formTypes.ts";
import { valueIn } from "../form/fromTexts.ts";
import { readMm } from "../form/readers.ts";
import { plusMinus } from "../plusMinus.ts";
import {
  focalIn,
  lensSet,
  placeIn,
  readDioptres,
  readPerCent,
  readRatio,
  readShare,
  readSurfaces,
  stopIdsOf,
  surfacesIn,
} from "./lensForm.ts";

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
