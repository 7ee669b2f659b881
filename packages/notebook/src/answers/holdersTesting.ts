/** What the tests of holders and loading share: two holders of two sides, a box, and sheets as cards. */
import { cardOf } from "../journal/card.ts";
import type { SheetCard } from "../journal/sheetCard.ts";
import type { Holder, Json, RecordId, Sheet } from "../records/index.ts";
import { idNumber, recordOf } from "./testing.ts";

export const at = (minute: number) => ({ at: 1_764_000_000_000 + minute * 60_000, offsetMin: 60 });
export const boxC = recordOf("paperBox", idNumber(30), {
  name: "Box C",
  sheetsLeft: 14,
  size: { widthMm: 130, heightMm: 180 },
});

const holderOf = (n: number, name: string): Holder =>
  recordOf("holder", idNumber(n), {
    name,
    format: { widthMm: 130, heightMm: 180 },
    [`sides.${idNumber(n + 1)}.name`]: "A",
    [`sides.${idNumber(n + 2)}.name`]: "B",
  });
/** Holder 2 with sides 11 and 12, holder 3 with sides 15 and 16. */
export const holders = [holderOf(10, "2"), holderOf(14, "3")];

/** Where a sheet of this side says that it is. */
export function side(sideNumber: number): { readonly holderSide: Json } {
  const holderId = idNumber(sideNumber < 14 ? 10 : 14);
  return { holderSide: { holderId, sideId: idNumber(sideNumber) } };
}

export function sheetOf(n: number, fields: Readonly<Record<string, Json>>): Sheet {
  return recordOf("sheet", idNumber(n), { code: `W${n}`, paperBoxId: boxC.id, ...fields });
}

export function cardFor(n: number, fields: Readonly<Record<string, Json>>): SheetCard {
  return cardOf(sheetOf(n, fields));
}

/** What stands in each side: "A loaded W31". */
export function said(
  found: readonly { readonly sides: readonly { name: string; state: string; sheet?: SheetCard; id: RecordId }[] }[],
) {
  return found.flatMap(({ sides }) =>
    sides.map(({ name, state, sheet }) => [name, state, sheet?.code ?? ""].join(" ")),
  );
}
