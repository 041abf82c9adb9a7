PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE store (                       -- [live] one row
  one          INTEGER PRIMARY KEY CHECK (one = 1),
  uid          TEXT NOT NULL CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  created_at   INTEGER NOT NULL,
  made_by      TEXT NOT NULL
) STRICT;
INSERT INTO store VALUES(1,'24d4df2e8bbb1431e80e2b568a22f989',1795964227335,'0.1.0');
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
INSERT INTO beverage VALUES(1,'b1000000000000000000000000000001','batch','cider','Orchard cider',NULL,NULL,620,'measured','known',NULL);
INSERT INTO beverage VALUES(2,'b1000000000000000000000000000002','reference','cider','Hill Farm cider',NULL,NULL,600,'label','not_known',NULL);
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
INSERT INTO taster VALUES(1,'c1000000000000000000000000000001','Ada Moor','',1,NULL);
INSERT INTO taster VALUES(2,'c1000000000000000000000000000002','Ben Lark','Larky',0,NULL);
INSERT INTO taster VALUES(3,'c1000000000000000000000000000003','Cleo Finch','',0,NULL);
INSERT INTO taster VALUES(4,'c1000000000000000000000000000004','Dov Heron','',0,NULL);
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
INSERT INTO lot VALUES(1,'d1000000000000000000000000000001',1,'bottled in March','2026-03-01',NULL,500,'kitchen, 20 C','',NULL);
INSERT INTO lot VALUES(2,'d1000000000000000000000000000002',2,'spring',NULL,NULL,500,'','',NULL);
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
INSERT INTO stock_move VALUES(1,1,NULL,1795964227516,'added',30);
INSERT INTO stock_move VALUES(2,2,NULL,1795964227516,'added',20);
INSERT INTO stock_move VALUES(3,1,1,1795964246886,'held',-1);
INSERT INTO stock_move VALUES(4,2,1,1795964246886,'held',-1);
INSERT INTO stock_move VALUES(5,1,1,1795964257952,'freed',1);
INSERT INTO stock_move VALUES(6,2,1,1795964257952,'freed',1);
INSERT INTO stock_move VALUES(7,1,1,1795964257952,'poured',-1);
INSERT INTO stock_move VALUES(8,2,1,1795964257952,'poured',-1);
INSERT INTO stock_move VALUES(9,1,2,1795964265451,'held',-1);
INSERT INTO stock_move VALUES(10,2,2,1795964265451,'held',-1);
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
INSERT INTO batch_note VALUES(1,'e1000000000000000000000000000001',1,NULL,'2026-02-01','reading',10020,'');
INSERT INTO batch_note VALUES(2,'e1000000000000000000000000000002',1,NULL,'2026-02-10','racked',NULL,'off the lees');
CREATE TABLE session (                     -- [live] title and archiving only; everything else is plan or log
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  title        TEXT NOT NULL CHECK (length(title) <= 200),
  guest_title  TEXT NOT NULL DEFAULT '' CHECK (length(guest_title) <= 200),
  came_from    TEXT NOT NULL CHECK (came_from IN ('here', 'import', 'demo')),
  created_at   INTEGER NOT NULL,
  archived_at  INTEGER
) STRICT;
INSERT INTO session VALUES(1,'4997b097f45190ce96f5530b1955c974','Cider over time 1','','here',1795964234717,NULL);
INSERT INTO session VALUES(2,'b0f4ca31996074947837b16f1678f9b6','Cider over time 2','','here',1795964264364,NULL);
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
INSERT INTO log VALUES(1,1,1795964246886,'sealed','sealed','{"commitment":"58742e16b98035b22123c80d5c16cc1e934fb0ec40c4feee2cb542c252ef7232","plan":"a36164aa3cfc8ace28f16595c6b8af6ab197ccdc81abde5acafa3fcdc4fcb27a","schema":1}',X'0000000000000000000000000000000000000000000000000000000000000000',X'23a11661c61bdaf25c432bbf6387f3a411f2b1ce984b1ebb1ffd32d881cf2ed2');
INSERT INTO log VALUES(1,2,1795964246898,'pour_sheet_opened','sealed','{}',X'23a11661c61bdaf25c432bbf6387f3a411f2b1ce984b1ebb1ffd32d881cf2ed2',X'd30b682751af63f5a0b570fc8041bb9edd717efd9e05284caa3477ed2bfb7408');
INSERT INTO log VALUES(1,3,1795964257402,'place_taken','sealed','{"as":"signed","maker":true,"place":1}',X'd30b682751af63f5a0b570fc8041bb9edd717efd9e05284caa3477ed2bfb7408',X'55112b23c04230affcb57f826efa946b4c366ecbfe7f5d2d0ea5f3774e148b4f');
INSERT INTO log VALUES(1,4,1795964257482,'place_taken','sealed','{"as":"nickname","maker":false,"place":2}',X'55112b23c04230affcb57f826efa946b4c366ecbfe7f5d2d0ea5f3774e148b4f',X'32c0c4c71599507e2479389d06bdfa8f45c55714c6055e39bf1faae4856b705e');
INSERT INTO log VALUES(1,5,1795964257582,'place_taken','sealed','{"as":"signed","maker":false,"place":3}',X'32c0c4c71599507e2479389d06bdfa8f45c55714c6055e39bf1faae4856b705e',X'6a63791e47194abc778c03a780c74ae79d5d7fc3e02643a5c442d20218c93a35');
INSERT INTO log VALUES(1,6,1795964257654,'place_taken','sealed','{"as":"signed","maker":false,"place":4}',X'6a63791e47194abc778c03a780c74ae79d5d7fc3e02643a5c442d20218c93a35',X'497b3f1c1c18e1a190651796d4fed8ca46eb6fdc3567c0649b0677f6967aac73');
INSERT INTO log VALUES(1,7,1795964257730,'opened','tasting','{}',X'497b3f1c1c18e1a190651796d4fed8ca46eb6fdc3567c0649b0677f6967aac73',X'60560405c97bc0bb246aaf8073d8b600a50e30987f5e9a3d98f26180a3071843');
INSERT INTO log VALUES(1,8,1795964257730,'answered','tasting','{"digest":"582d970637d57da6caff6e271a50c553b72e9883b4e4b3593e27951ce2356388","place":1,"round":1}',X'60560405c97bc0bb246aaf8073d8b600a50e30987f5e9a3d98f26180a3071843',X'76c8e40a172a4745e69830457b47a231fc8c14963f65598be2d4e8a7bfb208e3');
INSERT INTO log VALUES(1,9,1795964257733,'answered','tasting','{"digest":"cba43a65185f029ec65daefef1501d257f018a870b850874e2d4744165c0997f","place":2,"round":1}',X'76c8e40a172a4745e69830457b47a231fc8c14963f65598be2d4e8a7bfb208e3',X'db01588dc1316d97a86bddc218edee27a060c2c25a88601ef64c625b7d9ef748');
INSERT INTO log VALUES(1,10,1795964257755,'answered','tasting','{"digest":"5c9878853462f1f36cef38a0f914599f696c376f0c0257d4ad5f740e19ba2973","place":3,"round":1}',X'db01588dc1316d97a86bddc218edee27a060c2c25a88601ef64c625b7d9ef748',X'bfbcd3a03f8a35504cb20daf05d4d3a7466345ebf7f98f77a90e71465948792e');
INSERT INTO log VALUES(1,11,1795964257760,'answered','tasting','{"digest":"93736432019f9c154387584b48c28a2f1321e2b7fcd375db3ffd7f3b7b7f4883","place":4,"round":1}',X'bfbcd3a03f8a35504cb20daf05d4d3a7466345ebf7f98f77a90e71465948792e',X'd5c1e2a22dfe0cfe8a50c54fac8630d1a2c7faecfa3f2aa7cb1649f924a01c60');
INSERT INTO log VALUES(1,12,1795964257862,'closed','closed','{"missing":0}',X'd5c1e2a22dfe0cfe8a50c54fac8630d1a2c7faecfa3f2aa7cb1649f924a01c60',X'25c76c37ffdc81054b7d275ee2114d7496b951b2a9c6919c59cbe28908fee0ca');
INSERT INTO log VALUES(1,13,1795964257952,'revealed','revealed','{}',X'25c76c37ffdc81054b7d275ee2114d7496b951b2a9c6919c59cbe28908fee0ca',X'a2298491b4156c3a35336c1a174303ae291003be68f5d2e7d218f07403d368b6');
INSERT INTO log VALUES(2,1,1795964265451,'sealed','sealed','{"commitment":"31d8ee4744d9d53abf290657bdaebfd4450eb803666948e583a69a986b10f7bd","plan":"4be743439090499566542cf1eb8c1ff00719ff5329f80a880cf867b6c25761a7","schema":1}',X'0000000000000000000000000000000000000000000000000000000000000000',X'6e2d1a797bab199196dc6b41cc90500228d6e22b8ffc54192e18dbd1033aa01a');
INSERT INTO log VALUES(2,2,1795964265453,'pour_sheet_opened','sealed','{}',X'6e2d1a797bab199196dc6b41cc90500228d6e22b8ffc54192e18dbd1033aa01a',X'ccb801e49bc9bc92fc2ba28b45fb8951bd5fb9dfe2db8e8c0a8cb6566453bd13');
INSERT INTO log VALUES(2,3,1795964266474,'place_taken','sealed','{"as":"signed","maker":true,"place":1}',X'ccb801e49bc9bc92fc2ba28b45fb8951bd5fb9dfe2db8e8c0a8cb6566453bd13',X'f0e90d93e1e11f4f210e23a8139f8d63efbd5be1633fc8d0ba0b1fbba39a2634');
INSERT INTO log VALUES(2,4,1795964266548,'place_taken','sealed','{"as":"nickname","maker":false,"place":2}',X'f0e90d93e1e11f4f210e23a8139f8d63efbd5be1633fc8d0ba0b1fbba39a2634',X'5da0fb844bec5d88b767da73ad284c4ded3c5eec1feccfe999e8874773e011a8');
INSERT INTO log VALUES(2,5,1795964266643,'opened','tasting','{}',X'5da0fb844bec5d88b767da73ad284c4ded3c5eec1feccfe999e8874773e011a8',X'6a5aae111698a3e061af80f081f8bdf36c480784538df27d847ea6979bb3689b');
INSERT INTO log VALUES(2,6,1795964266643,'answered','tasting','{"digest":"315e6ce75bce02e248283de3279a953068860edc19aa1370cb6d20f5330177fd","place":1,"round":1}',X'6a5aae111698a3e061af80f081f8bdf36c480784538df27d847ea6979bb3689b',X'abba9f27435d359886743411de75b95553799f01cb75475d7af629053499db5e');
CREATE TABLE session_plan (                -- [frozen] names, strengths, allergens as they were; reports read these, never the live shelf
  session_id   INTEGER PRIMARY KEY REFERENCES session (id),
  body         TEXT NOT NULL CHECK (body GLOB '{*}'),     -- canonical JSON, hashed
  question     TEXT NOT NULL,              -- as in the body, for lists
  commitment   BLOB NOT NULL CHECK (length(commitment) = 32),
  seal_mark    TEXT NOT NULL CHECK (length(seal_mark) = 11)
) STRICT;
INSERT INTO session_plan VALUES(1,'{"analysis":{"alpha_pm":50,"gamma_pm":300,"limit_pm":null,"seeks":"difference","test":"by_taster"},"ceiling_g":20,"claim":"people","country":"GB","cup_ml":30,"cups":[{"code":645,"place":1,"position":1,"round":1,"spare":0},{"code":684,"place":1,"position":1,"round":1,"spare":1},{"code":286,"place":1,"position":2,"round":1,"spare":0},{"code":253,"place":1,"position":2,"round":1,"spare":1},{"code":102,"place":2,"position":1,"round":1,"spare":0},{"code":439,"place":2,"position":1,"round":1,"spare":1},{"code":241,"place":2,"position":2,"round":1,"spare":0},{"code":395,"place":2,"position":2,"round":1,"spare":1},{"code":539,"place":3,"position":1,"round":1,"spare":0},{"code":314,"place":3,"position":1,"round":1,"spare":1},{"code":159,"place":3,"position":2,"round":1,"spare":0},{"code":105,"place":3,"position":2,"round":1,"spare":1},{"code":309,"place":4,"position":1,"round":1,"spare":0},{"code":218,"place":4,"position":1,"round":1,"spare":1},{"code":763,"place":4,"position":2,"round":1,"spare":0},{"code":719,"place":4,"position":2,"round":1,"spare":1}],"items":[{"cup":true,"high":100,"item":1,"kind":"line","limit":10,"low":0,"required":true,"word":"sweet"},{"cup":true,"high":100,"item":2,"kind":"line","limit":10,"low":0,"required":true,"word":"sour"},{"cup":true,"high":5,"item":3,"kind":"just_right","low":1,"required":true,"word":"sweet"},{"cup":true,"high":5,"item":4,"kind":"just_right","low":1,"required":true,"word":"sour"},{"cup":true,"high":null,"item":5,"kind":"worst","low":null,"required":true},{"cup":true,"high":3,"item":6,"kind":"behaviour","low":1,"required":true},{"cup":true,"high":9,"item":7,"kind":"liking","low":1,"main":true,"required":true}],"lots":[{"abv_bp":620,"allergens":["sulphites"],"best_before":"","beverage":"Orchard cider","bottle_ml":500,"ingredients":"known","kind":"cider","lot":"d1000000000000000000000000000001","name":"bottled in March","origin":"batch","packaged_on":"2026-03-01","slot":1,"storage":"kitchen, 20 C"},{"abv_bp":600,"allergens":[],"best_before":"","beverage":"Hill Farm cider","bottle_ml":500,"ingredients":"not_known","kind":"cider","lot":"d1000000000000000000000000000002","name":"spring","origin":"reference","packaged_on":"","role":"reference","slot":2,"storage":""}],"makers":1,"method":"sheet","panel":3,"places":4,"pourer":false,"promises":{},"question":"lacks","rounds":1,"sheet":{"cleanser":"","duplicate":false,"orders":[[1,2],[2,1]],"pause_s":30},"spares":0}','lacks',X'58742e16b98035b22123c80d5c16cc1e934fb0ec40c4feee2cb542c252ef7232','kodu haso 2');
INSERT INTO session_plan VALUES(2,'{"analysis":{"alpha_pm":50,"gamma_pm":300,"limit_pm":null,"seeks":"difference","test":"by_taster"},"ceiling_g":20,"claim":"people","country":"GB","cup_ml":30,"cups":[{"code":928,"place":1,"position":1,"round":1,"spare":0},{"code":542,"place":1,"position":1,"round":1,"spare":1},{"code":731,"place":1,"position":2,"round":1,"spare":0},{"code":280,"place":1,"position":2,"round":1,"spare":1},{"code":241,"place":2,"position":1,"round":1,"spare":0},{"code":298,"place":2,"position":1,"round":1,"spare":1},{"code":975,"place":2,"position":2,"round":1,"spare":0},{"code":340,"place":2,"position":2,"round":1,"spare":1},{"code":341,"place":3,"position":1,"round":1,"spare":0},{"code":472,"place":3,"position":1,"round":1,"spare":1},{"code":829,"place":3,"position":2,"round":1,"spare":0},{"code":528,"place":3,"position":2,"round":1,"spare":1},{"code":974,"place":4,"position":1,"round":1,"spare":0},{"code":465,"place":4,"position":1,"round":1,"spare":1},{"code":154,"place":4,"position":2,"round":1,"spare":0},{"code":729,"place":4,"position":2,"round":1,"spare":1}],"items":[{"cup":true,"high":100,"item":1,"kind":"line","limit":10,"low":0,"required":true,"word":"sweet"},{"cup":true,"high":100,"item":2,"kind":"line","limit":10,"low":0,"required":true,"word":"sour"},{"cup":true,"high":5,"item":3,"kind":"just_right","low":1,"required":true,"word":"sweet"},{"cup":true,"high":5,"item":4,"kind":"just_right","low":1,"required":true,"word":"sour"},{"cup":true,"high":null,"item":5,"kind":"worst","low":null,"required":true},{"cup":true,"high":3,"item":6,"kind":"behaviour","low":1,"required":true},{"cup":true,"high":9,"item":7,"kind":"liking","low":1,"main":true,"required":true}],"lots":[{"abv_bp":620,"allergens":["sulphites"],"best_before":"","beverage":"Orchard cider","bottle_ml":500,"ingredients":"known","kind":"cider","lot":"d1000000000000000000000000000001","name":"bottled in March","origin":"batch","packaged_on":"2026-03-01","slot":1,"storage":"kitchen, 20 C"},{"abv_bp":600,"allergens":[],"best_before":"","beverage":"Hill Farm cider","bottle_ml":500,"ingredients":"not_known","kind":"cider","lot":"d1000000000000000000000000000002","name":"spring","origin":"reference","packaged_on":"","role":"reference","slot":2,"storage":""}],"makers":1,"method":"sheet","panel":3,"places":4,"pourer":false,"promises":{},"question":"lacks","rounds":1,"sheet":{"cleanser":"","duplicate":false,"orders":[[1,2],[2,1]],"pause_s":30},"spares":0}','lacks',X'31d8ee4744d9d53abf290657bdaebfd4450eb803666948e583a69a986b10f7bd','gami nuso 1');
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
CREATE TABLE invited (                     -- [person] who was counted at the plan, and who pours
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  pours        INTEGER NOT NULL CHECK (pours IN (0, 1)),
  is_maker     INTEGER NOT NULL CHECK (is_maker IN (0, 1)),
  PRIMARY KEY (session_id, taster_id)
) STRICT, WITHOUT ROWID;
INSERT INTO invited VALUES(1,1,0,1);
INSERT INTO invited VALUES(1,2,0,0);
INSERT INTO invited VALUES(1,3,0,0);
INSERT INTO invited VALUES(1,4,0,0);
INSERT INTO invited VALUES(2,1,0,1);
INSERT INTO invited VALUES(2,2,0,0);
INSERT INTO invited VALUES(2,3,0,0);
INSERT INTO invited VALUES(2,4,0,0);
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
INSERT INTO place VALUES(2,1,0);
INSERT INTO place VALUES(2,2,0);
INSERT INTO place VALUES(2,3,0);
INSERT INTO place VALUES(2,4,0);
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
INSERT INTO cup VALUES(1,102,2,1,1,0);
INSERT INTO cup VALUES(1,105,3,1,2,1);
INSERT INTO cup VALUES(1,159,3,1,2,0);
INSERT INTO cup VALUES(1,218,4,1,1,1);
INSERT INTO cup VALUES(1,241,2,1,2,0);
INSERT INTO cup VALUES(1,253,1,1,2,1);
INSERT INTO cup VALUES(1,286,1,1,2,0);
INSERT INTO cup VALUES(1,309,4,1,1,0);
INSERT INTO cup VALUES(1,314,3,1,1,1);
INSERT INTO cup VALUES(1,395,2,1,2,1);
INSERT INTO cup VALUES(1,439,2,1,1,1);
INSERT INTO cup VALUES(1,539,3,1,1,0);
INSERT INTO cup VALUES(1,645,1,1,1,0);
INSERT INTO cup VALUES(1,684,1,1,1,1);
INSERT INTO cup VALUES(1,719,4,1,2,1);
INSERT INTO cup VALUES(1,763,4,1,2,0);
INSERT INTO cup VALUES(2,154,4,1,2,0);
INSERT INTO cup VALUES(2,241,2,1,1,0);
INSERT INTO cup VALUES(2,280,1,1,2,1);
INSERT INTO cup VALUES(2,298,2,1,1,1);
INSERT INTO cup VALUES(2,340,2,1,2,1);
INSERT INTO cup VALUES(2,341,3,1,1,0);
INSERT INTO cup VALUES(2,465,4,1,1,1);
INSERT INTO cup VALUES(2,472,3,1,1,1);
INSERT INTO cup VALUES(2,528,3,1,2,1);
INSERT INTO cup VALUES(2,542,1,1,1,1);
INSERT INTO cup VALUES(2,729,4,1,2,1);
INSERT INTO cup VALUES(2,731,1,1,2,0);
INSERT INTO cup VALUES(2,829,3,1,2,0);
INSERT INTO cup VALUES(2,928,1,1,1,0);
INSERT INTO cup VALUES(2,974,4,1,1,0);
INSERT INTO cup VALUES(2,975,2,1,2,0);
CREATE TABLE sealed_key (                  -- [frozen] lot of every cup, seed, salt. Closed against a glance, not against a locksmith.
  session_id   INTEGER PRIMARY KEY REFERENCES session_plan (session_id),
  box          BLOB NOT NULL,
  secret       BLOB NOT NULL CHECK (length(secret) = 32)
) STRICT;
INSERT INTO sealed_key VALUES(1,X'1a02854d23796ad5631cbfa2cce1e4a3ce24e68d9f9ad68d1c5eaf418b274b292eaaa8e555d226482432f1cbb50a5aa209094e8a2120b52b9322fbf67af8a472e0dbd1c9da04f9138a03e91e729105eea45f3f3a46a510ba9b4c2ae0e94f7bc8b72c962e8fc07f40be1fc73248c717eae8ac9d8ea490ab1ea05ef83ace5b6c49f8c2825c9b8246c415214afc1b7dffffab92daadf0c7528bb3a564bcec7ac12e0c5a44627afe1d81900889a89f65d5ab9c9dce0038e5e3a20e5d6663400e8384e2251cff1fef8146a720ff2325fe0f1086aa6bd004dba09ff0e0bb497e63697ed1bea5401c850a71aa4cb5f4404b5f0eda39d964be1b35c599c08df728e7440d41ce95dbdf8c1381973ffd0a926faca145ceb01533642311711e3bd5a1c2c8b3bbef38d7d2974a2862a94985b91ab5820a39d98d5a6cde358a81e01b146a87dce5e43784f6de4f09171986d8c5ee923631d282dae339d4bda1ca99f29c4aad76',X'4acfbbf20e8c7afe9538d2e6af94e3586c49336dfeef37d83bd332eab40dd36f');
INSERT INTO sealed_key VALUES(2,X'1681dd859f1a66ad87512c961e372ba0cb5001da41c861aded3c25c4535cede86189789948e34d57d6594ba72c02a805243e65ca83a640acf7b3db41252ecc2e789d3e62f2ac74571f93e45c3498a4b23fb0d62d326f0d4c2be9df4f44d7e58f791894667018781eb4e5f94694d58309e6c2bfdb9a634a7c87ad7efe70dd47ebab4708fa64c10146ec2a6922d2ae384e195ecdd92f253dba0d3cf5a247af36054e4d8cda22ecf797fdaa61ab092b83f7818b2ba1a64b7ca0d9489499b5b4e82f6a067c33c0368127fd85918c97dd42f9133651b6dad7b291ca19fae56b52443eb5511502a7c43f1384850f16e50237b38e27b4b6cbaa2e0009c006fd5c1fb07aefb480d77160dae353f8c0ea52d6377d4b036bcee4e5989216d1678ccbfed37037aeffe259c684aa05b6e9529d18ddb2a941503d3878b23a82d4ad9ae24c8eec8f2fb507e8229b3123d2f8d8382c677dc9b075e75b22a19401c8933da23cdb81',X'cf797b3ec93bf73d22d5ab3a4dd3310333da21b429d37f20d90c113dcb2c819c');
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
INSERT INTO key_opened VALUES(1,13,X'71ee384cd4fbf53970dd3acb2722b67a7fc256b6f79d9eddf2daf9378c7e681b',X'df26911aa0e6298a21e32267313fc1ff7480afcf6ef029ee6a387349a9380bed','chacha20/1',1);
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
INSERT INTO key_line VALUES(1,102,2,2);
INSERT INTO key_line VALUES(1,105,2,2);
INSERT INTO key_line VALUES(1,159,2,2);
INSERT INTO key_line VALUES(1,218,2,2);
INSERT INTO key_line VALUES(1,241,1,1);
INSERT INTO key_line VALUES(1,253,2,2);
INSERT INTO key_line VALUES(1,286,2,2);
INSERT INTO key_line VALUES(1,309,2,2);
INSERT INTO key_line VALUES(1,314,1,1);
INSERT INTO key_line VALUES(1,395,1,1);
INSERT INTO key_line VALUES(1,439,2,2);
INSERT INTO key_line VALUES(1,539,1,1);
INSERT INTO key_line VALUES(1,645,1,1);
INSERT INTO key_line VALUES(1,684,1,1);
INSERT INTO key_line VALUES(1,719,1,1);
INSERT INTO key_line VALUES(1,763,1,1);
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
INSERT INTO place_taken VALUES(1,1,3,1,'signed');
INSERT INTO place_taken VALUES(1,2,4,0,'nickname');
INSERT INTO place_taken VALUES(1,3,5,0,'signed');
INSERT INTO place_taken VALUES(1,4,6,0,'signed');
INSERT INTO place_taken VALUES(2,1,3,1,'signed');
INSERT INTO place_taken VALUES(2,2,4,0,'nickname');
CREATE TABLE place_person (                -- [person] who sits there; the only link from answers to a name. A loose taster's goes at the close.
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  PRIMARY KEY (session_id, place),
  UNIQUE (session_id, taster_id),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place)
) STRICT, WITHOUT ROWID;
INSERT INTO place_person VALUES(1,1,1);
INSERT INTO place_person VALUES(2,1,1);
INSERT INTO place_person VALUES(1,2,2);
INSERT INTO place_person VALUES(2,2,2);
INSERT INTO place_person VALUES(1,3,3);
INSERT INTO place_person VALUES(1,4,4);
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
INSERT INTO hand_in VALUES(1,1,1,1,X'e9a53e8482cbe5807c959886d503ed89','file',1795964257730,X'367a1d6ebf03d1bc0949e6c03b37a3e2',8);
INSERT INTO hand_in VALUES(2,1,2,1,X'd850bb405ba2cbabd3ad69c020bf0d67','file',1795964257733,X'19a2ed7381b0cb04b9aed413f7c24eb7',9);
INSERT INTO hand_in VALUES(3,1,3,1,X'8cb5f5e430749140d0aa72fbe54ca9a7','file',1795964257755,X'7ad51a454422136f4d11f06ac51a5064',10);
INSERT INTO hand_in VALUES(4,1,4,1,X'669054ae759ee9ca104615a10f095a50','file',1795964257760,X'4c00774d8e6e9eec4c1c76d81d15bb13',11);
INSERT INTO hand_in VALUES(5,2,1,1,X'b8db61d402dedaa962808f1e1ad83018','file',1795964266643,X'77ecfbf7f664dfa81504128c3fe4c90e',6);
CREATE TABLE answer (                      -- [person] goes with its hand-in
  hand_in_id   INTEGER NOT NULL REFERENCES hand_in (id) ON DELETE CASCADE,
  item         INTEGER NOT NULL,
  code         INTEGER NOT NULL DEFAULT 0, -- 0 = about the whole flight
  value        INTEGER,
  text_digest  BLOB CHECK (length(text_digest) = 32),                 -- sha256(salt of the words || text)
  PRIMARY KEY (hand_in_id, item, code),
  CHECK ((value IS NULL) <> (text_digest IS NULL))
) STRICT, WITHOUT ROWID;
INSERT INTO answer VALUES(1,1,286,32,NULL);
INSERT INTO answer VALUES(1,1,645,79,NULL);
INSERT INTO answer VALUES(1,2,286,45,NULL);
INSERT INTO answer VALUES(1,2,645,94,NULL);
INSERT INTO answer VALUES(1,3,286,1,NULL);
INSERT INTO answer VALUES(1,3,645,5,NULL);
INSERT INTO answer VALUES(1,4,286,2,NULL);
INSERT INTO answer VALUES(1,4,645,4,NULL);
INSERT INTO answer VALUES(1,5,286,0,NULL);
INSERT INTO answer VALUES(1,5,645,0,NULL);
INSERT INTO answer VALUES(1,6,286,1,NULL);
INSERT INTO answer VALUES(1,6,645,3,NULL);
INSERT INTO answer VALUES(1,7,286,2,NULL);
INSERT INTO answer VALUES(1,7,645,3,NULL);
INSERT INTO answer VALUES(2,1,102,47,NULL);
INSERT INTO answer VALUES(2,1,241,60,NULL);
INSERT INTO answer VALUES(2,2,102,31,NULL);
INSERT INTO answer VALUES(2,2,241,48,NULL);
INSERT INTO answer VALUES(2,3,102,5,NULL);
INSERT INTO answer VALUES(2,3,241,1,NULL);
INSERT INTO answer VALUES(2,4,102,5,NULL);
INSERT INTO answer VALUES(2,4,241,2,NULL);
INSERT INTO answer VALUES(2,5,102,0,NULL);
INSERT INTO answer VALUES(2,5,241,0,NULL);
INSERT INTO answer VALUES(2,6,102,1,NULL);
INSERT INTO answer VALUES(2,6,241,3,NULL);
INSERT INTO answer VALUES(2,7,102,4,NULL);
INSERT INTO answer VALUES(2,7,241,7,NULL);
INSERT INTO answer VALUES(3,1,159,23,NULL);
INSERT INTO answer VALUES(3,1,539,35,NULL);
INSERT INTO answer VALUES(3,2,159,49,NULL);
INSERT INTO answer VALUES(3,2,539,98,NULL);
INSERT INTO answer VALUES(3,3,159,1,NULL);
INSERT INTO answer VALUES(3,3,539,2,NULL);
INSERT INTO answer VALUES(3,4,159,5,NULL);
INSERT INTO answer VALUES(3,4,539,2,NULL);
INSERT INTO answer VALUES(3,5,159,0,NULL);
INSERT INTO answer VALUES(3,5,539,0,NULL);
INSERT INTO answer VALUES(3,6,159,2,NULL);
INSERT INTO answer VALUES(3,6,539,3,NULL);
INSERT INTO answer VALUES(3,7,159,3,NULL);
INSERT INTO answer VALUES(3,7,539,3,NULL);
INSERT INTO answer VALUES(4,1,309,0,NULL);
INSERT INTO answer VALUES(4,1,763,0,NULL);
INSERT INTO answer VALUES(4,2,309,26,NULL);
INSERT INTO answer VALUES(4,2,763,99,NULL);
INSERT INTO answer VALUES(4,3,309,2,NULL);
INSERT INTO answer VALUES(4,3,763,2,NULL);
INSERT INTO answer VALUES(4,4,309,2,NULL);
INSERT INTO answer VALUES(4,4,763,3,NULL);
INSERT INTO answer VALUES(4,5,309,0,NULL);
INSERT INTO answer VALUES(4,5,763,0,NULL);
INSERT INTO answer VALUES(4,6,309,2,NULL);
INSERT INTO answer VALUES(4,6,763,1,NULL);
INSERT INTO answer VALUES(4,7,309,9,NULL);
INSERT INTO answer VALUES(4,7,763,4,NULL);
INSERT INTO answer VALUES(5,1,731,32,NULL);
INSERT INTO answer VALUES(5,1,928,79,NULL);
INSERT INTO answer VALUES(5,2,731,45,NULL);
INSERT INTO answer VALUES(5,2,928,94,NULL);
INSERT INTO answer VALUES(5,3,731,1,NULL);
INSERT INTO answer VALUES(5,3,928,5,NULL);
INSERT INTO answer VALUES(5,4,731,2,NULL);
INSERT INTO answer VALUES(5,4,928,4,NULL);
INSERT INTO answer VALUES(5,5,731,0,NULL);
INSERT INTO answer VALUES(5,5,928,0,NULL);
INSERT INTO answer VALUES(5,6,731,1,NULL);
INSERT INTO answer VALUES(5,6,928,3,NULL);
INSERT INTO answer VALUES(5,7,731,2,NULL);
INSERT INTO answer VALUES(5,7,928,3,NULL);
CREATE TABLE answer_words (                -- [person] free text apart, so that it can be erased alone
  hand_in_id   INTEGER NOT NULL,
  item         INTEGER NOT NULL,
  code         INTEGER NOT NULL,
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 4000),
  PRIMARY KEY (hand_in_id, item, code),
  FOREIGN KEY (hand_in_id, item, code) REFERENCES answer (hand_in_id, item, code) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
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
CREATE TABLE own_word (                    -- [live] words added here; retired, never deleted: old sheets name them
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  word         TEXT NOT NULL CHECK (length(trim(word)) BETWEEN 1 AND 60 AND length(word) <= 60),
  class        TEXT NOT NULL CHECK (class IN ('grain', 'roast', 'fruity', 'floral', 'hop', 'spice', 'sweet', 'sour', 'bitter', 'mouthfeel', 'yeast',
                                              'air', 'sulphur', 'spoiled', 'cellar', 'other')),
  leaning      TEXT NOT NULL CHECK (leaning IN ('fault', 'either', 'wanted')),
  meaning         TEXT NOT NULL DEFAULT '' CHECK (length(meaning) <= 1000)
) STRICT;
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
CREATE TABLE IF NOT EXISTS "item" (                      -- [frozen] the questions of the sheet
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
INSERT INTO item VALUES(1,1,'line',0,100,1,1,'main','sweet');
INSERT INTO item VALUES(1,2,'line',0,100,1,1,'main','sour');
INSERT INTO item VALUES(1,3,'just_right',1,5,1,1,'main','sweet');
INSERT INTO item VALUES(1,4,'just_right',1,5,1,1,'main','sour');
INSERT INTO item VALUES(1,5,'worst',NULL,NULL,1,1,'main','');
INSERT INTO item VALUES(1,6,'behaviour',1,3,1,1,'main','');
INSERT INTO item VALUES(1,7,'liking',1,9,1,1,'main','');
INSERT INTO item VALUES(2,1,'line',0,100,1,1,'main','sweet');
INSERT INTO item VALUES(2,2,'line',0,100,1,1,'main','sour');
INSERT INTO item VALUES(2,3,'just_right',1,5,1,1,'main','sweet');
INSERT INTO item VALUES(2,4,'just_right',1,5,1,1,'main','sour');
INSERT INTO item VALUES(2,5,'worst',NULL,NULL,1,1,'main','');
INSERT INTO item VALUES(2,6,'behaviour',1,3,1,1,'main','');
INSERT INTO item VALUES(2,7,'liking',1,9,1,1,'main','');
CREATE TABLE typed (                       -- [person] what a taster has typed and not handed in yet; gone with the hand-in
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  round        INTEGER NOT NULL CHECK (round BETWEEN 1 AND 99),
  body         TEXT NOT NULL CHECK (body GLOB '[[]*]' AND length(body) <= 2000000),
  at           INTEGER NOT NULL,
  PRIMARY KEY (session_id, place),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place)
) STRICT, WITHOUT ROWID;
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
INSERT INTO series VALUES(1,'7359422117a0d71f4b8def91d0b3684c','Cider over time',1,'reference',2,'2026-03-01',1,1,3,'',NULL,1795964227588,NULL);
CREATE TABLE series_sitting (              -- [live] as proposed; the real day is the session's
  series_id     INTEGER NOT NULL REFERENCES series (id) ON DELETE CASCADE,
  number        INTEGER NOT NULL CHECK (number BETWEEN 1 AND 24),
  due_on        TEXT NOT NULL CHECK (due_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  session_id    INTEGER UNIQUE REFERENCES session (id) ON DELETE SET NULL,
  PRIMARY KEY (series_id, due_on)
) STRICT, WITHOUT ROWID;
INSERT INTO series_sitting VALUES(1,1,'2026-03-31',1);
INSERT INTO series_sitting VALUES(1,2,'2026-05-31',2);
INSERT INTO series_sitting VALUES(1,3,'2026-11-26',NULL);
CREATE TABLE series_seen (                 -- [grows] its old pages were opened while one of its sittings was sealed
  series_id     INTEGER NOT NULL REFERENCES series (id),
  session_id    INTEGER NOT NULL REFERENCES session (id),
  at            INTEGER NOT NULL
) STRICT;
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
COMMIT;
