import { join, resolve } from "node:path";
import ts from "typescript";

const root = resolve(import.meta.dirname, "..", "..");

/**
 * Holds JSON-LD documents against the vocabulary of schema.org as the types of the `schema-dts` package have it (made from schema.org's own
 * definitions): each document is written down as a constant of the type, and the compiler says what does not fit: an unknown
 * type, a property that the type has not, a value of the wrong kind. Empty where all fit.
 */
export function jsonLdFaults(documents: readonly unknown[], type = "Dataset"): string[] {
  const name = join(root, "tests", "support", "json-ld-under-test.ts");
  const source = [
    `import type { ${type}, WithContext } from "schema-dts";`,
    ...documents.map((one, i) => `export const d${i}: WithContext<${type}> = ${JSON.stringify(one, null, 1)};`),
  ].join("\n");
  const options: ts.CompilerOptions = {
    strict: true,
    noEmit: true,
    skipLibCheck: true,
    types: [],
    target: ts.ScriptTarget.ES2023,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
  };
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists, readFile } = host;
  host.getSourceFile = (file, ...rest) =>
    file === name ? ts.createSourceFile(file, source, ts.ScriptTarget.ES2023) : getSourceFile(file, ...rest);
  host.fileExists = (file) => file === name || fileExists(file);
  host.readFile = (file) => (file === name ? source : readFile(file));
  const program = ts.createProgram([name], options, host);
  return ts
    .getPreEmitDiagnostics(program)
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, "\n").split("\n").slice(-1)[0]!.trim());
}
