#include "store/schema.h"

namespace oddglass::store {

// Migration 6: batches of one recipe, what was seen in the bottle and done against a fault, cards for those who ask, and answers with the labels known.
// `batch_note` is made anew for its new kinds; the triggers that go with it are made again.
const char* const schema6 = R"sql(
ALTER TABLE beverage ADD COLUMN recipe TEXT NOT NULL DEFAULT '' CHECK (length(recipe) <= 200);  -- in own words; alike: batches of one recipe

DROP TRIGGER batch_note_no_update;
DROP TRIGGER batch_note_no_delete;
CREATE TABLE batch_note_6 (                -- [grows] a correction names the note it stands for
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id),
  replaces     INTEGER UNIQUE REFERENCES batch_note_6 (id),
  done_on      TEXT NOT NULL CHECK (done_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  kind         TEXT NOT NULL CHECK (kind IN ('reading', 'addition', 'stabilised', 'racked', 'bottled', 'other', 'changed', 'haze', 'sediment',
                                             'sulphur', 'gusher', 'withdrawn')),
  gravity      INTEGER CHECK (gravity BETWEEN 9500 AND 13000),
  level        INTEGER CHECK (level BETWEEN 0 AND 3),        -- of haze, sediment and sulphur
  word         TEXT NOT NULL DEFAULT '' CHECK (length(word) <= 60),  -- the fault that was acted against
  note         TEXT NOT NULL DEFAULT '' CHECK (length(note) <= 4000),
  CHECK (kind <> 'withdrawn' OR replaces IS NOT NULL),
  CHECK ((level IS NOT NULL) = (kind IN ('haze', 'sediment', 'sulphur')))
) STRICT;
INSERT INTO batch_note_6 (id, uid, beverage_id, replaces, done_on, kind, gravity, note)
SELECT id, uid, beverage_id, replaces, done_on, kind, gravity, note FROM batch_note ORDER BY id;
DROP TABLE batch_note;
ALTER TABLE batch_note_6 RENAME TO batch_note;
CREATE INDEX batch_note_of ON batch_note (beverage_id, done_on);
CREATE TRIGGER batch_note_no_update BEFORE UPDATE ON batch_note BEGIN SELECT RAISE(ABORT, 'batch_note: kept as it is'); END;
CREATE TRIGGER batch_note_no_delete BEFORE DELETE ON batch_note BEGIN SELECT RAISE(ABORT, 'batch_note: kept as it is'); END;

CREATE TABLE card (                        -- [person] who asked to be told how they taste
  taster_id    INTEGER PRIMARY KEY REFERENCES taster (id) ON DELETE CASCADE,
  asked_at     INTEGER NOT NULL,
  shown_at     INTEGER                     -- to themselves, before anybody else
) STRICT;

CREATE TABLE open_answer (                 -- [person] after the reveal, with the labels known
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  slot         INTEGER NOT NULL,
  item         INTEGER NOT NULL,
  value        INTEGER NOT NULL,
  at           INTEGER NOT NULL,
  PRIMARY KEY (session_id, place, slot, item),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place),
  FOREIGN KEY (session_id, slot) REFERENCES session_lot (session_id, slot),
  FOREIGN KEY (session_id, item) REFERENCES item (session_id, item)
) STRICT, WITHOUT ROWID;
CREATE TRIGGER open_answer_no_update BEFORE UPDATE ON open_answer BEGIN SELECT RAISE(ABORT, 'open_answer: never changed'); END;
CREATE TRIGGER open_answer_late BEFORE INSERT ON open_answer BEGIN
  SELECT RAISE(ABORT, 'open_answer: only after the reveal')
   WHERE (SELECT state FROM session_state WHERE session_id = NEW.session_id) <> 'revealed';
  SELECT RAISE(ABORT, 'open_answer: no such answer') WHERE NOT EXISTS
    (SELECT 1 FROM item i WHERE i.session_id = NEW.session_id AND i.item = NEW.item AND i.per_cup = 1 AND NEW.value BETWEEN i.low AND i.high);
END;
)sql";

}  // namespace oddglass::store
