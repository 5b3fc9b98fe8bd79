import { mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import type { Context } from "../../lib/platform/context.ts";
import { sha256 } from "../../lib/platform/sha256.ts";
import type { Problem } from "../../lib/quantity/problem.ts";
import { answerQuestions } from "../../lib/readings/answer-questions.ts";
import { decodeBytes } from "../../lib/readings/decode-bytes.ts";
import { settleAndAsk } from "../../lib/readings/open-questions.ts";
import { proposeMapping } from "../../lib/readings/propose-mapping.ts";
import { batchTable } from "../../lib/store/batch-table.ts";
import { problemSentence } from "../../lib/wording/problems.ts";
import { addPhotoWorkflow } from "../../lib/workflows/add-photo.ts";
import { importReadingsWorkflow } from "../../lib/workflows/import-readings.ts";
import { receiveFileWorkflow } from "../../lib/workflows/receive-file.ts";

/** What became of a case: taken in, refused with a sentence, or a bug in words. */
export type Ending = { end: "taken" } | { end: "refused"; code: string } | { end: "bug"; what: string };

const bug = (what: string): Ending => ({ end: "bug", what });

function refusal(problems: readonly Problem[]): Ending {
  const [problem] = problems;
  if (!problem) return bug("refused without a reason");
  const sentence = problemSentence(problem);
  return /undefined|\[object|NaN/.test(sentence)
    ? bug(`${problem.code} reads: ${sentence}`)
    : { end: "refused", code: problem.code };
}

/** Answers for whatever a file leaves open, so that its rows are read. */
const answers = {
  k: 2,
  timeZone: "Europe/Lisbon",
  quantity: "bulk-mass-fraction",
  zero: "number",
  dash: "not-measured",
  notAvailable: "not-measured",
  thousands: "no",
  dateOrder: "day-first",
  unit: "ppm",
} as const;

/** Lines of a text, counted apart from any reader of tables; a last line end begins no line. */
const linesIn = (text: string): number => text.replace(/\n$/, "").split("\n").length;

/** A file through receiving, proposing, answering and importing, as a tester's would go; and the account of its rows held to the database. */
export async function runFile(context: Context, file: { name: string; bytes: Uint8Array }): Promise<Ending> {
  const received = await receiveFileWorkflow(context, file);
  if (!received.ok) return refusal(received.problems);
  const { batch, known } = received.value;
  if (known) return { end: "refused", code: "known" };
  const table = await batchTable(context.db, batch);
  if (!table.ok) return bug(`received, then not opened: ${table.problems[0]?.code}`);
  const { rows } = table.value;
  if (!/\.(xlsx|ods)$/.test(file.name)) {
    const decoded = decodeBytes(file.bytes);
    const spanned = rows.reduce((sum, { cells }) => sum + cells.join("").split("\n").length, 0);
    if (decoded.ok && spanned !== linesIn(decoded.value.text))
      return bug(`${linesIn(decoded.value.text)} lines, of which the table has ${spanned}`);
  }
  const { mapping } = settleAndAsk(table.value, proposeMapping(table.value).mapping);
  const answered = answerQuestions(mapping, { ...answers, ...(mapping.decimal === null ? { decimal: "point" } : {}) });
  if (!answered.ok) return refusal(answered.problems);
  const imported = await importReadingsWorkflow(context, {
    batchId: batch.id,
    mapping: answered.value,
    instrumentId: null,
  });
  if (!imported.ok) {
    const stray = await context.db.reading.count({ where: { batchId: batch.id } });
    return stray > 0 ? bug(`refused, yet ${stray} readings were written`) : refusal(imported.problems);
  }
  const { total, accepted, setAside, blank, header } = imported.value.account;
  const stored = await context.db.reading.count({ where: { batchId: batch.id } });
  const aside = await context.db.setAsideRow.count({ where: { batchId: batch.id } });
  if (total !== rows.length) return bug(`${rows.length} rows, accounted for ${total}`);
  if (accepted + setAside + blank + header !== total)
    return bug(`${accepted} read + ${setAside} set aside + ${blank} blank + ${header} header ≠ ${total}`);
  if (aside !== setAside) return bug(`${setAside} rows set aside, ${aside} stored`);
  if (stored !== imported.value.readings) return bug(`${imported.value.readings} readings, ${stored} stored`);
  return { end: "taken" };
}

/** A picture through the photo's path; what is kept must open, carry no metadata, and hash to what its record says. */
export async function runPicture(
  context: Context,
  itemId: string,
  picture: { name: string; bytes: Uint8Array },
  dataDir: string,
): Promise<Ending> {
  mkdirSync(dataDir, { recursive: true });
  const before = filesIn(dataDir);
  const added = await addPhotoWorkflow(context, { itemId, alt: "A picture of the fuzz run" }, picture, dataDir);
  if (!added.ok)
    return filesIn(dataDir) === before ? refusal(added.problems) : bug("refused, yet a file was left behind");
  for (const file of await context.db.photoFile.findMany({ where: { photoId: added.value } })) {
    const bytes = readFileSync(join(dataDir, "photos", file.key));
    if (sha256(bytes) !== file.sha256) return bug("the stored file is not what its record says");
    const { width, height, exif, icc, xmp, iptc } = await sharp(bytes).metadata();
    if (width !== file.width || height !== file.height) return bug(`${width} × ${height}, recorded as another size`);
    if (exif || icc || xmp || iptc) return bug("metadata came through");
  }
  return { end: "taken" };
}

const filesIn = (dataDir: string): number => readdirSync(dataDir, { recursive: true }).length;
