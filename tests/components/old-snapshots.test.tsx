import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { cardSvg } from "@/app/_share/card-svg.ts";
import { labelSvg } from "@/app/_share/label-svg.ts";
import { ItemView } from "@/app/(catalogue)/_item/item-view.tsx";
import { atomFeed } from "@/lib/exports/atom-feed.ts";
import { itemSummary, itemSummarySchema } from "@/lib/exports/item-summary.ts";
import { itemJsonLd } from "@/lib/exports/json-ld.ts";
import { readingRows, readingsCsv } from "@/lib/exports/readings-csv.ts";
import { resultsCsv } from "@/lib/exports/results-csv.ts";
import { canonicalJson } from "@/lib/publication/canonical-json.ts";
import { changedInputs } from "@/lib/publication/check-revision.ts";
import { nextLogEntry } from "@/lib/publication/log-entry.ts";
import { readSnapshot } from "@/lib/publication/read-snapshot.ts";
import { recomputeSnapshot } from "@/lib/publication/recompute.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { method } from "@/lib/reconcile/reconcile.ts";
import { resultText } from "@/lib/wording/formats.ts";

/** Texts as they were published once. A file here is never changed and never taken away; a new kind of text adds one. */
const folder = join(import.meta.dirname, "..", "publication", "fixtures");
const files = readdirSync(folder).filter((name) => name.endsWith(".txt"));
const sha256 = (data: string | Uint8Array): string => createHash("sha256").update(data).digest("hex");
const baseUrl = "https://shelf.example";

/** The SHA-256 of each on its first day. */
const firstDay: Record<string, string> = {
  "snapshot-format-1-with-inputs.txt": "46788f48bf2780981fa957797795ba9e573fc6d449dde2e7a6b01d2b463ff04d",
  "snapshot-format-1-withdrawal.txt": "885b2ee585b9b995fc4f5831255e9d5394dd639a62ac7270f47fc323b9e0ea6d",
  "snapshot-format-1.txt": "140d6fcf453b78954d1da786953035b5e890857bb0b5429b2fce673cdbbddaf6",
};

const read = (file: string): { text: string; snapshot: Snapshot } => {
  const text = readFileSync(join(folder, file), "utf8").trimEnd();
  const found = readSnapshot(text);
  if (!found.ok) throw new Error(`${file}: ${JSON.stringify(found.problems)}`);
  return { text, snapshot: found.value };
};

it("every one of them is still here, byte for byte", () => {
  expect(Object.fromEntries(files.map((file) => [file, sha256(readFileSync(join(folder, file)))]))).toEqual(firstDay);
});

describe.each(files)("%s", (file) => {
  const { text, snapshot } = read(file);
  const { entry } = nextLogEntry(snapshot, null, sha256);
  it("is read, and says the same when it is written again", () => {
    expect(canonicalJson(snapshot)).toBe(text);
    expect(entry.snapshotSha256).toBe(sha256(text));
  });
  it("is rendered as a page with every result in it", () => {
    const page = renderToStaticMarkup(
      <ItemView
        snapshot={snapshot}
        entry={entry}
        baseUrl={baseUrl}
        revisions={[entry]}
        changes={null}
        today="2026-12-01"
      />,
    );
    const words = page
      .replace(/<[^>]+>/g, " ")
      .replaceAll("&#x27;", "'")
      .replace(/\s+/g, " ");
    expect(words).toContain(snapshot.item.name);
    for (const result of snapshot.specimens.flatMap((s) => s.parts.flatMap((p) => p.results)))
      if (result.state !== "no-readings") expect(words).toContain(resultText(result).replace(/\s+/g, " "));
  });
  it("goes out in every form", () => {
    const revision = { snapshot, entry };
    expect(itemSummarySchema.parse(itemSummary(revision, baseUrl)).slug).toBe(snapshot.slug);
    expect(itemJsonLd(revision, baseUrl)["name"]).toContain(snapshot.item.name);
    expect(readingsCsv(snapshot).trimEnd().split("\r\n")).toHaveLength(readingRows(snapshot).length + 1);
    expect(resultsCsv([snapshot])).toContain("item,revision");
    const frame = {
      baseUrl,
      title: "Shelf",
      emptySince: "2026-01-01T00:00:00Z",
      kind: "all",
      path: "/feed.xml",
    } as const;
    expect(atomFeed([revision], frame)).toContain(`/items/${snapshot.slug}/revisions/${snapshot.revision}`);
    expect(cardSvg(snapshot, { baseUrl, newest: snapshot.revision, language: "es" })).toContain("</svg>");
    expect(labelSvg(snapshot, { baseUrl, language: "es" })).toContain("</svg>");
  });
  it("is made again by the method it was made by, or says that this is another", async () => {
    const made = recomputeSnapshot(snapshot);
    for (const one of made.filter(({ whole }) => whole)) {
      const { version } = one.published.method;
      const other = version !== method.version;
      expect(one.differences).toEqual(
        other ? [{ where: "method.version", published: version, recomputed: method.version }] : [],
      );
    }
    expect(await changedInputs(made, async (data) => sha256(data))).toEqual([]);
  });
});
