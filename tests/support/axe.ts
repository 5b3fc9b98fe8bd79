import AxeBuilder from "@axe-core/playwright";
import type { Page } from "playwright-core";

/** What the accessibility rules of WCAG 2.2 AA find on the page, one line each. */
export const axe = async (page: Page): Promise<string[]> =>
  (await new AxeBuilder({ page }).withTags(["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"]).analyze()).violations.map(
    (v) => `${v.id}: ${v.nodes[0]?.html ?? ""}`,
  );
