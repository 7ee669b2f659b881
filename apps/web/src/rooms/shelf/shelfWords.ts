import type { ExposureIndex, Lens, Meter, PaperBox } from "@captray/notebook/records";
import { formatLength, showFNumber } from "@captray/science/notation";

/** Nine in ten, from one standard deviation. */
const nineInTen = 1.645;

/** A lens by its name, else by its focal length. */
export function lensName(lens: Lens, unit: "mm" | "inch"): string {
  if (lens.name !== "") return lens.name;
  const focal = lens.measuredFocalLengthMm?.value ?? lens.markedFocalLengthMm?.value;
  return focal === undefined ? "Lens without a name" : formatLength({ lengthMm: focal, unit });
}

/** What is marked and what was measured: “marked f/11; measured f/11.4 ±0.05 stop”. */
export function stopWords(stop: Lens["stops"][number]): string {
  const parts: string[] = [];
  if (stop.marked) parts.push(`marked ${showFNumber({ fNumber: stop.marked.value })}`);
  if (stop.measuredFNumber) {
    const { value, sdStops } = stop.measuredFNumber;
    parts.push(`measured ${showFNumber({ fNumber: value })} ±${(nineInTen * sdStops).toFixed(2)} stop`);
  }
  if (stop.diameterMm) parts.push(`pupil ${Number(stop.diameterMm.value.toPrecision(4))} mm`);
  return parts.length === 0 ? "no f-number yet" : parts.join("; ");
}

/** What else is known of a lens. */
export function lensWords(lens: Lens, unit: "mm" | "inch"): string {
  const parts: string[] = [];
  if (lens.measuredFocalLengthMm)
    parts.push(`focal length measured ${formatLength({ lengthMm: lens.measuredFocalLengthMm.value, unit })}`);
  if (lens.infinityExtensionMm)
    parts.push(`infinity at ${formatLength({ lengthMm: lens.infinityExtensionMm.value, unit })}`);
  if (lens.transmission) parts.push(`passes ${Number(lens.transmission.value.toFixed(2))} of the light`);
  return parts.join("; ");
}

const classWords: Readonly<Record<NonNullable<PaperBox["sensitivity"]>, string>> = {
  blue: "blue-sensitive, make unknown",
  chloride: "chloride: blue-sensitive",
  chlorobromide: "chlorobromide: blue-sensitive",
  bromide: "bromide: blue-sensitive",
  orthochromatic: "orthochromatic",
  variableContrast: "variable contrast",
};

/** What is known of a box beside its name. */
export function boxWords(box: PaperBox): string {
  const parts: string[] = [];
  if (box.grade !== undefined && box.grade !== "") parts.push(`grade ${box.grade}`);
  if (box.sensitivity) parts.push(classWords[box.sensitivity]);
  if (box.reciprocity) parts.push(`long exposures: exponent ${box.reciprocity.exponent}`);
  return parts.join("; ");
}

/** The classes offered, in the words of the shelf. */
export const offeredClasses = Object.entries(classWords).map(([value, name]) => ({
  value: value as NonNullable<PaperBox["sensitivity"]>,
  name,
}));

/** How an exposure index was found, with its doubt. */
export function indexSource(index: ExposureIndex): string {
  if (index.found.how === "ownSheets") {
    const count = index.found.sheetIds?.length ?? index.found.timesS?.length;
    return count === undefined ? "found with own sheets" : `found with ${count} own sheets`;
  }
  return index.found.how === "told" ? "told by somebody" : "a guess; one step test would tell";
}

/** The ± of an index in stops, nine in ten. */
export function indexDoubt(index: ExposureIndex): string {
  return index.value === undefined ? "" : `±${(nineInTen * index.value.sdStops).toFixed(2)} stop`;
}

/** What is known of a meter. */
export function meterWords(meter: Meter): string {
  const parts: string[] = [];
  if (meter.lowestIso !== undefined) parts.push(`dial begins at ISO ${meter.lowestIso}`);
  if (meter.clickStops !== undefined)
    parts.push(meter.clickStops === 1 ? "clicks of a stop" : `clicks of ${clickWords(meter.clickStops)} stop`);
  if (meter.offsetStops) {
    const { value } = meter.offsetStops;
    parts.push(value === 0 ? "true" : `shows ${Math.abs(value)} stop too ${value > 0 ? "much" : "little"} light`);
  }
  return parts.join("; ");
}

function clickWords(stops: number): string {
  if (Math.abs(stops - 1 / 3) < 0.01) return "a third of a";
  return Math.abs(stops - 0.5) < 0.01 ? "half a" : String(stops);
}
