import { expect, it } from "vitest";
import { makeAuth } from "@/lib/access/auth.ts";
import type { Db } from "@/lib/store/database.ts";
import { addMemberWorkflow } from "@/lib/workflows/add-member.ts";
import { offerSetUp, setUpOwner } from "@/lib/workflows/set-up-owner.ts";
import { must } from "../support/bench-item.ts";
import { fixedNow, freshDatabase } from "../support/test-context.ts";

const owner = { name: "Invented Owner", email: "Owner@example.org", password: "a long password" };

const authIn = (tx: Db) =>
  makeAuth(tx, { baseUrl: "http://localhost:3000", port: 3000, secret: "s".repeat(32), cookies: false });

function registry() {
  const { db } = freshDatabase();
  return { db, auth: authIn(db) };
}

it("the first start offers a token, only its hash is kept, and it makes one owner, once", async () => {
  const { db } = registry();
  const token = (await offerSetUp(db)) ?? "";
  expect(token).toMatch(/^[0-9a-f]{32}$/);
  expect(JSON.stringify(await db.setUpToken.findMany())).not.toContain(token);
  const wrong = await setUpOwner({ db, authIn }, { ...owner, token: "0".repeat(32) });
  expect(wrong).toMatchObject({ ok: false, problems: [{ code: "wrong-token" }] });
  expect(must(await setUpOwner({ db, authIn }, { ...owner, token }))).toMatchObject({
    role: "owner",
    email: "owner@example.org",
  });
  expect(await setUpOwner({ db, authIn }, { ...owner, token })).toMatchObject({
    ok: false,
    problems: [{ code: "owner-exists" }],
  });
  expect(await offerSetUp(db)).toBeNull();
});

it("a new start makes the old token useless", async () => {
  const { db } = registry();
  const old = (await offerSetUp(db)) ?? "";
  await offerSetUp(db);
  expect(await setUpOwner({ db, authIn }, { ...owner, token: old })).toMatchObject({
    ok: false,
    problems: [{ code: "wrong-token" }],
  });
});

it("two requests with one token make one owner", async () => {
  const { db } = registry();
  const token = (await offerSetUp(db)) ?? "";
  const outcomes = await Promise.allSettled([
    setUpOwner({ db, authIn }, { ...owner, token }),
    setUpOwner({ db, authIn }, { ...owner, email: "second@example.org", token }),
  ]);
  expect(outcomes.filter((o) => o.status === "fulfilled" && o.value.ok)).toHaveLength(1);
  expect(await db.user.count()).toBe(1);
});

it("the owner signs in with the password, and with no other", async () => {
  const { db, auth } = registry();
  const token = (await offerSetUp(db)) ?? "";
  must(await setUpOwner({ db, authIn }, { ...owner, token }));
  const signedIn = await auth.api.signInEmail({ body: { email: owner.email, password: owner.password } });
  expect(signedIn.user.email).toBe("owner@example.org");
  await expect(auth.api.signInEmail({ body: { email: owner.email, password: "another password" } })).rejects.toThrow();
  await expect(auth.api.signUpEmail({ body: { ...owner, email: "guest@example.org" } })).rejects.toThrow();
});

it("only the owner adds people", async () => {
  const { db } = registry();
  const token = (await offerSetUp(db)) ?? "";
  const person = must(await setUpOwner({ db, authIn }, { ...owner, token }));
  const context = { db, authIn, person, clock: () => fixedNow };
  const member = {
    name: "Invented Tester",
    email: "t@example.org",
    password: "a long password",
    role: "tester" as const,
  };
  const tester = must(await addMemberWorkflow(context, member));
  expect(await addMemberWorkflow(context, member)).toMatchObject({ ok: false, problems: [{ code: "email-taken" }] });
  expect(await addMemberWorkflow({ ...context, person: tester }, { ...member, email: "u@example.org" })).toMatchObject({
    ok: false,
    problems: [{ code: "not-allowed" }],
  });
});
