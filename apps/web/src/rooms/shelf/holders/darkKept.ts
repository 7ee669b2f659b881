import { isRecordId } from "@captray/notebook/records";

/** A step that was pressed and is not durable in the notebook yet. */
export interface PendingStep {
  readonly sheetId: string;
  readonly step: "flashedAt" | "loadedAt";
  readonly at: { readonly at: number; readonly offsetMin: number };
}

/** What the dark page keeps in the small store, so that a reload or a kill takes nothing from it. */
export interface DarkKept {
  readonly begun: boolean;
  readonly done: readonly Omit<PendingStep, "at">[];
  readonly pending: readonly PendingStep[];
  /** Sheets whose sides were left out. */
  readonly leftOut: readonly string[];
}

export const nothingKept: DarkKept = { begun: false, done: [], pending: [], leftOut: [] };

/** What was written there; whatever is not whole is left out. */
export function readDarkKept(held: unknown): DarkKept {
  if (typeof held !== "object" || held === null) return nothingKept;
  const { begun, done, pending, leftOut } = held as Partial<Record<keyof DarkKept, unknown>>;
  return {
    begun: begun === true,
    done: listOf(done, isDone),
    pending: listOf(pending, isPending),
    leftOut: listOf(leftOut, (one): one is string => typeof one === "string" && isRecordId(one)),
  };
}

/** The page after a press: the step is done, and pending until the notebook has it. */
export function withStep(kept: DarkKept, step: PendingStep): DarkKept {
  const { sheetId, step: what } = step;
  return { ...kept, done: [...kept.done, { sheetId, step: what }], pending: [...kept.pending, step] };
}

/** Once the notebook has it durably, it needs no second place. */
export function settled(kept: DarkKept, step: PendingStep): DarkKept {
  return {
    ...kept,
    pending: kept.pending.filter((one) => one.sheetId !== step.sheetId || one.step !== step.step),
  };
}

/** The last step was not so. */
export function withoutLast(kept: DarkKept): DarkKept {
  const last = kept.done.at(-1);
  return {
    ...kept,
    done: kept.done.slice(0, -1),
    pending: kept.pending.filter((one) => one.sheetId !== last?.sheetId || one.step !== last?.step),
  };
}

function listOf<T>(held: unknown, is: (one: unknown) => one is T): readonly T[] {
  return Array.isArray(held) ? held.filter(is) : [];
}

function isDone(one: unknown): one is DarkKept["done"][number] {
  if (typeof one !== "object" || one === null) return false;
  const { sheetId, step } = one as Partial<Record<string, unknown>>;
  return typeof sheetId === "string" && isRecordId(sheetId) && (step === "flashedAt" || step === "loadedAt");
}

function isPending(one: unknown): one is PendingStep {
  if (!isDone(one)) return false;
  const at = (one as Partial<PendingStep>).at;
  return Number.isInteger(at?.at) && Number.isInteger(at?.offsetMin) && (at?.at ?? -1) >= 0;
}
