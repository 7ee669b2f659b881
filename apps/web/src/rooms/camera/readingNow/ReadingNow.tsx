import type { Result } from "@captray/notebook/records";
import { readTime } from "@captray/science/notation";
import { memo, useCallback, useMemo } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { ExposureBar } from "../../../kit/ExposureBar.tsx";
import { Field, type FieldProps } from "../../../kit/Field.tsx";
import { Page } from "../../../kit/Page.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { useBoardPlace } from "../../../kit/useBoard.ts";
import { Word } from "../../../kit/Word.tsx";
import { isWideDoubt } from "../wideDoubt.ts";
import type { FieldName, SaidBetter } from "./draft.ts";
import { GrantedList } from "./GrantedList.tsx";
import type { BarView } from "./readingNowView.ts";
import { readerOf } from "./readTexts.ts";
import { useReadingNow } from "./useReadingNow.ts";
import "./ReadingNow.css";

/** “I have a reading now”: seven fields, a cap time, and what it takes for granted. The id names a sheet to make again. */
export default function ReadingNow({ id }: { readonly id: string }) {
  const { draft, view, kits, happen, takeKit, anotherScene, openLedger, toStepTest, toTheCap } = useReadingNow({
    againId: id,
  });
  const field = (name: FieldName) => ({ name, text: draft.texts[name], happen });
  const onBetter = useCallback((said: Partial<SaidBetter>) => happen({ event: "better", said }), [happen]);
  const unused = kits.filter(
    (kit) => kit.texts.focalLength !== draft.texts.focalLength || kit.texts.lensFNumber !== draft.texts.lensFNumber,
  );
  return (
    <Page title="I have a reading now" closeTo="/camera">
      <div className="Camera-ReadingNow">
        <div className="Camera-ReadingNow-fields" data-walk>
          {(unused.length > 0 || draft.sceneId !== undefined) && (
            <div className="Camera-ReadingNow-kits">
              {unused.slice(0, 3).map((kit) => (
                <Button key={kit.key} onPress={() => takeKit(kit)} spoken={`Take the ${kit.name}`}>
                  {kit.name}
                </Button>
              ))}
              {draft.sceneId !== undefined && <Button onPress={anotherScene}>Another scene</Button>}
            </div>
          )}
          <fieldset>
            <legend>The meter says</legend>
            <div className="Camera-ReadingNow-meter">
              <TypedField label="Time the meter shows" kind="time" after="s" {...field("time")} />
              <TypedField label="f-number on the meter" kind="fNumber" before="f/" {...field("meterFNumber")} />
              <TypedField label="ISO on the meter" kind="number" before="ISO" {...field("iso")} />
            </div>
            {view.timeSaid !== undefined && <p className="small soft">{view.timeSaid}</p>}
          </fieldset>
          <fieldset>
            <legend>The lens says</legend>
            <div className="Camera-ReadingNow-lens">
              <TypedField label="Focal length" kind="mm" after="mm" {...field("focalLength")} />
              <TypedField label="f-number of the lens" kind="fNumber" before="f/" {...field("lensFNumber")} />
              <span className="small soft">{view.apertureSaid}</span>
            </div>
          </fieldset>
          <fieldset>
            <legend>Board to ground glass</legend>
            <div className="Camera-ReadingNow-board">
              <TypedField label="Board to ground glass" kind="mm" after="mm" {...field("extension")} />
              {draft.texts.extension.trim() === "" ? (
                <Button onPress={() => happen({ event: "typed", field: "extension", text: "distant" })}>distant</Button>
              ) : (
                <span className="small soft">{view.extensionSaid}</span>
              )}
            </div>
          </fieldset>
          <Kind result={draft.result} {...view.indexes} happen={happen} />
          {view.problem !== undefined && <ProblemNote head={view.problem.head}>{view.problem.say}</ProblemNote>}
        </div>
        <div className="Camera-ReadingNow-answer">
          {draft.result !== undefined && view.granted.length > 0 ? (
            <Section head="Taken for granted" aside="press one to say better">
              <GrantedList granted={view.granted} result={draft.result} better={draft.better} onBetter={onBetter} />
              <p className="small soft">Lens, meter and this paper go on the shelf by themselves.</p>
              {view.plan.kind === "plan" && isWideDoubt({ sdStops: view.plan.answer.timeStops.sd }) && (
                <p className="say">
                  So wide a doubt is best answered by one sheet of strips:{" "}
                  <Word inline onPress={toStepTest}>
                    make a step test first
                  </Word>
                  .
                </p>
              )}
              <Word onPress={openLedger}>Open the ledger, line by line</Word>
              <Said draft={draft.said} onSaid={(text) => happen({ event: "said", text })} answer={view.said} />
            </Section>
          ) : (
            <Section head="What comes of it">
              <p className="say">
                The time stands below as soon as the reading, the lens’s f-number and the kind are there. Everything
                else is taken for granted, and listed here with its doubt.
              </p>
            </Section>
          )}
        </div>
      </div>
      <Bar bar={view.bar} onCap={toTheCap} />
    </Page>
  );
}

type Happen = ReturnType<typeof useReadingNow>["happen"];

interface TypedFieldProps extends Pick<FieldProps, "label" | "kind" | "before" | "after"> {
  readonly name: FieldName;
  readonly text: string;
  readonly happen: Happen;
}

/** Drawn anew only for what is typed into it: the rest of the page changes at every key. */
const TypedField = memo(function TypedField({ name, happen, ...field }: TypedFieldProps) {
  const read = useMemo(() => readerOf(name), [name]);
  const onText = (text: string) => happen({ event: "typed", field: name, text });
  return <Field labelUnseen quiet below read={read} onText={onText} {...field} />;
});

const Kind = memo(function Kind(props: {
  readonly result: Result | undefined;
  readonly negative: string;
  readonly positive: string;
  readonly happen: Happen;
}) {
  return (
    <Choice
      label="It becomes a"
      value={props.result}
      onChoose={(result) => props.happen({ event: "result", result })}
      options={[
        { value: "negative", name: "paper negative", detail: props.negative },
        { value: "positive", name: "direct positive", detail: props.positive },
      ]}
    />
  );
});

function Said(props: {
  readonly draft: string;
  readonly onSaid: (text: string) => void;
  readonly answer: string | undefined;
}) {
  return (
    <div className="Camera-Said">
      <Field
        label="I worked it out as"
        text={props.draft}
        onText={props.onSaid}
        read={(text) => readTime({ text })}
        kind="time"
        after="s"
        signs={6}
        aside={props.answer}
      />
    </div>
  );
}

function Bar({ bar, onCap }: { readonly bar: BarView; readonly onCap: () => void }) {
  const place = useBoardPlace();
  return (
    <ExposureBar
      time={bar.time?.figures}
      {...(bar.time === undefined ? {} : { unit: bar.time.unit })}
      action={
        place !== undefined ? (
          <span className="small">
            field
            <br />
            {place.field} of {place.of}
          </span>
        ) : (
          <Button main onPress={onCap} waits={bar.waits}>
            To the cap
          </Button>
        )
      }
    >
      <b>{bar.head}</b>
      {bar.second !== undefined && <span>{bar.second}</span>}
    </ExposureBar>
  );
}
