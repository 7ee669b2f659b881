import { OutOfDomain } from "@captray/science/errors";
import { flashRateFromDensities, flashRateFromStrip, flashThreshold } from "@captray/science/tone";
import type { Test } from "../records/index.ts";
import { flashPaperOf } from "./flashPaperOf.ts";
import { flashSteps } from "./flashSteps.ts";
import type { FindsRecords } from "./kitOf.ts";

interface Found {
  /** lx·s a second at the paper. */
  readonly rateLx: number;
  /** Doubt of its natural logarithm; the second without the paper's own, for seconds on this paper. */
  readonly sdLn: number;
  readonly stripSdLn: number;
}

export type FlashStripAnswer =
  /** Nobody has said yet what shows. */
  | { readonly kind: "open" }
  | ({ readonly kind: "seen"; readonly lastUnseenS: number; readonly firstSeenS: number } & Found)
  | ({ readonly kind: "measured"; readonly used: number } & Found)
  /** The shortest step shows already: the lamp gives this much a second at least. */
  | { readonly kind: "allShow"; readonly firstS: number; readonly atLeastLx: number }
  /** Not even the longest shows. */
  | { readonly kind: "noneShow"; readonly lastS: number; readonly atMostLx: number }
  | { readonly kind: "refused"; readonly fault: OutOfDomain };

/**
 * What a flash strip says of its lamp: from densities where they were measured, else from the first step that shows.
 *
 * A strip whose shortest step shows, or whose longest does not, gives a bound and no seconds.
 */
export function flashStripAnswer({
  notebook,
  test,
}: {
  readonly notebook: FindsRecords;
  readonly test: Test;
}): FlashStripAnswer {
  const steps = flashSteps({ test });
  const paper = flashPaperOf(notebook, test);
  const bare = steps.find(({ plannedS }) => plannedS === 0);
  const lit = steps.filter(({ timeS }) => timeS > 0);
  try {
    const measured = lit.flatMap(({ timeS, density }) => (density === undefined ? [] : [{ timeS, density }]));
    if (bare?.density !== undefined && measured.length > 0) {
      return { kind: "measured", ...flashRateFromDensities({ ...paper, bareDensity: bare.density, steps: measured }) };
    }
    if (test.leastSeen === undefined || lit.length === 0) return { kind: "open" };
    const { exposureLxS, sdLn, eyeSdLn } = flashThreshold(paper);
    const firstSeen = lit[test.leastSeen - 1];
    if (test.leastSeen === 0 || firstSeen === undefined) {
      const lastS = lit.at(-1)?.timeS ?? 1;
      return { kind: "noneShow", lastS, atMostLx: exposureLxS / lastS };
    }
    const lastUnseen = lit[test.leastSeen - 2];
    if (lastUnseen === undefined) {
      return { kind: "allShow", firstS: firstSeen.timeS, atLeastLx: exposureLxS / firstSeen.timeS };
    }
    const between = { lastUnseenS: lastUnseen.timeS, firstSeenS: firstSeen.timeS };
    return {
      kind: "seen",
      ...between,
      ...flashRateFromStrip({ ...between, thresholdLxS: exposureLxS, thresholdSdLn: sdLn, eyeSdLn }),
    };
  } catch (fault) {
    if (fault instanceof OutOfDomain) return { kind: "refused", fault };
    throw fault;
  }
}
