import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";

export interface FocalLengthFromDioptresInput {
  readonly dioptres: number;
}

/**
 * Focal length of a spectacle or close-up lens from its power.
 *
 * Formula  f = 1000 / Φ
 * Units    Φ in dioptres (1/m), f in mm.
 * Holds    Φ > 0: only a lens that gathers light makes a picture.
 * Error    trade lenses are ground to steps of ¼ dioptre: ±⅛ at +4 is 3 % of f.
 *
 * @throws {OutOfDomain} notConverging
 * @source dioptre-pages: 1000 divided by the dioptre (seen)
 * @example focalLengthFromDioptres({ dioptres: 3.25 }) // 307.6923077
 */
export function focalLengthFromDioptres({ dioptres }: FocalLengthFromDioptresInput): number {
  requireFinite({ dioptres });
  if (dioptres <= 0) throw new OutOfDomain("notConverging", { dioptres });
  return 1000 / dioptres;
}
