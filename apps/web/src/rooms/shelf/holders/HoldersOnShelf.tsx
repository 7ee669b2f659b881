import { holdersOf } from "@captray/notebook/answers";
import { Button } from "../../../kit/Button.tsx";
import { beginning } from "../../../kit/beginning.ts";
import { goTo } from "../../../kit/goTo.ts";
import { holderWords } from "../../../kit/holderWords.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Section } from "../../../kit/Section.tsx";
import { Sides } from "../../../kit/sides/Sides.tsx";
import { sideSaid } from "../../../kit/sides/sideSaid.ts";
import { Word } from "../../../kit/Word.tsx";
import { formatWords } from "./formatWords.ts";
import "./Holders.css";

/** The holders on the shelf, each drawn with its sides and what lies in them. */
export function HoldersOnShelf() {
  const notebook = useNotebook();
  const holders = useShelf("holder");
  const cards = useCards();
  const peek = (id: string) => notebook.peek(id);
  return (
    <Section head="Holders">
      {holders.length === 0 && (
        <NothingYet>
          A holder has a side for each sheet. Here it is drawn with what lies in it, so that no side is exposed twice
          and none is opened with a picture in it.
        </NothingYet>
      )}
      {holdersOf({ holders, cards }).map(({ holder, sides }) => (
        <div key={holder.id} className="Shelf-Holder">
          <div className="Shelf-Holder-head">
            <Word to={`/shelf/holder/${holder.id}`}>{beginning(holderWords(holder))}</Word>
            <span className="soft">{holder.format ? formatWords({ format: holder.format }) : ""}</span>
          </div>
          <Sides label={`Sides of ${holderWords(holder)}`} sides={sides.map((side) => sideSaid({ side, peek }))} />
        </div>
      ))}
      <div className="Shelf-Holder-acts">
        {holders.length > 0 && <Button onPress={() => goTo({ path: "/shelf/loading" })}>Load holders</Button>}
        <Button onPress={() => goTo({ path: "/shelf/holder/new" })}>Put a holder on the shelf</Button>
      </div>
    </Section>
  );
}
