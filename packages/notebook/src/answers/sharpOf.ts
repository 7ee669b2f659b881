import { OutOfDomain } from "@captray/science/errors";
import type { Estimate } from "@captray/science/exposure";
import {
  type ActinicFocusShift,
  actinicFocusShift,
  circleOfConfusion,
  covers,
  depthOfField,
  falloffStops,
  fNumber as fNumberOf,
  hyperfocalDistance,
  largestShift,
} from "@captray/science/optics";
import type { Camera, Lens, Scene } from "../records/index.ts";
import { focusOf } from "./focusOf.ts";
import type { Kit } from "./kit.ts";
import { apertureOf } from "./planInputOf.ts";

/** The widest disc for a contact print in the hand: five pairs of lines a millimetre at 25 cm. */
const inTheHandMm = 0.2;

export interface Sharp {
  readonly kind: "sharp";
  readonly fNumber: number;
  readonly confusionMm: number;
  readonly confusionBy: "format" | "inTheHand" | "typed";
  readonly nearMm: Estimate;
  /** null: to the horizon. */
  readonly farMm: Estimate | null;
  readonly focusMm: number | null;
  readonly format: Format | undefined;
  /** How the circle of the lens lies over the sheet; nothing where one of them is not known. */
  readonly covered:
    | {
        readonly circleMm: number;
        readonly covers: boolean;
        /** How far the lens may be shifted along the sides; nothing where it does not cover. */
        readonly shiftMm: { readonly alongWidth: number; readonly alongHeight: number } | undefined;
      }
    | undefined;
  readonly cornerStops: number | undefined;
  /** How much subject the sheet takes in; nothing for a distant one. */
  readonly takesInMm: Format | undefined;
  readonly chemicalFocus: ChemicalFocus;
}

export interface Format {
  readonly widthMm: number;
  readonly heightMm: number;
}

export type ChemicalFocus =
  | ({ readonly kind: "push" } & ActinicFocusShift)
  /** Brings blue and yellow to one focus, or nobody said that it is a single lens. */
  | { readonly kind: "none" }
  /** A single lens before a paper or filter that this rule does not fit. */
  | { readonly kind: "otherLight" };

export type SharpOf =
  | Sharp
  | { readonly kind: "missing"; readonly missing: "lens" | "focalLength" | "aperture" }
  | { readonly kind: "pinhole" }
  | { readonly kind: "refused"; readonly fault: OutOfDomain };

/**
 * From where to where the subject is sharp at the stop in use, and whether the lens lights the whole sheet.
 *
 * What passes for a point is taken from the diagonal of the picture, unless the scene says otherwise; without a
 * format it is that of a print in the hand. The doubt of the two distances is that
 * of the focus.
 */
export function sharpOf(
  kit: Pick<Kit, "scene" | "lens" | "paperBox"> & { readonly camera?: Camera | undefined },
): SharpOf {
  const focus = focusOf(kit);
  if (focus.kind !== "focus") return focus.kind === "pinhole" ? { kind: "pinhole" } : focus;
  const { scene, lens, paperBox, camera } = kit;
  const { focalLengthMm, magnification: m } = focus;
  const format = camera?.format ?? scene.format ?? paperBox?.size;
  const aperture = lens && apertureOf(lens, scene);
  if (lens === undefined || aperture === undefined) return { kind: "missing", missing: "aperture" };
  try {
    const fNumber = aperture.fNumber ?? fNumberOf({ focalLengthMm, diameterMm: aperture.diameterMm ?? 0 });
    const confusion = confusionOf(scene, format);
    const pupilRatio = lens.pupilRatio?.value ?? 1;
    const at = (magnification: number) => {
      if (magnification > 0)
        return depthOfField({ focalLengthMm, fNumber, magnification, confusionMm: confusion.mm, pupilRatio });
      // Set to infinity the near limit is the hyperfocal distance less its focal length, from the entrance pupil.
      const nearMm = hyperfocalDistance({ focalLengthMm, fNumber, confusionMm: confusion.mm });
      return { nearMm: nearMm - focalLengthMm / pupilRatio, farMm: null };
    };
    const mid = at(m.value);
    const [less, more] = [at(Math.max(m.value - m.sd, m.value / 10)), at(m.value + m.sd)];
    const circleMm = lens.imageCircleMm === undefined ? undefined : lens.imageCircleMm * (1 + m.value);
    return {
      kind: "sharp",
      fNumber,
      confusionMm: confusion.mm,
      confusionBy: confusion.by,
      nearMm: { value: mid.nearMm, sd: Math.abs(less.nearMm - more.nearMm) / 2 },
      farMm:
        mid.farMm === null
          ? null
          : {
              value: mid.farMm,
              sd:
                less.farMm === null || more.farMm === null
                  ? mid.farMm - (more.farMm ?? mid.nearMm)
                  : Math.abs(less.farMm - more.farMm) / 2,
            },
      focusMm: focus.subjectDistanceMm?.value ?? null,
      format,
      covered: circleMm === undefined || format === undefined ? undefined : coveredBy(circleMm, format),
      cornerStops:
        format &&
        falloffStops({
          imageRadiusMm: Math.hypot(format.widthMm, format.heightMm) / 2,
          focalLengthMm,
          magnification: m.value,
          pupilRatio,
        }),
      takesInMm:
        format === undefined || m.value === 0
          ? undefined
          : { widthMm: format.widthMm / m.value, heightMm: format.heightMm / m.value },
      chemicalFocus: chemicalFocusOf(kit, lens, { focalLengthMm, magnification: m.value, fNumber, pupilRatio }),
    };
  } catch (fault) {
    if (fault instanceof OutOfDomain) return { kind: "refused", fault };
    throw fault;
  }
}

function confusionOf({ confusion }: Scene, format: Format | undefined) {
  if (confusion?.by === "typed") return { by: "typed", mm: confusion.confusionMm.value } as const;
  if (confusion?.by === "inTheHand" || format === undefined) return { by: "inTheHand", mm: inTheHandMm } as const;
  return { by: "format", mm: circleOfConfusion(format) } as const;
}

function coveredBy(imageCircleMm: number, { widthMm, heightMm }: Format): Sharp["covered"] {
  if (!covers({ imageCircleMm, widthMm, heightMm }))
    return { circleMm: imageCircleMm, covers: false, shiftMm: undefined };
  return {
    circleMm: imageCircleMm,
    covers: true,
    shiftMm: {
      alongWidth: largestShift({ imageCircleMm, alongMm: widthMm, acrossMm: heightMm }),
      alongHeight: largestShift({ imageCircleMm, alongMm: heightMm, acrossMm: widthMm }),
    },
  };
}

function chemicalFocusOf(
  { scene, paperBox }: Pick<Kit, "scene" | "paperBox">,
  lens: Lens,
  at: {
    readonly focalLengthMm: number;
    readonly magnification: number;
    readonly fNumber: number;
    readonly pupilRatio: number;
  },
): ChemicalFocus {
  const { chemicalFocus } = lens;
  if (chemicalFocus?.correction !== "single") return { kind: "none" };
  const coloured = scene.filters.some(({ filter }) => filter !== undefined && filter.by !== "neutralDensity");
  if (paperBox?.sensitivity === "orthochromatic" || coloured || scene.contrastFilter !== undefined)
    return { kind: "otherLight" };
  const share = chemicalFocus.focusShare;
  return {
    kind: "push",
    ...actinicFocusShift({
      ...at,
      correction: "single",
      ...(share && { focusShare: share.value, focusShareSd: share.sd }),
    }),
  };
}
