#include "store/schema.h"

namespace oddglass::store {

// Migration 2: the other forced-choice methods ask more kinds of question, and a sequential plan is looked at after whole rounds.
// `item` is made anew for its list of kinds; the triggers that go with it are made again.
const char* const schema2 = R"sql(
DROP TRIGGER answer_fits;
DROP TRIGGER item_no_update;
DROP TRIGGER item_no_delete;
CREATE TABLE item_2 (                      -- [frozen] the questions of the sheet
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  item         INTEGER NOT NULL CHECK (item BETWEEN 1 AND 200),
  kind         TEXT NOT NULL CHECK (kind IN ('choose', 'same', 'prefer', 'sureness', 'clue', 'words')),
  low          INTEGER,
  high         INTEGER CHECK (high >= low),
  required     INTEGER NOT NULL CHECK (required IN (0, 1)),
  PRIMARY KEY (session_id, item)
) STRICT, WITHOUT ROWID;
INSERT INTO item_2 (session_id, item, kind, low, high, required) SELECT session_id, item, kind, low, high, required FROM item;
DROP TABLE item;
ALTER TABLE item_2 RENAME TO item;
CREATE TRIGGER item_no_update BEFORE UPDATE ON item BEGIN SELECT RAISE(ABORT, 'item: kept as it is'); END;
CREATE TRIGGER item_no_delete BEFORE DELETE ON item BEGIN SELECT RAISE(ABORT, 'item: kept as it is'); END;
CREATE TRIGGER answer_fits BEFORE INSERT ON answer BEGIN
  SELECT RAISE(ABORT, 'answers: no such question') WHERE NOT EXISTS
    (SELECT 1 FROM hand_in h JOIN item i ON i.session_id = h.session_id AND i.item = NEW.item
      WHERE h.id = NEW.hand_in_id AND (NEW.value IS NULL OR i.low IS NULL OR NEW.value BETWEEN i.low AND i.high));
  SELECT RAISE(ABORT, 'answers: no such cup in this flight') WHERE EXISTS
    (SELECT 1 FROM hand_in h JOIN item i ON i.session_id = h.session_id AND i.item = NEW.item
      WHERE h.id = NEW.hand_in_id AND (i.kind = 'choose' OR (i.kind = 'prefer' AND NEW.value <> 0)) AND NOT EXISTS
            (SELECT 1 FROM cup c WHERE c.session_id = h.session_id AND c.code = NEW.value AND c.place = h.place AND c.round = h.round));
END;
)sql";

}  // namespace oddglass::store
