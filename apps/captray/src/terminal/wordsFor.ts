import { furtherMessageOf, type Message } from "@captray/science/errors";
import type { Fault } from "../declare/fault.ts";

type Facts = Fault["facts"];

/** The sentences for a fault: those that speak of the command line and of the program below, all others from science. */
export function wordsFor({ code, pointer, facts }: Fault): Message {
  const words = Object.hasOwn(shellWords, code) ? shellWords[code] : undefined;
  if (words !== undefined) return words(facts);
  return furtherMessageOf({ code, facts, key: keyOf(pointer, facts) });
}

/** The name to speak of: the last of the pointer that is no index. */
function keyOf(pointer: string, facts: Facts): string {
  const named = pointer.split("/").filter((part) => part !== "" && !/^\d+$/.test(part));
  return named.at(-1) ?? Object.keys(facts)[0] ?? "";
}

const shellWords: Readonly<Record<string, (facts: Facts) => Message>> = {
  notJson: ({ reason }) => ({
    message: `The input cannot be read as JSON${reason ? `: ${clipped(reason)}` : ""}.`,
    hint: "Give one JSON document; with --batch, one on each line.",
  }),
  unknownName: ({ name, near, lister }) => ({
    message: `There is no ${quoted(name)}.`,
    hint: `${Array.isArray(near) && near.length > 0 ? `Near to it: ${listed(near)}. ` : ""}${String(lister)} lists the names.`,
  }),
  unknownOption: ({ reason, command }) => ({
    message: `The command line cannot be read: ${clipped(reason)}.`,
    hint: `${String(command)} --help says what may stand there.`,
  }),
  onlySimulated: () => ({
    message: "A real run is made at the trays, in the app; here only a made-up one.",
    hint: "Add --simulate, and give the events with their seconds.",
  }),
  ownFault: ({ reason }) => ({
    message: `The program itself is at fault: ${clipped(reason)}.`,
    hint: "Please report it with the input that caused it.",
  }),
};

const longest = 80;

function clipped(value: unknown): string {
  const text = String(value).replace(/\.$/, "");
  return text.length > longest ? `${text.slice(0, longest)}…` : text;
}

function quoted(value: unknown): string {
  return `"${clipped(value)}"`;
}

function listed(values: unknown): string {
  return Array.isArray(values) ? values.map(String).join(", ") : "";
}
