import { type Emptying, emptySide, holdersOf, type SideOf } from "@captray/notebook/answers";
import type { Holder } from "@captray/notebook/records";
import { useState } from "react";
import { momentNow } from "../../devices/momentNow.ts";
import { Button } from "../Button.tsx";
import { beginning } from "../beginning.ts";
import { useCards } from "../notebook/useCards.ts";
import { useNotebook } from "../notebook/useNotebook.ts";
import { useShelf } from "../notebook/useShelf.ts";
import { ProblemNote } from "../ProblemNote.tsx";
import { sideWords } from "../sideWords.ts";
import { Word } from "../Word.tsx";
import { filledWords } from "./filledWords.ts";

/** A side that cannot be loaded or exposed because something is in it: said, with every way out. */
export function FilledSide({
  holder,
  side,
  onDone,
}: {
  readonly holder: Holder;
  readonly side: SideOf;
  readonly onDone: () => void;
}) {
  const notebook = useNotebook();
  const holders = useShelf("holder");
  const cards = useCards();
  const [elsewhere, setElsewhere] = useState(false);
  const { sheet } = side;
  if (sheet === undefined) return null;
  const place = sideWords({ holder, side });
  const boxId = sheet.links.paperBoxId;
  const box = boxId === undefined ? undefined : notebook.peek(boxId);
  const paperBox = box?.kind === "paperBox" ? box : undefined;
  const words = filledWords({ side, place, boxName: paperBox?.name ?? "" });
  const go = (how: Emptying, note: string) => {
    notebook.change(emptySide({ sheet, how, now: momentNow(), paperBox }), note).kept.catch(() => undefined);
    onDone();
  };
  const others = holdersOf({ holders, cards }).flatMap((one) =>
    one.sides
      .filter(({ id, state }) => id !== side.id && state === "empty")
      .map((free) => ({ holder: one.holder, free })),
  );
  return (
    <ProblemNote
      head={words.head}
      ways={
        <>
          {words.ways.map(({ word, how, note }) => (
            <Button key={word} onPress={() => go(how, note)}>
              {word}
            </Button>
          ))}
          {side.state !== "planned" && <Word onPress={() => setElsewhere(!elsewhere)}>That was another side</Word>}
          {elsewhere &&
            (others.length === 0 ? (
              <p className="say">No other side is empty. Empty the one it is in first.</p>
            ) : (
              others.map(({ holder: other, free }) => (
                <Button
                  key={free.id}
                  onPress={() =>
                    go(
                      { to: "otherSide", holderId: other.id, sideId: free.id },
                      `${sheet.code} is in ${sideWords({ holder: other, side: free })}`,
                    )
                  }
                >
                  {beginning(sideWords({ holder: other, side: free }))}
                </Button>
              ))
            ))}
        </>
      }
    >
      {words.say}
    </ProblemNote>
  );
}
