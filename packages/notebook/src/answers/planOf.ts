import { OutOfDomain } from "@captray/science/errors";
import { type PlanAnswerWithFacts, type PlanInput, planWithFacts } from "@captray/science/exposure";
import type { Kit } from "./kit.ts";
import { type MissingPart, planInputOf } from "./planInputOf.ts";

export type PlanOf =
  | { readonly kind: "plan"; readonly input: PlanInput; readonly answer: PlanAnswerWithFacts }
  | { readonly kind: "missing"; readonly missing: readonly MissingPart[] }
  | { readonly kind: "refused"; readonly fault: OutOfDomain };

/**
 * The plan of a scene with its kit: the whole ledger, or what is missing for it, or what in it cannot be.
 *
 * What cannot be (an extension shorter than the focal length, a lamp this paper does not see) is an answer here and not an error, so that a
 * screen keeps its other parts.
 */
export function planOf(kit: Kit): PlanOf {
  const asked = planInputOf(kit);
  if (asked.kind === "missing") return asked;
  try {
    return { kind: "plan", input: asked.input, answer: planWithFacts(asked.input) };
  } catch (fault) {
    if (fault instanceof OutOfDomain) return { kind: "refused", fault };
    throw fault;
  }
}
