import { readFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import ts from "typescript";

const root = resolve(import.meta.dirname, "..", "..");

/** What a file of ours, given by its path from the root, imports: files of ours by theirs, packages by name. */
export function importsOf(file: string): { target: string; typeOnly: boolean }[] {
  const source = ts.createSourceFile(file, readFileSync(join(root, file), "utf8"), ts.ScriptTarget.Latest, true);
  const found: { target: string; typeOnly: boolean }[] = [];
  const visit = (node: ts.Node): void => {
    if (
      (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) &&
      node.moduleSpecifier &&
      ts.isStringLiteral(node.moduleSpecifier)
    )
      found.push({ target: place(file, node.moduleSpecifier.text), typeOnly: isTypeOnly(node) });
    if (
      ts.isCallExpression(node) &&
      node.expression.kind === ts.SyntaxKind.ImportKeyword &&
      node.arguments[0] &&
      ts.isStringLiteral(node.arguments[0])
    )
      found.push({ target: place(file, node.arguments[0].text), typeOnly: false });
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function isTypeOnly(node: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  if (ts.isExportDeclaration(node)) return node.isTypeOnly;
  const clause = node.importClause;
  if (!clause) return false;
  if (clause.isTypeOnly) return true;
  const named = clause.namedBindings;
  return !clause.name && named !== undefined && ts.isNamedImports(named) && named.elements.every((e) => e.isTypeOnly);
}

const place = (file: string, specifier: string): string =>
  specifier.startsWith(".")
    ? relative(root, resolve(root, dirname(file), specifier))
        .split(sep)
        .join("/")
    : specifier.startsWith("@/")
      ? specifier.slice(2)
      : specifier;
