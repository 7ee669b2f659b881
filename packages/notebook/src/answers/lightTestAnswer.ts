import { safelightTime } from "@captray/science/process";
import type { Test } from "../records/index.ts";
import { type LightTestStep, lightTestSteps } from "./lightTestSteps.ts";

/** Where the light came before the light grey, after it, or onto paper that had none. */
export type LightSide = "before" | "after" | "alone";

export type LightTestAnswer =
  /** Nobody has said yet what shows on these. */
  | { readonly kind: "open"; readonly missing: readonly LightSide[] }
  /** Even the shortest time shows. */
  | { readonly kind: "notSafe"; readonly side: LightSide; readonly firstS: number }
  | {
      readonly kind: "safe";
      readonly by: "eye" | "densities";
      /** The whole of it, before and after the exposure together; never longer than was tried. */
      readonly safeS: number;
      /** Half of it. */
      readonly adviseS: number;
      /** Which of them shows it first. */
      readonly side: LightSide;
      /** Whether a change was seen at all: else nothing is known beyond the longest time. */
      readonly reached: boolean;
      readonly longestS: number;
    };

interface SideAnswer {
  readonly side: LightSide;
  readonly by: "eye" | "densities";
  readonly safeS: number;
  readonly reached: boolean;
}

/** Doubt of the difference of two bands that touch, each read as a mean over its area: assumed. */
const differenceSd = 0.005;

/**
 * How long a light is safe, from a test in bands: by densities where they were measured, else by the first band that shows.
 *
 * The shortest of before, after and alone holds, because a sheet has light in all three ways. Half of it is advised: no
 * light is safe for ever, and quality suffers before fog is seen.
 */
export function lightTestAnswer({ test }: { readonly test: Test }): LightTestAnswer {
  const steps = lightTestSteps({ test });
  const lit = steps.filter(({ timeS }) => timeS > 0);
  const longestS = lit.at(-1)?.timeS ?? 0;
  const seen = { before: test.seenBefore, after: test.seenAfter, alone: test.seenAlone };
  const told = (["before", "after", "alone"] as const).map((side) => ({
    side,
    answer: byDensities(test, steps, side) ?? byEye(lit, side, seen[side]),
  }));
  const missing = told.filter(({ side, answer }) => answer === undefined && side !== "alone").map(({ side }) => side);
  // A light that shows on one of them is not safe, whatever the others say.
  const shownFirst = told.find(({ answer }) => answer?.safeS === 0);
  if (shownFirst !== undefined) return { kind: "notSafe", side: shownFirst.side, firstS: lit[0]?.timeS ?? 0 };
  if (missing.length > 0 || lit.length === 0) return { kind: "open", missing };
  const [least] = told.flatMap(({ answer }) => answer ?? []).sort((one, other) => one.safeS - other.safeS);
  if (least === undefined) return { kind: "open", missing: ["before", "after"] };
  const { by, safeS, side } = least;
  const reached = told.some(({ answer }) => answer?.reached === true);
  return { kind: "safe", by, safeS, adviseS: safeS / 2, side, reached, longestS };
}

function byEye(lit: readonly LightTestStep[], side: LightSide, first: number | undefined): SideAnswer | undefined {
  if (first === undefined) return undefined;
  const safeS = first === 0 ? lit.at(-1)?.timeS : first === 1 ? 0 : lit[first - 2]?.timeS;
  return { side, by: "eye", safeS: safeS ?? 0, reached: first > 0 };
}

function byDensities(test: Test, steps: readonly LightTestStep[], side: LightSide): SideAnswer | undefined {
  if (side === "alone") return undefined;
  const read = ({ densityBefore, densityAfter }: LightTestStep) => (side === "before" ? densityBefore : densityAfter);
  const covered = steps.find(({ timeS }) => timeS === 0);
  const bare = covered && read(covered);
  // What light does to a direct positive is the other way round: it grows lighter.
  const sign = test.result === "positive" ? -1 : 1;
  const fog = steps.flatMap((step) => {
    const density = read(step);
    return step.timeS > 0 && density !== undefined && bare !== undefined
      ? [{ timeS: step.timeS, change: sign * (density - bare) }]
      : [];
  });
  if (fog.length === 0) return undefined;
  const { safeS } = safelightTime({
    timesS: fog.map(({ timeS }) => timeS),
    fogDensity: fog.map(({ change }) => change),
    fogSd: fog.map(() => differenceSd),
  });
  return { side, by: "densities", safeS, reached: safeS < Math.max(...fog.map(({ timeS }) => timeS)) };
}
