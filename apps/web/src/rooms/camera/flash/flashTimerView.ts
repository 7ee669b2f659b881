import { figureOf, ordinal, secondsWords } from "../capPage/capWords.ts";
import { type FlashNotice, type FlashTimerState, graceS, nextMove, pressedMove, secondsOn } from "./flashTimerState.ts";

/** What a timed page says: a strip moves a card, a sheet only has its lamp go off. */
export interface FlashTimerView {
  readonly head: string;
  readonly figure: string;
  readonly under: string;
  readonly lines: readonly string[];
  /** What the one huge press means now. */
  readonly press: string;
  readonly pressLines: readonly string[];
  readonly foot: { readonly word: string; readonly line: string } | null;
  /** Said aloud, when it changes. */
  readonly spoken: string;
}

const handWords = {
  lamp: {
    onAtZero: "Lamp on at zero",
    hand: "hand at the switch",
    already: "The lamp is on already",
    else: "else it comes on at the long tone",
    on: "Lamp on",
    off: "Lamp off",
    offNow: "Lamp off now",
    pressOff: "Press as the lamp goes off",
    begin: "three, two, one: lamp on at the long tone",
  },
  cap: {
    onAtZero: "Cap off at zero",
    hand: "diffuser lit, hand at the cap",
    already: "The cap is off already",
    else: "else it comes off at the long tone",
    on: "Cap off",
    off: "Cap on",
    offNow: "Cap on now",
    pressOff: "Press as the cap goes on",
    begin: "three, two, one: cap off at the long tone",
  },
} as const;

/** The words of the page while the lamp is awaited or burns. */
export function flashTimerView({
  state,
  nowMs,
  by = "lamp",
}: {
  readonly state: FlashTimerState;
  readonly nowMs: number;
  /** What a hand works: a lamp's switch, or in the camera the cap before a lit diffuser. */
  readonly by?: "lamp" | "cap";
}): FlashTimerView {
  const words = handWords[by];
  const { phase, movesS } = state;
  const endS = movesS.at(-1) ?? 0;
  const isStrip = movesS.length > 1;
  if (phase.name === "countIn") {
    const left = Math.max(1, Math.ceil((phase.zeroMs - nowMs) / 1000 - 0.05));
    return {
      head: words.onAtZero,
      figure: String(left),
      under: words.hand,
      lines: [],
      press: words.already,
      pressLines: [words.else],
      foot: { word: "Stop the count-in", line: "nothing was given yet" },
      spoken: `${words.on} in ${left}`,
    };
  }
  if (phase.name === "on") {
    const onS = secondsOn(state, nowMs);
    const place = nextMove({ state, nowMs });
    const pressed = pressedMove({ state, nowMs });
    const atS = movesS[place] ?? endS;
    const left = Math.max(0, Math.ceil(atS - onS - 0.05));
    const isLast = place === movesS.length - 1;
    const over = onS > endS + 0.3;
    const soFar = `${Math.floor(onS)} s so far, step ${place + 1} of ${movesS.length}.`;
    const late = `A press now is for the ${ordinal(pressed + 1)} step, at ${secondsWords(movesS[pressed] ?? endS)}.`;
    return {
      head: over ? words.offNow : words.on,
      figure: over ? figureOf(Math.floor(onS)) : figureOf(left),
      under: over
        ? `planned were ${secondsWords(endS)}`
        : isLast
          ? `to ${words.off.toLowerCase()}, at ${secondsWords(endS)}`
          : `to the card over the ${ordinal(place + 1)} step, at ${secondsWords(atS)}`,
      lines: isStrip ? [pressed < place ? late : soFar] : [],
      press: pressed === movesS.length - 1 ? words.pressOff : "Press as the card moves on",
      pressLines: [
        over
          ? `without a press it is taken as planned in ${secondsWords(Math.ceil(endS + graceS(endS) - onS))}`
          : "anywhere on the screen, or any key",
      ],
      foot: null,
      spoken: over ? words.off : isLast ? `${words.off} next` : `Card over step ${place + 1} next`,
    };
  }
  return {
    head: words.off,
    figure: figureOf(endS),
    under: isStrip ? `s in ${movesS.length} steps, beside the bare one` : "s of flash",
    lines: isStrip ? [`The card moves at ${listed(movesS.slice(0, -1))}; lamp off at ${secondsWords(endS)}.`] : [],
    press: "Press to count in",
    pressLines: [words.begin],
    foot: { word: "Not now", line: "back, nothing is given" },
    spoken: "",
  };
}

/** What the page has to say about the time it was not there. */
export function flashNoticeWords(notice: FlashNotice | null): string | null {
  if (notice === null) return null;
  if (notice.what === "clockSetBack") return "This machine’s clock was set back: the page went on from where it was.";
  const away = `The page was away for ${secondsWords(Math.round(notice.awayS))}`;
  return notice.what === "wentOn"
    ? `${away}; the clock went on.`
    : `${away}, and the time ran out meanwhile. Put right what was otherwise.`;
}

function listed(timesS: readonly number[]): string {
  return `${timesS.map((timeS) => figureOf(timeS)).join(", ")} s`;
}
