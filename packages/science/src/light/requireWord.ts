import { OutOfDomain } from "../errors/outOfDomain.ts";

/** Refuses a word that is none of the choices; from outside the compiler any text can come. Inner helper. */
export function requireWord(words: Readonly<Record<string, string>>, choices: readonly string[]): void {
  for (const [key, word] of Object.entries(words)) {
    if (!choices.includes(word)) throw new OutOfDomain("unknownWord", { [key]: word, choices });
  }
}
