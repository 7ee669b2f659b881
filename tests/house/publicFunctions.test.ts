import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { publicFunctionsOf, tagsOf } from "./tools/publicFunctions.ts";
import { filesOf, root, textOf } from "./tools/repo.ts";

const doors = filesOf("packages/science/src/*/index.ts").filter((path) => !/\/(errors|numbers|tables)\//.test(path));
const functions = doors.flatMap(publicFunctionsOf);
const keys = new Set(
  textOf("docs/SOURCES.md")
    .split("\n")
    .map((line) => /^\| ([a-z0-9.-]+) \|/.exec(line)?.[1] ?? ""),
);

/** The source keys in `key[, place][: words] (status)`, several parted by `; `. */
function sourceKeysOf(source: string): string[] {
  return source.split(/;\s+/).map((part) => /^[a-z0-9.-]+/.exec(part)?.[0].replace(/[.]$/, "") ?? part);
}

/** `call // value[, words]`: the call, and the JSON value at the front of what follows. */
function parseExample(example: string): { call: string; value: unknown } {
  const [call = "", after = ""] = example.split(/\s\/\/\s/);
  for (let end = after.length; end > 0; end--) {
    try {
      return { call, value: JSON.parse(after.slice(0, end).replaceAll("−", "-")) };
    } catch {
      // A shorter piece may be the value, the rest words.
    }
  }
  throw new Error(`No JSON value after // in: ${example}`);
}

function expectSame(got: unknown, wanted: unknown, where: string): void {
  if (typeof wanted === "number") {
    expect(typeof got, where).toBe("number");
    expect(Math.abs((got as number) - wanted), `${where}: ${got} is not ${wanted}`).toBeLessThanOrEqual(
      1e-6 * Math.max(Math.abs(wanted), 1e-3),
    );
  } else if (Array.isArray(wanted)) {
    expect(Array.isArray(got) && got.length, where).toBe(wanted.length);
    for (const [i, value] of wanted.entries()) expectSame((got as unknown[])[i], value, where);
  } else if (wanted !== null && typeof wanted === "object") {
    for (const [key, value] of Object.entries(wanted)) expectSame((got as Record<string, unknown>)[key], value, where);
  } else {
    expect(got, where).toBe(wanted);
  }
}

describe("public functions of science", () => {
  it("are there to be looked at", () => {
    expect(functions.length).toBeGreaterThan(80);
  });

  it("say what they compute: formula or grammar, and units", () => {
    const poor = functions.filter(({ doc }) => !/^(Formula|Grammar|Method) /m.test(doc) || !/^Units /m.test(doc));
    expect(poor.map(({ file, name }) => `${file}: ${name}`)).toEqual([]);
  });

  it("name a source that stands in docs/SOURCES.md", () => {
    const poor = functions.flatMap(({ file, name, doc }) => {
      const sources = tagsOf(doc, "source");
      if (sources.length === 0) return [`${file}: ${name} names no source`];
      return sources
        .flatMap(sourceKeysOf)
        .filter((key) => !keys.has(key))
        .map((key) => `${file}: ${name}: no key ${key}`);
    });
    expect(poor).toEqual([]);
  });

  it("take one object, and stand in a file of their name", () => {
    const odd = functions.filter(({ file, name }) => !file.endsWith(`/${name}.ts`));
    expect(odd.map(({ file, name }) => `${file}: ${name}`)).toEqual([]);
  });

  const examples = functions.flatMap((entry) => tagsOf(entry.doc, "example").map((example) => ({ ...entry, example })));

  it("have an example", () => {
    const without = functions.filter(({ doc }) => tagsOf(doc, "example").length === 0);
    expect(without.map(({ file, name }) => `${file}: ${name}`)).toEqual([]);
  });

  it("do what their examples say", async () => {
    for (const { folder, file, example } of examples) {
      const { call, value } = parseExample(example);
      const door: Record<string, unknown> = await import(join(root, "packages/science/src", folder, "index.ts"));
      const got: unknown = new Function(...Object.keys(door), `return ${call};`)(...Object.values(door));
      expectSame(got, value, `${file}: ${example}`);
    }
  });

  it("an example with a wrong value would be seen", () => {
    expect(() => expectSame(2.2501, 2.25, "planted")).toThrow();
    expect(() => expectSame({ timeS: 13 }, { timeS: 12 }, "planted")).toThrow();
  });
});

describe("fixtures", () => {
  const fixtures = filesOf("packages/science/fixtures").filter((path) => path.endsWith(".json"));
  const table = textOf("packages/science/fixtures/SOURCES.md");

  it("each have a row that says where their values come from", () => {
    const without = fixtures.filter((path) => !table.includes(path.replace("packages/science/fixtures/", "")));
    expect(without).toEqual([]);
  });

  it("name files that are there, and keys of docs/SOURCES.md", () => {
    const rows = table.split("\n").filter((line) => line.startsWith("| `"));
    expect(rows.length).toBeGreaterThan(10);
    for (const row of rows) {
      const [, file = "", , source = "", status = ""] = row.split("|").map((cell) => cell.trim());
      const paths = [...file.matchAll(/`([^`]+[.](?:json|ts))`/g)].map((match) => match[1] ?? "");
      for (const path of paths) {
        const there = filesOf(`packages/science/fixtures/${path}`, `packages/science/src/${path}`);
        expect(there.length, `${path} is named in SOURCES.md`).toBeGreaterThan(0);
      }
      for (const key of sourceKeysOf(source.replaceAll("`", ""))) {
        expect(
          keys.has(key) || source.startsWith("runners/") || source.includes("`runners/"),
          `${row}: no key ${key}`,
        ).toBe(true);
      }
      expect(status, row).toMatch(/seen|second hand|peer|by hand|common practice|from memory/);
    }
  });
});
