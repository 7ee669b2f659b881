import { OutOfDomain } from "@captray/science/errors";
import { type Estimate, type PlanFocus, planDefaults } from "@captray/science/exposure";
import {
  extension,
  magnificationFromDistance,
  magnificationFromExtension,
  magnificationFromImageSize,
  magnificationFromTotal,
  magnificationFromTravel,
  subjectDistance,
} from "@captray/science/optics";
import type { Camera, Focus } from "../records/index.ts";
import type { Kit } from "./kit.ts";
import { planFocusOf } from "./planInputOf.ts";

/** How the camera stands, in every way it can be said. A distance is null for a distant subject. */
export interface FocusFound {
  readonly kind: "focus";
  /** The way it was said; nothing said counts as distant. */
  readonly by: Focus["by"];
  readonly focalLengthMm: number;
  readonly magnification: Estimate;
  /** Board to ground glass, as a ruler measures it. */
  readonly extensionMm: Estimate;
  readonly travelMm: Estimate;
  readonly subjectDistanceMm: Estimate | null;
  readonly totalDistanceMm: Estimate | null;
  /** Against what the bellows of the camera allow; nothing where they are not known. */
  readonly reach: "within" | "tooShort" | "tooLong" | undefined;
}

export type FocusOf =
  | FocusFound
  | { readonly kind: "pinhole"; readonly extensionMm: number | undefined; readonly reach: FocusFound["reach"] }
  | { readonly kind: "missing"; readonly missing: "lens" | "focalLength" }
  | { readonly kind: "refused"; readonly fault: OutOfDomain };

/**
 * How the camera stands to the subject: from the one way it was said, all the others with their doubt.
 *
 * The doubt is the one the ledger charges for the extension, and that of a measured focal length. What the bellows cannot do is said, not
 * refused. A focus that cannot be (an extension shorter than the focal length) is an answer, so that a screen keeps its other parts.
 */
export function focusOf({
  scene,
  lens,
  camera,
}: Pick<Kit, "scene" | "lens"> & { readonly camera?: Camera | undefined }): FocusOf {
  if (lens === undefined) return { kind: "missing", missing: "lens" };
  if (lens.sort === "pinhole") {
    const extensionMm = scene.focus?.by === "extension" ? scene.focus.extensionMm.value : undefined;
    return { kind: "pinhole", extensionMm, reach: reachOf(camera, extensionMm) };
  }
  const focalLengthMm = lens.measuredFocalLengthMm?.value ?? lens.markedFocalLengthMm?.value;
  if (focalLengthMm === undefined) return { kind: "missing", missing: "focalLength" };
  try {
    const said = planFocusOf(scene, lens);
    const m = said === undefined ? 0 : magnificationBy(said, focalLengthMm);
    const pupilRatio = lens.pupilRatio?.value ?? planDefaults.lens.pupilRatio;
    const sdStops = scene.focusSdStops ?? planDefaults.focus.sdStops;
    // From stops = 2 log2(1 + m/P): what the ledger's doubt is in magnification.
    const mSd = m === 0 ? 0 : (sdStops * Math.LN2 * (pupilRatio + m)) / 2;
    const fSd = lens.measuredFocalLengthMm?.sd ?? 0;
    const infinity = lens.infinityExtensionMm ?? { value: focalLengthMm, sd: fSd };
    const travelMm = { value: extension({ focalLengthMm, magnification: m }) - focalLengthMm, sd: focalLengthMm * mSd };
    const extensionMm = {
      value: scene.focus?.by === "extension" ? scene.focus.extensionMm.value : infinity.value + travelMm.value,
      sd: Math.hypot(travelMm.sd, infinity.sd),
    };
    const hiatusMm = said?.hiatusMm ?? 0;
    const u = m === 0 ? null : subjectDistance({ focalLengthMm, magnification: m });
    const found: FocusFound = {
      kind: "focus",
      by: scene.focus?.by ?? "distant",
      focalLengthMm,
      magnification: { value: m, sd: mSd },
      extensionMm,
      travelMm,
      subjectDistanceMm:
        u === null ? null : { value: u, sd: Math.hypot((focalLengthMm / m ** 2) * mSd, (1 + 1 / m) * fSd) },
      totalDistanceMm:
        u === null
          ? null
          : {
              value: u + focalLengthMm + travelMm.value + hiatusMm,
              sd: Math.hypot(focalLengthMm * Math.abs(1 - 1 / m ** 2) * mSd, (2 + m + 1 / m) * fSd),
            },
      reach: reachOf(camera, extensionMm.value),
    };
    if (!allFinite(found)) throw new OutOfDomain("outOfRange", {}, "focus");
    return found;
  } catch (fault) {
    if (fault instanceof OutOfDomain) return { kind: "refused", fault };
    throw fault;
  }
}

function magnificationBy(said: PlanFocus, focalLengthMm: number): number {
  if (said.magnification !== undefined) {
    if (said.magnification < 0) throw new OutOfDomain("negative", { magnification: said.magnification });
    return said.magnification;
  }
  if (said.extensionMm !== undefined)
    return magnificationFromExtension({ focalLengthMm, extensionMm: said.extensionMm });
  if (said.travelMm !== undefined) return magnificationFromTravel({ focalLengthMm, travelMm: said.travelMm });
  if (said.imageSizeMm !== undefined && said.subjectSizeMm !== undefined)
    return magnificationFromImageSize({ imageSizeMm: said.imageSizeMm, subjectSizeMm: said.subjectSizeMm });
  if (said.subjectDistanceMm !== undefined)
    return magnificationFromDistance({ focalLengthMm, subjectDistanceMm: said.subjectDistanceMm });
  const { totalDistanceMm = 0, hiatusMm = 0, larger = false } = said;
  return magnificationFromTotal({ focalLengthMm, totalDistanceMm, hiatusMm, larger });
}

function reachOf(camera: Camera | undefined, extensionMm: number | undefined): FocusFound["reach"] {
  const limits = camera?.extensionLimits;
  if (limits === undefined || extensionMm === undefined) return undefined;
  if (extensionMm < limits.leastMm) return "tooShort";
  return extensionMm > limits.mostMm ? "tooLong" : "within";
}

/** Extreme figures can overflow anywhere. */
function allFinite(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  return typeof value !== "object" || value === null || Object.values(value).every(allFinite);
}
