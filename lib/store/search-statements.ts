import { type Db, dialectOf } from "./database.ts";
import type { Sql } from "./dialect.ts";
import { Prisma } from "./generated/sqlite/client.ts";
import { ftsExpression, type SearchTerm, tsQuery } from "./search-term.ts";

/** A question to item_search in the words of its database, as pieces of a statement over that table. */
export type AskedSql = {
  /** the column with the number of the publication */
  seq: Sql;
  /** the condition of a row that matches */
  holds: Sql;
  /** how well it matches, the best smallest; names weigh most, then codes and marks */
  fit: Sql;
  /** all of it as a query of numbers */
  seqs: Sql;
};

export function askedOf(db: Db, term: SearchTerm): AskedSql {
  const asked = dialectOf(db) === "sqlite" ? ofFts(ftsExpression(term)) : ofTsearch(tsQuery(term));
  return { ...asked, seqs: Prisma.sql`SELECT ${asked.seq} FROM item_search WHERE ${asked.holds}` };
}

const ofFts = (expression: string): Omit<AskedSql, "seqs"> => ({
  seq: Prisma.sql`rowid`,
  holds: Prisma.sql`item_search MATCH ${expression}`,
  fit: Prisma.sql`bm25(item_search, 0, 10, 6, 3, 8, 0)`,
});

/** Weights in PostgreSQL's order: D (other words), C (marks), B (codes), A (names). 1: a long text counts less for each word. */
const ofTsearch = (query: string): Omit<AskedSql, "seqs"> => ({
  seq: Prisma.sql`seq`,
  holds: Prisma.sql`texts @@ CAST(${query} AS tsquery)`,
  fit: Prisma.sql`-ts_rank('{0.3, 0.6, 0.8, 1.0}', texts, CAST(${query} AS tsquery), 1)`,
});

/** The words of the index nearest to one, by the runs of three letters they share. */
export async function wordsNear(db: Db, word: string, trigrams: readonly string[]): Promise<string[]> {
  const rows =
    dialectOf(db) === "sqlite"
      ? await db.$queryRaw<{ word: string }[]>`SELECT word FROM item_word WHERE id IN (
          SELECT rowid FROM item_word_trigrams WHERE item_word_trigrams
          MATCH ${trigrams.map((run) => `"${run}"`).join(" OR ")} ORDER BY rank LIMIT 60)`
      : await db.$queryRaw<{ word: string }[]>`
          SELECT word FROM item_word ORDER BY word <-> CAST(${word} AS text), word LIMIT 60`;
  return rows.map((row) => row.word);
}
