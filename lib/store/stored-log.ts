import Database from "better-sqlite3";

/** The log of a database file as it lies on the disk, entry by entry, without any reading of it in between. */
export type StoredLog = {
  entries: unknown[];
  /** Every signed head, oldest first. */
  heads: unknown[];
  snapshot: (seq: number) => Uint8Array | undefined;
  close: () => void;
};

/**
 * Opens a SQLite file for looking only and hands on its log: members as they are stored, texts as bytes, so that a check
 * sees what a changed bit did. Snapshots are read one at a time. Throws where the file is no registry's database.
 */
export function openStoredLog(file: string): StoredLog {
  const db = new Database(file, { readonly: true, fileMustExist: true, timeout: 10_000 });
  try {
    const entries = db
      .prepare(
        `SELECT seq, slug, revision, kind, publishedAt, snapshotSha256, previousHash, hash FROM "Publication" ORDER BY seq`,
      )
      .all();
    // A backup made before heads were signed has no such table.
    const signed = db.prepare(`SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = 'LogHead'`).get();
    const heads = signed
      ? db.prepare(`SELECT seq, hash, signedAt, publicKey, signature FROM "LogHead" ORDER BY seq`).all()
      : [];
    // By place, not by number: a number may be what was changed.
    const nth = db.prepare(`SELECT CAST(snapshot AS BLOB) AS text FROM "Publication" ORDER BY seq LIMIT 1 OFFSET ?`);
    return {
      entries,
      heads,
      snapshot: (seq) => {
        const row = nth.get(seq - 1) as { text: Buffer | null } | undefined;
        return row === undefined ? undefined : (row.text ?? new Uint8Array());
      },
      close: () => db.close(),
    };
  } catch (error) {
    db.close();
    throw error;
  }
}

/** Copies a database that may be in use, whole and at one moment, into one file of its own (SQLite's online backup). */
export async function copyDatabase(file: string, to: string): Promise<void> {
  const db = new Database(file, { readonly: true, fileMustExist: true, timeout: 10_000 });
  try {
    await db.backup(to);
  } finally {
    db.close();
  }
  const copy = new Database(to);
  // Without a write-ahead log beside it: one file that can be carried and hashed.
  copy.pragma("journal_mode = DELETE");
  copy.close();
}

/** What SQLite's own check says of a file: null where it is whole. */
export function databaseDamage(file: string): string | null {
  const db = new Database(file, { readonly: true, fileMustExist: true });
  try {
    const answer = db.pragma("integrity_check(1)", { simple: true });
    return answer === "ok" ? null : String(answer);
  } finally {
    db.close();
  }
}

/** A copied database made ready for work: readers and a writer at once (write-ahead log). */
export function prepareRestored(file: string): void {
  const db = new Database(file);
  db.pragma("journal_mode = WAL");
  db.close();
}
