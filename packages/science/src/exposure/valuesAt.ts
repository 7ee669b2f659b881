import { OutOfDomain } from "../errors/outOfDomain.ts";

// Checks that name the place of a value by its path. Inner helpers of `plan`; they take positions and build no text unless
// something is wrong, because a whole plan has to be cheap enough to be made again at every key pressed.

/** Above zero and finite. */
export function positiveAt(value: number, path: string, key: string): number {
  if (value > 0 && value < Number.POSITIVE_INFINITY) return value;
  throw new OutOfDomain(Number.isFinite(value) ? "notPositive" : "notFinite", { [key]: value }, joined(path, key));
}

/** Zero or more, and finite. */
export function notNegativeAt(value: number, path: string, key: string): number {
  if (value >= 0 && value < Number.POSITIVE_INFINITY) return value;
  throw new OutOfDomain(Number.isFinite(value) ? "negative" : "notFinite", { [key]: value }, joined(path, key));
}

/** Any finite number. */
export function finiteAt(value: number, path: string, key: string): number {
  if (Number.isFinite(value)) return value;
  throw new OutOfDomain("notFinite", { [key]: value }, joined(path, key));
}

/** The share of light that glass lets through: above 0, at most 1. */
export function transmissionAt(value: number, path: string): number {
  positiveAt(value, path, "transmission");
  if (value <= 1) return value;
  throw new OutOfDomain("transmissionOutOfRange", { transmission: value }, joined(path, "transmission"));
}

/** One of the choices. */
export function wordAt<Word extends string>(word: Word, choices: readonly Word[], path: string, key: string): Word {
  if (choices.includes(word)) return word;
  throw new OutOfDomain("unknownWord", { [key]: word, choices }, joined(path, key));
}

/**
 * The first of `ways` that was given; a second one is one too many.
 *
 * @throws {OutOfDomain} twoOfOne
 */
export function oneWayOf<Way extends string>(
  given: Readonly<Partial<Record<Way, unknown>>>,
  ways: readonly Way[],
  path: string,
): Way | undefined {
  let found: Way | undefined;
  for (const way of ways) {
    if (given[way] === undefined) continue;
    if (found !== undefined) throw new OutOfDomain("twoOfOne", { first: found, key: way }, joined(path, way));
    found = way;
  }
  return found;
}

/** A number computed from sound inputs so extreme that it overflowed or vanished. */
export function reachable(value: number): number {
  if (value > 0 && value < Number.POSITIVE_INFINITY) return value;
  throw new OutOfDomain("outOfRange", {}, "");
}

/** That a key is there at all. */
export function givenAt(value: number | undefined, path: string, key: string): number {
  if (value === undefined) throw missing(path, key);
  return value;
}

export function missing(path: string, key: string, choices: readonly string[] = []): OutOfDomain {
  return new OutOfDomain("missingKey", choices.length === 0 ? {} : { choices }, joined(path, key));
}

function joined(path: string, key: string): string {
  return path === "" ? key : `${path}/${key}`;
}
