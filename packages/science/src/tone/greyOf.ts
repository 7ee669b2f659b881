import type { WholeCurve, WholeSettings } from "./curve.ts";
import { type Development, developmentOf } from "./development.ts";
import { printOf } from "./paperFace.ts";
import { lightOf, type PatchLight } from "./patchOf.ts";
import { shareAt } from "./richards.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

/** What keeps a white from being paper white, besides the base. */
export interface GreyCauses {
  readonly underexposed: number;
  readonly firstDevelopment: number;
  readonly bleach: number;
  readonly stain: number;
}

/** A grey taken apart. */
export interface GreyParts {
  readonly development: Development;
  /** Share of the exposed halide that is developable. */
  readonly share: number;
  readonly parts: GreyCauses;
  readonly layerDensity: number;
  readonly density: number;
  /** Over the base. */
  readonly excess: number;
  readonly shares: GreyCauses;
}

/** Takes a tone of a direct positive apart. Inner helper: the curve need not be one that may be typed in. */
export function greyOf(curve: WholeCurve, settings: WholeSettings, light: PatchLight, finish: SurfaceInput): GreyParts {
  const development = developmentOf(curve, settings, finish);
  const { face, second, complete, fog, kept, x50 } = development;
  const { share } = shareAt(Math.log10(lightOf(light, curve).all), { x50, width: curve.width, q: curve.q });
  const parts: GreyCauses = {
    underexposed: second * (complete - fog) * (1 - share) + 0,
    firstDevelopment: second * (1 - complete),
    bleach: curve.S * (fog + (complete - fog) * share) * kept,
    stain: curve.s,
  };
  const layerDensity = parts.underexposed + parts.firstDevelopment + parts.bleach + parts.stain;
  const { density } = printOf(layerDensity, face);
  const excess = density - curve.Db;
  const shares = causesFrom((cause) => (excess * parts[cause]) / layerDensity + 0);
  return { development, share, parts, layerDensity, density, excess, shares };
}

/** What curing one cause alone would take off the density. */
export function gainsOf({ development, parts, layerDensity, density }: GreyParts): GreyCauses {
  const { face } = development;
  return causesFrom((cause) => density - printOf(Math.max(0, layerDensity - parts[cause]), face).density);
}

/** One number for each cause. */
export function causesFrom<Value>(of: (cause: keyof GreyCauses) => Value): {
  readonly [Cause in keyof GreyCauses]: Value;
} {
  return {
    underexposed: of("underexposed"),
    firstDevelopment: of("firstDevelopment"),
    bleach: of("bleach"),
    stain: of("stain"),
  };
}
