import { type Db, dialectOf } from "./database.ts";
import { Prisma } from "./generated/sqlite/client.ts";

/**
 * The little in which the two databases' SQL differs, as pieces of a statement that is otherwise written once. Names of
 * columns stand in double quotes wherever they hold a capital: PostgreSQL would fold them.
 */
export type Sql = Prisma.Sql;

/** The objects of a list as rows of one column, `value`, whose members are read with `value ->> 'member'` (a text) and cast. */
export function objectRows(db: Db, list: readonly object[]): Sql {
  const json = JSON.stringify(list);
  return dialectOf(db) === "sqlite"
    ? Prisma.sql`(SELECT value FROM json_each(${json}))`
    : Prisma.sql`(SELECT value FROM jsonb_array_elements(CAST(${json} AS jsonb)) AS each (value))`;
}

/** The texts of a list as rows of one column, `value`. */
export function textRows(db: Db, list: readonly string[]): Sql {
  const json = JSON.stringify(list);
  return dialectOf(db) === "sqlite"
    ? Prisma.sql`(SELECT value FROM json_each(${json}))`
    : Prisma.sql`(SELECT value FROM jsonb_array_elements_text(CAST(${json} AS jsonb)) AS each (value))`;
}

/**
 * A filter for a text that holds another, whatever the case of its letters: SQLite's LIKE never minds it. "%" and "_" in it
 * stand for any letters, since neither database's LIKE is told otherwise: more is found then, never less.
 */
export const holdsText = (db: Db, text: string): { contains: string } =>
  dialectOf(db) === "sqlite" ? { contains: text } : ({ contains: text, mode: "insensitive" } as { contains: string });
