import { swapFromHere } from "@captray/notebook/answers";
import type { Notebook } from "@captray/notebook/journal";
import type { Sheet, StepDate } from "@captray/notebook/records";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useRecord } from "../../../kit/notebook/useRecord.ts";
import { PlainField } from "../../../kit/PlainField.tsx";
import { Section } from "../../../kit/Section.tsx";
import { useLight } from "../../../look/light.ts";
import { storyView } from "./storyView.ts";
import { followedWords, likelySwaps, swapPoints } from "./swapView.ts";

/** “These two were swapped from here on”: what followed is exchanged, as one change that can be taken back. */
export function Swapped({
  notebook,
  sheet,
  onDone,
}: {
  readonly notebook: Notebook;
  readonly sheet: Sheet;
  readonly onDone: () => void;
}) {
  const cards = useCards();
  const [otherId, setOtherId] = useState("");
  const [typed, setTyped] = useState("");
  const red = useLight() === "red";
  const card = cards.find(({ id }) => id === sheet.id);
  const likely = card ? likelySwaps({ card, cards, most: 6 }) : [];
  const named = cards.find(({ id, code }) => id !== sheet.id && code.toLowerCase() === typed.trim().toLowerCase());
  const offered = named && !likely.some(({ id }) => id === named.id) ? [...likely, named] : likely;
  const chosen = typed.trim() === "" ? otherId : (named?.id ?? "");
  const other = useRecord(chosen);
  if (offered.length === 0) return <p className="say">There is no other sheet in this notebook.</p>;
  return (
    <Section head="These two were swapped" aside="nothing is lost">
      <Choice
        label={`${sheet.code ?? "This sheet"} with`}
        value={chosen}
        onChoose={(id) => {
          setOtherId(id);
          setTyped("");
        }}
        options={offered.map(({ id, code, state }) => ({
          value: id as string,
          name: state === "flashOwed" ? "flash owed" : state === "inProcess" ? "in the trays" : state,
          detail: code,
        }))}
      />
      {!red && <PlainField label="or another code" text={typed} onText={setTyped} most={12} hint="W31" />}
      {!red && typed.trim() !== "" && named === undefined && <p className="say">No other sheet has this code.</p>}
      {typeof other === "object" && other.kind === "sheet" && (
        <From key={other.id} notebook={notebook} a={sheet} b={other} onDone={onDone} />
      )}
    </Section>
  );
}

function From(props: {
  readonly notebook: Notebook;
  readonly a: Sheet;
  readonly b: Sheet;
  readonly onDone: () => void;
}) {
  const { notebook, a, b, onDone } = props;
  const points = swapPoints({ a, b });
  const [chosen, setChosen] = useState<StepDate>();
  const point =
    points.find(({ step }) => step === chosen) ?? points.find(({ step }) => step === "exposedAt") ?? points[0];
  if (point === undefined)
    return <p className="say">Nothing has happened to either of them yet: there is nothing to swap.</p>;
  const { step: from, words } = point;
  const nowMs = Date.now();
  const [codeA, codeB] = [a.code ?? "this sheet", b.code ?? "the other"];
  const followed = (sheet: Sheet) =>
    followedWords({ view: storyView({ sheet, peek: (id) => notebook.peek(id), nowMs }), from });
  const swap = () => {
    const sets = swapFromHere({ a, b, from, now: momentNow() });
    if (sets.length > 0) {
      notebook.change(sets, `${codeA} and ${codeB} swapped from ${words} on`).kept.catch(() => undefined);
    }
    onDone();
  };
  return (
    <>
      <Choice
        label="From here on"
        value={from}
        onChoose={setChosen}
        options={points.map(({ step, words: name }) => ({ value: step, name: `from ${name} on` }))}
      />
      <dl className="Logbook-Story-facts">
        {[
          [codeA, followed(b)],
          [codeB, followed(a)],
        ].map(([code, gets]) => (
          <div key={code}>
            <dt>{code} gets</dt>
            <dd>{gets}</dd>
          </div>
        ))}
      </dl>
      <p className="small soft">
        Code, box, kind, label and notes stay with each sheet; everything else from there on changes places.
      </p>
      <Button onPress={swap}>
        Swap {codeA} and {codeB} from {words} on
      </Button>
    </>
  );
}
