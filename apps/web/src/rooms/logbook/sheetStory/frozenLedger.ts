import type { Sheet } from "@captray/notebook/records";
import type { LedgerLineWithFacts } from "@captray/science/exposure";

/** A ledger as it was that day. `lines` have the numbers their words are made of; `plain` only say what they said then. */
export type FrozenLedger =
  | {
      readonly kind: "lines";
      readonly lines: readonly LedgerLineWithFacts[];
      readonly timeS: number;
      readonly timeStops: { readonly value: number; readonly sd: number };
    }
  | {
      readonly kind: "plain";
      readonly lines: readonly { readonly line: string; readonly stops: Stops; readonly ground: string }[];
    }
  | { readonly kind: "none" };

interface Stops {
  readonly value: number;
  readonly sd: number;
}

/** Reads the ledger that a sheet keeps. What an older or foreign form says is shown as far as it can be read. */
export function frozenLedger({ planned }: Pick<Sheet, "planned">): FrozenLedger {
  if (planned === undefined || !Array.isArray(planned.ledger)) return { kind: "none" };
  const lines = (planned.ledger as readonly unknown[]).filter(isLine);
  if (lines.length === 0) return { kind: "none" };
  if (!lines.every(({ facts }) => isObject(facts))) return { kind: "plain", lines };
  const answer: unknown = planned.answer;
  const held = isObject(answer) && isStops(answer.timeStops) ? answer.timeStops : null;
  const timeStops = held ?? {
    value: Math.log2(planned.timeS),
    sd: Math.hypot(...lines.map(({ stops }) => stops.sd)),
  };
  // The facts were written by our own planner, from checked numbers; a line without them was sorted out above.
  return { kind: "lines", lines: lines as unknown as readonly LedgerLineWithFacts[], timeS: planned.timeS, timeStops };
}

function isLine(held: unknown): held is { line: string; stops: Stops; ground: string; facts?: unknown } {
  return isObject(held) && typeof held.line === "string" && typeof held.ground === "string" && isStops(held.stops);
}

function isStops(held: unknown): held is Stops {
  return isObject(held) && Number.isFinite(held.value) && Number.isFinite(held.sd);
}

function isObject(held: unknown): held is Record<string, unknown> {
  return typeof held === "object" && held !== null && !Array.isArray(held);
}
