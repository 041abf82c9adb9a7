PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE store (                       -- [live] one row
  one          INTEGER PRIMARY KEY CHECK (one = 1),
  uid          TEXT NOT NULL CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  created_at   INTEGER NOT NULL,
  made_by      TEXT NOT NULL
) STRICT;
INSERT INTO store VALUES(1,'6e1f3036adb39e451f6610e1308fd62c',1795624412113,'0.1.0');
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
INSERT INTO beverage VALUES(1,'3a34301a7a2371dbababa077c0b58262','batch','mead','Heather mead',10950,10080,1190,'gravities','known',NULL);
INSERT INTO beverage VALUES(2,'d31a72e8b6e183d99b357dbf14d9c259','batch','beer','Porter no. 4',10560,10140,560,'gravities','known',NULL);
INSERT INTO beverage VALUES(3,'61ca2367d41b8f2b82754db07580aaa3','batch','cider','Windfall cider',10520,10010,660,'gravities','known',NULL);
INSERT INTO beverage VALUES(4,'e74d471d3f008919d2cad5016c7e6e09','reference','mead','Bought mead',NULL,NULL,1150,'label','not_known',NULL);
INSERT INTO beverage VALUES(5,'5ea2ea947dc4a803a3d156dc0200e4a4','reference','beer','Bought porter',NULL,NULL,540,'label','known',NULL);
CREATE TABLE beverage_allergen (           -- [live]
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id) ON DELETE CASCADE,
  allergen     TEXT NOT NULL CHECK (allergen IN ('gluten', 'egg', 'fish', 'milk', 'nuts', 'peanuts', 'soy', 'sesame', 'mustard',
                                                 'celery', 'lupin', 'molluscs', 'crustaceans', 'sulphites')),
  PRIMARY KEY (beverage_id, allergen)
) STRICT, WITHOUT ROWID;
INSERT INTO beverage_allergen VALUES(1,'sulphites');
INSERT INTO beverage_allergen VALUES(2,'gluten');
INSERT INTO beverage_allergen VALUES(3,'sulphites');
INSERT INTO beverage_allergen VALUES(5,'gluten');
CREATE TABLE taster (                      -- [person] the only place where a name stands
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  name         TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 100),
  nickname     TEXT NOT NULL DEFAULT '' CHECK (length(nickname) <= 60),
  is_brewer    INTEGER NOT NULL DEFAULT 0 CHECK (is_brewer IN (0, 1)),
  archived_at  INTEGER
) STRICT;
INSERT INTO taster VALUES(1,'0c65be86d5cefea68974e5f6cbda2d74','Odo','',0,NULL);
INSERT INTO taster VALUES(2,'9288b84592ba9098e4b4b647633a0c8e','Kit','Wren',0,NULL);
INSERT INTO taster VALUES(3,'93da2ba3a6185a7e4e020d73db386669','Bram','Badger',0,NULL);
INSERT INTO taster VALUES(4,'a34c86c2ccb7edd1086f064b8314b13d','Ruan','Otter',0,NULL);
INSERT INTO taster VALUES(5,'a72902f391ce1c31e52c32a4606f3fc4','Ilse','',0,NULL);
INSERT INTO taster VALUES(6,'a88f93e7872a9ef4174589683cb859b5','Nia','',0,NULL);
INSERT INTO taster VALUES(7,'acd5d4abe8b11475639a3006032d809a','Tove','Heron',0,NULL);
INSERT INTO taster VALUES(8,'e16cf1484e26001ccd1d28d263bf2132','Wenna','',1,NULL);
INSERT INTO taster VALUES(9,'eb88b2b9ba2a719f3ae77c497d51c7e3','Piet','',0,NULL);
INSERT INTO taster VALUES(10,'ebefca504b3193a7f8b0471047f43cb0','Sorrel','',0,NULL);
INSERT INTO taster VALUES(11,'f368744d846609bd02fdd38d9314aacb','Maud','',0,NULL);
INSERT INTO taster VALUES(12,'f79bf29e3099141a043dfdea2c7e5721','Ebba','',0,NULL);
CREATE TABLE beverage_maker (              -- [live] who had a hand in a batch
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id) ON DELETE CASCADE,
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  PRIMARY KEY (beverage_id, taster_id)
) STRICT, WITHOUT ROWID;
INSERT INTO beverage_maker VALUES(3,1);
INSERT INTO beverage_maker VALUES(1,8);
INSERT INTO beverage_maker VALUES(2,8);
INSERT INTO beverage_maker VALUES(3,8);
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
INSERT INTO lot VALUES(1,'36d9039a7b21abbfcd03118af3f1cdd0',1,'bottled 12 April','2026-04-12',NULL,750,'pantry, dark','',NULL);
INSERT INTO lot VALUES(2,'fb88f3a7a4c1d643652f231c47ed6a9f',2,'bottled 4 February','2026-02-04',NULL,500,'cellar, 12 degrees','',NULL);
INSERT INTO lot VALUES(3,'46781034c262f527338f9f182d39f7fc',3,'with oak, bottled 1 March','2026-03-01',NULL,750,'cellar, 12 degrees','',NULL);
INSERT INTO lot VALUES(4,'0b57819993bff3aa7a2be2ebf043741f',3,'plain, bottled 1 March','2026-03-01',NULL,750,'cellar, 12 degrees','',NULL);
INSERT INTO lot VALUES(5,'558fae18a9e62b67cb1d3596a35e5ca5',4,'one case',NULL,NULL,700,'pantry, dark','a market stall',NULL);
INSERT INTO lot VALUES(6,'bc14c2e4bf3a907fe4f460d208fd6c9f',5,'bought in March',NULL,'2026-11-30',500,'cellar, 12 degrees','a shop in town',NULL);
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
INSERT INTO stock_move VALUES(1,1,NULL,1795624412117,'added',10);
INSERT INTO stock_move VALUES(2,2,NULL,1795624412117,'added',12);
INSERT INTO stock_move VALUES(3,3,NULL,1795624412117,'added',17);
INSERT INTO stock_move VALUES(4,4,NULL,1795624412117,'added',17);
INSERT INTO stock_move VALUES(5,5,NULL,1795624412117,'added',6);
INSERT INTO stock_move VALUES(6,6,NULL,1795624412117,'added',7);
INSERT INTO stock_move VALUES(7,1,2,1795624412250,'held',-1);
INSERT INTO stock_move VALUES(8,5,2,1795624412250,'held',-1);
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
INSERT INTO batch_note VALUES(1,'f788300b8578a8b002076752586e5a7c',1,NULL,'2026-01-12','racked',NULL,'clear after ten weeks');
INSERT INTO batch_note VALUES(2,'1bbc6fd3a7dc9b1262c6fd2f3fed7e86',2,NULL,'2026-02-04','bottled',NULL,'6 g sugar a litre');
INSERT INTO batch_note VALUES(3,'740dfe8d87bc2da65cfc3e2d0558db2d',2,NULL,'2026-02-01','reading',10140,'steady for three days');
INSERT INTO batch_note VALUES(4,'9bbba0cc1f02106256f1efbc63d695ae',2,NULL,'2026-01-17','reading',10560,'brewed, pitched at 18 degrees');
INSERT INTO batch_note VALUES(5,'ac7932f7a54271f15c59d08967386872',3,NULL,'2026-01-21','addition',NULL,'oak chips in the second half, two weeks');
INSERT INTO batch_note VALUES(6,'fa8690394ad1296bfd24f5ae6bf3c14d',3,NULL,'2026-01-20','stabilised',NULL,'half of it');
CREATE TABLE session (                     -- [live] title and archiving only; everything else is plan or log
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  title        TEXT NOT NULL CHECK (length(title) <= 200),
  guest_title  TEXT NOT NULL DEFAULT '' CHECK (length(guest_title) <= 200),
  came_from    TEXT NOT NULL CHECK (came_from IN ('here', 'import', 'demo')),
  created_at   INTEGER NOT NULL,
  archived_at  INTEGER
) STRICT;
INSERT INTO session VALUES(1,'fe2e0cc7cce66a933db63adf194d30ff','Cider: does two weeks of oak show?','An evening with cider','import',1778958001000,NULL);
INSERT INTO session VALUES(2,'f9ba8a2aee346b633fb790e2009c443b','Heather mead against a bought one','An evening with mead','here',1795624412148,NULL);
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
INSERT INTO log VALUES(1,1,1778958004000,'sealed','sealed','{"commitment":"11b8c1b2787e4b859166ca24e5465410e06627a03e9f90a0bde80d9479ae5d75","plan":"2fbe85075c7f0365ebdf8c2b990270f7dfde6425ac4e479417751118994467d7","schema":1}',X'0000000000000000000000000000000000000000000000000000000000000000',X'7fc230ba995763d7356bcf75c9a3e5937ae12e411c4bf116924d77fd391e00b7');
INSERT INTO log VALUES(1,2,1778959201000,'pour_sheet_opened','sealed','{}',X'7fc230ba995763d7356bcf75c9a3e5937ae12e411c4bf116924d77fd391e00b7',X'f47f5509bf249a3dffba4cd25496fb8a005b581199ddef6ad610dec4d6bd73ba');
INSERT INTO log VALUES(1,3,1778960101000,'poured','sealed','{}',X'f47f5509bf249a3dffba4cd25496fb8a005b581199ddef6ad610dec4d6bd73ba',X'894f473d9f9f481c05a398c7983f200594beb4ca55f0c261ac30d20bfb8b385c');
INSERT INTO log VALUES(1,4,1778960161000,'place_taken','sealed','{"as":"signed","maker":false,"place":1}',X'894f473d9f9f481c05a398c7983f200594beb4ca55f0c261ac30d20bfb8b385c',X'7793a65fe2fd2f91ade0d470620f2e0ad2c69357b8d9b6ae3927940bf4952a6f');
INSERT INTO log VALUES(1,5,1778960221000,'place_taken','sealed','{"as":"nickname","maker":false,"place":2}',X'7793a65fe2fd2f91ade0d470620f2e0ad2c69357b8d9b6ae3927940bf4952a6f',X'adb164e7f8860801fe3c5d55dfb7c6330d905aa1ecea26e542b1b0b5f1814784');
INSERT INTO log VALUES(1,6,1778960281000,'place_taken','sealed','{"as":"signed","maker":false,"place":3}',X'adb164e7f8860801fe3c5d55dfb7c6330d905aa1ecea26e542b1b0b5f1814784',X'393ef84ec575ec16f975422750c411830acfe097916985ce577e39900f891f00');
INSERT INTO log VALUES(1,7,1778960341000,'place_taken','sealed','{"as":"loose","maker":false,"place":4}',X'393ef84ec575ec16f975422750c411830acfe097916985ce577e39900f891f00',X'24d3c24ef301ea118b74be584a77e384563b2c673245bc38b913477ee55dff54');
INSERT INTO log VALUES(1,8,1778960401000,'place_taken','sealed','{"as":"nickname","maker":false,"place":5}',X'24d3c24ef301ea118b74be584a77e384563b2c673245bc38b913477ee55dff54',X'3659b2387dbc160140c8e9476c817009fbc653441095890735eed5eb3cad1966');
INSERT INTO log VALUES(1,9,1778960461000,'place_taken','sealed','{"as":"loose","maker":false,"place":6}',X'3659b2387dbc160140c8e9476c817009fbc653441095890735eed5eb3cad1966',X'b5a0fe53389f61e990cccd7031d0a695c5ba348e4859fd4a7e4b28263a0da275');
INSERT INTO log VALUES(1,10,1778960521000,'place_taken','sealed','{"as":"signed","maker":false,"place":7}',X'b5a0fe53389f61e990cccd7031d0a695c5ba348e4859fd4a7e4b28263a0da275',X'e41985eefab6221060cda3e376896d2587354bdbfb83813105b76f642cf5c843');
INSERT INTO log VALUES(1,11,1778960581000,'place_taken','sealed','{"as":"signed","maker":false,"place":8}',X'e41985eefab6221060cda3e376896d2587354bdbfb83813105b76f642cf5c843',X'5c36da7d274a2115a16ae3249d8627c243a884a4728923765a5d2bd25f7dca69');
INSERT INTO log VALUES(1,12,1778960641000,'place_taken','sealed','{"as":"signed","maker":true,"place":9}',X'5c36da7d274a2115a16ae3249d8627c243a884a4728923765a5d2bd25f7dca69',X'e1b6df84b7e840817482c4cdf9ac0007025d003babb8774aaa177aa8c073a634');
INSERT INTO log VALUES(1,13,1778960701000,'place_taken','sealed','{"as":"signed","maker":true,"place":10}',X'e1b6df84b7e840817482c4cdf9ac0007025d003babb8774aaa177aa8c073a634',X'1018c31c32a20f07a233ad5023deee9f342358e44eb19e1ad5bd61d0d82f3e98');
INSERT INTO log VALUES(1,14,1778960821000,'opened','tasting','{}',X'1018c31c32a20f07a233ad5023deee9f342358e44eb19e1ad5bd61d0d82f3e98',X'fccf6254caca7f7b98417622fba8e23f852153c5443a5d18b49701be3f23c91c');
INSERT INTO log VALUES(1,15,1778960821000,'began','tasting','{"place":1,"round":1}',X'fccf6254caca7f7b98417622fba8e23f852153c5443a5d18b49701be3f23c91c',X'fd53f911c32903d744759e216aed6802fe0232dd11b20c2c825bffbdce07a95e');
INSERT INTO log VALUES(1,16,1778960941000,'answered','tasting','{"digest":"ff5aefe40c566fa6cb2e151d85b62e1a6e2f349c5dd206b217ef07ee63b1b3c4","place":1,"round":1}',X'fd53f911c32903d744759e216aed6802fe0232dd11b20c2c825bffbdce07a95e',X'b4786749a5efb42c133066125c94047bc890c9434cffd088b0bbc81a7979a8d1');
INSERT INTO log VALUES(1,17,1778961061000,'began','tasting','{"place":2,"round":1}',X'b4786749a5efb42c133066125c94047bc890c9434cffd088b0bbc81a7979a8d1',X'894d0ad035a932a81bc6922ac8b0316c6e0a8ae8268fbd58194b5a022854f6ff');
INSERT INTO log VALUES(1,18,1778961181000,'answered','tasting','{"digest":"464c7ee911d93f4d9bfa92df5bcafadff0ea85dc9b11456a55721fc887f87c30","place":2,"round":1}',X'894d0ad035a932a81bc6922ac8b0316c6e0a8ae8268fbd58194b5a022854f6ff',X'947510bc2ccb386c5c5d3b82314eabd3eadc20f82cb62fd09d18aaea92c7dc82');
INSERT INTO log VALUES(1,19,1778961301000,'began','tasting','{"place":3,"round":1}',X'947510bc2ccb386c5c5d3b82314eabd3eadc20f82cb62fd09d18aaea92c7dc82',X'18fc753d99287475d2862d169fa988a678551b9f832830718333d62f4c9fd0a1');
INSERT INTO log VALUES(1,20,1778961421000,'answered','tasting','{"digest":"ebb36b7bbcb2643608b99a35701ad0877e6d0032981401204b303e6561b5f5bd","place":3,"round":1}',X'18fc753d99287475d2862d169fa988a678551b9f832830718333d62f4c9fd0a1',X'9e52f56c6f77dda55cde614a52564ec14f1dbd4d909615c17c3f913d42e8044e');
INSERT INTO log VALUES(1,21,1778961541000,'began','tasting','{"place":4,"round":1}',X'9e52f56c6f77dda55cde614a52564ec14f1dbd4d909615c17c3f913d42e8044e',X'512bed3ebfe365c757d94662880af3499a589e0124bd84182e54178128cf2c8a');
INSERT INTO log VALUES(1,22,1778961661000,'answered','tasting','{"digest":"254415dd4316be009cb3fdc2b01df96842378ae5337d1eeec933f25eab691df5","place":4,"round":1}',X'512bed3ebfe365c757d94662880af3499a589e0124bd84182e54178128cf2c8a',X'476b8c4bdcfb8781f97598f65f6ffa4002b718e42bf4e2e5c49a1ed082044321');
INSERT INTO log VALUES(1,23,1778961721000,'said','tasting','{"digest":"38f620d563b1edb573e19fffea7b1b81eb643ce6456007f4618d3fd7736de76d","heard":[5,7]}',X'476b8c4bdcfb8781f97598f65f6ffa4002b718e42bf4e2e5c49a1ed082044321',X'439770e1d3574d0280a61954ca7f3aeb34752c8ffad87c408f9b55973459cec2');
INSERT INTO log VALUES(1,24,1778961841000,'began','tasting','{"place":5,"round":1}',X'439770e1d3574d0280a61954ca7f3aeb34752c8ffad87c408f9b55973459cec2',X'2db107a08d153b709ddbb008a8da40238f298a0be28b57ccf12130f0f48bdf95');
INSERT INTO log VALUES(1,25,1778961961000,'answered','tasting','{"digest":"4fc6568e0c65991a72e2ea69ee82fcfe5943b6f05976c34c99b7763ed90fbc2c","place":5,"round":1}',X'2db107a08d153b709ddbb008a8da40238f298a0be28b57ccf12130f0f48bdf95',X'54d79eef835ff42a74c56a977965f7fe22724338ea7ac4aa0e4d58a6b51d33dd');
INSERT INTO log VALUES(1,26,1778962081000,'began','tasting','{"place":6,"round":1}',X'54d79eef835ff42a74c56a977965f7fe22724338ea7ac4aa0e4d58a6b51d33dd',X'a9a32cff2192eae24c0dde3910a027dc1373e92686765c60b4d9950cfe7c632f');
INSERT INTO log VALUES(1,27,1778962201000,'answered','tasting','{"digest":"5b5552aa01fefdf4400172f8508440f531f92a038a0e4a04425bd64ec8932ab4","place":6,"round":1}',X'a9a32cff2192eae24c0dde3910a027dc1373e92686765c60b4d9950cfe7c632f',X'891a25c65369aedc2fc70786c22b8340cca3fd1d1d2fe62df052a2582f1ead12');
INSERT INTO log VALUES(1,28,1778962321000,'began','tasting','{"place":7,"round":1}',X'891a25c65369aedc2fc70786c22b8340cca3fd1d1d2fe62df052a2582f1ead12',X'effd9026e33cf36193cc3ca66493b484327f92b2a2846edf77049c2e7527690e');
INSERT INTO log VALUES(1,29,1778962441000,'answered','tasting','{"digest":"54073c33238cc0b7a86bd04718feced76caeabed2bb37849f15dcb42a44ba2c7","place":7,"round":1}',X'effd9026e33cf36193cc3ca66493b484327f92b2a2846edf77049c2e7527690e',X'52dced7011a7387e3dd18f89d0789fb56e2ff1213731d845a5351e172213f65e');
INSERT INTO log VALUES(1,30,1778962561000,'began','tasting','{"place":9,"round":1}',X'52dced7011a7387e3dd18f89d0789fb56e2ff1213731d845a5351e172213f65e',X'4c6ab7c0de1358f733e5f8dd974f63713f914bbf1c746ffda14f3e9f8f329dfb');
INSERT INTO log VALUES(1,31,1778962681000,'answered','tasting','{"digest":"f222a2eeb2e35b5bc45aa2207f1806a4e21f7a5cb1a0225471546477d3eefda1","place":9,"round":1}',X'4c6ab7c0de1358f733e5f8dd974f63713f914bbf1c746ffda14f3e9f8f329dfb',X'fb1e5b755df8c8d4f976f9f09f65f4ab61c5a0cf0991fc76c3e14d5efb8a4bbe');
INSERT INTO log VALUES(1,32,1778962801000,'began','tasting','{"place":10,"round":1}',X'fb1e5b755df8c8d4f976f9f09f65f4ab61c5a0cf0991fc76c3e14d5efb8a4bbe',X'a3ddbb7de12b62d2c994d7bc5c4598ecf6010709a365a5c2de0f23b1619970ef');
INSERT INTO log VALUES(1,33,1778962921000,'answered','tasting','{"digest":"82487d0a357954b77d4f32004b96da840227316ff8f3e83bb83ff1dcca228516","place":10,"round":1}',X'a3ddbb7de12b62d2c994d7bc5c4598ecf6010709a365a5c2de0f23b1619970ef',X'46b0eb3dc60c800eca169d9c2ca5d5b4d53d9a982746e1a6af1565d90056900e');
INSERT INTO log VALUES(1,34,1778962922000,'voided','tasting','{"digest":null,"place":8,"reason":"mixed_up","round":1}',X'46b0eb3dc60c800eca169d9c2ca5d5b4d53d9a982746e1a6af1565d90056900e',X'396d5f2c0bc24abdf74c3424b68880fbf3f32f10e3b3d76ca2178716181df51b');
INSERT INTO log VALUES(1,35,1778963101000,'closed','closed','{"missing":0}',X'396d5f2c0bc24abdf74c3424b68880fbf3f32f10e3b3d76ca2178716181df51b',X'eedbb574bfe77681551e8e6a50ee324392832aba684e4f74b77452a46e24ae64');
INSERT INTO log VALUES(1,36,1778963102000,'revealed','revealed','{}',X'eedbb574bfe77681551e8e6a50ee324392832aba684e4f74b77452a46e24ae64',X'2464f482764a4a0c3279c32c194cd06ce8c5e55725d2fd464b4c3565e03012c6');
INSERT INTO log VALUES(1,37,1778964601000,'decided','revealed','{"digest":"62dca518a9d8c88292a0d00fd10649c118748e43bd2bc667efbd63d2ab248e09"}',X'2464f482764a4a0c3279c32c194cd06ce8c5e55725d2fd464b4c3565e03012c6',X'faad29f81eff9d5bfca3d1e94e02e2c0a6c87c28c6ed4b2379e12314a025096d');
INSERT INTO log VALUES(2,1,1795624412250,'sealed','sealed','{"commitment":"286bad55ce71ac474febace1a01bd95923b4fbc79a0b1e0b69eb18c5837e2d52","plan":"16978e1cb585727e92f942ca02564a237975dc228f933894bc38b488d4eb2f38","schema":1}',X'0000000000000000000000000000000000000000000000000000000000000000',X'0d8f971ce9e16c008c60e6d3afed89e8737492105a7753f272cc6e0c44c5cfb8');
INSERT INTO log VALUES(2,2,1795624423557,'poured','sealed','{}',X'0d8f971ce9e16c008c60e6d3afed89e8737492105a7753f272cc6e0c44c5cfb8',X'6c6e0e9686f87c3d5cd7b0f3aeec7d1422e05d965cc33ef55a7d7922181f467b');
INSERT INTO log VALUES(2,3,1795624423568,'place_taken','sealed','{"as":"signed","maker":false,"place":1}',X'6c6e0e9686f87c3d5cd7b0f3aeec7d1422e05d965cc33ef55a7d7922181f467b',X'dfe0c3819eab775c7f52253582253a4919b0a94f32ed3d45f1d247a0f0aa772e');
INSERT INTO log VALUES(2,4,1795624423684,'opened','tasting','{}',X'dfe0c3819eab775c7f52253582253a4919b0a94f32ed3d45f1d247a0f0aa772e',X'4dfcc5db72136058a794e9fe7e8437908de1707cccdfb12d0ed102d4a32c3c5c');
INSERT INTO log VALUES(2,5,1795624423684,'answered','tasting','{"digest":"049d211e3f831202b8d57247c7717800cf01e4d5f2f3900b06b683c6f2cd3b74","place":1,"round":1}',X'4dfcc5db72136058a794e9fe7e8437908de1707cccdfb12d0ed102d4a32c3c5c',X'71a52c3527caafc1f32ee061a3bc8c8ed69bdf65a6c504452c62b8a958b86c43');
CREATE TABLE session_plan (                -- [frozen] names, strengths, allergens as they were; reports read these, never the live shelf
  session_id   INTEGER PRIMARY KEY REFERENCES session (id),
  body         TEXT NOT NULL CHECK (body GLOB '{*}'),     -- canonical JSON, hashed
  question     TEXT NOT NULL,              -- as in the body, for lists
  commitment   BLOB NOT NULL CHECK (length(commitment) = 32),
  seal_mark    TEXT NOT NULL CHECK (length(seal_mark) = 11)
) STRICT;
INSERT INTO session_plan VALUES(1,'{"analysis":{"alpha_pm":50,"gamma_pm":300,"limit_pm":300,"seeks":"both","test":"exact_binomial"},"ceiling_g":20,"claim":"people","country":"GB","cup_ml":30,"cups":[{"code":379,"place":1,"position":1,"round":1,"spare":0},{"code":613,"place":1,"position":1,"round":1,"spare":1},{"code":162,"place":1,"position":2,"round":1,"spare":0},{"code":459,"place":1,"position":2,"round":1,"spare":1},{"code":275,"place":1,"position":3,"round":1,"spare":0},{"code":174,"place":1,"position":3,"round":1,"spare":1},{"code":268,"place":2,"position":1,"round":1,"spare":0},{"code":643,"place":2,"position":1,"round":1,"spare":1},{"code":789,"place":2,"position":2,"round":1,"spare":0},{"code":849,"place":2,"position":2,"round":1,"spare":1},{"code":586,"place":2,"position":3,"round":1,"spare":0},{"code":571,"place":2,"position":3,"round":1,"spare":1},{"code":813,"place":3,"position":1,"round":1,"spare":0},{"code":485,"place":3,"position":1,"round":1,"spare":1},{"code":738,"place":3,"position":2,"round":1,"spare":0},{"code":501,"place":3,"position":2,"round":1,"spare":1},{"code":384,"place":3,"position":3,"round":1,"spare":0},{"code":569,"place":3,"position":3,"round":1,"spare":1},{"code":852,"place":4,"position":1,"round":1,"spare":0},{"code":570,"place":4,"position":1,"round":1,"spare":1},{"code":460,"place":4,"position":2,"round":1,"spare":0},{"code":594,"place":4,"position":2,"round":1,"spare":1},{"code":796,"place":4,"position":3,"round":1,"spare":0},{"code":951,"place":4,"position":3,"round":1,"spare":1},{"code":251,"place":5,"position":1,"round":1,"spare":0},{"code":310,"place":5,"position":1,"round":1,"spare":1},{"code":934,"place":5,"position":2,"round":1,"spare":0},{"code":923,"place":5,"position":2,"round":1,"spare":1},{"code":607,"place":5,"position":3,"round":1,"spare":0},{"code":965,"place":5,"position":3,"round":1,"spare":1},{"code":253,"place":6,"position":1,"round":1,"spare":0},{"code":748,"place":6,"position":1,"round":1,"spare":1},{"code":380,"place":6,"position":2,"round":1,"spare":0},{"code":851,"place":6,"position":2,"round":1,"spare":1},{"code":183,"place":6,"position":3,"round":1,"spare":0},{"code":281,"place":6,"position":3,"round":1,"spare":1},{"code":201,"place":7,"position":1,"round":1,"spare":0},{"code":126,"place":7,"position":1,"round":1,"spare":1},{"code":741,"place":7,"position":2,"round":1,"spare":0},{"code":649,"place":7,"position":2,"round":1,"spare":1},{"code":476,"place":7,"position":3,"round":1,"spare":0},{"code":345,"place":7,"position":3,"round":1,"spare":1},{"code":204,"place":8,"position":1,"round":1,"spare":0},{"code":794,"place":8,"position":1,"round":1,"spare":1},{"code":216,"place":8,"position":2,"round":1,"spare":0},{"code":713,"place":8,"position":2,"round":1,"spare":1},{"code":419,"place":8,"position":3,"round":1,"spare":0},{"code":365,"place":8,"position":3,"round":1,"spare":1},{"code":294,"place":9,"position":1,"round":1,"spare":0},{"code":641,"place":9,"position":1,"round":1,"spare":1},{"code":261,"place":9,"position":2,"round":1,"spare":0},{"code":301,"place":9,"position":2,"round":1,"spare":1},{"code":218,"place":9,"position":3,"round":1,"spare":0},{"code":834,"place":9,"position":3,"round":1,"spare":1},{"code":138,"place":10,"position":1,"round":1,"spare":0},{"code":465,"place":10,"position":1,"round":1,"spare":1},{"code":739,"place":10,"position":2,"round":1,"spare":0},{"code":490,"place":10,"position":2,"round":1,"spare":1},{"code":687,"place":10,"position":3,"round":1,"spare":0},{"code":842,"place":10,"position":3,"round":1,"spare":1},{"code":802,"place":11,"position":1,"round":1,"spare":0},{"code":438,"place":11,"position":1,"round":1,"spare":1},{"code":627,"place":11,"position":2,"round":1,"spare":0},{"code":105,"place":11,"position":2,"round":1,"spare":1},{"code":321,"place":11,"position":3,"round":1,"spare":0},{"code":693,"place":11,"position":3,"round":1,"spare":1}],"items":[{"high":null,"item":1,"kind":"choose","low":null,"required":true},{"high":3,"item":2,"kind":"sureness","low":1,"required":true},{"high":6,"item":3,"kind":"clue","low":1,"required":true},{"high":null,"item":4,"kind":"words","low":null,"required":false}],"lots":[{"abv_bp":660,"allergens":["sulphites"],"best_before":"","beverage":"Windfall cider","bottle_ml":750,"ingredients":"known","kind":"cider","lot":"0b57819993bff3aa7a2be2ebf043741f","name":"plain, bottled 1 March","origin":"batch","packaged_on":"2026-03-01","slot":1,"storage":"cellar, 12 degrees"},{"abv_bp":660,"allergens":["sulphites"],"best_before":"","beverage":"Windfall cider","bottle_ml":750,"ingredients":"known","kind":"cider","lot":"46781034c262f527338f9f182d39f7fc","name":"with oak, bottled 1 March","origin":"batch","packaged_on":"2026-03-01","slot":2,"storage":"cellar, 12 degrees"}],"makers":2,"method":"triangle","panel":8,"places":11,"pourer":true,"promises":{"alike":"a4bcae25cc12459146ae7bead0549b657cc612bfdf10d2c1c9b4f86d5cf602ac","not_shown":"109a016283119d5dc5f4172529879e38d36bef1786c0ea91e687d03828733cbd","shown":"c23492d51f96a1014cd08167041aa0b57a3f39e19cb8ce63b4ff7d93a50a4c17"},"question":"differ","rounds":1,"spares":1}','differ',X'11b8c1b2787e4b859166ca24e5465410e06627a03e9f90a0bde80d9479ae5d75','dalu nubi 8');
INSERT INTO session_plan VALUES(2,'{"analysis":{"alpha_pm":50,"gamma_pm":300,"limit_pm":null,"seeks":"difference","test":"exact_binomial"},"ceiling_g":20,"claim":"table","country":"GB","cup_ml":15,"cups":[{"code":642,"place":1,"position":1,"round":1,"spare":0},{"code":768,"place":1,"position":1,"round":1,"spare":1},{"code":695,"place":1,"position":2,"round":1,"spare":0},{"code":423,"place":1,"position":2,"round":1,"spare":1},{"code":654,"place":1,"position":3,"round":1,"spare":0},{"code":730,"place":1,"position":3,"round":1,"spare":1},{"code":531,"place":1,"position":1,"round":2,"spare":0},{"code":290,"place":1,"position":1,"round":2,"spare":1},{"code":258,"place":1,"position":2,"round":2,"spare":0},{"code":216,"place":1,"position":2,"round":2,"spare":1},{"code":320,"place":1,"position":3,"round":2,"spare":0},{"code":983,"place":1,"position":3,"round":2,"spare":1},{"code":250,"place":2,"position":1,"round":1,"spare":0},{"code":460,"place":2,"position":1,"round":1,"spare":1},{"code":790,"place":2,"position":2,"round":1,"spare":0},{"code":217,"place":2,"position":2,"round":1,"spare":1},{"code":701,"place":2,"position":3,"round":1,"spare":0},{"code":352,"place":2,"position":3,"round":1,"spare":1},{"code":973,"place":2,"position":1,"round":2,"spare":0},{"code":738,"place":2,"position":1,"round":2,"spare":1},{"code":162,"place":2,"position":2,"round":2,"spare":0},{"code":158,"place":2,"position":2,"round":2,"spare":1},{"code":269,"place":2,"position":3,"round":2,"spare":0},{"code":574,"place":2,"position":3,"round":2,"spare":1},{"code":780,"place":3,"position":1,"round":1,"spare":0},{"code":467,"place":3,"position":1,"round":1,"spare":1},{"code":408,"place":3,"position":2,"round":1,"spare":0},{"code":835,"place":3,"position":2,"round":1,"spare":1},{"code":431,"place":3,"position":3,"round":1,"spare":0},{"code":178,"place":3,"position":3,"round":1,"spare":1},{"code":195,"place":3,"position":1,"round":2,"spare":0},{"code":671,"place":3,"position":1,"round":2,"spare":1},{"code":481,"place":3,"position":2,"round":2,"spare":0},{"code":625,"place":3,"position":2,"round":2,"spare":1},{"code":391,"place":3,"position":3,"round":2,"spare":0},{"code":215,"place":3,"position":3,"round":2,"spare":1},{"code":193,"place":4,"position":1,"round":1,"spare":0},{"code":541,"place":4,"position":1,"round":1,"spare":1},{"code":361,"place":4,"position":2,"round":1,"spare":0},{"code":813,"place":4,"position":2,"round":1,"spare":1},{"code":235,"place":4,"position":3,"round":1,"spare":0},{"code":972,"place":4,"position":3,"round":1,"spare":1},{"code":316,"place":4,"position":1,"round":2,"spare":0},{"code":520,"place":4,"position":1,"round":2,"spare":1},{"code":935,"place":4,"position":2,"round":2,"spare":0},{"code":105,"place":4,"position":2,"round":2,"spare":1},{"code":796,"place":4,"position":3,"round":2,"spare":0},{"code":957,"place":4,"position":3,"round":2,"spare":1},{"code":296,"place":5,"position":1,"round":1,"spare":0},{"code":356,"place":5,"position":1,"round":1,"spare":1},{"code":580,"place":5,"position":2,"round":1,"spare":0},{"code":843,"place":5,"position":2,"round":1,"spare":1},{"code":571,"place":5,"position":3,"round":1,"spare":0},{"code":963,"place":5,"position":3,"round":1,"spare":1},{"code":529,"place":5,"position":1,"round":2,"spare":0},{"code":238,"place":5,"position":1,"round":2,"spare":1},{"code":350,"place":5,"position":2,"round":2,"spare":0},{"code":714,"place":5,"position":2,"round":2,"spare":1},{"code":948,"place":5,"position":3,"round":2,"spare":0},{"code":286,"place":5,"position":3,"round":2,"spare":1},{"code":415,"place":6,"position":1,"round":1,"spare":0},{"code":635,"place":6,"position":1,"round":1,"spare":1},{"code":971,"place":6,"position":2,"round":1,"spare":0},{"code":604,"place":6,"position":2,"round":1,"spare":1},{"code":278,"place":6,"position":3,"round":1,"spare":0},{"code":427,"place":6,"position":3,"round":1,"spare":1},{"code":218,"place":6,"position":1,"round":2,"spare":0},{"code":164,"place":6,"position":1,"round":2,"spare":1},{"code":347,"place":6,"position":2,"round":2,"spare":0},{"code":463,"place":6,"position":2,"round":2,"spare":1},{"code":548,"place":6,"position":3,"round":2,"spare":0},{"code":865,"place":6,"position":3,"round":2,"spare":1},{"code":731,"place":7,"position":1,"round":1,"spare":0},{"code":694,"place":7,"position":1,"round":1,"spare":1},{"code":576,"place":7,"position":2,"round":1,"spare":0},{"code":147,"place":7,"position":2,"round":1,"spare":1},{"code":410,"place":7,"position":3,"round":1,"spare":0},{"code":628,"place":7,"position":3,"round":1,"spare":1},{"code":287,"place":7,"position":1,"round":2,"spare":0},{"code":904,"place":7,"position":1,"round":2,"spare":1},{"code":502,"place":7,"position":2,"round":2,"spare":0},{"code":785,"place":7,"position":2,"round":2,"spare":1},{"code":413,"place":7,"position":3,"round":2,"spare":0},{"code":127,"place":7,"position":3,"round":2,"spare":1},{"code":271,"place":8,"position":1,"round":1,"spare":0},{"code":342,"place":8,"position":1,"round":1,"spare":1},{"code":781,"place":8,"position":2,"round":1,"spare":0},{"code":503,"place":8,"position":2,"round":1,"spare":1},{"code":708,"place":8,"position":3,"round":1,"spare":0},{"code":685,"place":8,"position":3,"round":1,"spare":1},{"code":471,"place":8,"position":1,"round":2,"spare":0},{"code":517,"place":8,"position":1,"round":2,"spare":1},{"code":621,"place":8,"position":2,"round":2,"spare":0},{"code":740,"place":8,"position":2,"round":2,"spare":1},{"code":825,"place":8,"position":3,"round":2,"spare":0},{"code":231,"place":8,"position":3,"round":2,"spare":1},{"code":473,"place":9,"position":1,"round":1,"spare":0},{"code":438,"place":9,"position":1,"round":1,"spare":1},{"code":964,"place":9,"position":2,"round":1,"spare":0},{"code":746,"place":9,"position":2,"round":1,"spare":1},{"code":893,"place":9,"position":3,"round":1,"spare":0},{"code":903,"place":9,"position":3,"round":1,"spare":1},{"code":401,"place":9,"position":1,"round":2,"spare":0},{"code":148,"place":9,"position":1,"round":2,"spare":1},{"code":670,"place":9,"position":2,"round":2,"spare":0},{"code":649,"place":9,"position":2,"round":2,"spare":1},{"code":264,"place":9,"position":3,"round":2,"spare":0},{"code":952,"place":9,"position":3,"round":2,"spare":1}],"items":[{"high":null,"item":1,"kind":"choose","low":null,"required":true},{"high":3,"item":2,"kind":"sureness","low":1,"required":true},{"high":6,"item":3,"kind":"clue","low":1,"required":true},{"high":null,"item":4,"kind":"words","low":null,"required":false}],"lots":[{"abv_bp":1190,"allergens":["sulphites"],"best_before":"","beverage":"Heather mead","bottle_ml":750,"ingredients":"known","kind":"mead","lot":"36d9039a7b21abbfcd03118af3f1cdd0","name":"bottled 12 April","origin":"batch","packaged_on":"2026-04-12","slot":1,"storage":"pantry, dark"},{"abv_bp":1150,"allergens":[],"best_before":"","beverage":"Bought mead","bottle_ml":700,"ingredients":"not_known","kind":"mead","lot":"558fae18a9e62b67cb1d3596a35e5ca5","name":"one case","origin":"reference","packaged_on":"","slot":2,"storage":"pantry, dark"}],"makers":1,"method":"triangle","panel":7,"places":9,"pourer":true,"promises":{"not_shown":"06a4858921769e98d583dbdae324bef0f0566c89ac2a1fc6eb929dd731bc4fd4","shown":"455f7a21e5dd22bf9f0bfedc3b160b3fa76dbfa0f2d613db07b246d26d200e26"},"question":"differ","rounds":2,"spares":1}','differ',X'286bad55ce71ac474febace1a01bd95923b4fbc79a0b1e0b69eb18c5837e2d52','fodo sosi 5');
CREATE TABLE session_lot (                 -- [frozen] slot = the order in which the plan names its lots
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  slot         INTEGER NOT NULL CHECK (slot BETWEEN 1 AND 40),
  lot_id       INTEGER NOT NULL REFERENCES lot (id),
  PRIMARY KEY (session_id, slot)
) STRICT, WITHOUT ROWID;
INSERT INTO session_lot VALUES(2,1,1);
INSERT INTO session_lot VALUES(1,2,3);
INSERT INTO session_lot VALUES(1,1,4);
INSERT INTO session_lot VALUES(2,2,5);
CREATE TABLE promise (                     -- [person] what will be done in each outcome; the plan holds the digests
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  outcome      TEXT NOT NULL CHECK (outcome IN ('shown', 'not_shown', 'alike')),
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 500),
  PRIMARY KEY (session_id, outcome)
) STRICT, WITHOUT ROWID;
INSERT INTO promise VALUES(1,'alike',X'4dbe5f455dd6ee0002b5695859fb8985','no more chips');
INSERT INTO promise VALUES(1,'not_shown',X'041714dada82fcf705935cab35462b97','leave it for a month and ask again');
INSERT INTO promise VALUES(1,'shown',X'82f59815c4b642e32821bd8bd0749878','oak the whole batch');
INSERT INTO promise VALUES(2,'not_shown',X'ecd5896743237355758df1155794f9c3','call it a match and brew it again');
INSERT INTO promise VALUES(2,'shown',X'dc95e1f4261b1907f4428e94966f0ef9','name the difference and pour pairs');
CREATE TABLE invited (                     -- [person] who was counted at the plan, and who pours
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  pours        INTEGER NOT NULL CHECK (pours IN (0, 1)),
  is_maker     INTEGER NOT NULL CHECK (is_maker IN (0, 1)),
  PRIMARY KEY (session_id, taster_id)
) STRICT, WITHOUT ROWID;
INSERT INTO invited VALUES(2,1,1,0);
INSERT INTO invited VALUES(2,2,0,0);
INSERT INTO invited VALUES(2,3,0,0);
INSERT INTO invited VALUES(2,4,0,0);
INSERT INTO invited VALUES(2,5,0,0);
INSERT INTO invited VALUES(2,6,0,0);
INSERT INTO invited VALUES(2,7,0,0);
INSERT INTO invited VALUES(2,8,0,1);
INSERT INTO invited VALUES(2,10,0,0);
CREATE TABLE item (                        -- [frozen] the questions of the sheet
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  item         INTEGER NOT NULL CHECK (item BETWEEN 1 AND 200),
  kind         TEXT NOT NULL CHECK (kind IN ('choose', 'sureness', 'clue', 'words')),
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
INSERT INTO place VALUES(1,8,0);
INSERT INTO place VALUES(1,9,0);
INSERT INTO place VALUES(1,10,0);
INSERT INTO place VALUES(1,11,1);
INSERT INTO place VALUES(2,1,0);
INSERT INTO place VALUES(2,2,0);
INSERT INTO place VALUES(2,3,0);
INSERT INTO place VALUES(2,4,0);
INSERT INTO place VALUES(2,5,0);
INSERT INTO place VALUES(2,6,0);
INSERT INTO place VALUES(2,7,0);
INSERT INTO place VALUES(2,8,0);
INSERT INTO place VALUES(2,9,1);
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
INSERT INTO cup VALUES(1,105,11,1,2,1);
INSERT INTO cup VALUES(1,126,7,1,1,1);
INSERT INTO cup VALUES(1,138,10,1,1,0);
INSERT INTO cup VALUES(1,162,1,1,2,0);
INSERT INTO cup VALUES(1,174,1,1,3,1);
INSERT INTO cup VALUES(1,183,6,1,3,0);
INSERT INTO cup VALUES(1,201,7,1,1,0);
INSERT INTO cup VALUES(1,204,8,1,1,0);
INSERT INTO cup VALUES(1,216,8,1,2,0);
INSERT INTO cup VALUES(1,218,9,1,3,0);
INSERT INTO cup VALUES(1,251,5,1,1,0);
INSERT INTO cup VALUES(1,253,6,1,1,0);
INSERT INTO cup VALUES(1,261,9,1,2,0);
INSERT INTO cup VALUES(1,268,2,1,1,0);
INSERT INTO cup VALUES(1,275,1,1,3,0);
INSERT INTO cup VALUES(1,281,6,1,3,1);
INSERT INTO cup VALUES(1,294,9,1,1,0);
INSERT INTO cup VALUES(1,301,9,1,2,1);
INSERT INTO cup VALUES(1,310,5,1,1,1);
INSERT INTO cup VALUES(1,321,11,1,3,0);
INSERT INTO cup VALUES(1,345,7,1,3,1);
INSERT INTO cup VALUES(1,365,8,1,3,1);
INSERT INTO cup VALUES(1,379,1,1,1,0);
INSERT INTO cup VALUES(1,380,6,1,2,0);
INSERT INTO cup VALUES(1,384,3,1,3,0);
INSERT INTO cup VALUES(1,419,8,1,3,0);
INSERT INTO cup VALUES(1,438,11,1,1,1);
INSERT INTO cup VALUES(1,459,1,1,2,1);
INSERT INTO cup VALUES(1,460,4,1,2,0);
INSERT INTO cup VALUES(1,465,10,1,1,1);
INSERT INTO cup VALUES(1,476,7,1,3,0);
INSERT INTO cup VALUES(1,485,3,1,1,1);
INSERT INTO cup VALUES(1,490,10,1,2,1);
INSERT INTO cup VALUES(1,501,3,1,2,1);
INSERT INTO cup VALUES(1,569,3,1,3,1);
INSERT INTO cup VALUES(1,570,4,1,1,1);
INSERT INTO cup VALUES(1,571,2,1,3,1);
INSERT INTO cup VALUES(1,586,2,1,3,0);
INSERT INTO cup VALUES(1,594,4,1,2,1);
INSERT INTO cup VALUES(1,607,5,1,3,0);
INSERT INTO cup VALUES(1,613,1,1,1,1);
INSERT INTO cup VALUES(1,627,11,1,2,0);
INSERT INTO cup VALUES(1,641,9,1,1,1);
INSERT INTO cup VALUES(1,643,2,1,1,1);
INSERT INTO cup VALUES(1,649,7,1,2,1);
INSERT INTO cup VALUES(1,687,10,1,3,0);
INSERT INTO cup VALUES(1,693,11,1,3,1);
INSERT INTO cup VALUES(1,713,8,1,2,1);
INSERT INTO cup VALUES(1,738,3,1,2,0);
INSERT INTO cup VALUES(1,739,10,1,2,0);
INSERT INTO cup VALUES(1,741,7,1,2,0);
INSERT INTO cup VALUES(1,748,6,1,1,1);
INSERT INTO cup VALUES(1,789,2,1,2,0);
INSERT INTO cup VALUES(1,794,8,1,1,1);
INSERT INTO cup VALUES(1,796,4,1,3,0);
INSERT INTO cup VALUES(1,802,11,1,1,0);
INSERT INTO cup VALUES(1,813,3,1,1,0);
INSERT INTO cup VALUES(1,834,9,1,3,1);
INSERT INTO cup VALUES(1,842,10,1,3,1);
INSERT INTO cup VALUES(1,849,2,1,2,1);
INSERT INTO cup VALUES(1,851,6,1,2,1);
INSERT INTO cup VALUES(1,852,4,1,1,0);
INSERT INTO cup VALUES(1,923,5,1,2,1);
INSERT INTO cup VALUES(1,934,5,1,2,0);
INSERT INTO cup VALUES(1,951,4,1,3,1);
INSERT INTO cup VALUES(1,965,5,1,3,1);
INSERT INTO cup VALUES(2,105,4,2,2,1);
INSERT INTO cup VALUES(2,127,7,2,3,1);
INSERT INTO cup VALUES(2,147,7,1,2,1);
INSERT INTO cup VALUES(2,148,9,2,1,1);
INSERT INTO cup VALUES(2,158,2,2,2,1);
INSERT INTO cup VALUES(2,162,2,2,2,0);
INSERT INTO cup VALUES(2,164,6,2,1,1);
INSERT INTO cup VALUES(2,178,3,1,3,1);
INSERT INTO cup VALUES(2,193,4,1,1,0);
INSERT INTO cup VALUES(2,195,3,2,1,0);
INSERT INTO cup VALUES(2,215,3,2,3,1);
INSERT INTO cup VALUES(2,216,1,2,2,1);
INSERT INTO cup VALUES(2,217,2,1,2,1);
INSERT INTO cup VALUES(2,218,6,2,1,0);
INSERT INTO cup VALUES(2,231,8,2,3,1);
INSERT INTO cup VALUES(2,235,4,1,3,0);
INSERT INTO cup VALUES(2,238,5,2,1,1);
INSERT INTO cup VALUES(2,250,2,1,1,0);
INSERT INTO cup VALUES(2,258,1,2,2,0);
INSERT INTO cup VALUES(2,264,9,2,3,0);
INSERT INTO cup VALUES(2,269,2,2,3,0);
INSERT INTO cup VALUES(2,271,8,1,1,0);
INSERT INTO cup VALUES(2,278,6,1,3,0);
INSERT INTO cup VALUES(2,286,5,2,3,1);
INSERT INTO cup VALUES(2,287,7,2,1,0);
INSERT INTO cup VALUES(2,290,1,2,1,1);
INSERT INTO cup VALUES(2,296,5,1,1,0);
INSERT INTO cup VALUES(2,316,4,2,1,0);
INSERT INTO cup VALUES(2,320,1,2,3,0);
INSERT INTO cup VALUES(2,342,8,1,1,1);
INSERT INTO cup VALUES(2,347,6,2,2,0);
INSERT INTO cup VALUES(2,350,5,2,2,0);
INSERT INTO cup VALUES(2,352,2,1,3,1);
INSERT INTO cup VALUES(2,356,5,1,1,1);
INSERT INTO cup VALUES(2,361,4,1,2,0);
INSERT INTO cup VALUES(2,391,3,2,3,0);
INSERT INTO cup VALUES(2,401,9,2,1,0);
INSERT INTO cup VALUES(2,408,3,1,2,0);
INSERT INTO cup VALUES(2,410,7,1,3,0);
INSERT INTO cup VALUES(2,413,7,2,3,0);
INSERT INTO cup VALUES(2,415,6,1,1,0);
INSERT INTO cup VALUES(2,423,1,1,2,1);
INSERT INTO cup VALUES(2,427,6,1,3,1);
INSERT INTO cup VALUES(2,431,3,1,3,0);
INSERT INTO cup VALUES(2,438,9,1,1,1);
INSERT INTO cup VALUES(2,460,2,1,1,1);
INSERT INTO cup VALUES(2,463,6,2,2,1);
INSERT INTO cup VALUES(2,467,3,1,1,1);
INSERT INTO cup VALUES(2,471,8,2,1,0);
INSERT INTO cup VALUES(2,473,9,1,1,0);
INSERT INTO cup VALUES(2,481,3,2,2,0);
INSERT INTO cup VALUES(2,502,7,2,2,0);
INSERT INTO cup VALUES(2,503,8,1,2,1);
INSERT INTO cup VALUES(2,517,8,2,1,1);
INSERT INTO cup VALUES(2,520,4,2,1,1);
INSERT INTO cup VALUES(2,529,5,2,1,0);
INSERT INTO cup VALUES(2,531,1,2,1,0);
INSERT INTO cup VALUES(2,541,4,1,1,1);
INSERT INTO cup VALUES(2,548,6,2,3,0);
INSERT INTO cup VALUES(2,571,5,1,3,0);
INSERT INTO cup VALUES(2,574,2,2,3,1);
INSERT INTO cup VALUES(2,576,7,1,2,0);
INSERT INTO cup VALUES(2,580,5,1,2,0);
INSERT INTO cup VALUES(2,604,6,1,2,1);
INSERT INTO cup VALUES(2,621,8,2,2,0);
INSERT INTO cup VALUES(2,625,3,2,2,1);
INSERT INTO cup VALUES(2,628,7,1,3,1);
INSERT INTO cup VALUES(2,635,6,1,1,1);
INSERT INTO cup VALUES(2,642,1,1,1,0);
INSERT INTO cup VALUES(2,649,9,2,2,1);
INSERT INTO cup VALUES(2,654,1,1,3,0);
INSERT INTO cup VALUES(2,670,9,2,2,0);
INSERT INTO cup VALUES(2,671,3,2,1,1);
INSERT INTO cup VALUES(2,685,8,1,3,1);
INSERT INTO cup VALUES(2,694,7,1,1,1);
INSERT INTO cup VALUES(2,695,1,1,2,0);
INSERT INTO cup VALUES(2,701,2,1,3,0);
INSERT INTO cup VALUES(2,708,8,1,3,0);
INSERT INTO cup VALUES(2,714,5,2,2,1);
INSERT INTO cup VALUES(2,730,1,1,3,1);
INSERT INTO cup VALUES(2,731,7,1,1,0);
INSERT INTO cup VALUES(2,738,2,2,1,1);
INSERT INTO cup VALUES(2,740,8,2,2,1);
INSERT INTO cup VALUES(2,746,9,1,2,1);
INSERT INTO cup VALUES(2,768,1,1,1,1);
INSERT INTO cup VALUES(2,780,3,1,1,0);
INSERT INTO cup VALUES(2,781,8,1,2,0);
INSERT INTO cup VALUES(2,785,7,2,2,1);
INSERT INTO cup VALUES(2,790,2,1,2,0);
INSERT INTO cup VALUES(2,796,4,2,3,0);
INSERT INTO cup VALUES(2,813,4,1,2,1);
INSERT INTO cup VALUES(2,825,8,2,3,0);
INSERT INTO cup VALUES(2,835,3,1,2,1);
INSERT INTO cup VALUES(2,843,5,1,2,1);
INSERT INTO cup VALUES(2,865,6,2,3,1);
INSERT INTO cup VALUES(2,893,9,1,3,0);
INSERT INTO cup VALUES(2,903,9,1,3,1);
INSERT INTO cup VALUES(2,904,7,2,1,1);
INSERT INTO cup VALUES(2,935,4,2,2,0);
INSERT INTO cup VALUES(2,948,5,2,3,0);
INSERT INTO cup VALUES(2,952,9,2,3,1);
INSERT INTO cup VALUES(2,957,4,2,3,1);
INSERT INTO cup VALUES(2,963,5,1,3,1);
INSERT INTO cup VALUES(2,964,9,1,2,0);
INSERT INTO cup VALUES(2,971,6,1,2,0);
INSERT INTO cup VALUES(2,972,4,1,3,1);
INSERT INTO cup VALUES(2,973,2,2,1,0);
INSERT INTO cup VALUES(2,983,1,2,3,1);
CREATE TABLE sealed_key (                  -- [frozen] lot of every cup, seed, salt. Closed against a glance, not against a locksmith.
  session_id   INTEGER PRIMARY KEY REFERENCES session_plan (session_id),
  box          BLOB NOT NULL,
  secret       BLOB NOT NULL CHECK (length(secret) = 32)
) STRICT;
INSERT INTO sealed_key VALUES(1,X'cdcb08437fa3f92e66700ffa07beb6690a9d5b2b450f480698d8cb29d70f5bf92a01958d02a5f897a88bc11f923cd3e3e338ec4be7e94f0a2a365b7d26668e4ef22d9f15408953665fc640a31a5b051aa52f1f338905145cc18f1c908e292476b365c05f72d893a41ad8443517560022d2d9542f227289436d80dd92456f7a495535ddaab1763811380b308cd4f26b3c7dc1d6a8c956028f0b312590639edc033ca39c02609a7829a4389cf089856a1c3d668263dc1b055d351aa4c6b6baf081a2d52fc461686bb0845a1a99547baa8b5bcd224db10b9c7adf84e744202dc50cc380b89fc2075a7eef76379b3279184414491bd93ebb9322cfa3246a50156bb7147d02c8fc864ef43611f492df9a04abd9c0bf3fd815a834db94bd0d06f334eefce53c714580c5e82c6702ea9109227bdd1b45bcf129b5d28d2346d5520439ebda124bc911d6efab2a7c1b944c6d5c13e9f82dcd538c331f7319a7b0c34b4fdabffe34ea0ba241e0c89a53ed08fbaffb904253419b1ca4d56512f69ae45fa0340f3d2a94c666aa581f86bfcd34b2c4c9d68fa4609eb51994873e28ca5d7ec222e6fcc19ce041b6f8521d8c6998d250b22caeddb19d7fe1013f5b6409bdf8bf7bcd2317acb055368ea84add7782fe920842c0ab28398d2a035169056ffd9a29f87715d2a5d0dd1249a3dc11f06ac82b6949faf8925f8f686d7cd558d3fe1bb731a206a3b6c3707f4a63353fdf1dc7acfbce7a689e334e572db5abe6358f2205620c96c542882cd0ff0316514d7f4b989a1375d68fe052e11897c936cd38de71550211ae068898aa93fd0a24066b6b206ae7e91944ffa0473dc8f4c637ce07d08db54b48481737b45c6dbd795741fa2add4e453b317aaf11ecc1ac123cd0c675c901ef7de5832862397c81f25b4c2cc7fc3a4fbc35727d26a0fd075828948eb40dc6b9273317e17760f588d598a854ffda719e5594656d21875868fecf3ffae53ab5cece6c08ef6eead668da010d3e5ae6964c9805f0d75e1757920aee60b2943181ecbeaf0ad29ec0658a366dfbf2ddc8',X'2e05d845a5f336d8b4e80039fc18bc7d8b7ee43828201d9e48bbee20b917bb60');
INSERT INTO sealed_key VALUES(2,X'56e7eee3ddb4c857c101854df7465b41f91bfe7101df5fc04a1c1361853a863e2b2f1fa975a4d517fe71a508bbdb06e9a1ff8db0c5de0e4cd90df68759251c7d301fdedca8b2ef7f1a0fd8d049bd6fcd032c48f140914c7955301a47630c2116cc88596125adf77e222d8dab0266a7232d892b573cb3e1efd84b2eb8b4b1e36e037f94287b42dd2dc690b61e39d71f6b2a22a4cb97cb03cfdddbe9326044b09a99b9474e9cb7a11155c664643c09edb3ae272fef615182d2d6f2be1f43e21e505f5725fcabcf92ecdcbd72a7792d27932ddd2c5d0e6cfa41aafe15aa10c83ca8f95f69b97c7be11f4a88a18347949f1b83f05c0c3f3530a60ccf0c8e8b4f26fbc35651fd8501809b01664d4fb26cef483831c3a9e380af560d9c59e65e626af9e593b2930b63e6ef379e17282657638895651ead38e7a96cf7f33c86c030f238764fb3041f09ff15fd3eb9e802b00404c898782f6c62c73c2a8301a783a33c22fb9706fb8527a1b5dc172ab7233e5e097e0bc46dcec9d83fb83538076c5023ecb7e42c2fdb15d324838eed9d031712919ce5f708cb4fe465c26429c034c3cc28afc15df6e35446c4c9cc2468622e39c7b35e413354c5a42a432ace1c9e5412dd9216d6a32b87d752d0338ea19af3d627f6f710daa8785d997ea7b36b69e797c01cba1f268ed01cbcf4da29878e3c771a34a196c0c09e1185196b3369483829cfab075f4e1a3e25e3fc4b2bab34118f591b6555f7c6506fe2484591e8ce2eecf0b6ee142e915cad0d19b9dc1ea0fda6c71bd3c434795188f5c7ce74e097f204df881708c53b2e3fd7569b8ef6ee2bf9ab8cadfce721f1c3167e31dcaa069110ab8b3b4cea68fe6faca56568d8d361d7717780ee95ae1e70614e27113f7da1757d2aac808967506ae9eb5f1dec89cac736f3926389c66729b75c997376da9a88a1dd78dbd9c0c845e89bdc0cc1bf4f693e769a3d99b1f5daa5d77a26c465a7dba751750f65cb32e3cfe1b7570da436467690aeef82f81ce27a6badfa6925639db8443bea039a57dc7fc22d66396a6c18f691a9c9113aafdf3d8ed15e27a96912c2504abfd7739cf9c48ce9c8af9f19cd7bef6d719323c559e30c0a76d61043bd8eacc9ab53b7b4fb6c2ace9f227179eea1586f75a87fb615407ec5989225d0708275d006cfb4dc1c70429168312227c02517d6fd0fb5fdedaee24b8e95e307a0d356558a4bfa179110049460ee9c288bc670435d6c1fb968f68a8a8285215e3cdfa2706d64e65d86fb54991ee0fb3d99925fd4aba598b2a8b230561a7f6ee273e1e3e39bd0fe4da3358080380807cee06856ed0339d4d8fe87202b3a2dd09af785746265a8d3f33a064390a737a946d19973b9d9b6831328ba1e639ec07a5ccb91292a1b7e78c5c72a7e7c9822f436a92f5639a2b59dbdfa4955036106144f4be6fa7a56efd3699f07756b86b7ec64ee522dfafffa846c31a16edbe4cf34fa0244f96320dc57bd443e3971e1a5a82ce04ce4546563f7c3d0a7ea5f25379ecccded',X'ba1c68339885c8178fc6e387373eeb5045724e1c473ebaacf845f60115e9b5d4');
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
INSERT INTO key_opened VALUES(1,36,X'd334aeeeb67f0d17900e7fd796d4d38f0541e8f5be28a946e50d6e349bb54f4f',X'757f13b24016cf3c80a1242a8b6b537f4a1176614ed8b8a6d3fcfe63d29544cc','chacha20/1',1);
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
INSERT INTO key_line VALUES(1,105,1,1);
INSERT INTO key_line VALUES(1,126,1,1);
INSERT INTO key_line VALUES(1,138,2,2);
INSERT INTO key_line VALUES(1,162,1,1);
INSERT INTO key_line VALUES(1,174,2,2);
INSERT INTO key_line VALUES(1,183,2,2);
INSERT INTO key_line VALUES(1,201,1,1);
INSERT INTO key_line VALUES(1,204,2,2);
INSERT INTO key_line VALUES(1,216,1,1);
INSERT INTO key_line VALUES(1,218,1,1);
INSERT INTO key_line VALUES(1,251,1,1);
INSERT INTO key_line VALUES(1,253,1,1);
INSERT INTO key_line VALUES(1,261,1,1);
INSERT INTO key_line VALUES(1,268,2,2);
INSERT INTO key_line VALUES(1,275,2,2);
INSERT INTO key_line VALUES(1,281,2,2);
INSERT INTO key_line VALUES(1,294,2,2);
INSERT INTO key_line VALUES(1,301,1,1);
INSERT INTO key_line VALUES(1,310,1,1);
INSERT INTO key_line VALUES(1,321,2,2);
INSERT INTO key_line VALUES(1,345,2,2);
INSERT INTO key_line VALUES(1,365,2,2);
INSERT INTO key_line VALUES(1,379,2,2);
INSERT INTO key_line VALUES(1,380,1,1);
INSERT INTO key_line VALUES(1,384,1,1);
INSERT INTO key_line VALUES(1,419,2,2);
INSERT INTO key_line VALUES(1,438,1,1);
INSERT INTO key_line VALUES(1,459,1,1);
INSERT INTO key_line VALUES(1,460,2,2);
INSERT INTO key_line VALUES(1,465,2,2);
INSERT INTO key_line VALUES(1,476,2,2);
INSERT INTO key_line VALUES(1,485,2,2);
INSERT INTO key_line VALUES(1,490,2,2);
INSERT INTO key_line VALUES(1,501,2,2);
INSERT INTO key_line VALUES(1,569,1,1);
INSERT INTO key_line VALUES(1,570,1,1);
INSERT INTO key_line VALUES(1,571,1,1);
INSERT INTO key_line VALUES(1,586,1,1);
INSERT INTO key_line VALUES(1,594,2,2);
INSERT INTO key_line VALUES(1,607,1,1);
INSERT INTO key_line VALUES(1,613,2,2);
INSERT INTO key_line VALUES(1,627,1,1);
INSERT INTO key_line VALUES(1,641,2,2);
INSERT INTO key_line VALUES(1,643,2,2);
INSERT INTO key_line VALUES(1,649,2,2);
INSERT INTO key_line VALUES(1,687,1,1);
INSERT INTO key_line VALUES(1,693,2,2);
INSERT INTO key_line VALUES(1,713,1,1);
INSERT INTO key_line VALUES(1,738,2,2);
INSERT INTO key_line VALUES(1,739,2,2);
INSERT INTO key_line VALUES(1,741,2,2);
INSERT INTO key_line VALUES(1,748,1,1);
INSERT INTO key_line VALUES(1,789,1,1);
INSERT INTO key_line VALUES(1,794,2,2);
INSERT INTO key_line VALUES(1,796,2,2);
INSERT INTO key_line VALUES(1,802,1,1);
INSERT INTO key_line VALUES(1,813,2,2);
INSERT INTO key_line VALUES(1,834,1,1);
INSERT INTO key_line VALUES(1,842,1,1);
INSERT INTO key_line VALUES(1,849,1,1);
INSERT INTO key_line VALUES(1,851,1,1);
INSERT INTO key_line VALUES(1,852,1,1);
INSERT INTO key_line VALUES(1,923,2,2);
INSERT INTO key_line VALUES(1,934,2,2);
INSERT INTO key_line VALUES(1,951,2,2);
INSERT INTO key_line VALUES(1,965,1,1);
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
INSERT INTO place_taken VALUES(1,2,5,0,'nickname');
INSERT INTO place_taken VALUES(1,3,6,0,'signed');
INSERT INTO place_taken VALUES(1,4,7,0,'loose');
INSERT INTO place_taken VALUES(1,5,8,0,'nickname');
INSERT INTO place_taken VALUES(1,6,9,0,'loose');
INSERT INTO place_taken VALUES(1,7,10,0,'signed');
INSERT INTO place_taken VALUES(1,8,11,0,'signed');
INSERT INTO place_taken VALUES(1,9,12,1,'signed');
INSERT INTO place_taken VALUES(1,10,13,1,'signed');
INSERT INTO place_taken VALUES(2,1,3,0,'signed');
CREATE TABLE place_person (                -- [person] who sits there; the only link from answers to a name. A loose taster's goes at the close.
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  PRIMARY KEY (session_id, place),
  UNIQUE (session_id, taster_id),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place)
) STRICT, WITHOUT ROWID;
INSERT INTO place_person VALUES(1,10,1);
INSERT INTO place_person VALUES(1,2,3);
INSERT INTO place_person VALUES(1,5,4);
INSERT INTO place_person VALUES(1,1,5);
INSERT INTO place_person VALUES(2,1,5);
INSERT INTO place_person VALUES(1,3,7);
INSERT INTO place_person VALUES(1,9,8);
INSERT INTO place_person VALUES(1,7,10);
INSERT INTO place_person VALUES(1,8,11);
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
INSERT INTO voided VALUES(1,8,1,'mixed_up',34);
CREATE TABLE said_aloud (                  -- [grows] in whose hearing; no row: everybody's
  session_id   INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  PRIMARY KEY (session_id, seq, place),
  FOREIGN KEY (session_id, place) REFERENCES place (session_id, place),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
INSERT INTO said_aloud VALUES(1,23,5);
INSERT INTO said_aloud VALUES(1,23,7);
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
INSERT INTO hand_in VALUES(1,1,1,1,X'b4805fdb7ecb0435081b7fdcca64f89a','device',1778960941000,X'fe470013930418fcf680d47a75602892',16);
INSERT INTO hand_in VALUES(2,1,2,1,X'3e4833e34a7a9d731554613cfe738b75','device',1778961181000,X'ed5f77067ff0e036e735fe683b985a32',18);
INSERT INTO hand_in VALUES(3,1,3,1,X'b871914cabad93679b28b115d70525f7','device',1778961421000,X'18e67934d0c26bdc6787b119378bca26',20);
INSERT INTO hand_in VALUES(4,1,4,1,X'9f24825d54429251602043113861d1f8','device',1778961661000,X'1589f915b48f2df1802f67a7597d6ec4',22);
INSERT INTO hand_in VALUES(5,1,5,1,X'637916b7d9658feb14d3d9b91210c946','device',1778961961000,X'0134e142371e62636fa721910433fb1c',25);
INSERT INTO hand_in VALUES(6,1,6,1,X'0d146c670f92864afaafa7d98308bdf4','device',1778962201000,X'05571953b4a7a266db4d7cf49a254294',27);
INSERT INTO hand_in VALUES(7,1,7,1,X'd0701646b9b149bb367eaded21b8460f','device',1778962441000,X'c4deaa9049bda0662839d69911a6836d',29);
INSERT INTO hand_in VALUES(8,1,9,1,X'9f3ad7da50846c84e8c77286fec78fe9','device',1778962681000,X'f445bcaba0e32b3a9cefbc765e887d5e',31);
INSERT INTO hand_in VALUES(9,1,10,1,X'b45818ff9d52e5503a769d1c15d9d2ba','device',1778962921000,X'e66ce44ca5c936bba9da644872ab07e5',33);
INSERT INTO hand_in VALUES(10,2,1,1,X'6039b41af5cdc060595532672a44a0e9','file',1795624423684,X'4cb96e009198b0b38ce4794af83590a9',5);
CREATE TABLE answer (                      -- [person] goes with its hand-in
  hand_in_id   INTEGER NOT NULL REFERENCES hand_in (id) ON DELETE CASCADE,
  item         INTEGER NOT NULL,
  code         INTEGER NOT NULL DEFAULT 0, -- 0 = about the whole flight
  value        INTEGER,
  text_digest  BLOB CHECK (length(text_digest) = 32),                 -- sha256(salt of the words || text)
  PRIMARY KEY (hand_in_id, item, code),
  CHECK ((value IS NULL) <> (text_digest IS NULL))
) STRICT, WITHOUT ROWID;
INSERT INTO answer VALUES(1,1,0,379,NULL);
INSERT INTO answer VALUES(1,2,0,1,NULL);
INSERT INTO answer VALUES(1,3,0,6,NULL);
INSERT INTO answer VALUES(2,1,0,268,NULL);
INSERT INTO answer VALUES(2,2,0,2,NULL);
INSERT INTO answer VALUES(2,3,0,1,NULL);
INSERT INTO answer VALUES(2,4,0,NULL,X'8645de8b7d50c709c4a5d115f6aa867d86bffb046ef9ffe3444ef6b51d851aa5');
INSERT INTO answer VALUES(3,1,0,813,NULL);
INSERT INTO answer VALUES(3,2,0,2,NULL);
INSERT INTO answer VALUES(3,3,0,1,NULL);
INSERT INTO answer VALUES(4,1,0,852,NULL);
INSERT INTO answer VALUES(4,2,0,1,NULL);
INSERT INTO answer VALUES(4,3,0,6,NULL);
INSERT INTO answer VALUES(5,1,0,251,NULL);
INSERT INTO answer VALUES(5,2,0,1,NULL);
INSERT INTO answer VALUES(5,3,0,6,NULL);
INSERT INTO answer VALUES(5,4,0,NULL,X'08c461d566e0e46be9af92f985c02b4a41ae0d24d2e5b9602b8fe685369543c1');
INSERT INTO answer VALUES(6,1,0,183,NULL);
INSERT INTO answer VALUES(6,2,0,2,NULL);
INSERT INTO answer VALUES(6,3,0,2,NULL);
INSERT INTO answer VALUES(7,1,0,741,NULL);
INSERT INTO answer VALUES(7,2,0,1,NULL);
INSERT INTO answer VALUES(7,3,0,3,NULL);
INSERT INTO answer VALUES(8,1,0,261,NULL);
INSERT INTO answer VALUES(8,2,0,3,NULL);
INSERT INTO answer VALUES(8,3,0,1,NULL);
INSERT INTO answer VALUES(8,4,0,NULL,X'4aebe6445dfb1908db88f722549f5df714320bfe3367fa91d5217b671341f469');
INSERT INTO answer VALUES(9,1,0,687,NULL);
INSERT INTO answer VALUES(9,2,0,2,NULL);
INSERT INTO answer VALUES(9,3,0,2,NULL);
INSERT INTO answer VALUES(10,1,0,642,NULL);
INSERT INTO answer VALUES(10,2,0,3,NULL);
INSERT INTO answer VALUES(10,3,0,1,NULL);
INSERT INTO answer VALUES(10,4,0,NULL,X'67fd802125a67dd29ce0aac5956fdfb64426e50797264e1d76ef40118178977c');
CREATE TABLE answer_words (                -- [person] free text apart, so that it can be erased alone
  hand_in_id   INTEGER NOT NULL,
  item         INTEGER NOT NULL,
  code         INTEGER NOT NULL,
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 4000),
  PRIMARY KEY (hand_in_id, item, code),
  FOREIGN KEY (hand_in_id, item, code) REFERENCES answer (hand_in_id, item, code) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
INSERT INTO answer_words VALUES(2,4,0,X'416530d154cd6554b79c19c26d185766','a little vanilla');
INSERT INTO answer_words VALUES(5,4,0,X'0e74fc82ea45183810361145b7908df3','no idea, honestly');
INSERT INTO answer_words VALUES(8,4,0,X'916b46b0ae055f2439c204c8b262bb19','the oak is plain to taste');
INSERT INTO answer_words VALUES(10,4,0,X'c0ad3670a3d08b31d415133fbd23b1aa','drier');
CREATE TABLE remark (                      -- [person] what was said, a reason, a decision: text apart from the log
  session_id   INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  about        TEXT NOT NULL CHECK (about IN ('said', 'reason', 'decision')),
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 4000),
  PRIMARY KEY (session_id, seq),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
INSERT INTO remark VALUES(1,23,'said',X'8f7d16283526460350c728064f8d11dc','is one of these from the barrel?');
INSERT INTO remark VALUES(1,37,'decision',X'd754d140019f96035277a315131f15a5','a month in the cellar, then once more with ten people');
CREATE TABLE erasure (                     -- [grows] comes first, with its log entry; only then do the triggers below let go
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  what         TEXT NOT NULL CHECK (what IN ('words', 'everything')),
  seq          INTEGER NOT NULL,
  PRIMARY KEY (session_id, place, what),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
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
CREATE TRIGGER answer_fits BEFORE INSERT ON answer BEGIN
  SELECT RAISE(ABORT, 'answers: no such question') WHERE NOT EXISTS
    (SELECT 1 FROM hand_in h JOIN item i ON i.session_id = h.session_id AND i.item = NEW.item
      WHERE h.id = NEW.hand_in_id AND (NEW.value IS NULL OR i.low IS NULL OR NEW.value BETWEEN i.low AND i.high));
  SELECT RAISE(ABORT, 'answers: no such cup in this flight') WHERE EXISTS
    (SELECT 1 FROM hand_in h JOIN item i ON i.session_id = h.session_id AND i.item = NEW.item AND i.kind = 'choose'
      WHERE h.id = NEW.hand_in_id AND NOT EXISTS
            (SELECT 1 FROM cup c WHERE c.session_id = h.session_id AND c.code = NEW.value AND c.place = h.place AND c.round = h.round));
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
CREATE TRIGGER item_no_update BEFORE UPDATE ON item BEGIN SELECT RAISE(ABORT, 'item: kept as it is'); END;
CREATE TRIGGER item_no_delete BEFORE DELETE ON item BEGIN SELECT RAISE(ABORT, 'item: kept as it is'); END;
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
COMMIT;
