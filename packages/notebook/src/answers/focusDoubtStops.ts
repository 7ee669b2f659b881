import type { Focus, Lens } from "../records/index.ts";
import { focusOf } from "./focusOf.ts";
import type { Kit } from "./kit.ts";

// How well things are measured beside a camera, as one standard deviation: common practice, measured by nobody here.
const rulerMm = 1;
const tapeShare = 0.01;
const tapeMm = 5;
const toldShare = 0.02;

/**
 * How far the ledger's line of the extension may be out, in stops (one standard deviation), by the way the focus was said.
 *
 * Nothing where the ledger's own default is the better guess: for a ruler from the board, while only the marked focal length is known, the doubt
 * of that length is what counts; and for a distant subject there is none.
 */
export function focusDoubtStops({
  scene,
  lens,
  focus,
}: Pick<Kit, "scene" | "lens"> & { readonly focus: Focus }): number | undefined {
  const found = focusOf({ scene: { ...scene, focus }, lens });
  if (found.kind !== "focus" || found.magnification.value === 0) return undefined;
  const m = found.magnification.value;
  const mSd = magnificationSd(focus, m, found.focalLengthMm, lens);
  if (mSd === undefined) return undefined;
  const sdStops = (2 * mSd) / (Math.LN2 * ((lens?.pupilRatio?.value ?? 1) + m));
  return Number.isFinite(sdStops) ? sdStops : undefined;
}

function magnificationSd(focus: Focus, m: number, focalLengthMm: number, lens: Lens | undefined): number | undefined {
  switch (focus.by) {
    case "imageSize":
      return m * Math.hypot(rulerMm / focus.imageSizeMm.value, tapeShare);
    case "magnification":
      return m * toldShare;
    // From u = f (1 + 1/m): dm = m²/f du; of the whole distance, T = f (2 + m + 1/m), near 1:1 without a limit.
    case "subjectDistance":
      return (m ** 2 / focalLengthMm) * tapeOf(focus.subjectDistanceMm.value);
    case "totalDistance":
      return Math.min(m / 2, (m ** 2 / (focalLengthMm * Math.abs(1 - m ** 2))) * tapeOf(focus.totalDistanceMm.value));
    case "extension":
    case "travel": {
      const infinitySd = lens?.infinityExtensionMm?.sd;
      const lengthSd = lens?.measuredFocalLengthMm?.sd;
      if (infinitySd === undefined || lengthSd === undefined) return undefined;
      return Math.hypot(rulerMm, infinitySd, m * lengthSd) / focalLengthMm;
    }
    case "distant":
      return undefined;
  }
}

function tapeOf(distanceMm: number): number {
  return Math.hypot(tapeMm, tapeShare * distanceMm);
}
