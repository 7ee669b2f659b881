import { chemistryFormulas } from "./chemistry.ts";
import { exposureFormulas } from "./exposure.ts";
import type { Formula } from "./formula.ts";
import { learnFormulas } from "./learn.ts";
import { lightFormulas } from "./light.ts";
import { measureFormulas } from "./measure.ts";
import { notationFormulas } from "./notation.ts";
import { opticsFormulas } from "./optics.ts";
import { processFormulas } from "./process.ts";
import { toneFormulas } from "./tone.ts";

/** Every number of science that the terminal offers, folder by folder. */
export const allFormulas: readonly Formula[] = [
  ...opticsFormulas,
  ...lightFormulas,
  ...notationFormulas,
  ...toneFormulas,
  ...exposureFormulas,
  ...learnFormulas,
  ...chemistryFormulas,
  ...processFormulas,
  ...measureFormulas,
];

const byName = new Map(allFormulas.map((formula) => [formula.name, formula]));

/** The formula of a name; `undefined` where there is none. */
export function formulaNamed(name: string): Formula | undefined {
  return byName.get(name);
}
