-- What is kept as it was written: raw files, publications, signed heads, the record of who did what. The same as on SQLite.
CREATE FUNCTION "refuse_change"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '% is kept as it was written', TG_TABLE_NAME;
END
$$;

CREATE TRIGGER "RawFile_no_change" BEFORE UPDATE OR DELETE ON "RawFile" FOR EACH ROW EXECUTE FUNCTION "refuse_change"();
CREATE TRIGGER "RawFile_no_truncate" BEFORE TRUNCATE ON "RawFile" FOR EACH STATEMENT EXECUTE FUNCTION "refuse_change"();
CREATE TRIGGER "Publication_no_change" BEFORE UPDATE OR DELETE ON "Publication" FOR EACH ROW EXECUTE FUNCTION "refuse_change"();
CREATE TRIGGER "Publication_no_truncate" BEFORE TRUNCATE ON "Publication" FOR EACH STATEMENT EXECUTE FUNCTION "refuse_change"();
CREATE TRIGGER "LogHead_no_change" BEFORE UPDATE OR DELETE ON "LogHead" FOR EACH ROW EXECUTE FUNCTION "refuse_change"();
CREATE TRIGGER "LogHead_no_truncate" BEFORE TRUNCATE ON "LogHead" FOR EACH STATEMENT EXECUTE FUNCTION "refuse_change"();
CREATE TRIGGER "AuditEntry_no_change" BEFORE UPDATE OR DELETE ON "AuditEntry" FOR EACH ROW EXECUTE FUNCTION "refuse_change"();
CREATE TRIGGER "AuditEntry_no_truncate" BEFORE TRUNCATE ON "AuditEntry" FOR EACH STATEMENT EXECUTE FUNCTION "refuse_change"();

-- Search over published snapshots only. Its texts are folded and widened by lib/search before they come here, so the
-- index takes every word as it is (no dictionary of any language). Words stand by their code points, as on SQLite.
CREATE EXTENSION IF NOT EXISTS pg_trgm;

-- What is looked through: names weigh most (A), then codes (B), marks (C), other words (D); facets stand among them as
-- words that begin with "=", which nothing typed can. See lib/store/search-statements.ts.
CREATE TABLE "item_search" (
  "seq" INTEGER PRIMARY KEY,
  "slug" TEXT NOT NULL,
  "texts" TSVECTOR NOT NULL
);
CREATE INDEX "item_search_texts" ON "item_search" USING gin ("texts");

-- What the list of items shows and sorts by, one row an item.
CREATE TABLE "item_listing" (
  "seq" INTEGER PRIMARY KEY,
  "slug" TEXT NOT NULL UNIQUE,
  "name" TEXT NOT NULL,
  "nameKey" TEXT COLLATE "C" NOT NULL
);
CREATE INDEX "item_listing_nameKey" ON "item_listing" ("nameKey", "seq");

-- What an item can be narrowed down by, and how many items have each.
CREATE TABLE "item_facet" (
  "seq" INTEGER NOT NULL,
  "kind" TEXT NOT NULL,
  "value" TEXT NOT NULL,
  PRIMARY KEY ("seq", "kind", "value")
);
CREATE TABLE "item_facet_count" (
  "kind" TEXT NOT NULL,
  "value" TEXT NOT NULL,
  "items" INTEGER NOT NULL,
  PRIMARY KEY ("kind", "value")
);

-- Every word of the index once, and its runs of three letters, for words typed with a slip.
CREATE TABLE "item_word" (
  "id" INTEGER GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  "word" TEXT COLLATE "C" NOT NULL UNIQUE
);
CREATE INDEX "item_word_trigrams" ON "item_word" USING gist ("word" gist_trgm_ops);
