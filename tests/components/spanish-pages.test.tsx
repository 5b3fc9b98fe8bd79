import type { ReactNode } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test, vi } from "vitest";
import { ChangesTable } from "@/app/_draft/changes-table.tsx";
import { NotFoundPage } from "@/app/_site/not-found-page.tsx";
import { drawingFile } from "@/app/(catalogue)/_amount/drawing-file.ts";
import { loadAmounts } from "@/app/(catalogue)/_amount/load-amounts.ts";
import { HitList } from "@/app/(catalogue)/_item/hit-list.tsx";
import { ItemView } from "@/app/(catalogue)/_item/item-view.tsx";
import { AmountSheet, Entered } from "@/app/(catalogue)/amounts/amount-sheet.tsx";
import { AmountsForm } from "@/app/(catalogue)/amounts/amounts-form.tsx";
import LabelsPage from "@/app/(catalogue)/items/[slug]/labels/page.tsx";
import ReportPage from "@/app/(catalogue)/items/[slug]/report/page.tsx";
import { CompareTable } from "@/app/(catalogue)/items/compare/compare-table.tsx";
import LimitPage from "@/app/(catalogue)/limits/[id]/page.tsx";
import LimitsPage from "@/app/(catalogue)/limits/page.tsx";
import MethodsPage from "@/app/(catalogue)/methods/page.tsx";
import { parseAmounts } from "@/lib/amounts/amounts-form.ts";
import { listLimits } from "@/lib/limits/list-limits.ts";
import { revisionDifference } from "@/lib/publication/revision-difference.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { amountExamples } from "@/lib/wording/amount-figures.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import { limitsPageIn } from "@/lib/wording/limits-page.ts";
import { problemSentenceIn } from "@/lib/wording/problems.ts";
import { englishLeft, textsIn } from "@/tests/support/english-left.ts";
import {
  sampleCorrection,
  sampleEntry,
  sampleSnapshot,
  sampleSnapshotOf,
  sampleStates,
  sampleWithdrawal,
} from "@/tests/support/sample-snapshot.ts";

// There is no request here to wait for.
vi.mock("next/server", async (original) => ({ ...(await original<object>()), connection: async () => {} }));
/** The revision that pages to print show. */
const shown = vi.hoisted(() => ({ snapshot: null as unknown }));
vi.mock("@/app/_share/share-revision.ts", () => ({
  shareRevision: async () => {
    const snapshot = shown.snapshot as Snapshot;
    return { item: { snapshot, entry: sampleEntry(snapshot) }, newest: snapshot.revision };
  },
}));
const rendered = async (page: Promise<ReactNode>): Promise<string> => renderToStaticMarkup(await page);
vi.stubEnv("BASE_URL", "https://shelf.example");
const asked = (query: Record<string, string>) => Promise.resolve(query);

const page = (snapshot: Snapshot, others: Snapshot[] = []): string =>
  renderToStaticMarkup(
    <ItemView
      snapshot={ofTheTable(snapshot)}
      entry={sampleEntry(snapshot)}
      baseUrl="https://shelf.example"
      revisions={[...others, snapshot].map(sampleEntry)}
      changes={others.at(-1) ? revisionDifference(others.at(-1)!, snapshot) : null}
      today="2026-11-24"
      language="es"
    />,
  );
/** The sample's limits are made up and have no Spanish title; a published one is of the table. */
function ofTheTable(snapshot: Snapshot): Snapshot {
  const named = structuredClone(snapshot);
  for (const { parts } of named.specimens)
    for (const { results } of parts)
      for (const { decisions } of results)
        for (const decision of decisions)
          Object.assign(decision, { title: "Lead in paint and painted goods, 2009", jurisdiction: "United States" });
  return named;
}
/** Words of the sample that stand in attributes and within sentences told to screen readers. */
const names = ["Bluebell child's mug", "glaze, outside"];

describe("an item's page in Spanish", () => {
  test.each(sampleStates)(
    "of a part in the state %s has no English sentence outside what is marked as English",
    (state) => {
      expect(englishLeft(page(sampleSnapshotOf(state)), names)).toEqual([]);
    },
  );

  test("of a correction, a withdrawal and a whole sample neither", () => {
    expect(englishLeft(page(sampleSnapshot()), names)).toEqual([]);
    expect(englishLeft(page(sampleCorrection(), [sampleSnapshot()]), names)).toEqual([]);
    expect(englishLeft(page(sampleWithdrawal(), [sampleSnapshot(), sampleCorrection()]), names)).toEqual([]);
  });

  test("the check would see an English sentence", () => {
    const english = renderToStaticMarkup(<NotFoundPage language="en" />);
    expect(englishLeft(english.replace("<header", '<header lang="es"'))).toContain(catalogueIn.en.notFound.title);
  });

  test("marks what was written by testers as English and leads to Spanish pages", () => {
    const markup = page(sampleSnapshot());
    expect(markup).toContain(`<h1><span lang="en">${"Bluebell child&#x27;s mug"}</span></h1>`);
    expect(markup).toContain('href="/es/items/');
    // The permanent address is one for all languages.
    const english = [...markup.matchAll(/<a [^>]*href="(\/(?!es\/|api\/)[^"]*)"[^>]*>/g)].filter(
      ([link]) => !/hreflang="en"/i.test(link),
    );
    expect(english.map(([, href]) => href)).toEqual(["/items/bluebell-mug/revisions/1"]);
    expect(markup).toContain('"inLanguage":"es"');
  });

  test("writes numbers with a decimal comma and dates in words", () => {
    const texts = textsIn(page(sampleSnapshot()), "es").join(" ");
    expect(texts).toMatch(/\d,\d/);
    expect(texts).toMatch(/\d{1,2} de noviembre de 2026/);
    // A decimal point stands only in what a file wrote, in versions and in addresses of entries.
    expect(texts.match(/\d\.\d+ (?:mg|µg|%|mm)/g)).toBeNull();
  });
});

test("lists, comparisons and differences in Spanish", () => {
  const both = [sampleSnapshot(), sampleWithdrawal()];
  expect(
    englishLeft(renderToStaticMarkup(<HitList snapshots={both.map(ofTheTable)} pick language="es" />), names),
  ).toEqual([]);
  expect(
    englishLeft(renderToStaticMarkup(<CompareTable snapshots={both.map(ofTheTable)} language="es" />), names),
  ).toEqual([]);
  const changes = revisionDifference(sampleSnapshot(), sampleCorrection());
  expect(
    englishLeft(renderToStaticMarkup(<ChangesTable changes={changes} caption="campos" language="es" />), names),
  ).toEqual([]);
  expect(englishLeft(renderToStaticMarkup(<NotFoundPage language="es" />))).toEqual([]);
});

describe("limits in Spanish", () => {
  test("the whole list, of any date, and none", async () => {
    for (const when of ["", "all"])
      expect(englishLeft(await rendered(LimitsPage({ searchParams: asked({ when }), language: "es" })))).toEqual([]);
    const none = await rendered(LimitsPage({ searchParams: asked({ place: "Nowhere" }), language: "es" }));
    expect(none).toContain(limitsPageIn.es.none);
    expect(englishLeft(none)).toEqual([]);
  });
  test("every limit's own page, and links that stay in Spanish", async () => {
    const left: string[] = [];
    for (const { id } of listLimits()) {
      const markup = await rendered(LimitPage({ params: Promise.resolve({ id }), language: "es" }));
      for (const text of englishLeft(markup)) left.push(`${id}: ${text}`);
      expect(markup).not.toMatch(/href="\/limits/);
      // A decimal point stands only in sections of rules and in sources.
      expect(textsIn(markup, "es").join(" ")).not.toMatch(/\d\.\d+ (?:mg|µg|%|mm|L\b)/);
    }
    expect(left).toEqual([]);
  });
  test("a number that went down, told in Spanish", async () => {
    const markup = await rendered(LimitPage({ params: Promise.resolve({ id: "CPSIA-300" }), language: "es" }));
    expect(markup).toContain("El número pasó de 600 a 300 a 100 mg/kg");
    expect(markup).toMatch(/del 14 de agosto de 2009 al \d+ de agosto de 2011|desde el 14 de agosto de 2009/);
  });
});

describe("what is printed and passed on, in Spanish", () => {
  const props = { params: Promise.resolve({ slug: "x" }), searchParams: asked({}), language: "es" } as const;
  test.each([sampleSnapshot(), sampleCorrection(), sampleWithdrawal()])(
    "the report of revision $revision",
    async (one) => {
      shown.snapshot = ofTheTable(one);
      const markup = await rendered(ReportPage(props));
      expect(englishLeft(markup, names)).toEqual([]);
      expect(markup).toContain(`href="/es/items/${one.slug}/revisions/${one.revision}"`);
      expect(markup).toMatch(/publicada el \d+ de noviembre de 2026, \d\d:\d\d \(UTC\)/);
    },
  );
  test("the sheet of labels", async () => {
    shown.snapshot = sampleSnapshot();
    const markup = await rendered(LabelsPage(props));
    expect(englishLeft(markup, names)).toEqual([]);
    expect(markup).toContain('href="/es/items/bluebell-mug/label.svg"');
  });
  test("links to them say nothing of another language any more", () => {
    expect(page(sampleSnapshot())).not.toContain("(en inglés)");
  });
});

test("the method in Spanish", () => {
  expect(englishLeft(renderToStaticMarkup(<MethodsPage language="es" />))).toEqual([]);
});

describe("the calculator in Spanish", () => {
  const states = [
    ...amountExamples.map(({ state }) => state),
    {
      from: "shape",
      shape: "disc",
      diameter: "20",
      thickness: "2",
      densityFrom: "material",
      material: "lead-glass",
      content: "5",
      contentUnit: "%",
      loading: "40",
      over: "120",
    },
    { from: "weight", weight: "< 5", content: "140", leached: "2", volume: "250", itemWeight: "3", sealed: "yes" },
    { from: "amount", amount: "2 ± 0.1", loading: "10", over: "9.7" },
  ];
  test.each(states)("has no English sentence for %o", (given) => {
    const state = parseAmounts(given);
    const result = loadAmounts(state);
    const problems = result.problems.map((problem) => problemSentenceIn(problem, "es"));
    const errors = new Map(problems.map((text, at) => [result.problems[at]?.where?.field ?? "", text]));
    const markup = renderToStaticMarkup(
      <div>
        <AmountsForm state={state} errors={errors} language="es" />
        <Entered state={state} language="es" />
        <AmountSheet state={state} result={result} language="es" />
        <p>{problems.join(" ")}</p>
      </div>,
    );
    // What was typed stays as it was typed.
    expect(englishLeft(markup, ["2 to 3", "40 to 60", "2.5 to 3.7"])).toEqual([]);
    const file = drawingFile(result, "https://shelf.example/es/amounts", "es");
    if (file !== null) expect(englishLeft(file.replace(/<title.*?<\/title>/, ""))).toEqual([]);
  });
});
