import { readTime } from "@captray/science/notation";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { ExposureBar } from "../../../kit/ExposureBar.tsx";
import { Field } from "../../../kit/Field.tsx";
import { Page } from "../../../kit/Page.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { useBoardPlace } from "../../../kit/useBoard.ts";
import { Word } from "../../../kit/Word.tsx";
import { GrantedList } from "./GrantedList.tsx";
import type { BarView } from "./readingNowView.ts";
import { readerOf } from "./readTexts.ts";
import { useReadingNow } from "./useReadingNow.ts";
import "./ReadingNow.css";

/** “I have a reading now”: seven fields, a cap time, and what it takes for granted. The id names a sheet to make again. */
export default function ReadingNow({ id }: { readonly id: string }) {
  const { draft, view, kits, happen, takeKit, anotherScene, openLedger, toTheCap } = useReadingNow({ againId: id });
  const field = (name: Parameters<typeof readerOf>[0]) => ({
    text: draft.texts[name],
    onText: (text: string) => happen({ event: "typed", field: name, text }),
    read: readerOf(name),
  });
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
              <Field label="Time the meter shows" labelUnseen kind="time" after="s" quiet below {...field("time")} />
              <Field
                label="f-number on the meter"
                labelUnseen
                kind="fNumber"
                before="f/"
                quiet
                below
                {...field("meterFNumber")}
              />
              <Field label="ISO on the meter" labelUnseen kind="number" before="ISO" quiet below {...field("iso")} />
            </div>
            {view.timeSaid !== undefined && <p className="small soft">{view.timeSaid}</p>}
          </fieldset>
          <fieldset>
            <legend>The lens says</legend>
            <div className="Camera-ReadingNow-lens">
              <Field label="Focal length" labelUnseen kind="mm" after="mm" quiet below {...field("focalLength")} />
              <Field
                label="f-number of the lens"
                labelUnseen
                kind="fNumber"
                before="f/"
                quiet
                below
                {...field("lensFNumber")}
              />
              <span className="small soft">{view.apertureSaid}</span>
            </div>
          </fieldset>
          <fieldset>
            <legend>Board to ground glass</legend>
            <div className="Camera-ReadingNow-board">
              <Field
                label="Board to ground glass"
                labelUnseen
                kind="mm"
                after="mm"
                quiet
                below
                {...field("extension")}
              />
              {draft.texts.extension.trim() === "" ? (
                <Button onPress={() => happen({ event: "typed", field: "extension", text: "distant" })}>distant</Button>
              ) : (
                <span className="small soft">{view.extensionSaid}</span>
              )}
            </div>
          </fieldset>
          <Choice
            label="It becomes a"
            value={draft.result}
            onChoose={(result) => happen({ event: "result", result })}
            options={[
              { value: "negative", name: "paper negative", detail: view.indexes.negative },
              { value: "positive", name: "direct positive", detail: view.indexes.positive },
            ]}
          />
          {view.problem !== undefined && <ProblemNote head={view.problem.head}>{view.problem.say}</ProblemNote>}
        </div>
        <div className="Camera-ReadingNow-answer">
          {draft.result !== undefined && view.granted.length > 0 ? (
            <Section head="Taken for granted" aside="press one to say better">
              <GrantedList
                granted={view.granted}
                result={draft.result}
                better={draft.better}
                onBetter={(said) => happen({ event: "better", said })}
              />
              <p className="small soft">Lens, meter and this paper go on the shelf by themselves.</p>
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
