import type { Notebook } from "@captray/notebook/journal";
import type { Sheet } from "@captray/notebook/records";
import { sideWords } from "../../../kit/sideWords.ts";

/** Where the sheet is: "holder 2, side A", or nothing where nobody said. */
export function placeWords({
  notebook,
  sheet,
}: {
  readonly notebook: Pick<Notebook, "peek">;
  readonly sheet: Sheet;
}): string {
  const { holderSide } = sheet;
  if (holderSide === undefined) return "";
  const holder = notebook.peek(holderSide.holderId);
  if (holder?.kind !== "holder") return "";
  const side = holder.sides.find(({ id }) => id === holderSide.sideId);
  return sideWords({ holder, side });
}
