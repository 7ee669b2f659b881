import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireNotNegative, requirePositive, requireWithin } from "../errors/require.ts";
import { aimOf } from "./aimOf.ts";
import { curveFrom, curveNames, curvePriors, type WholeCurve, type WholeSettings } from "./curve.ts";
import { developmentOf, logExposureOf } from "./development.ts";
import type { ExpectCurve, ExpectFit, ExpectPrint, ExpectPrintInput } from "./expectTypes.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

/** What is believed of a paper: its curve, how uncertain that is, and how uneven hand and sheets are. */
export interface ExpectBasis {
  readonly basis: ExpectPrint["basis"];
  readonly curve: WholeCurve;
  /** Thirteen by thirteen, on the scale of learning. */
  readonly covariance: readonly (readonly number[])[];
  readonly commonSdStops: number;
  readonly patchSd: number;
}

const FLARE = { coated: 0.02, uncoated: 0.05 };
const EXPOSURE_INDEX_SD_STOPS = 0.7;
const COMMON_SD_STOPS = 0.15;
const PATCH_SD = 0.02;

/** Gathers what is believed from fit, curve, exposure index and priors. Inner helper of the expected print. */
export function expectBasis(input: ExpectPrintInput, settings: WholeSettings, finish: SurfaceInput): ExpectBasis {
  const { curve, fit, paper } = input;
  if (fit !== undefined) {
    if (curve !== undefined) throw new OutOfDomain("twoOfOne", { first: "curve", key: "fit" }, "fit");
    if (paper !== undefined) throw new OutOfDomain("twoOfOne", { first: "fit", key: "paper" }, "paper");
    const { parameters, covariance, timingScale, scatterScale } = requireFit(fit);
    return {
      basis: "fit",
      curve: curveFrom((name) => parameters[name].value),
      covariance: curveNames.map((_, index) => (covariance[index] ?? []).slice(0, curveNames.length)),
      commonSdStops: COMMON_SD_STOPS * timingScale,
      patchSd: PATCH_SD * scatterScale,
    };
  }
  const believed = believedOf(curve ?? {}, input.lensCoating ?? "coated");
  const placed = placedByIndex(believed, input, settings, finish);
  return {
    basis: curve === undefined ? "priors" : "curve",
    curve: placed.curve,
    covariance: placed.sds.map((sd, row) => placed.sds.map((_, column) => (row === column ? sd * sd : 0))),
    commonSdStops: COMMON_SD_STOPS,
    patchSd: PATCH_SD,
  };
}

interface Believed {
  readonly curve: WholeCurve;
  /** On the scale of learning. */
  readonly sds: readonly number[];
}

function believedOf(curve: ExpectCurve, lensCoating: string): Believed {
  if (lensCoating !== "coated" && lensCoating !== "uncoated") {
    throw new OutOfDomain("unknownWord", { lensCoating, choices: Object.keys(FLARE) });
  }
  for (const name of Object.keys(curve)) {
    if (!Object.hasOwn(curvePriors, name)) throw new OutOfDomain("unknownKey", { key: name }, `curve/${name}`);
  }
  const sds: number[] = [];
  const whole = curveFrom((name) => {
    const { mean, sd, least, most } = curvePriors[name];
    const given = curve[name];
    const isBare = typeof given === "number";
    const value = isBare ? given : (given?.value ?? (name === "phi" ? FLARE[lensCoating] : mean));
    requireWithin({ [`curve/${name}${isBare ? "" : "/value"}`]: value }, { least, most });
    if (given !== undefined && !isBare) requireNotNegative({ [`curve/${name}/sd`]: given.sd });
    sds.push(isBare ? 0 : (given?.sd ?? sd));
    return value;
  });
  return { curve: whole, sds };
}

/** Exposure index and x50 are one quantity: the index places the curve where nothing else does. */
function placedByIndex(
  { curve, sds }: Believed,
  { curve: given, paper }: ExpectPrintInput,
  settings: WholeSettings,
  finish: SurfaceInput,
): Believed {
  if (paper === undefined) return { curve, sds };
  const { exposureIndex, exposureIndexSdStops = EXPOSURE_INDEX_SD_STOPS } = paper;
  requirePositive({ "paper/exposureIndex": exposureIndex });
  requireNotNegative({ "paper/exposureIndexSdStops": exposureIndexSdStops });
  if (given?.x50 !== undefined) return { curve, sds };
  const atNought = developmentOf({ ...curve, x50: 0 }, settings, finish);
  const aim = logExposureOf(aimOf(atNought), atNought, "paper/exposureIndex");
  const x50 = Math.log10((0.65 * 12.5) / exposureIndex) - aim;
  return { curve: { ...curve, x50 }, sds: [Math.log10(2) * exposureIndexSdStops, ...sds.slice(1)] };
}

function requireFit(fit: Readonly<Record<string, unknown>>): ExpectFit {
  for (const key of ["parameters", "covariance", "timingScale", "scatterScale"]) {
    if (fit[key] === undefined) throw new OutOfDomain("missingKey", { key }, `fit/${key}`);
  }
  const { parameters, covariance, timingScale, scatterScale } = fit as unknown as ExpectFit;
  requireNumber("fit/timingScale", timingScale);
  requireNumber("fit/scatterScale", scatterScale);
  requirePositive({ "fit/timingScale": timingScale, "fit/scatterScale": scatterScale });
  for (const name of curveNames) {
    const value: unknown = parameters?.[name]?.value;
    if (value === undefined) throw new OutOfDomain("missingKey", { key: name }, `fit/parameters/${name}`);
    requireNumber(`fit/parameters/${name}/value`, value);
    const { least, most, scale } = curvePriors[name];
    // A fit may leave what can be typed in, but not what the number can mean.
    if (scale !== "identity") requirePositive({ [`fit/parameters/${name}/value`]: value });
    if (scale === "logit" || name === "Db") {
      requireWithin(
        { [`fit/parameters/${name}/value`]: value },
        { least: 0, most: name === "Db" ? most * 2 : 1 - least },
      );
    }
  }
  if (!Array.isArray(covariance) || covariance.length < curveNames.length) {
    throw new OutOfDomain("tooFew", { covariance: covariance.length, least: curveNames.length }, "fit/covariance");
  }
  for (const [row] of curveNames.entries()) {
    const line: unknown = covariance[row];
    if (!Array.isArray(line) || line.length < curveNames.length) {
      throw new OutOfDomain("tooFew", { covariance: row, least: curveNames.length }, `fit/covariance/${row}`);
    }
    for (const [column] of curveNames.entries()) requireNumber(`fit/covariance/${row}/${column}`, line[column]);
    requireNotNegative({ [`fit/covariance/${row}/${row}`]: line[row] });
  }
  return { parameters, covariance, timingScale, scatterScale };
}

function requireNumber(key: string, value: unknown): asserts value is number {
  if (typeof value !== "number") throw new OutOfDomain("wrongType", { [key]: value, wanted: "a number" }, key);
  requireFinite({ [key]: value });
}
