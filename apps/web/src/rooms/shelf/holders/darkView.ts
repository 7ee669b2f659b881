import type { LoadingStep } from "@captray/notebook/answers";
import type { SpeechState } from "../../../devices/speech.ts";
import { beginning } from "../../../kit/beginning.ts";
import { holderWords } from "../../../kit/holderWords.ts";
import { sideWords } from "../../../kit/sideWords.ts";
import { boxSaid, sheetsSaid } from "./loadingWords.ts";

/** The dark page in words: one thing to do, and what the press means. */
export interface DarkView {
  readonly head: string;
  readonly under: string;
  readonly lines: readonly string[];
  readonly press: string;
  /** What follows after the press. */
  readonly after: string;
  /** What is read out. */
  readonly spoken: string;
}

/** What the page says at a step; `next` is the one after it. */
export function darkView({
  step,
  next,
  boxNames,
}: {
  readonly step: LoadingStep;
  readonly next: LoadingStep | undefined;
  /** The names of the boxes by id. */
  readonly boxNames: ReadonlyMap<string, string>;
}): DarkView {
  const { holder, side, sheet } = step;
  const box = boxSaid(boxNames.get(sheet.links.paperBoxId ?? ""));
  const place = sideWords({ holder, side });
  const then =
    next === undefined
      ? "then: shut the box"
      : next.kind === "flash"
        ? `then: flash ${next.sheet.code}`
        : next.sheet.id === sheet.id
          ? `then: into ${place}`
          : `then: ${sideWords(next)}`;
  if (step.kind === "flash") {
    return {
      head: `Flash ${sheet.code}`,
      under: `${step.flashS} s, before it is loaded`,
      lines: [`One sheet from ${box}, under the flash lamp as it was tested.`, "Box shut while the lamp is on."],
      press: "Press when it is flashed",
      after: then,
      spoken: `${spelt(sheet.code)}, from ${box}. Flash it, ${step.flashS} seconds. Box shut first.`,
    };
  }
  const flashed = sheet.dates.flashedAt !== undefined;
  return {
    head: side.name === "" ? beginning(holderWords(holder)) : `Side ${side.name}`,
    under: `${side.name === "" ? "" : `${holderWords(holder)}, `}${flashed ? "the flashed sheet" : `from ${box}`}`,
    lines: [`On the back, in soft pencil: ${sheet.code}`, "Emulsion to the slide. Slide in, unexposed face out."],
    press: "Press when the slide is shut",
    after: then,
    spoken: `${beginning(place)}, ${flashed ? "the flashed sheet" : `from ${box}`}. Code ${spelt(sheet.code)}.`,
  };
}

/** A code is spoken letter by letter, its number as a number: W31 is "W 31". */
function spelt(code: string): string {
  return code.replace(/(\p{L})(?=\p{N})/gu, "$1 ");
}

/** What is said at the end. */
export function endSpoken(count: number): string {
  return count === 0 ? "Nothing left to load. Shut the box." : `All loaded: ${sheetsSaid(count)}. Shut the box.`;
}

/** How this machine reads out. */
export function voiceWords(speech: SpeechState): string {
  if (speech === "voice") return "by this machine’s own voice";
  return speech === "tones"
    ? "no voice on this machine: a tone marks each step"
    : "this machine has neither voice nor sound";
}
