import type { Change } from "../../journal/change.ts";
import { writeBaths } from "./demoBaths.ts";
import { newDemoJournal } from "./demoJournal.ts";
import { writeScenes } from "./demoScenes.ts";
import { writeSheets } from "./demoSheets.ts";
import { writeShelf } from "./demoShelf.ts";

/** The log of the invented notebook, in the order of time: the shelf, a flash strip, seven scenes, eight sheets, three runs and their baths. */
export function demoLog(): readonly Change[] {
  const journal = newDemoJournal();
  const shelf = writeShelf(journal);
  const scenes = writeScenes(journal, shelf);
  writeSheets(journal, shelf, scenes, writeBaths(journal, shelf.recipe4));
  return journal.changes();
}
