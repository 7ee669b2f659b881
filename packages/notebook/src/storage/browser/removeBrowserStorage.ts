import { deleteDB } from "idb";
import { databaseName } from "./openBrowserStorage.ts";

/** Throws a notebook's database away for good: for the demo notebook, when it is left. */
export async function removeBrowserStorage({ notebookId }: { readonly notebookId: string }): Promise<void> {
  await deleteDB(databaseName(notebookId));
}
