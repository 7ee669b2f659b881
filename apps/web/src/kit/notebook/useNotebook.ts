import type { Notebook } from "@captray/notebook/journal";
import { use } from "react";
import { NotebookContext } from "./notebookContext.ts";

/** The open notebook: to change it, and to ask it what no other hook follows. */
export function useNotebook(): Notebook {
  const notebook = use(NotebookContext);
  if (!notebook) throw new Error("useNotebook is asked outside of NotebookProvider.");
  return notebook;
}
