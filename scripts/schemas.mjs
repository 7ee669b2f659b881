// Writes docs/schemas anew from the declarations of the terminal and the notebook's records: node scripts/schemas.mjs
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const root = fileURLToPath(new URL("..", import.meta.url));
const { module } = await runnerImport(`${root}apps/captray/src/commands/allDocuments.ts`);
const notebook = await runnerImport(`${root}packages/notebook/src/formats/notebookDocument.ts`);

rmSync(`${root}docs/schemas`, { recursive: true, force: true });
for (const document of module.allDocuments()) {
  const file = `${root}docs/schemas/${document.name}.json`;
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, `${JSON.stringify(document, null, 2)}\n`);
}
writeFileSync(
  `${root}docs/schemas/notebook.schema.json`,
  `${JSON.stringify(notebook.module.notebookDocument(), null, 2)}\n`,
);
