import AxeBuilder from "@axe-core/playwright";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { keepPicture, newPage, openBrowser, overflow, phone, signIn } from "../support/browser.ts";

let browser: Browser;
let tester: Page;
let reviewer: Page;
let owner: Page;
const contexts: BrowserContext[] = [];
const noise: string[] = [];

beforeAll(async () => {
  browser = await openBrowser();
  const signedIn = async (role: "tester" | "reviewer" | "owner"): Promise<Page> => {
    const { page, context } = await newPage(browser);
    contexts.push(context);
    page.on("console", (message) => message.type() === "error" && noise.push(`${role}: ${message.text()}`));
    await signIn(page, role);
    return page;
  };
  tester = await signedIn("tester");
  reviewer = await signedIn("reviewer");
  owner = await signedIn("owner");
});
afterAll(async () => {
  for (const context of contexts) await context.close();
  await browser.close();
});

const axe = async (page: Page) =>
  (await new AxeBuilder({ page }).withTags(["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"]).analyze()).violations.map(
    (v) => `${v.id}: ${v.nodes[0]?.html ?? ""}`,
  );

/** Both schemes, both widths: no broken rule, nothing wider than the window. */
async function sound(page: Page, name: string): Promise<void> {
  for (const scheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme: scheme });
    expect(await axe(page), `${name}, ${scheme}`).toEqual([]);
  }
  await page.emulateMedia({ colorScheme: "light" });
  await keepPicture(page, `${name}-1280`);
  const wide = page.viewportSize();
  await page.setViewportSize(phone);
  expect(await overflow(page), `${name} at 390`).toBe(0);
  await keepPicture(page, `${name}-390`);
  if (wide) await page.setViewportSize(wide);
}

const handIn = async (page: Page) => {
  await page.getByRole("radio", { name: "Nothing does" }).check();
  await page.getByRole("button", { name: "Ask for a review" }).click();
  await page.getByText("Waiting for a reviewer").waitFor();
};
const takeUp = async (page: Page) => {
  await page.getByRole("radio", { name: "Nothing does" }).check();
  await page.getByRole("button", { name: "Take it up for review" }).click();
  await page.getByRole("radio", { name: /I approve/ }).waitFor();
};
const decide = async (page: Page, choice: RegExp, note = "") => {
  await page.getByRole("radio", { name: choice }).check();
  if (note !== "") await page.getByLabel("Note to the tester").fill(note);
  await page.getByRole("button", { name: "Give this decision" }).click();
};
const start = async (page: Page, kind: string, reason: string) => {
  // Folded where nothing has changed on the bench; left open by an answer to an earlier try.
  const why = page.getByLabel("Why, in words");
  if (!(await why.isVisible())) await page.getByText("Correct, bring up to date or withdraw").click();
  await page.getByRole("radio", { name: kind }).check();
  await why.fill(reason);
  await page.getByRole("button", { name: "Start this revision" }).click();
};

/** The paths of the item that waits in the queue, for bench, review and readers. */
let id = "";
let slug = "";

describe("three people take an item through review, correction and withdrawal", () => {
  it("the reviewer finds it in the queue, takes it up, remarks on a figure and a row, and sends it back", async () => {
    await reviewer.goto("/review");
    await sound(reviewer, "review-queue");
    const link = reviewer
      .getByRole("main")
      .locator('a[href^="/review/"]')
      .filter({ hasNotText: /Re-tests|Consistency|Waiting/ });
    id = (await link.first().getAttribute("href"))!.split("/").at(-1)!;
    await reviewer.goto(`/review/${id}`);
    await takeUp(reviewer);
    await reviewer.getByLabel("Remark on", { exact: true }).selectOption({ index: 2 });
    await reviewer.getByLabel("What you see or ask").fill("Why was this spot chosen?");
    await reviewer.getByRole("button", { name: "Make this remark" }).click();
    await reviewer.getByText("Why was this spot chosen?").first().waitFor();
    // A row is remarked on from where it stands.
    await reviewer.locator("#rows summary").first().click();
    await reviewer
      .locator("#rows")
      .getByRole("link", { name: /Remark/ })
      .first()
      .click();
    await expect.poll(() => reviewer.getByLabel("Remark on", { exact: true }).inputValue()).toMatch(/^reading:/);
    await reviewer.getByLabel("What you see or ask").fill("Is this row of the same place?");
    await reviewer.getByRole("button", { name: "Make this remark" }).click();
    await reviewer.getByText("Is this row of the same place?").first().waitFor();
    await sound(reviewer, "review-item");
    // Without a note it is not sent back.
    await decide(reviewer, /I send it back/);
    await reviewer
      .getByRole("alert")
      .getByText(/Please write a note/)
      .waitFor();
    await decide(reviewer, /I send it back/, "Say in the words where it was bought.");
    await reviewer.getByText("Sent back with your note").waitFor();
  });

  it("a second reviewer at once is told who has it; the tester cannot decide", async () => {
    await tester.goto(`/review/${id}`);
    expect(await tester.getByRole("radio", { name: /I approve/ }).count()).toBe(0);
    await tester.getByText(/Your role lets you read this/).waitFor();
  });

  it("the tester sees note and remarks, answers, mends and hands it in again", async () => {
    await tester.goto(`/bench/items/${id}`);
    await tester.getByText("Say in the words where it was bought.").first().waitFor();
    slug = "";
    await tester.goto(`/review/${id}`);
    const remark = tester.getByRole("region", { name: /^Remark on/ }).first();
    await remark.getByText("Answer").first().click();
    await remark.getByLabel("Your answer").fill("It is the most worn one.");
    await remark.getByRole("button", { name: "Answer" }).click();
    await tester.getByText("It is the most worn one.").first().waitFor();
    await tester.goto(`/bench/items/${id}`);
    await tester.getByText("Change the words").click();
    await tester.locator("textarea[name=description]").fill("Bought at the spring market of the invented quarter.");
    await tester.getByRole("button", { name: "Save the words" }).click();
    await tester.getByText("The words are saved.").waitFor();
    // Nothing can be published without an approval.
    expect(await tester.getByRole("button", { name: /^Publish/ }).count()).toBe(0);
    await handIn(tester);
    await keepPicture(tester, "bench-waiting-1280");
  });

  it("an approval is for what was shown: moved meanwhile, it is refused; looked at again, it is given", async () => {
    await reviewer.goto(`/review/${id}`);
    await takeUp(reviewer);
    await owner.goto(`/review/${id}`);
    await owner.getByText(/has taken this item up/).waitFor();
    await keepPicture(owner, "review-claimed-by-another-1280");
    await tester.goto(`/bench/items/${id}`);
    await tester.getByText("Change the words").click();
    await tester.locator("#marks").fill("a small crown");
    await tester.getByRole("button", { name: "Save the words" }).click();
    await tester.getByText("The words are saved.").waitFor();
    await decide(reviewer, /I approve/);
    await reviewer
      .getByRole("alert")
      .getByText(/changed this while you were looking/)
      .waitFor();
    await reviewer.goto(`/review/${id}`);
    await decide(reviewer, /I approve/);
    await reviewer.getByText("Approved. The tester can publish it").waitFor();
  });

  it("the tester publishes; the page names the reviewer and states the ties", async () => {
    await tester.goto(`/bench/items/${id}`);
    await tester.getByRole("button", { name: "Publish" }).click();
    await tester.getByText("Revision 1 is published").waitFor();
    slug = (await tester.getByRole("main").locator('a[href^="/items/"]').first().getAttribute("href"))!
      .split("/")
      .at(-1)!;
    await tester.goto(`/items/${slug}`);
    const text = await tester.getByRole("main").innerText();
    expect(text).toContain("Checked by Ritva Marrowstone");
    expect(text).toContain("Nothing ties me to whoever made or sells it.");
    expect(text).toContain("a small crown");
  });

  it("a correction goes the same way, with its reason, its difference and the old address", async () => {
    await tester.goto(`/bench/items/${id}`);
    await start(tester, "Correction of an error", "no");
    await tester
      .getByRole("alert")
      .getByText(/Please write why/)
      .waitFor();
    await start(tester, "Correction of an error", "The marks were copied from another object.");
    await tester.getByText("started as revision 2").waitFor();
    await tester.getByText("Change the words").click();
    await tester.locator("#marks").fill("no marks");
    await tester.getByRole("button", { name: "Save the words" }).click();
    await tester.getByText("The words are saved.").waitFor();
    await sound(tester, "bench-correction");
    await handIn(tester);
    await reviewer.goto(`/review/${id}`);
    await reviewer.getByRole("table", { name: /field/ }).getByText("“no marks”").waitFor();
    await takeUp(reviewer);
    await decide(reviewer, /I approve/);
    await reviewer.getByText("Approved. The tester can publish it").waitFor();
    await tester.goto(`/bench/items/${id}`);
    await tester.getByRole("button", { name: "Publish as revision 2" }).click();
    await tester.getByText("Revision 2 is published").waitFor();
    await tester.goto(`/items/${slug}/revisions/2/difference`);
    const table = await tester.getByRole("table").first().innerText();
    expect(table.replace(/\s+/g, " ")).toMatch(/maker's marks “a small crown” “no marks”/);
    await sound(tester, "difference");
    await tester.goto(`/items/${slug}/revisions/1`);
    await tester.getByText("There is a newer revision").waitFor();
    expect(await tester.locator('link[rel="canonical"]').getAttribute("href")).toMatch(new RegExp(`/items/${slug}$`));
    await tester.goto("/corrections");
    await tester.getByText("The marks were copied from another object.").waitFor();
    expect((await tester.request.get("/corrections/feed.xml")).status()).toBe(200);
    expect(await (await tester.request.get("/corrections/feed.xml")).text()).toContain("copied from another object");
    expect((await tester.request.get(`/items/${slug}/revisions/9`)).status()).toBe(404);
    expect((await tester.request.get(`/items/${slug}/revisions/1/difference`)).status()).toBe(404);
  });

  it("the owner attaches the maker's answer; it stands apart from the measurement", async () => {
    await owner.goto(`/review/${id}`);
    await owner.getByText("Attach an answer").click();
    await owner.getByLabel("From whom").fill("The invented workshop");
    await owner.getByLabel("Received on").fill("2026-11-20");
    await owner.getByLabel("The answer, word for word").fill("We have changed the glaze since.\n\nThe workshop");
    await owner.getByRole("button", { name: "Put it on the public page" }).click();
    await owner.getByText("The answer stands on the public page.").waitFor();
    await owner.goto(`/items/${slug}`);
    await owner.getByRole("heading", { name: "The maker’s answer" }).waitFor();
    expect(await owner.locator("article").getByText("We have changed the glaze since.").count()).toBe(0);
    expect(await owner.getByText("We have changed the glaze since.").count()).toBe(1);
    await sound(owner, "maker-answer");
  });

  it("a blind re-test: the owner measures without being shown the value", async () => {
    await reviewer.goto(`/review/${id}`);
    await reviewer.getByText("Ask another tester to measure it again, blind").click();
    await reviewer.getByLabel("By whom?").selectOption({ label: "Odaline Farrowby" });
    await reviewer.getByRole("button", { name: "Ask for this re-test" }).click();
    await reviewer.getByText("not handed in yet").waitFor();
    const first = (await reviewer.locator("#results").innerText()).match(/\d[\d ]* ± \d+/)?.[0];
    await owner.goto("/review/retests");
    await owner.getByRole("heading", { name: /./, level: 2 }).first().waitFor();
    await sound(owner, "retests");
    for (const path of [`/bench/items/${id}`, `/review/${id}`, "/review/retests", `/review/${id}/history`]) {
      await owner.goto(path);
      const page = await owner.content();
      if (first) expect(page, path).not.toContain(first);
      expect(page, path).not.toContain("± ");
    }
    expect((await owner.request.get(`/review/${id}/consistency`)).status()).toBe(404);
    await reviewer.goto(`/review/${id}`);
    await reviewer.getByRole("button", { name: "Call it off" }).click();
    await reviewer.getByText("called off").first().waitFor();
  });

  it("the history tells its team who did what", async () => {
    await tester.goto(`/review/${id}/history`);
    const text = (await tester.getByRole("table").innerText()).replace(/\s+/g, " ");
    for (const act of [
      "asked for a review",
      "took it up for review",
      "decided on it",
      "published it",
      "started a new revision",
      "attached a maker’s answer",
      "called a re-test off",
    ])
      expect(text).toContain(act);
    await sound(tester, "history");
  });

  it("a withdrawal keeps title, reason and hash, and the figures stay at their old address only", async () => {
    await tester.goto(`/bench/items/${id}`);
    await start(tester, "Withdrawn", "The object was not the one described.");
    await tester.getByText("started as revision 3").waitFor();
    await handIn(tester);
    await reviewer.goto(`/review/${id}`);
    await takeUp(reviewer);
    await decide(reviewer, /I approve/);
    await reviewer.getByText("Approved. The tester can publish it").waitFor();
    await tester.goto(`/bench/items/${id}`);
    await tester.getByRole("button", { name: "Withdraw as revision 3" }).click();
    await tester.getByText("Revision 3 is published").waitFor();
    await tester.goto(`/items/${slug}`);
    const text = await tester.getByRole("main").innerText();
    expect(text).toContain("The object was not the one described.");
    expect(text).toMatch(/[0-9a-f]{64}/);
    expect(text).not.toMatch(/± \d+ mg\/kg/);
    await sound(tester, "withdrawn");
    expect((await tester.request.get(`/items/${slug}/revisions/1`)).status()).toBe(200);
    expect(noise.filter((line) => !/404|410/.test(line))).toEqual([]);
  });
});

describe("the registry's own pages", () => {
  it("consistency of an item, of the registry, and the terms", async () => {
    await reviewer.goto("/review");
    const items = await owner.request.get("/healthz");
    expect(items.status()).toBe(200);
    await owner.goto("/bench");
    const bell = owner.getByRole("main").getByRole("link", { name: "Brass hand bell with turned handle" }).first();
    const other = (await bell.getAttribute("href"))?.split("/").at(-1);
    await reviewer.goto(`/review/${other}/consistency`);
    await reviewer.getByRole("heading", { name: "Where the scatter comes from" }).waitFor();
    await sound(reviewer, "consistency");
    await reviewer.goto("/review/consistency");
    await reviewer.getByRole("heading", { name: "What drifts" }).waitFor();
    await sound(reviewer, "registry-consistency");
    await owner.goto("/account/terms");
    await owner.getByRole("radio", { name: /^Two/ }).check();
    await owner.getByRole("button", { name: "Set these terms" }).click();
    await owner.getByText("The terms are set.").waitFor();
    await owner.getByRole("radio", { name: /^One/ }).check();
    await owner.getByRole("button", { name: "Set these terms" }).click();
    await owner.getByText("The terms are set.").waitFor();
    await sound(owner, "terms");
    await tester.goto("/account/terms");
    expect(tester.url()).toContain("refused=set-terms");
  });
});
