import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { allDocuments } from "./allDocuments.ts";

const folder = fileURLToPath(new URL("../../../../docs/schemas/", import.meta.url));
const documents = allDocuments();
const each = documents.map((document) => [document.name, document] as const);

/** Every schema inside a schema, with its place. */
function schemasIn(schema: unknown, place: string): [string, Record<string, unknown>][] {
  if (Array.isArray(schema)) return schema.flatMap((item, index) => schemasIn(item, `${place}/${index}`));
  if (typeof schema !== "object" || schema === null) return [];
  const own: [string, Record<string, unknown>][] = "type" in schema ? [[place, { ...schema }]] : [];
  return [...own, ...Object.entries(schema).flatMap(([key, inner]) => schemasIn(inner, `${place}/${key}`))];
}

describe("docs/schemas", () => {
  it.each(each)("%s is up to date, else run: node scripts/schemas.mjs", (name, document) => {
    const file = `${folder}${name}.json`;
    expect(existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : undefined).toEqual(document);
  });

  it("holds nothing else, but the schema of a whole notebook", () => {
    const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter(
      (file) => file.endsWith(".json") && file !== "notebook.schema.json",
    );
    expect(files.map((file) => file.replaceAll("\\", "/").replace(/\.json$/, "")).sort()).toEqual(
      documents.map(({ name }) => name).sort(),
    );
  });
});

describe("every published schema [JSON Schema draft 2020-12]", () => {
  it.each(each)("%s says its draft and takes no key it does not know, at any depth", (_, { input, output }) => {
    for (const schema of [input, output]) {
      expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
      for (const [place, inner] of schemasIn(schema, "")) {
        if (inner.type === "object" && inner.properties !== undefined) {
          expect([place, inner.additionalProperties]).toEqual([place, false]);
        }
      }
    }
  });

  it.each(each)("%s describes each key of its input in one line", (_, { input }) => {
    for (const [place, inner] of schemasIn(input, "")) {
      const properties = inner.type === "object" ? Object.entries((inner.properties ?? {}) as object) : [];
      for (const [key, property] of properties) {
        if (property === false) continue;
        const described = property.description ?? property.oneOf?.[0]?.properties?.kind?.description;
        expect([`${place}/${key}`, typeof described]).toEqual([`${place}/${key}`, "string"]);
        expect(described.includes("\n")).toBe(false);
      }
    }
  });

  it("a default that is another key's value stands in the description only", () => {
    const bed = documents.find(({ name }) => name === "formula/bedScale")?.input.properties as Record<string, object>;
    expect(bed.infinityBedMm).toEqual({
      type: "number",
      exclusiveMinimum: 0,
      unit: "mm",
      description: "Where the bed stands for a distant subject. Default: the focal length.",
    });
  });

  it("limits, unit and default of a key stand beside it", () => {
    const shift = documents.find(({ name }) => name === "formula/actinicFocusShift")?.input.properties;
    expect(shift).toMatchObject({
      focalLengthMm: { type: "number", exclusiveMinimum: 0, unit: "mm" },
      focusShare: { default: 0.018, minimum: 0, exclusiveMaximum: 0.1 },
      correction: { default: "single", enum: ["single", "achromat"] },
    });
  });
});
