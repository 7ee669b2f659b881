import type { Sharp, SharpOf } from "@captray/notebook/answers";
import { messageOf } from "@captray/science/errors";
import { showFNumber } from "@captray/science/notation";
import { formatWords, lengthWithDoubt } from "./focusForm.ts";

type Unit = "mm" | "inch";

/** What is sharp, in the words of one line and a small one under it. */
export interface SharpWords {
  readonly head: string;
  readonly at: string;
  readonly below: string;
}

const missingWords = {
  lens: "a lens",
  focalLength: "the focal length of the lens",
  aperture: "the f-number of the lens",
} as const;

/** Why nothing can be said of sharpness, and what would help; nothing for a scene that has it all. */
export function sharpLacks(sharp: SharpOf, lengthUnit: Unit): string | undefined {
  switch (sharp.kind) {
    case "sharp":
      return undefined;
    case "missing":
      return `What is sharp needs ${missingWords[sharp.missing]}.`;
    case "pinhole":
      return "A pinhole draws everything alike, as sharp as its hole is small.";
    case "refused": {
      const { code, facts, key } = sharp.fault;
      const { message, hint } = messageOf({ code, facts, key, lengthUnit });
      return `${message} ${hint}`;
    }
  }
}

/** “Sharp from 1.31 to 1.43 m at f/11.4”, and what the sheet loses. */
export function sharpWords({ sharp, lengthUnit }: { readonly sharp: Sharp; readonly lengthUnit: Unit }): SharpWords {
  const { nearMm, farMm } = sharp;
  const [near, far] =
    farMm === null
      ? [lengthWithDoubt({ value: nearMm.value, sd: 0 }, lengthUnit).value, "the horizon"]
      : between(nearMm.value, farMm.value, lengthUnit);
  return {
    head: `Sharp from ${near} to ${far}`,
    at: `at ${showFNumber({ fNumber: sharp.fNumber })}`,
    below: [doubtWords(sharp, lengthUnit), blurWords(sharp), coverWords(sharp, lengthUnit)]
      .filter((words) => words !== "")
      .join(" "),
  };
}

/** Both ends in one unit, with as many digits as tell them apart. */
function between(nearMm: number, farMm: number, lengthUnit: Unit): [string, string] {
  const [size, unit] = lengthUnit === "mm" ? (farMm >= 1000 ? [1000, "m"] : [1, "mm"]) : [25.4, "in"];
  const place = Math.floor(Math.log10(Math.min((farMm - nearMm) / size, (nearMm / size) * 0.2)));
  const decimals = Math.min(3, Math.max(0, 1 - place));
  return [(nearMm / size).toFixed(decimals), `${(farMm / size).toFixed(decimals)} ${unit}`];
}

/** The whole of it lies nearer or farther by the doubt of the focus, where that is as much as matters. */
function doubtWords({ nearMm, farMm }: Sharp, lengthUnit: Unit): string {
  if (farMm === null || nearMm.sd < 0.1 * (farMm.value - nearMm.value)) return "";
  const { plusMinus, value } = lengthWithDoubt(nearMm, lengthUnit);
  return plusMinus === undefined
    ? ""
    : `All of it may lie nearer or farther by ${plusMinus} ${value.split(" ").at(-1)}, nine in ten.`;
}

function blurWords({ confusionMm, confusionBy }: Sharp): string {
  const held = confusionBy === "inTheHand" ? ", for a print in the hand" : "";
  return `Blur at most ${confusionMm.toFixed(2)} mm${held}.`;
}

function coverWords({ covered, cornerStops, format }: Sharp, lengthUnit: Unit): string {
  if (format === undefined) return "";
  const size = formatWords(format, lengthUnit);
  const loses = cornerStops === undefined ? "" : `the corner loses ${cornerStops.toFixed(1)} stop`;
  if (covered === undefined) return `On ${size} ${loses}; how wide the lens draws is not on the Shelf.`;
  if (!covered.covers)
    return `Does not cover ${size}: its circle is ${Math.round(covered.circleMm)} mm here. Corners stay dark.`;
  const shift = covered.shiftMm;
  const room =
    shift === undefined
      ? ""
      : ` Room to shift ${Math.floor(shift.alongHeight)} mm along the long side, ${Math.floor(shift.alongWidth)} mm along the short.`;
  return `Covers ${size}; ${loses}.${room}`;
}
