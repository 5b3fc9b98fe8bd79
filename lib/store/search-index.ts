import type { Snapshot } from "../publication/snapshot.ts";
import { fold } from "../search/fold.ts";
import { compoundsOf, guessableWords, indexText } from "../search/index-text.ts";
import { padded } from "../search/trigrams.ts";
import { type Database, type Db, dialectOf, inTransaction } from "./database.ts";
import { objectRows, textRows } from "./dialect.ts";
import { itemsAsOf } from "./published.ts";
import { tsVector } from "./search-term.ts";

/** What items can be narrowed down by. */
export const facetKinds = ["category", "element", "verdict", "material", "age", "year"] as const;
export type FacetKind = (typeof facetKinds)[number];
export type Facet = { kind: FacetKind; value: string };

/** A facet as one word of the index: "categoryxmug". Letters and digits only, so that it is never syntax. */
export const facetWord = ({ kind, value }: Facet): string => `${kind}x${fold(value).replace(/[^\p{L}\p{N}]/gu, "")}`;

/** Puts the newest snapshot of an item into the index, in the publication's own transaction. */
export async function indexSnapshot(tx: Db, snapshot: Snapshot, categoryLabel: string): Promise<void> {
  const newest = await tx.publication.findFirstOrThrow({
    where: { slug: snapshot.slug },
    orderBy: { revision: "desc" },
    select: { seq: true },
  });
  await forget(tx, snapshot.slug);
  await layIn(tx, [{ snapshot, seq: newest.seq, categoryLabel }]);
}

/** Lays in whatever is published and not yet indexed: an index in an older form, or a restored registry's. */
export async function indexWhatIsMissing(db: Database, categoryLabel: (category: string) => string): Promise<number> {
  const [missing] = await db.$queryRaw<{ n: number | bigint }[]>`
    SELECT count(DISTINCT slug) AS n FROM "Publication" WHERE slug NOT IN (SELECT slug FROM item_listing)`;
  if (Number(missing?.n ?? 0) === 0) return 0;
  let laidIn = 0;
  let some: Indexed[] = [];
  const write = () =>
    inTransaction(db, async (tx) => {
      for (const { snapshot } of some) await forget(tx, snapshot.slug);
      await layIn(tx, some);
      laidIn += some.length;
      some = [];
    });
  for await (const { snapshot, entry } of itemsAsOf(Number.MAX_SAFE_INTEGER, db)) {
    some.push({ snapshot, seq: entry.seq, categoryLabel: categoryLabel(snapshot.item.category) });
    if (some.length === 250) await write();
  }
  if (some.length > 0) await write();
  return laidIn;
}

/** A snapshot and its number in the log, with its category in words. */
export type Indexed = { snapshot: Snapshot; seq: number; categoryLabel: string };

/** Lays items in that are not in the index yet, however many, in a few statements. */
export async function layIn(tx: Db, items: readonly Indexed[]): Promise<void> {
  const rows = items.map(({ snapshot, seq, categoryLabel }) => {
    const { slug, item } = snapshot;
    const texts = textsOf(snapshot, categoryLabel);
    const facets = facetsOf(snapshot);
    const columns = { ...texts, codes: item.gtin ?? "", facets: facets.map(facetWord).join(" ") };
    return { seq, slug, label: item.name, nameKey: fold(item.name), columns, facets, texts: Object.values(texts) };
  });
  const laid = objectRows(
    tx,
    rows.map(({ seq, slug, label, nameKey, columns }) =>
      dialectOf(tx) === "sqlite"
        ? { seq, slug, label, nameKey, ...columns }
        : { seq, slug, label, nameKey, vector: tsVector(columns) },
    ),
  );
  if (dialectOf(tx) === "sqlite")
    await tx.$executeRaw`INSERT INTO item_search (rowid, slug, name, marks, words, codes, facets)
      SELECT value ->> 'seq', value ->> 'slug', value ->> 'name', value ->> 'marks', value ->> 'words', value ->> 'codes',
        value ->> 'facets' FROM ${laid} laid`;
  else
    await tx.$executeRaw`INSERT INTO item_search (seq, slug, texts)
      SELECT CAST(value ->> 'seq' AS INTEGER), value ->> 'slug', CAST(value ->> 'vector' AS tsvector) FROM ${laid} laid`;
  await tx.$executeRaw`INSERT INTO item_listing (seq, slug, name, "nameKey")
    SELECT CAST(value ->> 'seq' AS INTEGER), value ->> 'slug', value ->> 'label', value ->> 'nameKey' FROM ${laid} laid`;
  const facets = objectRows(
    tx,
    rows.flatMap(({ seq, facets: each }) => each.map((facet) => ({ seq, ...facet }))),
  );
  await tx.$executeRaw`INSERT INTO item_facet (seq, kind, value)
    SELECT CAST(value ->> 'seq' AS INTEGER), value ->> 'kind', value ->> 'value' FROM ${facets} facets`;
  // "WHERE true" tells SQLite that ON CONFLICT belongs to the insertion.
  await tx.$executeRaw`INSERT INTO item_facet_count (kind, value, items)
    SELECT value ->> 'kind', value ->> 'value', count(*) FROM ${facets} facets WHERE true
    GROUP BY value ->> 'kind', value ->> 'value'
    ON CONFLICT (kind, value) DO UPDATE SET items = item_facet_count.items + excluded.items`;
  await learnWords(tx, guessableWords(rows.flatMap((row) => row.texts)));
}

async function forget(tx: Db, slug: string): Promise<void> {
  const [old] = await tx.$queryRaw<{ seq: number | bigint }[]>`SELECT seq FROM item_listing WHERE slug = ${slug}`;
  if (!old) return;
  const seq = Number(old.seq);
  await tx.$executeRaw`UPDATE item_facet_count SET items = items - 1
    WHERE (kind, value) IN (SELECT kind, value FROM item_facet WHERE seq = ${seq})`;
  await tx.$executeRaw`DELETE FROM item_facet_count WHERE items <= 0`;
  await tx.$executeRaw`DELETE FROM item_facet WHERE seq = ${seq}`;
  if (dialectOf(tx) === "sqlite") await tx.$executeRaw`DELETE FROM item_search WHERE rowid = ${seq}`;
  else await tx.$executeRaw`DELETE FROM item_search WHERE seq = ${seq}`;
  await tx.$executeRaw`DELETE FROM item_listing WHERE seq = ${seq}`;
}

/** Words stay once learnt: a slip that leads to a word no item holds any longer finds nothing, and no more. */
async function learnWords(tx: Db, words: string[]): Promise<void> {
  if (dialectOf(tx) === "postgres") {
    await tx.$executeRaw`INSERT INTO item_word (word)
      SELECT value FROM ${textRows(tx, words)} words ON CONFLICT (word) DO NOTHING`;
    return;
  }
  const rows = objectRows(
    tx,
    words.map((word) => ({ word, padded: padded(word) })),
  );
  await tx.$executeRaw`INSERT INTO item_word_trigrams (rowid, padded)
    SELECT (SELECT coalesce(max(id), 0) FROM item_word) + row_number() OVER (ORDER BY value ->> 'word'), value ->> 'padded'
    FROM ${rows} words WHERE value ->> 'word' NOT IN (SELECT word FROM item_word)`;
  await tx.$executeRaw`INSERT INTO item_word (id, word)
    SELECT (SELECT coalesce(max(id), 0) FROM item_word) + row_number() OVER (ORDER BY value ->> 'word'), value ->> 'word'
    FROM ${rows} words WHERE value ->> 'word' NOT IN (SELECT word FROM item_word)`;
}

function textsOf({ item, specimens }: Snapshot, categoryLabel: string): Record<"name" | "marks" | "words", string> {
  const parts = specimens.flatMap((s) => s.parts);
  return {
    name: [indexText([item.name, ...item.aliases].join(" · ")), ...[item.name, ...item.aliases].map(compoundsOf)].join(
      " ",
    ),
    marks: indexText(item.marks),
    words: indexText(
      [
        categoryLabel,
        item.maker ?? "",
        item.description,
        ...specimens.map((s) => s.dateCode ?? ""),
        ...parts.map((p) => `${p.name} ${p.material}`),
      ].join(" · "),
    ),
  };
}

function facetsOf(snapshot: Snapshot): Facet[] {
  const parts = snapshot.specimens.flatMap((s) => s.parts);
  const results = parts.flatMap((p) => p.results);
  const facets: Facet[] = [
    { kind: "category", value: snapshot.item.category },
    { kind: "age", value: snapshot.item.ageGroup },
    { kind: "year", value: snapshot.testedOn.slice(0, 4) },
    ...parts.map((part): Facet => ({ kind: "material", value: part.material })),
    ...results.map((result): Facet => ({ kind: "element", value: result.element })),
    ...results.flatMap((result): Facet[] => [
      ...(result.state === "not-detected" ? [{ kind: "verdict" as const, value: "not-detected" }] : []),
      ...result.decisions
        .filter((decision) => decision.applies === "applies")
        .map((decision) => ({ kind: "verdict" as const, value: decision.verdict })),
    ]),
  ];
  return [...new Map(facets.map((facet) => [`${facet.kind} ${facet.value}`, facet])).values()];
}
