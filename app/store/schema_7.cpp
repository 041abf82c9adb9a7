#include "store/schema.h"

namespace oddglass::store {

// Migration 7: keys that were hidden by hands and read off afterwards, places freed from the wrong person, more reasons for setting a round aside.
// `voided` is made anew for its new reasons; the triggers that go with it are made again.
const char* const schema7 = R"sql(
DROP TRIGGER voided_no_update;
DROP TRIGGER voided_no_delete;
CREATE TABLE voided_7 (                    -- [grows] a flight that cannot count; set before the reveal
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  round        INTEGER NOT NULL,
  reason       TEXT NOT NULL CHECK (reason IN ('not_sure', 'poured_wrong', 'mixed_up', 'wrong_person', 'cup_lost', 'other', 'cannot_read', 'does_not_add_up',
                                               'misread')),
  seq          INTEGER NOT NULL,
  PRIMARY KEY (session_id, place, round),
  FOREIGN KEY (session_id, place) REFERENCES place (session_id, place),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
INSERT INTO voided_7 SELECT session_id, place, round, reason, seq FROM voided;
DROP TABLE voided;
ALTER TABLE voided_7 RENAME TO voided;
CREATE TRIGGER voided_no_update BEFORE UPDATE ON voided BEGIN SELECT RAISE(ABORT, 'voided: kept as it is'); END;
CREATE TRIGGER voided_no_delete BEFORE DELETE ON voided BEGIN SELECT RAISE(ABORT, 'voided: kept as it is'); END;

-- Part of the vault, like as_poured.
CREATE TABLE found_key (                   -- [grows] what stood under the cups of a flight: box of {"lines":[[code or 0 for the cup set aside, slot or null]],"place","round"}
  session_id   INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  box          BLOB NOT NULL,
  PRIMARY KEY (session_id, seq),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
CREATE TRIGGER found_key_no_update BEFORE UPDATE ON found_key BEGIN SELECT RAISE(ABORT, 'found_key: kept as it is'); END;
CREATE TRIGGER found_key_no_delete BEFORE DELETE ON found_key BEGIN SELECT RAISE(ABORT, 'found_key: kept as it is'); END;

-- What was written in place of a code goes with the person who wrote it.
DROP TRIGGER remark_kept;
CREATE TRIGGER remark_kept BEFORE DELETE ON remark
  WHEN NOT EXISTS (SELECT 1 FROM erasure e WHERE e.session_id = OLD.session_id AND (e.place = 0 OR EXISTS
                     (SELECT 1 FROM voided v WHERE v.session_id = e.session_id AND v.place = e.place AND v.seq = OLD.seq AND v.reason = 'misread')))
  BEGIN SELECT RAISE(ABORT, 'remark: kept until erased'); END;

-- A place is freed only by the log's last entry, and only while nothing was locked there.
DROP TRIGGER place_taken_no_delete;
CREATE TRIGGER place_taken_no_delete BEFORE DELETE ON place_taken
  WHEN EXISTS (SELECT 1 FROM hand_in h WHERE h.session_id = OLD.session_id AND h.place = OLD.place)
    OR EXISTS (SELECT 1 FROM place_left l WHERE l.session_id = OLD.session_id AND l.place = OLD.place)
    OR NOT EXISTS (SELECT 1 FROM log g WHERE g.session_id = OLD.session_id AND g.kind = 'place_freed' AND g.body = '{"place":' || OLD.place || '}'
                      AND g.seq = (SELECT max(seq) FROM log WHERE session_id = OLD.session_id))
  BEGIN SELECT RAISE(ABORT, 'place_taken: kept as it is'); END;
)sql";

}  // namespace oddglass::store
