import { bathLabel } from "@captray/drawings/baths";
import { type PaperName, trueScalePage } from "@captray/drawings/trueScale";
import type { BathOnHand } from "@captray/notebook/answers";
import type { FieldSet } from "@captray/notebook/records";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { BathDrawn } from "../../../kit/baths/BathDrawn.tsx";
import { adviceSentences, bathName, groundSentence, mixedWords, volumeWords } from "../../../kit/baths/bathWords.ts";
import { capital } from "../../../kit/baths/capital.ts";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Page } from "../../../kit/Page.tsx";
import { PlainField } from "../../../kit/PlainField.tsx";
import { Section } from "../../../kit/Section.tsx";
import { TrueScale } from "../../../kit/TrueScale.tsx";
import { useSettled } from "../../../kit/useSettled.ts";
import { Word } from "../../../kit/Word.tsx";
import { useLight } from "../../../look/light.ts";
import { countedSet, holdsWords, isVented, labelOf, readCount, readSeconds, stripSet } from "./bathPageState.ts";
import { Discard } from "./Discard.tsx";
import { useBathPage } from "./useBathPage.ts";
import "./Baths.css";

type Change = (set: FieldSet, note: string) => void;

/** One bath: how worn it is and why, what went through it, its label, and its end. */
export default function BathPage({ id }: { readonly id: string }) {
  const { state, nowMs, sheetM2, change } = useBathPage(id);
  if (state === undefined) {
    return (
      <Page title="Baths" closeTo="/trays/baths">
        <NothingYet way={<Word to="/trays/baths">To the baths</Word>}>This bath is not in the notebook.</NothingYet>
      </Page>
    );
  }
  const { bath, wear } = state;
  return (
    <Page title={capital(bathName(bath))} closeTo="/trays/baths">
      <div className="Trays-Bath">
        <div>
          <Section head="How it is" aside={volumeWords(bath.volumeMl)}>
            {bath.discardedAt === undefined && <BathDrawn onHand={state} nowMs={nowMs} sheetM2={sheetM2} />}
            <p className="Trays-Bath-mixed">{mixedWords(state, nowMs)}</p>
            {adviceSentences(state).map((sentence) => (
              <p key={sentence} className="say">
                {sentence}
              </p>
            ))}
            <p className="small soft">{[holdsWords(bath), groundSentence(wear)].filter(Boolean).join(". ")}</p>
          </Section>
          <Discard bath={bath} onDiscard={change} />
        </div>
        <div>
          {bath.discardedAt === undefined && <WhatHappened state={state} sheetM2={sheetM2} change={change} />}
          {bath.discardedAt === undefined && <Label state={state} />}
          <Notes notes={bath.notes ?? ""} change={change} />
        </div>
      </div>
    </Page>
  );
}

function WhatHappened({
  state,
  sheetM2,
  change,
}: {
  readonly state: BathOnHand;
  readonly sheetM2: number;
  readonly change: Change;
}) {
  const { bath, wear } = state;
  const [sheets, setSheets] = useState("");
  const [strip, setStrip] = useState("");
  const counted = readCount(sheets);
  const timed = readSeconds(strip);
  const strips = bath.strips ?? [];
  const foams = bath.bubblesAt !== undefined;
  return (
    <Section head="What went through" aside={wear.sheets === 1 ? "1 sheet" : `${wear.sheets} sheets`}>
      <p className="small soft">A run counts its sheets by itself. Count here what went through without one.</p>
      <Field label="More sheets" text={sheets} onText={setSheets} read={readCount} kind="number" signs={4} hint="2" />
      <div className="Trays-Bath-acts">
        <Button
          waits={counted.kind === "read" ? undefined : "how many"}
          onPress={() => {
            if (counted.kind !== "read") return;
            change(countedSet(bath, counted.value, sheetM2, momentNow()), "sheets counted");
            setSheets("");
          }}
        >
          Count them
        </Button>
        {isVented(bath) && (
          <Button
            onPress={() =>
              change({ bubblesAt: foams ? null : { ...momentNow() } }, foams ? "no gas after all" : "gas at the entry")
            }
          >
            {foams ? "No gas after all" : "Gas at the entry of a sheet"}
          </Button>
        )}
      </div>
      <Field
        label={strips.length === 0 ? "A strip in it while fresh took" : "A strip like the first now took"}
        text={strip}
        onText={setStrip}
        read={readSeconds}
        kind="time"
        signs={6}
        hint="60 s"
        aside="fully exposed and developed; until it is clear, or fully black in a developer"
      />
      <div className="Trays-Bath-acts">
        <Button
          waits={timed.kind === "read" ? undefined : "a time"}
          onPress={() => {
            if (timed.kind !== "read") return;
            change(stripSet(bath, timed.value, momentNow()), "a strip timed");
            setStrip("");
          }}
        >
          Keep the strip
        </Button>
      </div>
      {strips.length > 0 && (
        <p className="small soft">
          Strips so far: {strips.map(({ timeS }) => `${Math.round(timeS)} s`).join(", ")}. The first is the measure.
        </p>
      )}
      {!isVented(bath) && (
        <Choice
          label="It stands"
          value={bath.keptIn ?? "tray"}
          onChoose={(keptIn) => change({ keptIn }, keptIn === "bottle" ? "into a bottle" : "into the tray")}
          options={[
            { value: "tray", name: "in the open tray" },
            { value: "bottle", name: "in a full bottle" },
          ]}
        />
      )}
    </Section>
  );
}

const papers = [
  { value: "a6", name: "A6" },
  { value: "a4", name: "A4" },
  { value: "letter", name: "Letter" },
] as const;

function Label({ state }: { readonly state: BathOnHand }) {
  const [paper, setPaper] = useState<PaperName>("a6");
  const isRed = useLight() === "red";
  const page = trueScalePage({ paper, piece: bathLabel(labelOf(state)), isCut: paper !== "a6" });
  return (
    <Section head="Its label" aside={isVented(state.bath) ? "vented, never stoppered" : undefined}>
      <TrueScale page={page} paper={paper} />
      <Choice label="Paper" value={paper} onChoose={setPaper} options={papers} />
      <div className="Trays-Bath-acts">
        <Button onPress={() => print()} waits={isRed ? "daylight; the printer’s window is white" : undefined}>
          Print the label
        </Button>
      </div>
    </Section>
  );
}

function Notes({ notes, change }: { readonly notes: string; readonly change: Change }) {
  const [text, onText] = useSettled(notes, (next) => change({ notes: next === "" ? null : next }, "notes"));
  return (
    <Section head="Notes">
      <PlainField label="What is worth knowing of it" text={text} onText={onText} most={2000} />
    </Section>
  );
}
