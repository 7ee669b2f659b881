/** The numbers, words and lists a message speaks of, by the key they were given under. */
export type Facts = Readonly<Record<string, unknown>>;

/**
 * An input outside what a formula holds for.
 *
 * `code` is stable and for programs; `facts` are the values the sentence in `words.ts` speaks of; `key` is the input key
 * at fault, without it the first of `facts`. Who nests a call says where, by a path: `focus/extensionMm`.
 */
export class OutOfDomain extends Error {
  readonly code: string;
  readonly facts: Facts;
  readonly key: string;

  constructor(code: string, facts: Facts = {}, key: string = Object.keys(facts)[0] ?? "") {
    super(`${code} at ${key === "" ? "the whole input" : key}: ${describeFacts(facts)}`);
    this.name = "OutOfDomain";
    this.code = code;
    this.facts = facts;
    this.key = key;
  }
}

function describeFacts(facts: Facts): string {
  return Object.entries(facts)
    .map(([key, value]) => `${key} ${String(value)}`)
    .join(", ");
}
