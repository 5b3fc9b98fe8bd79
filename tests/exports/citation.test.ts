import { describe, expect, it } from "vitest";
import { citation, citationTags } from "@/lib/exports/citation.ts";
import { linkHeader } from "@/lib/exports/link-header.ts";
import { publishedSample, sampleHistory } from "../support/sample-revisions.ts";

const base = "https://shelf.example";

describe("citing a revision", () => {
  const one = publishedSample();
  const made = citation(one, base);
  it("in a line of text, with the address that never changes", () => {
    expect(made.text).toBe(
      `Rowan Vale (invented). Bluebell child's mug: measured content, revision 1. Elm Street Lending Shelf (invented), 24 November 2026. https://shelf.example/items/bluebell-mug/revisions/1 (SHA-256 ${one.entry.snapshotSha256}).`,
    );
  });
  it("as BibTeX", () => {
    expect(made.bibtex).toContain("@misc{bluebell-mug-r1,");
    expect(made.bibtex).toContain("author = {{Rowan Vale (invented)}},");
    expect(made.bibtex).toContain("year = {2026},\n  month = {11},");
  });
  it("as BibTeX with every special character of LaTeX escaped", () => {
    const { bibtex } = citation(publishedSample({ testers: [{ name: "A_B & 100% {x} \\y ~ ^ # $" }] }), base);
    expect(bibtex).toContain(
      "author = {{A\\_B \\& 100\\% \\{x\\} \\textbackslash{}y \\textasciitilde{} \\textasciicircum{} \\# \\$}}",
    );
  });
  it("as CSL-JSON", () => {
    expect(made.cslJson).toMatchObject({
      type: "dataset",
      author: [{ literal: "Rowan Vale (invented)" }],
      issued: { "date-parts": [[2026, 11, 24]] },
      URL: "https://shelf.example/items/bluebell-mug/revisions/1",
    });
  });
  it("as tags: one title, at least one author, a date written with slashes", () => {
    const byName = (name: string) => made.meta.filter((m) => m.name === name).map((m) => m.content);
    expect(byName("citation_title")).toHaveLength(1);
    expect(byName("citation_author")).toEqual(["Rowan Vale (invented)"]);
    expect(byName("citation_publication_date")).toEqual(["2026/11/24"]);
    const two = citation(publishedSample({ testers: [{ name: "A" }, { name: "B" }] }), base);
    expect(citationTags(two.meta)).toMatchObject({ citation_author: ["A", "B"], citation_language: ["en"] });
    expect(citation(publishedSample({ testers: [] }), base).meta).toContainEqual({
      name: "citation_author",
      content: "Elm Street Lending Shelf (invented)",
    });
  });
});

it("the Link header names the newest, the one before and the one to cite", () => {
  const { snapshot } = sampleHistory()[2]!;
  expect(linkHeader(snapshot, base)).toContain(
    '<https://shelf.example/items/bluebell-mug/revisions/1>; rel="predecessor-version"',
  );
  expect(linkHeader(snapshot, base)).toContain('<https://shelf.example/items/bluebell-mug>; rel="latest-version"');
  expect(linkHeader({ slug: "bluebell-mug", revision: 1 }, base)).not.toContain("predecessor");
});
