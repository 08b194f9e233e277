import ts from 'typescript';

export type Import = {
  /** What is imported, or undefined where only the running program would know. */
  readonly from: string | undefined;
  readonly line: number;
  /** The names that are imported, or undefined where it may be any of the module's. */
  readonly names?: readonly string[] | undefined;
  /** Whether nothing of it is left when the program runs. */
  readonly typeOnly: boolean;
};

export function parse(path: string, text: string): ts.SourceFile {
  return ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
}

/**
 * Every import of a file: `import`, `export … from`, `import x = require()`, `import()` of a module
 * or a type, `require()`, and those in JSDoc comments.
 */
export function importsOf(file: ts.SourceFile): Import[] {
  const found: Import[] = [];
  for (const node of nodesOf(file)) {
    const reading = importIn(node);
    if (reading) found.push({ ...reading, line: lineOf(file, node) });
  }
  return found;
}

/** All nodes of a file, those of JSDoc comments included. */
export function nodesOf(file: ts.SourceFile): ts.Node[] {
  const found: ts.Node[] = [];
  const visit = (node: ts.Node): void => {
    found.push(node);
    for (const comment of ts.getJSDocCommentsAndTags(node)) {
      if (comment.parent === node) visit(comment);
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

export function lineOf(file: ts.SourceFile, node: ts.Node): number {
  return file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1;
}

function importIn(node: ts.Node): Omit<Import, 'line'> | undefined {
  if (ts.isImportDeclaration(node)) {
    const typeOnly = node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword;
    return { from: textOf(node.moduleSpecifier), typeOnly, names: namesIn(node.importClause) };
  }
  if (ts.isJSDocImportTag(node)) return { from: textOf(node.moduleSpecifier), typeOnly: true };
  if (ts.isExportDeclaration(node) && node.moduleSpecifier) {
    return { from: textOf(node.moduleSpecifier), typeOnly: node.isTypeOnly };
  }
  if (ts.isExternalModuleReference(node)) return { from: textOf(node.expression), typeOnly: false };
  if (ts.isImportTypeNode(node)) {
    const name = ts.isLiteralTypeNode(node.argument) ? node.argument.literal : node.argument;
    return { from: textOf(name), typeOnly: true };
  }
  if (ts.isCallExpression(node) && loads(node)) {
    return { from: textOf(node.arguments[0]), typeOnly: false };
  }
  return undefined;
}

function namesIn(clause: ts.ImportClause | undefined): string[] | undefined {
  const named = clause?.namedBindings;
  if (!named || clause.name || !ts.isNamedImports(named)) return undefined;
  return named.elements.map((element) => (element.propertyName ?? element.name).text);
}

function loads(call: ts.CallExpression): boolean {
  const called = call.expression;
  return (
    called.kind === ts.SyntaxKind.ImportKeyword ||
    (ts.isIdentifier(called) && called.text === 'require')
  );
}

function textOf(node: ts.Node | undefined): string | undefined {
  return node && ts.isStringLiteralLike(node) ? node.text : undefined;
}
