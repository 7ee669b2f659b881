import { OutOfDomain } from "@captray/science/errors";
import { focalLengthFromTwo, magnificationFromDistance, magnificationFromImageSize } from "@captray/science/optics";
import { doubtOf, type Measured } from "./doubtOf.ts";

/** One setting of the camera: where the board stood, and how large a thing of known size was drawn. */
export interface ImageAt {
  readonly extensionMm: number;
  /** Left out for a subject so far off that it counts as infinity. */
  readonly size?: { readonly imageMm: number; readonly subjectMm: number } | undefined;
}

export type FocalLengthAsked =
  | {
      readonly by: "infinity";
      readonly extensionMm: number;
      /** How far off the subject was; without it infinitely far. */
      readonly subjectDistanceMm?: number | undefined;
      readonly rulerSdMm?: number | undefined;
    }
  | {
      readonly by: "twoSizes";
      readonly first: ImageAt;
      readonly second: ImageAt;
      readonly rulerSdMm?: number | undefined;
    };

export type MeasuredFocalLength =
  | {
      readonly kind: "found";
      readonly focalLengthMm: Measured;
      /** Where the board stands for a distant subject, from the same mark. */
      readonly infinityExtensionMm: Measured;
    }
  | { readonly kind: "refused"; readonly fault: OutOfDomain };

/** A rule held to board or ground glass, read to half a millimetre: common practice, no source. */
const rulerSdMm = 0.5;
/** How far the middle of an unknown lens may lie from its board, as a share of the focal length: common practice, no source. */
const middleShare = 0.02;

/**
 * The focal length of a lens as it can be measured in the camera, with the doubt of the ruler.
 *
 * At infinity the board's distance is the focal length only where the middle of the lens lies in the board, so that doubt goes along; from
 * two sizes it does not matter where the middle lies. Either also says where the board stands for a distant subject.
 */
export function measuredFocalLengthOf(asked: FocalLengthAsked): MeasuredFocalLength {
  const sd = asked.rulerSdMm ?? rulerSdMm;
  try {
    return asked.by === "infinity" ? atInfinity(asked, sd) : fromTwoSizes(asked, sd);
  } catch (fault) {
    if (fault instanceof OutOfDomain) return { kind: "refused", fault };
    throw fault;
  }
}

function atInfinity(asked: Extract<FocalLengthAsked, { by: "infinity" }>, sd: number): MeasuredFocalLength {
  const { extensionMm, subjectDistanceMm } = asked;
  // 1/f = 1/u + 1/v; the distance of a far subject needs no doubt of its own.
  const focalOf = (v: number) =>
    subjectDistanceMm === undefined ? v : (subjectDistanceMm * v) / (subjectDistanceMm + v);
  const focal = doubtOf({ from: { v: { value: extensionMm, sd } }, work: ({ v }) => focalOf(v) });
  // Refuses a subject that lies nearer than the lens could draw it.
  if (subjectDistanceMm !== undefined) magnificationFromDistance({ focalLengthMm: focal.value, subjectDistanceMm });
  return {
    kind: "found",
    focalLengthMm: { value: focal.value, sd: Math.hypot(focal.sd, middleShare * focal.value) },
    infinityExtensionMm: focal,
  };
}

function fromTwoSizes(asked: Extract<FocalLengthAsked, { by: "twoSizes" }>, sd: number): MeasuredFocalLength {
  const { first, second } = asked;
  const size = (at: ImageAt, which: "imageMm" | "subjectMm") => ({
    value: at.size?.[which] ?? 0,
    sd: at.size === undefined ? 0 : sd,
  });
  const from = {
    v1: { value: first.extensionMm, sd },
    v2: { value: second.extensionMm, sd },
    image1: size(first, "imageMm"),
    image2: size(second, "imageMm"),
    subject1: size(first, "subjectMm"),
    subject2: size(second, "subjectMm"),
  };
  type Values = Readonly<Record<keyof typeof from, number>>;
  const magnification = (at: ImageAt, imageSizeMm: number, subjectSizeMm: number) =>
    at.size === undefined ? 0 : magnificationFromImageSize({ imageSizeMm, subjectSizeMm });
  const focalOf = ({ v1, v2, image1, image2, subject1, subject2 }: Values) =>
    focalLengthFromTwo({
      firstExtensionMm: v1,
      firstMagnification: magnification(first, image1, subject1),
      secondExtensionMm: v2,
      secondMagnification: magnification(second, image2, subject2),
    });
  const infinityOf = (values: Values) =>
    values.v1 - focalOf(values) * magnification(first, values.image1, values.subject1);
  const focalLengthMm = doubtOf({ from, work: focalOf });
  return { kind: "found", focalLengthMm, infinityExtensionMm: doubtOf({ from, work: infinityOf }) };
}
