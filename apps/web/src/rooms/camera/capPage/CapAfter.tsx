import type { Notebook } from "@captray/notebook/journal";
import { mishaps, nextSheetCode, type Sheet } from "@captray/notebook/records";
import { readTime } from "@captray/science/notation";
import { useEffect, useRef, useState } from "react";
import { listenForHeldKey } from "../../../devices/heldKey.ts";
import { Button } from "../../../kit/Button.tsx";
import { beginning } from "../../../kit/beginning.ts";
import { Field } from "../../../kit/Field.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { mishapWords } from "../../../kit/mishapWords.ts";
import { TakeBackStrip } from "../../../kit/TakeBackStrip.tsx";
import { Word } from "../../../kit/Word.tsx";
import { FlashLine } from "../flash/FlashLine.tsx";
import { leastTotal } from "./capState.ts";
import { afterView, capSpoken, noticeWords, strippedWords } from "./capView.ts";
import { secondsWords } from "./capWords.ts";
import { placeWords } from "./placeWords.ts";
import type { CapInHand } from "./useCapPage.ts";

const dayTime = new Intl.DateTimeFormat(undefined, { hour: "2-digit", minute: "2-digit", hourCycle: "h23" });

/** After the exposure: what was given, put right where it was not so, and what the hands do next. */
export function CapAfter({
  notebook,
  sheet,
  cap,
}: {
  readonly notebook: Notebook;
  readonly sheet: Sheet;
  readonly cap: CapInHand;
}) {
  const { state, nowMs, practice, happen, keeping } = cap;
  const view = afterView({ state, nowMs, practice, clock: (ms) => dayTime.format(ms) });
  const notice = noticeWords({ state });
  const head = useRef<HTMLHeadingElement>(null);
  const [wrong, setWrong] = useState(state.mishaps.length > 0);
  useEffect(() => head.current?.focus(), []);
  useEffect(
    () => listenForHeldKey({ key: "Backspace", forMs: 2000, onHeld: () => happen({ kind: "takeBack" }) }),
    [happen],
  );
  const code = sheet.code ?? "The sheet";
  const place = placeWords({ notebook, sheet });
  const change = state.changes.at(-1);
  const step = secondsWords(view.stepS);
  return (
    <div className="Camera-CapAfter">
      <section className="Camera-CapAfter-given" data-ground="dark" aria-label="What was given">
        <header className="Camera-Cap-top">
          <b>{code}</b>
          <span>{place}</span>
        </header>
        <h1 ref={head} tabIndex={-1}>
          {view.head}
        </h1>
        <p className="Camera-CapAfter-figure" data-signs={view.figure.length > 4 ? "many" : "few"}>
          {view.figure}
          <small> {view.unit}</small>
        </p>
        {view.lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {notice !== null && <p className="Camera-Cap-notice">{notice}</p>}
        {keeping === "failed" && (
          <p className="Camera-Cap-notice" role="alert">
            This machine would not keep it. It stays on this page: write {view.figure} {view.unit} down before you close
            it.
          </p>
        )}
      </section>
      <div className="Camera-CapAfter-then">
        {(view.stillOff || view.goOnS !== null) && (
          <div className="Camera-CapAfter-ways">
            {view.stillOff && (
              <Button big onPress={() => happen({ kind: "stillOff" })}>
                The cap is still off
              </Button>
            )}
            {view.goOnS !== null && (
              <Button big onPress={() => happen({ kind: "goOn" })}>
                Go on: {secondsWords(view.goOnS)} still to give
              </Button>
            )}
          </div>
        )}
        <h2>
          Was it not so? <span>The watch or the voice said otherwise:</span>
        </h2>
        <div className="Camera-CapAfter-put">
          <Correction
            word={`−${step}`}
            line="cap was on sooner"
            onPress={() => happen({ kind: "correct", byS: -view.stepS })}
          />
          <Correction
            word={`+${step}`}
            line="cap was on later"
            onPress={() => happen({ kind: "correct", byS: view.stepS })}
          />
        </div>
        <Typed
          given={view.figure}
          least={leastTotal(state.openings)}
          onTyped={(totalS) => happen({ kind: "typed", totalS })}
        />
        <ol className="Camera-CapAfter-hands">
          <Check on={state.done.includes("slideIn")} onChange={() => happen({ kind: "hand", step: "slideIn" })}>
            Slide in, its exposed face out
          </Check>
          <Check on={state.done.includes("holderOut")} onChange={() => happen({ kind: "hand", step: "holderOut" })}>
            Holder out, {place === "" ? code : place} marked with the pencil
          </Check>
          <li>
            <button
              type="button"
              className="Kit-Word Camera-CapAfter-wrong"
              aria-expanded={wrong}
              onClick={() => setWrong(!wrong)}
            >
              Something went wrong
            </button>
            {wrong && (
              <ul aria-label="Something went wrong">
                {mishaps.map((what) => (
                  <Check
                    key={what}
                    on={state.mishaps.includes(what)}
                    onChange={() => happen({ kind: "mishap", mishap: what })}
                  >
                    {beginning(mishapWords[what])}
                  </Check>
                ))}
                <li className="small soft">
                  A sheet with a mishap is kept, and left out when the paper is worked out.
                </li>
              </ul>
            )}
          </li>
        </ol>
        <Button main wide aside="the same scene, read anew" onPress={() => goTo({ path: `/camera/now/${sheet.id}` })}>
          Next sheet: {nextSheetCode({ codes: notebook.cards().map((card) => card.code) })}
        </Button>
        {sheet.testId !== undefined && (
          <Word to={`/camera/step/${sheet.testId}`}>Which strip is right? After the trays</Word>
        )}
        <FlashLine id={sheet.id} />
        <Word to={`/logbook/${sheet.id}`}>The page of {code}</Word>
      </div>
      <div className="Camera-CapAfter-strip">
        {change !== undefined && (
          <TakeBackStrip said={strippedWords({ state, code })} onTakeBack={() => happen({ kind: "takeBack" })} />
        )}
      </div>
      <p className="unseen" role="status">
        {capSpoken({ state, nowMs })}
      </p>
    </div>
  );
}

function Correction({
  word,
  line,
  onPress,
}: {
  readonly word: string;
  readonly line: string;
  readonly onPress: () => void;
}) {
  return (
    <Button big wide onPress={onPress}>
      {word}
      <small>{line}</small>
    </Button>
  );
}

function Typed({
  given,
  least,
  onTyped,
}: {
  readonly given: string;
  readonly least: number;
  readonly onTyped: (totalS: number) => void;
}) {
  const [text, setText] = useState("");
  const reading = readTime({ text });
  const short = reading.kind === "read" && reading.value < least;
  const long = reading.kind === "read" && reading.value > 86_400;
  const sound = reading.kind === "read" && !short && !long ? reading.value : null;
  const beyond = short
    ? `The openings before the last one were ${secondsWords(least - 0.1)} already.`
    : long
      ? "More than a day: is it meant in minutes?"
      : null;
  return (
    <div className="Camera-CapAfter-typed">
      <Field
        label="or in figures, all openings together"
        kind="time"
        after="s"
        hint={given}
        text={text}
        onText={setText}
        read={(one) => readTime({ text: one })}
        {...(beyond === null ? {} : { aside: beyond })}
      />
      {sound !== null && (
        <Button
          onPress={() => {
            onTyped(sound);
            setText("");
          }}
        >
          Keep {secondsWords(sound)}
        </Button>
      )}
    </div>
  );
}

function Check({
  on,
  onChange,
  children,
}: {
  readonly on: boolean;
  readonly onChange: () => void;
  readonly children: React.ReactNode;
}) {
  return (
    <li>
      <label className="Camera-CapAfter-check">
        <input type="checkbox" checked={on} onChange={onChange} />
        <span>{children}</span>
      </label>
    </li>
  );
}
