#include "store/schema.h"

namespace oddglass::store {

// Migration 4: score sheets. A question may be asked of each cup, in its part of the flight, about a word; what is being typed is kept until
// it is handed in. `item` is made anew for its new kinds; the triggers that go with it are made again.
const char* const schema4 = R"sql(
DROP TRIGGER answer_fits;
DROP TRIGGER item_no_update;
DROP TRIGGER item_no_delete;
CREATE TABLE item_4 (                      -- [frozen] the questions of the sheet
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  item         INTEGER NOT NULL CHECK (item BETWEEN 1 AND 200),
  kind         TEXT NOT NULL CHECK (kind IN ('choose', 'same', 'prefer', 'sureness', 'clue', 'words', 'liking', 'line', 'magnitude', 'just_right',
                                             'check', 'rank', 'split', 'behaviour', 'worst', 'change_one', 'distance')),
  low          INTEGER,
  high         INTEGER CHECK (high >= low),
  required     INTEGER NOT NULL CHECK (required IN (0, 1)),
  per_cup      INTEGER NOT NULL CHECK (per_cup IN (0, 1)),
  part         TEXT NOT NULL CHECK (part IN ('look', 'smell', 'main', 'late', 'last')),
  word         TEXT NOT NULL CHECK (length(word) <= 60),
  PRIMARY KEY (session_id, item)
) STRICT, WITHOUT ROWID;
INSERT INTO item_4 (session_id, item, kind, low, high, required, per_cup, part, word)
SELECT session_id, item, kind, low, high, required, 0, 'main', '' FROM item;
DROP TABLE item;
ALTER TABLE item_4 RENAME TO item;
CREATE TRIGGER item_no_update BEFORE UPDATE ON item BEGIN SELECT RAISE(ABORT, 'item: kept as it is'); END;
CREATE TRIGGER item_no_delete BEFORE DELETE ON item BEGIN SELECT RAISE(ABORT, 'item: kept as it is'); END;
CREATE TRIGGER answer_fits BEFORE INSERT ON answer BEGIN
  SELECT RAISE(ABORT, 'answers: no such question') WHERE NOT EXISTS
    (SELECT 1 FROM hand_in h JOIN item i ON i.session_id = h.session_id AND i.item = NEW.item
      WHERE h.id = NEW.hand_in_id AND i.per_cup = (NEW.code <> 0)
        AND (NEW.value IS NULL OR i.low IS NULL OR NEW.value BETWEEN i.low AND i.high));
  SELECT RAISE(ABORT, 'answers: no such cup in this flight') WHERE EXISTS
    (SELECT 1 FROM hand_in h JOIN item i ON i.session_id = h.session_id AND i.item = NEW.item
      WHERE h.id = NEW.hand_in_id AND (i.kind = 'choose' OR (i.kind = 'prefer' AND NEW.value <> 0)) AND NOT EXISTS
            (SELECT 1 FROM cup c WHERE c.session_id = h.session_id AND c.code = NEW.value AND c.place = h.place AND c.round = h.round));
  SELECT RAISE(ABORT, 'answers: about a cup that is not in this flight') WHERE NEW.code <> 0 AND NOT EXISTS
    (SELECT 1 FROM hand_in h JOIN cup c ON c.session_id = h.session_id AND c.code = NEW.code AND c.place = h.place AND c.round = h.round
      WHERE h.id = NEW.hand_in_id);
END;

CREATE TABLE typed (                       -- [person] what a taster has typed and not handed in yet; gone with the hand-in
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  round        INTEGER NOT NULL CHECK (round BETWEEN 1 AND 99),
  body         TEXT NOT NULL CHECK (body GLOB '[[]*]' AND length(body) <= 2000000),
  at           INTEGER NOT NULL,
  PRIMARY KEY (session_id, place),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place)
) STRICT, WITHOUT ROWID;
CREATE TRIGGER typed_gone AFTER INSERT ON hand_in BEGIN
  DELETE FROM typed WHERE session_id = NEW.session_id AND place = NEW.place;
END;
CREATE TRIGGER typed_left AFTER INSERT ON place_left BEGIN
  DELETE FROM typed WHERE session_id = NEW.session_id AND place = NEW.place;
END;
CREATE TRIGGER typed_over AFTER INSERT ON log WHEN NEW.state_after NOT IN ('sealed', 'tasting') BEGIN
  DELETE FROM typed WHERE session_id = NEW.session_id;
END;
)sql";

}  // namespace oddglass::store
