import { holdersOf } from "@captray/notebook/answers";
import type { Sheet } from "@captray/notebook/records";
import { useState } from "react";
import { beginning } from "../../../kit/beginning.ts";
import { holderWords } from "../../../kit/holderWords.ts";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { FilledSide } from "../../../kit/sides/FilledSide.tsx";
import { Sides } from "../../../kit/sides/Sides.tsx";
import { sideSaid } from "../../../kit/sides/sideSaid.ts";

/** In which side it is: a press on another one puts it right; a side with another sheet in it is refused. */
export function SideOfSheet({
  sheet,
  onSide,
}: {
  readonly sheet: Sheet;
  readonly onSide: (holderId: string, sideId: string) => void;
}) {
  const notebook = useNotebook();
  const holders = useShelf("holder");
  const cards = useCards();
  const [full, setFull] = useState<string>();
  if (holders.length === 0) return null;
  return (
    <>
      <p className="small soft">In which side:</p>
      {holdersOf({ holders, cards }).map(({ holder, sides }) => {
        const inTheWay = sides.find(({ id }) => id === full);
        return (
          <div key={holder.id}>
            <b>{beginning(holderWords(holder))}</b>
            <Sides
              label={`Sides of ${holderWords(holder)}`}
              sides={sides.map((side) => ({
                ...sideSaid({ side, peek: (id) => notebook.peek(id) }),
                chosen: side.id === sheet.holderSide?.sideId,
                onPress: () => {
                  if (side.state === "empty" || side.sheet?.id === sheet.id) onSide(holder.id, side.id);
                  else setFull(full === side.id ? undefined : side.id);
                },
              }))}
            />
            {inTheWay && <FilledSide holder={holder} side={inTheWay} onDone={() => setFull(undefined)} />}
          </div>
        );
      })}
    </>
  );
}
