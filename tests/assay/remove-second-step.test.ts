import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { freshDatabase, person } from "../support/test-context.ts";
import { assayProcessOf } from "./run-assay.ts";

it("`npm run assay -- remove-second-step` lets one person in by password alone again, and says where there is nothing to do", async () => {
  const { db, url } = freshDatabase();
  const { id, email } = await person(db, "owner");
  await db.authTwoFactor.create({ data: { id: "k", userId: id, secret: "encrypted", backupCodes: "encrypted" } });
  await db.user.update({ where: { id }, data: { twoFactorEnabled: true } });
  const place = {
    DATABASE_URL: url,
    DATA_DIR: mkdtempSync(join(tmpdir(), "assay-second-")),
    BASE_URL: "http://localhost:3000",
  };
  const assay = (...args: string[]) => assayProcessOf(place, "remove-second-step", ...args);
  expect(assay()).toMatchObject({ code: 2, stderr: expect.stringContaining("Name one person") });
  expect(assay("nobody@example.org")).toMatchObject({ code: 2, stderr: expect.stringContaining("no second step") });
  expect(assay(email)).toMatchObject({ code: 0, stdout: expect.stringContaining("the password alone lets them in") });
  expect(await db.user.findUnique({ where: { id } })).toMatchObject({ twoFactorEnabled: false });
  expect(await db.authTwoFactor.count()).toBe(0);
  expect(await db.auditEntry.findMany()).toMatchObject([{ action: "remove-second-step", actorId: null, recordId: id }]);
  expect(assay(email)).toMatchObject({ code: 2 });
});
