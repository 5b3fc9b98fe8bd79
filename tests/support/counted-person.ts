import type { Locator, Page } from "playwright-core";

/**
 * A person at the bench whose actions are counted: opening an address or following a link, a click, a field filled, a choice, a file
 * chosen, a key pressed. Waiting and looking are free.
 */
export class CountedPerson {
  actions = 0;
  constructor(readonly page: Page) {}

  async #act<T>(work: Promise<T>): Promise<T> {
    this.actions += 1;
    return work;
  }
  go = (path: string) => this.#act(this.page.goto(path));
  click = (on: Locator, options: Parameters<Locator["click"]>[0] = {}) => this.#act(on.click(options));
  check = (on: Locator) => this.#act(on.check());
  fill = (on: Locator, text: string) => this.#act(on.fill(text));
  choose = (on: Locator, label: string) => this.#act(on.selectOption({ label }));
  press = (key: string) => this.#act(this.page.keyboard.press(key));
  files = (on: Locator, files: Parameters<Locator["setInputFiles"]>[0]) => this.#act(on.setInputFiles(files));
  button = (name: string | RegExp) => this.click(this.page.getByRole("main").getByRole("button", { name }).first());
  link = (name: string | RegExp) => this.click(this.page.getByRole("main").getByRole("link", { name }).first());
}

/** Presses Tab until what has the focus is called so; the presses it took. Fails after a whole round. */
export async function tabTo(page: Page, name: RegExp, most = 400): Promise<number> {
  for (let presses = 1; presses <= most; presses += 1) {
    await page.keyboard.press("Tab");
    const called = await page.evaluate(() => {
      const at = document.activeElement as HTMLElement | null;
      if (!at) return "";
      const label = (at as HTMLInputElement).labels?.[0]?.textContent;
      return (at.getAttribute("aria-label") ?? label ?? at.textContent ?? "").replace(/\s+/g, " ").trim();
    });
    if (name.test(called)) return presses;
  }
  throw new Error(`${most} presses of Tab did not come to ${name}`);
}
