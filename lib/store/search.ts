import type { Snapshot } from "../publication/snapshot.ts";
import { type Db, database } from "./database.ts";
import { bySeq, type PublishedItem } from "./published.ts";

export type SearchQuery = {
  q: string;
  category?: string | undefined;
  element?: string | undefined;
  verdict?: string | undefined;
  cursor?: string | undefined;
  limit?: number | undefined;
};
export type SearchPage = { hits: PublishedItem[]; total: number; nextCursor: string | null };

/** Words of a question as FTS5 terms: each quoted (so that nothing is syntax) and matched as a prefix. */
export function searchTerms(q: string): string[] {
  const words = q.normalize("NFC").match(/[\p{L}\p{N}]+/gu) ?? [];
  const digits = q.replace(/[\s-]/g, "");
  if (/^\d{8,14}$/.test(digits)) return [`codes : "${digits.padStart(14, "0")}"*`];
  return words.slice(0, 12).map((word) => `"${word}"*`);
}

const facet = (kind: string, value: string): string => `${kind}x${value.replace(/[^\p{L}\p{N}]/gu, "").toLowerCase()}`;

function matchExpression(query: SearchQuery): string {
  const terms = searchTerms(query.q);
  for (const [kind, value] of [
    ["cat", query.category],
    ["el", query.element],
    ["ver", query.verdict],
  ] as const)
    if (value) terms.push(`facets : "${facet(kind, value)}"`);
  return terms.join(" AND ");
}

/** A whole number in base 36, or null where the text is none. */
const readCursor = (cursor: string | undefined): number | null => {
  if (cursor === undefined || !/^[0-9a-z]{1,10}$/.test(cursor)) return null;
  return Number.parseInt(cursor, 36);
};

/**
 * Published items that hold every word asked for, best first (names weigh most); without words, the newest first.
 * Withdrawn items stay findable: their page says what happened.
 *
 * Without words the cursor is the log number of the last item shown, so what is published meanwhile moves nothing from
 * one page to the next; with words it is how many were shown. A cursor that is none counts as the first page.
 */
export async function searchPublished(query: SearchQuery, db: Db = database()): Promise<SearchPage> {
  const limit = Math.min(query.limit ?? 20, 100);
  const cursor = readCursor(query.cursor);
  const match = matchExpression(query);
  const asked = query.q.trim() !== "";
  if (asked && searchTerms(query.q).length === 0) return { hits: [], total: 0, nextCursor: null };
  const where = match === "" ? "" : "WHERE item_search MATCH ?";
  const args = match === "" ? [] : [match];
  const found = `SELECT (SELECT max(seq) FROM "Publication" p WHERE p.slug = s.slug) AS seq FROM item_search s ${where}`;
  // One more than is shown tells whether there is a next page.
  const rows = asked
    ? await db.$queryRawUnsafe<{ seq: number | bigint }[]>(
        `${found} ORDER BY bm25(item_search, 0, 10, 6, 3, 8, 0), seq DESC LIMIT ? OFFSET ?`,
        ...args,
        limit + 1,
        cursor ?? 0,
      )
    : await db.$queryRawUnsafe<{ seq: number | bigint }[]>(
        `SELECT seq FROM (${found}) WHERE seq < ? ORDER BY seq DESC LIMIT ?`,
        ...args,
        cursor ?? Number.MAX_SAFE_INTEGER,
        limit + 1,
      );
  const [count] = await db.$queryRawUnsafe<{ n: number | bigint }[]>(
    `SELECT count(*) AS n FROM item_search ${where}`,
    ...args,
  );
  const shown = rows.slice(0, limit).map((row) => Number(row.seq));
  const next = asked ? (cursor ?? 0) + limit : shown.at(-1);
  return {
    hits: await bySeq(db, shown),
    total: Number(count?.n ?? 0),
    nextCursor: rows.length > limit && next !== undefined ? next.toString(36) : null,
  };
}

/** Puts the newest snapshot of an item into the index, in the publication's own transaction. */
export async function indexSnapshot(tx: Db, snapshot: Snapshot, categoryLabel: string): Promise<void> {
  const { item } = snapshot;
  const parts = snapshot.specimens.flatMap((s) => s.parts);
  const results = parts.flatMap((p) => p.results);
  const verdicts = results.flatMap((r) => [
    ...(r.state === "not-detected" ? ["not-detected"] : []),
    ...r.decisions.filter((d) => d.applies === "applies").map((d) => d.verdict),
  ]);
  const facets = [
    facet("cat", item.category),
    ...results.map((r) => facet("el", r.element)),
    ...verdicts.map((v) => facet("ver", v)),
  ];
  const name = [item.name, ...item.aliases].join(" · ");
  const words = [
    categoryLabel,
    item.maker ?? "",
    item.description,
    ...parts.map((p) => `${p.name} ${p.material}`),
  ].join(" · ");
  await tx.$executeRaw`DELETE FROM item_search WHERE slug = ${snapshot.slug}`;
  await tx.$executeRaw`INSERT INTO item_search (slug, name, marks, words, codes, facets)
    VALUES (${snapshot.slug}, ${name}, ${item.marks}, ${words}, ${item.gtin ?? ""}, ${[...new Set(facets)].join(" ")})`;
}
