import { describe, expect, it } from "vitest";
import { makeAuth } from "@/lib/access/auth.ts";
import type { Db } from "@/lib/store/database.ts";
import { openInvitations } from "@/lib/store/invitations.ts";
import { acceptInvitationWorkflow } from "@/lib/workflows/accept-invitation.ts";
import { changePasswordWorkflow } from "@/lib/workflows/change-password.ts";
import { inviteMemberWorkflow, withdrawInvitationWorkflow } from "@/lib/workflows/invite-member.ts";
import { must } from "../support/bench-item.ts";
import { contextAs, fixedNow, person } from "../support/test-context.ts";

const days = (n: number) => () => new Date(fixedNow.getTime() + n * 86_400_000);
const joining = { name: "Invented Joiner", password: "seven copper kettles" };

const authIn = (tx: Db) =>
  makeAuth(tx, { baseUrl: "http://localhost:3000", port: 3000, secret: "s".repeat(32), cookies: false });

async function registry() {
  const owner = await contextAs("owner");
  const { db } = owner;
  const auth = authIn(db);
  const join = (token: string, at = days(0), more: object = {}) =>
    acceptInvitationWorkflow({ db, authIn, clock: at }, { token, ...joining, ...more });
  return { owner, db, auth, join };
}
const invited = { email: "Joiner@example.org", role: "reviewer" as const };
const gone = { ok: false, problems: [{ code: "invitation-gone" }] };

describe("an invitation", () => {
  it("makes one account with the role and the address that the owner wrote, and works once", async () => {
    const { owner, db, auth, join } = await registry();
    const { token } = must(await inviteMemberWorkflow(owner, invited));
    expect(JSON.stringify(await db.invitation.findMany())).not.toContain(token);
    const made = must(await join(token));
    expect(made).toMatchObject({ email: "joiner@example.org", role: "reviewer" });
    expect((await auth.api.signInEmail({ body: { email: made.email, password: joining.password } })).user.id).toBe(
      made.id,
    );
    expect(await join(token)).toMatchObject(gone);
    expect(await openInvitations(db, fixedNow)).toEqual([]);
  });

  it("used twice at once makes one account", async () => {
    const { owner, db, join } = await registry();
    const { token } = must(await inviteMemberWorkflow(owner, invited));
    const outcomes = await Promise.allSettled([join(token), join(token), join(token)]);
    expect(outcomes.filter((o) => o.status === "fulfilled" && o.value.ok)).toHaveLength(1);
    expect(await db.user.count({ where: { email: "joiner@example.org" } })).toBe(1);
  });

  it("is good for a week, until it is taken back, and until a newer one for the same address", async () => {
    const { owner, join, db } = await registry();
    const old = must(await inviteMemberWorkflow(owner, invited));
    expect(await join(old.token, days(7.01))).toMatchObject(gone);
    const newer = must(await inviteMemberWorkflow(owner, invited));
    expect(await join(old.token)).toMatchObject(gone);
    const [open] = await openInvitations(db, fixedNow);
    must(await withdrawInvitationWorkflow(owner, open?.id ?? ""));
    expect(await join(newer.token)).toMatchObject(gone);
    expect(await withdrawInvitationWorkflow(owner, open?.id ?? "")).toMatchObject(gone);
    expect(await join("guessed")).toMatchObject(gone);
  });

  it("is the owner's to make; a poor password does not use it up", async () => {
    const { owner, db, join } = await registry();
    const tester = { ...owner, person: await person(db, "tester") };
    expect(await inviteMemberWorkflow(tester, invited)).toMatchObject({ problems: [{ code: "not-allowed" }] });
    expect(await withdrawInvitationWorkflow({ ...owner, person: null }, "x")).toMatchObject({
      problems: [{ code: "not-signed-in" }],
    });
    const { token } = must(await inviteMemberWorkflow(owner, invited));
    expect(await join(token, days(0), { password: "too short" })).toMatchObject({
      problems: [{ code: "password-too-short" }],
    });
    must(await join(token));
    expect(await inviteMemberWorkflow(owner, invited)).toMatchObject({ problems: [{ code: "email-taken" }] });
  });
});

describe("changing one's password", () => {
  it("asks for the old one, takes no poor one, and is written down", async () => {
    const { owner, db } = await registry();
    const change = (works: boolean, password = joining.password) =>
      changePasswordWorkflow(owner, { current: "old", password }, async () => works);
    expect(await change(true, "short")).toMatchObject({ problems: [{ code: "password-too-short" }] });
    expect(await change(false)).toMatchObject({ problems: [{ code: "wrong-password", where: { field: "current" } }] });
    must(await change(true));
    expect(await db.auditEntry.findMany({ where: { action: "change-password" } })).toHaveLength(1);
    expect(
      await changePasswordWorkflow({ ...owner, person: null }, { current: "a", password: "b" }, async () => true),
    ).toMatchObject({ problems: [{ code: "not-signed-in" }] });
  });
});
