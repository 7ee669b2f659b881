// npm run study [campaigns, 400]: how often nine in ten are nine in ten, and what a chosen sheet is worth; writes docs/science/study.md and its plots.
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const root = fileURLToPath(new URL("..", import.meta.url));
const { module } = await runnerImport(`${root}packages/science/fixtures/learn/study.ts`);
const campaigns = Number(process.argv[2] ?? 400);
/** @param {string} words */
const progress = (words) => console.log(words);
const { page, coverage, fourthSheet } = module.study({ campaigns, progress });
if (campaigns < 400) console.log("Fewer than 400 campaigns: nothing was written.");
else {
  writeFileSync(`${root}docs/science/study.md`, page);
  writeFileSync(`${root}docs/science/study-coverage.svg`, coverage);
  writeFileSync(`${root}docs/science/study-fourth-sheet.svg`, fourthSheet);
}
