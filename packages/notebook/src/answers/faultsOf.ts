import type { Fault, Sheet } from "../records/index.ts";

export interface FaultOf {
  readonly fault: Fault;
  /** The piece its middle lies on; of two that overlap the smaller one. */
  readonly letter: string | undefined;
}

/** The faults seen on a sheet, in the order they were marked, with the piece each lies on. */
export function faultsOf({ sheet }: { readonly sheet: Pick<Sheet, "faults" | "pieces"> }): readonly FaultOf[] {
  const pieces = (sheet.pieces ?? []).toSorted(
    (a, b) => a.place.width * a.place.height - b.place.width * b.place.height,
  );
  return (sheet.faults ?? []).map((fault) => ({
    fault,
    letter: pieces.find(({ place: { x, y, width, height } }) => {
      return fault.x >= x && fault.x <= x + width && fault.y >= y && fault.y <= y + height;
    })?.letter,
  }));
}
