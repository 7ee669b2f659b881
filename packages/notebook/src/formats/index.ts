export { type ExportNotebookInput, exportNotebook } from "./exportNotebook.ts";
export { type ImportNotebookInput, type ImportOutcome, importNotebook } from "./importNotebook.ts";
export type { ImportProblem, ImportRefused } from "./importProblem.ts";
export { type ReadNotebook, type ReadNotebookJsonInput, readNotebookJson } from "./readNotebookJson.ts";
