import { randomBytes } from "node:crypto";
import { copyFileSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inject } from "vitest";
import { makeDatabase } from "@/commands/postgres.mjs";
import type { Person, Role } from "@/lib/access/permissions.ts";
import type { Context } from "@/lib/platform/context.ts";
import { type Database, openDatabase } from "@/lib/store/database.ts";

export const fixedNow = new Date("2026-05-04T10:00:00Z");
/** Whether this run's databases are PostgreSQL's (ASSAY_TEST_DATABASE=postgres). */
export const onPostgres = (): boolean => inject("postgres") !== null;

/** A database of the test's own, copied from the prepared one, and its address. */
export function freshDatabase(): { db: Database; url: string } {
  const url = onPostgres() ? madeDatabase("base") : `file:${copiedFile()}`;
  return { db: openDatabase(url), url };
}

function copiedFile(): string {
  const file = join(mkdtempSync(join(tmpdir(), "assay-test-")), "registry.db");
  copyFileSync(inject("baseDatabase"), file);
  return file;
}

function madeDatabase(template: string): string {
  return makeDatabase(inject("postgres")!, `test_${randomBytes(8).toString("hex")}`, template);
}

export async function person(db: Database, role: Role, name: string = role): Promise<Person> {
  const row = { id: `${name}-id`, name, email: `${name}@example.org`, role };
  await db.user.create({ data: row });
  return row;
}

/** A context as a signed-in person has it, with a fixed clock. */
export async function contextAs(role: Role, db: Database = freshDatabase().db): Promise<Context & { person: Person }> {
  return { db, person: await person(db, role), clock: () => fixedNow };
}

/** Takes away what keeps a table as it was written: for tests of what is seen when somebody changes it all the same. */
export async function dropTriggers(db: Database, table: string): Promise<void> {
  const named = onPostgres()
    ? await db.$queryRaw<{ name: string }[]>`
        SELECT tgname AS name FROM pg_trigger WHERE tgrelid = CAST(${`"${table}"`} AS regclass) AND NOT tgisinternal`
    : await db.$queryRaw<{ name: string }[]>`
        SELECT name FROM sqlite_schema WHERE type = 'trigger' AND tbl_name = ${table}`;
  for (const { name } of named)
    await db.$executeRawUnsafe(`DROP TRIGGER "${name}"${onPostgres() ? ` ON "${table}"` : ""}`);
}

/** The address of a database that nothing has been done to, not even its tables made. */
export function emptyDatabase(): string {
  if (!onPostgres()) return `file:${join(mkdtempSync(join(tmpdir(), "assay-test-")), "registry.db")}`;
  return madeDatabase("template0");
}
