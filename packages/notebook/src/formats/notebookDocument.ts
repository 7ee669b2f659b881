import * as z from "zod/mini";
import { notebookSchema } from "./notebookSchema.ts";

/** The JSON Schema (draft 2020-12) of a whole notebook, for docs/schemas; only scripts and tests ask for it. */
export function notebookDocument(): object {
  const { $schema, ...schema } = z.toJSONSchema(notebookSchema, { target: "draft-2020-12" });
  return {
    $schema,
    title: "A whole notebook",
    description:
      "The log is every change in the order of the names, and alone restores everything. The records are what the changes come to; they may be left out.",
    ...schema,
  };
}
