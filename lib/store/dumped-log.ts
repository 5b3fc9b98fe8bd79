import { spooledTexts } from "./spooled-texts.ts";
import type { StoredLog } from "./stored-log.ts";

/** The tables that a check of the log needs. */
export const logTables = ["Publication", "LogHead"] as const;

/**
 * The log out of a PostgreSQL dump, from what `pg_restore --data-only --file=-` writes for `logTables`: for each table a line
 * `COPY … (columns) FROM stdin;`, a line a row, and a line `\\.` (PostgreSQL's documentation, COPY, “Text Format”).
 */
export async function openDumpedLog(lines: AsyncIterable<string>): Promise<StoredLog> {
  const texts = spooledTexts();
  const entries: Record<string, unknown>[] = [];
  const heads: Record<string, unknown>[] = [];
  let columns: string[] | null = null;
  let rows = entries;
  try {
    for await (const line of lines) {
      const begins = /^COPY \S*?"?(\w+)"? \((.*)\) FROM stdin;$/.exec(line);
      if (columns === null && begins) {
        columns = (begins[2] ?? "").split(", ").map((name) => name.replaceAll('"', ""));
        rows = begins[1] === "LogHead" ? heads : entries;
      } else if (line === "\\.") columns = null;
      else if (columns !== null) rows.push(rowOf(columns, line));
    }
    for (const list of [entries, heads]) list.sort((a, b) => Number(a["seq"]) - Number(b["seq"]));
    for (const entry of entries) {
      texts.add(String(entry["snapshot"] ?? ""));
      delete entry["snapshot"];
    }
    return { entries, heads, snapshot: (seq) => texts.nth(seq - 1), close: texts.close };
  } catch (error) {
    texts.close();
    throw error;
  }
}

const numbers = new Set(["seq", "revision"]);
const kept = new Set(
  "seq slug revision kind publishedAt snapshotSha256 previousHash hash snapshot signedAt publicKey signature".split(
    " ",
  ),
);

function rowOf(columns: readonly string[], line: string): Record<string, unknown> {
  const values = line.split("\t");
  return Object.fromEntries(
    columns.flatMap((name, at) => {
      if (!kept.has(name)) return [];
      const text = copied(values[at] ?? "");
      return [[name, numbers.has(name) ? Number(text) : text]];
    }),
  );
}

const escapes: Record<string, string> = { b: "\b", f: "\f", n: "\n", r: "\r", t: "\t", v: "\v" };

/** A value of COPY's text format: `\\N` is none, a backslash escapes the sign after it. */
const copied = (value: string): string | null =>
  value === "\\N" ? null : value.replaceAll(/\\(.)/g, (_, sign: string) => escapes[sign] ?? sign);
