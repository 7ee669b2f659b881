import type { OpeningsOfHand, PracticeWay } from "@captray/notebook/answers";
import { secondsWords } from "../capPage/capWords.ts";
import type { PracticeSaid } from "./practiceState.ts";

/** The opening before, in a sentence; nothing before the first. */
export function saidWords(said: PracticeSaid | null): string {
  if (said === null) return "";
  if (said.what === "forgotten") return "Nobody pressed for so long: that one is not kept.";
  const errorS = said.givenS - said.wantedS;
  const size = Math.abs(errorS).toFixed(2);
  const out = Number(size) === 0 ? "just on it" : `${size} s too ${errorS > 0 ? "long" : "short"}`;
  return `${said.givenS.toFixed(2)} s; wanted ${secondsWords(said.wantedS)}: ${out}.`;
}

/** How far the practice is, and whether the ledger goes by it. */
export function usedWords({ counted, stillToGive }: OpeningsOfHand, { way, by }: PracticeWay): string {
  const openings = `${counted} ${counted === 1 ? "opening" : "openings"}`;
  if (counted === 0) return "None yet. Six are needed before the ledger goes by them; more make it surer.";
  if (stillToGive > 0) return `${openings}; ${stillToGive} more before the ledger goes by them.`;
  const touch = by === "touch" ? " By touch the cap’s own movement is not in it: its tenth of a second stays." : "";
  return `${openings}. The ${way === "ticks" ? "ledger and the cap page go" : "cap page goes"} by them.${touch}`;
}

/** The drawing in a sentence, with its numbers. */
export function drawnWords({ found, counted, openings }: OpeningsOfHand, way: PracticeWay["way"]): string {
  const struck = openings.length - counted;
  const bias = found.biasS.value;
  const rate =
    way === "counted"
      ? ` A counted second is ${found.rate.value.toFixed(2)} s, give or take ${(1.645 * found.rate.sd).toFixed(2)}.`
      : "";
  return (
    `${counted} openings about the wanted line${struck > 0 ? `, ${struck} struck out` : ""}: on the whole ${Math.abs(bias).toFixed(2)} s ` +
    `too ${bias < 0 ? "short" : "long"}, give or take ${(1.645 * found.biasS.sd).toFixed(2)} s.${rate}`
  );
}

/** A hand's name, or a word for one that has none. */
export function handName(name: string, place: number): string {
  return name.trim() !== "" ? name : place === 0 ? "my hand" : `hand ${place + 1}`;
}
