import type { Moment, Sheet, StepDate } from "@captray/notebook/records";
import { readTime } from "@captray/science/notation";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { Field } from "../../../kit/Field.tsx";
import { Word } from "../../../kit/Word.tsx";
import { useLight } from "../../../look/light.ts";
import { readMoment } from "./readMoment.ts";
import { SideOfSheet } from "./SideOfSheet.tsx";
import type { StoryView } from "./storyView.ts";

export interface WayActs {
  /** Dates a step, with what goes along; null takes its date away. */
  readonly date: (step: StepDate, word: string, at: Moment | null, more?: { readonly flashGivenS?: number }) => void;
  readonly toSide: (holderId: string, sideId: string) => void;
}

/** The way of a sheet: an upright line with a square for each step, filled when it happened; any of them can be put right. */
export function WayOfSheet({
  view,
  sheet,
  acts,
}: {
  readonly view: StoryView;
  readonly sheet: Sheet;
  readonly acts: WayActs;
}) {
  const [open, setOpen] = useState<StepDate>();
  const [all, setAll] = useState(false);
  const shut = () => setOpen(undefined);
  const coming = all ? [...view.next, ...view.rarer] : view.next;
  return (
    <>
      <ol className="Logbook-Way" aria-label="The way of the sheet">
        {view.way.map(({ step, when, word, text, planned }) => (
          <li key={step} data-done>
            <span className="Logbook-Way-when">{when}</span>
            <span className="Logbook-Way-pin" />
            <span className="Logbook-Way-text">
              <b>{word}</b> {text}{" "}
              <Word inline onPress={() => setOpen(open === step ? undefined : step)} spoken={`${word}: put it right`}>
                put it right
              </Word>
              {open === step && <StepForm step={step} word={word} sheet={sheet} acts={acts} onDone={shut} dated />}
            </span>
            <span className="Logbook-Way-planned">{planned}</span>
          </li>
        ))}
        {coming.map(({ step, word, planned }) => (
          <li key={step}>
            <span className="Logbook-Way-when">to come</span>
            <span className="Logbook-Way-pin" />
            <span className="Logbook-Way-text">
              <Word onPress={() => acts.date(step, word, momentNow())} spoken={`${word}: now`}>
                {word} now
              </Word>{" "}
              <Word
                inline
                onPress={() => setOpen(open === step ? undefined : step)}
                spoken={`${word}: at another time`}
              >
                at another time
              </Word>
              {open === step && <StepForm step={step} word={word} sheet={sheet} acts={acts} onDone={shut} />}
            </span>
            <span className="Logbook-Way-planned">{planned}</span>
          </li>
        ))}
      </ol>
      {!all && view.rarer.length > 0 && <Word onPress={() => setAll(true)}>Another step</Word>}
    </>
  );
}

interface FormProps {
  readonly step: StepDate;
  readonly word: string;
  readonly sheet: Sheet;
  readonly acts: WayActs;
  readonly onDone: () => void;
  /** It has a date, which can be taken away. */
  readonly dated?: boolean;
}

/** When it was, typed in ordinary words; in red light by a press. Taken away, it did not happen. */
function StepForm({ step, word, sheet, acts, onDone, dated = false }: FormProps) {
  const [text, setText] = useState("");
  const [seconds, setSeconds] = useState("");
  const [openedAt] = useState(momentNow);
  const red = useLight() === "red";
  const read = readMoment({ text, now: openedAt });
  const flash = readTime({ text: seconds });
  const flashGivenS = step === "flashedAt" && flash.kind === "read" && flash.value <= 86_400 ? flash.value : undefined;
  const set = (at: Moment | null) => {
    acts.date(step, word, at, flashGivenS === undefined ? {} : { flashGivenS });
    onDone();
  };
  // Seconds put right alone leave the date as it is.
  const at = read.kind === "read" ? read.moment : flashGivenS === undefined ? undefined : (sheet[step] ?? openedAt);
  return (
    <div className="Logbook-Way-form">
      {red ? (
        <div className="Logbook-Way-acts">
          <Button onPress={() => set(momentNow())}>It was now</Button>
          <Button onPress={() => set(ago(15))}>15 min ago</Button>
          <span className="small soft">Other hours wait for daylight.</span>
        </div>
      ) : (
        <>
          <Field
            label={`${word}: when it was`}
            text={text}
            onText={setText}
            read={(typed) => readMoment({ text: typed, now: openedAt })}
            kind="number"
            hint="14:12, yesterday 20:40"
          />
          {step === "flashedAt" && (
            <Field
              label="Seconds of flash given"
              text={seconds}
              onText={setSeconds}
              read={(typed) => readTime({ text: typed })}
              kind="time"
              after="s"
              signs={8}
              hint={String(sheet.flashGivenS ?? sheet.flashPlanned?.timeS ?? "")}
            />
          )}
          {at !== undefined && <Button onPress={() => set(at)}>Set it so</Button>}
        </>
      )}
      {step === "loadedAt" && <SideOfSheet sheet={sheet} onSide={acts.toSide} />}
      {dated && (
        <div className="Logbook-Way-acts">
          <Button onPress={() => set(null)}>It did not happen</Button>
          {step === "exposedAt" && sheet.openings.length > 0 && (
            <span className="small soft">its openings go with it; take back brings them again</span>
          )}
        </div>
      )}
    </div>
  );
}

function ago(minutes: number): Moment {
  const now = momentNow();
  return { ...now, at: now.at - minutes * 60_000 };
}
