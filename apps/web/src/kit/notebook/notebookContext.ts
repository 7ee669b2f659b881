import type { Notebook } from "@captray/notebook/journal";
import { createContext } from "react";

export const NotebookContext = createContext<Notebook | undefined>(undefined);
