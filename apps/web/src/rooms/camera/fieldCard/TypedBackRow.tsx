import { readTime, showTime } from "@captray/science/notation";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { Field } from "../../../kit/Field.tsx";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { PlainField } from "../../../kit/PlainField.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { readerOf, readMeter } from "../readingNow/readTexts.ts";
import { hasBed } from "./cardWords.ts";
import { type CardTexts, emptyCardTexts, typedBack } from "./typedBack.ts";
import type { FieldCardState } from "./useFieldCard.ts";

/** One row of a card, as it was pencilled in the field: keeping it makes a scene, a sheet and its opening. */
export function TypedBackRow({ state }: { readonly state: Extract<FieldCardState, { kind: "card" }> }) {
  const notebook = useNotebook();
  const cards = useCards();
  const [texts, setTexts] = useState<CardTexts>(emptyCardTexts);
  const [keptIds, setKeptIds] = useState<readonly string[]>([]);
  const on = (field: keyof CardTexts) => (text: string) => setTexts((held) => ({ ...held, [field]: text }));
  const row = typedBack({ texts, ...state, notebook, cards, now: momentNow(), newId: notebook.newId });
  const kept = keptIds.flatMap((id) => cards.find((card) => card.id === id) ?? []);
  const own = state.card.columns.find(({ isOwn }) => isOwn);
  const bed = hasBed(state.card.columns);

  const keep = () => {
    if (row.kind !== "ready") return;
    notebook.change(row.sets, `${row.code} typed back from a card`).kept.catch(() => undefined);
    setKeptIds((ids) => [row.sheetId, ...ids.filter((id) => id !== row.sheetId)]);
    setTexts(emptyCardTexts);
  };

  return (
    <Section head="Type it back" aside="one row, one sheet">
      <div className="Camera-FieldCard-row" data-walk>
        <Field
          label="Reading"
          text={texts.reading}
          onText={on("reading")}
          read={readMeter}
          kind="time"
          hint="1/15"
          below
          quiet
        />
        <Field
          label={bed ? "Bed mark" : "Board to glass"}
          text={texts.bed}
          onText={on("bed")}
          read={readerOf("extension")}
          kind="mm"
          after="mm"
          hint={own === undefined ? "" : String(Math.round(own.bedMm ?? own.extensionMm))}
          below
          quiet
        />
        <Field
          label="Cap off for"
          text={texts.gave}
          onText={on("gave")}
          read={(text) => readTime({ text })}
          kind="time"
          after="s"
          hint="as planned"
          below
          quiet
        />
        <PlainField label="Code" text={texts.code} onText={on("code")} most={12} hint={nextHint(row)} />
      </div>
      {row.kind === "cannot" && <ProblemNote head={row.head}>{row.say}</ProblemNote>}
      {row.kind === "ready" && (
        <p className="small soft" role="status">
          {row.code}: the card says {showTime({ timeS: row.plannedS })};{" "}
          {row.givenS === undefined
            ? "taken as planned"
            : `given ${showTime({ timeS: row.givenS })}, ${offWords(row.givenS, row.plannedS)}`}
          .
        </p>
      )}
      <div className="Camera-FieldCard-keep">
        {" "}
        <Button
          onPress={keep}
          waits={row.kind === "ready" ? undefined : row.kind === "waits" ? row.waitsFor : "another code"}
        >
          Keep this sheet
        </Button>
      </div>
      {kept.length > 0 && (
        <ul className="Camera-FieldCard-kept">
          {kept.map((card) => (
            <li key={card.id}>
              <Word to={`/logbook/${card.id}`}>{card.code}</Word>{" "}
              <span className="small soft">
                exposed{card.givenS === undefined ? "" : `, ${showTime({ timeS: card.givenS })}`}
              </span>
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}

function nextHint(row: ReturnType<typeof typedBack>): string {
  return row.kind === "ready" ? row.code : "the next one";
}

function offWords(givenS: number, plannedS: number): string {
  const stops = Math.log2(givenS / plannedS);
  if (Math.abs(stops) < 0.05) return "as it says";
  return `${Math.abs(stops).toFixed(1)} stop ${stops > 0 ? "more" : "less"}`;
}
