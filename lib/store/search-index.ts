import type { Snapshot } from "../publication/snapshot.ts";
import { fold } from "../search/fold.ts";
import { compoundsOf, guessableWords, indexText } from "../search/index-text.ts";
import { padded } from "../search/trigrams.ts";
import { type Database, type Db, inTransaction } from "./database.ts";
import { itemsAsOf } from "./published.ts";

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
  await layIn(tx, snapshot, newest.seq, categoryLabel);
}

/** Lays in whatever is published and not yet indexed: an index in an older form, or a restored registry's. */
export async function indexWhatIsMissing(db: Database, categoryLabel: (category: string) => string): Promise<number> {
  const [missing] = await db.$queryRaw<{ n: number | bigint }[]>`
    SELECT count(DISTINCT slug) AS n FROM "Publication" WHERE slug NOT IN (SELECT slug FROM item_listing)`;
  if (Number(missing?.n ?? 0) === 0) return 0;
  let laidIn = 0;
  for await (const { snapshot, entry } of itemsAsOf(Number.MAX_SAFE_INTEGER, db))
    await inTransaction(db, async (tx) => {
      await forget(tx, entry.slug);
      await layIn(tx, snapshot, entry.seq, categoryLabel(snapshot.item.category));
      laidIn += 1;
    });
  return laidIn;
}

async function layIn(tx: Db, snapshot: Snapshot, seq: number, categoryLabel: string): Promise<void> {
  const texts = textsOf(snapshot, categoryLabel);
  const facets = facetsOf(snapshot);
  await tx.$executeRaw`INSERT INTO item_search (rowid, slug, name, marks, words, codes, facets)
    VALUES (${seq}, ${snapshot.slug}, ${texts.name}, ${texts.marks}, ${texts.words}, ${snapshot.item.gtin ?? ""},
      ${facets.map(facetWord).join(" ")})`;
  await tx.$executeRaw`INSERT INTO item_listing (seq, slug, name, nameKey)
    VALUES (${seq}, ${snapshot.slug}, ${snapshot.item.name}, ${fold(snapshot.item.name)})`;
  const list = JSON.stringify(facets);
  await tx.$executeRaw`INSERT INTO item_facet (seq, kind, value)
    SELECT ${seq}, json_extract(value, '$.kind'), json_extract(value, '$.value') FROM json_each(${list})`;
  await tx.$executeRaw`INSERT INTO item_facet_count (kind, value, items)
    SELECT kind, value, 1 FROM item_facet WHERE seq = ${seq} ON CONFLICT DO UPDATE SET items = items + 1`;
  await learnWords(tx, guessableWords([texts.name, texts.marks, texts.words]));
}

async function forget(tx: Db, slug: string): Promise<void> {
  const [old] = await tx.$queryRaw<{ seq: number | bigint }[]>`SELECT seq FROM item_listing WHERE slug = ${slug}`;
  if (!old) return;
  const seq = Number(old.seq);
  await tx.$executeRaw`UPDATE item_facet_count SET items = items - 1
    WHERE (kind, value) IN (SELECT kind, value FROM item_facet WHERE seq = ${seq})`;
  await tx.$executeRaw`DELETE FROM item_facet_count WHERE items <= 0`;
  await tx.$executeRaw`DELETE FROM item_facet WHERE seq = ${seq}`;
  await tx.$executeRaw`DELETE FROM item_search WHERE rowid = ${seq}`;
  await tx.$executeRaw`DELETE FROM item_listing WHERE seq = ${seq}`;
}

/** Words stay once learnt: a slip that leads to a word no item holds any longer finds nothing, and no more. */
async function learnWords(tx: Db, words: string[]): Promise<void> {
  const list = JSON.stringify(words.map((word) => ({ word, padded: padded(word) })));
  await tx.$executeRaw`INSERT INTO item_word_trigrams (rowid, padded)
    SELECT (SELECT coalesce(max(id), 0) FROM item_word) + row_number() OVER (ORDER BY json_extract(value, '$.word')),
      json_extract(value, '$.padded')
    FROM json_each(${list}) WHERE json_extract(value, '$.word') NOT IN (SELECT word FROM item_word)`;
  await tx.$executeRaw`INSERT INTO item_word (id, word)
    SELECT (SELECT coalesce(max(id), 0) FROM item_word) + row_number() OVER (ORDER BY json_extract(value, '$.word')),
      json_extract(value, '$.word')
    FROM json_each(${list}) WHERE json_extract(value, '$.word') NOT IN (SELECT word FROM item_word)`;
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
