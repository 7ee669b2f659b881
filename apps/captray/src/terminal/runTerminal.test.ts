import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { allCommands } from "../commands/allCommands.ts";
import { allFormulas } from "../formulas/allFormulas.ts";
import { runTerminal } from "./runTerminal.ts";

interface Run {
  readonly exit: number;
  readonly out: string;
  readonly notes: string;
}

interface World {
  readonly input?: string | readonly string[];
  readonly inputIsTyped?: boolean;
  readonly outputIsSeen?: boolean;
  /** Called with what has been written so far, whenever the next piece of input is asked for. */
  readonly onAsk?: (out: string) => void;
}

async function run(
  words: string,
  { input = "", inputIsTyped = false, outputIsSeen = false, onAsk }: World = {},
): Promise<Run> {
  let out = "";
  let notes = "";
  async function* pieces() {
    for (const piece of typeof input === "string" ? [input] : input) {
      onAsk?.(out);
      yield piece;
    }
  }
  const exit = await runTerminal(words.split(" ").filter(Boolean), {
    input: pieces(),
    inputIsTyped,
    outputIsSeen,
    write: async (text) => {
      out += text;
    },
    note: (text) => {
      notes += text;
    },
  });
  return { exit, out, notes };
}

const bellows = '{"focalLengthMm":240,"extensionMm":312}';
const codeOf = ({ notes }: Run) => JSON.parse(notes).error.code;

describe("one document [docs/guide/terminal.md]", () => {
  it("the answer is one line, nothing else is written", async () => {
    const { exit, out, notes } = await run("formula exactFNumber", { input: '{"stopsFromOne":6}' });
    expect({ exit, out, notes }).toEqual({ exit: 0, out: '{"name":"exactFNumber","out":8}\n', notes: "" });
  });

  it("for eyes it is indented by two", async () => {
    const { out } = await run("formula exactFNumber", { input: '{"stopsFromOne":6}', outputIsSeen: true });
    expect(out).toBe('{\n  "name": "exactFNumber",\n  "out": 8\n}\n');
  });

  it("a refusal goes to standard error, nothing to standard output, exit 2", async () => {
    const { exit, out, notes } = await run("formula bellowsFactor", {
      input: '{"focalLengthMm":210,"extensionMm":180}',
    });
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    expect(Object.keys(JSON.parse(notes))).toEqual(["error"]);
    expect(Object.keys(JSON.parse(notes).error)).toEqual(["code", "message", "path", "hint"]);
  });

  it.each(["", "  \n", "\uFEFF"])("an empty input %j counts as {}", async (input) => {
    expect((await run("formula exposureConstant", { input })).exit).toBe(0);
    expect(codeOf(await run("plan", { input }))).toBe("missingKey");
  });

  it("text in pieces is one document", async () => {
    expect((await run("formula bellowsFactor", { input: [bellows.slice(0, 9), bellows.slice(9)] })).exit).toBe(0);
  });

  it.each(["{", "{'a':1}", '{"a":1}{', "NaN", "undefined"])("%s is no JSON", async (input) => {
    const result = await run("plan", { input });
    expect([result.exit, codeOf(result)]).toEqual([2, "notJson"]);
  });

  it("who types is told that JSON is awaited, on standard error", async () => {
    const typed = await run("formula bellowsFactor", { input: bellows, inputIsTyped: true });
    expect(typed.notes).toMatch(/JSON is awaited/);
    expect((await run("formula", { inputIsTyped: true })).notes).toBe("");
  });
});

describe("FILE [docs/guide/terminal.md]", () => {
  let folder = "";
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "captray-"));
    writeFileSync(join(folder, "reading.json"), bellows);
    writeFileSync(join(folder, "lines.jsonl"), `{"name":"bellowsFactor","in":${bellows},"id":1}\n`);
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it("is read instead of standard input", async () => {
    expect((await run(`formula bellowsFactor ${folder}/reading.json`, { input: "{" })).exit).toBe(0);
    expect((await run(`formula --batch ${folder}/lines.jsonl`)).out).toMatch(
      /^\{"id":1,"name":"bellowsFactor","out":1.69/,
    );
    expect((await run(`formula ${folder}/lines.jsonl --batch`)).exit).toBe(0);
  });

  it("that is not there, or is a folder", async () => {
    for (const words of ["plan", "plan --batch", "formula bellowsFactor"]) {
      expect(codeOf(await run(`${words} ${folder}/none.json`))).toBe("fileNotFound");
      expect(codeOf(await run(`${words} ${folder}/reading.json/none`))).toBe("fileNotFound");
      expect(codeOf(await run(`${words} ${folder}`))).toBe("fileUnreadable");
    }
  });
});

describe("--batch [docs/guide/terminal.md]", () => {
  const line = (input: object, id?: unknown) => JSON.stringify({ name: "exactFNumber", in: input, id });

  it("gives one line for each, in order; a bad line does not stop the rest; exit 0", async () => {
    const input = [line({ stopsFromOne: 6 }, 1), "", "{", "  ", line({}, "two"), line({ stopsFromOne: 8 }, 3)].join(
      "\r\n",
    );
    const { exit, out, notes } = await run("formula --batch", { input });
    const answers = out
      .trimEnd()
      .split("\n")
      .map((each) => JSON.parse(each));
    expect({ exit, notes }).toEqual({ exit: 0, notes: "" });
    expect(answers).toMatchObject([
      { id: 1, name: "exactFNumber", out: 8 },
      { error: { code: "notJson", path: "" } },
      { id: "two", name: "exactFNumber", error: { code: "missingKey", path: "/stopsFromOne" } },
      { id: 3, name: "exactFNumber", out: 16 },
    ]);
    expect(Object.keys(answers[1])).toEqual(["error"]);
  });

  it("each line is answered as soon as it is whole", async () => {
    const first = line({ stopsFromOne: 6 });
    const seen: string[] = [];
    await run("formula --batch", {
      input: [`${first}\n${first.slice(0, 5)}`, `${first.slice(5)}\n`, ""],
      onAsk: (out) => seen.push(out),
    });
    expect(seen.map((out) => out.split("\n").length - 1)).toEqual([0, 1, 2]);
  });

  it("is compact also for eyes", async () => {
    expect((await run("formula --batch", { input: line({ stopsFromOne: 6 }), outputIsSeen: true })).out).toBe(
      '{"name":"exactFNumber","out":8}\n',
    );
  });

  it("plan too", async () => {
    const good =
      '{"id":1,"lens":{"focalLengthMm":240,"fNumber":8},"paper":{"exposureIndex":6},"readings":[{"ev100":8}]}';
    const { exit, out } = await run("plan --batch", { input: `${good}\n{"id":2}\n` });
    const [first, second] = out
      .trimEnd()
      .split("\n")
      .map((each) => JSON.parse(each));
    expect(exit).toBe(0);
    expect(first).toMatchObject({ id: 1, timeS: expect.closeTo(25 / 6, 9) });
    expect(second).toMatchObject({ id: 2, error: { code: "missingKey", path: "/lens" } });
  });
});

describe("the command line [docs/guide/terminal.md]", () => {
  it.each([
    ["nosuch", "unknownCommand"],
    ["help", "unknownCommand"],
    ["formula bellowsFacto", "unknownName"],
    ["formula toString", "unknownName"],
    ["formula plan", "unknownName"],
    ["schema nosuch", "unknownName"],
    ["schema formula/nosuch", "unknownName"],
    ["schema bellowsFactor", "unknownName"],
    ["--nope", "unknownOption"],
    ["--batch", "unknownOption"],
    ["plan --nope", "unknownOption"],
    ["plan -x", "unknownOption"],
    ["plan --batch=yes", "unknownOption"],
    ["plan a b", "unknownOption"],
    ["plan --simulate", "unknownOption"],
    ["plan --notebook winter", "unknownOption"],
    ["formula a b c", "unknownOption"],
    ["formula --batch a b", "unknownOption"],
    ["schema plan b", "unknownOption"],
    ["schema --batch", "unknownOption"],
  ])("captray %s: %s, exit 2, nothing on standard output", async (words, code) => {
    const result = await run(words);
    expect([result.exit, result.out, codeOf(result)]).toEqual([2, "", code]);
    expect(JSON.parse(result.notes).error.path).toBe("");
  });

  it("a name that is nearly right is offered", async () => {
    expect(JSON.parse((await run("formula bellowFactor")).notes).error.hint).toContain("bellowsFactor");
  });

  it("alone it prints the help, exit 0", async () => {
    expect(await run("")).toEqual(await run("--help"));
    expect((await run("")).exit).toBe(0);
  });

  it("--version prints name and version", async () => {
    expect((await run("--version")).out).toMatch(/^captray \d+\.\d+\.\d+\n$/);
  });

  it("formula lists all, one line each, with the keys of the contract", async () => {
    const { formulas } = JSON.parse((await run("formula")).out);
    expect(formulas).toHaveLength(allFormulas.length);
    expect(formulas[0]).toEqual({
      name: "magnificationFromExtension",
      does: "Magnification on the paper, from how far the paper stands behind the lens.",
      input: ["focalLengthMm", "extensionMm"],
      output: "Magnification on the paper.",
      units: "none",
      source: "lens-relations",
    });
    expect(formulas.map(({ does }: { does: string }) => does).join("")).not.toContain("\n");
  });

  it("schema lists every name, and every name is printed", async () => {
    const { schemas } = JSON.parse((await run("schema")).out);
    expect(schemas).toEqual([
      ...allCommands.map(({ name }) => name),
      ...allFormulas.map(({ name }) => `formula/${name}`),
    ]);
    for (const name of schemas) {
      const { out } = await run(`schema ${name}`);
      expect(Object.keys(JSON.parse(out))).toEqual(["name", "input", "output"]);
      expect(JSON.parse(out).name).toBe(name);
    }
  }, 60_000);
});

describe("help is plain text: job, keys, an example to paste, exit codes [docs/guide/terminal.md]", () => {
  it.each(allCommands.map((command) => [command.name, command] as const))("of %s", async (name, { job }) => {
    const { exit, out } = await run(`${name} --help`);
    expect(exit).toBe(0);
    for (const part of [job, "Usage: captray", "Example:\n  ", "npx captray", "Exit codes: 0 fine; 2"]) {
      expect(out).toContain(part);
    }
    expect(await run(`${name} -h`)).toEqual({ exit, out, notes: "" });
  });

  it("of plan names every key with unit and default", async () => {
    const { out } = await run("plan --help");
    for (const part of ["focalLengthMm (in mm, required)", "meterK (default 12.5)", "saidTimeS (in s)", "sdStops"]) {
      expect(out).toContain(part);
    }
  });

  it("of a formula names its own keys, codes and source", async () => {
    const { out } = await run("formula bellowsFactor --help");
    for (const part of [
      "extensionMm (in mm, required)",
      "pupilRatio (default 1)",
      "extensionShorterThanFocalLength",
      "greivenkamp",
    ]) {
      expect(out).toContain(part);
    }
  });

  it("every example of the help runs", async () => {
    for (const words of [
      "--help",
      "plan --help",
      "formula --help",
      ...allFormulas.map(({ name }) => `formula ${name} --help`),
    ]) {
      const { out } = await run(words);
      const [, input = "", call = ""] = /echo '(.+)' \| npx captray (.+)/.exec(out) ?? [];
      const result = await run(call, { input });
      expect([words, result.exit, result.notes]).toEqual([words, 0, ""]);
    }
  }, 60_000);
});

describe("the guide", () => {
  const page = readFileSync(new URL("../../../../docs/guide/terminal.md", import.meta.url), "utf8");

  it("prints what the program answers", async () => {
    const blocks = [...page.matchAll(/```(sh|text)\n(.+?)\n```/gs)].map(([, kind, text = ""]) => ({ kind, text }));
    let checked = 0;
    for (const [index, { kind, text }] of blocks.entries()) {
      const next = blocks[index + 1];
      if (kind !== "sh") continue;
      const quoted = [...text.matchAll(/'(\{.+?\})'/g)].map(([, input]) => input);
      const { exit, out } = await run(text.split("npx captray ")[1] ?? "", { input: quoted.join("\n") });
      expect(exit).toBe(0);
      if (next?.kind === "text") expect(out).toBe(`${next.text}\n`);
      checked += 1;
    }
    expect(checked).toBeGreaterThanOrEqual(5);
  });

  it("prints the refusal it shows", async () => {
    const { notes } = await run("formula bellowsFactor", { input: '{"focalLengthMm":210,"extensionMm":180}' });
    expect(page).toContain(notes.trimEnd());
  });

  it("shows the beginning of the plan as it is", async () => {
    const input = /echo '(\{"lens.+?\})' \|/.exec(page)?.[1] ?? "";
    const { timeS, timeStops, timeIntervalS } = JSON.parse((await run("plan", { input })).out);
    const cut = (value: number) => `${Math.floor(value * 100) / 100}…`.replace(/\.(\d)…/, ".$10…");
    const { low, high } = timeIntervalS;
    expect(page).toContain(
      `"timeS":${cut(timeS)},"timeStops":{"value":${cut(timeStops.value)},"sd":${cut(timeStops.sd)}}`,
    );
    expect(page).toContain(`{"low":${cut(low)},"high":${cut(high)}}`);
  });
});
