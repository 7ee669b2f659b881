import { allCommands } from "./allCommands.ts";
import { type PublishedDocument, publishedDeclarations, publishedDocument } from "./publishedDocuments.ts";

/** What `captray schema NAME` prints, for every name: made into docs/schemas by scripts/schemas.mjs. */
export function allDocuments(): readonly PublishedDocument[] {
  return publishedDeclarations(allCommands).map(publishedDocument);
}
