import { join } from "node:path";
import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { openDatabase } from "@/lib/store/database.ts";
import { inviteWords, passwordLinkWords as linkWords, signInWords } from "@/lib/wording/account.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { builtActions, sendAction, signedInCookie } from "../support/ask-door.ts";
import { axe } from "../support/axe.ts";
import { desktop, keepPicture, newPage, openBrowser, overflow, phone, signIn } from "../support/browser.ts";
import { served } from "../support/served.ts";

/** What keeps a sign-in somebody's own: over HTTP, and without a browser where none is needed. */
const actions = builtActions(join(import.meta.dirname, "..", ".."));
const empty = { errors: [] };
const send = (name: string, args: readonly unknown[], cookie = "") => {
  const action = actions.get(name);
  if (!action) throw new Error(`${name} is not in the build`);
  return sendAction(served().base, action, args, { cookie, origin: served().base });
};
const enter = (credentials: string) => signedInCookie(served().base, actions, credentials);
const isIn = async (cookie: string, at = "/bench"): Promise<boolean> =>
  (await fetch(`${served().base}${at}`, { headers: { cookie }, redirect: "manual" })).status === 200;
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

it("whoever opens a page of a workplace signs in first and comes to that very page", async () => {
  const browser = await openBrowser();
  const { page, context } = await newPage(browser, { viewport: phone });
  await page.goto("/bench/readings?state=all&element=Pb");
  expect(new URL(page.url()).pathname).toBe("/account/sign-in");
  const [email = "", password = ""] = tester.split(" ");
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("main").getByRole("button", { name: "Sign in" }).click();
  await page.waitForURL(/\/bench\/readings\?state=all&element=Pb$/);
  // Without being signed in nothing of the page is made: the answer is an address alone.
  const asked = await fetch(`${served().base}/review/some-item`, {
    headers: { accept: "text/html" },
    redirect: "manual",
  });
  const to = new URL(asked.headers.get("location") ?? "", served().base);
  expect([asked.status, to.origin, to.pathname, to.searchParams.get("next"), await asked.text()]).toEqual([
    307,
    new URL(served().base).origin,
    "/account/sign-in",
    "/review/some-item",
    "/account/sign-in?next=%2Freview%2Fsome-item",
  ]);
  await context.close();
  await browser.close();
});

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

async function looksRight(page: Page, name: string): Promise<void> {
  for (const viewport of [desktop, phone]) {
    await page.setViewportSize(viewport);
    expect(await axe(page), name).toEqual([]);
    expect(await overflow(page), name).toBe(0);
    await keepPicture(page, `${name}-${viewport.width}`);
  }
}

describe("whoever has forgotten their password", () => {
  it("is told whom to ask, and comes in again by a link that the owner makes, once", async () => {
    const browser = await openBrowser();
    const [address = "", forgotten = ""] = (served().passwords["reviewer"] ?? "").split(" ");
    const before = await enter(`${address} ${forgotten}`);
    const { page } = await newPage(browser);
    await signIn(page, "owner");
    await page.goto("/account/people");
    await looksRight(page, "people");
    // Nobody gives themselves a new password without the old one.
    const links = page.getByRole("button", { name: linkWords.ask });
    expect(await links.count()).toBe((await page.locator("#people tbody tr").count()) - 1);
    const row = page.getByRole("row").filter({ hasText: address });
    await row.getByRole("button", { name: linkWords.ask }).press("Enter");
    const dialog = page.getByRole("dialog");
    await dialog.getByText(linkWords.lead).waitFor();
    await looksRight(page, "password-link-asked");
    await dialog.getByRole("button", { name: linkWords.submit }).press("Enter");
    await dialog.getByText("shown this once").waitFor();
    await looksRight(page, "password-link-made");
    expect(await dialog.evaluate((element) => element.scrollWidth - element.clientWidth)).toBe(0);
    const link =
      /http:\/\/\S+\/account\/join\/[\w-]+/.exec((await dialog.getByRole("status").textContent()) ?? "")?.[0] ?? "";
    await page.keyboard.press("Escape");
    const name = (await row.getByRole("rowheader").first().textContent()) ?? "";
    await page.getByText(inviteWords.kindOf("reviewer", name), { exact: true }).waitFor();
    await page.reload();
    expect(await page.getByText("shown this once").count()).toBe(0);
    await looksRight(page, "people-open-link");
    // Until it is used nothing has changed.
    expect(await isIn(before, "/account")).toBe(true);

    const other = (await newPage(browser, { viewport: phone })).page;
    await other.goto("/account/sign-in");
    await other.getByText(signInWords.forgotten).waitFor();
    await looksRight(other, "sign-in");
    await other.goto(link);
    await other.getByText(linkWords.for(name, address)).waitFor();
    await looksRight(other, "new-password");
    const field = other.getByLabel(linkWords.password);
    await field.fill("123456789012345");
    await field.press("Enter");
    await other
      .getByText(problemSentence({ code: "password-easy-to-guess" }))
      .first()
      .waitFor();
    await looksRight(other, "new-password-refused");
    await field.fill("nine enamel ladles");
    await field.press("Enter");
    await other.waitForURL(/\/account\/sign-in$/);
    expect(await isIn(before, "/account")).toBe(false);
    await expect(enter(`${address} ${forgotten}`)).rejects.toThrow("Not signed in");
    await other.getByLabel("E-mail").fill(address);
    await other.getByLabel("Password").fill("nine enamel ladles");
    await other.getByLabel("Password").press("Enter");
    await other.waitForURL((url) => !url.pathname.endsWith("/sign-in"));
    await other.goto(link);
    await other.getByText(problemSentence({ code: "invitation-gone" })).waitFor();
    await looksRight(other, "link-gone");
    await page.reload();
    await page.getByText(inviteWords.none).waitFor();
    await browser.close();
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
