import type { Fault } from "../declare/fault.ts";
import { wordsFor } from "./wordsFor.ts";

/** The error object of the contract. */
export interface ErrorObject {
  readonly code: string;
  readonly message: string;
  readonly path: string;
  readonly hint: string;
}

/** An input that is refused: the caller's fault, told as data. */
export class Refusal extends Error {
  readonly fault: Fault;

  constructor(fault: Fault) {
    super(`${fault.code} at ${fault.pointer}`);
    this.name = "Refusal";
    this.fault = fault;
  }
}

/** Puts a fault into words. */
export function errorObject(fault: Fault): ErrorObject {
  const { message, hint } = wordsFor(fault);
  return { code: fault.code, message, path: fault.pointer, hint };
}
