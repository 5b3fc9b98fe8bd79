import { expect, it } from "vitest";
import { latestPublished } from "@/lib/store/published.ts";
import { searchPublished } from "@/lib/store/search.ts";
import { freshDatabase, person } from "../support/test-context.ts";

it("a text with a sign that no database of ours can hold in common is looked for and finds nothing", async () => {
  const { db } = freshDatabase();
  expect(await latestPublished("mug\0", db)).toBeNull();
  expect(await latestPublished("mug\ud800", db)).toBeNull();
  expect((await searchPublished({ q: "mug\0 \ud800", category: "\0" }, db)).total).toBe(0);
});

it("and is kept all the same where somebody wrote it", async () => {
  const { db } = freshDatabase();
  const { id } = await person(db, "tester", "a\0b");
  expect((await db.user.findUniqueOrThrow({ where: { id } })).name).toMatch(/^a[\0\ufffd]b$/);
});
