import type { Holder } from "@captray/notebook/records";
import { holderWords } from "./holderWords.ts";

/** Where a sheet is: "holder 2, side A". */
export function sideWords({
  holder,
  side,
}: {
  readonly holder: Pick<Holder, "name">;
  readonly side: { readonly name: string } | undefined;
}): string {
  const named = side === undefined || side.name === "" ? "" : `, side ${side.name}`;
  return holderWords(holder) + named;
}
