import type { Notebook } from "../../journal/notebook.ts";
import { demoLog } from "./demoLog.ts";

export interface FillDemoInput {
  /** The demo has a notebook of its own. */
  readonly notebook: Notebook;
}

/**
 * Writes the invented notebook “A winter at a small river boatyard” into a notebook, and waits until it is kept.
 *
 * Its changes were written by an invented device in November and December 2025 and are always the same: two tabs that
 * fill it at once do it once, and taking back does not reach them.
 */
export async function fillDemo({ notebook }: FillDemoInput): Promise<void> {
  await notebook.apply(demoLog());
}
