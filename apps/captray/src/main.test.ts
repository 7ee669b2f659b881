import { execFileSync, spawn, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import recorded from "../fixtures/plan-hull-and-snow.json" with { type: "json" };

const root = fileURLToPath(new URL("../../../", import.meta.url));
let folder = "";
let program = "";

// Built into a folder of its own: the usual one may be in use by another test, or be of yesterday.
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "captray-built-"));
  const vite = join(root, "node_modules/vite/bin/vite.js");
  const config = join(root, "apps/captray/vite.config.ts");
  execFileSync(process.execPath, [
    vite,
    "build",
    "--config",
    config,
    "--outDir",
    folder,
    "--emptyOutDir",
    "--logLevel",
    "warn",
  ]);
  program = join(folder, "captray.js");
}, 120_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

function captray(words: readonly string[], input = "") {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...words], { input, encoding: "utf8" });
  return { status, stdout, stderr };
}

describe("the real program", () => {
  it("answers the recorded run", { timeout: 60_000 }, () => {
    const { status, stdout, stderr } = captray(["plan"], JSON.stringify(recorded.input));
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout.endsWith("\n") && !stdout.trimEnd().includes("\n")).toBe(true);
    expect(JSON.parse(stdout)).toMatchObject({ timeS: expect.closeTo(recorded.output.timeS, 6), levers: null });
  });

  it("refuses with exit code 2, and nothing on standard output", { timeout: 60_000 }, () => {
    const { status, stdout, stderr } = captray(["plan"], "{");
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(JSON.parse(stderr).error.code).toBe("notJson");
  });

  it("is started by the committed bin", { timeout: 60_000 }, () => {
    const bin = join(root, "apps/captray/bin/captray.js");
    expect(spawnSync(process.execPath, [bin, "--version"], { encoding: "utf8" }).stdout).toMatch(/^captray \d/);
  });

  it("answers a line before the next is sent", async () => {
    const child = spawn(process.execPath, [program, "formula", "--batch"]);
    const answers: string[] = [];
    for (const stopsFromOne of [6, 8]) {
      const answer = new Promise<string>((taken) => child.stdout.once("data", (piece) => taken(String(piece))));
      child.stdin.write(`${JSON.stringify({ name: "exactFNumber", in: { stopsFromOne } })}\n`);
      answers.push(await answer);
    }
    child.stdin.end();
    const status = await new Promise((ended) => child.once("exit", ended));
    expect({ answers, status }).toEqual({
      answers: ['{"name":"exactFNumber","out":8}\n', '{"name":"exactFNumber","out":16}\n'],
      status: 0,
    });
  }, 60_000);

  it("20 random inputs: an answer or an error object, exit 0 or 2 [property, fixed seed]", () => {
    const names = fc.constantFrom("bellowsFactor", "findSlips", "spectrum", "parseTime", "nosuch");
    const words = fc.oneof(
      fc.constant(["plan"]),
      names.map((name) => ["formula", name]),
      names.map((name) => ["schema", name]),
    );
    const text = fc.oneof(fc.json(), fc.string(), fc.constantFrom('{"timeS":1e400}', '{"text":"1/0"}', "null"));
    fc.assert(
      fc.property(words, text, (call, input) => {
        const { status, stdout, stderr } = captray(call, input);
        expect([0, 2]).toContain(status);
        const document = JSON.parse(status === 0 ? stdout : stderr);
        expect(status === 0 ? stderr : stdout).toBe("");
        expect("error" in document).toBe(status === 2);
      }),
      { seed: 20261203, numRuns: 20 },
    );
  }, 120_000);
});
