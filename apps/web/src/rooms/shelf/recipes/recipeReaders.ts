import { type ReadAnswer, readTime } from "@captray/science/notation";
import { readCount, readWithin } from "../form/readers.ts";
import type { TemperatureUnit } from "./recipeTypes.ts";

const longestStepS = 86_400;
const longestDrainS = 120;
/** Wider than any bath: below it is ice, above it no gelatin stays on its paper. */
const limitsC = { least: 2, most: 40 };

/** How long a step is: more than nothing, a day at most. */
export function readStepTime(text: string): ReadAnswer {
  if (/^\s*[-−–]/.test(text)) return refused(text, "A step cannot be shorter than nothing: leave out the minus.");
  if (/^[\s0.,:msin]*$/i.test(text) && /0/.test(text))
    return refused(text, "A step takes time: 1 s or more, or take the step out.");
  const answer = readTime({ text });
  if (answer.kind !== "read" || answer.value <= longestStepS) return answer;
  return refused(text, "A step of more than 24 hours is no step of a run. If it is a slip, type 1m20 or 80 s.");
}

/** The shortest a step may be; nothing at all is short enough. */
export function readLeastTime(text: string): ReadAnswer {
  if (/^\s*0+([.,]0+)?\s*s?\s*$/.test(text)) return { kind: "read", value: 0, understood: "may be left out" };
  return readStepTime(text);
}

/** How long a sheet drains before it leaves. */
export function readDrain(text: string): ReadAnswer {
  if (/^\s*0+\s*s?\s*$/.test(text)) return { kind: "read", value: 0, understood: "no drain" };
  const answer = readStepTime(text);
  if (answer.kind !== "read" || answer.value <= longestDrainS) return answer;
  return refused(text, "Longer than two minutes in the air a sheet begins to dry: 5 to 20 s drain it.");
}

/** A bath's temperature in the unit of the house, or as its own sign says; the answer is in °C. */
export function readBathTemperature(text: string, unit: TemperatureUnit): ReadAnswer {
  const said = /^(.*?)\s*°?\s*([cf])\s*$/i.exec(text);
  const sign = (said?.[2] ?? (unit === "celsius" ? "c" : "f")).toLowerCase();
  const plain = readWithin("A temperature in degrees: 20, or 68 F.", -1000, 1000)(said?.[1] ?? text);
  if (plain.kind === "unreadable") return { ...plain, text };
  if (plain.kind !== "read") return plain;
  const bathC = sign === "f" ? ((plain.value - 32) * 5) / 9 : plain.value;
  if (bathC > limitsC.most) {
    return refused(
      text,
      `At ${degrees(bathC, unit)} gelatin melts off its paper. Baths are kept at 18 to 24 °C; 27 °C is warm already.`,
    );
  }
  if (bathC < limitsC.least)
    return refused(text, `At ${degrees(bathC, unit)} a bath is all but ice. Baths are kept at 18 to 24 °C.`);
  const other = sign === (unit === "celsius" ? "c" : "f") ? "" : degrees(bathC, unit);
  return { kind: "read", value: bathC, understood: other };
}

/** How strong something is in its bath. */
export const readStrength = readWithin("Grams in 100 ml, above 0 and up to 100: 3 for peroxide of 3 %.", 0.001, 100);

export const readRounds = readCount("Rounds, 1 to 9.", 1, 9);

export function degrees(bathC: number, unit: TemperatureUnit): string {
  return unit === "celsius" ? `${plainly(bathC)} °C` : `${plainly((bathC * 9) / 5 + 32)} °F`;
}

export function temperatureText(bathC: number, unit: TemperatureUnit): string {
  return plainly(unit === "celsius" ? bathC : (bathC * 9) / 5 + 32);
}

function plainly(value: number): string {
  return String(Number(value.toFixed(1))).replace("-", "−");
}

function refused(text: string, message: string): ReadAnswer {
  return { kind: "unreadable", text, at: 0, message };
}
