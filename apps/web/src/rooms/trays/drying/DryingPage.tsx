import type { DryingAct } from "@captray/notebook/answers";
import type { Hangs } from "@captray/notebook/records";
import { useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Caution } from "../../../kit/Caution.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Page } from "../../../kit/Page.tsx";
import { PlainField } from "../../../kit/PlainField.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { useLight } from "../../../look/light.ts";
import type { DryingRow } from "./dryingView.ts";
import { useDrying } from "./useDrying.ts";
import "./DryingPage.css";

/** What hangs where to dry, which is which, and what comes of it once it is dry. */
export default function DryingPage() {
  const { view, isReading, act, toldApart } = useDrying();
  const { hanging, dry, questions, someUnfixed, somePositive } = view;
  if (hanging.length + dry.length === 0) {
    return (
      <Page title="Drying" closeTo="/trays">
        {isReading ? (
          <p className="soft" role="status">
            Opening
          </p>
        ) : (
          <NothingYet way={<Word to="/trays">To the trays</Word>}>
            What comes out of the wash stands here with its place: the hook, the screen, its place on the line. So
            nobody has to guess in the morning which print is which.
          </NothingYet>
        )}
      </Page>
    );
  }
  return (
    <Page title="Drying" closeTo="/trays">
      <div className="Trays-Drying">
        {questions.map(({ runId, laneIds, head }) => (
          <ProblemNote
            key={`${runId} ${laneIds.join(" ")}`}
            head={head}
            ways={<Button onPress={() => toldApart(runId, laneIds)}>They are told apart</Button>}
          >
            Which is which? Turn each over: its code is pencilled on the back. Then say below where each one hangs. If a
            code and its picture do not belong together, its page in the logbook swaps two sheets.
          </ProblemNote>
        ))}
        {hanging.length > 0 && (
          <Section head="What hangs where" aside={count(hanging.length)}>
            <ul className="Trays-Drying-list">
              {hanging.map((row) => (
                <Row key={row.key} row={row} onAct={(done, note) => act(row.thing, done, note)} />
              ))}
            </ul>
          </Section>
        )}
        {dry.length > 0 && (
          <Section head="Dry, taken down" aside={count(dry.length)}>
            <ul className="Trays-Drying-list">
              {dry.map((row) => (
                <DryRow key={row.key} row={row} onAct={(done, note) => act(row.thing, done, note)} />
              ))}
            </ul>
          </Section>
        )}
        {someUnfixed && (
          <ProblemNote head="Unfixed prints: label them so">
            Halide that escaped the re-exposure or the second developer darkens in light. Fix the print, or test it: a
            drop of fixer on an edge for 2 minutes, rinse, an hour of daylight. Any difference is halide.
          </ProblemNote>
        )}
        <Section head="How it dries">
          <p className="say">
            Plastic-coated paper: wipe it, hang it by a corner, never warmer than 60 °C. Fibre paper: face up on a
            screen; flatten it under weight when it is dry. Curl is only the air’s moisture.
          </p>
          {somePositive && (
            <Caution stuff="Peroxide">
              attacks silver pictures: wash it out fully, and never keep prints near it. A mixed peroxide bath is
              discarded the same sitting, open, never stoppered. The supplier’s safety sheet comes first.
            </Caution>
          )}
          <Word to="/trays/baths">To the baths: what is to be discarded</Word>
        </Section>
      </div>
    </Page>
  );
}

interface RowProps {
  readonly row: DryingRow;
  readonly onAct: (done: DryingAct, note: string) => void;
}

function Row({ row, onAct }: RowProps) {
  const [open, setOpen] = useState(false);
  const { thing, what, where, since, label } = row;
  return (
    <li>
      <Code row={row} />
      <span>
        {what}
        <span className="Trays-Drying-more small soft">{since}</span>
        {label !== "" && <b className="Trays-Drying-label">{label}</b>}
      </span>
      <span className="Trays-Drying-where">
        <Word onPress={() => setOpen(!open)} spoken={`${thing.code} hangs: ${where}. Change it`}>
          {where}
        </Word>
      </span>
      <Button
        onPress={() => onAct({ act: "takeDown" }, "dry, taken down")}
        spoken={`${thing.code} is dry: take it down`}
      >
        Dry: take it down
      </Button>
      {open && (
        <PlaceForm
          row={row}
          onPlace={(hangs) => {
            onAct({ act: "hang", hangs }, "has its place");
            setOpen(false);
          }}
        />
      )}
    </li>
  );
}

function PlaceForm({ row, onPlace }: { readonly row: DryingRow; readonly onPlace: (hangs: Hangs) => void }) {
  const held = row.thing.hangs;
  const [on, setOn] = useState<Hangs["on"]>(held?.on ?? "line");
  const [number, setNumber] = useState(held?.number ?? 1);
  const [words, setWords] = useState(held?.words ?? "");
  const red = useLight() === "red";
  const isNumbered = on !== "glass" && on !== "elsewhere";
  const said = words.trim();
  return (
    <div className="Trays-Drying-form">
      <Choice
        label={`Where ${row.thing.code} hangs`}
        value={on}
        onChoose={setOn}
        options={[
          { value: "line", name: "line" },
          { value: "hook", name: "hook" },
          { value: "screen", name: "screen" },
          { value: "glass", name: "glass" },
          { value: "elsewhere", name: "elsewhere" },
        ]}
      />
      {isNumbered && (
        <div className="Trays-Drying-number">
          <Button big onPress={() => setNumber(Math.max(1, number - 1))} spoken="One place back">
            −
          </Button>
          <b role="status">{on === "line" ? `place ${number}` : `${on} ${number}`}</b>
          <Button big onPress={() => setNumber(Math.min(99, number + 1))} spoken="One place on">
            +
          </Button>
        </div>
      )}
      {!red && <PlainField label="in words" text={words} onText={setWords} most={60} hint="by the stove" />}
      <Button main onPress={() => onPlace({ on, ...(isNumbered && { number }), ...(said !== "" && { words: said }) })}>
        It hangs there
      </Button>
    </div>
  );
}

function DryRow({ row, onAct }: RowProps) {
  const { code } = row.thing;
  return (
    <li>
      <Code row={row} />
      <span>
        {row.what}
        {row.label !== "" && <b className="Trays-Drying-label">{row.label}</b>}
      </span>
      <span className="Trays-Drying-acts">
        <Button onPress={() => onAct({ act: "keptAt" }, "kept")} spoken={`${code}: keep it`}>
          Keep
        </Button>
        <Button onPress={() => onAct({ act: "discardedAt" }, "discarded")} spoken={`${code}: discard it`}>
          Discard
        </Button>
        <Word onPress={() => onAct({ act: "hangAgain" }, "hangs again")} spoken={`${code} is still wet: hang it again`}>
          Still wet
        </Word>
      </span>
    </li>
  );
}

function Code({ row: { thing } }: { readonly row: DryingRow }) {
  return (
    <a className="Trays-Drying-code" href={`#/logbook/${thing.sheetId}`} aria-label={`${thing.code}: its page`}>
      {thing.letter === undefined ? thing.code : thing.code.slice(0, -1)}
      {thing.letter !== undefined && <i>{thing.letter}</i>}
    </a>
  );
}

function count(things: number): string {
  return things === 1 ? "1 sheet or piece" : `${things} sheets and pieces`;
}
