import { type OpeningsOfHand, openingsOfHand, type PracticeWay, practisedField } from "@captray/notebook/answers";
import { type Hand, type Json, mostPractised } from "@captray/notebook/records";
import { useCallback, useEffect, useRef, useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { pageDevices } from "../../../devices/pageDevices.ts";
import { listenForPress } from "../../../devices/pressKeys.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { readCapSettings } from "../capPage/capSettings.ts";
import { practiceCues } from "./practiceCues.ts";
import { type PracticeState, startPractice, stepPractice, wantedAfter } from "./practiceState.ts";
import { handName } from "./practiceWords.ts";

const { clock, mirror, sound, shaker } = pageDevices();

export interface PracticeInHand {
  readonly hands: readonly Hand[];
  readonly hand: Hand | undefined;
  readonly way: PracticeWay;
  readonly of: OpeningsOfHand;
  readonly state: PracticeState;
  readonly nowMs: number;
  /** What the next opening goes for. */
  readonly wantedS: number;
  readonly press: (stampMs: number) => void;
  readonly setWay: (way: Partial<PracticeWay>) => void;
  readonly choose: (handId: string) => void;
  readonly another: () => void;
  readonly name: (words: string) => void;
  readonly strikeOut: (place: number, out: boolean) => void;
}

/** Binds the practice page to notebook, clock and keys; each opening is kept as it ends. */
export function usePractice({ handId }: { readonly handId: string }): PracticeInHand {
  const notebook = useNotebook();
  const hands = useShelf("hand");
  const { sounds } = useSettings();
  const [chosen, setChosen] = useState(handId);
  const [way, setWay] = useState<PracticeWay>(() => ({ way: readCapSettings(mirror).way, by: "cap" }));
  const [state, setState] = useState(startPractice);
  const [nowMs, setNowMs] = useState(clock.nowMs);
  const latest = useRef(state);
  const hand = hands.find(({ id }) => id === chosen) ?? hands[0];
  const of = openingsOfHand({ hand, ...way });
  const wantedS = wantedAfter(of.openings.length);

  const keep = useCallback(
    (openings: readonly Json[], note: string) => {
      const id = hand?.id ?? notebook.newId();
      const made = hand === undefined ? { name: "", createdAt: { ...momentNow() } } : {};
      const set = { ...made, [practisedField(way)]: openings.slice(-mostPractised) as Json };
      notebook.change([{ id, kind: "hand", set }], note).kept.catch(() => undefined);
    },
    [notebook, hand, way],
  );

  const happen = useCallback(
    (kind: "press" | "tick" | "putDown", stampMs?: number) => {
      // A busy page hears of a press late: what counts is when the finger came down.
      const lateMs = stampMs === undefined ? 0 : Math.min(1000, Math.max(0, performance.now() - stampMs));
      const event = { kind, nowMs: clock.nowMs() - lateMs };
      const next = stepPractice({ state: latest.current, event, wantedS });
      setNowMs(clock.nowMs());
      if (next === latest.current) return;
      const ended = latest.current.openedMs !== null && next.said !== latest.current.said;
      latest.current = next;
      setState(next);
      if (ended && next.said?.what === "kept") {
        const { wantedS: went, givenS } = next.said;
        if (givenS > 0) {
          const opening = { wantedS: went, givenS, at: { ...momentNow() } };
          keep([...of.openings, opening] as unknown as Json[], `Practice: ${givenS.toFixed(2)} s of ${went} s`);
        }
      }
    },
    [wantedS, keep, of.openings],
  );

  const heard = useRef(happen);
  heard.current = happen;
  const press = useCallback(
    (stampMs: number) => {
      if (sounds) void sound.wake();
      heard.current("press", stampMs);
    },
    [sounds],
  );
  useEffect(() => listenForPress({ onPress: press }), [press]);

  const { openedMs } = state;
  const went = state.wantedS;
  useEffect(() => {
    if (openedMs === null) return;
    const stop = sound.run({
      zeroMs: openedMs,
      cues: practiceCues({ wantedS: went, way: way.way }),
      audible: sounds,
      onCue: ({ kind }) => shaker.shake(kind),
    });
    const timer = setInterval(() => heard.current("tick"), 200);
    return () => {
      stop();
      shaker.still();
      clearInterval(timer);
    };
  }, [openedMs, went, way.way, sounds]);

  return {
    hands,
    hand,
    way,
    of,
    state,
    nowMs,
    wantedS: openedMs === null ? wantedS : went,
    press,
    setWay: (change) => {
      happen("putDown");
      setWay({ ...way, ...change });
    },
    choose: (id) => {
      happen("putDown");
      setChosen(id);
    },
    another: () => {
      const id = notebook.newId();
      const set = { name: handName("", hands.length), createdAt: { ...momentNow() } };
      notebook.change([{ id, kind: "hand", set }], "Another hand").kept.catch(() => undefined);
      setChosen(id);
    },
    name: (words) => {
      if (hand === undefined || words === hand.name) return;
      const set = { name: words.slice(0, 120) };
      notebook.change([{ id: hand.id, kind: "hand", set }], "Hand named").kept.catch(() => undefined);
    },
    strikeOut: (place, out) => {
      const openings = of.openings.map(({ struckOut, ...one }, at) => {
        const struck = at === place ? out : struckOut === true;
        return { ...one, ...(struck && { struckOut: true }) };
      });
      keep(openings as unknown as Json[], out ? "Opening struck out" : "Opening counted again");
    },
  };
}
