import { expect, it } from "vitest";
import { signedIn, takeSignInTurn } from "@/lib/access/sign-in-turns.ts";
import { fixedNow, freshDatabase } from "../support/test-context.ts";

const later = (minutes: number) => new Date(fixedNow.getTime() + minutes * 60_000);

it("lets ten tries at an account through in a quarter of an hour, from wherever they come, and more after it", async () => {
  const { db } = freshDatabase();
  for (let n = 0; n < 10; n++) expect(await takeSignInTurn(db, "a@example.org", `place ${n}`, fixedNow)).toBeNull();
  expect(await takeSignInTurn(db, " A@example.org", "another", later(5))).toEqual({
    code: "rate-limited",
    allowed: "10 minutes",
  });
  expect(await takeSignInTurn(db, "b@example.org", "another", later(5))).toBeNull();
  expect(await takeSignInTurn(db, "a@example.org", "another", later(15.01))).toBeNull();
});

it("lets thirty tries from one place through, whichever accounts they are for", async () => {
  const { db } = freshDatabase();
  for (let n = 0; n < 30; n++) expect(await takeSignInTurn(db, `${n}@example.org`, "one", fixedNow)).toBeNull();
  expect(await takeSignInTurn(db, "31@example.org", "one", fixedNow)).toMatchObject({ code: "rate-limited" });
  expect(await takeSignInTurn(db, "31@example.org", "two", fixedNow)).toBeNull();
});

it("starts an account anew after the right password, and counts tries sent at once", async () => {
  const { db } = freshDatabase();
  const tries = await Promise.all(
    Array.from({ length: 15 }, (_, n) => takeSignInTurn(db, "a@example.org", `p${n}`, fixedNow)),
  );
  expect(tries.filter((one) => one === null)).toHaveLength(10);
  await signedIn(db, "a@example.org", "p0");
  expect(await takeSignInTurn(db, "a@example.org", "p", fixedNow)).toBeNull();
});

it("does not count the right password against its place", async () => {
  const { db } = freshDatabase();
  for (let n = 0; n < 60; n++) {
    expect(await takeSignInTurn(db, "a@example.org", "shared", fixedNow)).toBeNull();
    await signedIn(db, "a@example.org", "shared");
  }
});
