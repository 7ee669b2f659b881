import { hasKeys } from "../declare/fault.ts";
import { errorObject, Refusal } from "./refusal.ts";
import { FINE, OWN_FAULT, REFUSED } from "./terminal.ts";

export interface Reply {
  readonly document: Readonly<Record<string, unknown>>;
  readonly exit: typeof FINE | typeof REFUSED | typeof OWN_FAULT;
}

/** An answer, or the refusal in its place; both begin with the `id` of the input and with what else says whose they are. */
export function reply(
  input: unknown,
  ask: () => Readonly<Record<string, unknown>>,
  whose: Readonly<Record<string, unknown>> = {},
): Reply {
  const begins = { ...idOf(input), ...whose };
  try {
    return { document: { ...begins, ...ask() }, exit: FINE };
  } catch (error) {
    return refused(begins, error);
  }
}

/** The same for a command that has to read a file before it can answer. */
export async function replyLater(
  input: unknown,
  ask: () => Promise<Readonly<Record<string, unknown>>>,
): Promise<Reply> {
  const begins = idOf(input);
  try {
    return { document: { ...begins, ...(await ask()) }, exit: FINE };
  } catch (error) {
    return refused(begins, error);
  }
}

function refused(begins: Readonly<Record<string, unknown>>, error: unknown): Reply {
  const fault = error instanceof Refusal ? error.fault : { code: "ownFault", pointer: "", facts: { reason: error } };
  return {
    document: { ...begins, error: errorObject(fault) },
    exit: error instanceof Refusal ? REFUSED : OWN_FAULT,
  };
}

function idOf(input: unknown): Readonly<Record<string, unknown>> {
  if (!hasKeys(input) || !Object.hasOwn(input, "id")) return {};
  const { id } = input;
  return typeof id === "string" || (typeof id === "number" && Number.isFinite(id)) ? { id } : {};
}
