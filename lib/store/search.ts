import { editDistance, slipsAllowed } from "../search/edit-distance.ts";
import { type Question, readQuestion } from "../search/read-question.ts";
import { trigrams } from "../search/trigrams.ts";
import { type Db, readDatabase } from "./database.ts";
import { bySeq, type PublishedItem } from "./published.ts";
import { type FacetKind, facetKinds, facetWord } from "./search-index.ts";
import { askedOf, wordsNear } from "./search-statements.ts";
import type { SearchTerm } from "./search-term.ts";

export type SearchSort = "best" | "newest" | "name";
export type SearchQuery = {
  q: string;
  sort?: SearchSort | undefined;
  cursor?: string | undefined;
  limit?: number | undefined;
} & { [kind in FacetKind]?: string | undefined };
export type SearchPage = {
  hits: PublishedItem[];
  total: number;
  nextCursor: string | null;
  /** words that no item holds, and what was looked for in their place */
  read: { typed: string; as: string }[];
};

/**
 * Only the newest so many matches are put in order of fit: beyond it a question says too little to rank by. What then holds all
 * its words in name or marks comes first, however old.
 */
const rankedMatches = 2000;

/**
 * Published items that hold every word asked for. With words the best match comes first (names weigh most, then codes and
 * marks; a phrase as it stands counts extra), without them the newest; `sort` asks for another order. A word that no item holds is read as the nearest one
 * that some item does. Withdrawn items stay findable: their page says what happened.
 *
 * Cursors stay true while items are published: by newest and by name they stand on the last item shown; by fit they
 * hold how many were shown and the number of the log at the first page, beyond which nothing is counted in. One that is none counts as the first page.
 */
export async function searchPublished(query: SearchQuery, db: Db = readDatabase()): Promise<SearchPage> {
  return pageOf(db, query, await understood(db, query));
}

/** A page with how many of all matching items have each value of each facet, the question read and the index counted once. */
export async function searchWithCounts(
  query: SearchQuery,
  db: Db = readDatabase(),
): Promise<{ page: SearchPage; counts: FacetCounts | null }> {
  const asked = await understood(db, query);
  const page = await pageOf(db, query, asked);
  return { page, counts: await countsOf(db, asked.match, page.total) };
}

async function pageOf(db: Db, query: SearchQuery, { question, read, match, closer }: Understood): Promise<SearchPage> {
  const limit = Math.min(query.limit ?? 20, 100);
  const asked = query.q.trim() !== "";
  if (asked && question.groups.length === 0) return { hits: [], total: 0, nextCursor: null, read };
  const sort = query.sort ?? (asked ? "best" : "newest");
  // One more than is shown tells whether there is a next page.
  const page = await pages[sort](db, match, query.cursor, limit + 1, closer);
  const shown = page.seqs.slice(0, limit);
  return {
    hits: await bySeq(db, shown),
    total: page.total ?? (await countMatches(db, match)),
    nextCursor: page.seqs.length > limit ? page.next(shown) : null,
    read,
  };
}

export type FacetCounts = Record<FacetKind, { value: string; items: number }[]>;

/** How many of the matching items have each value of each facet; null where too many match to count them in time. */
async function countsOf(db: Db, match: SearchTerm | null, total: number): Promise<FacetCounts | null> {
  if (match !== null && total > rankedMatches) return null;
  const rows =
    match === null
      ? await db.$queryRaw<FacetRow[]>`SELECT kind, value, items FROM item_facet_count`
      : await db.$queryRaw<FacetRow[]>`SELECT f.kind, f.value, count(*) AS items FROM item_facet f
          WHERE f.seq IN (${askedOf(db, match).seqs}) GROUP BY f.kind, f.value`;
  const byCount = rows
    .map(({ kind, value, items }) => ({ kind, value, items: Number(items) }))
    .sort((a, b) => b.items - a.items || (a.value < b.value ? -1 : 1));
  return Object.fromEntries(
    facetKinds.map((kind) => [
      kind,
      byCount.filter((row) => row.kind === kind).map(({ value, items }) => ({ value, items })),
    ]),
  ) as FacetCounts;
}

/** Items that hold all words asked for but one: near, and no evidence about what was asked for. */
export async function searchNear(q: string, limit = 3, db: Db = readDatabase()): Promise<PublishedItem[]> {
  const question = readQuestion(q);
  if (question.groups.length < 2 || question.groups.length > 6) return [];
  const read = await readSlips(db, question);
  const all = question.groups.map((_, left) => {
    const groups = question.groups.filter((_, index) => index !== left);
    return { all: groups.map((group) => groupTerm(group, read)) };
  });
  const { seqs } = await pages.best(db, { any: all }, undefined, limit);
  return bySeq(db, seqs);
}

export type Suggestion = { slug: string; name: string };

/** The first few items whose name, mark or code goes on as typed: for a list under the search field. */
export async function suggestItems(q: string, limit = 8, db: Db = readDatabase()): Promise<Suggestion[]> {
  const { question, read, match: whole } = await understood(db, { q });
  if (question.groups.length === 0) return [];
  const inNames: SearchTerm = {
    columns: ["name", "marks", "codes"],
    hold: { all: question.groups.map((group) => groupTerm(group, read)) },
  };
  const { seq, fit, holds } = askedOf(db, question.gtin.state === "ok" && whole !== null ? whole : inNames);
  return db.$queryRaw<Suggestion[]>`SELECT l.slug, l.name FROM (
      SELECT ${seq} AS seq, ${fit} AS fit FROM item_search WHERE ${holds} ORDER BY ${seq} DESC LIMIT 500) m
    JOIN item_listing l ON l.seq = m.seq ORDER BY m.fit, m.seq DESC LIMIT ${limit}`;
}

type FacetRow = { kind: string; value: string; items: number | bigint };
type SeqRow = { seq: number | bigint };
type Slips = SearchPage["read"];
type Filters = { [kind in FacetKind]?: string | undefined };

/** One word asked for: any of its forms, each the beginning of a word, or what it was read as. */
function groupTerm({ word, forms }: Question["groups"][number], read: Slips): SearchTerm {
  const meant = read.filter((slip) => slip.typed === word).map((slip) => ({ word: slip.as }));
  return { any: meant.length > 0 ? meant : forms.map((form) => ({ word: form, beginning: true })) };
}

/** What the index is asked by a question and filters; null where they ask for nothing. */
function termOf(question: Question, filters: Filters, read: Slips): SearchTerm | null {
  const facets = facetTerms(filters);
  if (question.gtin.state === "ok")
    return { all: [{ columns: ["codes"], hold: { word: question.gtin.gtin } }, ...facets] };
  if (question.groups.length === 0) return facets.length > 0 ? { all: facets } : null;
  const words: SearchTerm = { all: question.groups.map((group) => groupTerm(group, read)) };
  const phrase = question.phrase.split(" ");
  // Whoever types a mark or a name as it stands gets it first: the phrase counts on top of its words.
  const ranked: SearchTerm =
    phrase.length > 1 ? { any: [words, { columns: ["name", "marks"], hold: { phrase } }] } : words;
  return { all: [ranked, ...facets] };
}

/** The same words, all of them in names or marks; null for a product code or no words. */
function closerTerm(question: Question, filters: Filters, read: Slips): SearchTerm | null {
  if (question.gtin.state === "ok" || question.groups.length === 0) return null;
  const words: SearchTerm = { all: question.groups.map((group) => groupTerm(group, read)) };
  return { all: [{ columns: ["name", "marks"], hold: words }, ...facetTerms(filters)] };
}

const facetTerms = (filters: Filters): SearchTerm[] =>
  facetKinds.flatMap((kind): SearchTerm[] =>
    filters[kind] ? [{ columns: ["facets"], hold: { word: facetWord({ kind, value: filters[kind] }) } }] : [],
  );

/** A question read, its slips with it, and what the index is asked. */
type Understood = { question: Question; read: Slips; match: SearchTerm | null; closer: SearchTerm | null };

async function understood(db: Db, query: SearchQuery): Promise<Understood> {
  const question = readQuestion(query.q);
  const read = question.gtin.state === "ok" ? [] : await readSlips(db, question);
  const match = termOf(question, query, read);
  return { question, read, match, closer: closerTerm(question, query, read) };
}

/** For each word that begins no word of the index: the words nearest to it, where it may be a slip of one. */
async function readSlips(db: Db, question: Question): Promise<Slips> {
  const slips: Slips = [];
  for (const { word, forms } of question.groups) {
    const most = slipsAllowed(word);
    if (most === 0 || (await isBeginning(db, forms))) continue;
    const near = await wordsNear(db, word, trigrams(word));
    const measured = near
      .map((other) => ({ as: other, slips: editDistance(word, other, most) }))
      .filter((row) => row.slips <= most);
    const fewest = Math.min(...measured.map((row) => row.slips));
    for (const { as, slips: count } of measured) if (count === fewest) slips.push({ typed: word, as });
  }
  return slips;
}

async function isBeginning(db: Db, forms: string[]): Promise<boolean> {
  for (const form of forms) {
    const rows = await db.$queryRaw<{ id: number | bigint }[]>`
      SELECT id FROM item_word WHERE word >= ${form} AND word < ${`${form}\u{10ffff}`} LIMIT 1`;
    if (rows.length > 0) return true;
  }
  return false;
}

async function countMatches(db: Db, match: SearchTerm | null): Promise<number> {
  const [row] =
    match === null
      ? await db.$queryRaw<{ n: number | bigint }[]>`SELECT count(*) AS n FROM item_listing`
      : await db.$queryRaw<{ n: number | bigint }[]>`
          SELECT count(*) AS n FROM item_search WHERE ${askedOf(db, match).holds}`;
  return Number(row?.n ?? 0);
}

/** `total`: how many match in all, where the page's own statement has told it. */
type Page = { seqs: number[]; next: (shown: number[]) => string | null; total?: number };
const numbers = (rows: SeqRow[]): number[] => rows.map((row) => Number(row.seq));
const afterLast = (shown: number[]): string | null => shown.at(-1)?.toString() ?? null;

type PageOf = (
  db: Db,
  match: SearchTerm | null,
  cursor: string | undefined,
  take: number,
  closer?: SearchTerm | null,
) => Promise<Page>;

const pages: Record<SearchSort, PageOf> = {
  best: async (db, match, cursor, take, closer = null) => {
    if (match === null) return pages.newest(db, match, cursor, take);
    const [, offsetText, headText] = /^(\d{1,6})x(\d{1,12})$/.exec(cursor ?? "") ?? [];
    const offset = Number(offsetText ?? 0);
    const head = headText === undefined ? await headOf(db) : Number(headText);
    const ranked = await newestByFit(db, match, head);
    const broad = closer !== null && ranked.length === rankedMatches;
    const seqs = broad ? closerFirst(ranked, await newestMatches(db, closer, head + 1, rankedMatches)) : ranked;
    return {
      seqs: seqs.slice(offset, offset + take),
      next: (shown) => `${offset + shown.length}x${head}`,
      // Not on a later page, which leaves out what was published since; and not where only some were looked at.
      ...(cursor === undefined && ranked.length < rankedMatches ? { total: ranked.length } : {}),
    };
  },
  newest: async (db, match, cursor, take) => {
    const before = /^\d{1,12}$/.test(cursor ?? "") ? Number(cursor) : Number.MAX_SAFE_INTEGER;
    const seqs =
      match === null
        ? numbers(
            await db.$queryRaw<SeqRow[]>`
            SELECT seq FROM item_listing WHERE seq < CAST(${before} AS BIGINT) ORDER BY seq DESC LIMIT ${take}`,
          )
        : await newestMatches(db, match, before, take);
    return { seqs, next: afterLast };
  },
  name: async (db, match, cursor, take) => {
    const last = /^\d{1,12}$/.test(cursor ?? "") ? await nameKeyAt(db, Number(cursor)) : { nameKey: "", seq: 0 };
    const rows =
      match === null
        ? await db.$queryRaw<SeqRow[]>`SELECT seq FROM item_listing
            WHERE ("nameKey", seq) > (${last.nameKey}, ${last.seq}) ORDER BY "nameKey", seq LIMIT ${take}`
        : await db.$queryRaw<SeqRow[]>`SELECT seq FROM item_listing
            WHERE ("nameKey", seq) > (${last.nameKey}, ${last.seq}) AND seq IN (${askedOf(db, match).seqs})
            ORDER BY "nameKey", seq LIMIT ${take}`;
    return { seqs: numbers(rows), next: afterLast };
  },
};

/** The newest matches, the best first. */
async function newestByFit(db: Db, match: SearchTerm, head: number): Promise<number[]> {
  const { seq, fit, holds } = askedOf(db, match);
  return listed(
    await db.$queryRaw<Listed>`SELECT string_agg(CAST(seq AS text), ',' ORDER BY fit, seq DESC) AS seqs FROM (
      SELECT ${seq} AS seq, ${fit} AS fit FROM item_search
      WHERE ${holds} AND ${seq} <= CAST(${head} AS BIGINT) ORDER BY ${seq} DESC LIMIT ${rankedMatches}) m`,
  );
}

/** For more matches than are ranked: those that hold the words in name or marks, then the rest of the newest; each by fit where it is known. */
function closerFirst(ranked: number[], closer: number[]): number[] {
  const [isCloser, isRanked] = [new Set(closer), new Set(ranked)];
  return [
    ...ranked.filter((seq) => isCloser.has(seq)),
    ...closer.filter((seq) => !isRanked.has(seq)),
    ...ranked.filter((seq) => !isCloser.has(seq)),
  ];
}

/** The newest matches of those published before. */
async function newestMatches(db: Db, match: SearchTerm, before: number, take: number): Promise<number[]> {
  const { seq, holds } = askedOf(db, match);
  return listed(
    await db.$queryRaw<Listed>`SELECT string_agg(CAST(seq AS text), ',' ORDER BY seq DESC) AS seqs FROM (
      SELECT ${seq} AS seq FROM item_search
      WHERE ${holds} AND ${seq} < CAST(${before} AS BIGINT) ORDER BY ${seq} DESC LIMIT ${take}) m`,
  );
}

/** Numbers as one text: two thousand rows cost more to hand over than to find. */
type Listed = { seqs: string | null }[];
const listed = ([row]: Listed): number[] => row?.seqs?.split(",").map(Number) ?? [];

async function headOf(db: Db): Promise<number> {
  const [row] = await db.$queryRaw<SeqRow[]>`SELECT coalesce(max(seq), 0) AS seq FROM item_listing`;
  return Number(row?.seq ?? 0);
}

/** Where an item stands by name, also after a new revision has taken its number's place. */
async function nameKeyAt(db: Db, seq: number): Promise<{ nameKey: string; seq: number }> {
  const [row] = await db.$queryRaw<
    { nameKey: string; seq: number | bigint }[]
  >`SELECT l."nameKey", l.seq FROM item_listing l
    WHERE l.slug = (SELECT slug FROM "Publication" WHERE seq = CAST(${seq} AS BIGINT))`;
  return row ? { nameKey: row.nameKey, seq: Number(row.seq) } : { nameKey: "", seq: 0 };
}
