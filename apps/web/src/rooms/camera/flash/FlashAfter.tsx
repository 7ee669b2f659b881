import { useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Field } from "../../../kit/Field.tsx";
import { Page } from "../../../kit/Page.tsx";
import { Section } from "../../../kit/Section.tsx";
import { TakeBackStrip } from "../../../kit/TakeBackStrip.tsx";
import { secondsWords } from "../capPage/capWords.ts";
import { readFlashTime } from "./flashForms.ts";
import { flashNoticeWords } from "./flashTimerView.ts";
import type { FlashInHand } from "./useFlashTimer.ts";
import "./Flash.css";

/** After the lamp: what each step was given, put right where it was otherwise, and what the hands do next. */
export function FlashAfter({
  flash,
  title,
  closeTo,
  then,
}: {
  readonly flash: FlashInHand;
  readonly title: string;
  readonly closeTo: string;
  readonly then: { readonly word: string; readonly say: string; readonly onPress: () => void };
}) {
  const { state, happen, keeping } = flash;
  const notice = flashNoticeWords(state.notice);
  const assumed = state.given.every((move) => move?.by === "asPlanned");
  const last = state.corrections.at(-1);
  return (
    <Page title={assumed ? `${title}: taken as planned` : `${title}: kept as given`} closeTo={closeTo}>
      <div className="Camera-Flash-page">
        {notice !== null && <p className="Camera-Cap-notice">{notice}</p>}
        {keeping === "failed" && (
          <p className="Camera-Cap-notice" role="alert">
            This machine would not keep it. Write the seconds down before you close it.
          </p>
        )}
        <Section head="What was given" aside="seconds since the lamp came on">
          <ol className="Camera-Flash-given">
            {state.given.map((move, place) => (
              <Step
                // biome-ignore lint/suspicious/noArrayIndexKey: a step is its place in time
                key={place}
                name={state.given.length === 1 ? "the flash" : `step ${place + 1}`}
                atS={move?.atS ?? 0}
                how={move?.by === "press" ? "" : move?.by === "corrected" ? "put right" : "as planned"}
                between={[state.given[place - 1]?.atS ?? 0, state.given[place + 1]?.atS ?? Number.POSITIVE_INFINITY]}
                onAt={(atS) => happen({ kind: "correct", place, atS })}
              />
            ))}
          </ol>
        </Section>
        <Section head="What now">
          <p className="say">{then.say}</p>
          <Button main wide big onPress={then.onPress}>
            {then.word}
          </Button>
        </Section>
        <div className="Camera-Flash-foot">
          <TakeBackStrip
            said={last === undefined ? `${title}: flash given` : "A time put right"}
            onTakeBack={() => happen({ kind: "takeBack" })}
          />
        </div>
      </div>
    </Page>
  );
}

function Step({
  name,
  atS,
  how,
  between: [after, before],
  onAt,
}: {
  readonly name: string;
  readonly atS: number;
  readonly how: string;
  readonly between: readonly [number, number];
  readonly onAt: (atS: number) => void;
}) {
  const [text, setText] = useState("");
  const read = (typed: string) => {
    const answer = readFlashTime(typed);
    if (answer.kind !== "read" || (answer.value > after && answer.value < before)) return answer;
    const message =
      answer.value <= after
        ? `The step before it had ${secondsWords(after)} already.`
        : `The step after it had ${secondsWords(before)} only.`;
    return { kind: "unreadable" as const, message };
  };
  const reading = read(text);
  return (
    <li>
      <span>
        <b>{secondsWords(atS)}</b> <span className="small soft">{how}</span>
      </span>
      <div className="Camera-Flash-typed">
        <Field
          label={`Put ${name} right`}
          text={text}
          onText={setText}
          read={read}
          kind="time"
          after="s"
          signs={6}
          hint={String(atS)}
        />
        {reading.kind === "read" && (
          <Button
            onPress={() => {
              onAt(reading.value);
              setText("");
            }}
          >
            Keep {secondsWords(reading.value)}
          </Button>
        )}
      </div>
    </li>
  );
}
