#include "store/schema.h"

namespace oddglass::store {

// Migration 3: the vocabulary. The program's own list stands in domain/vocabulary, so only what was added or changed here has a row. A word
// is named by its uid, since it may be one of either kind.
const char* const schema3 = R"sql(
CREATE TABLE own_word (                    -- [live] words added here; retired, never deleted: old sheets name them
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  word         TEXT NOT NULL CHECK (length(trim(word)) BETWEEN 1 AND 60 AND length(word) <= 60),
  class        TEXT NOT NULL CHECK (class IN ('grain', 'roast', 'fruity', 'floral', 'hop', 'spice', 'sweet', 'sour', 'bitter', 'mouthfeel', 'yeast',
                                              'air', 'sulphur', 'spoiled', 'cellar', 'other')),
  leaning      TEXT NOT NULL CHECK (leaning IN ('fault', 'either', 'wanted')),
  meaning         TEXT NOT NULL DEFAULT '' CHECK (length(meaning) <= 1000)
) STRICT;
CREATE TRIGGER own_word_no_delete BEFORE DELETE ON own_word BEGIN SELECT RAISE(ABORT, 'own_word: retired, never deleted'); END;
CREATE TRIGGER own_word_uid_kept BEFORE UPDATE OF uid ON own_word BEGIN SELECT RAISE(ABORT, 'own_word: its uid is kept'); END;

CREATE TABLE own_word_drink (              -- [live] of which drinks it is said
  own_word_id  INTEGER NOT NULL REFERENCES own_word (id),
  kind         TEXT NOT NULL CHECK (kind IN ('beer', 'mead', 'cider', 'wine', 'other')),
  PRIMARY KEY (own_word_id, kind)
) STRICT, WITHOUT ROWID;

CREATE TABLE word_same_as (                -- [live] merged: answers with the one count as the other
  word         TEXT PRIMARY KEY CHECK (length(word) = 32 AND word NOT GLOB '*[^0-9a-f]*'),
  same_as      TEXT NOT NULL CHECK (length(same_as) = 32 AND same_as NOT GLOB '*[^0-9a-f]*'),
  CHECK (word <> same_as)
) STRICT, WITHOUT ROWID;
CREATE VIEW word_leads_to AS               -- through every merge on the way
  WITH RECURSIVE way (word, leads_to) AS (
    SELECT word, same_as FROM word_same_as
     UNION
    SELECT way.word, next.same_as FROM way JOIN word_same_as next ON next.word = way.leads_to)
  SELECT word, leads_to FROM way;
CREATE TRIGGER word_same_as_no_ring BEFORE INSERT ON word_same_as
  WHEN EXISTS (SELECT 1 FROM word_leads_to WHERE word = NEW.same_as AND leads_to = NEW.word)
  BEGIN SELECT RAISE(ABORT, 'word_same_as: a ring of words'); END;
CREATE TRIGGER word_same_as_no_update BEFORE UPDATE ON word_same_as BEGIN SELECT RAISE(ABORT, 'word_same_as: taken apart, then merged anew'); END;

CREATE TABLE word_retired (                -- [live] no longer offered
  word         TEXT PRIMARY KEY CHECK (length(word) = 32 AND word NOT GLOB '*[^0-9a-f]*'),
  at           INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE word_change (                 -- [grows] so that trends can mark where the list is another one
  id           INTEGER PRIMARY KEY,
  at           INTEGER NOT NULL,
  kind         TEXT NOT NULL CHECK (kind IN ('added', 'renamed', 'merged', 'taken_apart', 'retired', 'brought_back')),
  word         TEXT NOT NULL CHECK (length(word) = 32 AND word NOT GLOB '*[^0-9a-f]*'),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 60),   -- what it was called then; before it was renamed
  other        TEXT CHECK (length(other) = 32 AND other NOT GLOB '*[^0-9a-f]*'),
  CHECK ((other IS NOT NULL) = (kind IN ('merged', 'taken_apart')))
) STRICT;
CREATE TRIGGER word_change_no_update BEFORE UPDATE ON word_change BEGIN SELECT RAISE(ABORT, 'word_change: kept as it is'); END;
CREATE TRIGGER word_change_no_delete BEFORE DELETE ON word_change BEGIN SELECT RAISE(ABORT, 'word_change: kept as it is'); END;
)sql";

}  // namespace oddglass::store
