import * as z from "zod/mini";
import { estimate, estimateInStops, glass, notNegative, positive, transmissionValue, typed, word } from "./fields.ts";
import type { Json } from "./plainJson.ts";
import { type FieldSet, type RecordFrom, record } from "./record.ts";

/** A lens or pinhole with its stops: what is marked on it, and what was measured, side by side. */
export const lens = record("lens", {
  fields: {
    name: word,
    sort: z.enum(["lens", "pinhole"]),
    markedFocalLengthMm: typed,
    /** Power of a single lens, as it is sold; the marked focal length then follows from it. */
    dioptres: typed,
    measuredFocalLengthMm: estimate,
    focalLengthBy: z.enum(["infinity", "twoSizes", "told"]),
    /** Board to ground glass with a distant subject. */
    infinityExtensionMm: estimate,
    pupilRatio: estimate,
    /** Light passed, with its doubt. */
    transmission: z.strictObject({ value: transmissionValue, sdStops: notNegative }),
    glass,
    /** Surfaces between air and glass, where the light passed was worked out from them. */
    surfaces: z.strictObject({
      count: z.int().check(z.gte(0), z.lte(40)),
      coating: z.enum(["bare", "single", "several"]),
    }),
    /** Where cards with holes stand; without it at the glass. */
    stopPlace: z.strictObject({
      side: z.enum(["front", "behind"]),
      distanceMm: positive,
      /** Clear diameter of the glass. */
      glassMm: z.exactOptional(positive),
    }),
    imageCircleMm: positive,
    chemicalFocus: z.strictObject({
      correction: z.enum(["single", "achromat"]),
      focusShare: z.exactOptional(estimate),
      found: z.enum(["assumed", "test"]),
    }),
    /** Pinhole only. */
    holeMm: estimate,
  },
  start: { name: "", sort: "lens" },
  lists: {
    /** A home-made lens has one; stops cut from card are more. */
    stops: {
      fields: {
        name: word,
        marked: typed,
        measuredFNumber: estimateInStops,
        /** Diameter of the entrance pupil, measured. */
        diameterMm: estimate,
        /** The hole as cut in a card: the pupil follows from it and from where the card stands. */
        holeMm: estimate,
      },
    },
  },
  upgrades: { 0: fromPlainNumbers },
});
export type Lens = RecordFrom<typeof lens>;

/** Form 0 held one plain focal length and one plain f-number, and called the glass by `coated`. */
function fromPlainNumbers({ id, set }: { readonly id: string; readonly set: FieldSet }): FieldSet {
  const next: Record<string, Json> = {};
  for (const [path, value] of Object.entries(set)) {
    if (path === "focalLengthMm") next.markedFocalLengthMm = value === null ? null : { value };
    // The one stop of form 0 takes the lens's own id, so that every replica names it alike.
    else if (path === "fNumber") next[`stops.${id}.marked`] = value === null ? null : { value };
    else if (path === "coated") next.glass = value === null ? null : value === true ? "standard" : "simple";
    else next[path] = value;
  }
  return next;
}
