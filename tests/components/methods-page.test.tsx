import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import MethodsPage from "@/app/(catalogue)/methods/page.tsx";
import { coverageTableIn } from "@/lib/wording/coverage-table.ts";

const html = renderToStaticMarkup(<MethodsPage />);

describe("the methods page's table of honest intervals", () => {
  it("says it in words first, and folds the kinds of part beneath", () => {
    const words = html.indexOf("We made up");
    expect(words).toBeGreaterThan(0);
    expect(html.indexOf("<table")).toBeGreaterThan(words);
    for (const table of html.split("<table").slice(0, -1)) {
      expect(table.lastIndexOf("<details")).toBeGreaterThan(table.lastIndexOf("</details>"));
    }
  });
  it("has a row header for every line of kinds, and stays a page of a size that loads", () => {
    const lines = coverageTableIn.en.groups.flatMap((group) => group.lines);
    expect(html.split('<th scope="row"').length - 1).toBe(lines.length);
    expect(html.length).toBeLessThan(300_000);
  });
});
