import { holdersOf, kitOf, planOf, type SideOf } from "@captray/notebook/answers";
import type { SheetCard } from "@captray/notebook/journal";
import { useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { beginning } from "../../../kit/beginning.ts";
import { holderWords } from "../../../kit/holderWords.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Page } from "../../../kit/Page.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { FilledSide } from "../../../kit/sides/FilledSide.tsx";
import { Sides } from "../../../kit/sides/Sides.tsx";
import { sideSaid } from "../../../kit/sides/sideSaid.ts";
import { Word } from "../../../kit/Word.tsx";
import { withThisSheet } from "../toTheCap.ts";
import { findsIn, useShelfView } from "../useShelfView.ts";
import "./WhichSide.css";

/** Which side goes to the cap: asked where several are loaded. An exposed one is refused, with the ways out. */
export default function WhichSide({ id }: { readonly id: string }) {
  const notebook = useNotebook();
  const shelf = useShelfView();
  const holders = useShelf("holder");
  const cards = useCards();
  const [full, setFull] = useState<string>();
  const scene = shelf.scenes.find((one) => one.id === id);
  if (scene === undefined) {
    return (
      <Page title="Camera">
        <NothingYet way={<Word to="/camera/now">I have a reading now</Word>}>
          This scene is not in the notebook. Begin with a reading.
        </NothingYet>
      </Page>
    );
  }
  const kit = kitOf({ notebook: findsIn(shelf), scene });
  const plan = planOf(kit);
  if (plan.kind !== "plan") {
    return (
      <Page title="Which side?" closeTo={`/camera/${id}`}>
        <NothingYet way={<Word to={`/camera/${id}`}>To the scene</Word>}>
          This scene has no time for the cap yet. What it misses stands on its page.
        </NothingYet>
      </Page>
    );
  }
  const take = (chosen: SheetCard | "new") => withThisSheet({ notebook, kit, plan, chosen });
  const known = holdersOf({ holders, cards });
  const inHolders = new Set(known.flatMap(({ sides }) => sides.flatMap(({ sheet }) => sheet?.id ?? [])));
  const loose = cards.filter(
    ({ id: one, links, givenS, dates }) =>
      links.sceneId === id && givenS === undefined && dates.exposedAt === undefined && !inHolders.has(one),
  );
  const press = (side: SideOf) => {
    if (side.state === "loaded" && side.sheet) return take(side.sheet);
    setFull(full === side.id ? undefined : side.id);
  };
  return (
    <Page title="Which side?" closeTo={`/camera/${id}`}>
      <div className="Camera-WhichSide">
        <Section head="In the holders" aside={kit.paperBox?.name}>
          {known.map(({ holder, sides }) => {
            const chosen = sides.find((side) => side.id === full);
            return (
              <div key={holder.id} className="Camera-WhichSide-holder">
                <b>{beginning(holderWords(holder))}</b>
                <Sides
                  label={`Sides of ${holderWords(holder)}`}
                  sides={sides.map((side) => ({
                    ...sideSaid({ side, peek: (one) => notebook.peek(one) }),
                    ...(side.state === "empty" ? { line: "nothing is loaded" } : {}),
                    chosen: side.id === full,
                    ...(side.state === "loaded" || side.state === "exposed" ? { onPress: () => press(side) } : {}),
                  }))}
                />
                {chosen?.state === "exposed" && (
                  <FilledSide holder={holder} side={chosen} onDone={() => setFull(undefined)} />
                )}
              </div>
            );
          })}
          {holders.length === 0 && (
            <ProblemNote head="No holder on the shelf" ways={<Word to="/shelf/holder/new">Put one there</Word>}>
              Then its sides are asked for here.
            </ProblemNote>
          )}
        </Section>
        <Section head="In no holder">
          <div className="Camera-WhichSide-loose">
            {loose.map((card) => (
              <Button key={card.id} onPress={() => take(card)}>
                {card.code}, laid out
              </Button>
            ))}
            <Button onPress={() => take("new")}>A new sheet</Button>
          </div>
        </Section>
      </div>
    </Page>
  );
}
