import type { LoadingDoubt, LoadingStep } from "@captray/notebook/answers";
import { holderWords } from "../../../kit/holderWords.ts";
import { sideWords } from "../../../kit/sideWords.ts";
import { formatWords } from "./formatWords.ts";

/** Box C said within a sentence: "box C"; a box of another name as it is called. */
export function boxSaid(name: string | undefined): string {
  return name === undefined || name === "" ? "its box" : name.replace(/^Box(?= )/, "box");
}

/** "4 sheets". */
export function sheetsSaid(count: number): string {
  return count === 1 ? "1 sheet" : `${count} sheets`;
}

/** What is to be said of a plan before it is laid out, with what can be done. */
export function doubtWords(doubt: LoadingDoubt): { readonly head: string; readonly say: string } {
  if (doubt.kind === "fewLeft") {
    const { left, wanted } = doubt;
    return {
      head: left === 0 ? "The box is empty by its count" : `Only ${sheetsSaid(left)} left by the count`,
      say: `${sheetsSaid(wanted)} are planned. Count them in the dark, or put the count right on the box’s page.`,
    };
  }
  const { holder, paperBox } = doubt;
  const [paper, frame] = [paperBox.size, holder.format];
  return {
    head: "The paper is of another size",
    say: `${paperBox.name || "The box"} is ${paper ? formatWords({ format: paper }) : ""}, ${holderWords(holder)} takes ${
      frame ? formatWords({ format: frame }) : ""
    }. Cut it first, in the dark, or choose another box.`,
  };
}

/** "W36 into holder 2, side A". */
export function intoWords({ sheet, holder, side }: Pick<LoadingStep, "sheet" | "holder" | "side">): string {
  return `${sheet.code} into ${sideWords({ holder, side })}`;
}
