import type { Notebook } from "@captray/notebook/journal";
import type { Sheet } from "@captray/notebook/records";
import { useEffect, useId, useRef, useState } from "react";
import { BigPress } from "../../../kit/BigPress.tsx";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useRecord } from "../../../kit/notebook/useRecord.ts";
import { Page } from "../../../kit/Page.tsx";
import { Word } from "../../../kit/Word.tsx";
import { CapAfter } from "./CapAfter.tsx";
import { CapSettingsPage } from "./CapSettingsPage.tsx";
import { CapStrokes } from "./CapStrokes.tsx";
import { capSpoken, capView, deviceWords, noticeWords } from "./capView.ts";
import { placeWords } from "./placeWords.ts";
import { type CapInHand, useCapPage } from "./useCapPage.ts";
import "./CapPage.css";

/** The cap page: the whole screen one press. */
export default function CapPage({ id }: { readonly id: string }) {
  const notebook = useNotebook();
  const sheet = useRecord(id);
  if (sheet === "loading") return <p role="status">Opening</p>;
  if (sheet === "absent" || sheet.kind !== "sheet") {
    return (
      <Page title="No such sheet" closeTo="/logbook">
        <NothingYet way={<Word to="/logbook">All sheets</Word>}>This notebook has no sheet of that address.</NothingYet>
      </Page>
    );
  }
  if (sheet.planned === undefined) {
    return (
      <Page title={`${sheet.code ?? "This sheet"} has no time yet`} closeTo={`/logbook/${sheet.id}`}>
        <NothingYet way={<Word to="/camera/now">I have a reading now</Word>}>
          The cap needs seconds, and they come from a reading. Read the light, and the ledger says how long.
        </NothingYet>
      </Page>
    );
  }
  return <AtTheCap key={sheet.id} notebook={notebook} sheet={sheet} />;
}

function AtTheCap({ notebook, sheet }: { readonly notebook: Notebook; readonly sheet: Sheet }) {
  const [setting, setSetting] = useState(false);
  const cap = useCapPage({ notebook, sheet, keysOn: !setting });
  useEffect(() => {
    document.title = `${sheet.code ?? "Sheet"} at the cap. Cap & Tray`;
  }, [sheet.code]);

  if (cap.state.phase.name === "after") return <CapAfter notebook={notebook} sheet={sheet} cap={cap} />;
  if (setting && cap.state.phase.name === "ready") {
    return <CapSettingsPage sheet={sheet} cap={cap} onDone={() => setSetting(false)} />;
  }
  return (
    <Exposing
      cap={cap}
      code={sheet.code ?? "Sheet"}
      place={placeWords({ notebook, sheet })}
      otherSideAt={
        sheet.sceneId !== undefined && notebook.shelf("holder").length > 0
          ? `/camera/which/${sheet.sceneId}`
          : undefined
      }
      onSet={() => setSetting(true)}
    />
  );
}

interface ExposingProps {
  readonly cap: CapInHand;
  readonly code: string;
  readonly place: string;
  /** Where another side can be chosen, as long as the cap was not off. */
  readonly otherSideAt: string | undefined;
  readonly onSet: () => void;
}

function Exposing({ cap, code, place, otherSideAt, onSet }: ExposingProps) {
  const { state, nowMs, practice, happen, wakeSound } = cap;
  const view = capView({ state, nowMs, practice });
  const notice = noticeWords({ state });
  const devices = deviceWords(cap);
  const id = useId();
  const ready = state.phase.name === "ready";
  const { foot } = view;
  // The foot means another thing now: whoever pressed it by key stands on the big press again.
  const whole = useRef<HTMLDivElement>(null);
  const phaseName = state.phase.name;
  useEffect(() => {
    const held = document.activeElement;
    if (phaseName === "ready" || !held?.matches(".Camera-Cap-foot")) return;
    whole.current?.querySelector<HTMLElement>("[data-press]")?.focus();
  }, [phaseName]);
  const press = (stampMs: number) => {
    wakeSound();
    happen({ kind: "press" }, stampMs);
  };
  return (
    <div
      className="Camera-Cap"
      data-ground={view.ground === "dark" ? "dark" : undefined}
      data-phase={state.phase.name}
      data-over={view.over || undefined}
    >
      <div className="Camera-Cap-whole" ref={whole}>
        <BigPress
          className="Camera-Cap-press"
          main
          means={state.phase.name}
          instant={!ready}
          onPress={press}
          describedBy={`${id}lines`}
        >
          <span className="unseen">{view.press}</span>
        </BigPress>
        <div className="Camera-Cap-words">
          <header className="Camera-Cap-top" onPointerDown={wakeSound}>
            <b>{code}</b>
            {ready && <Word to="/logbook">Close</Word>}
            {ready && otherSideAt !== undefined && <Word to={otherSideAt}>Another side</Word>}
            <span>
              {place === "" ? "" : `${place}, `}
              {view.way}
            </span>
          </header>
          <div className="Camera-Cap-title">
            <h1>{view.head}</h1>
            <p>
              <b>{view.aside[0]}</b>
              <span>{view.aside[1]}</span>
            </p>
          </div>
          <div className="Camera-Cap-figure">
            <span role="timer" aria-live="off" data-signs={signsOf(view.figure)}>
              {view.figure}
            </span>
          </div>
          <p className="Camera-Cap-under">{view.under}</p>
          {view.strokes !== null && <CapStrokes {...view.strokes} />}
          <div className="Camera-Cap-lines" id={`${id}lines`}>
            {notice !== null && <p className="Camera-Cap-notice">{notice}</p>}
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
          {ready && devices !== null && <p className="Camera-Cap-devices">{devices}</p>}
        </div>
      </div>
      <BigPress
        className="Camera-Cap-foot"
        means={foot.does}
        instant={foot.does === "wait"}
        onPress={(stampMs) => (foot.does === "set" ? onSet() : happen({ kind: foot.does }, stampMs))}
      >
        <b>{foot.word}</b>
        <span>{foot.line}</span>
      </BigPress>
      <p className="unseen" role="status">
        {capSpoken({ state, nowMs })}
      </p>
    </div>
  );
}

/** How wide the figure is: two digits or 4.3; or longer. */
function signsOf(figure: string): "few" | "some" | "many" {
  const digits = figure.replace(/\D/g, "").length;
  return digits <= 2 ? "few" : digits === 3 ? "some" : "many";
}
