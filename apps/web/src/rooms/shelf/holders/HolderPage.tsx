import { holdersOf, type SideOf } from "@captray/notebook/answers";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { beginning } from "../../../kit/beginning.ts";
import { Field } from "../../../kit/Field.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { holderWords } from "../../../kit/holderWords.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Page } from "../../../kit/Page.tsx";
import { PlainField } from "../../../kit/PlainField.tsx";
import { Section } from "../../../kit/Section.tsx";
import { FilledSide } from "../../../kit/sides/FilledSide.tsx";
import { Sides } from "../../../kit/sides/Sides.tsx";
import { sideSaid } from "../../../kit/sides/sideSaid.ts";
import { Word } from "../../../kit/Word.tsx";
import { type HolderDraft, holderDraft, holderSet, nextSide } from "./holderForm.ts";
import { readFormat } from "./readFormat.ts";
import "./Holders.css";

/** A holder: what it is called, its format, its sides, and what is in them. */
export default function HolderPage({ id }: { readonly id: string }) {
  const notebook = useNotebook();
  const holders = useShelf("holder");
  const boxes = useShelf("paperBox");
  const cards = useCards();
  const [freshIds] = useState(() => [notebook.newId(), notebook.newId(), notebook.newId()]);
  const [typed, setTyped] = useState<HolderDraft>();
  const [inTheWay, setInTheWay] = useState<SideOf>();
  const holder = holders.find((one) => one.id === id);
  const isNew = id === "new";
  if (holder === undefined && !isNew) {
    return (
      <Page title="Shelf">
        <NothingYet way={<Word to="/shelf">To the shelf</Word>}>This holder is not on the shelf.</NothingYet>
      </Page>
    );
  }
  const format = holders.at(-1)?.format ?? boxes.at(-1)?.size;
  const draft = typed ?? holderDraft({ holder, holders, format, freshIds });
  const put = (change: Partial<HolderDraft>) => setTyped({ ...draft, ...change });
  const [there] = holdersOf({ holders: holder ? [holder] : [], cards });
  const filled = (sideId?: string) =>
    there?.sides.find(({ id: one, state }) => state !== "empty" && (sideId === undefined || one === sideId));
  const recordId = holder?.id ?? freshIds[2] ?? "";
  const keep = () => {
    const set = holderSet({ draft, holder, now: momentNow() });
    const note = isNew ? "Holder put on the shelf" : "Holder changed";
    notebook.change([{ id: recordId, kind: "holder", set }], note).kept.catch(() => undefined);
    goTo({ path: "/shelf" });
  };
  const putAway = () => {
    const full = filled();
    if (full) return setInTheWay(full);
    const set = { removedAt: { ...momentNow() } };
    notebook.change([{ id: recordId, kind: "holder", set }], "Holder put away").kept.catch(() => undefined);
    goTo({ path: "/shelf" });
  };
  const takeAway = (sideId: string) => {
    const full = filled(sideId);
    if (full) return setInTheWay(full);
    put({ sides: draft.sides.filter((side) => side.id !== sideId) });
  };
  const unreadable = readFormat({ text: draft.format }).kind === "unreadable";
  return (
    <Page title={holder ? beginning(holderWords(holder)) : "A holder for the shelf"} closeTo="/shelf">
      <div className="Shelf-HolderPage">
        {there !== undefined && (
          <Section head="What is in it" aside="follows from the sheets">
            <Sides
              label="Its sides"
              sides={there.sides.map((side) => ({
                ...sideSaid({ side, peek: (one) => notebook.peek(one) }),
                ...(side.state === "empty"
                  ? {}
                  : { onPress: () => setInTheWay(side), chosen: side.id === inTheWay?.id }),
              }))}
            />
            {inTheWay !== undefined && holder !== undefined && (
              <FilledSide key={inTheWay.id} holder={holder} side={inTheWay} onDone={() => setInTheWay(undefined)} />
            )}
          </Section>
        )}
        <Section head="The holder">
          <PlainField label="What you call it" text={draft.name} onText={(name) => put({ name })} hint="2" />
          <Field
            label="Format"
            text={draft.format}
            onText={(text) => put({ format: text })}
            read={(text) => readFormat({ text })}
            kind="number"
            signs={12}
            hint="13 × 18 cm"
          />
        </Section>
        <Section head="Its sides" aside={isNew ? "a double holder has two" : undefined}>
          {draft.sides.map((side, place) => (
            <div key={side.id} className="Shelf-HolderPage-side">
              <PlainField
                label={`Side ${place + 1}`}
                text={side.name}
                most={20}
                onText={(name) =>
                  put({ sides: draft.sides.map((one) => (one.id === side.id ? { ...one, name } : one)) })
                }
                hint={nextSide(place)}
              />
              <Word onPress={() => takeAway(side.id)} spoken={`Take side ${side.name || place + 1} away`}>
                take away
              </Word>
            </div>
          ))}
          {draft.sides.length < 60 && (
            <Word
              onPress={() =>
                put({ sides: [...draft.sides, { id: notebook.newId(), name: nextSide(draft.sides.length) }] })
              }
            >
              One more side
            </Word>
          )}
        </Section>
        <div className="Shelf-Holder-acts">
          <Button
            main
            onPress={keep}
            waits={draft.sides.length === 0 ? "a side" : unreadable ? "a format that can be read" : undefined}
          >
            {isNew ? "Put it on the shelf" : "Keep it so"}
          </Button>
          {!isNew && <Button onPress={putAway}>Put it away</Button>}
        </div>
      </div>
    </Page>
  );
}
