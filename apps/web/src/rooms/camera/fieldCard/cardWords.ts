import type { FieldCardInput } from "@captray/drawings/trueScale";
import type { FieldCard, FieldCardColumn, FieldCardRow, Kit } from "@captray/notebook/answers";
import { formatLength, showFNumber, showTime } from "@captray/science/notation";
import { rangeWords } from "../readingNow/barWords.ts";
import { type GrantedSubject, offeredLights, takenForGranted } from "../readingNow/takenForGranted.ts";

const nineInTen = 1.645;

/** A field card in the words that are printed on it. `madeOn`: the day, as it is said. */
export function cardWords({
  card,
  kit,
  lengthUnit,
  madeOn,
}: {
  readonly card: FieldCard;
  readonly kit: Kit;
  readonly lengthUnit: "mm" | "inch";
  readonly madeOn: string;
}): FieldCardInput {
  return {
    title: [lensWords(card, kit), kit.paperBox?.name, kit.exposureIndex?.result ?? kit.scene.result]
      .filter((words) => words !== undefined && words !== "")
      .join(", "),
    under: [kit.recipe?.name, lightWords(kit), dialWords(card.rows[0], kit)].filter(Boolean).join("; "),
    corner: ["meter", hasBed(card.columns) ? "bed" : "board"],
    columns: card.columns.map((column) => ({
      distance: distanceWords(column, lengthUnit),
      mark: markWords(column, lengthUnit),
      isOwn: column.isOwn,
    })),
    rows: card.rows.map(({ text, isOwn }) => ({ reading: text, isOwn })),
    cells: card.cells.map((line) =>
      line.map(({ kind, timeS }) =>
        kind === "time" ? { text: showTime({ timeS }), isTime: true } : { text: noTime[kind], isTime: false },
      ),
    ),
    foot: footWords(card, kit, lengthUnit, madeOn),
    more: "the rest in the app.",
    blanks: ["code", "reading", hasBed(card.columns) ? "bed" : "board", "cap off for"],
  };
}

const noTime = { tooShort: "short", tooLong: "long", none: "cannot" } as const;

/** Whether the marks are those of the bed's own scale; else they are measured from the board to the ground glass. */
export function hasBed(columns: readonly FieldCardColumn[]): boolean {
  return columns.some(({ bedMm }) => bedMm !== undefined);
}

function lensWords({ own }: FieldCard, { lens }: Kit): string {
  const focalMm = lens?.measuredFocalLengthMm?.value ?? lens?.markedFocalLengthMm?.value;
  const name = lens?.name || (focalMm === undefined ? "lens" : formatLength({ lengthMm: focalMm, unit: "mm" }));
  return `${name} at ${showFNumber({ fNumber: own.answer.optics.fNumber })}`;
}

function lightWords({ scene }: Kit): string {
  const source = scene.light?.source;
  if (source === undefined) return "light as when the EI was found";
  return offeredLights.find((light) => light.source === source)?.name ?? source;
}

function dialWords(row: FieldCardRow | undefined, { scene }: Kit): string {
  const reading = row?.reading;
  const stops = scene.place?.stops ?? 0;
  const how = reading && "kind" in reading && reading.kind === "incident" ? "incident meter" : "meter";
  const dial =
    reading?.way === "time"
      ? ` at ${reading.fNumber.text ?? showFNumber({ fNumber: reading.fNumber.value })}, ISO\u00a0${reading.iso.value}`
      : reading?.way === "ev"
        ? ` at ISO\u00a0${reading.iso.value}`
        : " at ISO\u00a0100";
  const placed = stops === 0 ? "on mid\u00a0grey" : `${Math.abs(stops)} ${stops > 0 ? "above" : "below"} mid\u00a0grey`;
  return `${how}${dial}, placed ${placed}`;
}

function distanceWords({ distanceMm }: FieldCardColumn, unit: "mm" | "inch"): string {
  if (distanceMm === undefined) return "pinhole";
  if (distanceMm === null) return "distant";
  return unit === "mm"
    ? `${Number((distanceMm / 1000).toPrecision(3))} m`
    : `${Number((distanceMm / 304.8).toPrecision(2))} ft`;
}

function markWords({ bedMm, extensionMm }: FieldCardColumn, unit: "mm" | "inch"): string {
  const mm = bedMm ?? extensionMm;
  return unit === "mm" ? String(Math.round(mm)) : (mm / 25.4).toFixed(2);
}

function footWords(card: FieldCard, kit: Kit, lengthUnit: "mm" | "inch", madeOn: string): readonly string[] {
  const { own, mostSdStops, shortestS } = card;
  const { timeS, timeStops, timeIntervalS } = own.answer;
  const kinds = new Set(card.cells.flat().map(({ kind }) => kind));
  const [ownDoubt, mostDoubt] = [doubtWords(timeStops.sd), doubtWords(mostSdStops)];
  const elsewhere = ownDoubt === mostDoubt ? "" : `; elsewhere to ${mostDoubt}`;
  const unit = lengthUnit === "mm" ? "mm" : "inches";
  const granted = takenForGranted({ plan: own, kit, lengthUnit }).map(({ subject, name, sdStops }) => {
    return `${shortNames[subject] ?? name} ${doubtWords(sdStops)}`;
  });
  return [
    `Nine in ten: ${figure(showTime({ timeS }))} is ${figure(rangeWords(timeIntervalS))}, ${ownDoubt}${elsewhere}.`,
    `Made ${figure(madeOn)}; ${hasBed(card.columns) ? "bed marks" : "board to glass"} in ${unit}.`,
    ...(kinds.has("tooShort") ? [`Short: no cap can, below ${figure(showTime({ timeS: shortestS }))}.`] : []),
    ...(kinds.has("tooLong") ? ["Long: over an hour."] : []),
    ...granted.map((words, place) => {
      const end = place === granted.length - 1 ? "." : ",";
      return place === 0 ? `Taken for granted, in stops: ${figure(words)}${end}` : `${figure(words)}${end}`;
    }),
  ];
}

/** What is taken for granted in as few letters as a card has room for. */
const shortNames: Readonly<Partial<Record<GrantedSubject, string>>> = {
  place: "the reading",
  meter: "the meter",
  longExposure: "long exposure",
  light: "colour of the light",
  glass: "glass",
  hand: "your hand",
  infinity: "board",
};

function doubtWords(sdStops: number): string {
  return `±${(nineInTen * sdStops).toFixed(2)}`;
}

/** Words that stay on one line. */
function figure(words: string): string {
  return words.replaceAll(" ", "\u00a0");
}
