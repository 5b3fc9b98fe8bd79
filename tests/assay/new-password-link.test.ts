import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { sha256 } from "@/lib/platform/sha256.ts";
import { freshDatabase, person } from "../support/test-context.ts";
import { assayProcessOf } from "./run-assay.ts";

it("`npm run assay -- new-password-link` prints a link for one person, of which only the hash is kept", async () => {
  const { db, url } = freshDatabase();
  const { id, email } = await person(db, "owner");
  const place = {
    DATABASE_URL: url,
    DATA_DIR: mkdtempSync(join(tmpdir(), "assay-link-")),
    BASE_URL: "https://shelf.example/",
  };
  const assay = (...args: string[]) => assayProcessOf(place, "new-password-link", ...args);
  expect(assay()).toMatchObject({ code: 2, stderr: expect.stringContaining("Name one person") });
  expect(assay(email, "another")).toMatchObject({ code: 2, stderr: expect.stringContaining("Name one person") });
  expect(assay("nobody@example.org")).toMatchObject({ code: 2, stderr: expect.stringContaining("Nobody who can") });
  expect(await db.invitation.count()).toBe(0);
  const { code, stdout } = assay(email.toUpperCase());
  expect(code).toBe(0);
  const token = /https:\/\/shelf\.example\/account\/join\/([\w-]{32})\n$/.exec(stdout)?.[1] ?? "";
  expect(await db.invitation.findMany()).toMatchObject([{ tokenSha256: sha256(token), email, usedAt: null }]);
  expect(await db.auditEntry.findMany()).toMatchObject([{ action: "make-password-link", actorId: null, recordId: id }]);
});
