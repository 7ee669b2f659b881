import type { ExposureIndex, FieldSet, Json, PaperBox } from "../records/index.ts";

export interface NextBox {
  readonly box: FieldSet;
  readonly indexes: readonly FieldSet[];
}

/** What two boxes of one paper may differ by, in stops: a third, common practice, no source. */
const betweenBoxesSdStops = 0.3;

/**
 * A new box of the same paper: what was true of the one before, full again, its indexes taken for granted with more doubt.
 *
 * How an index was found goes along, since the number still holds the light and the meter of the sheets it comes from; what is left of the
 * old box, its batch and its date do not.
 */
export function nextBoxOf({
  box,
  indexes,
  name,
  newBoxId,
}: {
  readonly box: PaperBox;
  readonly indexes: readonly ExposureIndex[];
  readonly name: string;
  readonly newBoxId: string;
}): NextBox {
  const kept = {
    size: box.size,
    price: box.price,
    sensitivity: box.sensitivity,
    grade: box.grade,
    finish: box.finish,
    isoSpeed: box.isoSpeed,
    isoRange: box.isoRange,
    cutIntoParts: box.cutIntoParts,
    reciprocity: box.reciprocity,
    reciprocityTable: box.reciprocityTable,
    contrastFilters: box.contrastFilters,
    sheetsWhenFull: box.sheetsWhenFull,
    sheetsLeft: box.sheetsWhenFull,
  };
  return {
    box: { ...said(kept), name, previousBoxId: box.id },
    indexes: indexes.flatMap(({ paperBoxId, result, recipeId, value, text, found }) => {
      if (paperBoxId !== box.id || value === undefined) return [];
      const sdStops = Math.hypot(value.sdStops, betweenBoxesSdStops);
      return [
        {
          ...said({ result, recipeId, text, found }),
          paperBoxId: newBoxId,
          value: { value: value.value, sdStops },
          assumed: ["value"],
        },
      ];
    }),
  };
}

function said(fields: Readonly<Record<string, unknown>>): FieldSet {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Record<string, Json>;
}
