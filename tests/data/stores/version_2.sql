PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE store (                       -- [live] one row
  one          INTEGER PRIMARY KEY CHECK (one = 1),
  uid          TEXT NOT NULL CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  created_at   INTEGER NOT NULL,
  made_by      TEXT NOT NULL
) STRICT;
INSERT INTO store VALUES(1,'b709b74209e242d05d169a57a64e3f32',1795917791553,'0.1.0');
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
INSERT INTO beverage VALUES(1,'d31a72e8b6e183d99b357dbf14d9c259','batch','beer','Porter no. 4',10560,10140,560,'gravities','known',NULL);
INSERT INTO beverage VALUES(2,'bc14c2e4bf3a907fe4f460d208fd6c9f','reference','beer','Bought porter',NULL,NULL,540,'label','known',NULL);
CREATE TABLE beverage_allergen (           -- [live]
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id) ON DELETE CASCADE,
  allergen     TEXT NOT NULL CHECK (allergen IN ('gluten', 'egg', 'fish', 'milk', 'nuts', 'peanuts', 'soy', 'sesame', 'mustard',
                                                 'celery', 'lupin', 'molluscs', 'crustaceans', 'sulphites')),
  PRIMARY KEY (beverage_id, allergen)
) STRICT, WITHOUT ROWID;
INSERT INTO beverage_allergen VALUES(1,'gluten');
INSERT INTO beverage_allergen VALUES(2,'gluten');
CREATE TABLE taster (                      -- [person] the only place where a name stands
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  name         TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 100),
  nickname     TEXT NOT NULL DEFAULT '' CHECK (length(nickname) <= 60),
  is_brewer    INTEGER NOT NULL DEFAULT 0 CHECK (is_brewer IN (0, 1)),
  archived_at  INTEGER
) STRICT;
INSERT INTO taster VALUES(1,'9288b84592ba9098e4b4b647633a0c8e','Kit','',0,NULL);
INSERT INTO taster VALUES(2,'a72902f391ce1c31e52c32a4606f3fc4','Ilse','',0,NULL);
INSERT INTO taster VALUES(3,'a88f93e7872a9ef4174589683cb859b5','Nia','',0,NULL);
INSERT INTO taster VALUES(4,'acd5d4abe8b11475639a3006032d809a','Tove','',0,NULL);
INSERT INTO taster VALUES(5,'e16cf1484e26001ccd1d28d263bf2132','Wenna','',0,NULL);
CREATE TABLE beverage_maker (              -- [live] who had a hand in a batch
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id) ON DELETE CASCADE,
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  PRIMARY KEY (beverage_id, taster_id)
) STRICT, WITHOUT ROWID;
INSERT INTO beverage_maker VALUES(1,5);
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
INSERT INTO lot VALUES(1,'fb88f3a7a4c1d643652f231c47ed6a9f',1,'bottled 4 February','2026-02-04',NULL,500,'cellar, 12 degrees','',NULL);
INSERT INTO lot VALUES(2,'61ca2367d41b8f2b82754db07580aaa3',2,'bought in March',NULL,'2026-11-30',500,'cellar, 12 degrees','a shop in town',NULL);
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
INSERT INTO stock_move VALUES(1,1,NULL,1795917791658,'added',24);
INSERT INTO stock_move VALUES(2,2,NULL,1795917791658,'added',12);
INSERT INTO stock_move VALUES(3,1,2,1795917800674,'held',-1);
INSERT INTO stock_move VALUES(4,2,2,1795917800674,'held',-1);
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
INSERT INTO session VALUES(1,'69724c6c18897723254a7621b88b0856','Porter no. 4 against a bought one, looked at after each round','Dark beer once more','import',1783623601000,NULL);
INSERT INTO session VALUES(2,'2ffa134ad0a98b9c661a029dbe7bbb52','Which one is the sweeter?','Pairs','here',1795917792122,NULL);
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
INSERT INTO log VALUES(1,1,1783623604000,'sealed','sealed','{"commitment":"8031ff0e98b0f0116971a500c3167027e536a410cd8ec5fc12d993210067da75","plan":"547d3a2bfcb4fed733e5d4e1e37506d54e61e3fad90f5f16f44fd55d96d86b30","schema":1}',X'0000000000000000000000000000000000000000000000000000000000000000',X'd33ab0f81544d8b90409167479a4337404c097f806c480356dc8ceec476f64d8');
INSERT INTO log VALUES(1,2,1783624501000,'pour_sheet_opened','sealed','{}',X'd33ab0f81544d8b90409167479a4337404c097f806c480356dc8ceec476f64d8',X'cd995f0d340607cc978222ceec22d825d4e6aa45c87aee5014d86d56cce4e8b1');
INSERT INTO log VALUES(1,3,1783625701000,'poured','sealed','{}',X'cd995f0d340607cc978222ceec22d825d4e6aa45c87aee5014d86d56cce4e8b1',X'34bcf0e9deb0a09148f8ba1121231d5f063d2b2f8003d0b400ab1065ec5679b1');
INSERT INTO log VALUES(1,4,1783625761000,'place_taken','sealed','{"as":"signed","maker":false,"place":1}',X'34bcf0e9deb0a09148f8ba1121231d5f063d2b2f8003d0b400ab1065ec5679b1',X'4fa2220963df005f8c85d6761d40b523cc282620def25e197e7f9278ccb71f8c');
INSERT INTO log VALUES(1,5,1783625821000,'place_taken','sealed','{"as":"loose","maker":false,"place":2}',X'4fa2220963df005f8c85d6761d40b523cc282620def25e197e7f9278ccb71f8c',X'697579e13f7d0ab8c186ed5550c244679e8f3bc01b4c6295fd94b48ab73b705e');
INSERT INTO log VALUES(1,6,1783625881000,'place_taken','sealed','{"as":"signed","maker":false,"place":3}',X'697579e13f7d0ab8c186ed5550c244679e8f3bc01b4c6295fd94b48ab73b705e',X'380e6f5b84d9b660191c6555a65fc80bbb3f3ff45f0581db89860c77aa3ed9f7');
INSERT INTO log VALUES(1,7,1783625941000,'place_taken','sealed','{"as":"signed","maker":false,"place":4}',X'380e6f5b84d9b660191c6555a65fc80bbb3f3ff45f0581db89860c77aa3ed9f7',X'2259c7055a847db7bb37aec59476794eb465edee8481dc216c119fd357f96778');
INSERT INTO log VALUES(1,8,1783626001000,'place_taken','sealed','{"as":"loose","maker":false,"place":5}',X'2259c7055a847db7bb37aec59476794eb465edee8481dc216c119fd357f96778',X'b42c29cf70e468ff3fee26abb2bf9ce50ed9a5ac15ef9675618e90db16a858df');
INSERT INTO log VALUES(1,9,1783626061000,'place_taken','sealed','{"as":"signed","maker":false,"place":6}',X'b42c29cf70e468ff3fee26abb2bf9ce50ed9a5ac15ef9675618e90db16a858df',X'a89b7419f75adcebfaaf6014cd09d7156ab04350a2bafaf7739f909a7a6cab96');
INSERT INTO log VALUES(1,10,1783626121000,'place_taken','sealed','{"as":"signed","maker":true,"place":7}',X'a89b7419f75adcebfaaf6014cd09d7156ab04350a2bafaf7739f909a7a6cab96',X'45378066f8772bec0d11d2745896efddaff6b666a61e4cb9fccd04c1724f4872');
INSERT INTO log VALUES(1,11,1783626241000,'opened','tasting','{}',X'45378066f8772bec0d11d2745896efddaff6b666a61e4cb9fccd04c1724f4872',X'fff618461618bf343ff63414f941af3b533eded316683add107829612d492046');
INSERT INTO log VALUES(1,12,1783626241000,'began','tasting','{"place":1,"round":1}',X'fff618461618bf343ff63414f941af3b533eded316683add107829612d492046',X'490e6f8e98afde7f08eebde5274b6f8d041ccdc6670c57a467e92a2ca7e6bd57');
INSERT INTO log VALUES(1,13,1783626301000,'answered','tasting','{"digest":"c84bf9f357bab33e16a45b638d05d94a65aed0c9c23a71b60c3fa024a62b02a7","place":1,"round":1}',X'490e6f8e98afde7f08eebde5274b6f8d041ccdc6670c57a467e92a2ca7e6bd57',X'8e27aaa8368f8d1dc32eca3b8d7b8dfd653d9a8c697eac6162321178a7dfd695');
INSERT INTO log VALUES(1,14,1783626421000,'began','tasting','{"place":2,"round":1}',X'8e27aaa8368f8d1dc32eca3b8d7b8dfd653d9a8c697eac6162321178a7dfd695',X'e67357e07945fd0c844a0b4e7968620b44cb30ec5e7cf9c064f9a4a889aae3eb');
INSERT INTO log VALUES(1,15,1783626481000,'answered','tasting','{"digest":"1614047424e581d9855eb34ebd8fa070e4257cf6f14607aec2cffe231002f514","place":2,"round":1}',X'e67357e07945fd0c844a0b4e7968620b44cb30ec5e7cf9c064f9a4a889aae3eb',X'42c0e1005186bb045378b9dd5aef35a98d30d2a7866fd90f25e5bbd932c3f7f9');
INSERT INTO log VALUES(1,16,1783626601000,'began','tasting','{"place":3,"round":1}',X'42c0e1005186bb045378b9dd5aef35a98d30d2a7866fd90f25e5bbd932c3f7f9',X'afa36f5045e9e771201a4ec44ebebc079f80dbee0c38c8bfec05de47bc8516a6');
INSERT INTO log VALUES(1,17,1783626661000,'answered','tasting','{"digest":"1a6ae06c685601e927e4b6d06fca63a4e046214bda041f47317759e61f84e706","place":3,"round":1}',X'afa36f5045e9e771201a4ec44ebebc079f80dbee0c38c8bfec05de47bc8516a6',X'3577da43dc4e9277119726020ed162fa95b6613a383c8c4cc4e9c12889d79180');
INSERT INTO log VALUES(1,18,1783626781000,'began','tasting','{"place":4,"round":1}',X'3577da43dc4e9277119726020ed162fa95b6613a383c8c4cc4e9c12889d79180',X'cb1d0b0cc0a3dbb3aca831a3de80fd7212776c51fa9bd13953adc63fdb353669');
INSERT INTO log VALUES(1,19,1783626841000,'answered','tasting','{"digest":"0b54bf058bb0d2b6bde79d3301652a88de9d5e5bbcea339bfbe63b1b883007b2","place":4,"round":1}',X'cb1d0b0cc0a3dbb3aca831a3de80fd7212776c51fa9bd13953adc63fdb353669',X'7ef84e5a4844685d90274453408139c9cc2f93ec0cacac45d12e71be51b9d3da');
INSERT INTO log VALUES(1,20,1783626961000,'began','tasting','{"place":5,"round":1}',X'7ef84e5a4844685d90274453408139c9cc2f93ec0cacac45d12e71be51b9d3da',X'77c732d3beedb8f26e4eb7cd9a816950fd7a8b8945ab1a9bd778ecb6231db3f5');
INSERT INTO log VALUES(1,21,1783627021000,'answered','tasting','{"digest":"9f41dc7510d6ac493ebbb007a92b3c1c72d417d8007b128a1457fd570c013e5e","place":5,"round":1}',X'77c732d3beedb8f26e4eb7cd9a816950fd7a8b8945ab1a9bd778ecb6231db3f5',X'c3d7de469890889f5f61928fd98eb402e0debc9e856f232e2275c5e7b175e03e');
INSERT INTO log VALUES(1,22,1783627141000,'began','tasting','{"place":6,"round":1}',X'c3d7de469890889f5f61928fd98eb402e0debc9e856f232e2275c5e7b175e03e',X'aafe8fa29c70847b7248aec91eb5b7e99e8680ceab04fee07465912dd5db3c7b');
INSERT INTO log VALUES(1,23,1783627201000,'answered','tasting','{"digest":"3231cd4bc1b3ae5ba1bb38dd1dacb8588d20e460cd810ab1019d38ed3fe011c9","place":6,"round":1}',X'aafe8fa29c70847b7248aec91eb5b7e99e8680ceab04fee07465912dd5db3c7b',X'b314305879704c21c0c0746d6704022fef182703cdf25d2c34fcfcb2dde8f735');
INSERT INTO log VALUES(1,24,1783627321000,'began','tasting','{"place":7,"round":1}',X'b314305879704c21c0c0746d6704022fef182703cdf25d2c34fcfcb2dde8f735',X'75f1478bb084a46bd26dc8d23ad7e648d0918b7d0d78dfd10042d76d4d7731a6');
INSERT INTO log VALUES(1,25,1783627381000,'answered','tasting','{"digest":"5b263c6a71872fc510ab20c9792c662e820a7c2b9d9b05e9946b0447f53315c7","place":7,"round":1}',X'75f1478bb084a46bd26dc8d23ad7e648d0918b7d0d78dfd10042d76d4d7731a6',X'13045a923238b00eec38a5e53298ce9caa228f7f41822cdd8e81ecced4207e02');
INSERT INTO log VALUES(1,26,1783627681000,'looked','tasting','{"round":1}',X'13045a923238b00eec38a5e53298ce9caa228f7f41822cdd8e81ecced4207e02',X'57747073b4b86df5fc007ef7cf7ce843f7d6b6cb45039f1a5197dbabe40a753d');
INSERT INTO log VALUES(1,27,1783627681000,'judged','tasting','{"go_on":true,"round":1}',X'57747073b4b86df5fc007ef7cf7ce843f7d6b6cb45039f1a5197dbabe40a753d',X'67d67e172e1e65d238754c0621d136ac0463a6d987630519d1d19bcd73439c92');
INSERT INTO log VALUES(1,28,1783627801000,'began','tasting','{"place":1,"round":2}',X'67d67e172e1e65d238754c0621d136ac0463a6d987630519d1d19bcd73439c92',X'be2a1b9e7cc4280c61447024496c537c9b942005a71eddbeacb6ad9d9f258934');
INSERT INTO log VALUES(1,29,1783627861000,'answered','tasting','{"digest":"78ec539f82d0ad2943402dfd92ba56ef037ddb75ec8153d146ad606fef41a1c8","place":1,"round":2}',X'be2a1b9e7cc4280c61447024496c537c9b942005a71eddbeacb6ad9d9f258934',X'a4fe2ac2a854a5c7d10e4de935ecb1bfaf6f6aa75eb3d0500ede281e64f18003');
INSERT INTO log VALUES(1,30,1783627981000,'began','tasting','{"place":2,"round":2}',X'a4fe2ac2a854a5c7d10e4de935ecb1bfaf6f6aa75eb3d0500ede281e64f18003',X'4a6e2e8c22a7fb97895430e625d2aa58eda8b619e3c5241ea9745ac97b4b294a');
INSERT INTO log VALUES(1,31,1783628041000,'answered','tasting','{"digest":"d06ece6495fb207ff858ac2d5655e12472e14c81ac922b4ff7f07a9d14f54bf1","place":2,"round":2}',X'4a6e2e8c22a7fb97895430e625d2aa58eda8b619e3c5241ea9745ac97b4b294a',X'8146863266b4cd317323f31d3b5e215ad6ee7db97122a93a1fc4e6da028c1329');
INSERT INTO log VALUES(1,32,1783628161000,'began','tasting','{"place":3,"round":2}',X'8146863266b4cd317323f31d3b5e215ad6ee7db97122a93a1fc4e6da028c1329',X'685b7720c2aaf81b49bdebdf47f87732d1a791f9498eff180c6819141ea34590');
INSERT INTO log VALUES(1,33,1783628221000,'answered','tasting','{"digest":"1713729a2cd2b747d51047b6a8fbf41fff6d4b11b1bf48306138fb6b70c8a8b5","place":3,"round":2}',X'685b7720c2aaf81b49bdebdf47f87732d1a791f9498eff180c6819141ea34590',X'cdc2ecc190e2f6326809f97493fe850b21aad25343b38564854f05853fe9303f');
INSERT INTO log VALUES(1,34,1783628341000,'began','tasting','{"place":4,"round":2}',X'cdc2ecc190e2f6326809f97493fe850b21aad25343b38564854f05853fe9303f',X'11f6333e095bac639e4684718c1a1a99d4f732295edb4a47e5cec3d015acb404');
INSERT INTO log VALUES(1,35,1783628401000,'answered','tasting','{"digest":"ab174face87c06b495b03b4a654aabe806fbaf6a1bd841825328a3dbb402458b","place":4,"round":2}',X'11f6333e095bac639e4684718c1a1a99d4f732295edb4a47e5cec3d015acb404',X'a18d6d15d342d9280c4427b8e09022c570731180f432e1f838bce619b074d4fa');
INSERT INTO log VALUES(1,36,1783628521000,'began','tasting','{"place":5,"round":2}',X'a18d6d15d342d9280c4427b8e09022c570731180f432e1f838bce619b074d4fa',X'31c990af176009b658f3f043aa36885268ccad0a272520ac017c2e369e6b8a2c');
INSERT INTO log VALUES(1,37,1783628581000,'answered','tasting','{"digest":"ef2f8ae950099cb2b8f72ab2dd59cb7f3a8446027425ac0c8808fba5ad235344","place":5,"round":2}',X'31c990af176009b658f3f043aa36885268ccad0a272520ac017c2e369e6b8a2c',X'4c29ee4eb67ad0f7c14db82300c7aa5eec375f5ac29c426e9ee68550684e5eb9');
INSERT INTO log VALUES(1,38,1783628701000,'began','tasting','{"place":6,"round":2}',X'4c29ee4eb67ad0f7c14db82300c7aa5eec375f5ac29c426e9ee68550684e5eb9',X'820122377989c530b98bb70d4369ce23d1d8a20864a4a70ed5c6ade43e6c6632');
INSERT INTO log VALUES(1,39,1783628761000,'answered','tasting','{"digest":"3de217da4e6b254ccbfad51a81a9badf8eaa1fa0efbe3c6410e30ffdfb30697a","place":6,"round":2}',X'820122377989c530b98bb70d4369ce23d1d8a20864a4a70ed5c6ade43e6c6632',X'3a52c0f07f0d02f5871787dc722f734902a94b645e984dd7e1703ac226cd5c4f');
INSERT INTO log VALUES(1,40,1783628881000,'began','tasting','{"place":7,"round":2}',X'3a52c0f07f0d02f5871787dc722f734902a94b645e984dd7e1703ac226cd5c4f',X'8f969ac523e40a837bce5be9ed11ef1165afc206e80bd4e1dc66adfea4c062d5');
INSERT INTO log VALUES(1,41,1783628941000,'answered','tasting','{"digest":"8a5be30e19dbe7091252579f9a17c00b75db21171296acb507cd95443d312702","place":7,"round":2}',X'8f969ac523e40a837bce5be9ed11ef1165afc206e80bd4e1dc66adfea4c062d5',X'9e7c227c8d7dbb274bd5920471c80d13d1e5f08eb8c18b84354f5453dde3fa38');
INSERT INTO log VALUES(1,42,1783629241000,'looked','tasting','{"round":2}',X'9e7c227c8d7dbb274bd5920471c80d13d1e5f08eb8c18b84354f5453dde3fa38',X'15a82628964861b6c5b09dbbcab992f1e337f4efe8d8af6a59c41c3cda145c27');
INSERT INTO log VALUES(1,43,1783629241000,'judged','tasting','{"go_on":false,"round":2}',X'15a82628964861b6c5b09dbbcab992f1e337f4efe8d8af6a59c41c3cda145c27',X'df12687dd860b567bf9598c86dcb4ba6df4dfb1ff19a3d8c9bee5a21fcf08b9e');
INSERT INTO log VALUES(1,44,1783629541000,'closed','closed','{"missing":0}',X'df12687dd860b567bf9598c86dcb4ba6df4dfb1ff19a3d8c9bee5a21fcf08b9e',X'a778ccb583b0ec6eae497f43a381a4ae895014b8a9ff44f96a12ceabfafc03d0');
INSERT INTO log VALUES(1,45,1783629542000,'revealed','revealed','{}',X'a778ccb583b0ec6eae497f43a381a4ae895014b8a9ff44f96a12ceabfafc03d0',X'9c9d3b59138328d134e4deacba0a5528733ec17c67fe738f9a8b00c846291524');
INSERT INTO log VALUES(1,46,1783630741000,'decided','revealed','{"digest":"77d7301c11b97eb76e3da37d7f64288791c9423ab35614c8a27c18888eff374e"}',X'9c9d3b59138328d134e4deacba0a5528733ec17c67fe738f9a8b00c846291524',X'a210b64ae31927f657e9be370ab6f0ef8b82ac5001c30cb8d52216c7e28083e0');
INSERT INTO log VALUES(2,1,1795917800674,'sealed','sealed','{"commitment":"88051ae95d8759cd4e7990197ea64466a80d2c2ccde5e1342fe8da192ef8efb0","plan":"dbee44af2c3b82a5a038607396d674e5a3c8c121ec476fcb3eb386dd064b944a","schema":1}',X'0000000000000000000000000000000000000000000000000000000000000000',X'091b6eb8a6d6e4c6129fcee51cadd5d2ae0757683bc70b554b78616063b8e222');
INSERT INTO log VALUES(2,2,1795917800677,'pour_sheet_opened','sealed','{}',X'091b6eb8a6d6e4c6129fcee51cadd5d2ae0757683bc70b554b78616063b8e222',X'fb72ad970f0f5c0ceca3f646bcef91c77bfcf96b18bf4ee4f9c1d5333bfb8744');
INSERT INTO log VALUES(2,3,1795917800837,'place_taken','sealed','{"as":"signed","maker":false,"place":1}',X'fb72ad970f0f5c0ceca3f646bcef91c77bfcf96b18bf4ee4f9c1d5333bfb8744',X'38a03b3b0bfc785f9c6706678e98b05dc7550677a0565aa1e85488a650d7dc24');
INSERT INTO log VALUES(2,4,1795917800952,'place_taken','sealed','{"as":"nickname","maker":false,"place":2}',X'38a03b3b0bfc785f9c6706678e98b05dc7550677a0565aa1e85488a650d7dc24',X'a24b82ba5c34ad94b825eba450e6809cac04418709dbc7d5648c5a7577431a94');
INSERT INTO log VALUES(2,5,1795917802220,'opened','tasting','{}',X'a24b82ba5c34ad94b825eba450e6809cac04418709dbc7d5648c5a7577431a94',X'98d0cc1a702d30fe5121d18978f735c2846578d88482f94f69786be0ff7bc3b2');
INSERT INTO log VALUES(2,6,1795917802220,'answered','tasting','{"digest":"309f3257eb15b0d9a8c0d353ce8984be85454d0e5a46d4ec7395bb7f5465ec46","place":1,"round":1}',X'98d0cc1a702d30fe5121d18978f735c2846578d88482f94f69786be0ff7bc3b2',X'4fbdc57c23fb68f6e4449cb425f558ee1bf1234cd13975a38010e7bfebdbd0f6');
CREATE TABLE session_plan (                -- [frozen] names, strengths, allergens as they were; reports read these, never the live shelf
  session_id   INTEGER PRIMARY KEY REFERENCES session (id),
  body         TEXT NOT NULL CHECK (body GLOB '{*}'),     -- canonical JSON, hashed
  question     TEXT NOT NULL,              -- as in the body, for lists
  commitment   BLOB NOT NULL CHECK (length(commitment) = 32),
  seal_mark    TEXT NOT NULL CHECK (length(seal_mark) = 11)
) STRICT;
INSERT INTO session_plan VALUES(1,'{"analysis":{"alpha_pm":50,"gamma_pm":300,"limit_pm":null,"seeks":"difference","test":"sequential_ratio"},"ceiling_g":20,"claim":"table","country":"GB","cup_ml":15,"cups":[{"code":308,"place":1,"position":1,"round":1,"spare":0},{"code":203,"place":1,"position":1,"round":1,"spare":1},{"code":920,"place":1,"position":2,"round":1,"spare":0},{"code":238,"place":1,"position":2,"round":1,"spare":1},{"code":604,"place":1,"position":3,"round":1,"spare":0},{"code":543,"place":1,"position":3,"round":1,"spare":1},{"code":452,"place":1,"position":1,"round":2,"spare":0},{"code":591,"place":1,"position":1,"round":2,"spare":1},{"code":945,"place":1,"position":2,"round":2,"spare":0},{"code":341,"place":1,"position":2,"round":2,"spare":1},{"code":982,"place":1,"position":3,"round":2,"spare":0},{"code":684,"place":1,"position":3,"round":2,"spare":1},{"code":439,"place":1,"position":1,"round":3,"spare":0},{"code":173,"place":1,"position":1,"round":3,"spare":1},{"code":496,"place":1,"position":2,"round":3,"spare":0},{"code":402,"place":1,"position":2,"round":3,"spare":1},{"code":832,"place":1,"position":3,"round":3,"spare":0},{"code":397,"place":1,"position":3,"round":3,"spare":1},{"code":435,"place":1,"position":1,"round":4,"spare":0},{"code":497,"place":1,"position":1,"round":4,"spare":1},{"code":473,"place":1,"position":2,"round":4,"spare":0},{"code":821,"place":1,"position":2,"round":4,"spare":1},{"code":317,"place":1,"position":3,"round":4,"spare":0},{"code":678,"place":1,"position":3,"round":4,"spare":1},{"code":235,"place":2,"position":1,"round":1,"spare":0},{"code":398,"place":2,"position":1,"round":1,"spare":1},{"code":987,"place":2,"position":2,"round":1,"spare":0},{"code":517,"place":2,"position":2,"round":1,"spare":1},{"code":837,"place":2,"position":3,"round":1,"spare":0},{"code":645,"place":2,"position":3,"round":1,"spare":1},{"code":695,"place":2,"position":1,"round":2,"spare":0},{"code":576,"place":2,"position":1,"round":2,"spare":1},{"code":471,"place":2,"position":2,"round":2,"spare":0},{"code":805,"place":2,"position":2,"round":2,"spare":1},{"code":590,"place":2,"position":3,"round":2,"spare":0},{"code":375,"place":2,"position":3,"round":2,"spare":1},{"code":457,"place":2,"position":1,"round":3,"spare":0},{"code":768,"place":2,"position":1,"round":3,"spare":1},{"code":570,"place":2,"position":2,"round":3,"spare":0},{"code":319,"place":2,"position":2,"round":3,"spare":1},{"code":735,"place":2,"position":3,"round":3,"spare":0},{"code":630,"place":2,"position":3,"round":3,"spare":1},{"code":754,"place":2,"position":1,"round":4,"spare":0},{"code":723,"place":2,"position":1,"round":4,"spare":1},{"code":736,"place":2,"position":2,"round":4,"spare":0},{"code":632,"place":2,"position":2,"round":4,"spare":1},{"code":529,"place":2,"position":3,"round":4,"spare":0},{"code":503,"place":2,"position":3,"round":4,"spare":1},{"code":701,"place":3,"position":1,"round":1,"spare":0},{"code":485,"place":3,"position":1,"round":1,"spare":1},{"code":973,"place":3,"position":2,"round":1,"spare":0},{"code":640,"place":3,"position":2,"round":1,"spare":1},{"code":539,"place":3,"position":3,"round":1,"spare":0},{"code":204,"place":3,"position":3,"round":1,"spare":1},{"code":538,"place":3,"position":1,"round":2,"spare":0},{"code":561,"place":3,"position":1,"round":2,"spare":1},{"code":746,"place":3,"position":2,"round":2,"spare":0},{"code":209,"place":3,"position":2,"round":2,"spare":1},{"code":894,"place":3,"position":3,"round":2,"spare":0},{"code":732,"place":3,"position":3,"round":2,"spare":1},{"code":741,"place":3,"position":1,"round":3,"spare":0},{"code":917,"place":3,"position":1,"round":3,"spare":1},{"code":135,"place":3,"position":2,"round":3,"spare":0},{"code":458,"place":3,"position":2,"round":3,"spare":1},{"code":938,"place":3,"position":3,"round":3,"spare":0},{"code":215,"place":3,"position":3,"round":3,"spare":1},{"code":265,"place":3,"position":1,"round":4,"spare":0},{"code":704,"place":3,"position":1,"round":4,"spare":1},{"code":983,"place":3,"position":2,"round":4,"spare":0},{"code":340,"place":3,"position":2,"round":4,"spare":1},{"code":148,"place":3,"position":3,"round":4,"spare":0},{"code":281,"place":3,"position":3,"round":4,"spare":1},{"code":765,"place":4,"position":1,"round":1,"spare":0},{"code":230,"place":4,"position":1,"round":1,"spare":1},{"code":389,"place":4,"position":2,"round":1,"spare":0},{"code":708,"place":4,"position":2,"round":1,"spare":1},{"code":416,"place":4,"position":3,"round":1,"spare":0},{"code":470,"place":4,"position":3,"round":1,"spare":1},{"code":419,"place":4,"position":1,"round":2,"spare":0},{"code":835,"place":4,"position":1,"round":2,"spare":1},{"code":675,"place":4,"position":2,"round":2,"spare":0},{"code":856,"place":4,"position":2,"round":2,"spare":1},{"code":804,"place":4,"position":3,"round":2,"spare":0},{"code":153,"place":4,"position":3,"round":2,"spare":1},{"code":149,"place":4,"position":1,"round":3,"spare":0},{"code":902,"place":4,"position":1,"round":3,"spare":1},{"code":639,"place":4,"position":2,"round":3,"spare":0},{"code":597,"place":4,"position":2,"round":3,"spare":1},{"code":104,"place":4,"position":3,"round":3,"spare":0},{"code":892,"place":4,"position":3,"round":3,"spare":1},{"code":941,"place":4,"position":1,"round":4,"spare":0},{"code":812,"place":4,"position":1,"round":4,"spare":1},{"code":321,"place":4,"position":2,"round":4,"spare":0},{"code":583,"place":4,"position":2,"round":4,"spare":1},{"code":154,"place":4,"position":3,"round":4,"spare":0},{"code":146,"place":4,"position":3,"round":4,"spare":1},{"code":491,"place":5,"position":1,"round":1,"spare":0},{"code":259,"place":5,"position":1,"round":1,"spare":1},{"code":790,"place":5,"position":2,"round":1,"spare":0},{"code":548,"place":5,"position":2,"round":1,"spare":1},{"code":862,"place":5,"position":3,"round":1,"spare":0},{"code":372,"place":5,"position":3,"round":1,"spare":1},{"code":490,"place":5,"position":1,"round":2,"spare":0},{"code":250,"place":5,"position":1,"round":2,"spare":1},{"code":301,"place":5,"position":2,"round":2,"spare":0},{"code":347,"place":5,"position":2,"round":2,"spare":1},{"code":395,"place":5,"position":3,"round":2,"spare":0},{"code":641,"place":5,"position":3,"round":2,"spare":1},{"code":350,"place":5,"position":1,"round":3,"spare":0},{"code":345,"place":5,"position":1,"round":3,"spare":1},{"code":489,"place":5,"position":2,"round":3,"spare":0},{"code":162,"place":5,"position":2,"round":3,"spare":1},{"code":210,"place":5,"position":3,"round":3,"spare":0},{"code":603,"place":5,"position":3,"round":3,"spare":1},{"code":147,"place":5,"position":1,"round":4,"spare":0},{"code":651,"place":5,"position":1,"round":4,"spare":1},{"code":318,"place":5,"position":2,"round":4,"spare":0},{"code":850,"place":5,"position":2,"round":4,"spare":1},{"code":934,"place":5,"position":3,"round":4,"spare":0},{"code":465,"place":5,"position":3,"round":4,"spare":1},{"code":328,"place":6,"position":1,"round":1,"spare":0},{"code":197,"place":6,"position":1,"round":1,"spare":1},{"code":905,"place":6,"position":2,"round":1,"spare":0},{"code":706,"place":6,"position":2,"round":1,"spare":1},{"code":964,"place":6,"position":3,"round":1,"spare":0},{"code":492,"place":6,"position":3,"round":1,"spare":1},{"code":784,"place":6,"position":1,"round":2,"spare":0},{"code":307,"place":6,"position":1,"round":2,"spare":1},{"code":853,"place":6,"position":2,"round":2,"spare":0},{"code":867,"place":6,"position":2,"round":2,"spare":1},{"code":293,"place":6,"position":3,"round":2,"spare":0},{"code":219,"place":6,"position":3,"round":2,"spare":1},{"code":295,"place":6,"position":1,"round":3,"spare":0},{"code":857,"place":6,"position":1,"round":3,"spare":1},{"code":287,"place":6,"position":2,"round":3,"spare":0},{"code":950,"place":6,"position":2,"round":3,"spare":1},{"code":702,"place":6,"position":3,"round":3,"spare":0},{"code":107,"place":6,"position":3,"round":3,"spare":1},{"code":925,"place":6,"position":1,"round":4,"spare":0},{"code":748,"place":6,"position":1,"round":4,"spare":1},{"code":947,"place":6,"position":2,"round":4,"spare":0},{"code":795,"place":6,"position":2,"round":4,"spare":1},{"code":971,"place":6,"position":3,"round":4,"spare":0},{"code":864,"place":6,"position":3,"round":4,"spare":1},{"code":593,"place":7,"position":1,"round":1,"spare":0},{"code":260,"place":7,"position":1,"round":1,"spare":1},{"code":354,"place":7,"position":2,"round":1,"spare":0},{"code":137,"place":7,"position":2,"round":1,"spare":1},{"code":236,"place":7,"position":3,"round":1,"spare":0},{"code":427,"place":7,"position":3,"round":1,"spare":1},{"code":493,"place":7,"position":1,"round":2,"spare":0},{"code":956,"place":7,"position":1,"round":2,"spare":1},{"code":326,"place":7,"position":2,"round":2,"spare":0},{"code":762,"place":7,"position":2,"round":2,"spare":1},{"code":571,"place":7,"position":3,"round":2,"spare":0},{"code":927,"place":7,"position":3,"round":2,"spare":1},{"code":943,"place":7,"position":1,"round":3,"spare":0},{"code":486,"place":7,"position":1,"round":3,"spare":1},{"code":327,"place":7,"position":2,"round":3,"spare":0},{"code":140,"place":7,"position":2,"round":3,"spare":1},{"code":725,"place":7,"position":3,"round":3,"spare":0},{"code":163,"place":7,"position":3,"round":3,"spare":1},{"code":376,"place":7,"position":1,"round":4,"spare":0},{"code":709,"place":7,"position":1,"round":4,"spare":1},{"code":364,"place":7,"position":2,"round":4,"spare":0},{"code":241,"place":7,"position":2,"round":4,"spare":1},{"code":710,"place":7,"position":3,"round":4,"spare":0},{"code":685,"place":7,"position":3,"round":4,"spare":1}],"items":[{"high":null,"item":1,"kind":"choose","low":null,"required":true},{"high":3,"item":2,"kind":"sureness","low":1,"required":true},{"high":6,"item":3,"kind":"clue","low":1,"required":true},{"high":null,"item":4,"kind":"words","low":null,"required":false}],"lots":[{"abv_bp":560,"allergens":["gluten"],"best_before":"","beverage":"Porter no. 4","bottle_ml":500,"ingredients":"known","kind":"beer","lot":"fb88f3a7a4c1d643652f231c47ed6a9f","name":"bottled 4 February","origin":"batch","packaged_on":"2026-02-04","slot":1,"storage":"cellar, 12 degrees"},{"abv_bp":540,"allergens":["gluten"],"best_before":"2026-11-30","beverage":"Bought porter","bottle_ml":500,"ingredients":"known","kind":"beer","lot":"61ca2367d41b8f2b82754db07580aaa3","name":"bought in March","origin":"reference","packaged_on":"","slot":2,"storage":"cellar, 12 degrees"}],"makers":1,"method":"triangle","panel":6,"places":7,"pourer":true,"promises":{"not_shown":"34bb717475d7ed749340c1b632e64d236681ecd07b75c030dcdd6aae4bd7116c","shown":"ce2ef910f38f431ce0298d9e3c4836671e469b4dd40a146d6aef36c927166fe6"},"question":"differ","rounds":4,"spares":0,"stopping":{"beta_pm":100,"share_pm":500}}','differ',X'8031ff0e98b0f0116971a500c3167027e536a410cd8ec5fc12d993210067da75','nabu duzu 4');
INSERT INTO session_plan VALUES(2,'{"analysis":{"alpha_pm":50,"gamma_pm":300,"limit_pm":null,"seeks":"difference","test":"exact_binomial"},"attribute":"sweet","ceiling_g":20,"claim":"table","country":"GB","cup_ml":20,"cups":[{"code":728,"place":1,"position":1,"round":1,"spare":0},{"code":946,"place":1,"position":1,"round":1,"spare":1},{"code":165,"place":1,"position":2,"round":1,"spare":0},{"code":921,"place":1,"position":2,"round":1,"spare":1},{"code":915,"place":1,"position":1,"round":2,"spare":0},{"code":201,"place":1,"position":1,"round":2,"spare":1},{"code":426,"place":1,"position":2,"round":2,"spare":0},{"code":651,"place":1,"position":2,"round":2,"spare":1},{"code":629,"place":1,"position":1,"round":3,"spare":0},{"code":327,"place":1,"position":1,"round":3,"spare":1},{"code":684,"place":1,"position":2,"round":3,"spare":0},{"code":510,"place":1,"position":2,"round":3,"spare":1},{"code":574,"place":2,"position":1,"round":1,"spare":0},{"code":423,"place":2,"position":1,"round":1,"spare":1},{"code":964,"place":2,"position":2,"round":1,"spare":0},{"code":740,"place":2,"position":2,"round":1,"spare":1},{"code":967,"place":2,"position":1,"round":2,"spare":0},{"code":638,"place":2,"position":1,"round":2,"spare":1},{"code":760,"place":2,"position":2,"round":2,"spare":0},{"code":507,"place":2,"position":2,"round":2,"spare":1},{"code":802,"place":2,"position":1,"round":3,"spare":0},{"code":193,"place":2,"position":1,"round":3,"spare":1},{"code":378,"place":2,"position":2,"round":3,"spare":0},{"code":580,"place":2,"position":2,"round":3,"spare":1},{"code":739,"place":3,"position":1,"round":1,"spare":0},{"code":509,"place":3,"position":1,"round":1,"spare":1},{"code":870,"place":3,"position":2,"round":1,"spare":0},{"code":124,"place":3,"position":2,"round":1,"spare":1},{"code":645,"place":3,"position":1,"round":2,"spare":0},{"code":369,"place":3,"position":1,"round":2,"spare":1},{"code":480,"place":3,"position":2,"round":2,"spare":0},{"code":972,"place":3,"position":2,"round":2,"spare":1},{"code":260,"place":3,"position":1,"round":3,"spare":0},{"code":126,"place":3,"position":1,"round":3,"spare":1},{"code":572,"place":3,"position":2,"round":3,"spare":0},{"code":768,"place":3,"position":2,"round":3,"spare":1},{"code":692,"place":4,"position":1,"round":1,"spare":0},{"code":872,"place":4,"position":1,"round":1,"spare":1},{"code":970,"place":4,"position":2,"round":1,"spare":0},{"code":524,"place":4,"position":2,"round":1,"spare":1},{"code":485,"place":4,"position":1,"round":2,"spare":0},{"code":579,"place":4,"position":1,"round":2,"spare":1},{"code":523,"place":4,"position":2,"round":2,"spare":0},{"code":367,"place":4,"position":2,"round":2,"spare":1},{"code":479,"place":4,"position":1,"round":3,"spare":0},{"code":230,"place":4,"position":1,"round":3,"spare":1},{"code":795,"place":4,"position":2,"round":3,"spare":0},{"code":162,"place":4,"position":2,"round":3,"spare":1},{"code":957,"place":5,"position":1,"round":1,"spare":0},{"code":576,"place":5,"position":1,"round":1,"spare":1},{"code":648,"place":5,"position":2,"round":1,"spare":0},{"code":563,"place":5,"position":2,"round":1,"spare":1},{"code":368,"place":5,"position":1,"round":2,"spare":0},{"code":314,"place":5,"position":1,"round":2,"spare":1},{"code":245,"place":5,"position":2,"round":2,"spare":0},{"code":349,"place":5,"position":2,"round":2,"spare":1},{"code":931,"place":5,"position":1,"round":3,"spare":0},{"code":206,"place":5,"position":1,"round":3,"spare":1},{"code":361,"place":5,"position":2,"round":3,"spare":0},{"code":953,"place":5,"position":2,"round":3,"spare":1}],"expected":1,"items":[{"high":null,"item":1,"kind":"choose","low":null,"required":true},{"high":3,"item":2,"kind":"sureness","low":1,"required":true},{"high":6,"item":3,"kind":"clue","low":1,"required":true},{"high":null,"item":4,"kind":"words","low":null,"required":false}],"lots":[{"abv_bp":560,"allergens":["gluten"],"best_before":"","beverage":"Porter no. 4","bottle_ml":500,"ingredients":"known","kind":"beer","lot":"fb88f3a7a4c1d643652f231c47ed6a9f","name":"bottled 4 February","origin":"batch","packaged_on":"2026-02-04","slot":1,"storage":"cellar, 12 degrees"},{"abv_bp":540,"allergens":["gluten"],"best_before":"2026-11-30","beverage":"Bought porter","bottle_ml":500,"ingredients":"known","kind":"beer","lot":"61ca2367d41b8f2b82754db07580aaa3","name":"bought in March","origin":"reference","packaged_on":"","slot":2,"storage":"cellar, 12 degrees"}],"makers":0,"method":"pair","panel":4,"places":5,"pourer":false,"promises":{"shown":"fd4313562188fb34d6a1e7a67083a3b9f3c09a01f6f002d04edd129340b3eb9d"},"question":"more","rounds":3,"spares":1}','more',X'88051ae95d8759cd4e7990197ea64466a80d2c2ccde5e1342fe8da192ef8efb0','noba kalo 3');
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
INSERT INTO promise VALUES(1,'not_shown',X'db0b6129b30c2b719af3e7ff7ff864d0','ask again with more people');
INSERT INTO promise VALUES(1,'shown',X'50e2784f371601f95207001377b47d37','write it into the recipe');
INSERT INTO promise VALUES(2,'shown',X'a42d0fc7223cce63fcb696626b2c9265','look at the final gravity');
CREATE TABLE invited (                     -- [person] who was counted at the plan, and who pours
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  pours        INTEGER NOT NULL CHECK (pours IN (0, 1)),
  is_maker     INTEGER NOT NULL CHECK (is_maker IN (0, 1)),
  PRIMARY KEY (session_id, taster_id)
) STRICT, WITHOUT ROWID;
INSERT INTO invited VALUES(2,1,0,0);
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
INSERT INTO place VALUES(1,5,0);
INSERT INTO place VALUES(1,6,0);
INSERT INTO place VALUES(1,7,0);
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
INSERT INTO cup VALUES(1,104,4,3,3,0);
INSERT INTO cup VALUES(1,107,6,3,3,1);
INSERT INTO cup VALUES(1,135,3,3,2,0);
INSERT INTO cup VALUES(1,137,7,1,2,1);
INSERT INTO cup VALUES(1,140,7,3,2,1);
INSERT INTO cup VALUES(1,146,4,4,3,1);
INSERT INTO cup VALUES(1,147,5,4,1,0);
INSERT INTO cup VALUES(1,148,3,4,3,0);
INSERT INTO cup VALUES(1,149,4,3,1,0);
INSERT INTO cup VALUES(1,153,4,2,3,1);
INSERT INTO cup VALUES(1,154,4,4,3,0);
INSERT INTO cup VALUES(1,162,5,3,2,1);
INSERT INTO cup VALUES(1,163,7,3,3,1);
INSERT INTO cup VALUES(1,173,1,3,1,1);
INSERT INTO cup VALUES(1,197,6,1,1,1);
INSERT INTO cup VALUES(1,203,1,1,1,1);
INSERT INTO cup VALUES(1,204,3,1,3,1);
INSERT INTO cup VALUES(1,209,3,2,2,1);
INSERT INTO cup VALUES(1,210,5,3,3,0);
INSERT INTO cup VALUES(1,215,3,3,3,1);
INSERT INTO cup VALUES(1,219,6,2,3,1);
INSERT INTO cup VALUES(1,230,4,1,1,1);
INSERT INTO cup VALUES(1,235,2,1,1,0);
INSERT INTO cup VALUES(1,236,7,1,3,0);
INSERT INTO cup VALUES(1,238,1,1,2,1);
INSERT INTO cup VALUES(1,241,7,4,2,1);
INSERT INTO cup VALUES(1,250,5,2,1,1);
INSERT INTO cup VALUES(1,259,5,1,1,1);
INSERT INTO cup VALUES(1,260,7,1,1,1);
INSERT INTO cup VALUES(1,265,3,4,1,0);
INSERT INTO cup VALUES(1,281,3,4,3,1);
INSERT INTO cup VALUES(1,287,6,3,2,0);
INSERT INTO cup VALUES(1,293,6,2,3,0);
INSERT INTO cup VALUES(1,295,6,3,1,0);
INSERT INTO cup VALUES(1,301,5,2,2,0);
INSERT INTO cup VALUES(1,307,6,2,1,1);
INSERT INTO cup VALUES(1,308,1,1,1,0);
INSERT INTO cup VALUES(1,317,1,4,3,0);
INSERT INTO cup VALUES(1,318,5,4,2,0);
INSERT INTO cup VALUES(1,319,2,3,2,1);
INSERT INTO cup VALUES(1,321,4,4,2,0);
INSERT INTO cup VALUES(1,326,7,2,2,0);
INSERT INTO cup VALUES(1,327,7,3,2,0);
INSERT INTO cup VALUES(1,328,6,1,1,0);
INSERT INTO cup VALUES(1,340,3,4,2,1);
INSERT INTO cup VALUES(1,341,1,2,2,1);
INSERT INTO cup VALUES(1,345,5,3,1,1);
INSERT INTO cup VALUES(1,347,5,2,2,1);
INSERT INTO cup VALUES(1,350,5,3,1,0);
INSERT INTO cup VALUES(1,354,7,1,2,0);
INSERT INTO cup VALUES(1,364,7,4,2,0);
INSERT INTO cup VALUES(1,372,5,1,3,1);
INSERT INTO cup VALUES(1,375,2,2,3,1);
INSERT INTO cup VALUES(1,376,7,4,1,0);
INSERT INTO cup VALUES(1,389,4,1,2,0);
INSERT INTO cup VALUES(1,395,5,2,3,0);
INSERT INTO cup VALUES(1,397,1,3,3,1);
INSERT INTO cup VALUES(1,398,2,1,1,1);
INSERT INTO cup VALUES(1,402,1,3,2,1);
INSERT INTO cup VALUES(1,416,4,1,3,0);
INSERT INTO cup VALUES(1,419,4,2,1,0);
INSERT INTO cup VALUES(1,427,7,1,3,1);
INSERT INTO cup VALUES(1,435,1,4,1,0);
INSERT INTO cup VALUES(1,439,1,3,1,0);
INSERT INTO cup VALUES(1,452,1,2,1,0);
INSERT INTO cup VALUES(1,457,2,3,1,0);
INSERT INTO cup VALUES(1,458,3,3,2,1);
INSERT INTO cup VALUES(1,465,5,4,3,1);
INSERT INTO cup VALUES(1,470,4,1,3,1);
INSERT INTO cup VALUES(1,471,2,2,2,0);
INSERT INTO cup VALUES(1,473,1,4,2,0);
INSERT INTO cup VALUES(1,485,3,1,1,1);
INSERT INTO cup VALUES(1,486,7,3,1,1);
INSERT INTO cup VALUES(1,489,5,3,2,0);
INSERT INTO cup VALUES(1,490,5,2,1,0);
INSERT INTO cup VALUES(1,491,5,1,1,0);
INSERT INTO cup VALUES(1,492,6,1,3,1);
INSERT INTO cup VALUES(1,493,7,2,1,0);
INSERT INTO cup VALUES(1,496,1,3,2,0);
INSERT INTO cup VALUES(1,497,1,4,1,1);
INSERT INTO cup VALUES(1,503,2,4,3,1);
INSERT INTO cup VALUES(1,517,2,1,2,1);
INSERT INTO cup VALUES(1,529,2,4,3,0);
INSERT INTO cup VALUES(1,538,3,2,1,0);
INSERT INTO cup VALUES(1,539,3,1,3,0);
INSERT INTO cup VALUES(1,543,1,1,3,1);
INSERT INTO cup VALUES(1,548,5,1,2,1);
INSERT INTO cup VALUES(1,561,3,2,1,1);
INSERT INTO cup VALUES(1,570,2,3,2,0);
INSERT INTO cup VALUES(1,571,7,2,3,0);
INSERT INTO cup VALUES(1,576,2,2,1,1);
INSERT INTO cup VALUES(1,583,4,4,2,1);
INSERT INTO cup VALUES(1,590,2,2,3,0);
INSERT INTO cup VALUES(1,591,1,2,1,1);
INSERT INTO cup VALUES(1,593,7,1,1,0);
INSERT INTO cup VALUES(1,597,4,3,2,1);
INSERT INTO cup VALUES(1,603,5,3,3,1);
INSERT INTO cup VALUES(1,604,1,1,3,0);
INSERT INTO cup VALUES(1,630,2,3,3,1);
INSERT INTO cup VALUES(1,632,2,4,2,1);
INSERT INTO cup VALUES(1,639,4,3,2,0);
INSERT INTO cup VALUES(1,640,3,1,2,1);
INSERT INTO cup VALUES(1,641,5,2,3,1);
INSERT INTO cup VALUES(1,645,2,1,3,1);
INSERT INTO cup VALUES(1,651,5,4,1,1);
INSERT INTO cup VALUES(1,675,4,2,2,0);
INSERT INTO cup VALUES(1,678,1,4,3,1);
INSERT INTO cup VALUES(1,684,1,2,3,1);
INSERT INTO cup VALUES(1,685,7,4,3,1);
INSERT INTO cup VALUES(1,695,2,2,1,0);
INSERT INTO cup VALUES(1,701,3,1,1,0);
INSERT INTO cup VALUES(1,702,6,3,3,0);
INSERT INTO cup VALUES(1,704,3,4,1,1);
INSERT INTO cup VALUES(1,706,6,1,2,1);
INSERT INTO cup VALUES(1,708,4,1,2,1);
INSERT INTO cup VALUES(1,709,7,4,1,1);
INSERT INTO cup VALUES(1,710,7,4,3,0);
INSERT INTO cup VALUES(1,723,2,4,1,1);
INSERT INTO cup VALUES(1,725,7,3,3,0);
INSERT INTO cup VALUES(1,732,3,2,3,1);
INSERT INTO cup VALUES(1,735,2,3,3,0);
INSERT INTO cup VALUES(1,736,2,4,2,0);
INSERT INTO cup VALUES(1,741,3,3,1,0);
INSERT INTO cup VALUES(1,746,3,2,2,0);
INSERT INTO cup VALUES(1,748,6,4,1,1);
INSERT INTO cup VALUES(1,754,2,4,1,0);
INSERT INTO cup VALUES(1,762,7,2,2,1);
INSERT INTO cup VALUES(1,765,4,1,1,0);
INSERT INTO cup VALUES(1,768,2,3,1,1);
INSERT INTO cup VALUES(1,784,6,2,1,0);
INSERT INTO cup VALUES(1,790,5,1,2,0);
INSERT INTO cup VALUES(1,795,6,4,2,1);
INSERT INTO cup VALUES(1,804,4,2,3,0);
INSERT INTO cup VALUES(1,805,2,2,2,1);
INSERT INTO cup VALUES(1,812,4,4,1,1);
INSERT INTO cup VALUES(1,821,1,4,2,1);
INSERT INTO cup VALUES(1,832,1,3,3,0);
INSERT INTO cup VALUES(1,835,4,2,1,1);
INSERT INTO cup VALUES(1,837,2,1,3,0);
INSERT INTO cup VALUES(1,850,5,4,2,1);
INSERT INTO cup VALUES(1,853,6,2,2,0);
INSERT INTO cup VALUES(1,856,4,2,2,1);
INSERT INTO cup VALUES(1,857,6,3,1,1);
INSERT INTO cup VALUES(1,862,5,1,3,0);
INSERT INTO cup VALUES(1,864,6,4,3,1);
INSERT INTO cup VALUES(1,867,6,2,2,1);
INSERT INTO cup VALUES(1,892,4,3,3,1);
INSERT INTO cup VALUES(1,894,3,2,3,0);
INSERT INTO cup VALUES(1,902,4,3,1,1);
INSERT INTO cup VALUES(1,905,6,1,2,0);
INSERT INTO cup VALUES(1,917,3,3,1,1);
INSERT INTO cup VALUES(1,920,1,1,2,0);
INSERT INTO cup VALUES(1,925,6,4,1,0);
INSERT INTO cup VALUES(1,927,7,2,3,1);
INSERT INTO cup VALUES(1,934,5,4,3,0);
INSERT INTO cup VALUES(1,938,3,3,3,0);
INSERT INTO cup VALUES(1,941,4,4,1,0);
INSERT INTO cup VALUES(1,943,7,3,1,0);
INSERT INTO cup VALUES(1,945,1,2,2,0);
INSERT INTO cup VALUES(1,947,6,4,2,0);
INSERT INTO cup VALUES(1,950,6,3,2,1);
INSERT INTO cup VALUES(1,956,7,2,1,1);
INSERT INTO cup VALUES(1,964,6,1,3,0);
INSERT INTO cup VALUES(1,971,6,4,3,0);
INSERT INTO cup VALUES(1,973,3,1,2,0);
INSERT INTO cup VALUES(1,982,1,2,3,0);
INSERT INTO cup VALUES(1,983,3,4,2,0);
INSERT INTO cup VALUES(1,987,2,1,2,0);
INSERT INTO cup VALUES(2,124,3,1,2,1);
INSERT INTO cup VALUES(2,126,3,3,1,1);
INSERT INTO cup VALUES(2,162,4,3,2,1);
INSERT INTO cup VALUES(2,165,1,1,2,0);
INSERT INTO cup VALUES(2,193,2,3,1,1);
INSERT INTO cup VALUES(2,201,1,2,1,1);
INSERT INTO cup VALUES(2,206,5,3,1,1);
INSERT INTO cup VALUES(2,230,4,3,1,1);
INSERT INTO cup VALUES(2,245,5,2,2,0);
INSERT INTO cup VALUES(2,260,3,3,1,0);
INSERT INTO cup VALUES(2,314,5,2,1,1);
INSERT INTO cup VALUES(2,327,1,3,1,1);
INSERT INTO cup VALUES(2,349,5,2,2,1);
INSERT INTO cup VALUES(2,361,5,3,2,0);
INSERT INTO cup VALUES(2,367,4,2,2,1);
INSERT INTO cup VALUES(2,368,5,2,1,0);
INSERT INTO cup VALUES(2,369,3,2,1,1);
INSERT INTO cup VALUES(2,378,2,3,2,0);
INSERT INTO cup VALUES(2,423,2,1,1,1);
INSERT INTO cup VALUES(2,426,1,2,2,0);
INSERT INTO cup VALUES(2,479,4,3,1,0);
INSERT INTO cup VALUES(2,480,3,2,2,0);
INSERT INTO cup VALUES(2,485,4,2,1,0);
INSERT INTO cup VALUES(2,507,2,2,2,1);
INSERT INTO cup VALUES(2,509,3,1,1,1);
INSERT INTO cup VALUES(2,510,1,3,2,1);
INSERT INTO cup VALUES(2,523,4,2,2,0);
INSERT INTO cup VALUES(2,524,4,1,2,1);
INSERT INTO cup VALUES(2,563,5,1,2,1);
INSERT INTO cup VALUES(2,572,3,3,2,0);
INSERT INTO cup VALUES(2,574,2,1,1,0);
INSERT INTO cup VALUES(2,576,5,1,1,1);
INSERT INTO cup VALUES(2,579,4,2,1,1);
INSERT INTO cup VALUES(2,580,2,3,2,1);
INSERT INTO cup VALUES(2,629,1,3,1,0);
INSERT INTO cup VALUES(2,638,2,2,1,1);
INSERT INTO cup VALUES(2,645,3,2,1,0);
INSERT INTO cup VALUES(2,648,5,1,2,0);
INSERT INTO cup VALUES(2,651,1,2,2,1);
INSERT INTO cup VALUES(2,684,1,3,2,0);
INSERT INTO cup VALUES(2,692,4,1,1,0);
INSERT INTO cup VALUES(2,728,1,1,1,0);
INSERT INTO cup VALUES(2,739,3,1,1,0);
INSERT INTO cup VALUES(2,740,2,1,2,1);
INSERT INTO cup VALUES(2,760,2,2,2,0);
INSERT INTO cup VALUES(2,768,3,3,2,1);
INSERT INTO cup VALUES(2,795,4,3,2,0);
INSERT INTO cup VALUES(2,802,2,3,1,0);
INSERT INTO cup VALUES(2,870,3,1,2,0);
INSERT INTO cup VALUES(2,872,4,1,1,1);
INSERT INTO cup VALUES(2,915,1,2,1,0);
INSERT INTO cup VALUES(2,921,1,1,2,1);
INSERT INTO cup VALUES(2,931,5,3,1,0);
INSERT INTO cup VALUES(2,946,1,1,1,1);
INSERT INTO cup VALUES(2,953,5,3,2,1);
INSERT INTO cup VALUES(2,957,5,1,1,0);
INSERT INTO cup VALUES(2,964,2,1,2,0);
INSERT INTO cup VALUES(2,967,2,2,1,0);
INSERT INTO cup VALUES(2,970,4,1,2,0);
INSERT INTO cup VALUES(2,972,3,2,2,1);
CREATE TABLE sealed_key (                  -- [frozen] lot of every cup, seed, salt. Closed against a glance, not against a locksmith.
  session_id   INTEGER PRIMARY KEY REFERENCES session_plan (session_id),
  box          BLOB NOT NULL,
  secret       BLOB NOT NULL CHECK (length(secret) = 32)
) STRICT;
INSERT INTO sealed_key VALUES(1,X'3d32075512a00150ee2b5dda04e1aea034f94ec2fe7b405a7a6c31f3b53aec3134e124fb43a9120d604f585c4cf141ab781d32d046d65a03b901fb8929d0a1f8f9d1963156b1036e2923c08b11415557c4b3f30313fc3d1c6ec27979a89aaa46a881b4e073f6667194ac0e285f3da26d48a45a4486f578cd6f4ff9582b7986419bcff86a18dfcec43b698e7e98a5e8fd98a16aa1dc71250e2c556e168cded9c25c70fd2983f49415fa19f52cd685e53df8d05115a1f69e13891e1af08748d9e3b0db502d28eabf47f5543f878048e5f664486ddcdf3577c93d73452e44591ef45f1b62481b893c6fe92e6f017efef59a1930fbd49f7742fba0ae309226db32e08909cfc1266bff69f36c1021a5ef5fa1d90c75d4a99e5700c003ac22eb287afae02b565d4e4b19cb336e1d9ecfe5b8eef0d88254b76bf5655744204037865de456f39555d1c765236af79325ade2dd420d719701b23336da1eb26e0ca101fa7a3561871efaf39d0df070b0a839f82d46912cba81b32880542b9a2e39629d9bf7f0c49df5accce0b92567980ae5d1da1cc05da124124cd374c374be41d2f4b2f02be5fa9f05e17151fd5e0e5697874a7942f5f0b06b0489a6c8635ead1ac1eb2d0b515090e1f472a18a5cfc4486a24de5b81839edb0cd88e98cb1aa799d8768bdd9c2c271b83a6faf4a060a30401e5a0323d12c4f69db608b143a2ceeef34b58a1e3ddb3c03a621b94c50a663d1a82871e93732df4d56f7a4c21f6bf97a7896391174ee70333bdc45388241c14256ffe37d815ba9dbcce9c866b6cd20d26488c76235d9eb2232c6f348e542b04e381145e49070591afa75ea3419df6a8fe7f7162f2b93f67029e97a325887dddd3342a27e398c4d53ab2cc44832f7e109b683818d76c896751631727f79e583fa2b1413282d57a12e40d96e2585f5e4d110072b2bfd14b2b888ec3147d535296a3e6185ac26e04fdd20f4ca03b99e379708541e77b37acc733f759d147dc261bfbfaff7ff61994e254be0db057b68d508fc73aea980194716a0c2adf71c2e433879806af5cd7c2ea51b61652bf18bf52e76b57e14a80f33e950776dd5bbeed40f2a4b2c579c902740768776267db31939dcc4b227f7f797fc3bed59592b8eb3a4f0ed83c2241f3303c3f55e2b83f4f260ce1e0b4a4a505c56d434bae9a76e78583acea6bf9cacbfe9f6717e7513632c10de391a17f67d9876a0ed7811a5841fbfa63e81f11b62f2ce12d90871ffcad10840761a35bf123fe47bb037ca191165d16b8ed1802c772dd62c973094598ff866dd665b3c31c58564cd30d2c8c89017b8bf45b5ef6ebc4d5efce0400e3cbf544b2bc8bf4a2033b46ec659c0c8ef7923f1932bde8de4e2dc004e8d9fa6e6454debc97a942068a6956c6c37d9eb93740a2cb229d53b11ace3bc8ba2b225f832c5635971dc79782ad1298b2f18ccd910c8222922ca7548a3da7b2f3fbca9b675321533667136d6428d0af01df14f00526c9a198bb07771f4d0bdf2637ae062806eb3690b5579724688b06032afa5f180215c962aaf76b0eb11620aa28a5a5346f8c20ffe19de1877481685fd51de70babdfc721962238b781bee74de985aa33dc0010a34ae884ffe9f943fcb6cd5a9ab9a8dbe1932f01263ccda7857d6fb0f46a2f112774da3740e246fe1a184fb19e96b3a80a25a5aa62292381739abebf0b12bb609a444c652d952db6c9b38df06a49c97c8628720d19d406edbc82a3a31443a81a9b5cf6eec8f8671dd66bc8253be0a64ccea3654820e2d8b27b4de675cc7cc349ad76c572322bdf0421436238991965a001cb02574156a55e60d8bc9c78ac431421e2988610e75f75fd6c89055bfb7b10455ecd287c579c50ee6abc6812601ebe8127b1051991bad8f3659787a8b13cca10d2fb4fa464b99eedb2764065e541d1f595ee449db4cdd8990dfed507d4099eadc1ab8ab6be009e6250d6875f2f15c39e2605714ac3c133076a2e3369b4c3be59c7229dd2943be616f28ee7e6c132433610c2658288c7f6231950a5804d565bfd485b920e0dc5d53f5d20ae89c84021dc0baf2cba0a6722b97d40045ba7667e280f1a947778329366047c5260e79a047e8fc29ceb8354cdd01921fc964705951fd692ef6d123115f70e36628e88b06d0b58419c0eb35c6c3856213eb9e05bd719f929bdf26587ac652d9df28ac2dace335d8',X'7b39462e5bfbf55938ec7273325a52381591231f1343f35653be8559d8414f37');
INSERT INTO sealed_key VALUES(2,X'6e062cc3bac6d73287e5824dba31819bba63ac141522b449216b4e34a97b875e686fd86564f163072ff70afb05ef9e8f5a75fe0f69659e5aa3abdc91237355c900c6e98a84a0f633c976ec19081f6bc585ed8b3ecc1a25552852820250a60ea952035a44058588271669dfeeeb464e1b5ea70c1b0d52a3ea5e93d15f4126a1a38fdc7bb0d6a1caf61a550a35c6cf6c845833fd7309a5718d236212e6f67696e6defe54f6f2270f02488e6b7fdc201372f3d41d95efdbf9454cd28a1f8ca89a9beddaaf5f3cc651675fb0586e63e5453499582a715ac3d65e55b6d120f7466bbdeb4aee61970c578a9ca0289e60118337d8f6af6aada45a7252401e79169c6fe26616347e9c4ce1f811df5abbf23870aa60f1c2a68633a98b219e8fe876d9b0387ca09e687123d37fe92f6854b017142cc9abb4e8068441711943a43636c7dbf809b27785ee71de0cc5f1534580f0f063352fc05db5f3da9e5e99415d39009eaf4a6c3feb083d74883b7477e4096cd1054d47ed8175e8353b0990e9d0b03894de668637d0aef41129940bd549b8d43e18283b781ad2770b1a83515ce106849ca300cd7ab518a0b3423d82d0d8aa712cbe1f4d6aaddb1c93b4dfa1783d318c55c40a906b19b2a5509b73c0434142d69ec49a1e6a30fcc42c35e33ce2a9762621f381094de481c13949058ec8e4332f71f4e7271776553eb09d61a011df85ef35ea984e842435c1849567348a64a89c7746698cecc83f007432fd704e43b35d10fdca0fafc9b4a75fe78d467036699ca152b1a02b2fc76e01dec8c302002b8139cd34555cd1c4a9e4e6216489cf8a89a961994d243bb84bd7ac969092d209320bb46b13cd46d4e5b3df9c46250265bf9475b3f2de9ca8a3e89665c94d52ee08d0d247fcdfd35e16feb12603b896f0decbd8d37208574c1ee1a00188f3bbce4de475e7f44184f7f96baa688b4cb21f47cb2882c03018fb0fe961bfba8a25b2cc207d',X'78747d54bc424ee5fb6de24bf5b38a5c283e76a62b37819810558328f2b3f8c5');
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
INSERT INTO key_opened VALUES(1,45,X'304b7948fa67c3fbd27b95f3b6d0c4ec4d8bd9ca6dc320f2118395d1643c8ee7',X'26e7c668d3907f3ff8ad51758df694f5bd1b59d06af54886bb50aa951b626519','chacha20/1',1);
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
INSERT INTO key_line VALUES(1,104,2,2);
INSERT INTO key_line VALUES(1,107,1,1);
INSERT INTO key_line VALUES(1,135,1,1);
INSERT INTO key_line VALUES(1,137,2,2);
INSERT INTO key_line VALUES(1,140,1,1);
INSERT INTO key_line VALUES(1,146,1,1);
INSERT INTO key_line VALUES(1,147,2,2);
INSERT INTO key_line VALUES(1,148,1,1);
INSERT INTO key_line VALUES(1,149,1,1);
INSERT INTO key_line VALUES(1,153,1,1);
INSERT INTO key_line VALUES(1,154,1,1);
INSERT INTO key_line VALUES(1,162,2,2);
INSERT INTO key_line VALUES(1,163,2,2);
INSERT INTO key_line VALUES(1,173,2,2);
INSERT INTO key_line VALUES(1,197,1,1);
INSERT INTO key_line VALUES(1,203,2,2);
INSERT INTO key_line VALUES(1,204,1,1);
INSERT INTO key_line VALUES(1,209,2,2);
INSERT INTO key_line VALUES(1,210,2,2);
INSERT INTO key_line VALUES(1,215,2,2);
INSERT INTO key_line VALUES(1,219,2,2);
INSERT INTO key_line VALUES(1,230,1,1);
INSERT INTO key_line VALUES(1,235,2,2);
INSERT INTO key_line VALUES(1,236,2,2);
INSERT INTO key_line VALUES(1,238,1,1);
INSERT INTO key_line VALUES(1,241,2,2);
INSERT INTO key_line VALUES(1,250,2,2);
INSERT INTO key_line VALUES(1,259,1,1);
INSERT INTO key_line VALUES(1,260,1,1);
INSERT INTO key_line VALUES(1,265,2,2);
INSERT INTO key_line VALUES(1,281,1,1);
INSERT INTO key_line VALUES(1,287,2,2);
INSERT INTO key_line VALUES(1,293,2,2);
INSERT INTO key_line VALUES(1,295,1,1);
INSERT INTO key_line VALUES(1,301,1,1);
INSERT INTO key_line VALUES(1,307,1,1);
INSERT INTO key_line VALUES(1,308,2,2);
INSERT INTO key_line VALUES(1,317,2,2);
INSERT INTO key_line VALUES(1,318,1,1);
INSERT INTO key_line VALUES(1,319,1,1);
INSERT INTO key_line VALUES(1,321,2,2);
INSERT INTO key_line VALUES(1,326,2,2);
INSERT INTO key_line VALUES(1,327,1,1);
INSERT INTO key_line VALUES(1,328,1,1);
INSERT INTO key_line VALUES(1,340,2,2);
INSERT INTO key_line VALUES(1,341,1,1);
INSERT INTO key_line VALUES(1,345,1,1);
INSERT INTO key_line VALUES(1,347,1,1);
INSERT INTO key_line VALUES(1,350,1,1);
INSERT INTO key_line VALUES(1,354,2,2);
INSERT INTO key_line VALUES(1,364,2,2);
INSERT INTO key_line VALUES(1,372,1,1);
INSERT INTO key_line VALUES(1,375,2,2);
INSERT INTO key_line VALUES(1,376,1,1);
INSERT INTO key_line VALUES(1,389,1,1);
INSERT INTO key_line VALUES(1,395,1,1);
INSERT INTO key_line VALUES(1,397,1,1);
INSERT INTO key_line VALUES(1,398,2,2);
INSERT INTO key_line VALUES(1,402,2,2);
INSERT INTO key_line VALUES(1,416,2,2);
INSERT INTO key_line VALUES(1,419,2,2);
INSERT INTO key_line VALUES(1,427,2,2);
INSERT INTO key_line VALUES(1,435,1,1);
INSERT INTO key_line VALUES(1,439,2,2);
INSERT INTO key_line VALUES(1,452,1,1);
INSERT INTO key_line VALUES(1,457,2,2);
INSERT INTO key_line VALUES(1,458,1,1);
INSERT INTO key_line VALUES(1,465,1,1);
INSERT INTO key_line VALUES(1,470,2,2);
INSERT INTO key_line VALUES(1,471,1,1);
INSERT INTO key_line VALUES(1,473,1,1);
INSERT INTO key_line VALUES(1,485,2,2);
INSERT INTO key_line VALUES(1,486,2,2);
INSERT INTO key_line VALUES(1,489,2,2);
INSERT INTO key_line VALUES(1,490,2,2);
INSERT INTO key_line VALUES(1,491,1,1);
INSERT INTO key_line VALUES(1,492,2,2);
INSERT INTO key_line VALUES(1,493,1,1);
INSERT INTO key_line VALUES(1,496,2,2);
INSERT INTO key_line VALUES(1,497,1,1);
INSERT INTO key_line VALUES(1,503,2,2);
INSERT INTO key_line VALUES(1,517,2,2);
INSERT INTO key_line VALUES(1,529,2,2);
INSERT INTO key_line VALUES(1,538,1,1);
INSERT INTO key_line VALUES(1,539,1,1);
INSERT INTO key_line VALUES(1,543,2,2);
INSERT INTO key_line VALUES(1,548,2,2);
INSERT INTO key_line VALUES(1,561,1,1);
INSERT INTO key_line VALUES(1,570,1,1);
INSERT INTO key_line VALUES(1,571,2,2);
INSERT INTO key_line VALUES(1,576,2,2);
INSERT INTO key_line VALUES(1,583,2,2);
INSERT INTO key_line VALUES(1,590,2,2);
INSERT INTO key_line VALUES(1,591,1,1);
INSERT INTO key_line VALUES(1,593,1,1);
INSERT INTO key_line VALUES(1,597,1,1);
INSERT INTO key_line VALUES(1,603,2,2);
INSERT INTO key_line VALUES(1,604,2,2);
INSERT INTO key_line VALUES(1,630,1,1);
INSERT INTO key_line VALUES(1,632,2,2);
INSERT INTO key_line VALUES(1,639,1,1);
INSERT INTO key_line VALUES(1,640,1,1);
INSERT INTO key_line VALUES(1,641,1,1);
INSERT INTO key_line VALUES(1,645,1,1);
INSERT INTO key_line VALUES(1,651,2,2);
INSERT INTO key_line VALUES(1,675,2,2);
INSERT INTO key_line VALUES(1,678,2,2);
INSERT INTO key_line VALUES(1,684,2,2);
INSERT INTO key_line VALUES(1,685,2,2);
INSERT INTO key_line VALUES(1,695,2,2);
INSERT INTO key_line VALUES(1,701,2,2);
INSERT INTO key_line VALUES(1,702,1,1);
INSERT INTO key_line VALUES(1,704,2,2);
INSERT INTO key_line VALUES(1,706,2,2);
INSERT INTO key_line VALUES(1,708,1,1);
INSERT INTO key_line VALUES(1,709,1,1);
INSERT INTO key_line VALUES(1,710,2,2);
INSERT INTO key_line VALUES(1,723,1,1);
INSERT INTO key_line VALUES(1,725,2,2);
INSERT INTO key_line VALUES(1,732,1,1);
INSERT INTO key_line VALUES(1,735,1,1);
INSERT INTO key_line VALUES(1,736,2,2);
INSERT INTO key_line VALUES(1,741,2,2);
INSERT INTO key_line VALUES(1,746,2,2);
INSERT INTO key_line VALUES(1,748,2,2);
INSERT INTO key_line VALUES(1,754,1,1);
INSERT INTO key_line VALUES(1,762,2,2);
INSERT INTO key_line VALUES(1,765,1,1);
INSERT INTO key_line VALUES(1,768,2,2);
INSERT INTO key_line VALUES(1,784,1,1);
INSERT INTO key_line VALUES(1,790,2,2);
INSERT INTO key_line VALUES(1,795,1,1);
INSERT INTO key_line VALUES(1,804,1,1);
INSERT INTO key_line VALUES(1,805,1,1);
INSERT INTO key_line VALUES(1,812,1,1);
INSERT INTO key_line VALUES(1,821,1,1);
INSERT INTO key_line VALUES(1,832,1,1);
INSERT INTO key_line VALUES(1,835,2,2);
INSERT INTO key_line VALUES(1,837,1,1);
INSERT INTO key_line VALUES(1,850,1,1);
INSERT INTO key_line VALUES(1,853,2,2);
INSERT INTO key_line VALUES(1,856,2,2);
INSERT INTO key_line VALUES(1,857,1,1);
INSERT INTO key_line VALUES(1,862,1,1);
INSERT INTO key_line VALUES(1,864,2,2);
INSERT INTO key_line VALUES(1,867,2,2);
INSERT INTO key_line VALUES(1,892,2,2);
INSERT INTO key_line VALUES(1,894,1,1);
INSERT INTO key_line VALUES(1,902,1,1);
INSERT INTO key_line VALUES(1,905,2,2);
INSERT INTO key_line VALUES(1,917,2,2);
INSERT INTO key_line VALUES(1,920,1,1);
INSERT INTO key_line VALUES(1,925,2,2);
INSERT INTO key_line VALUES(1,927,2,2);
INSERT INTO key_line VALUES(1,934,1,1);
INSERT INTO key_line VALUES(1,938,2,2);
INSERT INTO key_line VALUES(1,941,1,1);
INSERT INTO key_line VALUES(1,943,2,2);
INSERT INTO key_line VALUES(1,945,1,1);
INSERT INTO key_line VALUES(1,947,1,1);
INSERT INTO key_line VALUES(1,950,2,2);
INSERT INTO key_line VALUES(1,956,1,1);
INSERT INTO key_line VALUES(1,964,2,2);
INSERT INTO key_line VALUES(1,971,2,2);
INSERT INTO key_line VALUES(1,973,1,1);
INSERT INTO key_line VALUES(1,982,2,2);
INSERT INTO key_line VALUES(1,983,2,2);
INSERT INTO key_line VALUES(1,987,2,2);
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
INSERT INTO place_taken VALUES(1,2,5,0,'loose');
INSERT INTO place_taken VALUES(1,3,6,0,'signed');
INSERT INTO place_taken VALUES(1,4,7,0,'signed');
INSERT INTO place_taken VALUES(1,5,8,0,'loose');
INSERT INTO place_taken VALUES(1,6,9,0,'signed');
INSERT INTO place_taken VALUES(1,7,10,1,'signed');
INSERT INTO place_taken VALUES(2,1,3,0,'signed');
INSERT INTO place_taken VALUES(2,2,4,0,'nickname');
CREATE TABLE place_person (                -- [person] who sits there; the only link from answers to a name. A loose taster's goes at the close.
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  PRIMARY KEY (session_id, place),
  UNIQUE (session_id, taster_id),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place)
) STRICT, WITHOUT ROWID;
INSERT INTO place_person VALUES(1,6,1);
INSERT INTO place_person VALUES(2,1,1);
INSERT INTO place_person VALUES(1,1,2);
INSERT INTO place_person VALUES(2,2,2);
INSERT INTO place_person VALUES(1,4,3);
INSERT INTO place_person VALUES(1,3,4);
INSERT INTO place_person VALUES(1,7,5);
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
INSERT INTO hand_in VALUES(1,1,1,1,X'3b018cdc5ff1f0c7017df918655c070c','device',1783626301000,X'beb9135af307173e413612ebcdfc9c9c',13);
INSERT INTO hand_in VALUES(2,1,2,1,X'1100596abfeed84d5ef3814e793d2d4d','device',1783626481000,X'3714e4df85c4f63ee5650765f3cb08e5',15);
INSERT INTO hand_in VALUES(3,1,3,1,X'6559a6e1c79acd395c0c185149c67846','device',1783626661000,X'6d72814b5e609dac985e566464777907',17);
INSERT INTO hand_in VALUES(4,1,4,1,X'77e76f33ef56874913df61497a11250b','device',1783626841000,X'6d4a318daf15f8a79eda81be51499f5a',19);
INSERT INTO hand_in VALUES(5,1,5,1,X'35769a8fa2852258d144dd359433e59d','device',1783627021000,X'65f0ac8a169c7159fff23873c1a0d8ad',21);
INSERT INTO hand_in VALUES(6,1,6,1,X'949f6760740449a18d76ada42afb3666','device',1783627201000,X'c300397681b13adc7abafa702fbf7bee',23);
INSERT INTO hand_in VALUES(7,1,7,1,X'6d1aac31655e08b19460749503b889a1','device',1783627381000,X'4c5330ba00f8df44940fd585471786bc',25);
INSERT INTO hand_in VALUES(8,1,1,2,X'e74e1893975be9e9b0ac23c6b4bac8f7','device',1783627861000,X'7aebe20d4f112144402c0cc165eeb2bb',29);
INSERT INTO hand_in VALUES(9,1,2,2,X'38beab156adae6e3675b221e68a37f9f','device',1783628041000,X'22b0ad98cf9713d19f6edb845a06ef79',31);
INSERT INTO hand_in VALUES(10,1,3,2,X'559f8a2e3b058aebab445762c9e7616e','device',1783628221000,X'c26032d44227001ab845a21060dc72c3',33);
INSERT INTO hand_in VALUES(11,1,4,2,X'3c39e199ef88b5f67c2644e2042dbb36','device',1783628401000,X'e8dadfd398b966664e79a83e3f2e1b35',35);
INSERT INTO hand_in VALUES(12,1,5,2,X'f04d1fa5f8800e99b4bc9b3f5a779b22','device',1783628581000,X'258f33537feec3d95ff9c53f6ad78e28',37);
INSERT INTO hand_in VALUES(13,1,6,2,X'0f7babf2eea2aac701de7af9d07dea31','device',1783628761000,X'6e57022f6266bd09b37dcb0a8411c2c2',39);
INSERT INTO hand_in VALUES(14,1,7,2,X'93680150b934da986a095b03ad8b7506','device',1783628941000,X'898cfc6f44cfdc4be0410ceb00cd2daf',41);
INSERT INTO hand_in VALUES(15,2,1,1,X'4413e6fc712053c25644bcf877d400c8','file',1795917802220,X'b62b617e43f0f4eb7dedaaca7e404fe3',6);
CREATE TABLE answer (                      -- [person] goes with its hand-in
  hand_in_id   INTEGER NOT NULL REFERENCES hand_in (id) ON DELETE CASCADE,
  item         INTEGER NOT NULL,
  code         INTEGER NOT NULL DEFAULT 0, -- 0 = about the whole flight
  value        INTEGER,
  text_digest  BLOB CHECK (length(text_digest) = 32),                 -- sha256(salt of the words || text)
  PRIMARY KEY (hand_in_id, item, code),
  CHECK ((value IS NULL) <> (text_digest IS NULL))
) STRICT, WITHOUT ROWID;
INSERT INTO answer VALUES(1,1,0,920,NULL);
INSERT INTO answer VALUES(1,2,0,3,NULL);
INSERT INTO answer VALUES(1,3,0,1,NULL);
INSERT INTO answer VALUES(2,1,0,837,NULL);
INSERT INTO answer VALUES(2,2,0,1,NULL);
INSERT INTO answer VALUES(2,3,0,1,NULL);
INSERT INTO answer VALUES(3,1,0,973,NULL);
INSERT INTO answer VALUES(3,2,0,1,NULL);
INSERT INTO answer VALUES(3,3,0,6,NULL);
INSERT INTO answer VALUES(4,1,0,416,NULL);
INSERT INTO answer VALUES(4,2,0,1,NULL);
INSERT INTO answer VALUES(4,3,0,1,NULL);
INSERT INTO answer VALUES(5,1,0,790,NULL);
INSERT INTO answer VALUES(5,2,0,3,NULL);
INSERT INTO answer VALUES(5,3,0,1,NULL);
INSERT INTO answer VALUES(6,1,0,905,NULL);
INSERT INTO answer VALUES(6,2,0,1,NULL);
INSERT INTO answer VALUES(6,3,0,6,NULL);
INSERT INTO answer VALUES(7,1,0,593,NULL);
INSERT INTO answer VALUES(7,2,0,3,NULL);
INSERT INTO answer VALUES(7,3,0,1,NULL);
INSERT INTO answer VALUES(8,1,0,982,NULL);
INSERT INTO answer VALUES(8,2,0,3,NULL);
INSERT INTO answer VALUES(8,3,0,1,NULL);
INSERT INTO answer VALUES(9,1,0,471,NULL);
INSERT INTO answer VALUES(9,2,0,1,NULL);
INSERT INTO answer VALUES(9,3,0,1,NULL);
INSERT INTO answer VALUES(10,1,0,746,NULL);
INSERT INTO answer VALUES(10,2,0,3,NULL);
INSERT INTO answer VALUES(10,3,0,1,NULL);
INSERT INTO answer VALUES(11,1,0,804,NULL);
INSERT INTO answer VALUES(11,2,0,1,NULL);
INSERT INTO answer VALUES(11,3,0,1,NULL);
INSERT INTO answer VALUES(12,1,0,490,NULL);
INSERT INTO answer VALUES(12,2,0,3,NULL);
INSERT INTO answer VALUES(12,3,0,1,NULL);
INSERT INTO answer VALUES(13,1,0,853,NULL);
INSERT INTO answer VALUES(13,2,0,1,NULL);
INSERT INTO answer VALUES(13,3,0,6,NULL);
INSERT INTO answer VALUES(14,1,0,493,NULL);
INSERT INTO answer VALUES(14,2,0,3,NULL);
INSERT INTO answer VALUES(14,3,0,1,NULL);
INSERT INTO answer VALUES(15,1,0,728,NULL);
INSERT INTO answer VALUES(15,2,0,2,NULL);
INSERT INTO answer VALUES(15,3,0,1,NULL);
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
INSERT INTO remark VALUES(1,46,'decision',X'd3ff67de0f3886a35483bec128b95e92','name the roast and pour pairs');
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
INSERT INTO item VALUES(2,2,'sureness',1,3,1);
INSERT INTO item VALUES(2,3,'clue',1,6,1);
INSERT INTO item VALUES(2,4,'words',NULL,NULL,0);
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
COMMIT;
