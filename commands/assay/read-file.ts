import { readFileSync, statSync } from "node:fs";
import type { Outcome, Problem } from "../../lib/quantity/problem.ts";
import { answerQuestions } from "../../lib/readings/answer-questions.ts";
import { mappingFaults } from "../../lib/readings/column-index.ts";
import { maxFileBytes } from "../../lib/readings/decode-bytes.ts";
import type { Mapping } from "../../lib/readings/mapping.ts";
import { openFile } from "../../lib/readings/open-file.ts";
import { settleAndAsk } from "../../lib/readings/open-questions.ts";
import { proposeMapping } from "../../lib/readings/propose-mapping.ts";
import { readRows } from "../../lib/readings/read-rows.ts";
import type { Reading, RowAccount } from "../../lib/readings/reading.ts";
import type { Table } from "../../lib/readings/table.ts";
import { problemSentence } from "../../lib/wording/problems.ts";
import type { ReconcileOptions } from "./options.ts";
import { questionSentence } from "./questions.ts";
import { UsageError } from "./usage-error.ts";

export type ReadFile = {
  readings: Reading[];
  account: RowAccount;
  problems: (Problem & { sentence: string })[];
  notes: string[];
};

const sentenceOf = (problem: Problem): string => problemSentence(problem);

/** A refusal becomes the one sentence of its first problem. */
function need<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  const [first] = outcome.problems;
  throw new UsageError(first === undefined ? "The file could not be read." : sentenceOf(first));
}

/** Reads a file by its own header and the options; what neither says is asked for in one sentence (UsageError). */
export async function readFile(options: ReconcileOptions): Promise<ReadFile> {
  const table = await tableOf(options);
  const { mapping, notes } = mappingFor(table, options);
  const { readings, setAside, account } = need(readRows(table, mapping));
  const problems = setAside.flatMap(({ row, problems: found }) =>
    found.map((one): ReadFile["problems"][number] => {
      const where = { row, ...(one.column === null ? {} : { column: one.column }) };
      const problem: Problem = { code: one.code, where, found: one.found, allowed: one.expected };
      return { ...problem, sentence: sentenceOf(problem) };
    }),
  );
  return { readings, account, problems, notes };
}

function bytesOf(file: string): Uint8Array {
  try {
    const { size } = statSync(file);
    if (size > maxFileBytes)
      throw new UsageError(`"${file}" has ${size} bytes; files up to ${maxFileBytes} bytes are read.`);
    return readFileSync(file);
  } catch (error) {
    if (error instanceof UsageError) throw error;
    const { code } = error as NodeJS.ErrnoException;
    const why =
      code === "ENOENT" ? "there is no such file" : code === "EISDIR" ? "it is a folder" : "it cannot be opened";
    throw new UsageError(`"${file}" could not be read: ${why}.`);
  }
}

/** A text of one column has no separator to find; it is read as one column when nothing else fits. Which sheet is never guessed. */
async function tableOf({ file, sheet }: ReconcileOptions): Promise<Table> {
  const opened = need(await openFile(bytesOf(file), { sheet, oneColumn: true }));
  const readable = opened.sheets.filter((one) => one.readable);
  if (sheet === null && readable.length > 1)
    throw new UsageError(
      `This workbook has ${readable.length} sheets with a table (${readable.map((one) => `"${one.name}"`).join(", ")}); say which with --sheet.`,
    );
  if (sheet !== null && opened.sheet === null)
    throw new UsageError(`--sheet names a sheet, and "${file}" is no workbook; leave it out.`);
  return opened.table;
}

function mappingFor(table: Table, options: ReconcileOptions): { mapping: Mapping; notes: string[] } {
  const proposed = proposeMapping(table).mapping;
  const roles = {
    ...proposed.roles,
    // Times play no part in this command; asking for their zone would be asking for nothing.
    ...{ date: null, time: null, dateTime: null, zone: null },
    spot: options.spot === null ? proposed.roles.spot : columnNamed(table, options.spot, "--spot"),
  };
  const sample =
    options.sample.length === 0 ? proposed.sample : options.sample.map((name) => columnNamed(table, name, "--sample"));
  const columns = { ...proposed, roles, sample: sample.filter((name) => name !== roles.spot) };
  const [fault] = mappingFaults(table, columns);
  if (fault !== undefined) throw new UsageError(sentenceOf(fault));
  refuseOtherCoverage(columns, options.k);
  const answered = need(answerQuestions(columns, answersFrom(options)));
  const notes: string[] = [];
  let settled = settleAndAsk(table, answered);
  // A mass fraction as the instrument reports it is taken as one of a bulk part: nothing is computed differently for a coating.
  if (settled.questions.some((question) => question.id === "quantity")) {
    settled = settleAndAsk(table, need(answerQuestions(settled.mapping, { quantity: "bulk-mass-fraction" })));
    notes.push("Mass fractions are taken as those of a bulk part; say --kind coating if they are of a coating.");
  }
  const blocking = settled.questions.filter((one) => one.blocking);
  const [first] = blocking;
  if (first !== undefined) {
    const alike = blocking.filter((one) => one.id === first.id);
    throw new UsageError(questionSentence({ ...first, columns: alike.flatMap((one) => one.columns) }));
  }
  return { mapping: settled.mapping, notes };
}

/** The header's own word on what its errors cover is not overruled in silence. */
function refuseOtherCoverage(mapping: Mapping, k: number | null): void {
  const figures = mapping.shape === "long" ? (mapping.long ? [mapping.long] : []) : mapping.elements;
  const other = figures.find((figure) => k !== null && figure.k !== null && figure.k !== k);
  if (other !== undefined)
    throw new UsageError(
      `The header "${other.error ?? other.value}" says its errors cover ${other.k}, and --k says ${k}; leave --k out or mend the header.`,
    );
}

function answersFrom(options: ReconcileOptions): Parameters<typeof answerQuestions>[1] {
  return {
    ...(options.k === null ? {} : { k: options.k }),
    ...(options.unit === null ? {} : { unit: options.unit }),
    ...(options.decimal === null ? {} : { decimal: options.decimal }),
    ...(options.thousands === null ? {} : { thousands: options.thousands }),
    ...(options.zero === null ? {} : { zero: options.zero }),
    ...(options.dash === null ? {} : { dash: options.dash }),
    ...(options.notAvailable === null ? {} : { notAvailable: options.notAvailable }),
    ...(options.noLimit === null ? {} : { noLimit: options.noLimit }),
    ...(options.kind === null
      ? {}
      : { quantity: options.kind === "bulk" ? "bulk-mass-fraction" : "coating-mass-fraction" }),
  };
}

function columnNamed(table: Table, name: string, option: string): string {
  const fold = (text: string): string => text.trim().toLowerCase();
  const found =
    table.columns.find((column) => column === name) ?? table.columns.find((column) => fold(column) === fold(name));
  if (found === undefined)
    throw new UsageError(
      `${option} names the column "${name}", which the file does not have; its columns are ${table.columns.join(", ")}.`,
    );
  return found;
}
