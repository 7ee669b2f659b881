import { recordsVersion } from "../records/recordsVersion.ts";
import type { Transaction } from "../storage/storage.ts";
import { cardForm } from "./card.ts";

/** The form of rows and cards in storage; in another form they are made again from the log. */
export const form = `${recordsVersion}.${cardForm}`;

/** The notebook was written by a newer version of this program: it is left untouched. */
export class NotebookNewer extends Error {
  readonly code = "notebookNewer";
  constructor() {
    super("notebookNewer: this notebook was written by a newer version");
    this.name = "NotebookNewer";
  }
}

/** Refuses to read or write rows of a newer form; says whether those there are of today's. */
export async function checkForm(transaction: Transaction): Promise<"today" | "older" | "none"> {
  const held = await transaction.get("meta", "form");
  if (held === form) return "today";
  if (held === undefined) return "none";
  const [records = 0, cards = 0] = held.split(".").map(Number);
  if (records > recordsVersion || (records === recordsVersion && cards > cardForm)) throw new NotebookNewer();
  return "older";
}
