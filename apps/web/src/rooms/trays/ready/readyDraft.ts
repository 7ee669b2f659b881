import type { BathRole } from "@captray/notebook/records";
import type { Mirror } from "../../../devices/mirror.ts";

/** What was chosen for the next run on this device, so that a reload asks nothing twice. */
export interface ReadyDraft {
  /** Ids of sheets, or "id/letter" for a piece, in the order in which they go in. */
  readonly keys: readonly string[];
  readonly recipeId: string | undefined;
  /** One after another, each by its own clock, or all as one. */
  readonly goes: "apart" | "together";
  /** By bath; "none" where it is not written down. */
  readonly baths: Readonly<Partial<Record<BathRole, string>>>;
  readonly bathC: Readonly<Partial<Record<BathRole, number>>>;
  readonly waitForMe: boolean;
  /** What was seen to before the lights go out, by its place in the list. */
  readonly ticks: readonly number[];
}

export const nothingChosen: ReadyDraft = {
  keys: [],
  recipeId: undefined,
  goes: "apart",
  baths: {},
  bathC: {},
  waitForMe: false,
  ticks: [],
};

const nameOf = (notebookId: string) => `captray-ready-${notebookId}`;

/** What was written there; whatever is not whole is as if nothing was chosen. */
export function readDraft(mirror: Mirror, notebookId: string): ReadyDraft {
  const held = mirror.read(nameOf(notebookId));
  if (typeof held !== "object" || held === null) return nothingChosen;
  const { keys, recipeId, goes, baths, bathC, waitForMe, ticks } = held as Partial<Record<keyof ReadyDraft, unknown>>;
  return {
    keys: Array.isArray(keys) ? keys.filter((key): key is string => typeof key === "string").slice(0, 50) : [],
    recipeId: typeof recipeId === "string" ? recipeId : undefined,
    goes: goes === "together" ? "together" : "apart",
    baths: byBath(baths, (value): value is string => typeof value === "string"),
    bathC: byBath(bathC, (value): value is number => typeof value === "number" && value >= 5 && value <= 40),
    waitForMe: waitForMe === true,
    ticks: Array.isArray(ticks) ? ticks.filter((tick): tick is number => Number.isInteger(tick)) : [],
  };
}

export function writeDraft(mirror: Mirror, notebookId: string, draft: ReadyDraft): void {
  mirror.write(nameOf(notebookId), draft);
}

function byBath<T>(held: unknown, is: (value: unknown) => value is T): Readonly<Partial<Record<BathRole, T>>> {
  if (typeof held !== "object" || held === null) return {};
  return Object.fromEntries(Object.entries(held).filter(([, value]) => is(value)));
}
