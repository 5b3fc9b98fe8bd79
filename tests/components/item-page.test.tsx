import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test } from "vitest";
import { HitList } from "@/app/(catalogue)/_item/hit-list.tsx";
import { ItemView } from "@/app/(catalogue)/_item/item-view.tsx";
import { JsonLd } from "@/app/(catalogue)/_item/json-ld.tsx";
import { itemSearchHref, readItemSearch } from "@/app/(catalogue)/items/item-search.ts";
import { revisionDifference } from "@/lib/publication/revision-difference.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { contributionSource } from "@/lib/wording/budget.ts";
import { resultText } from "@/lib/wording/formats.ts";
import { verdictText } from "@/lib/wording/verdicts.ts";
import {
  sampleCorrection,
  sampleEntry,
  sampleSnapshot,
  sampleSnapshotOf,
  sampleStates,
  sampleWithdrawal,
} from "@/tests/support/sample-snapshot.ts";

const page = (snapshot: Snapshot, others: Snapshot[] = []): string =>
  renderToStaticMarkup(
    <ItemView
      snapshot={snapshot}
      entry={sampleEntry(snapshot)}
      baseUrl="https://shelf.example"
      revisions={[...others, snapshot].map(sampleEntry)}
      changes={others.at(-1) ? revisionDifference(others.at(-1)!, snapshot) : null}
      today="2026-11-24"
    />,
  );
const text = (markup: string): string =>
  markup
    .replace(/<script.*?<\/script>/g, "")
    .replace(/<[^>]+>/g, " ")
    .replaceAll("&#x27;", "'")
    .replaceAll("&lt;", "<")
    .replaceAll("&amp;", "&")
    .replaceAll("&quot;", '"')
    .replace(/\s+/g, " ");

test("the evidence tells how deep the analyser saw, where the snapshot holds it", () => {
  const snapshot = sampleSnapshotOf("above");
  const result = snapshot.specimens[0]!.parts[0]!.results[0]!;
  expect(text(page(snapshot))).not.toContain("How deep the analyser saw");
  result.depth = { material: "glaze", line: "Pb Lβ", mm: 0.936, share: 0.99, ofThick: 0.708 };
  const words = text(page(snapshot));
  expect(words).toContain("How deep the analyser saw The analyser sees lead about 0.9 mm deep in glaze.");
  expect(words).toContain("about 71 in 100 parts of the signal");
});

describe("item page", () => {
  const snapshot = sampleSnapshot();
  const words = text(page(snapshot));

  test("answers first: the verdict stands before anything else of the result", () => {
    const answer = words.indexOf("Above the limit: lead in the part “glaze, outside”.");
    expect(answer).toBeGreaterThan(0);
    for (const later of ["How sure", "What to do", "Every result", "The evidence", "Readings:"])
      expect(words.indexOf(later), later).toBeGreaterThan(answer);
  });

  test("is complete: every result, verdict, reading as written, error, spot, reason, budget line, file and hash", () => {
    for (const part of snapshot.specimens.flatMap((specimen) => specimen.parts))
      for (const result of part.results) {
        expect(words).toContain(resultText(result));
        for (const decision of result.decisions) {
          expect(words).toContain(decision.why);
          if (decision.applies !== "other-quantity") expect(words).toContain(verdictText(decision, result));
        }
        for (const reading of result.readings) {
          if (reading.value) expect(words).toContain(` ${reading.value.text} `);
          if (reading.error) expect(words).toContain(` ${reading.error.text} `);
          if (reading.setAside) expect(words).toContain(`Set aside: ${reading.setAside.reason}`);
        }
        for (const line of result.budget) expect(words).toContain(contributionSource(line.source));
        expect(words).toContain(result.inputsDigest);
      }
    for (const file of snapshot.files) expect(words).toContain(file.sha256);
    for (const told of [
      "Rowan Vale (invented)",
      "EX-0007",
      "given to the lending shelf",
      "14 November 2026",
      "a".repeat(64),
    ])
      expect(words).toContain(told);
  });

  test.each(sampleStates)("a part in the state %s renders without a hole", (state) => {
    expect(page(sampleSnapshotOf(state))).not.toMatch(/undefined|NaN|\[object|null/);
  });

  test("never gives a verdict in words that are not ours", () => {
    expect(words).not.toMatch(/\b(il)?legal\b/i);
    expect(words.replaceAll("no known safe level", "")).not.toMatch(/\bsafe\b/i);
  });

  test("a correction shows what changed and leads to the revision before", () => {
    const markup = page(sampleCorrection(), [snapshot]);
    expect(markup).toContain("/items/bluebell-mug/revisions/1");
    expect(text(markup)).toContain("What changed against revision 1");
  });

  test("a withdrawn item says so and shows no verdict", () => {
    const markup = text(page(sampleWithdrawal()));
    expect(markup).toContain("We have taken this result back.");
    expect(markup).not.toContain("above the limit");
  });

  test("text from the item cannot become markup", () => {
    const hostile = sampleSnapshot({ item: { ...snapshot.item, name: "<script>alert(1)</script>" } });
    expect(page(hostile)).not.toContain("<script>alert");
  });
});

test("data for machines cannot end its own script", () => {
  const data = { name: "</script><script>alert(1)</script>", line: "\u2028" };
  const markup = renderToStaticMarkup(<JsonLd data={data} />);
  const inside = markup.replace(/^<script[^>]*>/, "").replace(/<\/script>$/, "");
  expect(inside).not.toContain("<");
  expect(JSON.parse(inside)).toEqual(data);
});

test("the page carries its own data for machines", () => {
  const [, inside = ""] = /<script type="application\/ld\+json">(.*?)<\/script>/.exec(page(sampleSnapshot())) ?? [];
  expect(JSON.stringify(JSON.parse(inside))).toContain("Bluebell child's mug");
});

test("a search hit tells the verdict in words and in the small strip", () => {
  const markup = renderToStaticMarkup(<HitList snapshots={[sampleSnapshot(), sampleWithdrawal()]} language="en" />);
  expect(text(markup)).toContain("Above the limit: lead in the part “glaze, outside”.");
  expect(text(markup)).toContain("Limits on the same scale: US children's products, 100 mg/kg (above the limit).");
  expect(text(markup)).toContain("We have taken this result back.");
});

describe("the address of a search", () => {
  test("is read back as it was written", () => {
    const search = { q: "blue & white, №7", category: "toy", element: "Pb", verdict: "above", cursor: "k" };
    const params = Object.fromEntries(new URL(`http://x${itemSearchHref(search)}`).searchParams);
    expect(readItemSearch(params)).toEqual(search);
  });
  test("odd parts are left out, long words cut", () => {
    const read = readItemSearch({
      q: ["a".repeat(10_000), "b"],
      category: "'; drop table",
      element: "",
      cursor: "<x>",
    });
    expect(read.q).toHaveLength(200);
    expect(read).toMatchObject({ category: undefined, element: undefined, cursor: undefined });
  });
});
