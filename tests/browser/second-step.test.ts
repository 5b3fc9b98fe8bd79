import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { passwordWords, secondStepWords as words } from "@/lib/wording/account.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { axe } from "../support/axe.ts";
import { keepPicture, newPage, openBrowser, overflow, phone, signIn } from "../support/browser.ts";
import { tabTo } from "../support/counted-person.ts";
import { served } from "../support/served.ts";
import { totp } from "../support/totp.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const person = (role: string): [email: string, password: string] => {
  const [address = "", secret = ""] = (served().passwords[role] ?? "").split(" ");
  return [address, secret];
};
const session = async (page: Page): Promise<string> =>
  (await page.context().cookies()).find(({ name }) => name.endsWith("session_token"))?.value ?? "";
const mayEnter = async (page: Page): Promise<boolean> =>
  (await page.request.get("/bench", { maxRedirects: 0 })).status() === 200;

async function looksRight(page: Page, name: string): Promise<void> {
  expect(await axe(page), name).toEqual([]);
  expect(await overflow(page), name).toBe(0);
  await keepPicture(page, name);
}

async function givePassword(page: Page): Promise<void> {
  const [address, secret] = person("tester");
  await page.goto("/account/sign-in?next=/bench/readings");
  await page.getByLabel("E-mail").fill(address);
  await page.getByLabel("Password").fill(secret);
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/account\/sign-in\/code/);
}

it("a second step is turned on, asked for and turned off by keyboard, on a phone", async () => {
  const { page, context } = await newPage(browser, { viewport: phone });
  const other = await newPage(browser);
  await signIn(page, "tester");
  await signIn(other.page, "tester");
  const [, secret] = person("tester");

  await page.goto("/account");
  await looksRight(page, "second-step-account-390");
  await tabTo(page, new RegExp(`^${words.toPage(false)}$`));
  await page.keyboard.press("Enter");
  await page.waitForURL(/second-step/);
  await page.getByText(words.off).waitFor();
  await looksRight(page, "second-step-off-390");

  // A wrong password is said beside the form; nothing is made.
  await tabTo(page, new RegExp(`^${words.password}`));
  await page.keyboard.type("not theirs");
  await page.keyboard.press("Enter");
  await page.getByText(problemSentence({ code: "wrong-password" })).waitFor();
  await page.getByLabel(words.password).fill(secret);
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: words.keyTitle }).waitFor();
  // What came in the form's place has the focus.
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(words.keyTitle);
  const key = ((await page.locator("main code").first().textContent()) ?? "").replaceAll(" ", "");
  expect(key).toMatch(/^[A-Z2-7]{32,}$/);
  await looksRight(page, "second-step-key-390");
  expect(await mayEnter(other.page)).toBe(true);

  const before = await session(page);
  await tabTo(page, new RegExp(`^${words.firstCode}`));
  await page.keyboard.type("000000");
  await page.keyboard.press("Enter");
  await page
    .getByText(problemSentence({ code: "wrong-code" }))
    .first()
    .waitFor();
  const used = totp(key);
  await page.getByLabel(words.firstCode).fill(used);
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: words.codesTitle }).waitFor();
  const codes = await page.locator("main ol code").allTextContents();
  expect(codes).toHaveLength(10);
  await looksRight(page, "second-step-codes-390");
  await page.emulateMedia({ media: "print" });
  await keepPicture(page, "second-step-codes-printed");
  expect(await page.getByText(words.codesLead).isVisible()).toBe(false);
  expect(await page.locator("main ol code").first().isVisible()).toBe(true);
  await page.emulateMedia({ media: "screen" });
  // The session is another one, and the other browser is out.
  expect(await session(page)).not.toBe(before);
  expect([await mayEnter(page), await mayEnter(other.page)]).toEqual([true, false]);
  await page.reload();
  await page.getByText(words.left(10)).waitFor();
  expect(await page.getByText(codes[0] ?? "").count()).toBe(0);
  await looksRight(page, "second-step-on-390");

  // Signing in: after the password nothing is open yet, and what was open before is closed.
  const signedInBefore = `better-auth.session_token=${await session(page)}`;
  const opens = async (cookie: string): Promise<boolean> =>
    (await fetch(`${served().base}/bench`, { headers: { cookie }, redirect: "manual" })).status === 200;
  expect(await opens(signedInBefore)).toBe(true);
  await givePassword(page);
  expect(await opens(signedInBefore)).toBe(false);
  expect([await session(page), await mayEnter(page)]).toEqual(["", false]);
  await looksRight(page, "second-step-sign-in-390");
  // The code that turned it on is spent.
  await page.getByLabel(words.code, { exact: true }).fill(used);
  await page.keyboard.press("Enter");
  await page
    .getByText(problemSentence({ code: "code-used" }))
    .first()
    .waitFor();
  await looksRight(page, "second-step-code-refused-390");
  // A made-up link to this step leads nowhere but to our own pages.
  await page.goto(`/account/sign-in/code?next=${encodeURIComponent("/\t/elsewhere.example")}`);
  await page.getByLabel(words.code, { exact: true }).fill((codes[0] ?? "").replace("-", " "));
  await page.keyboard.press("Enter");
  await page.waitForURL(`${served().base}/bench`);
  expect(await mayEnter(page)).toBe(true);

  await page.goto("/account/second-step");
  await page.getByText(words.left(9)).waitFor();
  await tabTo(page, new RegExp(`^${words.password}`));
  await tabTo(page, new RegExp(`^${words.renew}`));
  await tabTo(page, new RegExp(`^${words.password}`));
  await page.keyboard.type(secret);
  await page.keyboard.press("Enter");
  await page.getByText(words.isOff).waitFor();
  await page.getByText(words.off).waitFor();
  await looksRight(page, "second-step-turned-off-390");
  await other.context.close();
  await context.close();
});

it("the owner takes a lost second step away, and that person signs in by password alone", async () => {
  const { page, context } = await newPage(browser);
  await signIn(page, "tester");
  const [, secret] = person("tester");
  await page.goto("/account/second-step");
  await page.getByLabel(words.password).fill(secret);
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: words.keyTitle }).waitFor();
  await looksRight(page, "second-step-key-1280");
  const key = ((await page.locator("main code").first().textContent()) ?? "").replaceAll(" ", "");
  await page.getByLabel(words.firstCode).fill(totp(key));
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: words.codesTitle }).waitFor();
  await looksRight(page, "second-step-codes-1280");

  const owner = await newPage(browser);
  await signIn(owner.page, "owner");
  await owner.page.goto("/account/people");
  await looksRight(owner.page, "second-step-people-1280");
  await owner.page.getByRole("button", { name: words.remove, exact: true }).click();
  await keepPicture(owner.page, "second-step-remove-1280");
  await owner.page.getByRole("button", { name: words.removeSubmit }).click();
  await owner.page.getByRole("button", { name: words.remove, exact: true }).waitFor({ state: "detached" });
  expect(await mayEnter(page)).toBe(false);
  await signIn(page, "tester");
  expect(await mayEnter(page)).toBe(true);
  await owner.page.setViewportSize(phone);
  await looksRight(owner.page, "second-step-people-390");
  await owner.context.close();
  await context.close();
});

it("a changed password leaves its owner on their page, signed in, with the sentence that it is changed", async () => {
  const { page, context } = await newPage(browser);
  await signIn(page, "reviewer");
  const [, secret] = person("reviewer");
  await page.goto("/account");
  await page.getByLabel(passwordWords.current).fill(secret);
  await page.getByLabel(passwordWords.next).fill("seven copper kettles");
  await page.getByRole("button", { name: passwordWords.submit }).click();
  await page.getByText(passwordWords.changed).waitFor();
  await page.waitForLoadState("networkidle");
  expect(new URL(page.url()).pathname).toBe("/account");
  await page.getByText(passwordWords.changed).waitFor();
  await context.close();
});
