import { describe, expect, it } from "vitest";
import { requestFeed } from "@/lib/exports/request-feed.ts";
import { requestPage } from "@/lib/wording/test-requests.ts";
import { englishLeft } from "../support/english-left.ts";
import { publishedSample } from "../support/sample-revisions.ts";

const asked = {
  id: "r1",
  description: "blue mug <snail>",
  state: "open" as const,
  firstAt: new Date("2026-11-01T08:00:00Z"),
  answeredAt: null,
};
const baseUrl = "https://shelf.example";
const all = (xml: string, name: string) =>
  [...xml.matchAll(new RegExp(`<${name}>([^<]*)</${name}>`, "g"))].map((m) => m[1]!);

describe("the feed of one request (RFC 4287 §4.1.1: id, title, updated; entries newest first)", () => {
  it("while it waits holds the asking alone", () => {
    const feed = requestFeed({ request: asked, published: null, baseUrl });
    expect(all(feed, "id")).toEqual(["https://shelf.example/requests/r1", "https://shelf.example/requests/r1#asked"]);
    expect(all(feed, "updated")).toEqual(["2026-11-01T08:00:00.000Z", "2026-11-01T08:00:00.000Z"]);
    expect(feed).toContain("blue mug &lt;snail&gt;");
    expect(feed).toContain(requestPage.states.open);
  });
  it("is told in Spanish under its Spanish address", () => {
    const answeredAt = new Date("2026-11-03T08:00:00Z");
    const request = { ...asked, state: "tied" as const, answeredAt };
    const feed = requestFeed({ request, published: publishedSample(), baseUrl, language: "es" });
    expect(feed).toContain('xml:lang="es"');
    for (const id of all(feed, "id")) expect(id).toMatch(/^https:\/\/shelf\.example\/es\/requests\/r1/);
    const said = [...all(feed, "title"), ...all(feed, "name")].map((text) => `<p>${text}</p>`).join("");
    expect(englishLeft(said, ["blue mug <snail>"])).toEqual([]);
    expect(feed).toContain("Ensayado: «blue mug");
  });
  it("tells that it was closed, or taken up and published", () => {
    const answeredAt = new Date("2026-11-03T08:00:00Z");
    const closed = requestFeed({ request: { ...asked, state: "closed", answeredAt }, published: null, baseUrl });
    expect(all(closed, "updated")[0]).toBe("2026-11-03T08:00:00.000Z");
    expect(closed).toContain(requestPage.states.closed);
    const published = publishedSample();
    const tied = requestFeed({ request: { ...asked, state: "tied", answeredAt }, published, baseUrl });
    expect(
      all(tied, "id")
        .slice(1)
        .map((id) => id.split("#").pop()),
    ).toEqual([`revision-${published.entry.revision}`, "tied", "asked"]);
    expect(all(tied, "updated")[0]).toBe(published.entry.publishedAt);
    expect(tied).toContain("Tested: “blue mug");
    expect(tied).toContain(requestPage.notPublished);
  });
});
