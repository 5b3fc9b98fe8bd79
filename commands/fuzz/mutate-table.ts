import { unpackEntry, zipEntries } from "../../lib/readings/zip-entries.ts";
import { odsFile, xlsxFile } from "../../sample-data/workbook-files.ts";
import { zipFile } from "../../sample-data/zip-file.ts";
import type { Chance } from "./chance.ts";
import { mutateBytes } from "./mutate-bytes.ts";

/** What a careless or a hostile hand writes into a cell. */
const cells = [
  [
    "",
    " ",
    "-",
    "0",
    "-0",
    "1e400",
    "1e-400",
    "NaN",
    "Infinity",
    "<LOD",
    "<",
    "<<5",
    "> 12",
    "1,234",
    "1.234,5",
    "12 %",
  ],
  ["=1+1", "@SUM(A1)", "+1", "'", '"', '""', '"open', "a\nb", "a\r\nb", "\t", ";", ",", "\u202e12", "\ufeff"],
  [
    "2026-02-30",
    "31/12/1899 24:00",
    "99999999999999999999",
    "٣٤",
    "１２",
    "µ",
    "±",
    "Mean",
    "Std. Dev.",
    "Pb (ppm)",
    "ﬀ",
  ],
].flat();

const newlines = ["\n", "\r\n", "\r", "\u2028", "\n\r"];
const marks = [",", ";", "\t", "|", " "];

function mutateText(text: string, chance: Chance): string {
  const { below, pick } = chance;
  const lines = text.split("\n");
  const line = below(lines.length);
  const cellsOf = (l: string): string[] => l.split(/[,;\t]/);
  const delimiter = /[,;\t]/.exec(text)?.[0] ?? ",";
  switch (below(11)) {
    case 0:
    case 1:
    case 2: {
      const row = cellsOf(lines[line] ?? "");
      row[below(row.length)] = pick(cells);
      lines[line] = row.join(delimiter);
      return lines.join("\n");
    }
    case 3:
      return text.replaceAll("\n", pick(newlines));
    case 4:
      return text.replaceAll(delimiter, pick(marks));
    case 5:
      lines.splice(below(lines.length), 0, lines[line] ?? "", lines[0] ?? "");
      return lines.join("\n");
    case 6: {
      const other = below(lines.length);
      [lines[line], lines[other]] = [lines[other] ?? "", lines[line] ?? ""];
      return lines.join("\n");
    }
    case 7:
      lines.splice(line, 1 + below(3));
      return lines.join("\n");
    case 8:
      lines[line] = (lines[line] ?? "") + delimiter.repeat(1 + below(2_000));
      return lines.join("\n");
    case 9:
      lines[line] = `${pick(cells).repeat(1 + below(20_000))}${lines[line] ?? ""}`;
      return lines.join("\n");
    default:
      return text.replace(pick(["ppm", "2σ", "<", "Pb", ".", ","]), pick(cells));
  }
}

const encodings: ((text: string) => Uint8Array)[] = [
  (text) => Buffer.from(text),
  (text) => Buffer.from(`\ufeff${text}`),
  (text) => Buffer.from(`\ufeff${text}`, "utf16le"),
  (text) => Buffer.from(text, "utf16le"),
  (text) => Buffer.from(text, "latin1"),
];

/** Parts of a workbook's XML that its reader has to believe or not. */
const xmlScraps = [
  '<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;">]>',
  "&b;&b;",
  "<row>".repeat(500),
  '<row r="1048577"/>',
  '<c r="XFE1" t="s"><v>99999</v></c>',
  '<c r="A1" t="e"><v>#REF!</v></c>',
  '<c r="" t="n"><v>1e999</v></c>',
  '<mergeCell ref="A1:XFD1048576"/>',
  '<table:table-cell table:number-columns-repeated="16384"><text:p>1</text:p></table:table-cell>',
  '<table:table-row table:number-rows-repeated="1048576"><table:table-cell/></table:table-row>',
  "]]>",
  "\u0000",
];

/** The workbook with one of its parts damaged, packed again with right sizes and sums, so that the damage reaches the reader of cells. */
async function mutatePart(bytes: Uint8Array, chance: Chance): Promise<Uint8Array> {
  const entries = zipEntries(bytes) ?? [];
  const chosen = chance.below(entries.length);
  const parts = [];
  for (const [n, entry] of entries.entries()) {
    const part = await unpackEntry(bytes, entry, 10_000_000);
    if (part.state !== "ok") throw new Error("a workbook of our own does not open");
    let data: Uint8Array = part.bytes;
    if (n === chosen) {
      const text = Buffer.from(data).toString();
      const at = chance.below(text.length);
      data =
        chance.below(2) === 0
          ? mutateBytes(data, chance)
          : Buffer.from(text.slice(0, at) + chance.pick(xmlScraps) + text.slice(at));
    }
    parts.push({ name: entry.name, data, stored: entry.method === 0 });
  }
  return zipFile(parts);
}

/** A mutated instrument file: which, and its bytes. A third are workbooks made of the same tables. */
export async function mutatedTable(
  samples: readonly { name: string; text: string }[],
  chance: Chance,
): Promise<{ name: string; bytes: Uint8Array }> {
  const sample = chance.pick(samples);
  const lines = sample.text.split(/\r?\n/);
  // A stretch of the file with its head, so that ten thousand of them are read in minutes.
  const from = chance.below(Math.max(1, lines.length - 20));
  let text = [...lines.slice(0, 6), ...lines.slice(Math.max(6, from), from + 6 + chance.below(30))].join("\n");
  const rounds = 1 + chance.below(3);
  const kind = chance.below(9);
  if (kind < 6) {
    for (let n = 0; n < rounds; n += 1) text = mutateText(text, chance);
    let bytes = chance.below(3) === 0 ? chance.pick(encodings)(text) : Buffer.from(text);
    if (kind < 2) for (let n = 0; n < rounds; n += 1) bytes = Buffer.from(mutateBytes(bytes, chance));
    return { name: sample.name, bytes: new Uint8Array(bytes) };
  }
  if (kind === 6) text = mutateText(text, chance);
  const rows = text.split("\n").map((line) => line.split(/[,;\t]/).slice(0, 26));
  const [make, end] = chance.below(2) === 0 ? ([xlsxFile, "xlsx"] as const) : ([odsFile, "ods"] as const);
  const whole = make([{ name: "Sheet", rows: rows.map((row) => row.map(plainXml)) }]);
  const bytes = kind === 8 ? mutateBytes(whole, chance) : await mutatePart(whole, chance);
  return { name: `${sample.name}.${end}`, bytes: new Uint8Array(bytes) };
}

/** XML 1.0 has no place for these. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
const plainXml = (cell: string): string => cell.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, "");
