import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

/**
 * Every `@example` in the rooms below runs. An example is `expression // answer`; it may run over lines, and the answer too. The expression
 * sees everything its room and the other rooms listed export. The answer is written as a value: numbers as rounded to the digits
 * shown, an object by the keys worth showing (others may be there), a list whole.
 */
const root = resolve(import.meta.dirname, "..", "..");
const rooms = ["statistics", "quantity", "attenuation", "consistency", "limits", "search"];

const files = rooms.flatMap((room) =>
  readdirSync(join(root, "lib", room))
    .filter((name) => name.endsWith(".ts"))
    .map((name) => `lib/${room}/${name}`),
);

type Example = { file: string; line: number; expression: string; answer: string };

/** The text of each comment's examples, without its stars, up to a blank line, the next tag or the comment's end. */
function examplesOf(file: string): Example[] {
  const text = readFileSync(join(root, file), "utf8");
  return [...text.matchAll(/\/\*\*[\s\S]*?\*\//g)].flatMap((comment) =>
    [...comment[0].matchAll(/@example ([\s\S]*?)(?=\n \*\s*\n|\n \* @|\n?\s*\*\/)/g)].map((match) => {
      const lines = (match[1] as string).split("\n").map((line) => line.replace(/^\s*\* ?/, ""));
      const at = comment.index + (match.index ?? 0);
      const joined = lines.join("\n");
      const mark = joined.search(/(^|\s)\/\/ /);
      return {
        file,
        line: text.slice(0, at).split("\n").length,
        expression: mark < 0 ? joined : joined.slice(0, mark),
        answer: mark < 0 ? "" : joined.slice(mark).replace(/(^|\s)\/\/ ?/g, " "),
      };
    }),
  );
}

const examples = files.flatMap(examplesOf);

const scope: Record<string, unknown> = {};
for (const file of files) Object.assign(scope, await import(pathToFileURL(join(root, file)).href));

const evaluated = (expression: string): unknown => {
  const script = ts.transpile(`const answer = (${expression.trim()});`, { target: ts.ScriptTarget.ES2023 });
  return new Function(...Object.keys(scope), `${script}\nreturn answer;`)(...Object.values(scope));
};

/** Half a unit of the last digit written, or exactly where the number is written to all its digits. */
function holdNumber(path: string, got: unknown, text: string, negative: boolean): void {
  const expected = (negative ? -1 : 1) * Number(text.replaceAll("_", ""));
  const [digits = "", exponent = "0"] = text.replaceAll("_", "").toLowerCase().split("e");
  const decimals = digits.split(".")[1]?.length ?? 0;
  expect(typeof got, path).toBe("number");
  if (expected === got) return;
  const allowed = 0.5 * 10 ** (Number(exponent) - decimals);
  const wholeNumber = decimals === 0 && exponent === "0";
  // A whole number is meant as it stands, but for the last bits of arithmetic.
  const tolerance = wholeNumber ? 1e-11 * Math.max(1, Math.abs(expected)) : allowed * (1 + 1e-9);
  expect(Math.abs((got as number) - expected), `${path}: got ${got}, written ${text}`).toBeLessThanOrEqual(tolerance);
}

function hold(path: string, got: unknown, answer: ts.Expression): void {
  const negative = ts.isPrefixUnaryExpression(answer) && answer.operator === ts.SyntaxKind.MinusToken;
  const bare = negative ? answer.operand : answer;
  if (ts.isParenthesizedExpression(bare)) hold(path, got, bare.expression);
  else if (ts.isNumericLiteral(bare)) holdNumber(path, got, bare.getText(), negative);
  else if (ts.isStringLiteral(bare)) expect(got, path).toBe(bare.text);
  else if (ts.isArrayLiteralExpression(bare)) holdList(path, got, bare);
  else if (ts.isObjectLiteralExpression(bare)) holdObject(path, got, bare);
  else expect(got, path).toBe(wordOf(path, answer.getText()));
}

function holdList(path: string, got: unknown, answer: ts.ArrayLiteralExpression): void {
  expect(Array.isArray(got), `${path}: not a list`).toBe(true);
  expect((got as unknown[]).length, `${path}: length`).toBe(answer.elements.length);
  for (const [i, element] of answer.elements.entries()) hold(`${path}[${i}]`, (got as unknown[])[i], element);
}

function holdObject(path: string, got: unknown, answer: ts.ObjectLiteralExpression): void {
  expect(typeof got === "object" && got !== null, `${path}: not an object`).toBe(true);
  for (const property of answer.properties) {
    if (!ts.isPropertyAssignment(property)) throw new Error(`${path}: ${property.getText()} has no answer`);
    const key = ts.isStringLiteral(property.name) ? property.name.text : property.name.getText();
    expect(Object.hasOwn(got as object, key), `${path}.${key} is missing`).toBe(true);
    hold(`${path}.${key}`, (got as Record<string, unknown>)[key], property.initializer);
  }
}

function wordOf(path: string, word: string): unknown {
  const words: Record<string, unknown> = { true: true, false: false, null: null, Infinity, "-Infinity": -Infinity };
  if (!Object.hasOwn(words, word)) throw new Error(`${path}: the answer is no value: ${word}`);
  return words[word];
}

function answerOf(text: string): ts.Expression {
  const source = ts.createSourceFile("answer.ts", `(${text.trim()})`, ts.ScriptTarget.ES2023, true);
  const broken = (source as unknown as { parseDiagnostics: unknown[] }).parseDiagnostics.length > 0;
  const statement = source.statements[0];
  if (broken || source.statements.length !== 1 || !statement || !ts.isExpressionStatement(statement))
    throw new Error(`the answer is no value: ${text.trim()}`);
  return statement.expression;
}

describe("docstring examples", () => {
  it("are found in every room", () => {
    for (const room of rooms) expect(examples.some(({ file }) => file.startsWith(`lib/${room}/`))).toBe(true);
    expect(examples.length).toBeGreaterThan(60);
  });

  for (const example of examples)
    it(`${example.file}:${example.line} ${example.expression.split("(")[0]?.trim()}`, () => {
      expect(example.answer, "an example needs an answer: expression // answer").not.toBe("");
      hold("answer", evaluated(example.expression), answerOf(example.answer));
    });
});
