import ts from "typescript";

const barred = new Set([
  "Date",
  "performance",
  "crypto",
  "globalThis",
  "process",
  "fetch",
  "setTimeout",
  "setInterval",
]);

/** What in a source text reaches for the clock, for chance, for the machine, or keeps state of its own; by line. */
export function impuritiesOf(path: string, text: string): string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);
  const found: string[] = [];
  const say = (node: ts.Node, what: string) => {
    const { line } = source.getLineAndCharacterOfPosition(node.getStart());
    found.push(`${path}:${line + 1}: ${what}`);
  };
  for (const statement of source.statements) {
    if (ts.isVariableStatement(statement) && !(statement.declarationList.flags & ts.NodeFlags.Const)) {
      say(statement, "a variable of the module: state belongs to who calls");
    }
  }
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) && barred.has(node.text) && isUse(node) && !isBoundHere(node))
      say(node, `${node.text}: hand it in`);
    if (
      ts.isPropertyAccessExpression(node) &&
      ts.isIdentifier(node.expression) &&
      node.expression.text === "Math" &&
      node.name.text === "random"
    ) {
      say(node, "Math.random: hand a seeded generator in");
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

// A parameter or a const of the same name is nobody's clock: a print's `process` is negative or reversal.
function isBoundHere(node: ts.Identifier): boolean {
  const binds = (name: ts.BindingName): boolean =>
    ts.isIdentifier(name)
      ? name.text === node.text
      : name.elements.some((element) => ts.isBindingElement(element) && binds(element.name));
  for (let at: ts.Node = node.parent; !ts.isSourceFile(at); at = at.parent) {
    if (ts.isFunctionLike(at) && at.parameters.some((parameter) => binds(parameter.name))) return true;
    if (!ts.isBlock(at)) continue;
    for (const statement of at.statements) {
      if (ts.isVariableStatement(statement) && statement.declarationList.declarations.some(({ name }) => binds(name))) {
        return true;
      }
    }
  }
  return false;
}

// A name in a type, a key of an object or a member of something else is not the thing itself.
function isUse(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  if (ts.isPropertyAssignment(parent)) return parent.initializer === node;
  if (ts.isTypeReferenceNode(parent) || ts.isPropertySignature(parent) || ts.isQualifiedName(parent)) return false;
  if (ts.isParameter(parent) || ts.isBindingElement(parent) || ts.isVariableDeclaration(parent)) {
    return "initializer" in parent && parent.initializer === node;
  }
  return !ts.isMethodSignature(parent) && !ts.isMethodDeclaration(parent) && !ts.isPropertyDeclaration(parent);
}
