import { type Message, messageOf } from "@captray/science/errors";
import type { Fault } from "../declare/fault.ts";

type Facts = Fault["facts"];

/** The sentences for a fault: the shell's own below, those of the subject from science. */
export function wordsFor({ code, pointer, facts }: Fault): Message {
  const words = Object.hasOwn(shellWords, code) ? shellWords[code] : undefined;
  if (words !== undefined) return words(facts);
  return messageOf({ code, facts, key: keyOf(pointer, facts) });
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
  unknownCommand: ({ name, known }) => ({
    message: `There is no command ${quoted(name)}.`,
    hint: `The commands are ${listed(known)}; captray --help says what each does.`,
  }),
  unknownName: ({ name, near, lister }) => ({
    message: `There is no ${quoted(name)}.`,
    hint: `${Array.isArray(near) && near.length > 0 ? `Near to it: ${listed(near)}. ` : ""}${String(lister)} lists the names.`,
  }),
  unknownOption: ({ reason, command }) => ({
    message: `The command line cannot be read: ${clipped(reason)}.`,
    hint: `${String(command)} --help says what may stand there.`,
  }),
  unknownKey: ({ key, known }) => ({
    message: `The key ${quoted(key)} is not known here.`,
    hint: `Known here: ${listed(known)}.`,
  }),
  missingKey: ({ key, choices, with: partner }) => ({
    message: `The key ${quoted(key)} is missing${partner === undefined ? "" : `, which belongs to ${quoted(partner)}`}.`,
    hint: Array.isArray(choices) ? `Give exactly one of ${listed(choices)}.` : "Add it where the path says.",
  }),
  twoOfOne: ({ key, first }) => ({
    message: `The key ${quoted(key)} does not go with what else is given.`,
    hint:
      first === undefined
        ? `Leave ${quoted(key)} out.`
        : `Keep either ${quoted(first)} with its keys or ${quoted(key)}; one thing is said in one way.`,
  }),
  fileNotFound: ({ file }) => ({
    message: `There is no file ${quoted(file)}.`,
    hint: "Give a path from the working directory, or the JSON on standard input.",
  }),
  fileUnreadable: ({ file, reason }) => ({
    message: `The file ${quoted(file)} cannot be read${reason ? ` (${String(reason)})` : ""}.`,
    hint: "Give a file, not a folder, that you may read.",
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
