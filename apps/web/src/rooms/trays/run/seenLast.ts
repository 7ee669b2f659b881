import type { Mirror } from "../../../devices/mirror.ts";

/** When a run was last seen alive, on its own clock and on that of the wall. */
export interface SeenLast {
  readonly sinceMs: number;
  readonly wallMs: number;
}

const nameOf = (runId: string) => `captray-run-${runId}`;

/** A beat of the run: written at once, so that a killed page has lost no more than the time since. */
export function writeSeen(mirror: Mirror, runId: string, seen: SeenLast): void {
  mirror.write(nameOf(runId), { sinceMs: Math.round(seen.sinceMs), wallMs: Math.round(seen.wallMs) });
}

/** The last beat, or nothing where none can be read. */
export function readSeen(mirror: Mirror, runId: string): SeenLast | null {
  const held = mirror.read(nameOf(runId));
  if (typeof held !== "object" || held === null) return null;
  const { sinceMs, wallMs } = held as Partial<Record<keyof SeenLast, unknown>>;
  const isTime = (value: unknown): value is number => typeof value === "number" && Number.isFinite(value) && value >= 0;
  return isTime(sinceMs) && isTime(wallMs) ? { sinceMs, wallMs } : null;
}

export function dropSeen(mirror: Mirror, runId: string): void {
  mirror.drop(nameOf(runId));
}
