import { type LightTimerState, nextMove, secondsLit } from "./lightTimerState.ts";
import { bandWords } from "./lightWords.ts";

/** The page while a light is tried, in words. */
export interface LightTimerView {
  readonly head: string;
  readonly figure: string;
  readonly lines: readonly string[];
  /** What the press means. */
  readonly press: string;
  /** Said aloud when it changes. */
  readonly spoken: string;
  /** The whole screen is the light. */
  readonly allRed: boolean;
}

/** What stands on the page, is heard and is pressed, at this moment. */
export function lightTimerView({
  state,
  nowMs,
}: {
  readonly state: LightTimerState;
  readonly nowMs: number;
}): LightTimerView {
  const { phase, movesS, byScreen } = state;
  const what = byScreen ? "The screen" : "The safelight";
  switch (phase.name) {
    case "greyLeft":
      return {
        head: "All dark",
        figure: "",
        lines: [
          "Card over the right half and the strip between. Give the left half its light grey.",
          "This screen face down until it is given.",
        ],
        press: "The left half has its grey",
        spoken: "All dark. Give the left half its light grey, then press.",
        allRed: false,
      };
    case "ready":
      return {
        head: byScreen ? "Screen over the paper" : "To the safelight",
        figure: bandWords(movesS.at(-1) ?? 0),
        lines: byScreen
          ? [
              "The sheet flat, this screen facing it at the distance of the test. Card over the uppermost band.",
              "At the press the whole screen turns red; it goes dark by itself.",
            ]
          : [
              "The sheet where paper lies, face up. Card over the uppermost band.",
              "Press as the safelight comes on, then this screen face down: it calls.",
            ],
        press: byScreen ? "Red now" : "The safelight is on now",
        spoken: byScreen
          ? "Card over the uppermost band. Press, and the screen turns red."
          : "Card over the uppermost band. Press as the safelight comes on.",
        allRed: false,
      };
    case "on": {
      const place = nextMove({ state, nowMs });
      const atS = movesS[place] ?? 0;
      const left = atS - secondsLit(state, nowMs);
      const isLast = place === movesS.length - 1;
      const move = isLast ? `${what} goes off` : `Card over the band of ${bandWords(atS)}`;
      return {
        head: isLast ? (byScreen ? "Dark by itself" : "Safelight off") : `Next: the band of ${bandWords(atS)}`,
        figure: countdown(left),
        lines: [left > 0 ? `${move} at the call.` : `${move} now.`],
        press: isLast ? (byScreen ? "" : "The safelight is off") : "The card lies over it",
        spoken: spokenMove(place, movesS, byScreen),
        allRed: byScreen,
      };
    }
    case "greyRight":
      return {
        head: "All dark again",
        figure: "",
        lines: [
          "Card over the left half and the strip between. Give the right half its light grey, as long as the left.",
          "This screen face down until it is given.",
        ],
        press: "The right half has its grey",
        spoken: "Dark again. Give the right half the same light grey, then press.",
        allRed: false,
      };
    case "after":
      return {
        head: "Into the developer, in the dark",
        figure: "",
        lines: ["Develop, stop and fix without any light. Dry, in good light, the page of the test asks what shows."],
        press: "",
        spoken: "Into the developer, in the dark.",
        allRed: false,
      };
  }
}

/** 1:20, 0:05; what is past counts up from 0:00 no more. */
function countdown(leftS: number): string {
  const whole = Math.max(0, Math.ceil(leftS - 0.05));
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}

/** Said once for each move: what was just called, and what comes next. */
function spokenMove(place: number, movesS: readonly number[], byScreen: boolean): string {
  const next = `next at ${bandWords(movesS[place] ?? 0)}`;
  if (place === 0) return `Light on. Card moves ${next}.`;
  const isLast = place === movesS.length - 1;
  const now = `Card over the band of ${bandWords(movesS[place - 1] ?? 0)}`;
  if (!isLast) return `${now}; ${next}.`;
  return `${now}; ${byScreen ? "the screen" : "the safelight"} off at ${bandWords(movesS[place] ?? 0)}.`;
}
