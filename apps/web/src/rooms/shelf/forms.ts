import type { ExposureIndex, FieldSet, Json, Lens, Meter, PaperBox, Result } from "@captray/notebook/records";
import { planDefaults } from "@captray/science/exposure";
import {
  formatLength,
  type ReadAnswer,
  readExposureIndex,
  readFNumber,
  readIso,
  readLength,
} from "@captray/science/notation";

/** What a form holds: texts as typed, choices by their words. */
export type Texts = Readonly<Record<string, string>>;

function read(
  text: string | undefined,
  reader: (input: { text: string }) => ReadAnswer,
): { value: number; text: string; mark: boolean } | undefined {
  const answer = reader({ text: text ?? "" });
  if (answer.kind !== "read" || answer.value <= 0 || answer.value > 1e8) return undefined;
  return { value: answer.value, text: (text ?? "").trim().slice(0, 60), mark: answer.marked === true };
}

function bare(lengthMm: number | undefined): string {
  return lengthMm === undefined ? "" : formatLength({ lengthMm, unit: "mm" }).replace(/ mm$/, "");
}

/** A lens as its form shows it. */
export function lensTexts(lens: Lens | undefined): Texts {
  const stop = lens?.stops[0];
  return {
    name: lens?.name ?? "",
    focalLength: lens?.markedFocalLengthMm?.text ?? bare(lens?.markedFocalLengthMm?.value),
    measuredFocalLength: bare(lens?.measuredFocalLengthMm?.value),
    fNumber: stop?.marked?.text ?? "",
    measuredFNumber:
      stop?.measuredFNumber === undefined ? "" : String(Number(stop.measuredFNumber.value.toPrecision(5))),
    diameter: bare(stop?.diameterMm?.value),
    infinityExtension: bare(lens?.infinityExtensionMm?.value),
    transmission: lens?.transmission === undefined ? "" : String(lens.transmission.value),
  };
}

/** What keeping a lens form writes; an emptied field is cleared. Starting doubts are those of the ledger. */
export function lensSet(texts: Texts, lens: Lens | undefined, freshStopId: string): FieldSet {
  const focal = read(texts.focalLength, readLength);
  const measured = read(texts.measuredFocalLength, readLength);
  const marked = read(texts.fNumber, readFNumber);
  const measuredN = read(texts.measuredFNumber, readFNumber);
  const diameter = read(texts.diameter, readLength);
  const infinity = read(texts.infinityExtension, readLength);
  const transmission = Number(texts.transmission);
  const stopId = lens?.stops[0]?.id ?? freshStopId;
  const stop: Record<string, Json> = {
    marked: marked && { value: marked.value, text: marked.text, ...(marked.mark && { mark: true }) },
    measuredFNumber: measuredN && {
      value: measuredAsCut(texts.measuredFNumber, measuredN.value),
      sdStops: planDefaults.lens.apertureSdStops,
    },
    diameterMm: diameter && { value: diameter.value, sd: 0.3 },
  } as Record<string, Json>;
  return cleared(
    {
      name:
        (texts.name ?? "").trim() || (focal === undefined ? "" : formatLength({ lengthMm: focal.value, unit: "mm" })),
      sort: "lens",
      markedFocalLengthMm: focal && { value: focal.value, text: focal.text },
      measuredFocalLengthMm: measured && { value: measured.value, sd: 1 },
      infinityExtensionMm: infinity && { value: infinity.value, sd: 1 },
      transmission:
        transmission > 0 && transmission <= 1
          ? { value: transmission, sdStops: planDefaults.lens.transmissionSdStops }
          : undefined,
      ...Object.fromEntries(Object.entries(stop).map(([field, value]) => [`stops.${stopId}.${field}`, value])),
    },
    lens === undefined,
  );
}

/** A measured 11 is 11: no mark's exact member. */
function measuredAsCut(text: string | undefined, value: number): number {
  const plain = Number((text ?? "").trim().replace(/^f\/?/i, "").replace(",", "."));
  return plain > 0 ? plain : value;
}

/** A box as its form shows it. */
export function boxTexts(box: PaperBox | undefined, indexes: readonly ExposureIndex[]): Texts {
  const index = (result: Result) => indexes.find((one) => one.paperBoxId === box?.id && one.result === result);
  const eiText = (one: ExposureIndex | undefined) =>
    one?.text ?? (one?.value === undefined ? "" : String(Number(one.value.value.toPrecision(4))));
  return {
    name: box?.name ?? "",
    sheetsLeft: box?.sheetsLeft === undefined ? "" : String(box.sheetsLeft),
    grade: box?.grade ?? "",
    sensitivity: box?.sensitivity ?? "blue",
    exponent: box?.reciprocity === undefined ? "" : String(box.reciprocity.exponent),
    negative: eiText(index("negative")),
    positive: eiText(index("positive")),
    negativeFound: foundWord(index("negative")),
    positiveFound: foundWord(index("positive")),
  };
}

function foundWord(index: ExposureIndex | undefined): string {
  if (index === undefined || index.found.how === "guessed") return "guessed";
  if (index.found.how === "told") return "told";
  return (index.value?.sdStops ?? 1) <= 0.2 ? "threeSheets" : "stepTest";
}

export function boxSet(texts: Texts, isNew: boolean): FieldSet {
  const left = Number((texts.sheetsLeft ?? "").trim() || Number.NaN);
  const exponent = Number((texts.exponent ?? "").trim().replace(",", ".") || Number.NaN);
  return cleared(
    {
      name: (texts.name ?? "").trim() || "Box 1",
      sheetsLeft: Number.isInteger(left) && left >= 0 && left <= 1_000_000 ? left : undefined,
      grade: (texts.grade ?? "").trim() || undefined,
      sensitivity: texts.sensitivity || "blue",
      reciprocity: exponent > 0.5 && exponent <= 1 ? { exponent, fromS: 1 } : undefined,
    },
    isNew,
  );
}

/** What keeping an exposure index writes; nothing where none was typed. */
export function indexSet(texts: Texts, result: Result, paperBoxId: string): FieldSet | undefined {
  const ei = read(texts[result], readExposureIndex);
  if (ei === undefined) return undefined;
  const how = (texts[`${result}Found`] ?? "guessed") as keyof typeof planDefaults.exposureIndexSdStops;
  const found: Json = how === "guessed" || how === "told" ? { how } : { how: "ownSheets" };
  return {
    paperBoxId,
    result,
    text: ei.text,
    value: { value: ei.value, sdStops: planDefaults.exposureIndexSdStops[how] },
    found,
  };
}

export function meterTexts(meter: Meter | undefined): Texts {
  return {
    name: meter?.name ?? "",
    lowestIso: meter?.lowestIso === undefined ? "" : String(meter.lowestIso),
    clickStops: meter?.clickStops === undefined ? "" : clickName(meter.clickStops),
    offset: meter?.offsetStops === undefined ? "" : String(meter.offsetStops.value),
  };
}

function clickName(stops: number): string {
  if (Math.abs(stops - 1 / 3) < 0.01) return "third";
  return Math.abs(stops - 0.5) < 0.01 ? "half" : "full";
}

const clicks = new Map([
  ["full", 1],
  ["half", 0.5],
  ["third", 1 / 3],
]);

export function meterSet(texts: Texts, isNew: boolean): FieldSet {
  const iso = read(texts.lowestIso, readIso);
  const offsetText = (texts.offset ?? "").trim().replace(",", ".").replace("−", "-");
  const offset = offsetText === "" ? Number.NaN : Number(offsetText);
  return cleared(
    {
      name: (texts.name ?? "").trim() || "Meter",
      reads: "reflected",
      lowestIso: iso?.value,
      clickStops: clicks.get(texts.clickStops ?? ""),
      offsetStops: Number.isFinite(offset) && Math.abs(offset) <= 20 ? { value: offset, sd: 0.1 } : undefined,
    },
    isNew,
  );
}

/** A new record leaves out what was not said; an old one has it cleared. */
function cleared(set: Readonly<Record<string, Json | undefined>>, isNew: boolean): FieldSet {
  return Object.fromEntries(
    Object.entries(set).flatMap(([path, value]) =>
      value === undefined ? (isNew ? [] : [[path, null]]) : [[path, value]],
    ),
  );
}
