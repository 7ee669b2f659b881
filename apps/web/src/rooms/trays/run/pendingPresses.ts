import type { RunEvent } from "@captray/notebook/records";
import type { Mirror } from "../../../devices/mirror.ts";

/** A press that is not durable in the notebook yet, under the id it will have there. */
export interface PendingPress {
  readonly id: string;
  readonly event: RunEvent;
}

const nameOf = (runId: string) => `captray-run-pending-${runId}`;

/** Presses written down at once in the small store; whatever is not whole is left out. */
export function readPending(mirror: Mirror, runId: string): readonly PendingPress[] {
  const held = mirror.read(nameOf(runId));
  return Array.isArray(held) ? held.filter(isPending) : [];
}

export function addPending(mirror: Mirror, runId: string, press: PendingPress): void {
  mirror.write(nameOf(runId), [...readPending(mirror, runId).filter(({ id }) => id !== press.id), press]);
}

/** Once the notebook has it durably, it needs no second place. */
export function settlePending(mirror: Mirror, runId: string, id: string): void {
  const left = readPending(mirror, runId).filter((one) => one.id !== id);
  if (left.length === 0) mirror.drop(nameOf(runId));
  else mirror.write(nameOf(runId), left);
}

function isPending(one: unknown): one is PendingPress {
  if (typeof one !== "object" || one === null) return false;
  const { id, event } = one as { readonly id?: unknown; readonly event?: Partial<Record<keyof RunEvent, unknown>> };
  return (
    typeof id === "string" &&
    typeof event === "object" &&
    event !== null &&
    typeof event.press === "string" &&
    typeof event.sinceStartMs === "number" &&
    typeof event.wallMs === "number"
  );
}
