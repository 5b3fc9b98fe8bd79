import { copyFileSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inject } from "vitest";
import type { Person, Role } from "@/lib/access/permissions.ts";
import type { Context } from "@/lib/platform/context.ts";
import { type Database, openDatabase } from "@/lib/store/database.ts";

export const fixedNow = new Date("2026-05-04T10:00:00Z");

/** A database of the test's own, copied from the prepared one. */
export function freshDatabase(): { db: Database; file: string } {
  const file = join(mkdtempSync(join(tmpdir(), "assay-test-")), "registry.db");
  copyFileSync(inject("baseDatabase"), file);
  return { db: openDatabase(file), file };
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
