import { OutOfDomain } from "@captray/science/errors";
import { Refusal } from "./refusal.ts";

/**
 * Asks science, and checks the finished answer once: what is out of its domain becomes a refusal at the key it names,
 * and no answer holds a number that is not finite.
 *
 * All numbers of `input` are known to be finite and within their limits here. So where science still meets one that is
 * not, an extreme input has overflowed or come to nothing on the way: that is told of the whole.
 */
export function checked<Answer>(input: object, ask: () => Answer): Answer {
  let answer: Answer;
  try {
    answer = ask();
  } catch (error) {
    if (!(error instanceof OutOfDomain)) throw error;
    throw new Refusal(faultOf(error, input));
  }
  if (!holdsOnlyFinite(answer)) throw new Refusal(overflow);
  return answer;
}

const overflow = { code: "outOfRange", pointer: "", facts: {} };

function faultOf({ code, facts, key }: OutOfDomain, input: unknown): ConstructorParameters<typeof Refusal>[0] {
  const value = valueAt(input, key);
  if (code === "notFinite") return overflow;
  if ((code === "notPositive" || code === "negative") && !(typeof value === "number" && value <= 0)) return overflow;
  return { code, pointer: key === "" ? "" : `/${key}`, facts };
}

/** What stands at a path of keys (`focus/extensionMm`). */
function valueAt(input: unknown, path: string): unknown {
  let value = input;
  for (const key of path.split("/")) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Readonly<Record<string, unknown>>)[key];
  }
  return value;
}

function holdsOnlyFinite(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object" || value === null) return true;
  return Object.values(value).every(holdsOnlyFinite);
}
