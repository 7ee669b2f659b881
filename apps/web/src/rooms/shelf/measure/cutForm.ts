import type { CardStop, StopPlace } from "@captray/notebook/answers";
import type { FieldSet, Json } from "@captray/notebook/records";
import type { ReadAnswer } from "@captray/science/notation";
import { choice, mm, several } from "../form/fields.ts";
import type { FormField, FormPart, Texts } from "../form/formTypes.ts";
import { saidIn, valueIn } from "../form/fromTexts.ts";
import { readMm, readStop } from "../form/readers.ts";

const most = 8;

export interface SeriesStop {
  readonly value: number;
  readonly text: string;
  readonly mark: boolean;
}

/** The f-numbers of a row like “8 11 16”, or nothing where one of them cannot be read. */
export function numbersIn(text: string): readonly SeriesStop[] | undefined {
  const parts = text.split(/[\s;,]+/).filter(Boolean);
  const read = parts.flatMap((part) => saidIn(part, readStop) ?? []);
  const distinct = new Set(read.map(({ value }) => value)).size === parts.length;
  return read.length === parts.length && distinct && read.length > 0 && read.length <= most
    ? read.map((one) => ({ ...one, text: one.text.replace(/^f\/?/i, "") }))
    : undefined;
}

function readSeries(text: string): ReadAnswer {
  if (text.trim() === "") return { kind: "empty" };
  const numbers = numbersIn(text);
  return numbers === undefined
    ? { kind: "unreadable", text, at: 0, message: "One to eight different f-numbers, parted by spaces: 8 11 16 22." }
    : { kind: "read", value: numbers[0]?.value ?? 0, understood: `${numbers.length} stops` };
}

/** What is asked for the cards of a lens. */
export function cutParts(texts: Texts): readonly FormPart[] {
  const away: readonly FormField[] =
    texts.place === "front" || texts.place === "behind"
      ? [
          mm("placeDistance", "From the glass to the card"),
          mm("clearGlass", "Clear diameter of the glass", { aside: "then the corners are told too" }),
        ]
      : [];
  return [
    {
      head: "The stops you want",
      fields: [
        several("series", "f-numbers", readSeries, { before: "f/", hint: "8 11 16 22" }),
        choice("place", "The card stands", [
          { value: "", name: "at the glass" },
          { value: "front", name: "in front of it" },
          { value: "behind", name: "behind it" },
        ]),
        ...away,
        mm("card", "Width of the card", { hint: "50", aside: "what the barrel takes" }),
      ],
    },
  ];
}

/** Where the cards stand, as typed. */
export function placeIn(texts: Texts): StopPlace | undefined {
  const distanceMm = valueIn(texts.placeDistance, readMm);
  if ((texts.place !== "front" && texts.place !== "behind") || distanceMm === undefined) return undefined;
  const glassMm = valueIn(texts.clearGlass, readMm);
  return { side: texts.place, distanceMm, ...(glassMm !== undefined && { glassMm }) };
}

/** How wide the cards are drawn; a card beyond any barrel is drawn as wide as a hand. */
export function cardWidthIn(texts: Texts): number {
  return Math.min(200, valueIn(texts.card, readMm) ?? 50);
}

/** What putting the cut cards with their lens writes: a stop each, with its hole and its pupil. */
export function cutSet({
  stops,
  fNumbers,
  place,
  freshIds,
}: {
  readonly stops: readonly CardStop[];
  readonly fNumbers: readonly SeriesStop[];
  readonly place: StopPlace | undefined;
  readonly freshIds: readonly string[];
}): FieldSet {
  const set: Record<string, Json> = { stopPlace: (place as Json | undefined) ?? null };
  if (place !== undefined && stops[0]) set.pupilRatio = { value: stops[0].pupilRatio, sd: 0.02 };
  for (const [row, stop] of stops.entries()) {
    const path = `stops.${freshIds[row]}`;
    const holeSd = 0.2;
    set[`${path}.name`] = `card f/${fNumbers[row]?.text ?? ""}`;
    set[`${path}.holeMm`] = { value: Math.round(stop.holeMm * 100) / 100, sd: holeSd };
    set[`${path}.diameterMm`] = { value: stop.diameterMm, sd: (holeSd * stop.diameterMm) / stop.holeMm };
  }
  return set;
}
