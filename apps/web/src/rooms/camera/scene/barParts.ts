import { flashOf, type Kit, type WaysOf } from "@captray/notebook/answers";
import { showTime } from "@captray/science/notation";
import type { BarPart } from "../../../kit/ExposureBar.tsx";
import { flashAside } from "../expectedPrint/flashWords.ts";
import { rangeWords } from "../readingNow/barWords.ts";
import { waysInWords } from "./waysWords.ts";

/** How the time is given, for the middle of the bar: to the ticks first, and counted. */
export function handWords(byHand: WaysOf["byHand"]): BarPart {
  if (byHand.kind === "tooShort") {
    return { head: "Not by hand", say: `A hand gives ${showTime({ timeS: byHand.shortestS })} at least.` };
  }
  const ticks = byHand.ways.find((way) => way.how === "ticks");
  const inHead = byHand.ways.find((way) => way.how === "head");
  const [first] = waysInWords({ ...byHand, ways: ticks === undefined ? byHand.ways : [ticks] });
  const say = first === undefined ? "" : `${first.name}. ${first.say}`;
  const own =
    inHead?.how !== "head" ? "" : ` Counted in your head: ${inHead.counts}, ${showTime({ timeS: inHead.givenS })}.`;
  return {
    head: ticks?.how === "ticks" ? `Cap off, ${ticks.counts} ticks, cap on` : (first?.name ?? ""),
    say: say + own,
  };
}

const whenHeads = {
  beforeLoading: "Flash first",
  inCamera: "Flash in the camera",
  afterExposure: "Flash after",
} as const;

/** What flash is to be given, for the end of the bar. */
export function flashWords({ flash, flashLamp, paperBox }: Kit): BarPart {
  if (flash === undefined || flash.timeS === 0) return { head: "No flash", say: "" };
  const seconds = showTime({ timeS: flash.timeS });
  const tested = flashOf({ flashLamp, paperBoxId: paperBox?.id, ask: { timeS: flash.timeS } });
  if (tested.kind === "untested") {
    return { head: `${seconds} of flash wished`, say: "The lamp has no strip yet: not counted." };
  }
  const [low, high] = tested.rangeS;
  const range = rangeWords({ low, high });
  return {
    head: `${whenHeads[flash.when]}, ${seconds}`,
    say: `${range} would not surprise. ${capital(flashAside(flashLamp))}.`,
  };
}

function capital(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
