/** What a command knows of the world: where its text comes from and goes to. Tests hand in their own. */
export interface Terminal {
  /** Standard input, in pieces as they come. */
  readonly input: AsyncIterable<string>;
  readonly inputIsTyped: boolean;
  /** Whether standard output is looked at, not read by a program. */
  readonly outputIsSeen: boolean;
  /** Writes to standard output, and waits until it is taken. */
  readonly write: (text: string) => Promise<void>;
  /** Writes to standard error. */
  readonly note: (text: string) => void;
}

export const FINE = 0;
export const OWN_FAULT = 1;
export const REFUSED = 2;
