import { Refusal } from "./refusal.ts";

/** Parses one JSON document; nothing at all counts as `{}`. */
export function parseDocument(text: string): unknown {
  const document = text.replace(/^\uFEFF/, "");
  if (document.trim() === "") return {};
  try {
    return JSON.parse(document);
  } catch (error) {
    const reason = error instanceof SyntaxError ? error.message : "";
    throw new Refusal({ code: "notJson", pointer: "", facts: { reason } });
  }
}
