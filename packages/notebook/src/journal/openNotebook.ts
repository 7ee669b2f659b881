import type { Storage } from "../storage/storage.ts";
import type { Notebook } from "./notebook.ts";

export interface OpenNotebookInput {
  readonly storage: Storage;
  readonly notebookId: string;
  /** Whole milliseconds since 1970, UTC. */
  readonly now: () => number;
  /** In [0, 1). */
  readonly random: () => number;
  /** Eight characters of 0–9 and a–z, drawn once for the device and kept. */
  readonly device: string;
}

/** Opens a notebook: cards and Shelf from their tables, the rest when asked. */
export declare function openNotebook(input: OpenNotebookInput): Promise<Notebook>;
