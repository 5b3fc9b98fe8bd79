-- Search, second form. The index's rowid is the number of the publication it stands for (an integer that is never used
-- again), so the newest come first without a look-up. Its texts are folded and widened by lib/search before they come
-- here. What an older registry had in the first form is laid in anew at start (lib/store/search-index.ts).
DROP TABLE "item_search";

CREATE VIRTUAL TABLE "item_search" USING fts5(
  slug UNINDEXED,
  name,
  marks,
  words,
  codes,
  facets,
  tokenize = "unicode61 remove_diacritics 2",
  prefix = '1 2 3'
);

-- What the list of items shows and sorts by, one row an item.
CREATE TABLE "item_listing" (
  seq INTEGER PRIMARY KEY,
  slug TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  nameKey TEXT NOT NULL
);
CREATE INDEX "item_listing_nameKey" ON "item_listing" (nameKey, seq);

-- What an item can be narrowed down by, and how many items have each.
CREATE TABLE "item_facet" (
  seq INTEGER NOT NULL,
  kind TEXT NOT NULL,
  value TEXT NOT NULL,
  PRIMARY KEY (seq, kind, value)
) WITHOUT ROWID;
CREATE TABLE "item_facet_count" (
  kind TEXT NOT NULL,
  value TEXT NOT NULL,
  items INTEGER NOT NULL,
  PRIMARY KEY (kind, value)
) WITHOUT ROWID;

-- Every word of the index once, and its runs of three letters, for words typed with a slip.
CREATE TABLE "item_word" (
  id INTEGER PRIMARY KEY,
  word TEXT NOT NULL UNIQUE
);
CREATE VIRTUAL TABLE "item_word_trigrams" USING fts5(padded, tokenize = "trigram", content = '', contentless_delete = 0);
