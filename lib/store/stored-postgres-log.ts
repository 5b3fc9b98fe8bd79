import { closeSync, mkdtempSync, openSync, readSync, rmSync, writeSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pg from "pg";
import type { StoredLog } from "./stored-log.ts";

/**
 * The log of a PostgreSQL database as it is stored, at one moment. A check asks for texts one at a time and does not wait,
 * so they are laid into a file of our own first: a registry of any size passes through without filling the memory.
 */
export async function openStoredPostgresLog(url: string): Promise<StoredLog> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
  await client.connect();
  const folder = mkdtempSync(join(tmpdir(), "assay-log-"));
  const file = openSync(join(folder, "snapshots"), "wx+", 0o600);
  const close = () => {
    closeSync(file);
    rmSync(folder, { recursive: true, force: true });
  };
  try {
    await client.query("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY");
    const entries = await rowsOf(
      client,
      `SELECT seq, slug, revision, kind, "publishedAt", "snapshotSha256", "previousHash", hash FROM "Publication" ORDER BY seq`,
    );
    const heads = await rowsOf(
      client,
      `SELECT seq, hash, "signedAt", "publicKey", signature FROM "LogHead" ORDER BY seq`,
    );
    const places = await spool(client, file);
    await client.query("COMMIT");
    return {
      entries,
      heads,
      snapshot: (seq) => {
        const place = places[seq - 1];
        if (place === undefined) return undefined;
        const bytes = new Uint8Array(place.length);
        readSync(file, bytes, 0, place.length, place.at);
        return bytes;
      },
      close,
    };
  } catch (error) {
    close();
    throw error;
  } finally {
    await client.end();
  }
}

const rowsOf = async (client: pg.Client, sql: string): Promise<unknown[]> => (await client.query(sql)).rows;

/** Every text one after the other, a few at a time; answers with where each begins. */
async function spool(client: pg.Client, file: number): Promise<{ at: number; length: number }[]> {
  const places: { at: number; length: number }[] = [];
  let at = 0;
  await client.query(`DECLARE texts NO SCROLL CURSOR FOR SELECT snapshot FROM "Publication" ORDER BY seq`);
  for (;;) {
    const { rows } = await client.query<{ snapshot: string }>("FETCH 200 FROM texts");
    if (rows.length === 0) return places;
    for (const { snapshot } of rows) {
      const bytes = Buffer.from(snapshot, "utf8");
      writeSync(file, bytes, 0, bytes.length, at);
      places.push({ at, length: bytes.length });
      at += bytes.length;
    }
  }
}
