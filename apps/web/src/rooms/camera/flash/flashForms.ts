import type { FlashLamp, Json } from "@captray/notebook/records";
import { parseNumber, type ReadAnswer, readLength, readTime } from "@captray/science/notation";

/** What the form of a set-up holds: texts as typed. */
export type LampTexts = Readonly<
  Record<"name" | "lampId" | "dimming" | "distance" | "diffuser" | "where" | "meterLx", string>
>;

/** A set-up as its form shows it. */
export function lampTexts(lamp: FlashLamp | undefined): LampTexts {
  return {
    name: lamp?.name ?? "",
    lampId: lamp?.lampId ?? "",
    dimming: lamp?.dimming ?? "",
    distance: typedText(lamp?.distanceMm),
    diffuser: lamp?.diffuser ?? "",
    where: lamp?.where ?? "",
    meterLx: typedText(lamp?.meterLx),
  };
}

/** What keeping the form writes; an emptied field is cleared. */
export function lampSet(texts: LampTexts): Record<string, Json> {
  const short = (text: string) => (text.trim() === "" ? null : text.trim().slice(0, 60));
  return {
    name: texts.name.trim().slice(0, 120),
    lampId: texts.lampId === "" ? null : texts.lampId,
    dimming: short(texts.dimming),
    distanceMm: typedIn(texts.distance, readLength({ text: texts.distance })),
    diffuser: short(texts.diffuser),
    where: short(texts.where),
    meterLx: typedIn(texts.meterLx, readLux(texts.meterLx)),
  };
}

/** Whether the light at the paper may be another one: what a strip said holds no more. */
export function movesLight(before: LampTexts, after: LampTexts): boolean {
  return (["lampId", "dimming", "distance", "diffuser"] as const).some(
    (key) => before[key].trim() !== after[key].trim(),
  );
}

/** Reads what a meter at the paper says. */
export function readLux(text: string): ReadAnswer {
  return plain(
    text,
    (value) => value > 0 && value <= 100_000,
    "Lux at the paper, above 0; a flash lamp gives less than 10.",
  );
}

/** Reads a density as measured on a piece. */
export function readDensity(text: string): ReadAnswer {
  return plain(
    text,
    (value) => value >= 0 && value <= 4,
    "A density lies between 0 and 4: bare paper about 0.06, black about 2.",
  );
}

/** Reads seconds of flash: what a hand can give, and nobody waits a quarter of an hour. */
export function readFlashTime(text: string): ReadAnswer {
  const answer = readTime({ text });
  if (answer.kind !== "read" || (answer.value >= 0.5 && answer.value <= 900)) return answer;
  const message =
    answer.value < 0.5
      ? "Less than half a second of a lamp is not given by hand. Dim it, or move it away."
      : "More than a quarter of an hour. Bring the lamp nearer.";
  return { kind: "unreadable", text, at: 0, message };
}

function plain(text: string, fits: (value: number) => boolean, message: string): ReadAnswer {
  if (text.trim() === "") return { kind: "empty" };
  try {
    const value = parseNumber({ text });
    if (fits(value)) return { kind: "read", value, understood: "" };
  } catch {
    // What cannot be read and what does not fit are answered alike.
  }
  return { kind: "unreadable", text, at: 0, message };
}

function typedIn(text: string, answer: ReadAnswer): Json {
  if (answer.kind !== "read" || !(answer.value > 0 && answer.value < 1e8)) return null;
  return { value: answer.value, text: text.trim().slice(0, 60) };
}

function typedText(held: { readonly value: number; readonly text?: string } | undefined): string {
  return held?.text ?? (held === undefined ? "" : String(Number(held.value.toPrecision(5))));
}
