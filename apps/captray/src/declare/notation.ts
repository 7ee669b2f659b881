import { parseEv, parseFNumber, parseTime } from "@captray/science/notation";

export type Notation = "time" | "fNumber" | "exposureValue";

/** Which notation a key is read in: its name says so, in every command and also in lists. */
export function notationOf(key: string): Notation | undefined {
  if (/(?:^t|T)imes?S$/.test(key)) return "time";
  if (/(?:^f|F)Numbers?$/.test(key)) return "fNumber";
  if (/^(?:ev|ev100|evs)$/.test(key)) return "exposureValue";
  return undefined;
}

/**
 * The number a text stands for. A time is what was written, never snapped to a mark; an f-number is the exact member of
 * the series.
 *
 * @throws {OutOfDomain} unreadable
 */
export function readNotation(notation: Notation, text: string): number {
  if (notation === "time") return parseTime({ text });
  return notation === "fNumber" ? parseFNumber({ text }) : parseEv({ text });
}
