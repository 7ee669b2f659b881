import { useEffect, useRef } from "react";
import { HoldPress } from "../../../kit/HoldPress.tsx";
import { WetPress } from "../../../kit/WetPress.tsx";
import { pressWords } from "./noticeWords.ts";
import type { RunAtHand } from "./useRun.ts";

/** Behind the foot: four big words for what did not go as planned, and the way back. Time goes on meanwhile. */
export function RunMenu({
  at,
  onBack,
  onTrouble,
}: {
  readonly at: RunAtHand;
  readonly onBack: () => void;
  readonly onTrouble: () => void;
}) {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  const { view, takesBack } = at;
  const say = (press: "late" | "repeat" | "skip") => {
    at.say(press);
    onBack();
  };
  const later = () => {
    at.later();
    onBack();
  };
  const words: readonly (readonly [string, string, () => void])[] = [
    ...(at.started
      ? ([
          ["Late", "it goes into the next bath only now", () => say("late")],
          ["Repeat", "out, and into the same bath again", () => say("repeat")],
          ["Skip", at.skips === null ? "no step left to leave out" : `leave out ${at.skips}`, () => say("skip")],
        ] as const)
      : ([["Later", "it waits two minutes more before the first bath", later]] as const)),
    ["Trouble", "pause, what went wrong, light, sound, the way out", onTrouble],
  ];
  return (
    <div className="Trays-Menu">
      <header className="Trays-Run-top">
        <h1 ref={head} tabIndex={-1}>
          {view.move}
        </h1>
        <b className="Trays-Run-figure">{view.figure}</b>
      </header>
      <div className="Trays-Menu-words">
        {words.map(([word, line, act]) => (
          <WetPress key={word} className="Trays-Menu-word" means={word} onPress={act}>
            <b>{word}</b>
            <span>{line}</span>
          </WetPress>
        ))}
        <WetPress className="Trays-Menu-back" means="back" onPress={onBack}>
          <b>Back to the trays</b>
        </WetPress>
      </div>
      {takesBack === null ? (
        <p className="Trays-Run-foot">Nothing to take back yet</p>
      ) : (
        <HoldPress
          className="Trays-Run-foot"
          onHeld={() => {
            at.takeBack();
            onBack();
          }}
        >
          <span>
            <b>Hold for 2 s: take back</b>{" "}
            <span>{`${takesBack.who}: ${pressWords[takesBack.press] ?? takesBack.press}`}</span>
          </span>
        </HoldPress>
      )}
    </div>
  );
}
