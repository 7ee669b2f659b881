import type { Practice } from "../records/index.ts";

/** What the hand goes by, and with what it practised: each has openings of its own. */
export interface PracticeWay {
  readonly way: "ticks" | "counted";
  readonly by: Practice["by"];
}

/** The field of the hand in which the openings of a way are kept. */
export function practisedField({
  way,
  by,
}: PracticeWay): "capToTicks" | "capCounted" | "touchToTicks" | "touchCounted" {
  if (by === "cap") return way === "ticks" ? "capToTicks" : "capCounted";
  return way === "ticks" ? "touchToTicks" : "touchCounted";
}
