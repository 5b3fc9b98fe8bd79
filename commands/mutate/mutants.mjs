import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { relative } from "node:path";
import ts from "typescript";
import { root } from "../prepare.mjs";

const swapped = new Map([
  [ts.SyntaxKind.PlusToken, "-"],
  [ts.SyntaxKind.MinusToken, "+"],
  [ts.SyntaxKind.AsteriskToken, "/"],
  [ts.SyntaxKind.SlashToken, "*"],
  [ts.SyntaxKind.AsteriskAsteriskToken, "*"],
  [ts.SyntaxKind.LessThanToken, "<="],
  [ts.SyntaxKind.LessThanEqualsToken, "<"],
  [ts.SyntaxKind.GreaterThanToken, ">="],
  [ts.SyntaxKind.GreaterThanEqualsToken, ">"],
  [ts.SyntaxKind.EqualsEqualsEqualsToken, "!=="],
  [ts.SyntaxKind.ExclamationEqualsEqualsToken, "==="],
  [ts.SyntaxKind.AmpersandAmpersandToken, "||"],
  [ts.SyntaxKind.BarBarToken, "&&"],
  [ts.SyntaxKind.PlusEqualsToken, "-="],
  [ts.SyntaxKind.MinusEqualsToken, "+="],
]);

/** Small whole numbers one up, anything else a tenth more. */
const changedNumber = (text) => {
  const value = Number(text.replaceAll("_", ""));
  return String(Number.isInteger(value) && value < 10 ? value + 1 : value * 1.1);
};

/** What a returned expression is turned into, by its type; null where no turn is sure to differ. */
function changedResult(expression, text, checker) {
  const type = checker.getTypeAtLocation(expression);
  if (type.flags & ts.TypeFlags.NumberLike) return `(${text}) + 1`;
  if (type.flags & ts.TypeFlags.BooleanLike) return `!(${text})`;
  return null;
}

/** Text that only people read is not code: messages of refusals are left alone. */
const isWording = (node) => ts.isThrowStatement(node) || ts.isTypeNode(node) || ts.isImportDeclaration(node);

/**
 * Every mutant of these files: one operator, comparison, constant, sign or returned value changed.
 * Each is { file, start, end, replacement, kind, line, before, after }.
 */
export function findMutants(files) {
  const program = ts.createProgram(files, {
    ...{ target: ts.ScriptTarget.ES2023, module: ts.ModuleKind.ESNext, strict: true, noEmit: true },
    ...{ moduleResolution: ts.ModuleResolutionKind.Bundler, allowImportingTsExtensions: true, skipLibCheck: true },
  });
  const checker = program.getTypeChecker();
  return files.flatMap((file) => mutantsOf(file, readFileSync(file, "utf8"), program.getSourceFile(file), checker));
}

function mutantsOf(file, text, source, checker) {
  const found = [];
  const add = (node, replacement, kind) => {
    const [start, end] = [node.getStart(source), node.getEnd()];
    const { line } = source.getLineAndCharacterOfPosition(start);
    const lines = text.split("\n");
    const column = start - source.getPositionOfLineAndCharacter(line, 0);
    const before = lines[line];
    const until = end - start;
    const after =
      before.length >= column + until
        ? before.slice(0, column) + replacement + before.slice(column + until)
        : replacement;
    found.push({ file, start, end, replacement, kind, line: line + 1, before: before.trim(), after: after.trim() });
  };
  const visit = (node) => {
    if (isWording(node)) return;
    if (ts.isBinaryExpression(node)) {
      const other = swapped.get(node.operatorToken.kind);
      if (other && !isTextSum(node, checker)) add(node.operatorToken, other, "operator");
    }
    if (ts.isNumericLiteral(node) && !isStoppingRule(node, source))
      add(node, changedNumber(node.getText(source)), "constant");
    if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken)
      add(node, node.operand.getText(source), "sign");
    if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken)
      add(node, `(${node.operand.getText(source)})`, "negation");
    if (ts.isPropertyAccessExpression(node) && node.expression.getText(source) === "Math") {
      if (node.name.text === "min") add(node.name, "max", "extreme");
      if (node.name.text === "max") add(node.name, "min", "extreme");
    }
    const result = resultOf(node);
    if (result) {
      const changed = changedResult(result, result.getText(source), checker);
      if (changed) add(result, changed, "result");
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/**
 * A limit of rounds or a tolerance of convergence: a tenth more or less changes no digit of an answer, and a test that noticed
 * would test nothing. Such constants are left alone; the operators beside them are not.
 */
const isStoppingRule = (node, source) => {
  const value = Number(node.getText(source).replaceAll("_", ""));
  if (value < 1e-8 && value > 0) return true;
  const { parent } = node;
  return ts.isBinaryExpression(parent) && ts.isForStatement(parent.parent) && parent.right === node && value >= 30;
};

const isTextSum = (node, checker) => (checker.getTypeAtLocation(node).flags & ts.TypeFlags.StringLike) !== 0;

const resultOf = (node) => {
  if (ts.isReturnStatement(node)) return node.expression;
  return ts.isArrowFunction(node) && !ts.isBlock(node.body) ? node.body : undefined;
};

/**
 * `count` of them, the first in an order that a digest of the seed and of each mutant's own text sets, so that a change of one file
 * leaves the sample of the others as it was. Those that `argued` says nothing can show are passed over and counted.
 */
export function sample(mutants, count, seed, argued) {
  const met = new Map();
  const ranked = mutants.map((mutant, place) => {
    const text = [seed, relative(root, mutant.file), mutant.before, mutant.after].join("\n");
    met.set(text, (met.get(text) ?? 0) + 1);
    const rank = createHash("sha256")
      .update(`${text}\n${met.get(text)}`)
      .digest("hex");
    return { mutant, place, rank };
  });
  ranked.sort((a, b) => (a.rank < b.rank ? -1 : 1));
  const chosen = [];
  let passedOver = 0;
  for (const one of ranked) {
    if (chosen.length === count) break;
    if (argued(one.mutant)) passedOver += 1;
    else chosen.push(one);
  }
  return { chosen: chosen.sort((a, b) => a.place - b.place).map(({ mutant }) => mutant), passedOver };
}
