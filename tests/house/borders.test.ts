import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { borderRules } from "./tools/borderRules.ts";
import { cruiseBorders } from "./tools/cruiseBorders.ts";

describe("the house as it stands", () => {
  it("breaks no border", async () => {
    const result = await cruiseBorders();
    const broken = result.summary.violations
      .filter((violation) => violation.rule.severity === "error")
      .map((violation) => `${violation.rule.name}: ${violation.from} → ${violation.to}`);
    expect(broken).toEqual([]);
  });

  it("is really looked at: an app's import of science is followed to its source", async () => {
    const result = await cruiseBorders();
    const seen = result.modules.some(
      (module) =>
        module.source.startsWith("apps/") &&
        module.dependencies.some((dependency) => dependency.resolved.startsWith("packages/science/src/")),
    );
    expect(seen).toBe(true);
  });
});

// Each rule, a file that breaks it, and what that file says. The tree is a small copy of the house's plan.
const planted: Record<string, { at: string; says: string }> = {
  "science-is-pure": {
    at: "packages/science/src/optics/planted.ts",
    says: 'import "../../../notebook/src/records/index.ts";',
  },
  "fft-only-in-measure": { at: "packages/science/src/light/planted.ts", says: 'import "fft.js";' },
  "drawings-import-science": { at: "packages/drawings/src/planted.ts", says: 'import "@captray/notebook/records";' },
  "scans-stand-alone": { at: "packages/scans/src/planted.ts", says: 'import "@captray/science/optics";' },
  "notebook-knows-science-and-drawings": { at: "packages/notebook/src/answers/planted.ts", says: 'import "react";' },
  "node-only-in-the-disk-store": { at: "packages/notebook/src/journal/planted.ts", says: 'import "node:fs";' },
  "idb-only-in-the-browser-store": { at: "packages/notebook/src/journal/planted2.ts", says: 'import "idb";' },
  "libsql-only-in-the-disk-store": { at: "packages/notebook/src/records/planted.ts", says: 'import "libsql";' },
  "packages-know-no-app": {
    at: "packages/notebook/src/formats/planted.ts",
    says: 'import "../../../../apps/server/src/serving/index.ts";',
  },
  "only-the-small-zod": { at: "apps/web/src/shell/planted.ts", says: 'import "zod";' },
  "no-science-in-a-screen": {
    at: "apps/web/src/rooms/camera/Planted.tsx",
    says: 'import { extension } from "@captray/science/optics"; export const planted = extension;',
  },
  "rooms-meet-in-the-notebook": { at: "apps/web/src/rooms/camera/planted.ts", says: 'import "../shelf/lenses.ts";' },
  "kit-knows-no-room": { at: "apps/web/src/kit/planted.ts", says: 'import "../rooms/shelf/lenses.ts";' },
  "apps-stand-alone": { at: "apps/web/src/shell/planted2.ts", says: 'import "../../../server/src/serving/index.ts";' },
  "captray-takes-serving-only": {
    at: "apps/captray/src/planted.ts",
    says: 'import "../../web/src/rooms/shelf/lenses.ts";',
  },
  "no-circle": {
    at: "packages/science/src/optics/circle.ts",
    says: 'import { other } from "./circleOther.ts"; export const one = () => other;',
  },
  "could-not-resolve": { at: "apps/web/src/kit/planted2.ts", says: 'import "./nowhere.ts";' },
};

const innocent: Record<string, string> = {
  "packages/science/package.json": JSON.stringify({
    name: "@captray/science",
    type: "module",
    exports: { "./optics": "./src/optics/index.ts" },
  }),
  "packages/science/src/optics/index.ts": "export const extension = 1;",
  "packages/science/src/optics/circleOther.ts": 'import { one } from "./circle.ts"; export const other = () => one;',
  "packages/science/src/measure/fine.ts": 'import "fft.js";',
  "packages/notebook/package.json": JSON.stringify({
    name: "@captray/notebook",
    type: "module",
    exports: { "./records": "./src/records/index.ts" },
  }),
  "packages/notebook/src/records/index.ts": "export const lens = 1;",
  "apps/web/src/rooms/shelf/lenses.ts": "export const lenses = 1;",
  "apps/web/src/rooms/camera/Fine.tsx":
    'import type { extension } from "@captray/science/optics"; export type Fine = typeof extension;',
  "apps/server/src/serving/index.ts": "export const serve = 1;",
  "apps/captray/src/fine.ts": 'import "../../server/src/serving/index.ts";',
};

describe("a planted violation", () => {
  let tree = "";
  const found = new Map<string, string[]>();

  beforeAll(async () => {
    tree = mkdtempSync(join(tmpdir(), "captray-borders-"));
    const write = (path: string, text: string) => {
      mkdirSync(dirname(join(tree, path)), { recursive: true });
      writeFileSync(join(tree, path), text);
    };
    for (const [path, text] of Object.entries(innocent)) write(path, text);
    for (const { at, says } of Object.values(planted)) write(at, says);
    write("package.json", JSON.stringify({ name: "planted", type: "module", workspaces: ["packages/*"] }));
    mkdirSync(join(tree, "node_modules/@captray"), { recursive: true });
    symlinkSync(join(tree, "packages/science"), join(tree, "node_modules/@captray/science"));
    symlinkSync(join(tree, "packages/notebook"), join(tree, "node_modules/@captray/notebook"));
    for (const name of ["fft.js", "idb", "libsql", "react", "zod"]) {
      write(`node_modules/${name}/package.json`, JSON.stringify({ name, main: "index.js" }));
      write(`node_modules/${name}/index.js`, "");
    }
    const result = await cruiseBorders(tree);
    for (const violation of result.summary.violations) {
      found.set(violation.rule.name, [...(found.get(violation.rule.name) ?? []), violation.from]);
    }
  });

  afterAll(() => rmSync(tree, { recursive: true, force: true }));

  it("is kept for every rule there is", () => {
    expect(Object.keys(planted).sort()).toEqual(borderRules.map((rule) => rule.name ?? "").sort());
  });

  for (const [rule, { at }] of Object.entries(planted)) {
    it(`of ${rule} is seen`, () => {
      expect(found.get(rule) ?? []).toContain(at);
    });
  }

  it("is all that is seen: innocent files pass", () => {
    const guilty = new Set([...found.values()].flat());
    expect([...guilty].filter((path) => path in innocent && !path.endsWith("circleOther.ts"))).toEqual([]);
  });

  it("names the right place in its words", () => {
    for (const rule of borderRules) expect(rule.comment, rule.name).toMatch(/\w{3}/);
  });
});
