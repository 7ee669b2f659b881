import { expect, it } from "vitest";
import { filesOf, run } from "./tools/repo.ts";

it("the packages compile, each against what it may see", () => {
  const { code, said } = run("tsc", "-b", "--pretty", "false");
  expect(said).toBe("");
  expect(code).toBe(0);
});

for (const project of filesOf(
  "packages/*/tsconfig.test.json",
  "apps/*/tsconfig.json",
  "apps/web/src/workers/tsconfig.json",
  "tests/tsconfig.json",
)) {
  it(`${project} compiles`, () => {
    const { code, said } = run("tsc", "-p", project, "--pretty", "false");
    expect(said).toBe("");
    expect(code).toBe(0);
  });
}

it("format and lint are clean", () => {
  const { code, said } = run("biome", "ci", "--colors=off", "--max-diagnostics=30", ".");
  expect(code, said).toBe(0);
});

it("no file, export or dependency is unused", () => {
  const { code, said } = run("knip", "--no-progress");
  expect(code, said).toBe(0);
});

it("API pages of science can be made: every public function is documented", () => {
  const { code, said } = run("typedoc", "--options", "typedoc.json", "--emit", "none");
  expect(code, said).toBe(0);
});
