import { describe, expect, it } from "vitest";
import { atomFeed } from "@/lib/exports/atom-feed.ts";
import type { FeedFrame } from "@/lib/exports/feed-entry.ts";
import { jsonFeed } from "@/lib/exports/json-feed.ts";
import { itemsOnPage, sitemapIndex, sitemapPage, sitemapPages } from "@/lib/exports/sitemap.ts";
import { xmlText } from "@/lib/exports/xml-text.ts";
import { allLimits } from "@/lib/limits/tables/all-limits.ts";
import { englishLeft } from "../support/english-left.ts";
import { publishedSample, sampleHistory } from "../support/sample-revisions.ts";
import { sampleSnapshot } from "../support/sample-snapshot.ts";

const frame: FeedFrame = {
  baseUrl: "https://shelf.example",
  title: "Elm Street Lending Shelf",
  emptySince: "2026-11-01T00:00:00Z",
  kind: "all",
  path: "/feed.xml",
};
/** What stands between `<name…>` and `</name>`, outermost first, wherever it stands. */
const inside = (xml: string, name: string): string[] =>
  [...xml.matchAll(new RegExp(`<${name}(?: [^>]*)?>([^<]*)</${name}>`, "g"))].map((m) => m[1]!);

/** Every tag closes, in order: a well-formedness check small enough to read. */
function unbalanced(xml: string): string[] {
  const open: string[] = [];
  for (const [, slash, name, self] of xml.matchAll(/<(\/?)([\w:]+)[^>]*?(\/?)>/g))
    if (slash) {
      if (open.pop() !== name) return [`</${name}>`];
    } else if (!self) open.push(name!);
  return open;
}

describe("Atom (RFC 4287)", () => {
  const feed = atomFeed(sampleHistory(), frame);
  it("has what §4.1.1 and §4.1.2 require, newest first", () => {
    expect(unbalanced(feed.replace(/^<\?xml.*\?>\n/, ""))).toEqual([]);
    expect(inside(feed, "id")).toEqual([
      "https://shelf.example/feed.xml",
      "https://shelf.example/items/bluebell-mug/revisions/3",
      "https://shelf.example/items/rattle/revisions/2",
      "https://shelf.example/items/bluebell-mug/revisions/2",
      "https://shelf.example/items/rattle/revisions/1",
      "https://shelf.example/items/bluebell-mug/revisions/1",
    ]);
    expect(inside(feed, "title")).toHaveLength(6);
    expect(inside(feed, "updated")).toHaveLength(6);
    expect(inside(feed, "updated")[0]).toBe("2026-11-29T08:15:00+01:00");
    for (const moment of inside(feed, "updated"))
      expect(moment).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:Z|[+-]\d\d:\d\d)$/); // RFC 3339, §3.3
    expect(feed).toContain('<link rel="self" type="application/atom+xml" href="https://shelf.example/feed.xml"/>');
  });
  it("keeps an entry word for word when newer ones come", () => {
    const entries = (xml: string) => xml.match(/ {2}<entry>[\s\S]*?<\/entry>/g) ?? [];
    const earlier = entries(atomFeed(sampleHistory().slice(0, 3), frame));
    expect(entries(feed).slice(-3)).toEqual(earlier);
  });
  it("of nothing is still a feed", () => {
    const empty = atomFeed([], frame);
    expect(inside(empty, "updated")).toEqual(["2026-11-01T00:00:00Z"]);
  });
  it("escapes what comes from outside", () => {
    const hostile = publishedSample({ item: { ...sampleSnapshot().item, name: 'A & B <b>"x"\u0000\u0008' } });
    expect(atomFeed([hostile], frame)).toContain("<title>A &amp; B &lt;b&gt;&quot;x&quot;\uFFFD\uFFFD</title>");
    expect(xmlText("tab\tline\nface\u{1F600}lone\uD83D")).toBe("tab\tline\nface\u{1F600}lone\uFFFD");
  });
  it("for corrections holds corrections and withdrawals only", () => {
    const corrections = atomFeed(sampleHistory(), { ...frame, kind: "corrections", path: "/corrections/feed.xml" });
    expect(inside(corrections, "id").slice(1)).toEqual([
      "https://shelf.example/items/bluebell-mug/revisions/3",
      "https://shelf.example/items/bluebell-mug/revisions/2",
    ]);
    expect(inside(corrections, "title")[0]).toBe("Elm Street Lending Shelf: corrections");
  });
});

it("JSON Feed 1.1: version, title and items with id and content (jsonfeed.org/version/1.1)", () => {
  const feed = jsonFeed(sampleHistory(), { ...frame, path: "/feed.json" });
  expect(feed).toMatchObject({
    version: "https://jsonfeed.org/version/1.1",
    title: "Elm Street Lending Shelf",
    feed_url: "https://shelf.example/feed.json",
    home_page_url: "https://shelf.example/",
  });
  expect(feed.items.map((i) => i._revision.seq)).toEqual([5, 4, 3, 2, 1]);
  for (const item of feed.items) {
    expect(typeof item.id).toBe("string");
    expect(item.content_text).toBeTruthy();
    expect(Number.isNaN(Date.parse(item.date_published))).toBe(false);
  }
  expect(feed.items[4]?.content_text).toContain("Above the limit: lead");
  expect(feed.items[0]?.title).toBe("Bluebell child's mug (withdrawn, revision 3)");
});

describe("the feeds in Spanish", () => {
  const spanish = { ...frame, language: "es", path: "/es/feed.xml" } as const;
  /** Names and reasons are the record's own, in whatever language they were written. */
  const own = sampleHistory().flatMap(({ snapshot }) => [
    snapshot.item.name,
    ...snapshot.specimens.flatMap(({ parts }) => parts.map(({ name }) => name)),
    ...(snapshot.reason === null ? [] : [snapshot.reason]),
    ...snapshot.testers.map(({ name }) => name),
    // A limit made up for the sample has no Spanish title.
    "US paint on children's goods",
  ]);
  it("tell every entry in Spanish, and lead to Spanish pages only", () => {
    for (const kind of ["all", "corrections"] as const) {
      const xml = atomFeed(sampleHistory(), { ...spanish, kind });
      expect(xml).toContain('xml:lang="es"');
      const titles = [...inside(xml, "title"), ...inside(xml, "summary")];
      expect(titles.length).toBeGreaterThan(3);
      const left = englishLeft(titles.map((text) => `<p>${text}</p>`).join(""), [frame.title, ...own]);
      expect(left).toEqual([]);
      const links = [...xml.matchAll(/href="([^"]+)"/g)].map(([, href]) => href!);
      for (const href of [...links, ...inside(xml, "id")]) expect(href).toMatch(/^https:\/\/shelf\.example\/es(\/|$)/);
    }
    expect(atomFeed([], { ...spanish, kind: "corrections" })).toContain(`${frame.title}: correcciones`);
  });
  it("as JSON say their language and lead to the Spanish front page", () => {
    const feed = jsonFeed(sampleHistory(), { ...spanish, path: "/es/feed.json" });
    expect(feed).toMatchObject({ language: "es", home_page_url: "https://shelf.example/es" });
    for (const item of feed.items) expect(item.url).toMatch(/^https:\/\/shelf\.example\/es\/items\//);
  });
});

describe("the sitemap", () => {
  const baseUrl = "https://shelf.example";
  const rattle = { slug: "rattle", publishedAt: "2026-11-27T10:00:00Z" };
  it("lists standing pages and items, with the day of their newest revision", () => {
    const map = sitemapPage(1, [rattle], baseUrl);
    const standing = ["", "limits", "methods", "amounts", "corrections", "log"];
    const limits = allLimits.map(({ id }) => `limits/${encodeURIComponent(id)}`);
    expect(limits.length).toBeGreaterThan(200);
    // Each in both languages.
    expect(inside(map, "loc")).toEqual(
      [...standing, ...limits, "items/rattle"].flatMap((page) => [
        `https://shelf.example/${page}`,
        `https://shelf.example/es${page === "" ? "" : `/${page}`}`,
      ]),
    );
    expect(inside(map, "lastmod")).toEqual(["2026-11-27T10:00:00Z", "2026-11-27T10:00:00Z"]);
    const alternates = [...map.matchAll(/hreflang="([^"]+)" href="([^"]+)"/g)].map(
      ([, name, href]) => `${name} ${href}`,
    );
    expect(alternates.slice(-3)).toEqual([
      "en https://shelf.example/items/rattle",
      "es https://shelf.example/es/items/rattle",
      "x-default https://shelf.example/items/rattle",
    ]);
    expect(alternates).toHaveLength(3 * inside(map, "loc").length);
    expect(unbalanced(map.replace(/^<\?xml.*\?>\n/, ""))).toEqual([]);
  });
  it("has standing pages on its first page alone, and stays far below the 50,000 addresses of the protocol", () => {
    const many = Array.from({ length: itemsOnPage }, (_, i) => ({ ...rattle, slug: `mug-${i}` }));
    const standing = 2 * (6 + allLimits.length);
    expect(inside(sitemapPage(1, many, baseUrl), "loc")).toHaveLength(standing + 2 * itemsOnPage);
    expect(inside(sitemapPage(2, many, baseUrl), "loc")).toHaveLength(2 * itemsOnPage);
    expect(standing + 2 * itemsOnPage).toBeLessThan(50_000);
  });
  it("is named page by page where there are several", () => {
    expect([0, 1, itemsOnPage, itemsOnPage + 1, 2 * itemsOnPage].map(sitemapPages)).toEqual([1, 1, 1, 2, 2]);
    expect(inside(sitemapIndex(3, { baseUrl, path: "/sitemap.xml" }), "loc")).toEqual([
      "https://shelf.example/sitemap.xml?page=1",
      "https://shelf.example/sitemap.xml?page=2",
      "https://shelf.example/sitemap.xml?page=3",
    ]);
  });
});
