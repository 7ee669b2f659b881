import { type Development, densityAt } from "./development.ts";

export interface DefaultWants {
  /** Of a white in a direct positive, of the dense end in a negative. */
  readonly highlightDensity: number;
  /** Of a black in a direct positive, of the thin end in a negative. */
  readonly shadowDensity: number;
}

/** The white and the black to plan for, of a paper in its baths. Inner helper. */
export function wantsOf(development: Development): DefaultWants {
  const unexposed = densityAt(0, development);
  const exposed = densityAt(1, development);
  if (development.settings.process === "reversal") {
    return { highlightDensity: exposed + 0.07, shadowDensity: unexposed - 0.2 };
  }
  return { highlightDensity: unexposed + 0.9 * (exposed - unexposed), shadowDensity: unexposed + 0.1 };
}
