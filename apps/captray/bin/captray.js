#!/usr/bin/env node
// Starts the built terminal; says what to run where it has not been built yet.
import { existsSync } from "node:fs";

const built = new URL("../dist/captray.js", import.meta.url);
if (existsSync(built)) {
  await import(built.href);
} else {
  process.stderr.write("captray is not built yet: run npm run build:terminal in the repository.\n");
  process.exitCode = 1;
}
