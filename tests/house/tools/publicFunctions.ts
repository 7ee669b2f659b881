import { dirname, join } from "node:path";
import ts from "typescript";
import { textOf } from "./repo.ts";

export interface PublicFunction {
  readonly folder: string;
  readonly name: string;
  readonly file: string;
  readonly doc: string;
}

/** Every function that a folder's index.ts lists, with its docstring as written. */
export function publicFunctionsOf(indexPath: string): PublicFunction[] {
  const folder = dirname(indexPath).split("/").at(-1) ?? "";
  const index = ts.createSourceFile(indexPath, textOf(indexPath), ts.ScriptTarget.ES2023, true);
  const functions: PublicFunction[] = [];
  for (const statement of index.statements) {
    if (!ts.isExportDeclaration(statement) || statement.isTypeOnly) continue;
    if (!statement.moduleSpecifier || !ts.isStringLiteral(statement.moduleSpecifier)) continue;
    if (!statement.exportClause || !ts.isNamedExports(statement.exportClause)) continue;
    const file = join(dirname(indexPath), statement.moduleSpecifier.text);
    const names = statement.exportClause.elements
      .filter((element) => !element.isTypeOnly)
      .map((element) => element.name.text);
    for (const { name, doc } of functionsIn(file))
      if (names.includes(name)) functions.push({ folder, name, file, doc });
  }
  return functions;
}

function functionsIn(file: string): { name: string; doc: string }[] {
  const source = ts.createSourceFile(file, textOf(file), ts.ScriptTarget.ES2023, true);
  const found: { name: string; doc: string }[] = [];
  for (const statement of source.statements) {
    if (ts.isFunctionDeclaration(statement) && statement.name) {
      found.push({ name: statement.name.text, doc: docOf(statement, source) });
    }
  }
  return found;
}

function docOf(node: ts.Node, source: ts.SourceFile): string {
  const comment = ts.getLeadingCommentRanges(source.text, node.pos)?.at(-1);
  if (!comment) return "";
  return source.text
    .slice(comment.pos, comment.end)
    .replace(/^\/\*\*|\*\/$/g, "")
    .replace(/^\s*\* ?/gm, "");
}

/** The blocks of a tag: `@source none: assumption` gives `none: assumption`, lines joined. */
export function tagsOf(doc: string, tag: string): string[] {
  return doc
    .split(/^(?=@\w+)/m)
    .filter((block) => block.startsWith(`@${tag}`))
    .map((block) =>
      block
        .slice(tag.length + 1)
        .replace(/\s+/g, " ")
        .trim(),
    );
}
