import { describe, expect, it } from "vitest";
import { atomFeed } from "@/lib/exports/atom-feed.ts";
import type { FeedFrame } from "@/lib/exports/feed-entry.ts";
import { jsonFeed } from "@/lib/exports/json-feed.ts";
import { atomFaults, jsonFeedFaults } from "../support/feed-rules.ts";
import { publishedSample, sampleHistory } from "../support/sample-revisions.ts";
import { sampleSnapshot } from "../support/sample-snapshot.ts";

const frame = (kind: FeedFrame["kind"], path: string): FeedFrame => ({
  baseUrl: "https://shelf.example",
  title: "Elm Street Lending Shelf",
  emptySince: "2026-11-01T00:00:00Z",
  kind,
  path,
});
const hostile = publishedSample({ item: { ...sampleSnapshot().item, name: 'A & B <b>"x"]]>\u0000' } });
const cases = [
  ["a registry's history", sampleHistory(), "all"],
  ["corrections", sampleHistory(), "corrections"],
  ["nothing yet", [], "all"],
  ["hostile words", [hostile], "all"],
] as const;

describe("Atom, element by element as RFC 4287 has it", () => {
  it.each(cases)("a feed of %s keeps to it", (_, revisions, kind) => {
    expect(atomFaults(atomFeed(revisions, frame(kind, "/feed.xml")))).toEqual([]);
  });
  const feed = atomFeed(sampleHistory(), frame("all", "/feed.xml"));
  it.each<[string, string | RegExp, string, string]>([
    ["an entry without an id", /<entry>\s*<id>[^<]*<\/id>/, "<entry>", "entry: 0 id"],
    ["a second title", "</entry>", "<title>x</title></entry>", "entry: 2 title"],
    ["a time without an offset", /T10:00:00Z<\/updated>/, "T10:00:00</updated>", "entry, updated"],
    ["a relative id", /<id>https:\/\/shelf\.example\/items/, "<id>/items", "entry, id"],
    ["no namespace", ' xmlns="http://www.w3.org/2005/Atom"', "", "§2"],
    [
      "an author without a name",
      /<author><name>[^<]*<\/name><\/author>/,
      "<author><uri>x</uri></author>",
      "author: one name",
    ],
    ["an element of another format", "</entry>", "<pubDate>x</pubDate></entry>", "pubDate has no place"],
    ["a tag left open", "</entry>", "", "not XML"],
    ["no link to itself", 'rel="self"', 'rel="related"', "a link to itself"],
  ])("the check finds %s", (_, what, by, says) => {
    const broken = feed.replace(what, by);
    expect(broken).not.toBe(feed);
    expect(atomFaults(broken).join("; ")).toContain(says);
  });
});

describe("JSON Feed, member by member as version 1.1 has it", () => {
  const made = (revisions: Parameters<typeof jsonFeed>[0], kind: FeedFrame["kind"] = "all") =>
    JSON.parse(JSON.stringify(jsonFeed(revisions, frame(kind, "/feed.json")))) as Record<string, unknown> & {
      items: Record<string, unknown>[];
    };
  it.each(cases)("a feed of %s keeps to it", (_, revisions, kind) => {
    expect(jsonFeedFaults(made(revisions, kind))).toEqual([]);
  });
  it("the check finds what does not", () => {
    const feed = made(sampleHistory());
    const [first, ...others] = feed.items as [Record<string, unknown>, ...Record<string, unknown>[]];
    const { content_text: _, ...bare } = first;
    expect(jsonFeedFaults({ ...feed, items: [bare, ...others] })).toEqual(["item: no content"]);
    expect(jsonFeedFaults({ ...feed, items: [first, first] })).toEqual(["two items with one id"]);
    expect(jsonFeedFaults({ ...feed, version: "1.1" })).toHaveLength(1);
    expect(jsonFeedFaults({ ...feed, author: { name: "x" } })).toHaveLength(1); // version 1's member
    expect(jsonFeedFaults({ ...feed, items: [{ ...first, id: 5 }, ...others] })).toHaveLength(1);
    expect(jsonFeedFaults({ ...feed, items: [{ ...first, date_published: "29 November" }, ...others] })).toHaveLength(
      1,
    );
  });
});
