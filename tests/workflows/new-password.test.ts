import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { addPerson } from "@/lib/access/add-person.ts";
import { type AuthOptions, makeAuth } from "@/lib/access/auth.ts";
import { enterCode } from "@/lib/access/second-step.ts";
import type { Db } from "@/lib/store/database.ts";
import { openInvitations } from "@/lib/store/invitations.ts";
import { hasSecondStep } from "@/lib/store/second-steps.ts";
import { acceptInvitationWorkflow } from "@/lib/workflows/accept-invitation.ts";
import { addMemberWorkflow } from "@/lib/workflows/add-member.ts";
import { inviteMemberWorkflow, withdrawInvitationWorkflow } from "@/lib/workflows/invite-member.ts";
import { makePasswordLinkAtMachine, makePasswordLinkWorkflow } from "@/lib/workflows/make-password-link.ts";
import { setNewPasswordWorkflow } from "@/lib/workflows/set-new-password.ts";
import { must } from "../support/bench-item.ts";
import { contextAs, fixedNow, person } from "../support/test-context.ts";

const forgotten = "seven copper kettles";
const chosen = "a dozen wooden ladles";
const options: AuthOptions = { baseUrl: "http://localhost:3000", port: 3000, secret: "s".repeat(32), cookies: false };
const authIn = (tx: Db) => makeAuth(tx, options);

// The library reads the machine's clock; only it is held, so that timers of the database go on.
beforeEach(() => vi.useFakeTimers({ now: fixedNow, toFake: ["Date"] }));
afterEach(() => vi.useRealTimers());
const days = (n: number) => () => new Date(fixedNow.getTime() + n * 86_400_000);

async function registry() {
  const owner = await contextAs("owner");
  const { db } = owner;
  const auth = authIn(db);
  const other = await addPerson(auth, { name: "Other", email: "o@example.org", password: forgotten, role: "tester" });
  const tester = await addPerson(auth, {
    name: "Invented Tester",
    email: "T@example.org",
    password: forgotten,
    role: "tester",
  });
  const link = async () => must(await makePasswordLinkWorkflow(owner, tester.id)).token;
  const set = (token: string, password = chosen, clock = days(0), made = authIn) =>
    setNewPasswordWorkflow({ db, authIn: made, clock }, { token, password });
  const signIn = (password: string, email = tester.email) =>
    auth.api.signInEmail({ body: { email, password }, returnHeaders: true });
  const sessions = (userId = tester.id) => db.authSession.count({ where: { userId } });
  const acts = (action: string) => db.auditEntry.findMany({ where: { action } });
  return { owner, db, auth, tester, other, link, set, signIn, sessions, acts };
}
const problem = (code: string) => ({ ok: false, problems: [{ code }] });

describe("a link for a new password", () => {
  it("sets it once, ends every sign-in of that person and of nobody else, and is written down", async () => {
    const { db, owner, tester, other, link, set, signIn, sessions, acts } = await registry();
    await signIn(forgotten);
    await signIn(forgotten);
    await signIn(forgotten, other.email);
    const token = await link();
    expect(JSON.stringify([await db.invitation.findMany(), await db.auditEntry.findMany()])).not.toContain(token);
    expect(await openInvitations(db, fixedNow)).toMatchObject([{ email: "t@example.org", account: { id: tester.id } }]);
    // Made, it changes nothing yet.
    await signIn(forgotten);
    expect(await sessions()).toBe(3);

    expect(must(await set(token))).toEqual(tester);
    expect([await sessions(), await sessions(other.id)]).toEqual([0, 1]);
    await expect(signIn(forgotten)).rejects.toThrow();
    expect((await signIn(chosen)).response).toMatchObject({ user: { id: tester.id } });
    await signIn(forgotten, other.email);
    expect(await acts("make-password-link")).toMatchObject([{ actorId: owner.person.id, recordId: tester.id }]);
    expect(await acts("set-new-password")).toMatchObject([{ actorId: tester.id, recordId: tester.id }]);

    expect(await set(token, "another long phrase of theirs")).toMatchObject(problem("invitation-gone"));
    await signIn(chosen);
    expect(await openInvitations(db, fixedNow)).toEqual([]);
  });

  it("used twice at once tells one of them yes", async () => {
    const { link, set, signIn, acts } = await registry();
    const token = await link();
    const passwords = [chosen, "the second of the two at once", "the third of those at once"];
    const told = await Promise.all(passwords.map((password) => set(token, password)));
    expect(told.filter(({ ok }) => ok)).toHaveLength(1);
    expect(await acts("set-new-password")).toHaveLength(1);
    await signIn(passwords[told.findIndex(({ ok }) => ok)] ?? "");
  });

  it("is good for a day, until it is taken back, and until a newer one for the same person", async () => {
    const { db, owner, link, set, signIn } = await registry();
    const old = await link();
    expect(await set(old, chosen, days(1.001))).toMatchObject(problem("invitation-gone"));
    const newer = await link();
    expect(await set(old)).toMatchObject(problem("invitation-gone"));
    const [open] = await openInvitations(db, fixedNow);
    must(await withdrawInvitationWorkflow(owner, open?.id ?? ""));
    expect(await set(newer)).toMatchObject(problem("invitation-gone"));
    expect(await set("guessed")).toMatchObject(problem("invitation-gone"));
    await signIn(forgotten);
    must(await set(await link(), chosen, days(0.999)));
  });

  it("takes no poor password and stays good after one", async () => {
    const { link, set, signIn } = await registry();
    const token = await link();
    expect(await set(token, "too short")).toMatchObject(problem("password-too-short"));
    expect(await set(token, "invented tester")).toMatchObject(problem("password-easy-to-guess"));
    await signIn(forgotten);
    must(await set(token));
  });

  it("leaves the second step on, and ends a sign-in that waits for its code", async () => {
    const { db, auth, tester, link, set, signIn } = await registry();
    const key = { secret: "encrypted", backupCodes: "encrypted" };
    await db.authTwoFactor.create({ data: { id: "k", userId: tester.id, ...key } });
    await db.user.update({ where: { id: tester.id }, data: { twoFactorEnabled: true } });
    const half = await signIn(forgotten);
    expect(half.response).toHaveProperty("twoFactorRedirect");
    const cookie = half.headers
      .getSetCookie()
      .map((line) => line.split(";")[0])
      .join("; ");
    const waits = () => auth.api.whoWaitsForCode({ headers: new Headers({ cookie }) });
    expect(await waits()).toMatchObject({ id: tester.id });
    must(await set(await link()));
    expect(await waits()).toBeNull();
    expect(
      await enterCode(auth, new Headers({ cookie }), { db, userId: tester.id, typed: "123456", now: fixedNow }),
    ).toMatchObject(problem("code-wait-over"));
    expect(await hasSecondStep(db, tester.id)).toBe(true);
    expect(await db.authTwoFactor.findMany()).toMatchObject([key]);
    expect((await signIn(chosen)).response).toHaveProperty("twoFactorRedirect");
  });

  it("is not spent, and no sign-in ended, where the new password cannot be written", async () => {
    const { db, link, set, signIn, sessions, acts } = await registry();
    const token = await link();
    await signIn(forgotten);
    await db.$executeRawUnsafe(`ALTER TABLE "AuditEntry" RENAME TO "AuditElsewhere"`);
    await expect(set(token)).rejects.toThrow();
    await db.$executeRawUnsafe(`ALTER TABLE "AuditElsewhere" RENAME TO "AuditEntry"`);
    expect([await sessions(), (await acts("set-new-password")).length]).toEqual([1, 0]);
    await signIn(forgotten);
    must(await set(token));
  });

  it("is the owner's to make, for others; at the machine for anybody", async () => {
    const { db, owner, tester, set, signIn, acts } = await registry();
    const reviewer = { ...owner, person: await person(db, "reviewer") };
    expect(await makePasswordLinkWorkflow(reviewer, tester.id)).toMatchObject(problem("not-allowed"));
    expect(await makePasswordLinkWorkflow({ ...owner, person: null }, tester.id)).toMatchObject(
      problem("not-signed-in"),
    );
    expect(await makePasswordLinkWorkflow(owner, owner.person.id)).toMatchObject(problem("own-password-link"));
    expect(await makePasswordLinkWorkflow(owner, "nobody")).toMatchObject(problem("no-such-person"));
    expect(await makePasswordLinkAtMachine(db, "nobody@example.org", owner.clock)).toMatchObject(
      problem("no-such-person"),
    );
    expect(await db.invitation.count()).toBe(0);
    const { token, name } = must(await makePasswordLinkAtMachine(db, "T@Example.org", owner.clock));
    expect(name).toBe(tester.name);
    must(await set(token));
    await signIn(chosen);
    expect(await acts("make-password-link")).toMatchObject([{ actorId: null, recordId: tester.id }]);
  });

  it("and an invitation do not stand for each other", async () => {
    const { db, owner, link, set } = await registry();
    const join = (token: string) =>
      acceptInvitationWorkflow({ db, authIn, clock: days(0) }, { token, name: "Joiner", password: chosen });
    expect(await join(await link())).toMatchObject(problem("email-taken"));
    const invited = { email: "joiner@example.org", role: "tester" as const };
    const { token } = must(await inviteMemberWorkflow(owner, invited));
    expect(await set(token)).toMatchObject(problem("invitation-gone"));
    // Whoever was invited and is then added beside the owner has a password; the old link must not change it.
    must(
      await addMemberWorkflow(
        { ...owner, authIn },
        { ...invited, email: "Joiner@example.org", name: "Joiner", password: chosen },
      ),
    );
    expect(await set(token, "somebody else's long phrase")).toMatchObject(problem("invitation-gone"));
  });
});
