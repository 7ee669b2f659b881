import type { FocalLengthAsked, ImageAt, MeasuredFocalLength } from "@captray/notebook/answers";
import type { FieldSet, Json, Lens } from "@captray/notebook/records";
import { choice, mm } from "../form/fields.ts";
import type { FormPart, Texts } from "../form/formTypes.ts";
import { valueIn } from "../form/fromTexts.ts";
import { readMm } from "../form/readers.ts";

/** What is asked for either way of measuring a focal length. */
export function focalParts(texts: Texts): readonly FormPart[] {
  const way: FormPart = {
    head: "How",
    fields: [
      choice("way", "How you measure", [
        { value: "twoSizes", name: "two sizes", detail: "surest" },
        { value: "infinity", name: "a far subject", detail: "quickest" },
      ]),
    ],
  };
  if (texts.way === "infinity") {
    return [
      way,
      {
        head: "A far subject",
        fields: [
          mm("v1", "Board to ground glass", { hint: "212" }),
          mm("away", "How far off it is", { aside: "in m: 200 m; empty where it is farther than you can tell" }),
        ],
        says: ["Focus on something at least a hundred focal lengths off: the far bank, a chimney."],
      },
    ];
  }
  return [
    way,
    {
      head: "First: small on the glass",
      aside: "far from the camera",
      fields: [
        mm("v1", "Board to ground glass, first", { hint: "221" }),
        mm("image1", "Its length on the glass, first", { hint: "50", aside: "empty for a far subject" }),
        mm("subject1", "Its true length, first", { hint: "1000" }),
      ],
      says: ["Put up a stick or a door of known length, focus, and measure it on the ground glass."],
    },
    {
      head: "Second: large on the glass",
      aside: "near the camera",
      fields: [
        mm("v2", "Board to ground glass, second", { hint: "305" }),
        mm("image2", "Its length on the glass, second", { hint: "90" }),
        mm("subject2", "Its true length, second", { hint: "200" }),
      ],
      says: ["The farther apart the two, the surer. Measure the board from the same mark both times."],
    },
  ];
}

/** What was measured, once enough of it is there. */
export function focalAsked(texts: Texts): FocalLengthAsked | undefined {
  const read = (key: string) => valueIn(texts[key], readMm);
  const v1 = read("v1");
  if (v1 === undefined) return undefined;
  if (texts.way === "infinity") {
    const subjectDistanceMm = read("away");
    return { by: "infinity", extensionMm: v1, ...(subjectDistanceMm !== undefined && { subjectDistanceMm }) };
  }
  const v2 = read("v2");
  const second = sizeAt(read("image2"), read("subject2"));
  const isFar = (texts.image1 ?? "").trim() === "" && (texts.subject1 ?? "").trim() === "";
  const first = isFar ? undefined : sizeAt(read("image1"), read("subject1"));
  if (v2 === undefined || second === undefined || (!isFar && first === undefined)) return undefined;
  return {
    by: "twoSizes",
    first: { extensionMm: v1, ...(first && { size: first }) },
    second: { extensionMm: v2, size: second },
  };
}

function sizeAt(imageMm: number | undefined, subjectMm: number | undefined): ImageAt["size"] {
  return imageMm === undefined || subjectMm === undefined ? undefined : { imageMm, subjectMm };
}

/**
 * What keeping it writes. From infinity alone the focal length is only as sure as the place of the lens's middle, and is kept where nothing
 * better is known.
 */
export function focalSet({
  answer,
  by,
  lens,
}: {
  readonly answer: Extract<MeasuredFocalLength, { kind: "found" }>;
  readonly by: "infinity" | "twoSizes";
  readonly lens: Lens;
}): FieldSet {
  const known = lens.markedFocalLengthMm ?? lens.measuredFocalLengthMm;
  const rounded = ({ value, sd }: { readonly value: number; readonly sd: number }): Json => ({
    value: Math.round(value * 100) / 100,
    sd: Math.round(sd * 1000) / 1000,
  });
  return {
    ...(answer.infinityExtensionMm.value > 0 && { infinityExtensionMm: rounded(answer.infinityExtensionMm) }),
    ...((by === "twoSizes" || known === undefined) && {
      measuredFocalLengthMm: rounded(answer.focalLengthMm),
      focalLengthBy: by,
    }),
  };
}
