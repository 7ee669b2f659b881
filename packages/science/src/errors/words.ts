import type { Facts } from "./outOfDomain.ts";

export interface MessageInput {
  readonly code: string;
  readonly facts: Facts;
  readonly key: string;
  readonly lengthUnit?: "mm" | "inch";
}

export interface Message {
  /** What is wrong, with the values. */
  readonly message: string;
  /** What to do. */
  readonly hint: string;
}

export function messageOf({ code, facts, key }: MessageInput): Message {
  if (code === "unreadable") {
    return {
      message: `"${String(facts.text)}" is not ${String(facts.wanted ?? "readable")}.`,
      hint: "Write it another way.",
    };
  }
  return { message: `${key}: ${code}.`, hint: "" };
}
