PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE answer (                      -- [person] goes with its hand-in
  hand_in_id   INTEGER NOT NULL REFERENCES hand_in (id) ON DELETE CASCADE,
  item         INTEGER NOT NULL,
  code         INTEGER NOT NULL DEFAULT 0, -- 0 = about the whole flight
  value        INTEGER,
  text_digest  BLOB CHECK (length(text_digest) = 32),                 -- sha256(salt of the words || text)
  PRIMARY KEY (hand_in_id, item, code),
  CHECK ((value IS NULL) <> (text_digest IS NULL))
) STRICT, WITHOUT ROWID;
INSERT INTO "answer" VALUES(1,1,0,651,NULL);
INSERT INTO "answer" VALUES(1,2,0,2,NULL);
INSERT INTO "answer" VALUES(1,3,0,1,NULL);
INSERT INTO "answer" VALUES(2,1,0,598,NULL);
INSERT INTO "answer" VALUES(2,2,0,2,NULL);
INSERT INTO "answer" VALUES(2,3,0,1,NULL);
INSERT INTO "answer" VALUES(3,1,0,193,NULL);
INSERT INTO "answer" VALUES(3,2,0,2,NULL);
INSERT INTO "answer" VALUES(3,3,0,1,NULL);
INSERT INTO "answer" VALUES(4,1,0,309,NULL);
INSERT INTO "answer" VALUES(4,2,0,2,NULL);
INSERT INTO "answer" VALUES(4,3,0,1,NULL);
INSERT INTO "answer" VALUES(5,1,0,829,NULL);
INSERT INTO "answer" VALUES(5,2,0,2,NULL);
INSERT INTO "answer" VALUES(5,3,0,1,NULL);
INSERT INTO "answer" VALUES(6,1,0,490,NULL);
INSERT INTO "answer" VALUES(6,2,0,2,NULL);
INSERT INTO "answer" VALUES(6,3,0,1,NULL);
INSERT INTO "answer" VALUES(7,1,0,963,NULL);
INSERT INTO "answer" VALUES(7,2,0,2,NULL);
INSERT INTO "answer" VALUES(7,3,0,1,NULL);
INSERT INTO "answer" VALUES(8,1,0,430,NULL);
INSERT INTO "answer" VALUES(8,2,0,2,NULL);
INSERT INTO "answer" VALUES(8,3,0,1,NULL);
INSERT INTO "answer" VALUES(9,1,0,126,NULL);
INSERT INTO "answer" VALUES(9,2,0,3,NULL);
INSERT INTO "answer" VALUES(9,3,0,1,NULL);
INSERT INTO "answer" VALUES(9,4,0,NULL,X'1ADCE5F295390FA44FE8B534FB6B0A1757313C45F9BCA471B2F38A04F586D7D5');
CREATE TABLE answer_words (                -- [person] free text apart, so that it can be erased alone
  hand_in_id   INTEGER NOT NULL,
  item         INTEGER NOT NULL,
  code         INTEGER NOT NULL,
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 4000),
  PRIMARY KEY (hand_in_id, item, code),
  FOREIGN KEY (hand_in_id, item, code) REFERENCES answer (hand_in_id, item, code) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
INSERT INTO "answer_words" VALUES(9,4,0,X'67260BB2E9AD9CB058794D4093F6BE4B','thinner');
CREATE TABLE as_poured (                   -- [grows] what really went into a cup: box of {"code","slot"}; the last one of a code counts
  session_id   INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  box          BLOB NOT NULL,
  PRIMARY KEY (session_id, seq),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE backup_made (                 -- [live] so that an erasure can name the older copies that still hold the person
  path         TEXT PRIMARY KEY,
  at           INTEGER NOT NULL,
  reason       TEXT NOT NULL CHECK (reason IN ('asked', 'before_migration', 'after_reveal', 'before_restore'))
) STRICT;
CREATE TABLE "batch_note" (                -- [grows] a correction names the note it stands for
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id),
  replaces     INTEGER UNIQUE REFERENCES "batch_note" (id),
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
INSERT INTO "batch_note" VALUES(1,'ea64439f1d65e7e5b1fd84cb336aaa2b',1,NULL,'2026-05-14','addition',NULL,NULL,'','dry hops, half for two days and half for five');
INSERT INTO "batch_note" VALUES(2,'7eb6dbedfa51a2b61dd23a6c702610a8',1,NULL,'2026-05-02','reading',10480,NULL,'','brewed');
INSERT INTO "batch_note" VALUES(3,'36d9039a7b21abbfcd03118af3f1cdd0',2,NULL,'2026-01-12','racked',NULL,NULL,'','clear after ten weeks');
INSERT INTO "batch_note" VALUES(4,'1bbc6fd3a7dc9b1262c6fd2f3fed7e86',3,NULL,'2026-02-04','bottled',NULL,NULL,'','6 g sugar a litre');
INSERT INTO "batch_note" VALUES(5,'740dfe8d87bc2da65cfc3e2d0558db2d',3,NULL,'2026-02-01','reading',10140,NULL,'','steady for three days');
INSERT INTO "batch_note" VALUES(6,'9bbba0cc1f02106256f1efbc63d695ae',3,NULL,'2026-01-17','reading',10560,NULL,'','brewed, pitched at 18 degrees');
INSERT INTO "batch_note" VALUES(7,'0b57819993bff3aa7a2be2ebf043741f',4,NULL,'2026-01-21','addition',NULL,NULL,'','oak chips in the second half, two weeks');
INSERT INTO "batch_note" VALUES(8,'ac7932f7a54271f15c59d08967386872',4,NULL,'2026-01-20','stabilised',NULL,NULL,'','half of it');
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
  archived_at  INTEGER, recipe TEXT NOT NULL DEFAULT '' CHECK (length(recipe) <= 200),
  CHECK ((abv_bp IS NULL) = (abv_from IS NULL)),
  CHECK (og IS NULL OR fg IS NULL OR og >= fg)
) STRICT;
INSERT INTO "beverage" VALUES(1,'39815843c0410cceff0670a79f561c0a','batch','beer','Amber ale no. 7',10480,10110,490,'gravities','known',NULL,'');
INSERT INTO "beverage" VALUES(2,'f788300b8578a8b002076752586e5a7c','batch','mead','Heather mead',10950,10080,1190,'gravities','known',NULL,'');
INSERT INTO "beverage" VALUES(3,'d31a72e8b6e183d99b357dbf14d9c259','batch','beer','Porter no. 4',10560,10140,560,'gravities','known',NULL,'');
INSERT INTO "beverage" VALUES(4,'fa8690394ad1296bfd24f5ae6bf3c14d','batch','cider','Windfall cider',10520,10010,660,'gravities','known',NULL,'');
INSERT INTO "beverage" VALUES(5,'558fae18a9e62b67cb1d3596a35e5ca5','reference','mead','Bought mead',NULL,NULL,1150,'label','not_known',NULL,'');
INSERT INTO "beverage" VALUES(6,'bc14c2e4bf3a907fe4f460d208fd6c9f','reference','beer','Bought porter',NULL,NULL,540,'label','known',NULL,'');
CREATE TABLE beverage_allergen (           -- [live]
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id) ON DELETE CASCADE,
  allergen     TEXT NOT NULL CHECK (allergen IN ('gluten', 'egg', 'fish', 'milk', 'nuts', 'peanuts', 'soy', 'sesame', 'mustard',
                                                 'celery', 'lupin', 'molluscs', 'crustaceans', 'sulphites')),
  PRIMARY KEY (beverage_id, allergen)
) STRICT, WITHOUT ROWID;
INSERT INTO "beverage_allergen" VALUES(1,'gluten');
INSERT INTO "beverage_allergen" VALUES(2,'sulphites');
INSERT INTO "beverage_allergen" VALUES(3,'gluten');
INSERT INTO "beverage_allergen" VALUES(4,'sulphites');
INSERT INTO "beverage_allergen" VALUES(6,'gluten');
CREATE TABLE beverage_maker (              -- [live] who had a hand in a batch
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id) ON DELETE CASCADE,
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  PRIMARY KEY (beverage_id, taster_id)
) STRICT, WITHOUT ROWID;
INSERT INTO "beverage_maker" VALUES(4,1);
INSERT INTO "beverage_maker" VALUES(1,8);
INSERT INTO "beverage_maker" VALUES(2,8);
INSERT INTO "beverage_maker" VALUES(3,8);
INSERT INTO "beverage_maker" VALUES(4,8);
CREATE TABLE card (                        -- [person] who asked to be told how they taste
  taster_id    INTEGER PRIMARY KEY REFERENCES taster (id) ON DELETE CASCADE,
  asked_at     INTEGER NOT NULL,
  shown_at     INTEGER                     -- to themselves, before anybody else
) STRICT;
INSERT INTO "card" VALUES(5,1795977378175,NULL);
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
INSERT INTO "cup" VALUES(1,126,1,1,2,0);
INSERT INTO "cup" VALUES(1,137,2,1,1,1);
INSERT INTO "cup" VALUES(1,156,2,1,1,0);
INSERT INTO "cup" VALUES(1,167,1,1,3,0);
INSERT INTO "cup" VALUES(1,206,3,1,2,0);
INSERT INTO "cup" VALUES(1,271,1,1,3,1);
INSERT INTO "cup" VALUES(1,302,2,1,3,0);
INSERT INTO "cup" VALUES(1,357,2,1,3,1);
INSERT INTO "cup" VALUES(1,402,1,1,2,1);
INSERT INTO "cup" VALUES(1,460,1,1,1,1);
INSERT INTO "cup" VALUES(1,468,2,1,2,0);
INSERT INTO "cup" VALUES(1,529,3,1,2,1);
INSERT INTO "cup" VALUES(1,589,2,1,2,1);
INSERT INTO "cup" VALUES(1,703,3,1,3,0);
INSERT INTO "cup" VALUES(1,768,3,1,1,1);
INSERT INTO "cup" VALUES(1,785,3,1,3,1);
INSERT INTO "cup" VALUES(1,839,1,1,1,0);
INSERT INTO "cup" VALUES(1,974,3,1,1,0);
INSERT INTO "cup" VALUES(2,136,4,1,2,1);
INSERT INTO "cup" VALUES(2,137,5,1,2,1);
INSERT INTO "cup" VALUES(2,146,9,1,2,0);
INSERT INTO "cup" VALUES(2,170,8,1,3,1);
INSERT INTO "cup" VALUES(2,174,9,1,1,1);
INSERT INTO "cup" VALUES(2,183,2,1,3,1);
INSERT INTO "cup" VALUES(2,193,4,1,3,0);
INSERT INTO "cup" VALUES(2,210,6,1,3,1);
INSERT INTO "cup" VALUES(2,219,3,1,3,0);
INSERT INTO "cup" VALUES(2,250,9,1,1,0);
INSERT INTO "cup" VALUES(2,258,7,1,3,1);
INSERT INTO "cup" VALUES(2,275,2,1,2,0);
INSERT INTO "cup" VALUES(2,278,6,1,3,0);
INSERT INTO "cup" VALUES(2,309,5,1,2,0);
INSERT INTO "cup" VALUES(2,324,7,1,1,1);
INSERT INTO "cup" VALUES(2,348,8,1,3,0);
INSERT INTO "cup" VALUES(2,361,1,1,2,1);
INSERT INTO "cup" VALUES(2,375,8,1,1,0);
INSERT INTO "cup" VALUES(2,384,9,1,3,1);
INSERT INTO "cup" VALUES(2,390,3,1,2,1);
INSERT INTO "cup" VALUES(2,430,9,1,3,0);
INSERT INTO "cup" VALUES(2,437,6,1,1,0);
INSERT INTO "cup" VALUES(2,456,3,1,2,0);
INSERT INTO "cup" VALUES(2,465,4,1,1,0);
INSERT INTO "cup" VALUES(2,472,8,1,2,1);
INSERT INTO "cup" VALUES(2,487,2,1,1,0);
INSERT INTO "cup" VALUES(2,489,3,1,1,1);
INSERT INTO "cup" VALUES(2,490,7,1,3,0);
INSERT INTO "cup" VALUES(2,501,4,1,2,0);
INSERT INTO "cup" VALUES(2,508,5,1,3,0);
INSERT INTO "cup" VALUES(2,510,1,1,3,1);
INSERT INTO "cup" VALUES(2,529,3,1,1,0);
INSERT INTO "cup" VALUES(2,584,1,1,3,0);
INSERT INTO "cup" VALUES(2,598,2,1,3,0);
INSERT INTO "cup" VALUES(2,617,1,1,1,1);
INSERT INTO "cup" VALUES(2,628,2,1,2,1);
INSERT INTO "cup" VALUES(2,651,1,1,2,0);
INSERT INTO "cup" VALUES(2,652,7,1,1,0);
INSERT INTO "cup" VALUES(2,671,8,1,1,1);
INSERT INTO "cup" VALUES(2,682,6,1,1,1);
INSERT INTO "cup" VALUES(2,702,7,1,2,1);
INSERT INTO "cup" VALUES(2,708,3,1,3,1);
INSERT INTO "cup" VALUES(2,731,9,1,2,1);
INSERT INTO "cup" VALUES(2,735,5,1,1,1);
INSERT INTO "cup" VALUES(2,760,4,1,3,1);
INSERT INTO "cup" VALUES(2,769,7,1,2,0);
INSERT INTO "cup" VALUES(2,802,5,1,3,1);
INSERT INTO "cup" VALUES(2,807,6,1,2,1);
INSERT INTO "cup" VALUES(2,826,5,1,1,0);
INSERT INTO "cup" VALUES(2,829,6,1,2,0);
INSERT INTO "cup" VALUES(2,923,1,1,1,0);
INSERT INTO "cup" VALUES(2,925,4,1,1,1);
INSERT INTO "cup" VALUES(2,931,2,1,1,1);
INSERT INTO "cup" VALUES(2,963,8,1,2,0);
CREATE TABLE erasure (                     -- [grows] comes first, with its log entry; only then do the triggers below let go
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  what         TEXT NOT NULL CHECK (what IN ('words', 'everything')),
  seq          INTEGER NOT NULL,
  PRIMARY KEY (session_id, place, what),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
INSERT INTO "erasure" VALUES(2,3,'everything',35);
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
INSERT INTO "hand_in" VALUES(1,2,1,1,X'720A82BE04FCC9DE45E2133E1CD18FCB','device',1785440821000,X'DF50126DD057CC14C5769D91ACB65B1F',15);
INSERT INTO "hand_in" VALUES(2,2,2,1,X'6C9C6865555276C97434AF5F3322CCE8','device',1785441001000,X'E12D6D44C04555A262DC45C9040F73B1',17);
INSERT INTO "hand_in" VALUES(3,2,4,1,X'DC5E2E8F2C40634D29786D51D8FEC7E6','device',1785441361000,X'C9EA135267F2BE7679E3A0B745513A4F',21);
INSERT INTO "hand_in" VALUES(4,2,5,1,X'363431AF6604D5B7FA3ADEEA4027294A','device',1785441541000,X'26831048E975CB1A7C6DA11013AE4A1F',23);
INSERT INTO "hand_in" VALUES(5,2,6,1,X'F69FAC027504C26AA9C8CD90E7376024','device',1785441721000,X'12E0ED5BF06F0F7C1C5BDE3ED1685C00',25);
INSERT INTO "hand_in" VALUES(6,2,7,1,X'89C2BB2C66AD374D19DBC981B4C24100','device',1785441901000,X'6FF1FF7C94A8C06DA21D5C049E387AAA',27);
INSERT INTO "hand_in" VALUES(7,2,8,1,X'A04905C424D7C9491B53381C83ABF220','device',1785442081000,X'70F28CC6F6A76EFA5F168883AAB27570',29);
INSERT INTO "hand_in" VALUES(8,2,9,1,X'AF027AE6AC7A9926DD088BC363C81D8C','device',1785442261000,X'624C14A23D672D598312310AEABD4BDD',31);
INSERT INTO "hand_in" VALUES(9,1,1,1,X'BB49CB3EA8EA1B75279113B3029982D7','file',1795977378131,X'A8C6D0E45B10D604FB942E1586CB8E76',6);
CREATE TABLE house_rules (                 -- [live] one row
  one          INTEGER PRIMARY KEY CHECK (one = 1),
  ceiling_g    INTEGER NOT NULL DEFAULT 20 CHECK (ceiling_g BETWEEN 1 AND 100),
  country      TEXT NOT NULL DEFAULT 'GB' CHECK (length(country) = 2)
) STRICT;
INSERT INTO "house_rules" VALUES(1,20,'GB');
CREATE TABLE invited (                     -- [person] who was counted at the plan, and who pours
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  pours        INTEGER NOT NULL CHECK (pours IN (0, 1)),
  is_maker     INTEGER NOT NULL CHECK (is_maker IN (0, 1)),
  PRIMARY KEY (session_id, taster_id)
) STRICT, WITHOUT ROWID;
INSERT INTO "invited" VALUES(1,3,0,0);
INSERT INTO "invited" VALUES(1,5,0,0);
INSERT INTO "invited" VALUES(1,8,0,1);
CREATE TABLE "item" (                      -- [frozen] the questions of the sheet
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
INSERT INTO "item" VALUES(1,1,'choose',NULL,NULL,1,0,'main','');
INSERT INTO "item" VALUES(1,2,'sureness',1,3,1,0,'main','');
INSERT INTO "item" VALUES(1,3,'clue',1,6,1,0,'main','');
INSERT INTO "item" VALUES(1,4,'words',NULL,NULL,0,0,'main','');
INSERT INTO "item" VALUES(2,1,'choose',NULL,NULL,1,0,'main','');
INSERT INTO "item" VALUES(2,2,'sureness',1,3,1,0,'main','');
INSERT INTO "item" VALUES(2,3,'clue',1,6,1,0,'main','');
INSERT INTO "item" VALUES(2,4,'words',NULL,NULL,0,0,'main','');
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
INSERT INTO "key_line" VALUES(2,136,2,2);
INSERT INTO "key_line" VALUES(2,137,2,2);
INSERT INTO "key_line" VALUES(2,146,2,2);
INSERT INTO "key_line" VALUES(2,170,2,2);
INSERT INTO "key_line" VALUES(2,174,1,1);
INSERT INTO "key_line" VALUES(2,183,2,2);
INSERT INTO "key_line" VALUES(2,193,1,1);
INSERT INTO "key_line" VALUES(2,210,1,1);
INSERT INTO "key_line" VALUES(2,219,1,1);
INSERT INTO "key_line" VALUES(2,250,1,1);
INSERT INTO "key_line" VALUES(2,258,2,2);
INSERT INTO "key_line" VALUES(2,275,1,1);
INSERT INTO "key_line" VALUES(2,278,1,1);
INSERT INTO "key_line" VALUES(2,309,2,2);
INSERT INTO "key_line" VALUES(2,324,2,2);
INSERT INTO "key_line" VALUES(2,348,2,2);
INSERT INTO "key_line" VALUES(2,361,1,1);
INSERT INTO "key_line" VALUES(2,375,1,1);
INSERT INTO "key_line" VALUES(2,384,1,1);
INSERT INTO "key_line" VALUES(2,390,2,2);
INSERT INTO "key_line" VALUES(2,430,1,1);
INSERT INTO "key_line" VALUES(2,437,2,2);
INSERT INTO "key_line" VALUES(2,456,2,2);
INSERT INTO "key_line" VALUES(2,465,1,1);
INSERT INTO "key_line" VALUES(2,472,1,1);
INSERT INTO "key_line" VALUES(2,487,2,2);
INSERT INTO "key_line" VALUES(2,489,2,2);
INSERT INTO "key_line" VALUES(2,490,2,2);
INSERT INTO "key_line" VALUES(2,501,2,2);
INSERT INTO "key_line" VALUES(2,508,1,1);
INSERT INTO "key_line" VALUES(2,510,2,2);
INSERT INTO "key_line" VALUES(2,529,2,2);
INSERT INTO "key_line" VALUES(2,584,2,2);
INSERT INTO "key_line" VALUES(2,598,2,2);
INSERT INTO "key_line" VALUES(2,617,1,1);
INSERT INTO "key_line" VALUES(2,628,1,1);
INSERT INTO "key_line" VALUES(2,651,1,1);
INSERT INTO "key_line" VALUES(2,652,2,2);
INSERT INTO "key_line" VALUES(2,671,1,1);
INSERT INTO "key_line" VALUES(2,682,2,2);
INSERT INTO "key_line" VALUES(2,702,1,1);
INSERT INTO "key_line" VALUES(2,708,1,1);
INSERT INTO "key_line" VALUES(2,731,2,2);
INSERT INTO "key_line" VALUES(2,735,1,1);
INSERT INTO "key_line" VALUES(2,760,1,1);
INSERT INTO "key_line" VALUES(2,769,1,1);
INSERT INTO "key_line" VALUES(2,802,1,1);
INSERT INTO "key_line" VALUES(2,807,2,2);
INSERT INTO "key_line" VALUES(2,826,1,1);
INSERT INTO "key_line" VALUES(2,829,2,2);
INSERT INTO "key_line" VALUES(2,923,1,1);
INSERT INTO "key_line" VALUES(2,925,1,1);
INSERT INTO "key_line" VALUES(2,931,2,2);
INSERT INTO "key_line" VALUES(2,963,1,1);
CREATE TABLE key_opened (                  -- [grows]
  session_id   INTEGER PRIMARY KEY REFERENCES session_plan (session_id),
  seq          INTEGER NOT NULL,
  seed         BLOB NOT NULL CHECK (length(seed) = 32),
  salt         BLOB NOT NULL CHECK (length(salt) = 32),
  generator    TEXT NOT NULL,
  matches      INTEGER NOT NULL CHECK (matches IN (0, 1)),   -- commitment recomputed; 0 is shown for good, not hidden
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT;
INSERT INTO "key_opened" VALUES(2,33,X'731EFE6CE77CEB3B6FCC4262B22A76FC6E6DFF68E0ACFBD44BFE8E821D069F16',X'6F75E187F812E00E51F747DCFB4776A0B97ADFC91FF31913C04AAD23430F219A','chacha20/1',1);
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
INSERT INTO "log" VALUES(1,1,1795977365233,'sealed','sealed','{"commitment":"93f6387b56da43975ab3c1ff44143ce38f9bf3f0b218c00cb76b3f6d7c1a3eca","plan":"0a087e481524d24a8d5f1212f122503c0f5e19001a49490856e93a5fd6a37350","schema":1}',X'0000000000000000000000000000000000000000000000000000000000000000',X'27817800259B0454FBA9D2A3A41E38056DD29F649960DCB4BEAEBF8453095A83');
INSERT INTO "log" VALUES(1,2,1795977371277,'place_taken','sealed','{"as":"signed","maker":false,"place":1}',X'27817800259B0454FBA9D2A3A41E38056DD29F649960DCB4BEAEBF8453095A83',X'73CE2FAE43C36B3C9523B80A243B3034FD8FC76E87318B0E8BF0CEE0DE87B292');
INSERT INTO "log" VALUES(1,3,1795977371296,'place_taken','sealed','{"as":"loose","maker":false,"place":2}',X'73CE2FAE43C36B3C9523B80A243B3034FD8FC76E87318B0E8BF0CEE0DE87B292',X'0F971FA42B737ACAC23B3B9950C18E4DC7AE78F8C130AB09F96660FDD8369462');
INSERT INTO "log" VALUES(1,4,1795977371315,'place_taken','sealed','{"as":"nickname","maker":true,"place":3}',X'0F971FA42B737ACAC23B3B9950C18E4DC7AE78F8C130AB09F96660FDD8369462',X'6BFE1EEC149ACA0A8D899DC4820B32ACF3AF76C13C8E376696A789F39BF7F252');
INSERT INTO "log" VALUES(1,5,1795977378131,'opened','tasting','{}',X'6BFE1EEC149ACA0A8D899DC4820B32ACF3AF76C13C8E376696A789F39BF7F252',X'9358E85F33F15DCC17ED1743B9C9A128ABACF4EBD3BE8681629C19F4C7328C19');
INSERT INTO "log" VALUES(1,6,1795977378131,'answered','tasting','{"digest":"c5cd212df0887e9591e887abc2cce354b7f3843b82d7e3006da806a02acdba86","place":1,"round":1}',X'9358E85F33F15DCC17ED1743B9C9A128ABACF4EBD3BE8681629C19F4C7328C19',X'411BBD71F2CFE1D44BC830BB73882DB2AEAD60C28D2481D03E85F4DD496629C2');
INSERT INTO "log" VALUES(1,7,1795977378155,'voided','tasting','{"digest":null,"place":2,"reason":"mixed_up","round":1}',X'411BBD71F2CFE1D44BC830BB73882DB2AEAD60C28D2481D03E85F4DD496629C2',X'C563A9B6B1846E89ED14CC2F46E311128C4137597C591FEC063C8A6E45126F75');
INSERT INTO "log" VALUES(2,1,1785438004000,'sealed','sealed','{"commitment":"032609f8dce6f3255347199ce792f2bba3fed9571014f4ada9a0d10765baaaef","plan":"91c63b6e7b24ba6145869aded889dae2983e240c19d7f894f1bf26b862a54490","schema":1}',X'0000000000000000000000000000000000000000000000000000000000000000',X'EA989857F1838F65A3B36F9A68E3819EE03F8F2B08ACC30CB9EF2FF165B98272');
INSERT INTO "log" VALUES(2,2,1785438901000,'pour_sheet_opened','sealed','{}',X'EA989857F1838F65A3B36F9A68E3819EE03F8F2B08ACC30CB9EF2FF165B98272',X'F2301C685A3735CFE6F6C6E82109BA14062187734CADE862725E6F7DA78C83E8');
INSERT INTO "log" VALUES(2,3,1785440101000,'poured','sealed','{}',X'F2301C685A3735CFE6F6C6E82109BA14062187734CADE862725E6F7DA78C83E8',X'EAEC9B999680BEB4D922A36B3BC98ED1D11CBCA9FBA4820DBFCBD97EA4D4999D');
INSERT INTO "log" VALUES(2,4,1785440161000,'place_taken','sealed','{"as":"signed","maker":false,"place":1}',X'EAEC9B999680BEB4D922A36B3BC98ED1D11CBCA9FBA4820DBFCBD97EA4D4999D',X'509283CFE93777505CE15EAD0EEA8C69159C6A924804C978F7C6D60EA036E84B');
INSERT INTO "log" VALUES(2,5,1785440221000,'place_taken','sealed','{"as":"loose","maker":false,"place":2}',X'509283CFE93777505CE15EAD0EEA8C69159C6A924804C978F7C6D60EA036E84B',X'A86968E8E522B5B22D5A48C5F78201E712025FA7C2AED7C5257B39ECC9C7884F');
INSERT INTO "log" VALUES(2,6,1785440281000,'place_taken','sealed','{"as":"signed","maker":false,"place":3}',X'A86968E8E522B5B22D5A48C5F78201E712025FA7C2AED7C5257B39ECC9C7884F',X'9F6AC740CBC3A0EF77D1F4490F72F7233A47FD692FC078ADC3E2A4378CA3B808');
INSERT INTO "log" VALUES(2,7,1785440341000,'place_taken','sealed','{"as":"signed","maker":false,"place":4}',X'9F6AC740CBC3A0EF77D1F4490F72F7233A47FD692FC078ADC3E2A4378CA3B808',X'3974D7B655E94577DA158CE4E966C0D3B197DC36917BA9E78DBAC8B7D56B2717');
INSERT INTO "log" VALUES(2,8,1785440401000,'place_taken','sealed','{"as":"loose","maker":false,"place":5}',X'3974D7B655E94577DA158CE4E966C0D3B197DC36917BA9E78DBAC8B7D56B2717',X'9A85F4AA777D058438EF8D18A5B58C213E990C37742CC8EA062E6770AD5684CB');
INSERT INTO "log" VALUES(2,9,1785440461000,'place_taken','sealed','{"as":"signed","maker":false,"place":6}',X'9A85F4AA777D058438EF8D18A5B58C213E990C37742CC8EA062E6770AD5684CB',X'A193984B574EE3F02E401197C02EF27685A731DAC711B9AD6A5F8FDF4FEB8608');
INSERT INTO "log" VALUES(2,10,1785440521000,'place_taken','sealed','{"as":"signed","maker":false,"place":7}',X'A193984B574EE3F02E401197C02EF27685A731DAC711B9AD6A5F8FDF4FEB8608',X'1F0588DC394D7DAB6815F726C12A3E3C5B48808DF4542C1B3082BB43EA3E147D');
INSERT INTO "log" VALUES(2,11,1785440581000,'place_taken','sealed','{"as":"loose","maker":false,"place":8}',X'1F0588DC394D7DAB6815F726C12A3E3C5B48808DF4542C1B3082BB43EA3E147D',X'DEFAA2129E017D9E11CAC3EEEB3888C137A17E6B2B81ECE1FFA03E298D4A306D');
INSERT INTO "log" VALUES(2,12,1785440641000,'place_taken','sealed','{"as":"signed","maker":true,"place":9}',X'DEFAA2129E017D9E11CAC3EEEB3888C137A17E6B2B81ECE1FFA03E298D4A306D',X'ABF62A4043170215A3564C5BD3BB459DA6EBC6FA8387E5C0197195CB8B311DCB');
INSERT INTO "log" VALUES(2,13,1785440761000,'opened','tasting','{}',X'ABF62A4043170215A3564C5BD3BB459DA6EBC6FA8387E5C0197195CB8B311DCB',X'48908EF8EB7710ED93843791DD44598779E250E011F00C1F745FE03698E69BBE');
INSERT INTO "log" VALUES(2,14,1785440761000,'began','tasting','{"place":1,"round":1}',X'48908EF8EB7710ED93843791DD44598779E250E011F00C1F745FE03698E69BBE',X'C1AAA57025841D478689E8770FFFFC6964F884FD648B656FC2C92B6DB9697696');
INSERT INTO "log" VALUES(2,15,1785440821000,'answered','tasting','{"digest":"fc3d91a6f935f5244b63b4ea7221f6071fdc032b0cd711efd590cbf4641d6d61","place":1,"round":1}',X'C1AAA57025841D478689E8770FFFFC6964F884FD648B656FC2C92B6DB9697696',X'853C06A4E757111296D1C8EBF8E53E31F034574C0BDD0014E039F2ECBCEB2985');
INSERT INTO "log" VALUES(2,16,1785440941000,'began','tasting','{"place":2,"round":1}',X'853C06A4E757111296D1C8EBF8E53E31F034574C0BDD0014E039F2ECBCEB2985',X'39D4FEEBA3A14D4C1EB3F28D5016B98A9EC21F28A5BF909C6E101FE9E197ADD4');
INSERT INTO "log" VALUES(2,17,1785441001000,'answered','tasting','{"digest":"e91890d7bbedc9e66ab64d1a5247d76ce2acd70f9c0d511ec65ff8cbf2a63bd5","place":2,"round":1}',X'39D4FEEBA3A14D4C1EB3F28D5016B98A9EC21F28A5BF909C6E101FE9E197ADD4',X'24E17F027B5049289EBBD462FCF678555F342C0169935377DB5E00B1813E62B7');
INSERT INTO "log" VALUES(2,18,1785441121000,'began','tasting','{"place":3,"round":1}',X'24E17F027B5049289EBBD462FCF678555F342C0169935377DB5E00B1813E62B7',X'FE84000111BC7EDA16C722AB48BFF33AD53521B2847A149C62AFA0AF1E5275CD');
INSERT INTO "log" VALUES(2,19,1785441181000,'answered','tasting','{"digest":"241e737e57e251104afb3d161ca370d6aeb887d12d0ad706b1a33e254140dd77","place":3,"round":1}',X'FE84000111BC7EDA16C722AB48BFF33AD53521B2847A149C62AFA0AF1E5275CD',X'FA2937BC5A3FBB4E9A2FF616829A0935DAF59F446F8ED14D79B055B74EA3B373');
INSERT INTO "log" VALUES(2,20,1785441301000,'began','tasting','{"place":4,"round":1}',X'FA2937BC5A3FBB4E9A2FF616829A0935DAF59F446F8ED14D79B055B74EA3B373',X'CD6E2BB93AC53DA2E13D8AD5B1421D1008684F268A0E6E2B6C1D329AF889B9FA');
INSERT INTO "log" VALUES(2,21,1785441361000,'answered','tasting','{"digest":"a73c9a6a934303178e809951238650748352f467f8a44a28c800f38a13471a37","place":4,"round":1}',X'CD6E2BB93AC53DA2E13D8AD5B1421D1008684F268A0E6E2B6C1D329AF889B9FA',X'060D99562BC93FFAAD139DAA3860CACFF36162C093C7CE75742128F960AA5A51');
INSERT INTO "log" VALUES(2,22,1785441481000,'began','tasting','{"place":5,"round":1}',X'060D99562BC93FFAAD139DAA3860CACFF36162C093C7CE75742128F960AA5A51',X'0F3AEDCE4683B6C846243B8241A260F15AF660B87FCCD894B3B1C16306A75F36');
INSERT INTO "log" VALUES(2,23,1785441541000,'answered','tasting','{"digest":"944fb8519702ab0db0bdd89f485948932afc782b371ba90476d74318f0a5cde1","place":5,"round":1}',X'0F3AEDCE4683B6C846243B8241A260F15AF660B87FCCD894B3B1C16306A75F36',X'FE5E8FB6177B1F9134687FB5DAECD9D25614FB4BA53E04A1C49ECE0FEE927B3F');
INSERT INTO "log" VALUES(2,24,1785441661000,'began','tasting','{"place":6,"round":1}',X'FE5E8FB6177B1F9134687FB5DAECD9D25614FB4BA53E04A1C49ECE0FEE927B3F',X'D0581A8F766D981A6B4BB0477BE02EE8E969788DDF9823C843CBC907AA063169');
INSERT INTO "log" VALUES(2,25,1785441721000,'answered','tasting','{"digest":"24d49a457d0ec3e3543540006c5974c08278a68393fc012134b8db73739e4643","place":6,"round":1}',X'D0581A8F766D981A6B4BB0477BE02EE8E969788DDF9823C843CBC907AA063169',X'3A8B15741D2DBC8132C5982D34656EC38FBEB843AF93B256099F2AD939928D3B');
INSERT INTO "log" VALUES(2,26,1785441841000,'began','tasting','{"place":7,"round":1}',X'3A8B15741D2DBC8132C5982D34656EC38FBEB843AF93B256099F2AD939928D3B',X'6A7394F37CDC5720E5B6A4146017CC14F51DBEBDE3ECC70ABE540E0A946E246D');
INSERT INTO "log" VALUES(2,27,1785441901000,'answered','tasting','{"digest":"310f8c9f0c1822c285a371dac88933e30c01677df17b349d770cbef7e9f632f6","place":7,"round":1}',X'6A7394F37CDC5720E5B6A4146017CC14F51DBEBDE3ECC70ABE540E0A946E246D',X'A9B1BDEFD58BC81198C45FBBC2BF57F1DEB0F452A576032A643AF122D6FEA2A3');
INSERT INTO "log" VALUES(2,28,1785442021000,'began','tasting','{"place":8,"round":1}',X'A9B1BDEFD58BC81198C45FBBC2BF57F1DEB0F452A576032A643AF122D6FEA2A3',X'EFEEFFC276C5B7A96475F27CDD1CDE1230E407B8D93F61F93E6AF1D5DCB8B06B');
INSERT INTO "log" VALUES(2,29,1785442081000,'answered','tasting','{"digest":"db3a9f2115fad12dfe9fa9573f7e732b6615095642feea17cb9400639e0fec59","place":8,"round":1}',X'EFEEFFC276C5B7A96475F27CDD1CDE1230E407B8D93F61F93E6AF1D5DCB8B06B',X'F963E046900325247CD0E7A6021FE34BE4B27691E2E12CD5CA1017845896D1D4');
INSERT INTO "log" VALUES(2,30,1785442201000,'began','tasting','{"place":9,"round":1}',X'F963E046900325247CD0E7A6021FE34BE4B27691E2E12CD5CA1017845896D1D4',X'E368E100B2E1ABD948A0F0834706A0C746DC56C1A7152DD1CB72308182D9321A');
INSERT INTO "log" VALUES(2,31,1785442261000,'answered','tasting','{"digest":"88ebb2482f5fb55239a286dc6054ba048ea447cd128f8faaf4bce5b4ebadee42","place":9,"round":1}',X'E368E100B2E1ABD948A0F0834706A0C746DC56C1A7152DD1CB72308182D9321A',X'56214B4FB9154B8FA4AC31C5621DD07DC2A5F53979F9898CA56C38A591D067C9');
INSERT INTO "log" VALUES(2,32,1785442561000,'closed','closed','{"missing":0}',X'56214B4FB9154B8FA4AC31C5621DD07DC2A5F53979F9898CA56C38A591D067C9',X'35065C25860B2E9CABD2885C89957B734BA35E7CC63F959C83FB5CAC502BDC4D');
INSERT INTO "log" VALUES(2,33,1785442562000,'revealed','revealed','{}',X'35065C25860B2E9CABD2885C89957B734BA35E7CC63F959C83FB5CAC502BDC4D',X'46294F3187E82E42512D321A1FEE0865A4B708BE2F1024229A0BE3B9F8DAE3FD');
INSERT INTO "log" VALUES(2,34,1785443761000,'decided','revealed','{"digest":"2673d31a2228a16b253d0389b99d94b4441f1b95ddfeec6c52058f3c606c727e"}',X'46294F3187E82E42512D321A1FEE0865A4B708BE2F1024229A0BE3B9F8DAE3FD',X'2207889BE987C936C2C9E3F246ABDDE0AF7C9D9A94D01D907C99DBA4C46C382B');
INSERT INTO "log" VALUES(2,35,1785447361000,'erased','revealed','{"place":3,"what":"everything"}',X'2207889BE987C936C2C9E3F246ABDDE0AF7C9D9A94D01D907C99DBA4C46C382B',X'25377B40238FF8C2C5F323AECD9631660BDC185F39587A4F3F32804B80106F10');
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
INSERT INTO "lot" VALUES(1,'d87272ec56014e8ea8d04b02423d21fd',1,'hopped five days','2026-05-20',NULL,500,'cellar, 12 degrees','',NULL);
INSERT INTO "lot" VALUES(2,'89fc1ac58612f24ec5045c5bfd29eed5',1,'hopped two days','2026-05-20',NULL,500,'cellar, 12 degrees','',NULL);
INSERT INTO "lot" VALUES(3,'e74d471d3f008919d2cad5016c7e6e09',2,'bottled 12 April','2026-04-12',NULL,750,'pantry, dark','',NULL);
INSERT INTO "lot" VALUES(4,'5ea2ea947dc4a803a3d156dc0200e4a4',3,'bottled 4 February, kept warm','2026-02-04',NULL,500,'pantry, 22 degrees','',NULL);
INSERT INTO "lot" VALUES(5,'fb88f3a7a4c1d643652f231c47ed6a9f',3,'bottled 4 February','2026-02-04',NULL,500,'cellar, 12 degrees','',NULL);
INSERT INTO "lot" VALUES(6,'3a34301a7a2371dbababa077c0b58262',4,'with oak, bottled 1 March','2026-03-01',NULL,750,'cellar, 12 degrees','',NULL);
INSERT INTO "lot" VALUES(7,'46781034c262f527338f9f182d39f7fc',4,'plain, bottled 1 March','2026-03-01',NULL,750,'cellar, 12 degrees','',NULL);
INSERT INTO "lot" VALUES(8,'0a078475edb7745447e09638a8faaba1',5,'older vintage',NULL,NULL,700,'pantry, dark','a market stall',NULL);
INSERT INTO "lot" VALUES(9,'e143bf16ee2edeb1d62566cac0b8dd35',5,'younger vintage',NULL,NULL,700,'pantry, dark','a market stall',NULL);
INSERT INTO "lot" VALUES(10,'61ca2367d41b8f2b82754db07580aaa3',6,'bought in March',NULL,'2026-11-30',500,'cellar, 12 degrees','a shop in town',NULL);
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
CREATE TABLE own_word (                    -- [live] words added here; retired, never deleted: old sheets name them
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  word         TEXT NOT NULL CHECK (length(trim(word)) BETWEEN 1 AND 60 AND length(word) <= 60),
  class        TEXT NOT NULL CHECK (class IN ('grain', 'roast', 'fruity', 'floral', 'hop', 'spice', 'sweet', 'sour', 'bitter', 'mouthfeel', 'yeast',
                                              'air', 'sulphur', 'spoiled', 'cellar', 'other')),
  leaning      TEXT NOT NULL CHECK (leaning IN ('fault', 'either', 'wanted')),
  meaning         TEXT NOT NULL DEFAULT '' CHECK (length(meaning) <= 1000)
) STRICT;
INSERT INTO "own_word" VALUES(1,'efbe2edfd890d0034a77ab25f1a8f468','hedge after rain','floral','wanted','Wet leaves and elderflower, as on the way to the orchard.');
INSERT INTO "own_word" VALUES(2,'83e5423c365d0596d896c34b5d2dfb9d','old cupboard','cellar','fault','');
CREATE TABLE own_word_drink (              -- [live] of which drinks it is said
  own_word_id  INTEGER NOT NULL REFERENCES own_word (id),
  kind         TEXT NOT NULL CHECK (kind IN ('beer', 'mead', 'cider', 'wine', 'other')),
  PRIMARY KEY (own_word_id, kind)
) STRICT, WITHOUT ROWID;
INSERT INTO "own_word_drink" VALUES(1,'cider');
INSERT INTO "own_word_drink" VALUES(1,'mead');
INSERT INTO "own_word_drink" VALUES(2,'beer');
INSERT INTO "own_word_drink" VALUES(2,'cider');
INSERT INTO "own_word_drink" VALUES(2,'mead');
CREATE TABLE place (                       -- [frozen] drawn at the seal, spare ones too: a latecomer takes a place, nothing is drawn twice
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  place        INTEGER NOT NULL CHECK (place BETWEEN 1 AND 999),
  is_spare     INTEGER NOT NULL CHECK (is_spare IN (0, 1)),
  PRIMARY KEY (session_id, place)
) STRICT, WITHOUT ROWID;
INSERT INTO "place" VALUES(1,1,0);
INSERT INTO "place" VALUES(1,2,0);
INSERT INTO "place" VALUES(1,3,0);
INSERT INTO "place" VALUES(2,1,0);
INSERT INTO "place" VALUES(2,2,0);
INSERT INTO "place" VALUES(2,3,0);
INSERT INTO "place" VALUES(2,4,0);
INSERT INTO "place" VALUES(2,5,0);
INSERT INTO "place" VALUES(2,6,0);
INSERT INTO "place" VALUES(2,7,0);
INSERT INTO "place" VALUES(2,8,0);
INSERT INTO "place" VALUES(2,9,0);
CREATE TABLE place_left (                  -- [grows] stopped before the end; open flights are counted as missing
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  PRIMARY KEY (session_id, place),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place),
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
INSERT INTO "place_person" VALUES(2,6,2);
INSERT INTO "place_person" VALUES(1,2,3);
INSERT INTO "place_person" VALUES(1,1,5);
INSERT INTO "place_person" VALUES(2,1,5);
INSERT INTO "place_person" VALUES(2,4,6);
INSERT INTO "place_person" VALUES(1,3,8);
INSERT INTO "place_person" VALUES(2,9,8);
INSERT INTO "place_person" VALUES(2,7,10);
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
INSERT INTO "place_taken" VALUES(1,1,2,0,'signed');
INSERT INTO "place_taken" VALUES(1,2,3,0,'loose');
INSERT INTO "place_taken" VALUES(1,3,4,1,'nickname');
INSERT INTO "place_taken" VALUES(2,1,4,0,'signed');
INSERT INTO "place_taken" VALUES(2,2,5,0,'loose');
INSERT INTO "place_taken" VALUES(2,3,6,0,'signed');
INSERT INTO "place_taken" VALUES(2,4,7,0,'signed');
INSERT INTO "place_taken" VALUES(2,5,8,0,'loose');
INSERT INTO "place_taken" VALUES(2,6,9,0,'signed');
INSERT INTO "place_taken" VALUES(2,7,10,0,'signed');
INSERT INTO "place_taken" VALUES(2,8,11,0,'loose');
INSERT INTO "place_taken" VALUES(2,9,12,1,'signed');
CREATE TABLE pour_tick (                   -- [live] the pourer's ticks; their order and times betray the lots
  session_id   INTEGER NOT NULL,
  code         INTEGER NOT NULL,
  at           INTEGER NOT NULL,
  PRIMARY KEY (session_id, code),
  FOREIGN KEY (session_id, code) REFERENCES cup (session_id, code)
) STRICT, WITHOUT ROWID;
CREATE TABLE promise (                     -- [person] what will be done in each outcome; the plan holds the digests
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  outcome      TEXT NOT NULL CHECK (outcome IN ('shown', 'not_shown', 'alike')),
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 500),
  PRIMARY KEY (session_id, outcome)
) STRICT, WITHOUT ROWID;
INSERT INTO "promise" VALUES(1,'not_shown',X'A3B1BD6ECB538E3F074BB0B0D6C24B3A','brew it again, and ask more people');
INSERT INTO "promise" VALUES(1,'shown',X'A7380C3B6BD98AB15B9593EA36B2F172','name the difference and pour pairs');
INSERT INTO "promise" VALUES(2,'not_shown',X'547A42CC225DFC1A3FFA12F9E0E0C4C9','ask again with more people');
INSERT INTO "promise" VALUES(2,'shown',X'6AA8755964141EB924A04FB4EBF64071','write it into the recipe');
CREATE TABLE remark (                      -- [person] what was said, a reason, a decision: text apart from the log
  session_id   INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  about        TEXT NOT NULL CHECK (about IN ('said', 'reason', 'decision')),
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 4000),
  PRIMARY KEY (session_id, seq),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
INSERT INTO "remark" VALUES(2,34,'decision',X'2BD52F8EEFC8B037CEDE7426F89BFB73','ask once more what it is that differs');
CREATE TABLE said_aloud (                  -- [grows] in whose hearing; no row: everybody's
  session_id   INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  PRIMARY KEY (session_id, seq, place),
  FOREIGN KEY (session_id, place) REFERENCES place (session_id, place),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE sealed_key (                  -- [frozen] lot of every cup, seed, salt. Closed against a glance, not against a locksmith.
  session_id   INTEGER PRIMARY KEY REFERENCES session_plan (session_id),
  box          BLOB NOT NULL,
  secret       BLOB NOT NULL CHECK (length(secret) = 32)
) STRICT;
INSERT INTO "sealed_key" VALUES(1,X'80C145C003B24851BEC3FF919D36D42F16830A80B2AF4412D6641EB31694877D80E9FE032548BCDB44B2603202459B39525B600D61F7EB8C10B54185C6A59E61FF40B8DC3E7D9BDA0E2DC2FD3B4FE9BD450B38A916D968B17E16D0F15DF79AFF7D225AD52DD76CF181F2DDDC9EF03AFE4946B747DD2E0DCF2C08790EEEA37AA086C966BA65C8DB098B35E250FCD7B4A4EEDC73C735C7E3EFD82B83D8422BF360BB008B1E43269665B17C695581522D1A9C91862ABB376D53A4FEC5708B7E6431D2C936996C8807E578A54198CB7E719A904F4F8C1325BF1CCE1E4A8F4835A6DE8F895816B22FF2DFD5793148862660D69B73C720B9F640FFCA5138161FC1793D91BC93A69638259A1062C951574BDA0FB48AFBC6FAF2855DC6CBD99A99343FCE3326BB4512EBBAC68EFCBB1B12673BF7D462066AE3302040FE6C4941E58311AEA6AC85E33443B1ED2756F14603CAA220595C7B5A204FBD9F588D2354218C24C46944FE455C6BCB0A67DBA2B61F6DC07A',X'3AADDA80A435672898556FD46E853950C0AC9A0D12E3DE138B25B3017044006C');
INSERT INTO "sealed_key" VALUES(2,X'87B6BFD144BD8C8D1DC0F7FBCF4C451305B4795C671B2529B14EC7F442F3BF645EE871F20A611D02F5D0D3F251D10BD47763568496C94AC548537FF1735F61471251CF5D6090F9C1D5E40B425C59F9CA363CB931BF49DDA97F406C036451FD27D981BB9D393BD844B68E4523A7E3DF2D8E7BA294F538BFA0D90ED75A554E36C0345448176668FA61CB9EF1569F2F7241A285456191842183259F3E99875273A2E7F3AD04ABB4A52F333FC4D25E74D065A2E51697AAFBF4D3E67D29F88AF004332C6C83C8E0772BAD7FFFAC0791C2B0E94521C82A5D6E533590E9B81681C4605A379C9857A2B6D7F2343A4C61336E820D507E1BA7401BC510535535BBF0D0AFCB164EBD3E0187150650831F4B75F8EB93B8A2E2D63DE914AE3960A11DA5E869D672065E29223B170F5C0346F4B90EEFF1D4308E79583FDF9597240FDD0721EB21B20CB07E9EEAD58E7AA6ABD40CB6D9B9231A64F2A5FC0CA54133BA025545A85B05744C86D57BA0A2A0ECC69F1AB362F3F5E09C586FAF7576A37113F0FCDD6EA82FB7C99498ADEACA412E436B4D47B91F85D00C75CEF8D75BBAD96625E98E98242191DF657CABBB28BD1FD6CED848193A8150927B6F3F4F03B06727DE4FFD556596F32A4495F7D5FC5B5A024BE0F788E36C30A7ADB93AD0C755472F51C107398C3CA3ABF30F0C04DE80E19B3438253041E2368CE6727595139741CF205E7C9A492A16AFA58789EB261B2BC587B8E0AFA07D17F931772C3CA11AC66C425C709953E8EDD922AE507378371535134B10912DA8918B210F4B61282F394BE9508E6BF0E0CD7397314FBAA82917E95B1A3368F44E24EA0D7FB59A0061912E494B626BD4F603F6746CCFCF34005D6C2C56B5D00364504169CC4E6F87F5B345C245465312B38D36822AF4C5631A19C96FEDD156FC',X'7E1D4660AB9C6080F91C59DFB4C587BD449DF4C655482FEF68739560ACA8B100');
CREATE TABLE series (                      -- [live]
  id            INTEGER PRIMARY KEY,
  uid           TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  title         TEXT NOT NULL CHECK (length(trim(title)) BETWEEN 1 AND 200),
  lot_id        INTEGER NOT NULL REFERENCES lot (id),
  control       TEXT NOT NULL CHECK (control IN ('none', 'twin', 'reference')),
  control_id    INTEGER REFERENCES lot (id),
  begun_on      TEXT NOT NULL CHECK (begun_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  bottles_each  INTEGER NOT NULL CHECK (bottles_each BETWEEN 1 AND 24),
  reserve       INTEGER NOT NULL CHECK (reserve BETWEEN 0 AND 48),
  main_sitting  INTEGER NOT NULL CHECK (main_sitting >= 2),
  main_word     TEXT NOT NULL CHECK (length(main_word) <= 60),    -- empty: the liking
  main_limit    INTEGER CHECK (main_limit BETWEEN 1 AND 1000),
  created_at    INTEGER NOT NULL,
  archived_at   INTEGER,
  CHECK ((control_id IS NULL) = (control = 'none')),
  CHECK (control_id IS NULL OR control_id <> lot_id)
) STRICT;
CREATE TABLE series_seen (                 -- [grows] its old pages were opened while one of its sittings was sealed
  series_id     INTEGER NOT NULL REFERENCES series (id),
  session_id    INTEGER NOT NULL REFERENCES session (id),
  at            INTEGER NOT NULL
) STRICT;
CREATE TABLE series_sitting (              -- [live] as proposed; the real day is the session's
  series_id     INTEGER NOT NULL REFERENCES series (id) ON DELETE CASCADE,
  number        INTEGER NOT NULL CHECK (number BETWEEN 1 AND 24),
  due_on        TEXT NOT NULL CHECK (due_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  session_id    INTEGER UNIQUE REFERENCES session (id) ON DELETE SET NULL,
  PRIMARY KEY (series_id, due_on)
) STRICT, WITHOUT ROWID;
CREATE TABLE session (                     -- [live] title and archiving only; everything else is plan or log
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  title        TEXT NOT NULL CHECK (length(title) <= 200),
  guest_title  TEXT NOT NULL DEFAULT '' CHECK (length(guest_title) <= 200),
  came_from    TEXT NOT NULL CHECK (came_from IN ('here', 'import', 'demo')),
  created_at   INTEGER NOT NULL,
  archived_at  INTEGER
) STRICT;
INSERT INTO "session" VALUES(1,'37c00af16458efc00638f88c65d12f38','Heather mead against a bought one','An evening with mead','here',1795977365062,NULL);
INSERT INTO "session" VALUES(2,'9a625251b296ef9274105ace9896fdab','Two ales, and a guest who asked to be forgotten','Two ales','import',1785438001000,NULL);
CREATE TABLE session_draft (               -- [live] the plan while it is being made, saved at every step; gone after the seal
  session_id   INTEGER PRIMARY KEY REFERENCES session (id) ON DELETE CASCADE,
  body         TEXT NOT NULL CHECK (body GLOB '{*}'),
  changed_at   INTEGER NOT NULL
) STRICT;
CREATE TABLE session_lot (                 -- [frozen] slot = the order in which the plan names its lots
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  slot         INTEGER NOT NULL CHECK (slot BETWEEN 1 AND 40),
  lot_id       INTEGER NOT NULL REFERENCES lot (id),
  PRIMARY KEY (session_id, slot)
) STRICT, WITHOUT ROWID;
INSERT INTO "session_lot" VALUES(2,2,1);
INSERT INTO "session_lot" VALUES(2,1,2);
INSERT INTO "session_lot" VALUES(1,1,3);
INSERT INTO "session_lot" VALUES(1,2,9);
CREATE TABLE session_plan (                -- [frozen] names, strengths, allergens as they were; reports read these, never the live shelf
  session_id   INTEGER PRIMARY KEY REFERENCES session (id),
  body         TEXT NOT NULL CHECK (body GLOB '{*}'),     -- canonical JSON, hashed
  question     TEXT NOT NULL,              -- as in the body, for lists
  commitment   BLOB NOT NULL CHECK (length(commitment) = 32),
  seal_mark    TEXT NOT NULL CHECK (length(seal_mark) = 11)
) STRICT;
INSERT INTO "session_plan" VALUES(1,'{"analysis":{"alpha_pm":50,"gamma_pm":300,"limit_pm":null,"seeks":"difference","test":"exact_binomial"},"ceiling_g":20,"claim":"people","country":"GB","cup_ml":15,"cups":[{"code":839,"place":1,"position":1,"round":1,"spare":0},{"code":460,"place":1,"position":1,"round":1,"spare":1},{"code":126,"place":1,"position":2,"round":1,"spare":0},{"code":402,"place":1,"position":2,"round":1,"spare":1},{"code":167,"place":1,"position":3,"round":1,"spare":0},{"code":271,"place":1,"position":3,"round":1,"spare":1},{"code":156,"place":2,"position":1,"round":1,"spare":0},{"code":137,"place":2,"position":1,"round":1,"spare":1},{"code":468,"place":2,"position":2,"round":1,"spare":0},{"code":589,"place":2,"position":2,"round":1,"spare":1},{"code":302,"place":2,"position":3,"round":1,"spare":0},{"code":357,"place":2,"position":3,"round":1,"spare":1},{"code":974,"place":3,"position":1,"round":1,"spare":0},{"code":768,"place":3,"position":1,"round":1,"spare":1},{"code":206,"place":3,"position":2,"round":1,"spare":0},{"code":529,"place":3,"position":2,"round":1,"spare":1},{"code":703,"place":3,"position":3,"round":1,"spare":0},{"code":785,"place":3,"position":3,"round":1,"spare":1}],"items":[{"high":null,"item":1,"kind":"choose","low":null,"required":true},{"high":3,"item":2,"kind":"sureness","low":1,"required":true},{"high":6,"item":3,"kind":"clue","low":1,"required":true},{"high":null,"item":4,"kind":"words","low":null,"required":false}],"lots":[{"abv_bp":1190,"allergens":["sulphites"],"best_before":"","beverage":"Heather mead","bottle_ml":750,"ingredients":"known","kind":"mead","lot":"e74d471d3f008919d2cad5016c7e6e09","name":"bottled 12 April","origin":"batch","packaged_on":"2026-04-12","slot":1,"storage":"pantry, dark"},{"abv_bp":1150,"allergens":[],"best_before":"","beverage":"Bought mead","bottle_ml":700,"ingredients":"not_known","kind":"mead","lot":"e143bf16ee2edeb1d62566cac0b8dd35","name":"younger vintage","origin":"reference","packaged_on":"","slot":2,"storage":"pantry, dark"}],"makers":1,"method":"triangle","panel":2,"places":3,"pourer":true,"promises":{"not_shown":"ab4ffe760676be9861cdd26f1fcb21b4dc2c24429f054d407d99fb2bd7ed9501","shown":"2893c13316f79b9cb267bc39a752b188e49ae326cff0c09a24a698b68540dc92"},"question":"differ","rounds":1,"spares":0}','differ',X'93F6387B56DA43975AB3C1FF44143CE38F9BF3F0B218C00CB76B3F6D7C1A3ECA','pazu lawa 3');
INSERT INTO "session_plan" VALUES(2,'{"analysis":{"alpha_pm":50,"gamma_pm":300,"limit_pm":null,"seeks":"difference","test":"exact_binomial"},"ceiling_g":20,"claim":"people","country":"GB","cup_ml":20,"cups":[{"code":923,"place":1,"position":1,"round":1,"spare":0},{"code":617,"place":1,"position":1,"round":1,"spare":1},{"code":651,"place":1,"position":2,"round":1,"spare":0},{"code":361,"place":1,"position":2,"round":1,"spare":1},{"code":584,"place":1,"position":3,"round":1,"spare":0},{"code":510,"place":1,"position":3,"round":1,"spare":1},{"code":487,"place":2,"position":1,"round":1,"spare":0},{"code":931,"place":2,"position":1,"round":1,"spare":1},{"code":275,"place":2,"position":2,"round":1,"spare":0},{"code":628,"place":2,"position":2,"round":1,"spare":1},{"code":598,"place":2,"position":3,"round":1,"spare":0},{"code":183,"place":2,"position":3,"round":1,"spare":1},{"code":529,"place":3,"position":1,"round":1,"spare":0},{"code":489,"place":3,"position":1,"round":1,"spare":1},{"code":456,"place":3,"position":2,"round":1,"spare":0},{"code":390,"place":3,"position":2,"round":1,"spare":1},{"code":219,"place":3,"position":3,"round":1,"spare":0},{"code":708,"place":3,"position":3,"round":1,"spare":1},{"code":465,"place":4,"position":1,"round":1,"spare":0},{"code":925,"place":4,"position":1,"round":1,"spare":1},{"code":501,"place":4,"position":2,"round":1,"spare":0},{"code":136,"place":4,"position":2,"round":1,"spare":1},{"code":193,"place":4,"position":3,"round":1,"spare":0},{"code":760,"place":4,"position":3,"round":1,"spare":1},{"code":826,"place":5,"position":1,"round":1,"spare":0},{"code":735,"place":5,"position":1,"round":1,"spare":1},{"code":309,"place":5,"position":2,"round":1,"spare":0},{"code":137,"place":5,"position":2,"round":1,"spare":1},{"code":508,"place":5,"position":3,"round":1,"spare":0},{"code":802,"place":5,"position":3,"round":1,"spare":1},{"code":437,"place":6,"position":1,"round":1,"spare":0},{"code":682,"place":6,"position":1,"round":1,"spare":1},{"code":829,"place":6,"position":2,"round":1,"spare":0},{"code":807,"place":6,"position":2,"round":1,"spare":1},{"code":278,"place":6,"position":3,"round":1,"spare":0},{"code":210,"place":6,"position":3,"round":1,"spare":1},{"code":652,"place":7,"position":1,"round":1,"spare":0},{"code":324,"place":7,"position":1,"round":1,"spare":1},{"code":769,"place":7,"position":2,"round":1,"spare":0},{"code":702,"place":7,"position":2,"round":1,"spare":1},{"code":490,"place":7,"position":3,"round":1,"spare":0},{"code":258,"place":7,"position":3,"round":1,"spare":1},{"code":375,"place":8,"position":1,"round":1,"spare":0},{"code":671,"place":8,"position":1,"round":1,"spare":1},{"code":963,"place":8,"position":2,"round":1,"spare":0},{"code":472,"place":8,"position":2,"round":1,"spare":1},{"code":348,"place":8,"position":3,"round":1,"spare":0},{"code":170,"place":8,"position":3,"round":1,"spare":1},{"code":250,"place":9,"position":1,"round":1,"spare":0},{"code":174,"place":9,"position":1,"round":1,"spare":1},{"code":146,"place":9,"position":2,"round":1,"spare":0},{"code":731,"place":9,"position":2,"round":1,"spare":1},{"code":430,"place":9,"position":3,"round":1,"spare":0},{"code":384,"place":9,"position":3,"round":1,"spare":1}],"items":[{"high":null,"item":1,"kind":"choose","low":null,"required":true},{"high":3,"item":2,"kind":"sureness","low":1,"required":true},{"high":6,"item":3,"kind":"clue","low":1,"required":true},{"high":null,"item":4,"kind":"words","low":null,"required":false}],"lots":[{"abv_bp":490,"allergens":["gluten"],"best_before":"","beverage":"Amber ale no. 7","bottle_ml":500,"ingredients":"known","kind":"beer","lot":"89fc1ac58612f24ec5045c5bfd29eed5","name":"hopped two days","origin":"batch","packaged_on":"2026-05-20","slot":1,"storage":"cellar, 12 degrees"},{"abv_bp":490,"allergens":["gluten"],"best_before":"","beverage":"Amber ale no. 7","bottle_ml":500,"ingredients":"known","kind":"beer","lot":"d87272ec56014e8ea8d04b02423d21fd","name":"hopped five days","origin":"batch","packaged_on":"2026-05-20","slot":2,"storage":"cellar, 12 degrees"}],"makers":1,"method":"duo-trio","panel":8,"places":9,"pourer":true,"promises":{"not_shown":"554783a34e1483beaca125ada1eae284f8b07cf1faa25d457a158c7620377fae","shown":"c22fdd45f6ce0cb3e800cb31ef97e084e5a8d3a36dd8c7cf21e866358cbecf4c"},"question":"differ","rounds":1,"spares":0}','differ',X'032609F8DCE6F3255347199CE792F2BBA3FED9571014F4ADA9A0D10765BAAAEF','bato lafi 8');
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
CREATE TABLE stock_move (                  -- [grows] the count is the sum; a wrong count is put right by 'counted'
  id           INTEGER PRIMARY KEY,
  lot_id       INTEGER NOT NULL REFERENCES lot (id),
  session_id   INTEGER REFERENCES session (id),
  at           INTEGER NOT NULL,
  kind         TEXT NOT NULL CHECK (kind IN ('added', 'counted', 'poured', 'given', 'lost', 'held', 'freed')),
  bottles      INTEGER NOT NULL,
  CHECK (CASE kind WHEN 'added' THEN bottles > 0 WHEN 'counted' THEN 1 WHEN 'held' THEN bottles < 0 WHEN 'freed' THEN bottles > 0
                   ELSE bottles < 0 END)
) STRICT;
INSERT INTO "stock_move" VALUES(1,1,NULL,1795977365033,'added',12);
INSERT INTO "stock_move" VALUES(2,2,NULL,1795977365033,'added',12);
INSERT INTO "stock_move" VALUES(3,3,NULL,1795977365034,'added',11);
INSERT INTO "stock_move" VALUES(4,4,NULL,1795977365034,'added',8);
INSERT INTO "stock_move" VALUES(5,5,NULL,1795977365034,'added',23);
INSERT INTO "stock_move" VALUES(6,6,NULL,1795977365034,'added',15);
INSERT INTO "stock_move" VALUES(7,7,NULL,1795977365034,'added',21);
INSERT INTO "stock_move" VALUES(8,8,NULL,1795977365034,'added',2);
INSERT INTO "stock_move" VALUES(9,9,NULL,1795977365035,'added',5);
INSERT INTO "stock_move" VALUES(10,10,NULL,1795977365035,'added',11);
INSERT INTO "stock_move" VALUES(11,3,1,1795977365233,'held',-1);
INSERT INTO "stock_move" VALUES(12,9,1,1795977365233,'held',-1);
CREATE TABLE store (                       -- [live] one row
  one          INTEGER PRIMARY KEY CHECK (one = 1),
  uid          TEXT NOT NULL CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  created_at   INTEGER NOT NULL,
  made_by      TEXT NOT NULL
) STRICT;
INSERT INTO "store" VALUES(1,'805d8d808f782813da3dd6f8713fe8e7',1795977364991,'0.1.0');
CREATE TABLE taster (                      -- [person] the only place where a name stands
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  name         TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 100),
  nickname     TEXT NOT NULL DEFAULT '' CHECK (length(nickname) <= 60),
  is_brewer    INTEGER NOT NULL DEFAULT 0 CHECK (is_brewer IN (0, 1)),
  archived_at  INTEGER
) STRICT;
INSERT INTO "taster" VALUES(1,'0c65be86d5cefea68974e5f6cbda2d74','Odo','',0,NULL);
INSERT INTO "taster" VALUES(2,'9288b84592ba9098e4b4b647633a0c8e','Kit','Wren',0,NULL);
INSERT INTO "taster" VALUES(3,'93da2ba3a6185a7e4e020d73db386669','Bram','Badger',0,NULL);
INSERT INTO "taster" VALUES(4,'a34c86c2ccb7edd1086f064b8314b13d','Ruan','Otter',0,NULL);
INSERT INTO "taster" VALUES(5,'a72902f391ce1c31e52c32a4606f3fc4','Ilse','',0,NULL);
INSERT INTO "taster" VALUES(6,'a88f93e7872a9ef4174589683cb859b5','Nia','',0,NULL);
INSERT INTO "taster" VALUES(7,'acd5d4abe8b11475639a3006032d809a','Tove','Heron',0,NULL);
INSERT INTO "taster" VALUES(8,'e16cf1484e26001ccd1d28d263bf2132','Wenna','',1,NULL);
INSERT INTO "taster" VALUES(9,'eb88b2b9ba2a719f3ae77c497d51c7e3','Piet','',0,NULL);
INSERT INTO "taster" VALUES(10,'ebefca504b3193a7f8b0471047f43cb0','Sorrel','',0,NULL);
INSERT INTO "taster" VALUES(11,'f368744d846609bd02fdd38d9314aacb','Maud','',0,NULL);
INSERT INTO "taster" VALUES(12,'f79bf29e3099141a043dfdea2c7e5721','Ebba','',0,NULL);
CREATE TABLE transition (                  -- what the log may say in which state; filled from the table in the program when the file is made
  state        TEXT NOT NULL,
  kind         TEXT NOT NULL,
  state_after  TEXT NOT NULL,
  PRIMARY KEY (state, kind)
) STRICT, WITHOUT ROWID;
INSERT INTO "transition" VALUES('abandoned','erased','abandoned');
INSERT INTO "transition" VALUES('broken','erased','broken');
INSERT INTO "transition" VALUES('closed','abandoned','abandoned');
INSERT INTO "transition" VALUES('closed','as_poured','closed');
INSERT INTO "transition" VALUES('closed','broken','broken');
INSERT INTO "transition" VALUES('closed','erased','closed');
INSERT INTO "transition" VALUES('closed','revealed','revealed');
INSERT INTO "transition" VALUES('closed','voided','closed');
INSERT INTO "transition" VALUES('draft','sealed','sealed');
INSERT INTO "transition" VALUES('revealed','decided','revealed');
INSERT INTO "transition" VALUES('revealed','erased','revealed');
INSERT INTO "transition" VALUES('sealed','abandoned','abandoned');
INSERT INTO "transition" VALUES('sealed','as_poured','sealed');
INSERT INTO "transition" VALUES('sealed','broken','broken');
INSERT INTO "transition" VALUES('sealed','erased','sealed');
INSERT INTO "transition" VALUES('sealed','opened','tasting');
INSERT INTO "transition" VALUES('sealed','place_left','sealed');
INSERT INTO "transition" VALUES('sealed','place_taken','sealed');
INSERT INTO "transition" VALUES('sealed','pour_sheet_opened','sealed');
INSERT INTO "transition" VALUES('sealed','poured','sealed');
INSERT INTO "transition" VALUES('sealed','said','sealed');
INSERT INTO "transition" VALUES('sealed','spilled','sealed');
INSERT INTO "transition" VALUES('sealed','voided','sealed');
INSERT INTO "transition" VALUES('tasting','abandoned','abandoned');
INSERT INTO "transition" VALUES('tasting','answered','tasting');
INSERT INTO "transition" VALUES('tasting','as_poured','tasting');
INSERT INTO "transition" VALUES('tasting','began','tasting');
INSERT INTO "transition" VALUES('tasting','broken','broken');
INSERT INTO "transition" VALUES('tasting','closed','closed');
INSERT INTO "transition" VALUES('tasting','erased','tasting');
INSERT INTO "transition" VALUES('tasting','judged','tasting');
INSERT INTO "transition" VALUES('tasting','looked','tasting');
INSERT INTO "transition" VALUES('tasting','place_left','tasting');
INSERT INTO "transition" VALUES('tasting','place_taken','tasting');
INSERT INTO "transition" VALUES('tasting','pour_sheet_opened','tasting');
INSERT INTO "transition" VALUES('tasting','poured','tasting');
INSERT INTO "transition" VALUES('tasting','said','tasting');
INSERT INTO "transition" VALUES('tasting','spilled','tasting');
INSERT INTO "transition" VALUES('tasting','voided','tasting');
CREATE TABLE typed (                       -- [person] what a taster has typed and not handed in yet; gone with the hand-in
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  round        INTEGER NOT NULL CHECK (round BETWEEN 1 AND 99),
  body         TEXT NOT NULL CHECK (body GLOB '[[]*]' AND length(body) <= 2000000),
  at           INTEGER NOT NULL,
  PRIMARY KEY (session_id, place),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place)
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
INSERT INTO "voided" VALUES(1,2,1,'mixed_up',7);
CREATE TABLE word_change (                 -- [grows] so that trends can mark where the list is another one
  id           INTEGER PRIMARY KEY,
  at           INTEGER NOT NULL,
  kind         TEXT NOT NULL CHECK (kind IN ('added', 'renamed', 'merged', 'taken_apart', 'retired', 'brought_back')),
  word         TEXT NOT NULL CHECK (length(word) = 32 AND word NOT GLOB '*[^0-9a-f]*'),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 60),   -- what it was called then; before it was renamed
  other        TEXT CHECK (length(other) = 32 AND other NOT GLOB '*[^0-9a-f]*'),
  CHECK ((other IS NOT NULL) = (kind IN ('merged', 'taken_apart')))
) STRICT;
INSERT INTO "word_change" VALUES(1,1795977365036,'added','efbe2edfd890d0034a77ab25f1a8f468','hedge after rain',NULL);
INSERT INTO "word_change" VALUES(2,1795977365037,'added','83e5423c365d0596d896c34b5d2dfb9d','old cupboard',NULL);
INSERT INTO "word_change" VALUES(3,1795977365037,'merged','83e5423c365d0596d896c34b5d2dfb9d','old cupboard','78623108580ddcd428aebd2a032fa4a4');
CREATE TABLE word_retired (                -- [live] no longer offered
  word         TEXT PRIMARY KEY CHECK (length(word) = 32 AND word NOT GLOB '*[^0-9a-f]*'),
  at           INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE word_same_as (                -- [live] merged: answers with the one count as the other
  word         TEXT PRIMARY KEY CHECK (length(word) = 32 AND word NOT GLOB '*[^0-9a-f]*'),
  same_as      TEXT NOT NULL CHECK (length(same_as) = 32 AND same_as NOT GLOB '*[^0-9a-f]*'),
  CHECK (word <> same_as)
) STRICT, WITHOUT ROWID;
INSERT INTO "word_same_as" VALUES('83e5423c365d0596d896c34b5d2dfb9d','78623108580ddcd428aebd2a032fa4a4');
CREATE UNIQUE INDEX one_brewer ON taster (is_brewer) WHERE is_brewer = 1;
CREATE INDEX beverage_maker_taster ON beverage_maker (taster_id);
CREATE VIEW made_by AS                     -- a batch for which nobody is named was made by the brewer
  SELECT beverage_id, taster_id FROM beverage_maker
   UNION ALL
  SELECT b.id, t.id FROM beverage b JOIN taster t ON t.is_brewer = 1
   WHERE b.origin = 'batch' AND NOT EXISTS (SELECT 1 FROM beverage_maker m WHERE m.beverage_id = b.id);
CREATE INDEX lot_of_beverage ON lot (beverage_id);
CREATE INDEX stock_move_of_lot ON stock_move (lot_id);
CREATE INDEX stock_move_of_session ON stock_move (session_id);
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
CREATE INDEX session_lot_lot ON session_lot (lot_id);
CREATE INDEX invited_taster ON invited (taster_id);
CREATE TRIGGER key_opened_after_reveal BEFORE INSERT ON key_opened
  WHEN coalesce((SELECT state FROM session_state WHERE session_id = NEW.session_id), '') NOT IN ('revealed', 'broken')
  BEGIN SELECT RAISE(ABORT, 'key: still sealed'); END;
CREATE TRIGGER key_line_after_reveal BEFORE INSERT ON key_line
  WHEN coalesce((SELECT state FROM session_state WHERE session_id = NEW.session_id), '') NOT IN ('revealed', 'broken')
  BEGIN SELECT RAISE(ABORT, 'key: still sealed'); END;
CREATE INDEX place_person_taster ON place_person (taster_id);
CREATE TRIGGER hand_in_in_time BEFORE INSERT ON hand_in BEGIN
  SELECT RAISE(ABORT, 'answers: not while the session is in this state')
   WHERE (SELECT state FROM session_state WHERE session_id = NEW.session_id) IS NOT 'tasting';
  SELECT RAISE(ABORT, 'answers: whoever sat here has stopped')
   WHERE EXISTS (SELECT 1 FROM place_left WHERE session_id = NEW.session_id AND place = NEW.place);
END;
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
CREATE TRIGGER log_no_update BEFORE UPDATE ON log BEGIN SELECT RAISE(ABORT, 'log: kept as it is'); END;
CREATE TRIGGER log_no_delete BEFORE DELETE ON log BEGIN SELECT RAISE(ABORT, 'log: kept as it is'); END;
CREATE TRIGGER session_plan_no_update BEFORE UPDATE ON session_plan BEGIN SELECT RAISE(ABORT, 'session_plan: kept as it is'); END;
CREATE TRIGGER session_plan_no_delete BEFORE DELETE ON session_plan BEGIN SELECT RAISE(ABORT, 'session_plan: kept as it is'); END;
CREATE TRIGGER session_lot_no_update BEFORE UPDATE ON session_lot BEGIN SELECT RAISE(ABORT, 'session_lot: kept as it is'); END;
CREATE TRIGGER session_lot_no_delete BEFORE DELETE ON session_lot BEGIN SELECT RAISE(ABORT, 'session_lot: kept as it is'); END;
CREATE TRIGGER place_no_update BEFORE UPDATE ON place BEGIN SELECT RAISE(ABORT, 'place: kept as it is'); END;
CREATE TRIGGER place_no_delete BEFORE DELETE ON place BEGIN SELECT RAISE(ABORT, 'place: kept as it is'); END;
CREATE TRIGGER cup_no_update BEFORE UPDATE ON cup BEGIN SELECT RAISE(ABORT, 'cup: kept as it is'); END;
CREATE TRIGGER cup_no_delete BEFORE DELETE ON cup BEGIN SELECT RAISE(ABORT, 'cup: kept as it is'); END;
CREATE TRIGGER sealed_key_no_update BEFORE UPDATE ON sealed_key BEGIN SELECT RAISE(ABORT, 'sealed_key: kept as it is'); END;
CREATE TRIGGER sealed_key_no_delete BEFORE DELETE ON sealed_key BEGIN SELECT RAISE(ABORT, 'sealed_key: kept as it is'); END;
CREATE TRIGGER as_poured_no_update BEFORE UPDATE ON as_poured BEGIN SELECT RAISE(ABORT, 'as_poured: kept as it is'); END;
CREATE TRIGGER as_poured_no_delete BEFORE DELETE ON as_poured BEGIN SELECT RAISE(ABORT, 'as_poured: kept as it is'); END;
CREATE TRIGGER key_opened_no_update BEFORE UPDATE ON key_opened BEGIN SELECT RAISE(ABORT, 'key_opened: kept as it is'); END;
CREATE TRIGGER key_opened_no_delete BEFORE DELETE ON key_opened BEGIN SELECT RAISE(ABORT, 'key_opened: kept as it is'); END;
CREATE TRIGGER key_line_no_update BEFORE UPDATE ON key_line BEGIN SELECT RAISE(ABORT, 'key_line: kept as it is'); END;
CREATE TRIGGER key_line_no_delete BEFORE DELETE ON key_line BEGIN SELECT RAISE(ABORT, 'key_line: kept as it is'); END;
CREATE TRIGGER place_taken_no_update BEFORE UPDATE ON place_taken BEGIN SELECT RAISE(ABORT, 'place_taken: kept as it is'); END;
CREATE TRIGGER place_taken_no_delete BEFORE DELETE ON place_taken BEGIN SELECT RAISE(ABORT, 'place_taken: kept as it is'); END;
CREATE TRIGGER place_left_no_update BEFORE UPDATE ON place_left BEGIN SELECT RAISE(ABORT, 'place_left: kept as it is'); END;
CREATE TRIGGER place_left_no_delete BEFORE DELETE ON place_left BEGIN SELECT RAISE(ABORT, 'place_left: kept as it is'); END;
CREATE TRIGGER spilled_no_update BEFORE UPDATE ON spilled BEGIN SELECT RAISE(ABORT, 'spilled: kept as it is'); END;
CREATE TRIGGER spilled_no_delete BEFORE DELETE ON spilled BEGIN SELECT RAISE(ABORT, 'spilled: kept as it is'); END;
CREATE TRIGGER voided_no_update BEFORE UPDATE ON voided BEGIN SELECT RAISE(ABORT, 'voided: kept as it is'); END;
CREATE TRIGGER voided_no_delete BEFORE DELETE ON voided BEGIN SELECT RAISE(ABORT, 'voided: kept as it is'); END;
CREATE TRIGGER said_aloud_no_update BEFORE UPDATE ON said_aloud BEGIN SELECT RAISE(ABORT, 'said_aloud: kept as it is'); END;
CREATE TRIGGER said_aloud_no_delete BEFORE DELETE ON said_aloud BEGIN SELECT RAISE(ABORT, 'said_aloud: kept as it is'); END;
CREATE TRIGGER erasure_no_update BEFORE UPDATE ON erasure BEGIN SELECT RAISE(ABORT, 'erasure: kept as it is'); END;
CREATE TRIGGER erasure_no_delete BEFORE DELETE ON erasure BEGIN SELECT RAISE(ABORT, 'erasure: kept as it is'); END;
CREATE TRIGGER stock_move_no_update BEFORE UPDATE ON stock_move BEGIN SELECT RAISE(ABORT, 'stock_move: kept as it is'); END;
CREATE TRIGGER stock_move_no_delete BEFORE DELETE ON stock_move BEGIN SELECT RAISE(ABORT, 'stock_move: kept as it is'); END;
CREATE TRIGGER transition_no_update BEFORE UPDATE ON transition BEGIN SELECT RAISE(ABORT, 'transition: kept as it is'); END;
CREATE TRIGGER transition_no_delete BEFORE DELETE ON transition BEGIN SELECT RAISE(ABORT, 'transition: kept as it is'); END;
CREATE TRIGGER hand_in_no_update BEFORE UPDATE ON hand_in BEGIN SELECT RAISE(ABORT, 'hand_in: never changed'); END;
CREATE TRIGGER answer_no_update BEFORE UPDATE ON answer BEGIN SELECT RAISE(ABORT, 'answer: never changed'); END;
CREATE TRIGGER answer_words_no_update BEFORE UPDATE ON answer_words BEGIN SELECT RAISE(ABORT, 'answer_words: never changed'); END;
CREATE TRIGGER remark_no_update BEFORE UPDATE ON remark BEGIN SELECT RAISE(ABORT, 'remark: never changed'); END;
CREATE TRIGGER promise_no_update BEFORE UPDATE ON promise BEGIN SELECT RAISE(ABORT, 'promise: never changed'); END;
CREATE TRIGGER own_word_no_delete BEFORE DELETE ON own_word BEGIN SELECT RAISE(ABORT, 'own_word: retired, never deleted'); END;
CREATE TRIGGER own_word_uid_kept BEFORE UPDATE OF uid ON own_word BEGIN SELECT RAISE(ABORT, 'own_word: its uid is kept'); END;
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
CREATE TRIGGER word_change_no_update BEFORE UPDATE ON word_change BEGIN SELECT RAISE(ABORT, 'word_change: kept as it is'); END;
CREATE TRIGGER word_change_no_delete BEFORE DELETE ON word_change BEGIN SELECT RAISE(ABORT, 'word_change: kept as it is'); END;
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
CREATE TRIGGER typed_gone AFTER INSERT ON hand_in BEGIN
  DELETE FROM typed WHERE session_id = NEW.session_id AND place = NEW.place;
END;
CREATE TRIGGER typed_left AFTER INSERT ON place_left BEGIN
  DELETE FROM typed WHERE session_id = NEW.session_id AND place = NEW.place;
END;
CREATE TRIGGER typed_over AFTER INSERT ON log WHEN NEW.state_after NOT IN ('sealed', 'tasting') BEGIN
  DELETE FROM typed WHERE session_id = NEW.session_id;
END;
CREATE INDEX series_lot ON series (lot_id);
CREATE INDEX series_seen_session ON series_seen (session_id);
CREATE TRIGGER series_seen_no_update BEFORE UPDATE ON series_seen BEGIN SELECT RAISE(ABORT, 'series_seen: kept as it is'); END;
CREATE TRIGGER series_seen_no_delete BEFORE DELETE ON series_seen BEGIN SELECT RAISE(ABORT, 'series_seen: kept as it is'); END;
CREATE TRIGGER series_fixed BEFORE UPDATE OF lot_id, control, control_id, begun_on, main_word, main_limit ON series
  WHEN EXISTS (SELECT 1 FROM series_sitting s JOIN log l ON l.session_id = s.session_id WHERE s.series_id = OLD.id)
  BEGIN SELECT RAISE(ABORT, 'series: fixed once a sitting is sealed'); END;
CREATE TRIGGER series_no_delete BEFORE DELETE ON series
  WHEN EXISTS (SELECT 1 FROM series_sitting s JOIN log l ON l.session_id = s.session_id WHERE s.series_id = OLD.id)
  BEGIN SELECT RAISE(ABORT, 'series: once a sitting is sealed it stays; archive it'); END;
CREATE TRIGGER series_sitting_kept BEFORE UPDATE OF session_id ON series_sitting
  WHEN OLD.session_id IS NOT NULL AND NEW.session_id IS NOT OLD.session_id AND EXISTS (SELECT 1 FROM log WHERE session_id = OLD.session_id)
  BEGIN SELECT RAISE(ABORT, 'series_sitting: a sealed sitting stays in its series'); END;
CREATE TRIGGER series_sitting_no_delete BEFORE DELETE ON series_sitting
  WHEN EXISTS (SELECT 1 FROM log WHERE session_id = OLD.session_id)
  BEGIN SELECT RAISE(ABORT, 'series_sitting: a sealed sitting stays in its series'); END;
CREATE INDEX batch_note_of ON batch_note (beverage_id, done_on);
CREATE TRIGGER batch_note_no_update BEFORE UPDATE ON batch_note BEGIN SELECT RAISE(ABORT, 'batch_note: kept as it is'); END;
CREATE TRIGGER batch_note_no_delete BEFORE DELETE ON batch_note BEGIN SELECT RAISE(ABORT, 'batch_note: kept as it is'); END;
CREATE TRIGGER open_answer_no_update BEFORE UPDATE ON open_answer BEGIN SELECT RAISE(ABORT, 'open_answer: never changed'); END;
CREATE TRIGGER open_answer_late BEFORE INSERT ON open_answer BEGIN
  SELECT RAISE(ABORT, 'open_answer: only after the reveal')
   WHERE (SELECT state FROM session_state WHERE session_id = NEW.session_id) <> 'revealed';
  SELECT RAISE(ABORT, 'open_answer: no such answer') WHERE NOT EXISTS
    (SELECT 1 FROM item i WHERE i.session_id = NEW.session_id AND i.item = NEW.item AND i.per_cup = 1 AND NEW.value BETWEEN i.low AND i.high);
END;
COMMIT;
