import { type ReactNode, useEffect, useRef } from "react";
import { listenForHeldKey } from "../../../devices/heldKey.ts";
import { BigPress } from "../../../kit/BigPress.tsx";
import { Button } from "../../../kit/Button.tsx";
import { beginning } from "../../../kit/beginning.ts";
import { Caution } from "../../../kit/Caution.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { HoldPress } from "../../../kit/HoldPress.tsx";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { Sides } from "../../../kit/sides/Sides.tsx";
import { sideSaid } from "../../../kit/sides/sideSaid.ts";
import { sideWords } from "../../../kit/sideWords.ts";
import { Word } from "../../../kit/Word.tsx";
import { turnLight, useLight } from "../../../look/light.ts";
import { voiceWords } from "./darkView.ts";
import { intoWords, sheetsSaid } from "./loadingWords.ts";
import { useDark } from "./useDark.ts";
import "./LoadingDark.css";

type Dark = ReturnType<typeof useDark>;

/** Loading read out in the dark: bare, red, one huge press. */
export default function LoadingDark() {
  const dark = useDark();
  const light = useLight();
  useEffect(() => {
    document.title = "Loading. Cap & Tray";
    turnLight({ to: "red" }); // also where somebody came here by its address
  }, []);
  if (light !== "red") return null;
  if (!dark.kept.begun) return <BeforeLoading dark={dark} />;
  return dark.step === undefined ? <AllLoaded dark={dark} /> : <AtASide dark={dark} />;
}

const ready: readonly (readonly [string, string])[] = [
  ["Box, holders and pencil within reach", "you will find them by hand"],
  ["Screen at its least brightness", "by hand; the page cannot do it"],
  ["Do not disturb is on, charging light covered", "no message, no lead lights up"],
  ["Screen faces away from the paper", "half a metre off"],
];

function BeforeLoading({ dark }: { readonly dark: Dark }) {
  const head = useFocus();
  const back = () => {
    turnLight({ to: "day" });
    goTo({ path: "/shelf/loading" });
  };
  if (dark.toLoad === 0) {
    return (
      <div className="Shelf-Dark-page">
        <h1 ref={head} tabIndex={-1}>
          Nothing is laid out
        </h1>
        <p className="say">Plan the loading in the light first: which sides, from which box.</p>
        <Button wide onPress={() => goTo({ path: "/shelf/loading" })}>
          To the plan, still in red
        </Button>
      </div>
    );
  }
  return (
    <div className="Shelf-Dark-page">
      <h1 ref={head} tabIndex={-1}>
        Before the lights go out
      </h1>
      <ul>
        {ready.map(([what, why]) => (
          <li key={what}>
            <b>{what}</b>
            <span>{why}</span>
          </li>
        ))}
        <li>
          <b>{beginning(sheetsSaid(dark.toLoad))} will be read out</b>
          <span>{voiceWords(dark.speech)}</span>
        </li>
      </ul>
      <Caution stuff="Paper in the open.">
        Room dark, or under a light you tested with this paper. This very screen may fog it until your own test says
        otherwise. Box shut before any other light.
      </Caution>
      <div className="Shelf-Dark-ways">
        <Button main wide big onPress={dark.begin}>
          Lights are out: begin
        </Button>
        <Word onPress={back}>Not yet: back to daylight</Word>
      </div>
    </div>
  );
}

function AtASide({ dark }: { readonly dark: Dark }) {
  const notebook = useNotebook();
  const { view, step, loaded, toLoad, resting, asking, takeBack, lastCode } = dark;
  const holding = useRef(takeBack);
  holding.current = takeBack;
  useEffect(() => listenForHeldKey({ key: "Backspace", forMs: 2000, onHeld: () => holding.current() }), []);
  if (view === undefined || step === undefined) return null;
  if (asking) return <Asked dark={dark} />;
  return (
    <div className="Shelf-Dark">
      <div className="Shelf-Dark-whole">
        <BigPress
          className="Shelf-Dark-press"
          main
          means={step.sheet.id + step.kind}
          instant={false}
          onPress={dark.press}
        >
          <span className="unseen">
            {view.press}. {view.spoken}
          </span>
        </BigPress>
        <div className="Shelf-Dark-words" data-resting={resting || undefined}>
          <p className="Shelf-Dark-top">
            <span>Loading</span>
            <span>
              {loaded.length + 1} of {loaded.length + toLoad}
            </span>
          </p>
          <Strokes done={loaded.length} all={loaded.length + toLoad} />
          <h1>{view.head}</h1>
          <p className="Shelf-Dark-under">{view.under}</p>
          <Sides
            label="The holder in hand"
            sides={dark.sides.map((side) => ({
              ...sideSaid({ side, peek: (id) => notebook.peek(id) }),
              chosen: side.id === step.side.id,
            }))}
          />
          <div className="Shelf-Dark-lines">
            {view.lines.map((line) => (
              <p key={line}>{line}</p>
            ))}
          </div>
          {dark.failed && (
            <p role="alert" className="Shelf-Dark-notice">
              This machine would not keep the last step. Note it on the holder.
            </p>
          )}
          {(dark.wake === "refused" || dark.wake === "missing") && (
            <p className="Shelf-Dark-notice">
              This machine will not hold the screen awake: set its own sleep to longer.
            </p>
          )}
          <div className="Shelf-Dark-means" aria-hidden="true">
            <b>{view.press}</b>
            <p>{view.after}</p>
          </div>
        </div>
      </div>
      <HoldPress className="Shelf-Dark-foot" onHeld={() => dark.setAsking(true)}>
        <b>Hold for 2 s:</b>
        <span>{lastCode === undefined ? "leave out, stop" : "take back, leave out, stop"}</span>
      </HoldPress>
      <p className="unseen" role="status">
        {view.spoken}
      </p>
    </div>
  );
}

function Asked({ dark }: { readonly dark: Dark }) {
  const head = useFocus();
  const { step, lastCode } = dark;
  if (step === undefined) return null;
  const place = sideWords(step);
  return (
    <div className="Shelf-Dark-page">
      <h1 ref={head} tabIndex={-1}>
        {beginning(place)}
      </h1>
      <div className="Shelf-Dark-ways">
        <Button main wide big onPress={dark.again}>
          Go on: say it again
        </Button>
        {lastCode !== undefined && (
          <Button wide big onPress={dark.takeBack}>
            Take back: {lastCode} is not in yet
          </Button>
        )}
        <Button wide big onPress={dark.leaveOut}>
          Leave this side out
        </Button>
        <Button
          wide
          big
          onPress={() => {
            dark.leave();
            goTo({ path: "/shelf/loading" });
          }}
        >
          Stop here; the rest waits
        </Button>
      </div>
    </div>
  );
}

function AllLoaded({ dark }: { readonly dark: Dark }) {
  const head = useFocus();
  const { loaded, all, lastCode } = dark;
  return (
    <div className="Shelf-Dark-page">
      <h1 ref={head} tabIndex={-1}>
        {all.length > 0 ? "Done, but for what was left out" : "All loaded"}
      </h1>
      <p className="Shelf-Dark-under">Shut the box, then see that every slide is home. Only then another light.</p>
      <ul>
        {loaded.map(({ id, code, links }) => (
          <li key={id}>
            <b>{code}</b>
            <span>
              <Place holderId={links.holderId} sideId={links.sideId} />
            </span>
          </li>
        ))}
        {all
          .filter(({ kind }) => kind === "load")
          .map((one) => (
            <li key={one.sheet.id}>
              <b>Not loaded</b>
              <span>{intoWords(one)}</span>
            </li>
          ))}
      </ul>
      <div className="Shelf-Dark-ways">
        <Button
          main
          wide
          big
          onPress={() => {
            dark.leave();
            goTo({ path: "/shelf" });
          }}
        >
          To the shelf, still in red
        </Button>
        {lastCode !== undefined && (
          <Button wide big onPress={dark.takeBack}>
            Take back: {lastCode} is not in yet
          </Button>
        )}
      </div>
      <p className="small soft">Daylight is at the head of the shelf, and asks first.</p>
    </div>
  );
}

function Place({ holderId, sideId }: { readonly holderId: string | undefined; readonly sideId: string | undefined }) {
  const notebook = useNotebook();
  const holder = holderId === undefined ? undefined : notebook.peek(holderId);
  if (holder?.kind !== "holder") return null;
  return sideWords({ holder, side: holder.sides.find(({ id }) => id === sideId) });
}

/** One stroke a sheet: thick where it is in. */
function Strokes({ done, all }: { readonly done: number; readonly all: number }): ReactNode {
  const shown = Math.min(all, 24);
  return (
    <svg
      className="Shelf-Dark-strokes"
      viewBox={`0 0 ${shown * 14} 22`}
      width={shown * 14}
      height="22"
      aria-hidden="true"
    >
      {Array.from({ length: shown }, (_, i) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: strokes have no other name than their place
          key={i}
          d={i < done ? `M${i * 14 + 4} 1V21` : `M${i * 14 + 4} 8V21`}
          stroke="currentColor"
          strokeWidth={i < done ? 5 : 2}
        />
      ))}
    </svg>
  );
}

function useFocus() {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  return head;
}
