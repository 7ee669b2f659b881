import type { PaperBox } from "../records/index.ts";

export interface BoxStock {
  /** Nothing where nobody counted. */
  readonly left: number | undefined;
  readonly full: number | undefined;
  /** How many larger sheets the box's own sheets were cut from. */
  readonly largerSheets: number | undefined;
  /** Of one sheet as it is exposed, in the currency of the box. */
  readonly pricePerSheet: number | undefined;
  /** Earlier boxes of the same paper, the latest first. */
  readonly before: readonly PaperBox[];
}

/**
 * What is left of a box, what a sheet of it costs, and which boxes of the same paper went before.
 *
 * A box counts its sheets as they are exposed; its price is that of the whole box as bought, however it was cut.
 */
export function boxStockOf({
  box,
  boxes,
}: {
  readonly box: PaperBox;
  /** All boxes that may have gone before, also those put away. */
  readonly boxes: readonly PaperBox[];
}): BoxStock {
  const { sheetsLeft, sheetsWhenFull, cutIntoParts, price } = box;
  const full = sheetsWhenFull === undefined ? undefined : Math.max(sheetsWhenFull, sheetsLeft ?? 0);
  const before: PaperBox[] = [];
  for (
    let previous = boxes.find((one) => one.id === box.previousBoxId);
    previous !== undefined && previous.id !== box.id && !before.includes(previous);
    previous = boxes.find((one) => one.id === previous?.previousBoxId)
  ) {
    before.push(previous);
  }
  return {
    left: sheetsLeft,
    full,
    largerSheets: full === undefined || cutIntoParts === undefined ? undefined : Math.ceil(full / cutIntoParts),
    pricePerSheet: price === undefined || !full ? undefined : price.amount / full,
    before,
  };
}
