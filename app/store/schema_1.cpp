#include "store/schema.h"

namespace oddglass::store {

// Migration 1. Every table is STRICT. The kinds of table:
//   [live] may be edited   [frozen] written once, by the seal   [grows] only added to   [person] may be erased
// at, *_at are milliseconds since 1970 UTC and never order anything; *_on is a day, YYYY-MM-DD. uid is 32 hex digits and names a record
// in every store; integer ids never leave the file. A cup is named by its code and nothing else, so no id betrays the order of making.
const char* const schema1 = R"sql(
CREATE TABLE store (                       -- [live] one row
  one          INTEGER PRIMARY KEY CHECK (one = 1),
  uid          TEXT NOT NULL CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  created_at   INTEGER NOT NULL,
  made_by      TEXT NOT NULL
) STRICT;

CREATE TABLE house_rules (                 -- [live] one row
  one          INTEGER PRIMARY KEY CHECK (one = 1),
  ceiling_g    INTEGER NOT NULL DEFAULT 20 CHECK (ceiling_g BETWEEN 1 AND 100),
  country      TEXT NOT NULL DEFAULT 'GB' CHECK (length(country) = 2)
) STRICT;

CREATE TABLE backup_made (                 -- [live] so that an erasure can name the older copies that still hold the person
  path         TEXT PRIMARY KEY,
  at           INTEGER NOT NULL,
  reason       TEXT NOT NULL CHECK (reason IN ('asked', 'before_migration', 'after_reveal', 'before_restore'))
) STRICT;

-- The shelf ----------------------------------------------------------------------------------------------------------
CREATE TABLE beverage (                    -- [live]
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  origin       TEXT NOT NULL CHECK (origin IN ('batch', 'reference')),
  kind         TEXT NOT NULL CHECK (kind IN ('beer', 'mead', 'cider', 'wine', 'other')),
  name         TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  og           INTEGER CHECK (og BETWEEN 9500 AND 13000),
  fg           INTEGER CHECK (fg BETWEEN 9500 AND 13000),
  abv_bp       INTEGER CHECK (abv_bp BETWEEN 0 AND 9600),
  abv_from     TEXT CHECK (abv_from IN ('label', 'gravities', 'measured', 'guess')),
  ingredients  TEXT NOT NULL DEFAULT 'not_known' CHECK (ingredients IN ('known', 'none', 'not_known')),
  archived_at  INTEGER,
  CHECK ((abv_bp IS NULL) = (abv_from IS NULL)),
  CHECK (og IS NULL OR fg IS NULL OR og >= fg)
) STRICT;

CREATE TABLE beverage_allergen (           -- [live]
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id) ON DELETE CASCADE,
  allergen     TEXT NOT NULL CHECK (allergen IN ('gluten', 'egg', 'fish', 'milk', 'nuts', 'peanuts', 'soy', 'sesame', 'mustard',
                                                 'celery', 'lupin', 'molluscs', 'crustaceans', 'sulphites')),
  PRIMARY KEY (beverage_id, allergen)
) STRICT, WITHOUT ROWID;

CREATE TABLE taster (                      -- [person] the only place where a name stands
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  name         TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 100),
  nickname     TEXT NOT NULL DEFAULT '' CHECK (length(nickname) <= 60),
  is_brewer    INTEGER NOT NULL DEFAULT 0 CHECK (is_brewer IN (0, 1)),
  archived_at  INTEGER
) STRICT;
CREATE UNIQUE INDEX one_brewer ON taster (is_brewer) WHERE is_brewer = 1;

CREATE TABLE beverage_maker (              -- [live] who had a hand in a batch
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id) ON DELETE CASCADE,
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  PRIMARY KEY (beverage_id, taster_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX beverage_maker_taster ON beverage_maker (taster_id);
CREATE VIEW made_by AS                     -- a batch for which nobody is named was made by the brewer
  SELECT beverage_id, taster_id FROM beverage_maker
   UNION ALL
  SELECT b.id, t.id FROM beverage b JOIN taster t ON t.is_brewer = 1
   WHERE b.origin = 'batch' AND NOT EXISTS (SELECT 1 FROM beverage_maker m WHERE m.beverage_id = b.id);

CREATE TABLE lot (                         -- [live]
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id),
  name         TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200),
  packaged_on  TEXT CHECK (packaged_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  best_before  TEXT CHECK (best_before GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  bottle_ml    INTEGER NOT NULL CHECK (bottle_ml BETWEEN 1 AND 100000),
  storage      TEXT NOT NULL DEFAULT '' CHECK (length(storage) <= 200),
  source       TEXT NOT NULL DEFAULT '' CHECK (length(source) <= 200),
  archived_at  INTEGER
) STRICT;
CREATE INDEX lot_of_beverage ON lot (beverage_id);

CREATE TABLE stock_move (                  -- [grows] the count is the sum; a wrong count is put right by 'counted'
  id           INTEGER PRIMARY KEY,
  lot_id       INTEGER NOT NULL REFERENCES lot (id),
  session_id   INTEGER REFERENCES session (id),
  at           INTEGER NOT NULL,
  kind         TEXT NOT NULL CHECK (kind IN ('added', 'counted', 'poured', 'given', 'lost', 'held', 'freed')),
  bottles      INTEGER NOT NULL,
  CHECK (CASE kind WHEN 'added' THEN bottles > 0 WHEN 'counted' THEN 1 WHEN 'held' THEN bottles < 0 WHEN 'freed' THEN bottles > 0
                   ELSE bottles < 0 END)
) STRICT;                                  -- before the reveal only 'held', by the worst case over all orders; 'poured' is booked at the reveal
CREATE INDEX stock_move_of_lot ON stock_move (lot_id);
CREATE INDEX stock_move_of_session ON stock_move (session_id);

CREATE TABLE batch_note (                  -- [grows] a correction names the note it stands for
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id),
  replaces     INTEGER UNIQUE REFERENCES batch_note (id),
  done_on      TEXT NOT NULL CHECK (done_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  kind         TEXT NOT NULL CHECK (kind IN ('reading', 'addition', 'stabilised', 'racked', 'bottled', 'other', 'withdrawn')),
  gravity      INTEGER CHECK (gravity BETWEEN 9500 AND 13000),
  note         TEXT NOT NULL DEFAULT '' CHECK (length(note) <= 4000),
  CHECK (kind <> 'withdrawn' OR replaces IS NOT NULL)
) STRICT;
CREATE INDEX batch_note_of ON batch_note (beverage_id, done_on);

-- Sessions -----------------------------------------------------------------------------------------------------------
CREATE TABLE session (                     -- [live] title and archiving only; everything else is plan or log
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  title        TEXT NOT NULL CHECK (length(title) <= 200),
  guest_title  TEXT NOT NULL DEFAULT '' CHECK (length(guest_title) <= 200),
  came_from    TEXT NOT NULL CHECK (came_from IN ('here', 'import', 'demo')),
  created_at   INTEGER NOT NULL,
  archived_at  INTEGER
) STRICT;

CREATE TABLE session_draft (               -- [live] the plan while it is being made, saved at every step; gone after the seal
  session_id   INTEGER PRIMARY KEY REFERENCES session (id) ON DELETE CASCADE,
  body         TEXT NOT NULL CHECK (body GLOB '{*}'),
  changed_at   INTEGER NOT NULL
) STRICT;

CREATE TABLE transition (                  -- what the log may say in which state; filled from the table in the program when the file is made
  state        TEXT NOT NULL,
  kind         TEXT NOT NULL,
  state_after  TEXT NOT NULL,
  PRIMARY KEY (state, kind)
) STRICT, WITHOUT ROWID;

CREATE TABLE log (                         -- [grows] one chain a session; its last entry is the state. No names, no words, nothing of the key.
  session_id   INTEGER NOT NULL REFERENCES session (id),
  seq          INTEGER NOT NULL CHECK (seq >= 1),
  at           INTEGER NOT NULL,
  kind         TEXT NOT NULL,
  state_after  TEXT NOT NULL,
  body         TEXT NOT NULL CHECK (body GLOB '{*}'),     -- canonical JSON; these bytes are hashed and never migrated
  prev         BLOB NOT NULL CHECK (length(prev) = 32),
  hash         BLOB NOT NULL CHECK (length(hash) = 32),   -- sha256(prev || canonical{"at","body","kind","seq","session","state"})
  PRIMARY KEY (session_id, seq)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER log_follows BEFORE INSERT ON log BEGIN
  SELECT RAISE(ABORT, 'log: entry out of order')
   WHERE NEW.seq <> 1 + coalesce((SELECT max(seq) FROM log WHERE session_id = NEW.session_id), 0);
  SELECT RAISE(ABORT, 'log: entry does not continue the chain')
   WHERE NEW.prev IS NOT coalesce((SELECT hash FROM log WHERE session_id = NEW.session_id ORDER BY seq DESC LIMIT 1), zeroblob(32));
  SELECT RAISE(ABORT, 'log: not allowed in this state')
   WHERE NOT EXISTS (SELECT 1 FROM transition t
                      WHERE t.kind = NEW.kind AND t.state_after = NEW.state_after
                        AND t.state = coalesce((SELECT state_after FROM log WHERE session_id = NEW.session_id ORDER BY seq DESC LIMIT 1), 'draft'));
END;

CREATE VIEW session_state AS
  SELECT s.id AS session_id,
         coalesce((SELECT state_after FROM log WHERE session_id = s.id ORDER BY seq DESC LIMIT 1), 'draft') AS state
    FROM session s;

CREATE TRIGGER draft_only_before_seal BEFORE INSERT ON session_draft
  WHEN EXISTS (SELECT 1 FROM log WHERE session_id = NEW.session_id)
  BEGIN SELECT RAISE(ABORT, 'draft: the plan is sealed'); END;

-- What the seal writes, in one transaction with its log entry.
CREATE TABLE session_plan (                -- [frozen] names, strengths, allergens as they were; reports read these, never the live shelf
  session_id   INTEGER PRIMARY KEY REFERENCES session (id),
  body         TEXT NOT NULL CHECK (body GLOB '{*}'),     -- canonical JSON, hashed
  question     TEXT NOT NULL,              -- as in the body, for lists
  commitment   BLOB NOT NULL CHECK (length(commitment) = 32),
  seal_mark    TEXT NOT NULL CHECK (length(seal_mark) = 11)
) STRICT;

CREATE TABLE session_lot (                 -- [frozen] slot = the order in which the plan names its lots
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  slot         INTEGER NOT NULL CHECK (slot BETWEEN 1 AND 40),
  lot_id       INTEGER NOT NULL REFERENCES lot (id),
  PRIMARY KEY (session_id, slot)
) STRICT, WITHOUT ROWID;
CREATE INDEX session_lot_lot ON session_lot (lot_id);

CREATE TABLE promise (                     -- [person] what will be done in each outcome; the plan holds the digests
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  outcome      TEXT NOT NULL CHECK (outcome IN ('shown', 'not_shown', 'alike')),
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 500),
  PRIMARY KEY (session_id, outcome)
) STRICT, WITHOUT ROWID;

CREATE TABLE invited (                     -- [person] who was counted at the plan, and who pours
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  pours        INTEGER NOT NULL CHECK (pours IN (0, 1)),
  is_maker     INTEGER NOT NULL CHECK (is_maker IN (0, 1)),
  PRIMARY KEY (session_id, taster_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX invited_taster ON invited (taster_id);

CREATE TABLE item (                        -- [frozen] the questions of the sheet
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  item         INTEGER NOT NULL CHECK (item BETWEEN 1 AND 200),
  kind         TEXT NOT NULL CHECK (kind IN ('choose', 'sureness', 'clue', 'words')),
  low          INTEGER,
  high         INTEGER CHECK (high >= low),
  required     INTEGER NOT NULL CHECK (required IN (0, 1)),
  PRIMARY KEY (session_id, item)
) STRICT, WITHOUT ROWID;

CREATE TABLE place (                       -- [frozen] drawn at the seal, spare ones too: a latecomer takes a place, nothing is drawn twice
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  place        INTEGER NOT NULL CHECK (place BETWEEN 1 AND 999),
  is_spare     INTEGER NOT NULL CHECK (is_spare IN (0, 1)),
  PRIMARY KEY (session_id, place)
) STRICT, WITHOUT ROWID;

CREATE TABLE cup (                         -- [frozen] all the cups a taster can be shown. No lot, no millilitres, no id.
  session_id   INTEGER NOT NULL,
  code         INTEGER NOT NULL CHECK (code BETWEEN 100 AND 9999),
  place        INTEGER NOT NULL,
  round        INTEGER NOT NULL CHECK (round BETWEEN 1 AND 99),
  position     INTEGER NOT NULL CHECK (position BETWEEN 1 AND 40),
  spare        INTEGER NOT NULL DEFAULT 0 CHECK (spare BETWEEN 0 AND 9),
  PRIMARY KEY (session_id, code),
  UNIQUE (session_id, place, round, position, spare),
  FOREIGN KEY (session_id, place) REFERENCES place (session_id, place)
) STRICT, WITHOUT ROWID;

-- The vault: read and written by one file of one room. No view, no other query, no export before the reveal.
CREATE TABLE sealed_key (                  -- [frozen] lot of every cup, seed, salt. Closed against a glance, not against a locksmith.
  session_id   INTEGER PRIMARY KEY REFERENCES session_plan (session_id),
  box          BLOB NOT NULL,
  secret       BLOB NOT NULL CHECK (length(secret) = 32)
) STRICT;
CREATE TABLE pour_tick (                   -- [live] the pourer's ticks; their order and times betray the lots
  session_id   INTEGER NOT NULL,
  code         INTEGER NOT NULL,
  at           INTEGER NOT NULL,
  PRIMARY KEY (session_id, code),
  FOREIGN KEY (session_id, code) REFERENCES cup (session_id, code)
) STRICT, WITHOUT ROWID;
CREATE TABLE as_poured (                   -- [grows] what really went into a cup: box of {"code","slot"}; the last one of a code counts
  session_id   INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  box          BLOB NOT NULL,
  PRIMARY KEY (session_id, seq),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;

-- The opened key: these rows cannot exist before the log says 'revealed' or 'broken'.
CREATE TABLE key_opened (                  -- [grows]
  session_id   INTEGER PRIMARY KEY REFERENCES session_plan (session_id),
  seq          INTEGER NOT NULL,
  seed         BLOB NOT NULL CHECK (length(seed) = 32),
  salt         BLOB NOT NULL CHECK (length(salt) = 32),
  generator    TEXT NOT NULL,
  matches      INTEGER NOT NULL CHECK (matches IN (0, 1)),   -- commitment recomputed; 0 is shown for good, not hidden
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT;
CREATE TABLE key_line (                    -- [grows] what the sheet said, and what was really poured
  session_id   INTEGER NOT NULL,
  code         INTEGER NOT NULL,
  slot         INTEGER NOT NULL,
  poured_slot  INTEGER,                    -- null: the pourer was not sure
  PRIMARY KEY (session_id, code),
  FOREIGN KEY (session_id, code) REFERENCES cup (session_id, code),
  FOREIGN KEY (session_id, slot) REFERENCES session_lot (session_id, slot),
  FOREIGN KEY (session_id, poured_slot) REFERENCES session_lot (session_id, slot)
) STRICT, WITHOUT ROWID;
CREATE TRIGGER key_opened_after_reveal BEFORE INSERT ON key_opened
  WHEN coalesce((SELECT state FROM session_state WHERE session_id = NEW.session_id), '') NOT IN ('revealed', 'broken')
  BEGIN SELECT RAISE(ABORT, 'key: still sealed'); END;
CREATE TRIGGER key_line_after_reveal BEFORE INSERT ON key_line
  WHEN coalesce((SELECT state FROM session_state WHERE session_id = NEW.session_id), '') NOT IN ('revealed', 'broken')
  BEGIN SELECT RAISE(ABORT, 'key: still sealed'); END;

-- The tasting --------------------------------------------------------------------------------------------------------
CREATE TABLE place_taken (                 -- [grows] that a place is in use, and whether by a maker; survives the erasure of the person
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  is_maker     INTEGER NOT NULL CHECK (is_maker IN (0, 1)),
  shown_as     TEXT NOT NULL CHECK (shown_as IN ('signed', 'nickname', 'loose')),
  PRIMARY KEY (session_id, place),
  FOREIGN KEY (session_id, place) REFERENCES place (session_id, place),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE place_person (                -- [person] who sits there; the only link from answers to a name. A loose taster's goes at the close.
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  PRIMARY KEY (session_id, place),
  UNIQUE (session_id, taster_id),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place)
) STRICT, WITHOUT ROWID;
CREATE INDEX place_person_taster ON place_person (taster_id);
CREATE TABLE place_left (                  -- [grows] stopped before the end; open flights are counted as missing
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  PRIMARY KEY (session_id, place),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE spilled (                     -- [grows] the code that was lost and the spare one that took its place
  session_id   INTEGER NOT NULL,
  code         INTEGER NOT NULL,
  by_code      INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  PRIMARY KEY (session_id, code),
  UNIQUE (session_id, by_code),
  FOREIGN KEY (session_id, code) REFERENCES cup (session_id, code),
  FOREIGN KEY (session_id, by_code) REFERENCES cup (session_id, code),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE voided (                      -- [grows] a flight that cannot count; set before the reveal
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  round        INTEGER NOT NULL,
  reason       TEXT NOT NULL CHECK (reason IN ('not_sure', 'poured_wrong', 'mixed_up', 'wrong_person', 'cup_lost', 'other')),
  seq          INTEGER NOT NULL,
  PRIMARY KEY (session_id, place, round),
  FOREIGN KEY (session_id, place) REFERENCES place (session_id, place),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE said_aloud (                  -- [grows] in whose hearing; no row: everybody's
  session_id   INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  PRIMARY KEY (session_id, seq, place),
  FOREIGN KEY (session_id, place) REFERENCES place (session_id, place),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE hand_in (                     -- [person] one acknowledged hand-in: the replies of one flight, locked as they come
  id           INTEGER PRIMARY KEY,
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  round        INTEGER NOT NULL,
  client_id    BLOB NOT NULL CHECK (length(client_id) = 16),          -- made by whoever hands in; the same one twice is one answer
  via          TEXT NOT NULL CHECK (via IN ('device', 'paper', 'file')),
  at           INTEGER NOT NULL,
  salt         BLOB NOT NULL CHECK (length(salt) = 16),               -- the log holds sha256(salt || cells); without the salt it tells nothing
  seq          INTEGER NOT NULL,
  UNIQUE (session_id, place, client_id),
  UNIQUE (session_id, place, round),
  UNIQUE (session_id, seq),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT;
CREATE TABLE answer (                      -- [person] goes with its hand-in
  hand_in_id   INTEGER NOT NULL REFERENCES hand_in (id) ON DELETE CASCADE,
  item         INTEGER NOT NULL,
  code         INTEGER NOT NULL DEFAULT 0, -- 0 = about the whole flight
  value        INTEGER,
  text_digest  BLOB CHECK (length(text_digest) = 32),                 -- sha256(salt of the words || text)
  PRIMARY KEY (hand_in_id, item, code),
  CHECK ((value IS NULL) <> (text_digest IS NULL))
) STRICT, WITHOUT ROWID;
CREATE TABLE answer_words (                -- [person] free text apart, so that it can be erased alone
  hand_in_id   INTEGER NOT NULL,
  item         INTEGER NOT NULL,
  code         INTEGER NOT NULL,
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 4000),
  PRIMARY KEY (hand_in_id, item, code),
  FOREIGN KEY (hand_in_id, item, code) REFERENCES answer (hand_in_id, item, code) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TRIGGER hand_in_in_time BEFORE INSERT ON hand_in BEGIN
  SELECT RAISE(ABORT, 'answers: not while the session is in this state')
   WHERE (SELECT state FROM session_state WHERE session_id = NEW.session_id) IS NOT 'tasting';
  SELECT RAISE(ABORT, 'answers: whoever sat here has stopped')
   WHERE EXISTS (SELECT 1 FROM place_left WHERE session_id = NEW.session_id AND place = NEW.place);
END;
CREATE TRIGGER answer_fits BEFORE INSERT ON answer BEGIN
  SELECT RAISE(ABORT, 'answers: no such question') WHERE NOT EXISTS
    (SELECT 1 FROM hand_in h JOIN item i ON i.session_id = h.session_id AND i.item = NEW.item
      WHERE h.id = NEW.hand_in_id AND (NEW.value IS NULL OR i.low IS NULL OR NEW.value BETWEEN i.low AND i.high));
  SELECT RAISE(ABORT, 'answers: no such cup in this flight') WHERE EXISTS
    (SELECT 1 FROM hand_in h JOIN item i ON i.session_id = h.session_id AND i.item = NEW.item AND i.kind = 'choose'
      WHERE h.id = NEW.hand_in_id AND NOT EXISTS
            (SELECT 1 FROM cup c WHERE c.session_id = h.session_id AND c.code = NEW.value AND c.place = h.place AND c.round = h.round));
END;

CREATE TABLE remark (                      -- [person] what was said, a reason, a decision: text apart from the log
  session_id   INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  about        TEXT NOT NULL CHECK (about IN ('said', 'reason', 'decision')),
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 4000),
  PRIMARY KEY (session_id, seq),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE erasure (                     -- [grows] comes first, with its log entry; only then do the triggers below let go
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  what         TEXT NOT NULL CHECK (what IN ('words', 'everything')),
  seq          INTEGER NOT NULL,
  PRIMARY KEY (session_id, place, what),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;                   -- place 0: the host's own words, that is promises, remarks, decisions

CREATE TRIGGER hand_in_kept BEFORE DELETE ON hand_in
  WHEN NOT EXISTS (SELECT 1 FROM erasure WHERE session_id = OLD.session_id AND place = OLD.place AND what = 'everything')
  BEGIN SELECT RAISE(ABORT, 'hand_in: kept for good'); END;
CREATE TRIGGER answer_kept BEFORE DELETE ON answer
  WHEN EXISTS (SELECT 1 FROM hand_in h WHERE h.id = OLD.hand_in_id AND NOT EXISTS
               (SELECT 1 FROM erasure e WHERE e.session_id = h.session_id AND e.place = h.place AND e.what = 'everything'))
  BEGIN SELECT RAISE(ABORT, 'answer: kept for good'); END;
CREATE TRIGGER answer_words_kept BEFORE DELETE ON answer_words
  WHEN EXISTS (SELECT 1 FROM hand_in h WHERE h.id = OLD.hand_in_id AND NOT EXISTS
               (SELECT 1 FROM erasure e WHERE e.session_id = h.session_id AND e.place = h.place))
  BEGIN SELECT RAISE(ABORT, 'words: kept until erased'); END;
CREATE TRIGGER remark_kept BEFORE DELETE ON remark
  WHEN NOT EXISTS (SELECT 1 FROM erasure WHERE session_id = OLD.session_id AND place = 0)
  BEGIN SELECT RAISE(ABORT, 'remark: kept until erased'); END;
CREATE TRIGGER promise_kept BEFORE DELETE ON promise
  WHEN NOT EXISTS (SELECT 1 FROM erasure WHERE session_id = OLD.session_id AND place = 0)
  BEGIN SELECT RAISE(ABORT, 'promise: kept until erased'); END;
CREATE TRIGGER session_no_delete BEFORE DELETE ON session
  WHEN EXISTS (SELECT 1 FROM log WHERE session_id = OLD.id)
  BEGIN SELECT RAISE(ABORT, 'session: once sealed it stays; archive it'); END;
)sql";

// Frozen and growing tables: never changed, never deleted. The triggers are made from this list.
const std::vector<std::string>& keptTables() {
  static const std::vector<std::string> tables{
      "log",         "session_plan", "session_lot", "item",    "place",     "cup",      "sealed_key", "as_poured", "key_opened",
      "key_line",    "place_taken",  "place_left",  "spilled", "voided",    "said_aloud", "erasure",  "stock_move", "batch_note",
      "transition"};
  return tables;
}

// Rows that may be erased but never changed.
const std::vector<std::string>& unchangedTables() {
  static const std::vector<std::string> tables{"hand_in", "answer", "answer_words", "remark", "promise"};
  return tables;
}

}  // namespace oddglass::store
