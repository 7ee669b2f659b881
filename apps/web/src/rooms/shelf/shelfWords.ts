import { type BoxStock, type LensFacts, lensFactsOf } from "@captray/notebook/answers";
import type { Camera, ExposureIndex, Lamp, Lens, Meter, PaperBox } from "@captray/notebook/records";
import { formatLength, showFNumber } from "@captray/science/notation";
import { dayWords } from "./form/readers.ts";
import { plusMinus } from "./plusMinus.ts";
import { sizeWords } from "./things/sizeForm.ts";

/** Nine in ten, from one standard deviation. */
const nineInTen = 1.645;

/** A lens by its name, else by its focal length. */
export function lensName(lens: Lens, unit: "mm" | "inch"): string {
  if (lens.name !== "") return lens.name;
  const focal = lens.measuredFocalLengthMm?.value ?? lens.markedFocalLengthMm?.value;
  return focal === undefined ? "Lens without a name" : formatLength({ lengthMm: focal, unit });
}

/** What is marked and what was measured: “marked f/11; measured f/11.4 ±0.2”. */
export function stopWords({ lens, stop }: { readonly lens: Lens; readonly stop: Lens["stops"][number] }): string {
  const parts: string[] = [];
  if (stop.name) parts.push(stop.name);
  if (stop.marked) parts.push(`marked ${showFNumber({ fNumber: stop.marked.value })}`);
  const found = lensFactsOf({ lens }).fNumbers.get(stop.id);
  if (found?.measured) {
    const said = plusMinus(found);
    parts.push(`${stop.measuredFNumber || !stop.holeMm ? "measured" : "cut to"} f/${said.value} ±${said.plusMinus}`);
  }
  if (stop.holeMm) parts.push(`hole ${formatLength({ lengthMm: stop.holeMm.value, unit: "mm" })}`);
  else if (stop.diameterMm) {
    const said = plusMinus(stop.diameterMm);
    parts.push(`pupil ${said.value} mm ±${said.plusMinus}`);
  }
  return parts.length === 0 ? "no f-number yet" : parts.join("; ");
}

const coatingWords = { bare: "bare", single: "once coated", several: "many times coated" } as const;
const waysToFocal = { infinity: "at infinity", twoSizes: "from two image sizes", told: "" } as const;

/** What else is known of a lens. */
export function lensWords(lens: Lens, unit: "mm" | "inch"): string {
  const parts: string[] = [];
  const length = (lengthMm: number) => formatLength({ lengthMm, unit });
  if (lens.sort === "pinhole" && lens.holeMm) parts.push(`pinhole of ${length(lens.holeMm.value)}`);
  if (lens.dioptres) parts.push(`one glass of +${lens.dioptres.text ?? lens.dioptres.value} dioptres`);
  if (lens.measuredFocalLengthMm) {
    const { value, plusMinus: doubt } = plusMinus(lens.measuredFocalLengthMm);
    const by = lens.focalLengthBy === undefined ? "" : ` ${waysToFocal[lens.focalLengthBy]}`;
    parts.push(`focal length measured${by.trimEnd()} ${value} mm ±${doubt}`);
  }
  if (lens.infinityExtensionMm) parts.push(`infinity at ${length(lens.infinityExtensionMm.value)}`);
  if (lens.stopPlace) {
    const { side, distanceMm } = lens.stopPlace;
    parts.push(`card ${length(distanceMm)} ${side === "front" ? "in front of" : "behind"} the glass`);
  }
  if (lens.surfaces) parts.push(`${lens.surfaces.count} surfaces, ${coatingWords[lens.surfaces.coating]}`);
  if (lens.transmission) parts.push(`passes ${Number(lens.transmission.value.toFixed(2))} of the light`);
  if (lens.imageCircleMm) parts.push(`image circle ${length(lens.imageCircleMm)}`);
  const shift = lensFactsOf({ lens }).chemicalShiftMm;
  if (shift && shift.value > 0) parts.push(`its paper focus lies ${plusMinus(shift).value} mm nearer`);
  if (lens.assumed?.includes("glass")) parts.push("its glass is taken for granted");
  return parts.join("; ");
}

/** What is written in the drawing of a lens; nothing where pupil or focal length is not known. */
export function lensDrawn(
  lens: Lens,
  unit: "mm" | "inch",
):
  | {
      readonly focalLengthMm: number;
      readonly pupilMm: number;
      readonly sort: "lens" | "single" | "pinhole";
      readonly card?: { readonly side: "front" | "behind"; readonly distanceMm: number };
      readonly pupilWords: string;
      readonly lengthWords: string;
    }
  | undefined {
  const facts: LensFacts = lensFactsOf({ lens });
  const stop = lens.stops[0];
  const focal = facts.focalLengthMm;
  const number = stop && facts.fNumbers.get(stop.id);
  if (lens.sort === "pinhole" || focal === undefined || number === undefined) return undefined;
  const measured = stop?.diameterMm;
  const pupilMm = measured?.value ?? focal.value / number.value;
  if (pupilMm > focal.value) return undefined;
  const said = measured && plusMinus(measured);
  return {
    focalLengthMm: focal.value,
    pupilMm,
    sort: lens.dioptres || lens.chemicalFocus?.correction === "single" ? "single" : "lens",
    ...(lens.stopPlace && { card: lens.stopPlace }),
    pupilWords: said
      ? `pupil ${said.value} mm ±${said.plusMinus}`
      : `pupil about ${formatLength({ lengthMm: pupilMm, unit: "mm" })}`,
    lengthWords: `${formatLength({ lengthMm: focal.value, unit })}, to scale`,
  };
}

const classWords: Readonly<Record<NonNullable<PaperBox["sensitivity"]>, string>> = {
  blue: "blue-sensitive, make unknown",
  chloride: "chloride: blue-sensitive",
  chlorobromide: "chlorobromide: blue-sensitive",
  bromide: "bromide: blue-sensitive",
  orthochromatic: "orthochromatic",
  variableContrast: "variable contrast",
};

/** What stands beside the name of a box: “grade 1, 13 × 18 cm”. */
export function boxHeadWords(box: PaperBox): string {
  return [box.grade ? `grade ${box.grade}` : "", box.size ? sizeWords(box.size) : ""].filter(Boolean).join(", ");
}

const finishWords = { gloss: "gloss", semimatt: "semi-matt", matt: "matt" } as const;

/** What is known of a box beside its name. */
export function boxWords(box: PaperBox, stock: BoxStock): string {
  const parts: string[] = [];
  if (box.sensitivity) parts.push(classWords[box.sensitivity]);
  if (box.finish) parts.push(finishWords[box.finish]);
  if (box.isoSpeed) parts.push(`ISO P${box.isoSpeed}`);
  if (box.isoRange) parts.push(`ISO R${box.isoRange}`);
  if ((box.reciprocityTable?.length ?? 0) >= 2) parts.push("long exposures by its own table");
  else if (box.reciprocity) parts.push(`long exposures: exponent ${box.reciprocity.exponent}`);
  if (box.contrastFilters?.length) parts.push(`${box.contrastFilters.length} contrast filters`);
  if (stock.largerSheets !== undefined && (box.cutIntoParts ?? 1) > 1)
    parts.push(`cut from ${stock.largerSheets} larger sheets`);
  if (stock.pricePerSheet !== undefined)
    parts.push(`a sheet costs ${stock.pricePerSheet.toFixed(2)} ${box.price?.currency ?? ""}`.trim());
  if (box.openedAt) parts.push(`opened ${dayWords(box.openedAt.at + box.openedAt.offsetMin * 60_000)}`);
  if (box.batch) parts.push(`batch ${box.batch}`);
  if (stock.before.length > 0) parts.push(`before it: ${stock.before.map((one) => one.name || "a box").join(", ")}`);
  return parts.join("; ");
}

/** What is left of it: “14 of 25 left”. */
export function stockWords({ left, full }: BoxStock): string {
  if (left === undefined) return "";
  return full === undefined ? `${left} left` : `${left} of ${full} left`;
}

/** The classes offered, in the words of the shelf. */
export const offeredClasses = Object.entries(classWords).map(([value, name]) => ({
  value: value as NonNullable<PaperBox["sensitivity"]>,
  name,
}));

/** How an exposure index was found. */
export function indexSource(index: ExposureIndex): string {
  const granted = index.assumed?.includes("value") ? "taken for granted: " : "";
  if (index.found.how === "ownSheets") {
    const count = index.found.sheetIds?.length ?? index.found.timesS?.length;
    return `${granted}found with ${count === undefined ? "" : `${count} `}own sheets`;
  }
  if (index.found.how === "told") return `${granted}told by ${index.found.by || "somebody"}`;
  return `${granted}a guess; one step test would tell`;
}

/** The ± of an index in stops, nine in ten. */
export function indexDoubt(index: ExposureIndex): string {
  return index.value === undefined ? "" : `±${(nineInTen * index.value.sdStops).toFixed(2)} stop`;
}

/** What is known of a meter. */
export function meterWords(meter: Meter): string {
  const parts: string[] = [];
  if (meter.reads)
    parts.push({ reflected: "reflected light", incident: "incident light", both: "both ways" }[meter.reads]);
  if (meter.lowestIso !== undefined) parts.push(`dial begins at ISO ${meter.lowestIso}`);
  if (meter.clickStops !== undefined)
    parts.push(meter.clickStops === 1 ? "clicks of a stop" : `clicks of ${clickWords(meter.clickStops)} stop`);
  if (meter.meterK !== undefined)
    parts.push(`K ${meter.meterK}${meter.assumed?.includes("meterK") ? ", taken for granted" : ""}`);
  if (meter.meterC !== undefined) parts.push(`C ${meter.meterC}`);
  if (meter.offsetStops) {
    const { value, sd } = meter.offsetStops;
    const doubt = (nineInTen * sd).toFixed(2);
    const size = Number(Math.abs(value).toFixed(2));
    parts.push(
      size === 0 ? `true, ±${doubt} stop` : `shows ${size} stop too ${value > 0 ? "much" : "little"} light, ±${doubt}`,
    );
  }
  return parts.join("; ");
}

function clickWords(stops: number): string {
  if (Math.abs(stops - 1 / 3) < 0.01) return "a third of a";
  return Math.abs(stops - 0.5) < 0.01 ? "half a" : String(stops);
}

/** What is known of a camera. */
export function cameraWords(camera: Camera, unit: "mm" | "inch"): string {
  const length = (lengthMm: number) => formatLength({ lengthMm, unit });
  const parts: string[] = [];
  if (camera.extensionLimits) {
    const { leastMm, mostMm } = camera.extensionLimits;
    parts.push(`racks from ${length(leastMm)} to ${length(mostMm)}`);
  }
  if (camera.infinityBedMm) parts.push(`infinity at ${length(camera.infinityBedMm.value)} on the bed`);
  if (camera.lastExtension) parts.push(`last stood at ${length(camera.lastExtension.value)}`);
  return parts.join("; ");
}

const glowWords = {
  filament: "filament",
  whiteLed: "white diode",
  daylight: "daylight",
  other: "colour not known",
} as const;

/** What is known of a lamp. */
export function lampWords(lamp: Lamp): string {
  const kelvin = lamp.source?.split(":")[1];
  const granted = lamp.assumed?.includes("source") ? ", taken for granted" : "";
  return [lamp.sort === undefined ? "" : glowWords[lamp.sort], kelvin === undefined ? "" : `${kelvin} K${granted}`]
    .filter(Boolean)
    .join(", ");
}
