export type { Change, Op, Was } from "./change.ts";
export { ChangeRefused } from "./changeRefused.ts";
export { NotebookNewer } from "./form.ts";
export type { Applied, Kept, Notebook, OlderValue, Quarantined, RecordSet, TakenBack } from "./notebook.ts";
export { type OpenNotebookInput, openNotebook } from "./openNotebook.ts";
export type { SheetCard } from "./sheetCard.ts";
