import type { Facts } from "@captray/science/errors";

/** What is wrong with an input, and where: data, no words yet. */
export interface Fault {
  readonly code: string;
  /** JSON Pointer (RFC 6901) into the input. */
  readonly pointer: string;
  readonly facts: Facts;
}

/** The pointer to a key or an index below `parent`. */
export function below(parent: string, key: string | number): string {
  return `${parent}/${String(key).replaceAll("~", "~0").replaceAll("/", "~1")}`;
}

/** Whether a JSON value is an object with keys, not a list and not `null`. */
export function hasKeys(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
