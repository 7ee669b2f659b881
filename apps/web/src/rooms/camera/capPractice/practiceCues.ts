import type { CapCue } from "../capPage/capCues.ts";

/** What is heard in a practice opening, from the press that begins it; counted in the head nothing is. */
export function practiceCues({
  wantedS,
  way,
}: {
  readonly wantedS: number;
  readonly way: "ticks" | "counted";
}): readonly CapCue[] {
  if (way === "counted") return [];
  const cues: CapCue[] = [];
  for (let s = 1; s < wantedS; s++) cues.push({ atS: s, kind: s % 5 === 0 ? "fifth" : "tick" });
  return [...cues, { atS: wantedS, kind: "end" }];
}
