import pg from "pg";
import { spooledTexts } from "./spooled-texts.ts";
import type { StoredLog } from "./stored-log.ts";

/** The log of a PostgreSQL database as it is stored, at one moment. */
export async function openStoredPostgresLog(url: string): Promise<StoredLog> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
  await client.connect();
  const texts = spooledTexts();
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
    await spool(client, texts.add);
    await client.query("COMMIT");
    return { entries, heads, snapshot: (seq) => texts.nth(seq - 1), close: texts.close };
  } catch (error) {
    texts.close();
    throw error;
  } finally {
    await client.end();
  }
}

const rowsOf = async (client: pg.Client, sql: string): Promise<unknown[]> => (await client.query(sql)).rows;

/** Every text one after the other, a few at a time. */
async function spool(client: pg.Client, add: (text: string) => void): Promise<void> {
  await client.query(`DECLARE texts NO SCROLL CURSOR FOR SELECT snapshot FROM "Publication" ORDER BY seq`);
  for (;;) {
    const { rows } = await client.query<{ snapshot: string }>("FETCH 200 FROM texts");
    if (rows.length === 0) return;
    for (const { snapshot } of rows) add(snapshot);
  }
}
