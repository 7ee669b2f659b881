import type { RunGap } from "@captray/notebook/answers";
import type { ClockNotice } from "./runClock.ts";
import { saidTime, theBath } from "./runWords.ts";

/** What the page says of the time it was not there, or of a clock that jumped. */
export function clockNoticeWords(notice: ClockNotice): string {
  switch (notice.kind) {
    case "away":
      return `The page was gone for ${saidTime(notice.byMs / 1000)}. What fell due meanwhile is marked “assumed”.`;
    case "awayUnknown":
      return "The page was gone, and this machine’s clock cannot say for how long: it was set meanwhile.";
    case "slept":
      return `The machine slept for ${saidTime(notice.byMs / 1000)}. That time has passed in the trays.`;
    case "jumpedAhead":
      return `This machine’s clock jumped ahead by ${saidTime(notice.byMs / 1000)}. The run keeps its own time.`;
    case "setBack":
      return `This machine’s clock was set back by ${saidTime(notice.byMs / 1000)}. The run keeps its own time.`;
  }
}

const mostPassed = 3;

/** What is taken to have happened while the program was gone. */
export function passedWords(gap: RunGap | undefined): readonly string[] {
  if (gap === undefined || gap.passed.length === 0) return [];
  const each = gap.passed
    .slice(-mostPassed)
    .map(({ code, out, into }) => `${code} ${into === null ? `out of ${theBath(out)}` : `into ${theBath(into)}`}`);
  const more = gap.passed.length > mostPassed ? `, and ${gap.passed.length - mostPassed} moves before` : "";
  return [`Taken as done meanwhile: ${each.join(", ")}${more}.`];
}

/** What a press of each kind is called when it is taken back. */
export const pressWords: Readonly<Record<string, string>> = {
  start: "into the first bath",
  next: "into the next bath",
  late: "late into the next bath",
  repeat: "once more into the same bath",
  skip: "the next step left out",
  another: "still dark, another round",
  clear: "clear, go on",
  pause: "the pause",
  resume: "going on after the pause",
  trouble: "what was the matter",
  waitOn: "wait for me",
  waitOff: "no more waiting for me",
};
