import { OutOfDomain } from "../errors/index.ts";
import { BATH_PRIORS, type BathPrior, type BathRoleName } from "./bathPriors.ts";

export interface BathPriorInput {
  readonly role: BathRoleName;
}

/**
 * What is supposed of a bath before anything is known of it: how fast it goes off in a tray, and on how much paper.
 *
 * Method   a table of ranges; the value is the geometric mean, the doubt 0.7 in the natural logarithm (a factor of two)
 * Units    h, m²/L
 * Holds    as a starting value that strips and records replace.
 *
 * @throws {OutOfDomain} unknownWord
 * @source none: ranges of common practice (common practice)
 * @example bathPrior({ role: "acidAndPeroxide" }).lastHourH // 6
 */
export function bathPrior({ role }: BathPriorInput): BathPrior {
  if (!Object.hasOwn(BATH_PRIORS, role)) {
    throw new OutOfDomain("unknownWord", { role, choices: Object.keys(BATH_PRIORS) });
  }
  return BATH_PRIORS[role];
}
