import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { openDatabase } from "@/lib/store/database.ts";
import { builtActions, sendAction, signedInCookie } from "../support/ask-door.ts";
import { served } from "../support/served.ts";

/** What keeps a sign-in somebody's own, over HTTP and without a browser. */
const actions = builtActions(join(import.meta.dirname, "..", ".."));
const empty = { errors: [] };
const send = (name: string, args: readonly unknown[], cookie = "") => {
  const action = actions.get(name);
  if (!action) throw new Error(`${name} is not in the build`);
  return sendAction(served().base, action, args, { cookie, origin: served().base });
};
const enter = (credentials: string) => signedInCookie(served().base, actions, credentials);
const isIn = async (cookie: string): Promise<boolean> =>
  (await fetch(`${served().base}/bench`, { headers: { cookie }, redirect: "manual" })).status === 200;
const cookieIn = (answer: Response): string =>
  answer.headers
    .getSetCookie()
    .map((cookie) => cookie.split(";")[0] ?? "")
    .join("; ");

let tester = "";
let owner = "";
beforeAll(() => {
  tester = served().passwords["tester"] ?? "";
  owner = served().passwords["owner"] ?? "";
});
const formOf = (credentials: string, next = "/bench") => {
  const [email = "", password = ""] = credentials.split(" ");
  return { form: { email, password, next } };
};

describe("a session", () => {
  it("is made anew at every sign-in; one that was there before ends, and one that was made up never counts", async () => {
    const planted = "better-auth.session_token=planted.c2lnbmF0dXJl";
    const first = await send("account/sign-in/actions.ts signIn", [empty, formOf(tester)], planted);
    const mine = cookieIn(first);
    expect(mine).toContain("session_token=");
    expect(mine).not.toContain("planted");
    expect(await isIn(planted)).toBe(false);
    expect(await isIn(mine)).toBe(true);
    // Signed in again with the session in hand: another token, and the old one is worth nothing.
    const again = cookieIn(await send("account/sign-in/actions.ts signIn", [empty, formOf(tester)], mine));
    expect(again).not.toBe(mine);
    expect([await isIn(mine), await isIn(again)]).toEqual([false, true]);
    await send("account/sign-in/actions.ts signOut", [], again);
    expect(await isIn(again)).toBe(false);
  });

  it("has a cookie that no script reads and no other site's form sends", async () => {
    const answer = await send("account/sign-in/actions.ts signIn", [empty, formOf(tester)]);
    for (const cookie of answer.headers.getSetCookie().filter((c) => c.includes("session_token"))) {
      expect(cookie).toMatch(/; HttpOnly/i);
      expect(cookie).toMatch(/; SameSite=Lax/i);
    }
  });

  it("leads on to our own pages only", async () => {
    for (const [next, expected] of [
      ["/bench/readings?state=all", "/bench/readings?state=all"],
      ["/\t/elsewhere.example", "/bench"],
      ["//elsewhere.example", "/bench"],
      ["https://elsewhere.example", "/bench"],
    ] as const) {
      const answer = await send("account/sign-in/actions.ts signIn", [empty, formOf(tester, next)]);
      expect(answer.headers.get("x-action-redirect")?.split(";")[0]).toBe(expected);
    }
  });

  it("of another browser ends when the password is changed", async () => {
    const [here, elsewhere] = [await enter(tester), await enter(tester)];
    const [, password = ""] = tester.split(" ");
    const change = (current: string, next: string) =>
      send("account/actions.ts changePassword", [empty, { form: { current, password: next } }], here);
    expect(await (await change("not the password", "seven copper kettles")).text()).toContain("not your password");
    expect(await (await change(password, "123456789012345")).text()).toContain("one of the first");
    const changed = await change(password, "seven copper kettles");
    expect(await changed.text()).toContain("is changed");
    expect([await isIn(here), await isIn(elsewhere), await isIn(cookieIn(changed))]).toEqual([false, false, true]);
    const [email = ""] = tester.split(" ");
    await expect(enter(tester)).rejects.toThrow("Not signed in");
    expect(await isIn(await enter(`${email} seven copper kettles`))).toBe(true);
  });
});

describe("an invitation", () => {
  it("is a link that the owner is shown once, and that makes an account once", async () => {
    const mine = await enter(owner);
    const invite = { form: { email: "joiner@example.org", role: "tester" } };
    const answer = await (await send("account/people/actions.ts inviteMember", [empty, invite], mine)).text();
    const link = /http:\/\/[^\s"]+\/account\/join\/[\w-]+/.exec(answer)?.[0] ?? "";
    expect(link).not.toBe("");
    const page = await fetch(link);
    expect(await page.text()).toContain("joiner@example.org");
    const token = link.split("/").at(-1) ?? "";
    const form = { token, name: "Invented Joiner", password: "a dozen wooden ladles" };
    const joined = await send("account/join/[token]/actions.ts join", [empty, { form }]);
    expect(joined.headers.get("x-action-redirect")).toContain("/account/sign-in");
    expect(await isIn(await enter("joiner@example.org a dozen wooden ladles"))).toBe(true);
    expect(await (await fetch(link)).text()).toContain("cannot be used");
    expect(await (await send("account/join/[token]/actions.ts join", [empty, { form }])).text()).toContain(
      "cannot be used",
    );
    const db = openDatabase(join(served().dataDir, "registry.db"));
    expect(JSON.stringify(await db.invitation.findMany())).not.toContain(token);
    expect(JSON.stringify(await db.auditEntry.findMany())).not.toContain(token);
    await db.$disconnect();
  });
});

describe("the process tells how it is", () => {
  it("in words and as JSON; every answer carries its request's id, and believes none that a stranger made up", async () => {
    const { base } = served();
    expect(await (await fetch(`${base}/healthz?live`)).text()).toBe("live\n");
    const ready = await fetch(`${base}/healthz`, {
      headers: { accept: "application/json", "x-request-id": "made-up-by-me" },
    });
    expect(await ready.json()).toMatchObject({
      live: true,
      ready: true,
      database: "answers",
      log: expect.stringMatching(/^head \d+, signed$/),
    });
    expect(ready.headers.get("x-request-id")).toMatch(/^[0-9a-f-]{36}$/);
  });
});
