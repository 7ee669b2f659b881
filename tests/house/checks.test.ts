import { describe, expect, it } from "vitest";
import { filesOf, run } from "./tools/repo.ts";

it("the packages compile, each against what it may see", async () => {
  const { code, said } = await run("tsc", "-b", "--pretty", "false");
  expect(said).toBe("");
  expect(code).toBe(0);
});

// Side by side: each is one program on one core, and what they read stands by now.
describe.concurrent("each by a program of its own", () => {
  for (const project of filesOf(
    "packages/*/tsconfig.test.json",
    "apps/*/tsconfig.json",
    "apps/web/src/workers/tsconfig.json",
    "tests/tsconfig.json",
  )) {
    it(`${project} compiles`, async () => {
      const { code, said } = await run("tsc", "-p", project, "--pretty", "false");
      expect(said).toBe("");
      expect(code).toBe(0);
    });
  }

  it("format and lint are clean", async () => {
    const { code, said } = await run("biome", "ci", "--colors=off", "--max-diagnostics=30", ".");
    expect(code, said).toBe(0);
  });

  it("no file, export or dependency is unused", async () => {
    const { code, said } = await run("knip", "--no-progress");
    expect(code, said).toBe(0);
  });

  it("API pages of science can be made: every public function is documented", async () => {
    const { code, said } = await run("typedoc", "--options", "typedoc.json", "--emit", "none");
    expect(code, said).toBe(0);
  });
});
