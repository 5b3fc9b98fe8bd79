-- Search over published snapshots only; publication writes it in the same transaction as the snapshot.
-- Keyed by an unindexed slug, never by the rowid of a table with a text key.
CREATE VIRTUAL TABLE "item_search" USING fts5(
  slug UNINDEXED,
  name,
  marks,
  words,
  codes,
  facets,
  tokenize = "unicode61 remove_diacritics 2",
  prefix = '2 3 4'
);

-- A raw file is kept byte for byte, for ever.
CREATE TRIGGER "RawFile_no_update" BEFORE UPDATE ON "RawFile" BEGIN SELECT RAISE(ABORT, 'a raw file is never changed'); END;
CREATE TRIGGER "RawFile_no_delete" BEFORE DELETE ON "RawFile" BEGIN SELECT RAISE(ABORT, 'a raw file is never deleted'); END;

-- A published snapshot is never changed: a correction is a new revision.
CREATE TRIGGER "Publication_no_update" BEFORE UPDATE ON "Publication" BEGIN SELECT RAISE(ABORT, 'a published snapshot is never changed'); END;
CREATE TRIGGER "Publication_no_delete" BEFORE DELETE ON "Publication" BEGIN SELECT RAISE(ABORT, 'a published snapshot is never deleted'); END;
