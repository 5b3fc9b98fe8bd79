import { done, type Outcome, refused } from "../quantity/problem.ts";
import { unpackEntry, type ZipEntry, zipEntries } from "./zip-entries.ts";

/** Bytes that a workbook may come to when unpacked. A table of 100,000 rows is far smaller as CSV, which is read up to its own limit. */
export const maxUnpackedBytes = 100_000_000;
export const maxZipEntries = 2_000;
/** Cells of one workbook, those that an OpenDocument file repeats by a number included. */
export const maxCells = 3_000_000;

export type WorkbookKind = "xlsx" | "ods";
export type OpenedWorkbook = { kind: WorkbookKind; hiddenRows: number };

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(0)} MB`;
const encryptedMark = utf16("EncryptedPackage");

/**
 * What kind of workbook the bytes are, by what is in them and never by the file's name; null where they are none, so that the text
 * reader names what they are. An older office file that holds an encrypted package is a workbook with a password.
 */
export function workbookKind(bytes: Uint8Array): WorkbookKind | "encrypted" | "broken" | null {
  if (begins(bytes, [0xd0, 0xcf, 0x11, 0xe0])) return includes(bytes, encryptedMark) ? "encrypted" : null;
  if (!begins(bytes, [0x50, 0x4b, 0x03, 0x04])) return null;
  const entries = zipEntries(bytes);
  const first = new TextDecoder("latin1").decode(bytes.subarray(0, 4096));
  if (entries === null) return /xl\/|opendocument\.spreadsheet/.test(first) ? "broken" : null;
  if (entries.some((entry) => entry.name === "xl/workbook.xml")) return "xlsx";
  return first.includes("mimetypeapplication/vnd.oasis.opendocument.spreadsheet") ? "ods" : null;
}

/**
 * Looks a workbook over before anything reads it: no password, and every part of it unpacks to what it says, all together within
 * bounds. Refused: broken, with a password, a bomb.
 */
export async function openSpreadsheet(bytes: Uint8Array): Promise<Outcome<OpenedWorkbook> | null> {
  const kind = workbookKind(bytes);
  if (kind === null) return null;
  if (kind === "encrypted") return refused({ code: "spreadsheet-encrypted" });
  const entries = kind === "broken" ? null : zipEntries(bytes);
  if (kind === "broken" || entries === null) return refused({ code: "spreadsheet-broken" });
  if (entries.some((entry) => entry.encrypted)) return refused({ code: "spreadsheet-encrypted" });
  const stated = entries.reduce((sum, entry) => sum + entry.size, 0);
  if (stated > maxUnpackedBytes || entries.length > maxZipEntries)
    return refused({
      code: "spreadsheet-unpacks-too-large",
      found: megabytes(Math.max(stated, 1e6)),
      allowed: megabytes(maxUnpackedBytes),
    });
  return lookOver(bytes, kind, entries);
}

async function lookOver(bytes: Uint8Array, kind: WorkbookKind, entries: ZipEntry[]): Promise<Outcome<OpenedWorkbook>> {
  let left = maxUnpackedBytes;
  let hiddenRows = 0;
  for (const entry of entries) {
    const part = await unpackEntry(bytes, entry, left);
    if (part.state === "too-large")
      return refused({
        code: "spreadsheet-unpacks-too-large",
        found: `more than ${megabytes(maxUnpackedBytes)}`,
        allowed: megabytes(maxUnpackedBytes),
      });
    if (part.state === "broken") return refused({ code: "spreadsheet-broken" });
    left -= part.bytes.length;
    if (
      kind === "ods" &&
      /^META-INF\/manifest\.xml$/.test(entry.name) &&
      textOf(part.bytes).includes("encryption-data")
    )
      return refused({ code: "spreadsheet-encrypted" });
    if (kind === "ods" && entry.name === "content.xml") {
      const { cells, hidden } = measureContent(textOf(part.bytes));
      if (cells > maxCells) return refused(tooManyCells(cells));
      hiddenRows = hidden;
    }
  }
  return done({ kind, hiddenRows });
}

export const tooManyCells = (cells: number) => ({
  code: "spreadsheet-too-many-cells" as const,
  found: cells.toLocaleString("en"),
  allowed: maxCells.toLocaleString("en"),
});

/**
 * Cells with content of an OpenDocument table as its numbers of repetition say, and its hidden rows. A few bytes can repeat one cell
 * over a whole sheet, so this is counted before a reader makes them all.
 */
function measureContent(xml: string): { cells: number; hidden: number } {
  let cells = 0;
  let hidden = 0;
  let rows = 1;
  for (const [tag, name] of xml.matchAll(/<table:(table-row|table-cell)\b[^>]*>/g)) {
    if (name === "table-row") {
      rows = numberOf(tag, "number-rows-repeated");
      if (/table:visibility="(?:collapse|filter)"/.test(tag)) hidden += rows < 10_000 ? rows : 0;
    } else if (!tag.endsWith("/>")) cells += rows * numberOf(tag, "number-columns-repeated");
  }
  return { cells, hidden };
}

const numberOf = (tag: string, attribute: string): number =>
  Number(new RegExp(`table:${attribute}="(\\d+)"`).exec(tag)?.[1] ?? 1);
const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);
const begins = (bytes: Uint8Array, mark: number[]): boolean => mark.every((value, at) => bytes[at] === value);

function utf16(text: string): Uint8Array {
  return Uint8Array.from([...text].flatMap((letter) => [letter.charCodeAt(0), 0]));
}

function includes(bytes: Uint8Array, mark: Uint8Array): boolean {
  for (let at = bytes.indexOf(mark[0]!); at >= 0; at = bytes.indexOf(mark[0]!, at + 1))
    if (mark.every((value, n) => bytes[at + n] === value)) return true;
  return false;
}
