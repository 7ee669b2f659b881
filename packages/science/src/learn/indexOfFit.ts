import { OutOfDomain } from "../errors/outOfDomain.ts";
import { aimOf } from "../tone/aimOf.ts";
import type { Process } from "../tone/curve.ts";
import { developmentOf, logExposureOf } from "../tone/development.ts";
import { isoOf } from "../tone/isoOf.ts";
import type { FitPaper } from "./fitTypes.ts";
import { curveCovariance, fittedCurve, spread } from "./fittedCurve.ts";
import { curveCount, layPatches } from "./layPatches.ts";
import type { Learnt } from "./learn.ts";
import { printRows, roomFor } from "./printRows.ts";

const CAMERA_EQUATION = 0.65 * 12.5;
/** Density by stop below which no exposure answers for a density. */
const FLAT = 1e-9;

/** The exposure index of a fitted paper in its recipe as written, and how sure it is; `null` where its aim is out of reach. Inner helper. */
export function indexOfFit(learnt: Learnt, process: Process): FitPaper["exposureIndex"] {
  const { campaign, optimum } = learnt;
  const settings = { process, u1: 1, rounds: 2, u2: 1 };
  const curve = fittedCurve(optimum.z);
  const development = developmentOf(curve, settings, { surface: campaign.surface });
  const aim = reached(() => logExposureOf(aimOf(development), development, "curve"));
  if (aim === null) return null;
  const imageLxS = 10 ** aim;
  const light = { sheet: 0, imageLxS, meanLxS: 0, flashS: 0, settings };
  const laid = layPatches(
    [
      { ...light, kind: "image" },
      { ...light, kind: "black" },
    ],
    1,
  );
  const out = roomFor(2);
  const z = new Float64Array(curveCount + 1);
  z.set(optimum.z.subarray(0, curveCount));
  if (!printRows(laid, campaign.surface, z, out)) return null;
  const slope = Math.abs(out.byStop[0] ?? 0);
  if (slope < FLAT) return null;
  // The aim of a negative rises with its thinnest density.
  const isNegative = process === "negative";
  const row = Float64Array.from(
    { length: curveCount },
    (_, index) => (out.rows[index] ?? 0) - (isNegative ? (out.rows[curveCount + index] ?? 0) : 0),
  );
  return { value: CAMERA_EQUATION / imageLxS, sdStops: Math.sqrt(spread(curveCovariance(learnt), row)) / slope };
}

/** What a maker would quote of a fitted negative. */
export function isoOfFit({ campaign, optimum }: Learnt): FitPaper["iso"] {
  return reached(() => isoOf(fittedCurve(optimum.z), { surface: campaign.surface }));
}

/** A paper that does not reach a tone is an answer here. */
function reached<Answer>(ask: () => Answer): Answer | null {
  try {
    return ask();
  } catch (error) {
    if (error instanceof OutOfDomain) return null;
    throw error;
  }
}
