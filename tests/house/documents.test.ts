import { existsSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { filesOf, foldersOf, root, textOf } from "./tools/repo.ts";

const pages = filesOf("*.md", "**/*.md");

describe("documents", () => {
  it("link to files that are there", () => {
    const dead = pages.flatMap((page) =>
      [...textOf(page).matchAll(/\]\(([^)\s]+)\)/g)]
        .map((match) => (match[1] ?? "").split("#")[0] ?? "")
        .filter((target) => target !== "" && !/^[a-z]+:/.test(target))
        .filter((target) => !existsSync(join(root, dirname(page), target)))
        .map((target) => `${page}: ${target}`),
    );
    expect(dead).toEqual([]);
  });

  it("README says the job first, then the two commands", () => {
    const readme = textOf("README.md");
    const [, paragraph = ""] = readme.split("\n\n");
    expect(paragraph.length).toBeGreaterThan(200);
    expect(readme.indexOf("npm start")).toBeGreaterThan(0);
    expect(readme.indexOf("npm test")).toBeGreaterThan(0);
  });

  it("has a page for each folder of science that computes", () => {
    const folders = foldersOf("packages/science/src").filter((name) => !["errors", "numbers", "tables"].includes(name));
    const missing = folders.filter((name) => !existsSync(join(root, `docs/science/${name}.md`)));
    expect(missing).toEqual([]);
  });

  it("has a guide page for each room of the app", () => {
    const missing = foldersOf("apps/web/src/rooms").filter((name) => !existsSync(join(root, `docs/guide/${name}.md`)));
    expect(missing).toEqual([]);
  });
});

describe("the repository", () => {
  const files = filesOf(".");

  it("names no download host in its lock file", () => {
    expect(textOf("package-lock.json")).not.toMatch(/"resolved": "https?:/);
  });

  it("holds no file over 1 MiB and no built file", () => {
    const heavy = files.filter((path) => statSync(join(root, path)).size > 1024 * 1024);
    expect(heavy).toEqual([]);
    expect(files.filter((path) => /(^|\/)(dist|dist-types|coverage)\//.test(path))).toEqual([]);
  });

  it("names no folder of the machine it was written on", () => {
    const marks = ["/work", "/root", "/home", "/Users"].map((folder) => `${folder}/`);
    const guilty = files
      .filter((path) => /[.](ts|tsx|js|mjs|json|md|css|html|sh|py)$/.test(path) && path !== "package-lock.json")
      .filter((path) => !path.startsWith("tests/house/"))
      .filter((path) => marks.some((mark) => new RegExp(`(^|[^\\w.-])${mark}`).test(textOf(path))));
    expect(guilty).toEqual([]);
  });

  it("says what is open in lines that start with Open:", () => {
    const words = ["TO" + "DO", "FIX" + "ME", "XX" + "X"].join("|");
    const guilty = files
      .filter((path) => /[.](ts|tsx|css|mjs|html|md)$/.test(path))
      .filter((path) => new RegExp(`\\b(${words})\\b`).test(textOf(path)));
    expect(guilty).toEqual([]);
  });
});
