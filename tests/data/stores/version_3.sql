PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE store (                       -- [live] one row
  one          INTEGER PRIMARY KEY CHECK (one = 1),
  uid          TEXT NOT NULL CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  created_at   INTEGER NOT NULL,
  made_by      TEXT NOT NULL
) STRICT;
INSERT INTO store VALUES(1,'25eb8c48ff89cb854fc09081cc47edfc',1764000001000,'0.1.0');
CREATE TABLE house_rules (                 -- [live] one row
  one          INTEGER PRIMARY KEY CHECK (one = 1),
  ceiling_g    INTEGER NOT NULL DEFAULT 20 CHECK (ceiling_g BETWEEN 1 AND 100),
  country      TEXT NOT NULL DEFAULT 'GB' CHECK (length(country) = 2)
) STRICT;
INSERT INTO house_rules VALUES(1,20,'GB');
CREATE TABLE backup_made (                 -- [live] so that an erasure can name the older copies that still hold the person
  path         TEXT PRIMARY KEY,
  at           INTEGER NOT NULL,
  reason       TEXT NOT NULL CHECK (reason IN ('asked', 'before_migration', 'after_reveal', 'before_restore'))
) STRICT;
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
INSERT INTO beverage VALUES(1,'19c7f35c4abe2ea0d897b741714d0380','batch','mead','Heather mead',NULL,NULL,1200,'gravities','known',NULL);
INSERT INTO beverage VALUES(2,'4c2b141e2467072dc439f0fcd2600d0a','reference','mead','Bought mead',NULL,NULL,1150,'label','not_known',NULL);
CREATE TABLE beverage_allergen (           -- [live]
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id) ON DELETE CASCADE,
  allergen     TEXT NOT NULL CHECK (allergen IN ('gluten', 'egg', 'fish', 'milk', 'nuts', 'peanuts', 'soy', 'sesame', 'mustard',
                                                 'celery', 'lupin', 'molluscs', 'crustaceans', 'sulphites')),
  PRIMARY KEY (beverage_id, allergen)
) STRICT, WITHOUT ROWID;
INSERT INTO beverage_allergen VALUES(1,'sulphites');
CREATE TABLE taster (                      -- [person] the only place where a name stands
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  name         TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 100),
  nickname     TEXT NOT NULL DEFAULT '' CHECK (length(nickname) <= 60),
  is_brewer    INTEGER NOT NULL DEFAULT 0 CHECK (is_brewer IN (0, 1)),
  archived_at  INTEGER
) STRICT;
INSERT INTO taster VALUES(1,'8619b214fe6592d48bfcea9c9d8e3244','Wenna Tarn','',1,NULL);
INSERT INTO taster VALUES(2,'d7d7e9f1f7de60568de989073f3d1639','Odo Pell','',0,NULL);
INSERT INTO taster VALUES(3,'01803cd108d88d73afea79c81e4783c6','Friend A','fox 0',0,NULL);
INSERT INTO taster VALUES(4,'95313903c418f12b4c1a34506d7329d2','Friend B','fox 1',0,NULL);
INSERT INTO taster VALUES(5,'0f40c4196fe2d7871a99681609c3e77e','Friend C','fox 2',0,NULL);
INSERT INTO taster VALUES(6,'177d649ba53953a68820a20a178fef57','Friend D','fox 3',0,NULL);
CREATE TABLE beverage_maker (              -- [live] who had a hand in a batch
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id) ON DELETE CASCADE,
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  PRIMARY KEY (beverage_id, taster_id)
) STRICT, WITHOUT ROWID;
INSERT INTO beverage_maker VALUES(1,1);
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
INSERT INTO lot VALUES(1,'f8fdcd0634d5c6024cdb95cb074dc84b',1,'bottled in March',NULL,NULL,750,'','',NULL);
INSERT INTO lot VALUES(2,'177c51877998cadc94a08cc15e3ce998',2,'vintage 2',NULL,NULL,750,'','',NULL);
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
INSERT INTO stock_move VALUES(1,1,NULL,1764000002000,'added',12);
INSERT INTO stock_move VALUES(2,2,NULL,1764000003000,'added',12);
INSERT INTO stock_move VALUES(3,1,1,1764000007000,'held',-1);
INSERT INTO stock_move VALUES(4,2,1,1764000007000,'held',-1);
INSERT INTO stock_move VALUES(5,1,1,1764000036000,'freed',1);
INSERT INTO stock_move VALUES(6,2,1,1764000036000,'freed',1);
INSERT INTO stock_move VALUES(7,1,1,1764000036000,'poured',-1);
INSERT INTO stock_move VALUES(8,2,1,1764000036000,'poured',-1);
INSERT INTO stock_move VALUES(9,1,2,1764000042000,'held',-1);
INSERT INTO stock_move VALUES(10,2,2,1764000042000,'held',-1);
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
CREATE TABLE session (                     -- [live] title and archiving only; everything else is plan or log
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  title        TEXT NOT NULL CHECK (length(title) <= 200),
  guest_title  TEXT NOT NULL DEFAULT '' CHECK (length(guest_title) <= 200),
  came_from    TEXT NOT NULL CHECK (came_from IN ('here', 'import', 'demo')),
  created_at   INTEGER NOT NULL,
  archived_at  INTEGER
) STRICT;
INSERT INTO session VALUES(1,'52736182ecdc67620ab660e952d6c6c2','Heather against bought','An evening with cups','here',1764000004000,NULL);
INSERT INTO session VALUES(2,'fae6dbf58828c50507ce25694e211bb3','Which is the odd one this time?','Once more','here',1764000039000,NULL);
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
INSERT INTO transition VALUES('abandoned','erased','abandoned');
INSERT INTO transition VALUES('broken','erased','broken');
INSERT INTO transition VALUES('closed','abandoned','abandoned');
INSERT INTO transition VALUES('closed','as_poured','closed');
INSERT INTO transition VALUES('closed','broken','broken');
INSERT INTO transition VALUES('closed','erased','closed');
INSERT INTO transition VALUES('closed','revealed','revealed');
INSERT INTO transition VALUES('closed','voided','closed');
INSERT INTO transition VALUES('draft','sealed','sealed');
INSERT INTO transition VALUES('revealed','decided','revealed');
INSERT INTO transition VALUES('revealed','erased','revealed');
INSERT INTO transition VALUES('sealed','abandoned','abandoned');
INSERT INTO transition VALUES('sealed','as_poured','sealed');
INSERT INTO transition VALUES('sealed','broken','broken');
INSERT INTO transition VALUES('sealed','erased','sealed');
INSERT INTO transition VALUES('sealed','opened','tasting');
INSERT INTO transition VALUES('sealed','place_left','sealed');
INSERT INTO transition VALUES('sealed','place_taken','sealed');
INSERT INTO transition VALUES('sealed','pour_sheet_opened','sealed');
INSERT INTO transition VALUES('sealed','poured','sealed');
INSERT INTO transition VALUES('sealed','said','sealed');
INSERT INTO transition VALUES('sealed','spilled','sealed');
INSERT INTO transition VALUES('sealed','voided','sealed');
INSERT INTO transition VALUES('tasting','abandoned','abandoned');
INSERT INTO transition VALUES('tasting','answered','tasting');
INSERT INTO transition VALUES('tasting','as_poured','tasting');
INSERT INTO transition VALUES('tasting','began','tasting');
INSERT INTO transition VALUES('tasting','broken','broken');
INSERT INTO transition VALUES('tasting','closed','closed');
INSERT INTO transition VALUES('tasting','erased','tasting');
INSERT INTO transition VALUES('tasting','judged','tasting');
INSERT INTO transition VALUES('tasting','looked','tasting');
INSERT INTO transition VALUES('tasting','place_left','tasting');
INSERT INTO transition VALUES('tasting','place_taken','tasting');
INSERT INTO transition VALUES('tasting','pour_sheet_opened','tasting');
INSERT INTO transition VALUES('tasting','poured','tasting');
INSERT INTO transition VALUES('tasting','said','tasting');
INSERT INTO transition VALUES('tasting','spilled','tasting');
INSERT INTO transition VALUES('tasting','voided','tasting');
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
INSERT INTO log VALUES(1,1,1764000007000,'sealed','sealed','{"commitment":"2159f1ccf24d7ba3703c52c6c07ff07f82876f7b608456bda4ae542fba2f8f50","plan":"1adf6e259abd9d2f1bc35bf2d5e1fe07b23b175226f8a61440693d7dac362517","schema":1}',X'0000000000000000000000000000000000000000000000000000000000000000',X'c6ac066caac10875d322cb4b82f13770315eb2790382740e8f19cd88ea48465c');
INSERT INTO log VALUES(1,2,1764000008000,'pour_sheet_opened','sealed','{}',X'c6ac066caac10875d322cb4b82f13770315eb2790382740e8f19cd88ea48465c',X'd0196a7aaa7e320abe7e3b3a249a74a491dc58927586ca921c23a34050221dfd');
INSERT INTO log VALUES(1,3,1764000009000,'poured','sealed','{}',X'd0196a7aaa7e320abe7e3b3a249a74a491dc58927586ca921c23a34050221dfd',X'96f1371e99c1eb53eedfb1b6857e74167d378deda37bc103fa354dbce818e8af');
INSERT INTO log VALUES(1,4,1764000010000,'place_taken','sealed','{"as":"signed","maker":false,"place":1}',X'96f1371e99c1eb53eedfb1b6857e74167d378deda37bc103fa354dbce818e8af',X'dca2ee327fb1a85e438af8ab11bb21d49599230848ef831a7da3f8deb7aef6c6');
INSERT INTO log VALUES(1,5,1764000011000,'place_taken','sealed','{"as":"signed","maker":false,"place":2}',X'dca2ee327fb1a85e438af8ab11bb21d49599230848ef831a7da3f8deb7aef6c6',X'b82616dc3e048026d663bfa01d7fd0574161cff4c1ad765cfd526106cdc3785e');
INSERT INTO log VALUES(1,6,1764000012000,'place_taken','sealed','{"as":"signed","maker":false,"place":3}',X'b82616dc3e048026d663bfa01d7fd0574161cff4c1ad765cfd526106cdc3785e',X'd62cefd4fc752dafb88ee7042de501a24da6e6d2bd92b0ea8fbaa72f77e89bd8');
INSERT INTO log VALUES(1,7,1764000013000,'place_taken','sealed','{"as":"signed","maker":false,"place":4}',X'd62cefd4fc752dafb88ee7042de501a24da6e6d2bd92b0ea8fbaa72f77e89bd8',X'a295c41aec08e9ecf25e68588d33c3e5e531e58fbc636774b20a3608b0471489');
INSERT INTO log VALUES(1,8,1764000014000,'place_taken','sealed','{"as":"signed","maker":true,"place":5}',X'a295c41aec08e9ecf25e68588d33c3e5e531e58fbc636774b20a3608b0471489',X'573e9354b365b81046b8ed2ced0b106e2f69e373774faae6da38f081d82adba8');
INSERT INTO log VALUES(1,9,1764000015000,'opened','tasting','{}',X'573e9354b365b81046b8ed2ced0b106e2f69e373774faae6da38f081d82adba8',X'33f51470808c8820002524b8a8c28b07110c1ca373079ffd08fd7b7cf467fffb');
INSERT INTO log VALUES(1,10,1764000015000,'began','tasting','{"place":1,"round":1}',X'33f51470808c8820002524b8a8c28b07110c1ca373079ffd08fd7b7cf467fffb',X'15e0d66a8f6d3535121586884063536477b92ad1c0e849094a56cbbfbb0160d4');
INSERT INTO log VALUES(1,11,1764000016000,'answered','tasting','{"digest":"5a4f7fd483dc16261f916fe72eb0d5dc134544749fc0aae120cb8e0625c03fa1","place":1,"round":1}',X'15e0d66a8f6d3535121586884063536477b92ad1c0e849094a56cbbfbb0160d4',X'979df2c82e74089c406be1aef5f6dc6986ee710fd1a96f10736e51cf51a0722c');
INSERT INTO log VALUES(1,12,1764000017000,'began','tasting','{"place":1,"round":2}',X'979df2c82e74089c406be1aef5f6dc6986ee710fd1a96f10736e51cf51a0722c',X'aa018884dc0ddbdd2daa8531dbc8441b7ec36ea7915657e7b63021d7abf0d853');
INSERT INTO log VALUES(1,13,1764000018000,'answered','tasting','{"digest":"8aecb11087689fe10ac592c348929a4bd07a4d366ffc2172ea89cc20058662af","place":1,"round":2}',X'aa018884dc0ddbdd2daa8531dbc8441b7ec36ea7915657e7b63021d7abf0d853',X'dff57b0ee04b8cfc4fdf6820bf473355592668635f283aaf4259b5713521150b');
INSERT INTO log VALUES(1,14,1764000019000,'began','tasting','{"place":2,"round":1}',X'dff57b0ee04b8cfc4fdf6820bf473355592668635f283aaf4259b5713521150b',X'fd5ace2e626d3dfed955921726bcdc81e9235f687c28cb0f0237cf92f182a13a');
INSERT INTO log VALUES(1,15,1764000020000,'answered','tasting','{"digest":"1f7dfb06af52efcbeb9e3e773606ddbd93b303d01a3a6f8780eb9fc9ec18d4f7","place":2,"round":1}',X'fd5ace2e626d3dfed955921726bcdc81e9235f687c28cb0f0237cf92f182a13a',X'5fa25fbab1254344898ca5dc2d59254bd6db980ff0f72e919fcfeb1a57381f6c');
INSERT INTO log VALUES(1,16,1764000021000,'began','tasting','{"place":2,"round":2}',X'5fa25fbab1254344898ca5dc2d59254bd6db980ff0f72e919fcfeb1a57381f6c',X'd03a669b93292c15561c442759dffe31810dfe3ceec68b9e9582be82d06bbc40');
INSERT INTO log VALUES(1,17,1764000022000,'answered','tasting','{"digest":"70a1995bbca4b0b1c6bb336563c1775ab4c582b66fae84b3e9e9ba60d362e56a","place":2,"round":2}',X'd03a669b93292c15561c442759dffe31810dfe3ceec68b9e9582be82d06bbc40',X'87278f3b91feaabc658c20bca056df376f06340dee974a4ccd84bd7e685d1c1f');
INSERT INTO log VALUES(1,18,1764000023000,'began','tasting','{"place":3,"round":1}',X'87278f3b91feaabc658c20bca056df376f06340dee974a4ccd84bd7e685d1c1f',X'5a55f916d0a0ab670b0b3d996febba570ef06673efc0ede3eb59b801409ba609');
INSERT INTO log VALUES(1,19,1764000024000,'answered','tasting','{"digest":"1144a29acdd34e202e44952c2d26839255683cb177c114e9d0b36ec4fdc34fa3","place":3,"round":1}',X'5a55f916d0a0ab670b0b3d996febba570ef06673efc0ede3eb59b801409ba609',X'7d22c8f7cb36ea78bbd88ccad4a193dc39924ed532679c6ac83bd9481b1a2725');
INSERT INTO log VALUES(1,20,1764000025000,'began','tasting','{"place":3,"round":2}',X'7d22c8f7cb36ea78bbd88ccad4a193dc39924ed532679c6ac83bd9481b1a2725',X'329ecc63c59bc4cf0a749dfeb63c911217c7272bccde9e2271746e15bd1e92c6');
INSERT INTO log VALUES(1,21,1764000026000,'answered','tasting','{"digest":"f799814c4de7fded2d8e954fc0bb4ea7fbab8fc8b7e001137c6f9c14f4736eea","place":3,"round":2}',X'329ecc63c59bc4cf0a749dfeb63c911217c7272bccde9e2271746e15bd1e92c6',X'0ca089cf5254e36c271aa0291ee7965483cbf41559aadb003ad4fa78dffc68b9');
INSERT INTO log VALUES(1,22,1764000027000,'began','tasting','{"place":4,"round":1}',X'0ca089cf5254e36c271aa0291ee7965483cbf41559aadb003ad4fa78dffc68b9',X'68097a1e0dbf5ee798227d05cacae14fd189379735d6d5d6382251c2caf1daf4');
INSERT INTO log VALUES(1,23,1764000028000,'answered','tasting','{"digest":"9ea10dce2bef69acf8feaf8a7a8f66c633868f3fecce3c83802fecd037a970fc","place":4,"round":1}',X'68097a1e0dbf5ee798227d05cacae14fd189379735d6d5d6382251c2caf1daf4',X'76478fb471b488d72b2ce854214631fc18d2e844fa0ff1c3ee1966520563524b');
INSERT INTO log VALUES(1,24,1764000029000,'began','tasting','{"place":4,"round":2}',X'76478fb471b488d72b2ce854214631fc18d2e844fa0ff1c3ee1966520563524b',X'036707a70d8921d8abd76f7929a661b303570313602fe5e7e342bb1441b41250');
INSERT INTO log VALUES(1,25,1764000030000,'answered','tasting','{"digest":"07b2d7f02469d0c84d92162a2842c14cc4d38c510cdc7665cfc23d5b6353dbfc","place":4,"round":2}',X'036707a70d8921d8abd76f7929a661b303570313602fe5e7e342bb1441b41250',X'9c531fd4b37ad4a6cfa7ed5409d7fa401f48a1ae23fa4d278898724bce63a5de');
INSERT INTO log VALUES(1,26,1764000031000,'began','tasting','{"place":5,"round":1}',X'9c531fd4b37ad4a6cfa7ed5409d7fa401f48a1ae23fa4d278898724bce63a5de',X'12c20acbe71df294187caa2a48479ff90ffd1eed0f03d336778e77674102affa');
INSERT INTO log VALUES(1,27,1764000032000,'answered','tasting','{"digest":"107e506dd7652011ec7b5f616f97e24df46fc85c4ffebef59b6df54d2d7afb20","place":5,"round":1}',X'12c20acbe71df294187caa2a48479ff90ffd1eed0f03d336778e77674102affa',X'8c47aa4b7d2297a5be1ebb5067cd110bbce2c83103dce1559f657162c0f1318a');
INSERT INTO log VALUES(1,28,1764000033000,'began','tasting','{"place":5,"round":2}',X'8c47aa4b7d2297a5be1ebb5067cd110bbce2c83103dce1559f657162c0f1318a',X'c31708018d32ba350d836ed07ebab3d6aced89e1c6942cb21a577e2dfef0c601');
INSERT INTO log VALUES(1,29,1764000034000,'answered','tasting','{"digest":"ded5ded9fa5a2e6ace010a7dc833c6a5e3a722e606f0e675c685e6aa1b6ae1fc","place":5,"round":2}',X'c31708018d32ba350d836ed07ebab3d6aced89e1c6942cb21a577e2dfef0c601',X'cfd7ee82b1dc240a4e3c806620e3225824196de7652889876ccf004a03d09b97');
INSERT INTO log VALUES(1,30,1764000035000,'closed','closed','{"missing":0}',X'cfd7ee82b1dc240a4e3c806620e3225824196de7652889876ccf004a03d09b97',X'3e942494b3260dc991bc4b3bb93ea9fa7576f8b18c677befff1e744740c2c20d');
INSERT INTO log VALUES(1,31,1764000036000,'revealed','revealed','{}',X'3e942494b3260dc991bc4b3bb93ea9fa7576f8b18c677befff1e744740c2c20d',X'd23b1d470dc82c0abc8c4bcc79864c10e2a26b2486a09dd1a73ffb2630edaa86');
INSERT INTO log VALUES(2,1,1764000042000,'sealed','sealed','{"commitment":"92a6257ffd0d2d1699ab4fe252002838e2101c39acf769682e7e630ca1422d43","plan":"48e110e3069d1749210b5892fc503d811e7b52e9cb3756e5b80456fd54c80385","schema":1}',X'0000000000000000000000000000000000000000000000000000000000000000',X'c5bf95227d29ab4be30e110b642f8d0410c029efaf028f0ee035c31123c7ea8e');
INSERT INTO log VALUES(2,2,1764000043000,'pour_sheet_opened','sealed','{}',X'c5bf95227d29ab4be30e110b642f8d0410c029efaf028f0ee035c31123c7ea8e',X'b091bcf0c75f15c4e2cc10fe4e1b351397b08a004c76ef5a617d938f6887a810');
INSERT INTO log VALUES(2,3,1764000044000,'poured','sealed','{}',X'b091bcf0c75f15c4e2cc10fe4e1b351397b08a004c76ef5a617d938f6887a810',X'abff7cbc65596ca8d97ffe7d001f8c4c1ed4f515e5db16b2f8a0806e63f33de3');
INSERT INTO log VALUES(2,4,1764000045000,'place_taken','sealed','{"as":"signed","maker":false,"place":1}',X'abff7cbc65596ca8d97ffe7d001f8c4c1ed4f515e5db16b2f8a0806e63f33de3',X'c63f61930de03b401960682c71afa54c6b2c89497d9930cca850792241cfbf7f');
INSERT INTO log VALUES(2,5,1764000046000,'place_taken','sealed','{"as":"nickname","maker":false,"place":2}',X'c63f61930de03b401960682c71afa54c6b2c89497d9930cca850792241cfbf7f',X'1a3735d3b60b269d5be6caec85c39b8d15fa52465d5cd60a131dbe646d5dcd41');
INSERT INTO log VALUES(2,6,1764000047000,'opened','tasting','{}',X'1a3735d3b60b269d5be6caec85c39b8d15fa52465d5cd60a131dbe646d5dcd41',X'ba072531c1f6f3c886a9406078179aecbc943d1c06e2f2e67bd7b18edc28f2bc');
INSERT INTO log VALUES(2,7,1764000047000,'began','tasting','{"place":1,"round":1}',X'ba072531c1f6f3c886a9406078179aecbc943d1c06e2f2e67bd7b18edc28f2bc',X'3cf63855bec58afb37a13f5076870b3a1fcfd3c3fb242112b11cbc042fd7149f');
INSERT INTO log VALUES(2,8,1764000048000,'answered','tasting','{"digest":"3a13d0649235fbb0d5e695af56e5a84efa038096d96289c6cf6cb1902552eb19","place":1,"round":1}',X'3cf63855bec58afb37a13f5076870b3a1fcfd3c3fb242112b11cbc042fd7149f',X'e7696d44f73a0817bc8f72c0fd75a04d9d828de63158014d081260096405ff96');
CREATE TABLE session_plan (                -- [frozen] names, strengths, allergens as they were; reports read these, never the live shelf
  session_id   INTEGER PRIMARY KEY REFERENCES session (id),
  body         TEXT NOT NULL CHECK (body GLOB '{*}'),     -- canonical JSON, hashed
  question     TEXT NOT NULL,              -- as in the body, for lists
  commitment   BLOB NOT NULL CHECK (length(commitment) = 32),
  seal_mark    TEXT NOT NULL CHECK (length(seal_mark) = 11)
) STRICT;
INSERT INTO session_plan VALUES(1,'{"analysis":{"alpha_pm":50,"gamma_pm":300,"limit_pm":null,"seeks":"difference","test":"exact_binomial"},"ceiling_g":20,"claim":"table","country":"GB","cup_ml":15,"cups":[{"code":327,"place":1,"position":1,"round":1,"spare":0},{"code":739,"place":1,"position":1,"round":1,"spare":1},{"code":843,"place":1,"position":2,"round":1,"spare":0},{"code":921,"place":1,"position":2,"round":1,"spare":1},{"code":453,"place":1,"position":3,"round":1,"spare":0},{"code":462,"place":1,"position":3,"round":1,"spare":1},{"code":270,"place":1,"position":1,"round":2,"spare":0},{"code":738,"place":1,"position":1,"round":2,"spare":1},{"code":598,"place":1,"position":2,"round":2,"spare":0},{"code":928,"place":1,"position":2,"round":2,"spare":1},{"code":854,"place":1,"position":3,"round":2,"spare":0},{"code":653,"place":1,"position":3,"round":2,"spare":1},{"code":260,"place":2,"position":1,"round":1,"spare":0},{"code":249,"place":2,"position":1,"round":1,"spare":1},{"code":412,"place":2,"position":2,"round":1,"spare":0},{"code":296,"place":2,"position":2,"round":1,"spare":1},{"code":275,"place":2,"position":3,"round":1,"spare":0},{"code":582,"place":2,"position":3,"round":1,"spare":1},{"code":241,"place":2,"position":1,"round":2,"spare":0},{"code":375,"place":2,"position":1,"round":2,"spare":1},{"code":516,"place":2,"position":2,"round":2,"spare":0},{"code":328,"place":2,"position":2,"round":2,"spare":1},{"code":403,"place":2,"position":3,"round":2,"spare":0},{"code":436,"place":2,"position":3,"round":2,"spare":1},{"code":246,"place":3,"position":1,"round":1,"spare":0},{"code":324,"place":3,"position":1,"round":1,"spare":1},{"code":475,"place":3,"position":2,"round":1,"spare":0},{"code":897,"place":3,"position":2,"round":1,"spare":1},{"code":692,"place":3,"position":3,"round":1,"spare":0},{"code":427,"place":3,"position":3,"round":1,"spare":1},{"code":862,"place":3,"position":1,"round":2,"spare":0},{"code":519,"place":3,"position":1,"round":2,"spare":1},{"code":326,"place":3,"position":2,"round":2,"spare":0},{"code":947,"place":3,"position":2,"round":2,"spare":1},{"code":853,"place":3,"position":3,"round":2,"spare":0},{"code":374,"place":3,"position":3,"round":2,"spare":1},{"code":268,"place":4,"position":1,"round":1,"spare":0},{"code":683,"place":4,"position":1,"round":1,"spare":1},{"code":217,"place":4,"position":2,"round":1,"spare":0},{"code":607,"place":4,"position":2,"round":1,"spare":1},{"code":571,"place":4,"position":3,"round":1,"spare":0},{"code":870,"place":4,"position":3,"round":1,"spare":1},{"code":138,"place":4,"position":1,"round":2,"spare":0},{"code":863,"place":4,"position":1,"round":2,"spare":1},{"code":317,"place":4,"position":2,"round":2,"spare":0},{"code":752,"place":4,"position":2,"round":2,"spare":1},{"code":856,"place":4,"position":3,"round":2,"spare":0},{"code":976,"place":4,"position":3,"round":2,"spare":1},{"code":417,"place":5,"position":1,"round":1,"spare":0},{"code":276,"place":5,"position":1,"round":1,"spare":1},{"code":834,"place":5,"position":2,"round":1,"spare":0},{"code":149,"place":5,"position":2,"round":1,"spare":1},{"code":251,"place":5,"position":3,"round":1,"spare":0},{"code":409,"place":5,"position":3,"round":1,"spare":1},{"code":534,"place":5,"position":1,"round":2,"spare":0},{"code":765,"place":5,"position":1,"round":2,"spare":1},{"code":351,"place":5,"position":2,"round":2,"spare":0},{"code":709,"place":5,"position":2,"round":2,"spare":1},{"code":831,"place":5,"position":3,"round":2,"spare":0},{"code":193,"place":5,"position":3,"round":2,"spare":1},{"code":439,"place":6,"position":1,"round":1,"spare":0},{"code":304,"place":6,"position":1,"round":1,"spare":1},{"code":864,"place":6,"position":2,"round":1,"spare":0},{"code":543,"place":6,"position":2,"round":1,"spare":1},{"code":265,"place":6,"position":3,"round":1,"spare":0},{"code":871,"place":6,"position":3,"round":1,"spare":1},{"code":965,"place":6,"position":1,"round":2,"spare":0},{"code":340,"place":6,"position":1,"round":2,"spare":1},{"code":307,"place":6,"position":2,"round":2,"spare":0},{"code":876,"place":6,"position":2,"round":2,"spare":1},{"code":937,"place":6,"position":3,"round":2,"spare":0},{"code":509,"place":6,"position":3,"round":2,"spare":1}],"items":[{"high":null,"item":1,"kind":"choose","low":null,"required":true},{"high":3,"item":2,"kind":"sureness","low":1,"required":true},{"high":6,"item":3,"kind":"clue","low":1,"required":true},{"high":null,"item":4,"kind":"words","low":null,"required":false}],"lots":[{"abv_bp":1200,"allergens":["sulphites"],"best_before":"","beverage":"Heather mead","bottle_ml":750,"ingredients":"known","kind":"mead","lot":"f8fdcd0634d5c6024cdb95cb074dc84b","name":"bottled in March","origin":"batch","packaged_on":"","slot":1,"storage":""},{"abv_bp":1150,"allergens":[],"best_before":"","beverage":"Bought mead","bottle_ml":750,"ingredients":"not_known","kind":"mead","lot":"177c51877998cadc94a08cc15e3ce998","name":"vintage 2","origin":"reference","packaged_on":"","slot":2,"storage":""}],"makers":1,"method":"triangle","panel":4,"places":6,"pourer":true,"promises":{"not_shown":"c8063987b40968bfcd60c3a84947abc5dce75ca41d2abefd2ee5d6026f285921","shown":"d704bc01c956bdd07db252a96c13bca327cdbfea9e6ea863184623be5f78f342"},"question":"differ","rounds":2,"spares":1}','differ',X'2159f1ccf24d7ba3703c52c6c07ff07f82876f7b608456bda4ae542fba2f8f50','faki puti 4');
INSERT INTO session_plan VALUES(2,'{"analysis":{"alpha_pm":50,"gamma_pm":300,"limit_pm":null,"seeks":"difference","test":"exact_binomial"},"ceiling_g":20,"claim":"table","country":"GB","cup_ml":15,"cups":[{"code":387,"place":1,"position":1,"round":1,"spare":0},{"code":872,"place":1,"position":1,"round":1,"spare":1},{"code":706,"place":1,"position":2,"round":1,"spare":0},{"code":834,"place":1,"position":2,"round":1,"spare":1},{"code":107,"place":1,"position":3,"round":1,"spare":0},{"code":904,"place":1,"position":3,"round":1,"spare":1},{"code":279,"place":1,"position":4,"round":1,"spare":0},{"code":546,"place":1,"position":4,"round":1,"spare":1},{"code":708,"place":1,"position":1,"round":2,"spare":0},{"code":380,"place":1,"position":1,"round":2,"spare":1},{"code":239,"place":1,"position":2,"round":2,"spare":0},{"code":312,"place":1,"position":2,"round":2,"spare":1},{"code":210,"place":1,"position":3,"round":2,"spare":0},{"code":865,"place":1,"position":3,"round":2,"spare":1},{"code":409,"place":1,"position":4,"round":2,"spare":0},{"code":602,"place":1,"position":4,"round":2,"spare":1},{"code":965,"place":2,"position":1,"round":1,"spare":0},{"code":319,"place":2,"position":1,"round":1,"spare":1},{"code":740,"place":2,"position":2,"round":1,"spare":0},{"code":472,"place":2,"position":2,"round":1,"spare":1},{"code":350,"place":2,"position":3,"round":1,"spare":0},{"code":367,"place":2,"position":3,"round":1,"spare":1},{"code":461,"place":2,"position":4,"round":1,"spare":0},{"code":194,"place":2,"position":4,"round":1,"spare":1},{"code":962,"place":2,"position":1,"round":2,"spare":0},{"code":627,"place":2,"position":1,"round":2,"spare":1},{"code":502,"place":2,"position":2,"round":2,"spare":0},{"code":521,"place":2,"position":2,"round":2,"spare":1},{"code":894,"place":2,"position":3,"round":2,"spare":0},{"code":951,"place":2,"position":3,"round":2,"spare":1},{"code":481,"place":2,"position":4,"round":2,"spare":0},{"code":850,"place":2,"position":4,"round":2,"spare":1},{"code":471,"place":3,"position":1,"round":1,"spare":0},{"code":157,"place":3,"position":1,"round":1,"spare":1},{"code":254,"place":3,"position":2,"round":1,"spare":0},{"code":543,"place":3,"position":2,"round":1,"spare":1},{"code":358,"place":3,"position":3,"round":1,"spare":0},{"code":276,"place":3,"position":3,"round":1,"spare":1},{"code":684,"place":3,"position":4,"round":1,"spare":0},{"code":496,"place":3,"position":4,"round":1,"spare":1},{"code":548,"place":3,"position":1,"round":2,"spare":0},{"code":826,"place":3,"position":1,"round":2,"spare":1},{"code":902,"place":3,"position":2,"round":2,"spare":0},{"code":179,"place":3,"position":2,"round":2,"spare":1},{"code":620,"place":3,"position":3,"round":2,"spare":0},{"code":984,"place":3,"position":3,"round":2,"spare":1},{"code":564,"place":3,"position":4,"round":2,"spare":0},{"code":216,"place":3,"position":4,"round":2,"spare":1},{"code":326,"place":4,"position":1,"round":1,"spare":0},{"code":218,"place":4,"position":1,"round":1,"spare":1},{"code":731,"place":4,"position":2,"round":1,"spare":0},{"code":805,"place":4,"position":2,"round":1,"spare":1},{"code":453,"place":4,"position":3,"round":1,"spare":0},{"code":285,"place":4,"position":3,"round":1,"spare":1},{"code":762,"place":4,"position":4,"round":1,"spare":0},{"code":294,"place":4,"position":4,"round":1,"spare":1},{"code":413,"place":4,"position":1,"round":2,"spare":0},{"code":354,"place":4,"position":1,"round":2,"spare":1},{"code":396,"place":4,"position":2,"round":2,"spare":0},{"code":971,"place":4,"position":2,"round":2,"spare":1},{"code":925,"place":4,"position":3,"round":2,"spare":0},{"code":597,"place":4,"position":3,"round":2,"spare":1},{"code":617,"place":4,"position":4,"round":2,"spare":0},{"code":675,"place":4,"position":4,"round":2,"spare":1},{"code":754,"place":5,"position":1,"round":1,"spare":0},{"code":921,"place":5,"position":1,"round":1,"spare":1},{"code":480,"place":5,"position":2,"round":1,"spare":0},{"code":719,"place":5,"position":2,"round":1,"spare":1},{"code":429,"place":5,"position":3,"round":1,"spare":0},{"code":673,"place":5,"position":3,"round":1,"spare":1},{"code":236,"place":5,"position":4,"round":1,"spare":0},{"code":152,"place":5,"position":4,"round":1,"spare":1},{"code":482,"place":5,"position":1,"round":2,"spare":0},{"code":289,"place":5,"position":1,"round":2,"spare":1},{"code":162,"place":5,"position":2,"round":2,"spare":0},{"code":694,"place":5,"position":2,"round":2,"spare":1},{"code":430,"place":5,"position":3,"round":2,"spare":0},{"code":974,"place":5,"position":3,"round":2,"spare":1},{"code":495,"place":5,"position":4,"round":2,"spare":0},{"code":903,"place":5,"position":4,"round":2,"spare":1}],"items":[{"high":null,"item":1,"kind":"choose","low":null,"required":true},{"high":null,"item":2,"kind":"choose","low":null,"required":true},{"high":3,"item":3,"kind":"sureness","low":1,"required":true},{"high":6,"item":4,"kind":"clue","low":1,"required":true},{"high":null,"item":5,"kind":"words","low":null,"required":false}],"lots":[{"abv_bp":1200,"allergens":["sulphites"],"best_before":"","beverage":"Heather mead","bottle_ml":750,"ingredients":"known","kind":"mead","lot":"f8fdcd0634d5c6024cdb95cb074dc84b","name":"bottled in March","origin":"batch","packaged_on":"","slot":1,"storage":""},{"abv_bp":1150,"allergens":[],"best_before":"","beverage":"Bought mead","bottle_ml":750,"ingredients":"not_known","kind":"mead","lot":"177c51877998cadc94a08cc15e3ce998","name":"vintage 2","origin":"reference","packaged_on":"","slot":2,"storage":""}],"makers":0,"method":"tetrad","panel":4,"places":5,"pourer":true,"promises":{},"question":"differ","rounds":2,"spares":1}','differ',X'92a6257ffd0d2d1699ab4fe252002838e2101c39acf769682e7e630ca1422d43','paro lapi 7');
CREATE TABLE session_lot (                 -- [frozen] slot = the order in which the plan names its lots
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  slot         INTEGER NOT NULL CHECK (slot BETWEEN 1 AND 40),
  lot_id       INTEGER NOT NULL REFERENCES lot (id),
  PRIMARY KEY (session_id, slot)
) STRICT, WITHOUT ROWID;
INSERT INTO session_lot VALUES(1,1,1);
INSERT INTO session_lot VALUES(2,1,1);
INSERT INTO session_lot VALUES(1,2,2);
INSERT INTO session_lot VALUES(2,2,2);
CREATE TABLE promise (                     -- [person] what will be done in each outcome; the plan holds the digests
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  outcome      TEXT NOT NULL CHECK (outcome IN ('shown', 'not_shown', 'alike')),
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 500),
  PRIMARY KEY (session_id, outcome)
) STRICT, WITHOUT ROWID;
INSERT INTO promise VALUES(1,'not_shown',X'45a465f815284ddbb1712fcda8ce2d57','pour pairs');
INSERT INTO promise VALUES(1,'shown',X'8e8dd4742b86cdb8bb8f18fb89c2c735','name the difference next');
CREATE TABLE invited (                     -- [person] who was counted at the plan, and who pours
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  pours        INTEGER NOT NULL CHECK (pours IN (0, 1)),
  is_maker     INTEGER NOT NULL CHECK (is_maker IN (0, 1)),
  PRIMARY KEY (session_id, taster_id)
) STRICT, WITHOUT ROWID;
INSERT INTO invited VALUES(1,1,0,1);
INSERT INTO invited VALUES(1,2,1,0);
INSERT INTO invited VALUES(1,3,0,0);
INSERT INTO invited VALUES(1,4,0,0);
INSERT INTO invited VALUES(1,5,0,0);
INSERT INTO invited VALUES(1,6,0,0);
INSERT INTO invited VALUES(2,2,1,0);
INSERT INTO invited VALUES(2,3,0,0);
INSERT INTO invited VALUES(2,4,0,0);
INSERT INTO invited VALUES(2,5,0,0);
INSERT INTO invited VALUES(2,6,0,0);
CREATE TABLE place (                       -- [frozen] drawn at the seal, spare ones too: a latecomer takes a place, nothing is drawn twice
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  place        INTEGER NOT NULL CHECK (place BETWEEN 1 AND 999),
  is_spare     INTEGER NOT NULL CHECK (is_spare IN (0, 1)),
  PRIMARY KEY (session_id, place)
) STRICT, WITHOUT ROWID;
INSERT INTO place VALUES(1,1,0);
INSERT INTO place VALUES(1,2,0);
INSERT INTO place VALUES(1,3,0);
INSERT INTO place VALUES(1,4,0);
INSERT INTO place VALUES(1,5,0);
INSERT INTO place VALUES(1,6,1);
INSERT INTO place VALUES(2,1,0);
INSERT INTO place VALUES(2,2,0);
INSERT INTO place VALUES(2,3,0);
INSERT INTO place VALUES(2,4,0);
INSERT INTO place VALUES(2,5,1);
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
INSERT INTO cup VALUES(1,138,4,2,1,0);
INSERT INTO cup VALUES(1,149,5,1,2,1);
INSERT INTO cup VALUES(1,193,5,2,3,1);
INSERT INTO cup VALUES(1,217,4,1,2,0);
INSERT INTO cup VALUES(1,241,2,2,1,0);
INSERT INTO cup VALUES(1,246,3,1,1,0);
INSERT INTO cup VALUES(1,249,2,1,1,1);
INSERT INTO cup VALUES(1,251,5,1,3,0);
INSERT INTO cup VALUES(1,260,2,1,1,0);
INSERT INTO cup VALUES(1,265,6,1,3,0);
INSERT INTO cup VALUES(1,268,4,1,1,0);
INSERT INTO cup VALUES(1,270,1,2,1,0);
INSERT INTO cup VALUES(1,275,2,1,3,0);
INSERT INTO cup VALUES(1,276,5,1,1,1);
INSERT INTO cup VALUES(1,296,2,1,2,1);
INSERT INTO cup VALUES(1,304,6,1,1,1);
INSERT INTO cup VALUES(1,307,6,2,2,0);
INSERT INTO cup VALUES(1,317,4,2,2,0);
INSERT INTO cup VALUES(1,324,3,1,1,1);
INSERT INTO cup VALUES(1,326,3,2,2,0);
INSERT INTO cup VALUES(1,327,1,1,1,0);
INSERT INTO cup VALUES(1,328,2,2,2,1);
INSERT INTO cup VALUES(1,340,6,2,1,1);
INSERT INTO cup VALUES(1,351,5,2,2,0);
INSERT INTO cup VALUES(1,374,3,2,3,1);
INSERT INTO cup VALUES(1,375,2,2,1,1);
INSERT INTO cup VALUES(1,403,2,2,3,0);
INSERT INTO cup VALUES(1,409,5,1,3,1);
INSERT INTO cup VALUES(1,412,2,1,2,0);
INSERT INTO cup VALUES(1,417,5,1,1,0);
INSERT INTO cup VALUES(1,427,3,1,3,1);
INSERT INTO cup VALUES(1,436,2,2,3,1);
INSERT INTO cup VALUES(1,439,6,1,1,0);
INSERT INTO cup VALUES(1,453,1,1,3,0);
INSERT INTO cup VALUES(1,462,1,1,3,1);
INSERT INTO cup VALUES(1,475,3,1,2,0);
INSERT INTO cup VALUES(1,509,6,2,3,1);
INSERT INTO cup VALUES(1,516,2,2,2,0);
INSERT INTO cup VALUES(1,519,3,2,1,1);
INSERT INTO cup VALUES(1,534,5,2,1,0);
INSERT INTO cup VALUES(1,543,6,1,2,1);
INSERT INTO cup VALUES(1,571,4,1,3,0);
INSERT INTO cup VALUES(1,582,2,1,3,1);
INSERT INTO cup VALUES(1,598,1,2,2,0);
INSERT INTO cup VALUES(1,607,4,1,2,1);
INSERT INTO cup VALUES(1,653,1,2,3,1);
INSERT INTO cup VALUES(1,683,4,1,1,1);
INSERT INTO cup VALUES(1,692,3,1,3,0);
INSERT INTO cup VALUES(1,709,5,2,2,1);
INSERT INTO cup VALUES(1,738,1,2,1,1);
INSERT INTO cup VALUES(1,739,1,1,1,1);
INSERT INTO cup VALUES(1,752,4,2,2,1);
INSERT INTO cup VALUES(1,765,5,2,1,1);
INSERT INTO cup VALUES(1,831,5,2,3,0);
INSERT INTO cup VALUES(1,834,5,1,2,0);
INSERT INTO cup VALUES(1,843,1,1,2,0);
INSERT INTO cup VALUES(1,853,3,2,3,0);
INSERT INTO cup VALUES(1,854,1,2,3,0);
INSERT INTO cup VALUES(1,856,4,2,3,0);
INSERT INTO cup VALUES(1,862,3,2,1,0);
INSERT INTO cup VALUES(1,863,4,2,1,1);
INSERT INTO cup VALUES(1,864,6,1,2,0);
INSERT INTO cup VALUES(1,870,4,1,3,1);
INSERT INTO cup VALUES(1,871,6,1,3,1);
INSERT INTO cup VALUES(1,876,6,2,2,1);
INSERT INTO cup VALUES(1,897,3,1,2,1);
INSERT INTO cup VALUES(1,921,1,1,2,1);
INSERT INTO cup VALUES(1,928,1,2,2,1);
INSERT INTO cup VALUES(1,937,6,2,3,0);
INSERT INTO cup VALUES(1,947,3,2,2,1);
INSERT INTO cup VALUES(1,965,6,2,1,0);
INSERT INTO cup VALUES(1,976,4,2,3,1);
INSERT INTO cup VALUES(2,107,1,1,3,0);
INSERT INTO cup VALUES(2,152,5,1,4,1);
INSERT INTO cup VALUES(2,157,3,1,1,1);
INSERT INTO cup VALUES(2,162,5,2,2,0);
INSERT INTO cup VALUES(2,179,3,2,2,1);
INSERT INTO cup VALUES(2,194,2,1,4,1);
INSERT INTO cup VALUES(2,210,1,2,3,0);
INSERT INTO cup VALUES(2,216,3,2,4,1);
INSERT INTO cup VALUES(2,218,4,1,1,1);
INSERT INTO cup VALUES(2,236,5,1,4,0);
INSERT INTO cup VALUES(2,239,1,2,2,0);
INSERT INTO cup VALUES(2,254,3,1,2,0);
INSERT INTO cup VALUES(2,276,3,1,3,1);
INSERT INTO cup VALUES(2,279,1,1,4,0);
INSERT INTO cup VALUES(2,285,4,1,3,1);
INSERT INTO cup VALUES(2,289,5,2,1,1);
INSERT INTO cup VALUES(2,294,4,1,4,1);
INSERT INTO cup VALUES(2,312,1,2,2,1);
INSERT INTO cup VALUES(2,319,2,1,1,1);
INSERT INTO cup VALUES(2,326,4,1,1,0);
INSERT INTO cup VALUES(2,350,2,1,3,0);
INSERT INTO cup VALUES(2,354,4,2,1,1);
INSERT INTO cup VALUES(2,358,3,1,3,0);
INSERT INTO cup VALUES(2,367,2,1,3,1);
INSERT INTO cup VALUES(2,380,1,2,1,1);
INSERT INTO cup VALUES(2,387,1,1,1,0);
INSERT INTO cup VALUES(2,396,4,2,2,0);
INSERT INTO cup VALUES(2,409,1,2,4,0);
INSERT INTO cup VALUES(2,413,4,2,1,0);
INSERT INTO cup VALUES(2,429,5,1,3,0);
INSERT INTO cup VALUES(2,430,5,2,3,0);
INSERT INTO cup VALUES(2,453,4,1,3,0);
INSERT INTO cup VALUES(2,461,2,1,4,0);
INSERT INTO cup VALUES(2,471,3,1,1,0);
INSERT INTO cup VALUES(2,472,2,1,2,1);
INSERT INTO cup VALUES(2,480,5,1,2,0);
INSERT INTO cup VALUES(2,481,2,2,4,0);
INSERT INTO cup VALUES(2,482,5,2,1,0);
INSERT INTO cup VALUES(2,495,5,2,4,0);
INSERT INTO cup VALUES(2,496,3,1,4,1);
INSERT INTO cup VALUES(2,502,2,2,2,0);
INSERT INTO cup VALUES(2,521,2,2,2,1);
INSERT INTO cup VALUES(2,543,3,1,2,1);
INSERT INTO cup VALUES(2,546,1,1,4,1);
INSERT INTO cup VALUES(2,548,3,2,1,0);
INSERT INTO cup VALUES(2,564,3,2,4,0);
INSERT INTO cup VALUES(2,597,4,2,3,1);
INSERT INTO cup VALUES(2,602,1,2,4,1);
INSERT INTO cup VALUES(2,617,4,2,4,0);
INSERT INTO cup VALUES(2,620,3,2,3,0);
INSERT INTO cup VALUES(2,627,2,2,1,1);
INSERT INTO cup VALUES(2,673,5,1,3,1);
INSERT INTO cup VALUES(2,675,4,2,4,1);
INSERT INTO cup VALUES(2,684,3,1,4,0);
INSERT INTO cup VALUES(2,694,5,2,2,1);
INSERT INTO cup VALUES(2,706,1,1,2,0);
INSERT INTO cup VALUES(2,708,1,2,1,0);
INSERT INTO cup VALUES(2,719,5,1,2,1);
INSERT INTO cup VALUES(2,731,4,1,2,0);
INSERT INTO cup VALUES(2,740,2,1,2,0);
INSERT INTO cup VALUES(2,754,5,1,1,0);
INSERT INTO cup VALUES(2,762,4,1,4,0);
INSERT INTO cup VALUES(2,805,4,1,2,1);
INSERT INTO cup VALUES(2,826,3,2,1,1);
INSERT INTO cup VALUES(2,834,1,1,2,1);
INSERT INTO cup VALUES(2,850,2,2,4,1);
INSERT INTO cup VALUES(2,865,1,2,3,1);
INSERT INTO cup VALUES(2,872,1,1,1,1);
INSERT INTO cup VALUES(2,894,2,2,3,0);
INSERT INTO cup VALUES(2,902,3,2,2,0);
INSERT INTO cup VALUES(2,903,5,2,4,1);
INSERT INTO cup VALUES(2,904,1,1,3,1);
INSERT INTO cup VALUES(2,921,5,1,1,1);
INSERT INTO cup VALUES(2,925,4,2,3,0);
INSERT INTO cup VALUES(2,951,2,2,3,1);
INSERT INTO cup VALUES(2,962,2,2,1,0);
INSERT INTO cup VALUES(2,965,2,1,1,0);
INSERT INTO cup VALUES(2,971,4,2,2,1);
INSERT INTO cup VALUES(2,974,5,2,3,1);
INSERT INTO cup VALUES(2,984,3,2,3,1);
CREATE TABLE sealed_key (                  -- [frozen] lot of every cup, seed, salt. Closed against a glance, not against a locksmith.
  session_id   INTEGER PRIMARY KEY REFERENCES session_plan (session_id),
  box          BLOB NOT NULL,
  secret       BLOB NOT NULL CHECK (length(secret) = 32)
) STRICT;
INSERT INTO sealed_key VALUES(1,X'bcf32264e42093c318d3e55ea6afe7854f3f7157a02acac203b6b4d51ee6c11743af76ceb4352fa560764595cc773c057427a198a56232ba98bbf56baebd6ba8a87e515a28b82562c88953a7afb85766b592b79696af906e929fc37d272e12c7d1185887c568b38f758eab32660699599a07d3c8c382b53c26ab68bc1e04f75e5dbce6f7216471d27021a3fd20b88e6c354158d8ed37c9558d33a151892b934c3f18738057975f8f3ecc85e7007712b4b8eceef44c415b8d5db43e594b04b6266cb464e89a6afcbe126a69d881392fecbcab0b2fd3a9b56218627b51418d00f612096f949f6d89ef7be5e38f4e0941d366cd5a8acf02ba644e979338b4cd7410dcea422a0c5fcbb905c8f9302b1a2b51fbeceee7d89325d9a20bb117328a899ab3abb41f5ab38755e365cd0e3fe1cffe641e00953b6293879bfb99244d2df5c6c4805701c9f38757e124fb61b0f17ba9a86988497e49b016474f9b1f79293350553ad2650b7b9f41f955c9132d53dbead760ddd0287e5a15f2d73c424febb1129c995676a343c943dc5acedec2cf5442abea930d499e87285630a700640cd317ce318e4a34b884b8c2e9b0d5a4d0c1148eccae5d2dee026461e19e5ad5d54b7647ba1bd2847065d7b2a8aa37a0762f888b80747c6782ded5363c3bdc1f14b1dbf8425bf77c537bd61160a005a5a3441ebc484ccb1efb8e1ae9515bbd7f820c51ad930a3dae351fad3ce47f14c56ab154da0bbf3700ada9ddc141e84d7ae5f60a4ade3572f8af8b28404170d7741d866d2cede5a4271254b8d46e99c16883926426ffb4a3fdae144dbd80d0a21b2eb455305a76c19ee91f7421813e228f6403ef0e3e82be61181af6ebd2d9a44918667cd3debe095942d9cc89cc916c5b98a70c1c98edd35859b15737ff35b76d0dd3445b771f28aabbc9b06eeba9466c4a1d82e8b3bb1f4cebfbee74cef992db3bc0d32e4f2879e476cb5c1f3fa976e693deeec73de98861b725ec713a23622d4dff25fd8d53229304a663262c35e64b76bfbe8cc71603a8e43b251afaa346f1ef288d143b3007fa1cc2e06ecd380c923c269ea41cf5f956a10a51294c98ffebb95892d643c8b8c294621c34cbb7758653198f',X'6d63200854cd324fa9406cd31871ea142c0f9edb8ef313fb9aeb5687e335af6e');
INSERT INTO sealed_key VALUES(2,X'4f4658fad60be5c15d0fb3e2562d73bfaa966d67d2a8ac908d0148802f5468d0668d20764fe325d6c4aaf0c0ed5ea0523d2404f26f7d17bc2a7c67aae3621622b4e405f0b97db3debc1d6c94c9bb99c03d8e88113ba4391322b57b10d7a18cec54f54eedde65006bd88c734641dc38238da756a22e655a1242f86c85a7356982fa6ac34f5f5444a7f20f0ed5ac8f17b825688fbb6368f186c59ba6f0111c17ecc552668739be1dd23822130b4bb0411672e13931bdfe9370caaa4b9a771c89f28f6249850a7725478bdc2ddfa01c99931c2c42eaefa630735d40fd71ad5b9b97be4d835c9b8c0f1434b298680ac527a0c6f98fc31c5341323ec47e7159525c5d0cd8f338578261a27c0a04e544f8e19883a93e1c715416b84fb8f4e63786d356440752c48c17486d4d80f844ed3323274b69e92513cf8801e4a90b5e81a93e52d71c4089c39c10312e8e4d4c3b3b9df3da27cb467f0aba4a94f4e1bbdee856d7501951f2d186921155bffb09c16eba2567920eab028f66595e87a7e57edf92dff31237aeb20e3fd4a88eef1857b6d27ae828d6cb2c77429ad7eb0a43649ee51d3f05507fea04e74c9518041d61d96409360ec1b58542aef00fb20a28657de7f17425241292c161401c0cb239f2d58b9413e9e23317cc1877375abbb4e1c597e605d3dd548bc147bb1f4f2f1db53e9bc5d2694f91347f02f86cef65a3efcf3c16c9f6e946ba37ec9b1c701fbec56ebfbfc70f4ce48c94fdeae099b4bd706a1faffd220622845fb5064037523afdef5aa4d2d48e290a8c5349642bddd7723464e383fa66f3b24dd9b85d49beecd4786b6e5c711c1e001db3eb74a417ae0724bb6bd0d8ceddc3dd5c8dd7735ec39096f71c96f893efd1b270864dbe9e7e8aeed00f4be2af688958073373ed44e1c764538496853df8fdb8e388ead983ac5fb77559151744fc3ad3a7e6085a18c38bc5295ed85e40b81c7085a802c27b9a403d5302162dc798b88b7cdae91d8f4971da7ac96b7c3353482f6a97e7d95d842bc98e343bc4b49cf677445949850a71fbca652711bebba60dd0801a32b59475036055cabb20d9568d6af39e7347fe4927be1bfee5d52961e43ebf886c87765cb985a2d94c95d328a8a9116984190254772650fb86cce81e5f99fa6e49d550c8588dcbba7e0b51382d948fc611e5db7b0d7ba9643178f8c88bfd533c84b20284ac208532',X'6996cc746d16e692dd1d12347a1f31e2d379ddadebb3560fc7b09cd31bfd2b93');
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
CREATE TABLE key_opened (                  -- [grows]
  session_id   INTEGER PRIMARY KEY REFERENCES session_plan (session_id),
  seq          INTEGER NOT NULL,
  seed         BLOB NOT NULL CHECK (length(seed) = 32),
  salt         BLOB NOT NULL CHECK (length(salt) = 32),
  generator    TEXT NOT NULL,
  matches      INTEGER NOT NULL CHECK (matches IN (0, 1)),   -- commitment recomputed; 0 is shown for good, not hidden
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT;
INSERT INTO key_opened VALUES(1,31,X'47e7b0360f8591aa1476b016e58df17261b5540a60b73d38d995e760f9d319f1',X'909cea2dc37442ce2e809d3f4b23b5dd2182d453303620fd9c37d21f1cde4a88','chacha20/1',1);
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
INSERT INTO key_line VALUES(1,138,1,1);
INSERT INTO key_line VALUES(1,149,1,1);
INSERT INTO key_line VALUES(1,193,1,1);
INSERT INTO key_line VALUES(1,217,2,2);
INSERT INTO key_line VALUES(1,241,2,2);
INSERT INTO key_line VALUES(1,246,2,2);
INSERT INTO key_line VALUES(1,249,2,2);
INSERT INTO key_line VALUES(1,251,2,2);
INSERT INTO key_line VALUES(1,260,2,2);
INSERT INTO key_line VALUES(1,265,1,1);
INSERT INTO key_line VALUES(1,268,1,1);
INSERT INTO key_line VALUES(1,270,2,2);
INSERT INTO key_line VALUES(1,275,1,1);
INSERT INTO key_line VALUES(1,276,1,1);
INSERT INTO key_line VALUES(1,296,1,1);
INSERT INTO key_line VALUES(1,304,2,2);
INSERT INTO key_line VALUES(1,307,1,1);
INSERT INTO key_line VALUES(1,317,2,2);
INSERT INTO key_line VALUES(1,324,2,2);
INSERT INTO key_line VALUES(1,326,2,2);
INSERT INTO key_line VALUES(1,327,1,1);
INSERT INTO key_line VALUES(1,328,1,1);
INSERT INTO key_line VALUES(1,340,1,1);
INSERT INTO key_line VALUES(1,351,2,2);
INSERT INTO key_line VALUES(1,374,1,1);
INSERT INTO key_line VALUES(1,375,2,2);
INSERT INTO key_line VALUES(1,403,2,2);
INSERT INTO key_line VALUES(1,409,2,2);
INSERT INTO key_line VALUES(1,412,1,1);
INSERT INTO key_line VALUES(1,417,1,1);
INSERT INTO key_line VALUES(1,427,2,2);
INSERT INTO key_line VALUES(1,436,2,2);
INSERT INTO key_line VALUES(1,439,2,2);
INSERT INTO key_line VALUES(1,453,1,1);
INSERT INTO key_line VALUES(1,462,1,1);
INSERT INTO key_line VALUES(1,475,1,1);
INSERT INTO key_line VALUES(1,509,2,2);
INSERT INTO key_line VALUES(1,516,1,1);
INSERT INTO key_line VALUES(1,519,2,2);
INSERT INTO key_line VALUES(1,534,1,1);
INSERT INTO key_line VALUES(1,543,2,2);
INSERT INTO key_line VALUES(1,571,2,2);
INSERT INTO key_line VALUES(1,582,1,1);
INSERT INTO key_line VALUES(1,598,1,1);
INSERT INTO key_line VALUES(1,607,2,2);
INSERT INTO key_line VALUES(1,653,1,1);
INSERT INTO key_line VALUES(1,683,1,1);
INSERT INTO key_line VALUES(1,692,2,2);
INSERT INTO key_line VALUES(1,709,2,2);
INSERT INTO key_line VALUES(1,738,2,2);
INSERT INTO key_line VALUES(1,739,1,1);
INSERT INTO key_line VALUES(1,752,2,2);
INSERT INTO key_line VALUES(1,765,1,1);
INSERT INTO key_line VALUES(1,831,1,1);
INSERT INTO key_line VALUES(1,834,1,1);
INSERT INTO key_line VALUES(1,843,2,2);
INSERT INTO key_line VALUES(1,853,1,1);
INSERT INTO key_line VALUES(1,854,1,1);
INSERT INTO key_line VALUES(1,856,2,2);
INSERT INTO key_line VALUES(1,862,2,2);
INSERT INTO key_line VALUES(1,863,1,1);
INSERT INTO key_line VALUES(1,864,2,2);
INSERT INTO key_line VALUES(1,870,2,2);
INSERT INTO key_line VALUES(1,871,1,1);
INSERT INTO key_line VALUES(1,876,1,1);
INSERT INTO key_line VALUES(1,897,1,1);
INSERT INTO key_line VALUES(1,921,2,2);
INSERT INTO key_line VALUES(1,928,1,1);
INSERT INTO key_line VALUES(1,937,2,2);
INSERT INTO key_line VALUES(1,947,2,2);
INSERT INTO key_line VALUES(1,965,1,1);
INSERT INTO key_line VALUES(1,976,2,2);
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
INSERT INTO place_taken VALUES(1,1,4,0,'signed');
INSERT INTO place_taken VALUES(1,2,5,0,'signed');
INSERT INTO place_taken VALUES(1,3,6,0,'signed');
INSERT INTO place_taken VALUES(1,4,7,0,'signed');
INSERT INTO place_taken VALUES(1,5,8,1,'signed');
INSERT INTO place_taken VALUES(2,1,4,0,'signed');
INSERT INTO place_taken VALUES(2,2,5,0,'nickname');
CREATE TABLE place_person (                -- [person] who sits there; the only link from answers to a name. A loose taster's goes at the close.
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  PRIMARY KEY (session_id, place),
  UNIQUE (session_id, taster_id),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place)
) STRICT, WITHOUT ROWID;
INSERT INTO place_person VALUES(1,5,1);
INSERT INTO place_person VALUES(1,1,3);
INSERT INTO place_person VALUES(2,1,3);
INSERT INTO place_person VALUES(1,2,4);
INSERT INTO place_person VALUES(2,2,4);
INSERT INTO place_person VALUES(1,3,5);
INSERT INTO place_person VALUES(1,4,6);
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
INSERT INTO hand_in VALUES(1,1,1,1,X'd8e29e914440bcf4ce91a7a3d19c9626','device',1764000016000,X'a9cacd4699e6f030b2be2c69b60056f7',11);
INSERT INTO hand_in VALUES(2,1,1,2,X'83b858d0ae36cf47fc0ecd8f9935d4f9','device',1764000018000,X'bad572ee9d2c2596dbb64c0c783b9acc',13);
INSERT INTO hand_in VALUES(3,1,2,1,X'b8c54934591b2b01527f5ee09a541e67','device',1764000020000,X'4096623483468c27e653efb03dc60da4',15);
INSERT INTO hand_in VALUES(4,1,2,2,X'1796c27adcf9ea5f3589a9b9586df6dd','device',1764000022000,X'f4cc526a8b692470909e736ad4b923a9',17);
INSERT INTO hand_in VALUES(5,1,3,1,X'5102d55da46d2e501b481c82e38da979','device',1764000024000,X'24e4a812e1a63ff32e68d9e770ff6502',19);
INSERT INTO hand_in VALUES(6,1,3,2,X'621ccecbbaaa1ae8953a7f90dc25e9ed','device',1764000026000,X'e8ea0b9606608e6457cba3bf7b206e5b',21);
INSERT INTO hand_in VALUES(7,1,4,1,X'b1e67a809661c6a4921b9ce53466f2de','device',1764000028000,X'79322e07d510e79d8bbdfbfa0e681e88',23);
INSERT INTO hand_in VALUES(8,1,4,2,X'a8b09e97c2dcc0e78c91faa10a1ce9cb','device',1764000030000,X'855185792a56b439384e57fa75d18ac8',25);
INSERT INTO hand_in VALUES(9,1,5,1,X'30f5138c994d1004d8769bb24483ba0c','device',1764000032000,X'824c60603d8f64fa4a8c929ebb85905f',27);
INSERT INTO hand_in VALUES(10,1,5,2,X'60bcabec1feb632c18be4f15934d2104','device',1764000034000,X'277c43a2a22a4ed266267ab07ad1fe05',29);
INSERT INTO hand_in VALUES(11,2,1,1,X'116b58e680f0615277c7f40ea41aa081','device',1764000048000,X'b058f516225e15c4c3b07692618b8b79',8);
CREATE TABLE answer (                      -- [person] goes with its hand-in
  hand_in_id   INTEGER NOT NULL REFERENCES hand_in (id) ON DELETE CASCADE,
  item         INTEGER NOT NULL,
  code         INTEGER NOT NULL DEFAULT 0, -- 0 = about the whole flight
  value        INTEGER,
  text_digest  BLOB CHECK (length(text_digest) = 32),                 -- sha256(salt of the words || text)
  PRIMARY KEY (hand_in_id, item, code),
  CHECK ((value IS NULL) <> (text_digest IS NULL))
) STRICT, WITHOUT ROWID;
INSERT INTO answer VALUES(1,1,0,453,NULL);
INSERT INTO answer VALUES(1,2,0,2,NULL);
INSERT INTO answer VALUES(1,3,0,1,NULL);
INSERT INTO answer VALUES(1,4,0,NULL,X'60abe0e640c8b2c42079b74806067a926f8aa0bdd8dc976729b9b8707b3575f8');
INSERT INTO answer VALUES(2,1,0,270,NULL);
INSERT INTO answer VALUES(2,2,0,2,NULL);
INSERT INTO answer VALUES(2,3,0,1,NULL);
INSERT INTO answer VALUES(2,4,0,NULL,X'2288fc2bc863dccbf45aa34410a35ad1c2f0f4aa0f99329a48c03dadb5d54b3d');
INSERT INTO answer VALUES(3,1,0,260,NULL);
INSERT INTO answer VALUES(3,2,0,2,NULL);
INSERT INTO answer VALUES(3,3,0,1,NULL);
INSERT INTO answer VALUES(4,1,0,516,NULL);
INSERT INTO answer VALUES(4,2,0,2,NULL);
INSERT INTO answer VALUES(4,3,0,1,NULL);
INSERT INTO answer VALUES(5,1,0,475,NULL);
INSERT INTO answer VALUES(5,2,0,2,NULL);
INSERT INTO answer VALUES(5,3,0,1,NULL);
INSERT INTO answer VALUES(6,1,0,853,NULL);
INSERT INTO answer VALUES(6,2,0,2,NULL);
INSERT INTO answer VALUES(6,3,0,1,NULL);
INSERT INTO answer VALUES(7,1,0,571,NULL);
INSERT INTO answer VALUES(7,2,0,2,NULL);
INSERT INTO answer VALUES(7,3,0,1,NULL);
INSERT INTO answer VALUES(8,1,0,138,NULL);
INSERT INTO answer VALUES(8,2,0,2,NULL);
INSERT INTO answer VALUES(8,3,0,1,NULL);
INSERT INTO answer VALUES(9,1,0,417,NULL);
INSERT INTO answer VALUES(9,2,0,2,NULL);
INSERT INTO answer VALUES(9,3,0,1,NULL);
INSERT INTO answer VALUES(10,1,0,351,NULL);
INSERT INTO answer VALUES(10,2,0,2,NULL);
INSERT INTO answer VALUES(10,3,0,1,NULL);
INSERT INTO answer VALUES(11,1,0,387,NULL);
INSERT INTO answer VALUES(11,2,0,706,NULL);
INSERT INTO answer VALUES(11,3,0,2,NULL);
INSERT INTO answer VALUES(11,4,0,1,NULL);
CREATE TABLE answer_words (                -- [person] free text apart, so that it can be erased alone
  hand_in_id   INTEGER NOT NULL,
  item         INTEGER NOT NULL,
  code         INTEGER NOT NULL,
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 4000),
  PRIMARY KEY (hand_in_id, item, code),
  FOREIGN KEY (hand_in_id, item, code) REFERENCES answer (hand_in_id, item, code) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
INSERT INTO answer_words VALUES(1,4,0,X'10130970dc336f8a7b44970ebf15ae7c','thin at the end');
INSERT INTO answer_words VALUES(2,4,0,X'c7d7a77d2bcc72265b70fd45e2a1ab9a','thin at the end');
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
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS "item" (                      -- [frozen] the questions of the sheet
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  item         INTEGER NOT NULL CHECK (item BETWEEN 1 AND 200),
  kind         TEXT NOT NULL CHECK (kind IN ('choose', 'same', 'prefer', 'sureness', 'clue', 'words')),
  low          INTEGER,
  high         INTEGER CHECK (high >= low),
  required     INTEGER NOT NULL CHECK (required IN (0, 1)),
  PRIMARY KEY (session_id, item)
) STRICT, WITHOUT ROWID;
INSERT INTO item VALUES(1,1,'choose',NULL,NULL,1);
INSERT INTO item VALUES(1,2,'sureness',1,3,1);
INSERT INTO item VALUES(1,3,'clue',1,6,1);
INSERT INTO item VALUES(1,4,'words',NULL,NULL,0);
INSERT INTO item VALUES(2,1,'choose',NULL,NULL,1);
INSERT INTO item VALUES(2,2,'choose',NULL,NULL,1);
INSERT INTO item VALUES(2,3,'sureness',1,3,1);
INSERT INTO item VALUES(2,4,'clue',1,6,1);
INSERT INTO item VALUES(2,5,'words',NULL,NULL,0);
CREATE TABLE own_word (                    -- [live] words added here; retired, never deleted: old sheets name them
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  word         TEXT NOT NULL CHECK (length(trim(word)) BETWEEN 1 AND 60 AND length(word) <= 60),
  class        TEXT NOT NULL CHECK (class IN ('grain', 'roast', 'fruity', 'floral', 'hop', 'spice', 'sweet', 'sour', 'bitter', 'mouthfeel', 'yeast',
                                              'air', 'sulphur', 'spoiled', 'cellar', 'other')),
  leaning      TEXT NOT NULL CHECK (leaning IN ('fault', 'either', 'wanted')),
  meaning         TEXT NOT NULL DEFAULT '' CHECK (length(meaning) <= 1000)
) STRICT;
INSERT INTO own_word VALUES(1,'b44c44adc059280707f6213a07a28485','hedge','other','either','as a hawthorn hedge smells in May');
INSERT INTO own_word VALUES(2,'bd7667b24cadfe6095727d5c47dcef99','may blossom','other','either','as a hawthorn hedge smells in May');
INSERT INTO own_word VALUES(3,'e9f761010d7426d59ba6d4a101fe9ff5','old barn','other','either','as a hawthorn hedge smells in May');
CREATE TABLE own_word_drink (              -- [live] of which drinks it is said
  own_word_id  INTEGER NOT NULL REFERENCES own_word (id),
  kind         TEXT NOT NULL CHECK (kind IN ('beer', 'mead', 'cider', 'wine', 'other')),
  PRIMARY KEY (own_word_id, kind)
) STRICT, WITHOUT ROWID;
INSERT INTO own_word_drink VALUES(1,'mead');
INSERT INTO own_word_drink VALUES(2,'mead');
INSERT INTO own_word_drink VALUES(3,'mead');
CREATE TABLE word_same_as (                -- [live] merged: answers with the one count as the other
  word         TEXT PRIMARY KEY CHECK (length(word) = 32 AND word NOT GLOB '*[^0-9a-f]*'),
  same_as      TEXT NOT NULL CHECK (length(same_as) = 32 AND same_as NOT GLOB '*[^0-9a-f]*'),
  CHECK (word <> same_as)
) STRICT, WITHOUT ROWID;
INSERT INTO word_same_as VALUES('bd7667b24cadfe6095727d5c47dcef99','b44c44adc059280707f6213a07a28485');
CREATE TABLE word_retired (                -- [live] no longer offered
  word         TEXT PRIMARY KEY CHECK (length(word) = 32 AND word NOT GLOB '*[^0-9a-f]*'),
  at           INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO word_retired VALUES('e9f761010d7426d59ba6d4a101fe9ff5',1764000053000);
CREATE TABLE word_change (                 -- [grows] so that trends can mark where the list is another one
  id           INTEGER PRIMARY KEY,
  at           INTEGER NOT NULL,
  kind         TEXT NOT NULL CHECK (kind IN ('added', 'renamed', 'merged', 'taken_apart', 'retired', 'brought_back')),
  word         TEXT NOT NULL CHECK (length(word) = 32 AND word NOT GLOB '*[^0-9a-f]*'),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 60),   -- what it was called then; before it was renamed
  other        TEXT CHECK (length(other) = 32 AND other NOT GLOB '*[^0-9a-f]*'),
  CHECK ((other IS NOT NULL) = (kind IN ('merged', 'taken_apart')))
) STRICT;
INSERT INTO word_change VALUES(1,1764000049000,'added','b44c44adc059280707f6213a07a28485','hedge',NULL);
INSERT INTO word_change VALUES(2,1764000050000,'added','bd7667b24cadfe6095727d5c47dcef99','may blossom',NULL);
INSERT INTO word_change VALUES(3,1764000051000,'added','e9f761010d7426d59ba6d4a101fe9ff5','old barn',NULL);
INSERT INTO word_change VALUES(4,1764000052000,'merged','bd7667b24cadfe6095727d5c47dcef99','may blossom','b44c44adc059280707f6213a07a28485');
INSERT INTO word_change VALUES(5,1764000053000,'retired','e9f761010d7426d59ba6d4a101fe9ff5','old barn',NULL);
CREATE UNIQUE INDEX one_brewer ON taster (is_brewer) WHERE is_brewer = 1;
CREATE INDEX beverage_maker_taster ON beverage_maker (taster_id);
CREATE VIEW made_by AS                     -- a batch for which nobody is named was made by the brewer
  SELECT beverage_id, taster_id FROM beverage_maker
   UNION ALL
  SELECT b.id, t.id FROM beverage b JOIN taster t ON t.is_brewer = 1
   WHERE b.origin = 'batch' AND NOT EXISTS (SELECT 1 FROM beverage_maker m WHERE m.beverage_id = b.id)
;
CREATE INDEX lot_of_beverage ON lot (beverage_id);
CREATE INDEX stock_move_of_lot ON stock_move (lot_id);
CREATE INDEX stock_move_of_session ON stock_move (session_id);
CREATE INDEX batch_note_of ON batch_note (beverage_id, done_on);
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
CREATE TRIGGER batch_note_no_update BEFORE UPDATE ON batch_note BEGIN SELECT RAISE(ABORT, 'batch_note: kept as it is'); END;
CREATE TRIGGER batch_note_no_delete BEFORE DELETE ON batch_note BEGIN SELECT RAISE(ABORT, 'batch_note: kept as it is'); END;
CREATE TRIGGER transition_no_update BEFORE UPDATE ON transition BEGIN SELECT RAISE(ABORT, 'transition: kept as it is'); END;
CREATE TRIGGER transition_no_delete BEFORE DELETE ON transition BEGIN SELECT RAISE(ABORT, 'transition: kept as it is'); END;
CREATE TRIGGER hand_in_no_update BEFORE UPDATE ON hand_in BEGIN SELECT RAISE(ABORT, 'hand_in: never changed'); END;
CREATE TRIGGER answer_no_update BEFORE UPDATE ON answer BEGIN SELECT RAISE(ABORT, 'answer: never changed'); END;
CREATE TRIGGER answer_words_no_update BEFORE UPDATE ON answer_words BEGIN SELECT RAISE(ABORT, 'answer_words: never changed'); END;
CREATE TRIGGER remark_no_update BEFORE UPDATE ON remark BEGIN SELECT RAISE(ABORT, 'remark: never changed'); END;
CREATE TRIGGER promise_no_update BEFORE UPDATE ON promise BEGIN SELECT RAISE(ABORT, 'promise: never changed'); END;
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
CREATE TRIGGER own_word_no_delete BEFORE DELETE ON own_word BEGIN SELECT RAISE(ABORT, 'own_word: retired, never deleted'); END;
CREATE TRIGGER own_word_uid_kept BEFORE UPDATE OF uid ON own_word BEGIN SELECT RAISE(ABORT, 'own_word: its uid is kept'); END;
CREATE VIEW word_leads_to AS               -- through every merge on the way
  WITH RECURSIVE way (word, leads_to) AS (
    SELECT word, same_as FROM word_same_as
     UNION
    SELECT way.word, next.same_as FROM way JOIN word_same_as next ON next.word = way.leads_to)
  SELECT word, leads_to FROM way
;
CREATE TRIGGER word_same_as_no_ring BEFORE INSERT ON word_same_as
  WHEN EXISTS (SELECT 1 FROM word_leads_to WHERE word = NEW.same_as AND leads_to = NEW.word)
  BEGIN SELECT RAISE(ABORT, 'word_same_as: a ring of words'); END;
CREATE TRIGGER word_same_as_no_update BEFORE UPDATE ON word_same_as BEGIN SELECT RAISE(ABORT, 'word_same_as: taken apart, then merged anew'); END;
CREATE TRIGGER word_change_no_update BEFORE UPDATE ON word_change BEGIN SELECT RAISE(ABORT, 'word_change: kept as it is'); END;
CREATE TRIGGER word_change_no_delete BEFORE DELETE ON word_change BEGIN SELECT RAISE(ABORT, 'word_change: kept as it is'); END;
COMMIT;
