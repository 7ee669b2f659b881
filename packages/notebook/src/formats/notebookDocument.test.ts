import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { kinds } from "../records/kinds.ts";
import { notebookDocument } from "./notebookDocument.ts";

test("docs/schemas/notebook.schema.json is up to date, else run: node scripts/schemas.mjs", () => {
  const file = new URL("../../../../docs/schemas/notebook.schema.json", import.meta.url);
  expect(JSON.parse(readFileSync(file, "utf8"))).toEqual(JSON.parse(JSON.stringify(notebookDocument())));
});

test("it knows every kind of record and takes no key it does not know, at any depth", () => {
  let objects = 0;
  const look = (schema: unknown): void => {
    if (typeof schema !== "object" || schema === null) return;
    if ("properties" in schema) {
      expect(schema).toMatchObject({ additionalProperties: false });
      objects++;
    }
    for (const inner of Object.values(schema)) look(inner);
  };
  const document = notebookDocument();
  look(document);
  expect(objects).toBeGreaterThan(40);
  expect(document).toMatchObject({
    $schema: "https://json-schema.org/draft/2020-12/schema",
    required: ["schema", "log"],
    properties: { schema: { const: "captray/notebook/1" } },
  });
  const { properties } = document as { properties: { records: { properties: object } } };
  expect(Object.keys(properties.records.properties).sort()).toEqual(Object.keys(kinds).sort());
});
