import { OutOfDomain } from "../errors/index.ts";
import { ATOMIC_WEIGHTS } from "./atomicWeights.ts";

/** How many atoms of each element a formula holds. */
export type Atoms = ReadonlyMap<string, number>;

const TOKEN = /([A-Z][a-z]?)|(\()|(\))|([.·*])/y;
const COUNT = /\d{1,3}/y;

/** Reads "Na2SO3.7H2O" or "(NH4)2S2O3" into atoms. Inner helper of the molar masses. */
export function readFormula(key: string, text: string): Atoms {
  const refuse = (at: number): never => {
    throw new OutOfDomain("unreadable", { text, at, wanted: "a chemical formula" }, key);
  };
  const atoms = new Map<string, number>();
  let at = 0;
  const count = (): number => {
    COUNT.lastIndex = at;
    const digits = COUNT.exec(text)?.[0];
    if (digits === undefined) return 1;
    if (Number(digits) === 0) refuse(at);
    at += digits.length;
    return Number(digits);
  };
  const add = (into: Map<string, number>, element: string, times: number) =>
    into.set(element, (into.get(element) ?? 0) + times);
  const group = (isInside: boolean): Map<string, number> => {
    const found = new Map<string, number>();
    while (at < text.length) {
      TOKEN.lastIndex = at;
      const token = TOKEN.exec(text);
      if (token === null) return refuse(at);
      const [sign, element, open, close] = token;
      if (close !== undefined && isInside && found.size > 0) return found;
      if (element !== undefined) {
        if (!ATOMIC_WEIGHTS.has(element)) return refuse(at);
        at += sign.length;
        add(found, element, count());
      } else if (open !== undefined && !isInside) {
        at += sign.length;
        const inner = group(true);
        at += 1;
        const times = count();
        for (const [name, share] of inner) add(found, name, share * times);
      } else if (found.size > 0 && !isInside && close === undefined) return found;
      else return refuse(at);
    }
    return isInside || found.size === 0 ? refuse(at) : found;
  };
  for (let isFirst = true; isFirst || at < text.length; isFirst = false) {
    if (!isFirst) at += 1;
    const times = isFirst ? 1 : count();
    for (const [name, share] of group(false)) add(atoms, name, share * times);
  }
  return /[.·*]$/.test(text) ? refuse(text.length) : atoms;
}

/** The atoms of a salt without its crystal water, as one text that two spellings of it share. Inner helper. */
export function dryAtoms(key: string, text: string): string {
  readFormula(key, text);
  const dry = text.replace(/[.·*]\d*H2O$/, "");
  return [...readFormula(key, dry)]
    .map(([element, count]) => element + count)
    .sort()
    .join(" ");
}
