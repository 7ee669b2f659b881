import { lightTestSteps } from "@captray/notebook/answers";
import type { Test } from "@captray/notebook/records";
import { useEffect, useId } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { BigPress } from "../../../kit/BigPress.tsx";
import { Button } from "../../../kit/Button.tsx";
import { darkList } from "../../../kit/darkList.ts";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Page } from "../../../kit/Page.tsx";
import { movesOf } from "../../../kit/timedLevels.ts";
import { Word } from "../../../kit/Word.tsx";
import { turnLight, useLight } from "../../../look/light.ts";
import { givenSets, lightFromRecords } from "./lightRecords.ts";
import { startLight } from "./lightTimerState.ts";
import { lightTimerView } from "./lightTimerView.ts";
import { bandWords, lightName } from "./lightWords.ts";
import { useLightTests } from "./useLightTests.ts";
import { useLightTimer } from "./useLightTimer.ts";
import "./Light.css";

/** A light tried on a sheet, timed: grey, light in steps, grey. */
export default function LightGivePage({ id }: { readonly id: string }) {
  const { tests } = useLightTests();
  const test = tests.find((one) => one.id === id);
  if (test === undefined || movesOf(test).length === 0) {
    return (
      <Page title="Light test" closeTo="/trays/light">
        <NothingYet way={<Word to="/trays/light">All light tests</Word>}>
          There is no light test of that address.
        </NothingYet>
      </Page>
    );
  }
  return <Give key={test.id} test={test} />;
}

function Give({ test }: { readonly test: Test }) {
  const { notebook } = useLightTests();
  const light = useLight();
  const id = useId();
  const back = `/trays/light/${test.id}`;
  const timer = useLightTimer({
    testId: test.id,
    fromRecords: () => lightFromRecords(test),
    keep: (state) => {
      const held = notebook.peek(test.id);
      if (held?.kind !== "test") return undefined;
      const sets = givenSets(state, held, momentNow());
      return sets.length === 0 ? undefined : notebook.change(sets, "Light test given").kept;
    },
    keysOn: light === "red",
  });
  const { state, nowMs, failed, happen, again, wakeSound, say } = timer;
  const view = lightTimerView({ state, nowMs });
  useEffect(() => {
    document.title = `${lightName(test)}. Cap & Tray`;
  }, [test]);
  useEffect(() => {
    if (light === "red" && state.phase.name !== "after") say(view.spoken);
  }, [light, state.phase.name, view.spoken, say]);

  if (state.phase.name === "after") {
    return <After test={test} back={back} onAgain={() => again(startLight(state))} />;
  }
  if (light === "day") return <Before test={test} back={back} />;
  return (
    <div className="Trays-Light-give" data-red={view.allRed || undefined} data-phase={state.phase.name}>
      <BigPress
        className="Trays-Light-press"
        main
        means={`${state.phase.name} ${view.press}`}
        instant={state.phase.name !== "greyLeft"}
        onPress={(stampMs) => {
          wakeSound();
          happen("press", stampMs);
        }}
        describedBy={`${id}lines`}
      >
        <span className="unseen">{view.press === "" ? view.head : view.press}</span>
      </BigPress>
      <div className="Trays-Light-words">
        <h1>{view.head}</h1>
        <span className="Trays-Light-figure" role="timer" aria-live="off">
          {view.figure}
        </span>
        <div id={`${id}lines`}>
          {failed && <p role="alert">This machine would not keep it: write down what you give.</p>}
          {view.lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
        {view.press !== "" && (
          <p className="Trays-Light-means" aria-hidden="true">
            Press: {view.press.toLowerCase()}
          </p>
        )}
      </div>
      {state.phase.name !== "on" && (
        <BigPress
          className="Trays-Light-foot"
          means="leave"
          instant={false}
          onPress={() => {
            again(startLight(state));
            goTo({ path: back });
          }}
        >
          Leave it; nothing is kept
        </BigPress>
      )}
      <p className="unseen" role="status">
        {view.spoken}
      </p>
    </div>
  );
}

/** In daylight first the screen goes red: it would fog the paper it is to time. */
function Before({ test, back }: { readonly test: Test; readonly back: string }) {
  return (
    <Page title="Before the lights go out" closeTo={back}>
      <div className="Trays-Light">
        <p className="say">
          {test.light === "screen"
            ? "The screen is the light that is tried: as it will be in a run, so the list holds for the test too."
            : "This screen is white and would fog the paper. Turn it red before any paper is open; then it lies face down and calls."}
        </p>
        <ul className="Trays-Light-list">
          {darkList.map(([what, why]) => (
            <li key={what}>
              <b>{what}</b>
              <span className="small soft">{why}</span>
            </li>
          ))}
        </ul>
        <Button main wide big onPress={() => turnLight({ to: "red" })}>
          Red light, boxes shut
        </Button>
      </div>
    </Page>
  );
}

function After({ test, back, onAgain }: { readonly test: Test; readonly back: string; readonly onAgain: () => void }) {
  const steps = lightTestSteps({ test }).filter(({ plannedS }) => plannedS > 0);
  return (
    <Page title="Into the developer, in the dark">
      <div className="Trays-Light">
        <p className="say">
          Develop, stop and fix without any light, this screen face down. Dry, in good light, the page of the test asks
          what shows.
        </p>
        <ul className="Trays-Light-list">
          {steps.map(({ id, plannedS, timeS, takenAsPlanned }) => (
            <li key={id}>
              <b>band of {bandWords(plannedS)}</b>
              <span>{takenAsPlanned ? `${timeS} s, taken as planned` : `${timeS} s given`}</span>
            </li>
          ))}
        </ul>
        <Button main wide big onPress={() => goTo({ path: back })}>
          To the test
        </Button>
        <Button onPress={onAgain}>It went wrong: give it again</Button>
      </div>
    </Page>
  );
}
