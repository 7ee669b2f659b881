import type { Reading, Scene } from "@captray/notebook/records";
import { type ReadAnswer, readEv, readFNumber, readIso } from "@captray/science/notation";
import { isSensible, readMeter, readPlainNumber, saysEv } from "../readingNow/readTexts.ts";

/** The ways a meter is read, as a person chooses among them. */
export type WayWord = "time" | "ev" | "luminance" | "illuminance" | "incidentTime" | "incidentEv";

export const wayNames: Readonly<Record<WayWord, { readonly name: string; readonly detail: string }>> = {
  time: { name: "pointed at it", detail: "a time" },
  ev: { name: "pointed at it", detail: "EV" },
  luminance: { name: "pointed at it", detail: "cd/m²" },
  incidentTime: { name: "from the subject", detail: "a time" },
  incidentEv: { name: "from the subject", detail: "EV" },
  illuminance: { name: "from the subject", detail: "lux" },
};

/** What is typed for one reading. */
export interface ReadingTexts {
  readonly way: WayWord;
  readonly figure: string;
  readonly fNumber: string;
  readonly iso: string;
}

/** The way, the f-number and the ISO of the newest reading there is: of this scene, or else of one before it. */
export function startTexts({ scenes }: { readonly scenes: readonly Scene[] }): ReadingTexts {
  const said = scenes.flatMap((scene) => scene.readings.flatMap(({ reading }) => reading ?? []));
  const dial = said.findLast((one) => one.way === "time");
  const withIso = said.findLast((one) => one.way === "time" || one.way === "ev");
  const last = said.at(-1);
  return {
    way: last === undefined ? "time" : wayOf(last),
    figure: "",
    fNumber: dial === undefined ? "" : (dial.fNumber.text ?? String(dial.fNumber.value)).replace(/^f\//, ""),
    iso: withIso === undefined ? "" : (withIso.iso.text ?? String(withIso.iso.value)),
  };
}

function wayOf(reading: Reading): WayWord {
  const incident = "kind" in reading && reading.kind === "incident";
  if (reading.way === "time") return incident ? "incidentTime" : "time";
  if (reading.way === "ev" || reading.way === "ev100") return incident ? "incidentEv" : "ev";
  return reading.way;
}

/** How the figure of a way is read. */
export function figureReader(way: WayWord): (text: string) => ReadAnswer {
  switch (way) {
    case "time":
    case "incidentTime":
      return readMeter;
    case "ev":
    case "incidentEv":
      return (text) => readEv({ text });
    default:
      return (text) => readPlainNumber(text, way === "illuminance" ? "lx" : "cd/m²");
  }
}

/** The reading that was typed, or what it still lacks, for the words beside a press. */
export function readingOf(texts: ReadingTexts): { readonly reading: Reading } | { readonly lacks: string } {
  const { way } = texts;
  const read = figureReader(way)(texts.figure);
  if (read.kind !== "read" || !isSensible(read.value)) return { lacks: "a reading" };
  const figure = { value: read.value, text: texts.figure.trim() };
  const isEv = way === "ev" || way === "incidentEv" || saysEv(texts.figure);
  const kind = way === "incidentTime" || way === "incidentEv" ? ({ kind: "incident" } as const) : {};
  if (!isEv && read.value <= 0) return { lacks: "a reading above nothing" };
  if (way === "luminance") return { reading: { way, luminanceCdM2: figure } };
  if (way === "illuminance") return { reading: { way, illuminanceLx: figure } };
  const iso = readIso({ text: texts.iso });
  if (isEv) {
    if (texts.iso.trim() === "") return { reading: { way: "ev100", ...kind, ev100: figure } };
    if (iso.kind !== "read" || iso.value <= 0) return { lacks: "the ISO" };
    return { reading: { way: "ev", ...kind, ev: figure, iso: typed(iso, texts.iso) } };
  }
  const fNumber = readFNumber({ text: texts.fNumber });
  if (fNumber.kind !== "read" || fNumber.value <= 0) return { lacks: "the f-number on the meter" };
  if (iso.kind !== "read" || iso.value <= 0) return { lacks: "the ISO on the meter" };
  return {
    reading: {
      way: "time",
      ...kind,
      timeS: { ...figure, ...(read.marked === true && { mark: true }) },
      fNumber: typed(fNumber, texts.fNumber),
      iso: typed(iso, texts.iso),
    },
  };
}

function typed(read: Extract<ReadAnswer, { kind: "read" }>, text: string) {
  return { value: read.value, text: text.trim(), ...(read.marked === true && { mark: true }) };
}
