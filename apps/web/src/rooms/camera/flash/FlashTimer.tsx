import { type ReactNode, useEffect, useId, useState } from "react";
import { BigPress } from "../../../kit/BigPress.tsx";
import { Word } from "../../../kit/Word.tsx";
import { turnLight, useLight } from "../../../look/light.ts";
import { flashNoticeWords, flashTimerView } from "./flashTimerView.ts";
import { type FlashInHand, useFlashTimer } from "./useFlashTimer.ts";
import "../capPage/CapPage.css";
import "./Flash.css";

/** The lamp timed: a count-in, a tick a second, one huge press, drawn for red light as the paper lies open. */
export function FlashTimer({
  title,
  place,
  closeTo,
  cautions,
  after,
  by = "lamp",
  ...bound
}: Omit<Parameters<typeof useFlashTimer>[0], "keysOn"> & {
  readonly title: string;
  /** Which lamp, which edge is which. */
  readonly place: string;
  readonly closeTo: string;
  readonly cautions: ReactNode;
  readonly after: (flash: FlashInHand) => ReactNode;
  /** By the cap the paper is in the camera, and the screen may stay white. */
  readonly by?: "lamp" | "cap";
}) {
  const light = useLight();
  const [inHolder, setInHolder] = useState(false);
  const bright = light === "day" && by === "lamp" && !inHolder;
  const flash = useFlashTimer({ ...bound, keysOn: !bright });
  useEffect(() => {
    document.title = `${title} at the lamp. Cap & Tray`;
  }, [title]);
  const { state } = flash;
  if (state.phase.name === "after") return after(flash);
  if (state.phase.name === "ready" && bright) {
    return <BeforeTheLamp title={title} closeTo={closeTo} cautions={cautions} onInHolder={() => setInHolder(true)} />;
  }
  return <AtTheLamp title={title} place={place} closeTo={closeTo} flash={flash} by={by} />;
}

/** In daylight first the screen goes red: it would fog what it is to time. */
function BeforeTheLamp({
  title,
  closeTo,
  cautions,
  onInHolder,
}: {
  readonly title: string;
  readonly closeTo: string;
  readonly cautions: ReactNode;
  readonly onInHolder: () => void;
}) {
  return (
    <div className="Camera-Flash-first">
      <header className="Camera-Cap-top">
        <b>{title}</b>
        <Word to={closeTo}>Close</Word>
      </header>
      <h1 tabIndex={-1}>This screen is white</h1>
      <p className="say">
        It would fog the paper it is to time. Turn it red before any paper is open; it asks before it turns white again.
      </p>
      {cautions}
      <BigPress className="Camera-Flash-turn" means="red" instant={false} onPress={() => turnLight({ to: "red" })}>
        <b>Red light, then the lamp</b>
      </BigPress>
      <Word onPress={onInHolder}>The paper is shut in its holder: stay in daylight</Word>
    </div>
  );
}

function AtTheLamp({
  title,
  place,
  closeTo,
  flash,
  by,
}: {
  readonly title: string;
  readonly place: string;
  readonly closeTo: string;
  readonly flash: FlashInHand;
  readonly by: "lamp" | "cap";
}) {
  const { state, nowMs, happen, wakeSound, keeping } = flash;
  const id = useId();
  const view = flashTimerView({ state, nowMs, by });
  const notice = flashNoticeWords(state.notice);
  const ready = state.phase.name === "ready";
  return (
    <div
      className="Camera-Cap Camera-Flash"
      data-ground={state.phase.name === "on" ? undefined : "dark"}
      data-phase={state.phase.name}
    >
      <div className="Camera-Cap-whole">
        <BigPress
          className="Camera-Cap-press"
          main
          means={state.phase.name}
          instant={!ready}
          onPress={(stampMs) => {
            wakeSound();
            happen({ kind: "press" }, stampMs);
          }}
          describedBy={`${id}lines`}
        >
          <span className="unseen">{view.press}</span>
        </BigPress>
        <div className="Camera-Cap-words">
          <header className="Camera-Cap-top">
            <b>{title}</b>
            <span>{place}</span>
          </header>
          <div className="Camera-Cap-title">
            <h1>{view.head}</h1>
          </div>
          <div className="Camera-Cap-figure">
            <span role="timer" aria-live="off" data-signs={signsOf(view.figure)}>
              {view.figure}
            </span>
          </div>
          <p className="Camera-Cap-under">{view.under}</p>
          <div className="Camera-Cap-lines" id={`${id}lines`}>
            {notice !== null && <p className="Camera-Cap-notice">{notice}</p>}
            {keeping === "failed" && (
              <p className="Camera-Cap-notice" role="alert">
                This machine would not keep it: write down what you give.
              </p>
            )}
            {view.lines.map((line) => (
              <p key={line}>{line}</p>
            ))}
          </div>
          <div className="Camera-Cap-means" aria-hidden="true">
            <b>{view.press}</b>
            {view.pressLines.map((line) => (
              <p key={line}>{line}</p>
            ))}
          </div>
        </div>
      </div>
      {view.foot !== null && (
        <BigPress
          className="Camera-Cap-foot"
          means={ready ? "close" : "cancel"}
          instant={false}
          onPress={(stampMs) => {
            if (ready) location.hash = closeTo;
            else happen({ kind: "cancel" }, stampMs);
          }}
        >
          <b>{view.foot.word}</b>
          <span>{view.foot.line}</span>
        </BigPress>
      )}
      <p className="unseen" role="status">
        {view.spoken}
      </p>
    </div>
  );
}

/** How wide the figure is: two digits or 4.3; or longer. */
function signsOf(figure: string): "few" | "some" | "many" {
  const digits = figure.replace(/\D/g, "").length;
  return digits <= 2 ? "few" : digits === 3 ? "some" : "many";
}
