PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE store (                       -- [live] one row
  one          INTEGER PRIMARY KEY CHECK (one = 1),
  uid          TEXT NOT NULL CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  created_at   INTEGER NOT NULL,
  made_by      TEXT NOT NULL
) STRICT;
INSERT INTO store VALUES(1,'15f875fb9e82e66a44265c0bf974d168',1795950012156,'0.1.0');
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
INSERT INTO beverage VALUES(1,'39815843c0410cceff0670a79f561c0a','batch','beer','Amber ale no. 7',10480,10110,490,'gravities','known',NULL);
INSERT INTO beverage VALUES(2,'f788300b8578a8b002076752586e5a7c','batch','mead','Heather mead',10950,10080,1190,'gravities','known',NULL);
INSERT INTO beverage VALUES(3,'d31a72e8b6e183d99b357dbf14d9c259','batch','beer','Porter no. 4',10560,10140,560,'gravities','known',NULL);
INSERT INTO beverage VALUES(4,'fa8690394ad1296bfd24f5ae6bf3c14d','batch','cider','Windfall cider',10520,10010,660,'gravities','known',NULL);
INSERT INTO beverage VALUES(5,'558fae18a9e62b67cb1d3596a35e5ca5','reference','mead','Bought mead',NULL,NULL,1150,'label','not_known',NULL);
INSERT INTO beverage VALUES(6,'bc14c2e4bf3a907fe4f460d208fd6c9f','reference','beer','Bought porter',NULL,NULL,540,'label','known',NULL);
CREATE TABLE beverage_allergen (           -- [live]
  beverage_id  INTEGER NOT NULL REFERENCES beverage (id) ON DELETE CASCADE,
  allergen     TEXT NOT NULL CHECK (allergen IN ('gluten', 'egg', 'fish', 'milk', 'nuts', 'peanuts', 'soy', 'sesame', 'mustard',
                                                 'celery', 'lupin', 'molluscs', 'crustaceans', 'sulphites')),
  PRIMARY KEY (beverage_id, allergen)
) STRICT, WITHOUT ROWID;
INSERT INTO beverage_allergen VALUES(1,'gluten');
INSERT INTO beverage_allergen VALUES(2,'sulphites');
INSERT INTO beverage_allergen VALUES(3,'gluten');
INSERT INTO beverage_allergen VALUES(4,'sulphites');
INSERT INTO beverage_allergen VALUES(6,'gluten');
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
INSERT INTO beverage_maker VALUES(4,1);
INSERT INTO beverage_maker VALUES(1,8);
INSERT INTO beverage_maker VALUES(2,8);
INSERT INTO beverage_maker VALUES(3,8);
INSERT INTO beverage_maker VALUES(4,8);
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
INSERT INTO lot VALUES(1,'d87272ec56014e8ea8d04b02423d21fd',1,'hopped five days','2026-05-20',NULL,500,'cellar, 12 degrees','',NULL);
INSERT INTO lot VALUES(2,'89fc1ac58612f24ec5045c5bfd29eed5',1,'hopped two days','2026-05-20',NULL,500,'cellar, 12 degrees','',NULL);
INSERT INTO lot VALUES(3,'e74d471d3f008919d2cad5016c7e6e09',2,'bottled 12 April','2026-04-12',NULL,750,'pantry, dark','',NULL);
INSERT INTO lot VALUES(4,'5ea2ea947dc4a803a3d156dc0200e4a4',3,'bottled 4 February, kept warm','2026-02-04',NULL,500,'pantry, 22 degrees','',NULL);
INSERT INTO lot VALUES(5,'fb88f3a7a4c1d643652f231c47ed6a9f',3,'bottled 4 February','2026-02-04',NULL,500,'cellar, 12 degrees','',NULL);
INSERT INTO lot VALUES(6,'3a34301a7a2371dbababa077c0b58262',4,'with oak, bottled 1 March','2026-03-01',NULL,750,'cellar, 12 degrees','',NULL);
INSERT INTO lot VALUES(7,'46781034c262f527338f9f182d39f7fc',4,'plain, bottled 1 March','2026-03-01',NULL,750,'cellar, 12 degrees','',NULL);
INSERT INTO lot VALUES(8,'0a078475edb7745447e09638a8faaba1',5,'older vintage',NULL,NULL,700,'pantry, dark','a market stall',NULL);
INSERT INTO lot VALUES(9,'e143bf16ee2edeb1d62566cac0b8dd35',5,'younger vintage',NULL,NULL,700,'pantry, dark','a market stall',NULL);
INSERT INTO lot VALUES(10,'61ca2367d41b8f2b82754db07580aaa3',6,'bought in March',NULL,'2026-11-30',500,'cellar, 12 degrees','a shop in town',NULL);
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
INSERT INTO stock_move VALUES(1,1,NULL,1795950012218,'added',12);
INSERT INTO stock_move VALUES(2,2,NULL,1795950012218,'added',12);
INSERT INTO stock_move VALUES(3,3,NULL,1795950012218,'added',11);
INSERT INTO stock_move VALUES(4,4,NULL,1795950012219,'added',8);
INSERT INTO stock_move VALUES(5,5,NULL,1795950012219,'added',23);
INSERT INTO stock_move VALUES(6,6,NULL,1795950012219,'added',15);
INSERT INTO stock_move VALUES(7,7,NULL,1795950012219,'added',21);
INSERT INTO stock_move VALUES(8,8,NULL,1795950012219,'added',2);
INSERT INTO stock_move VALUES(9,9,NULL,1795950012221,'added',5);
INSERT INTO stock_move VALUES(10,10,NULL,1795950012221,'added',11);
INSERT INTO stock_move VALUES(11,7,2,1795950013143,'held',-1);
INSERT INTO stock_move VALUES(12,6,2,1795950013143,'held',-1);
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
INSERT INTO batch_note VALUES(1,'ea64439f1d65e7e5b1fd84cb336aaa2b',1,NULL,'2026-05-14','addition',NULL,'dry hops, half for two days and half for five');
INSERT INTO batch_note VALUES(2,'7eb6dbedfa51a2b61dd23a6c702610a8',1,NULL,'2026-05-02','reading',10480,'brewed');
INSERT INTO batch_note VALUES(3,'36d9039a7b21abbfcd03118af3f1cdd0',2,NULL,'2026-01-12','racked',NULL,'clear after ten weeks');
INSERT INTO batch_note VALUES(4,'1bbc6fd3a7dc9b1262c6fd2f3fed7e86',3,NULL,'2026-02-04','bottled',NULL,'6 g sugar a litre');
INSERT INTO batch_note VALUES(5,'740dfe8d87bc2da65cfc3e2d0558db2d',3,NULL,'2026-02-01','reading',10140,'steady for three days');
INSERT INTO batch_note VALUES(6,'9bbba0cc1f02106256f1efbc63d695ae',3,NULL,'2026-01-17','reading',10560,'brewed, pitched at 18 degrees');
INSERT INTO batch_note VALUES(7,'0b57819993bff3aa7a2be2ebf043741f',4,NULL,'2026-01-21','addition',NULL,'oak chips in the second half, two weeks');
INSERT INTO batch_note VALUES(8,'ac7932f7a54271f15c59d08967386872',4,NULL,'2026-01-20','stabilised',NULL,'half of it');
CREATE TABLE session (                     -- [live] title and archiving only; everything else is plan or log
  id           INTEGER PRIMARY KEY,
  uid          TEXT NOT NULL UNIQUE CHECK (length(uid) = 32 AND uid NOT GLOB '*[^0-9a-f]*'),
  title        TEXT NOT NULL CHECK (length(title) <= 200),
  guest_title  TEXT NOT NULL DEFAULT '' CHECK (length(guest_title) <= 200),
  came_from    TEXT NOT NULL CHECK (came_from IN ('here', 'import', 'demo')),
  created_at   INTEGER NOT NULL,
  archived_at  INTEGER
) STRICT;
INSERT INTO session VALUES(1,'75d0d8dfd50b7761004732ace1c2184e','Amber ale: what did the longer hops change?','Pale beer again','import',1785438001000,NULL);
INSERT INTO session VALUES(2,'8592c4acdeac9dfa60c610a2f8de9cd1','What does the windfall cider lack?','Cider in the garden','here',1795950012499,NULL);
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
INSERT INTO log VALUES(1,1,1785438004000,'sealed','sealed','{"commitment":"cbb299f5b2e59ea6d06ff2f46dd4a97200fc06b495cbaad905f13592f09bbbd2","plan":"de47791aa3436d4ada9a9789ac69d45547c7894efaa69fc1be9956284420160f","schema":1}',X'0000000000000000000000000000000000000000000000000000000000000000',X'4bad547d78bd27fe2c10b994a23e967f8d6c0067437e5d0d33fef494cd3afb33');
INSERT INTO log VALUES(1,2,1785438601000,'pour_sheet_opened','sealed','{}',X'4bad547d78bd27fe2c10b994a23e967f8d6c0067437e5d0d33fef494cd3afb33',X'fd50af2dcd5f9b608bb995d711163758c94d8a2959c65dc2771e4570c84963ff');
INSERT INTO log VALUES(1,3,1785439801000,'poured','sealed','{}',X'fd50af2dcd5f9b608bb995d711163758c94d8a2959c65dc2771e4570c84963ff',X'e2bca4bb2e27ef26ae4a3e504451373a173f775454af6f96763b7f70bc551ff8');
INSERT INTO log VALUES(1,4,1785439861000,'place_taken','sealed','{"as":"signed","maker":false,"place":1}',X'e2bca4bb2e27ef26ae4a3e504451373a173f775454af6f96763b7f70bc551ff8',X'6c40417a14b7a56cf875af1e55c30f372e47182606fcf009bf9a1fef4ef9b51e');
INSERT INTO log VALUES(1,5,1785439921000,'place_taken','sealed','{"as":"loose","maker":false,"place":2}',X'6c40417a14b7a56cf875af1e55c30f372e47182606fcf009bf9a1fef4ef9b51e',X'764382cfe03f920219632f9c0d048f0968cedcab306e357e31c7598de797e461');
INSERT INTO log VALUES(1,6,1785439981000,'place_taken','sealed','{"as":"signed","maker":false,"place":3}',X'764382cfe03f920219632f9c0d048f0968cedcab306e357e31c7598de797e461',X'51970e6e02790fc74bb9da8dbf78d952a24e18c0cb1aad22bb4f21c451072c62');
INSERT INTO log VALUES(1,7,1785440041000,'place_taken','sealed','{"as":"signed","maker":false,"place":4}',X'51970e6e02790fc74bb9da8dbf78d952a24e18c0cb1aad22bb4f21c451072c62',X'b79f7fada610c2d28f156312e60fe44f6a74ce45ecf61cb74c0a521e455d132b');
INSERT INTO log VALUES(1,8,1785440101000,'place_taken','sealed','{"as":"loose","maker":false,"place":5}',X'b79f7fada610c2d28f156312e60fe44f6a74ce45ecf61cb74c0a521e455d132b',X'e3cf84e56379f720a933e2d16ed1cdcc2b2cb3e07efdbb5351dbc203ee7a3c87');
INSERT INTO log VALUES(1,9,1785440161000,'place_taken','sealed','{"as":"signed","maker":false,"place":6}',X'e3cf84e56379f720a933e2d16ed1cdcc2b2cb3e07efdbb5351dbc203ee7a3c87',X'acb5831217b736945b406d761be8c2180ec709a7fd7e8fa066ce2b2c20ca6f1f');
INSERT INTO log VALUES(1,10,1785440221000,'place_taken','sealed','{"as":"signed","maker":false,"place":7}',X'acb5831217b736945b406d761be8c2180ec709a7fd7e8fa066ce2b2c20ca6f1f',X'1c605be66893ea0b4e03f6667b9e8409a4d0a6bcac72d5e37721161f34789c0a');
INSERT INTO log VALUES(1,11,1785440281000,'place_taken','sealed','{"as":"loose","maker":false,"place":8}',X'1c605be66893ea0b4e03f6667b9e8409a4d0a6bcac72d5e37721161f34789c0a',X'3d15150740e6e444a20965b8926d9991049c745427830a9bcf572a20059465cb');
INSERT INTO log VALUES(1,12,1785440341000,'place_taken','sealed','{"as":"signed","maker":true,"place":9}',X'3d15150740e6e444a20965b8926d9991049c745427830a9bcf572a20059465cb',X'e065cfe3f26d927cac995eefd1ceee99abef18cfd5eb84e7064c6925f7cb0c0a');
INSERT INTO log VALUES(1,13,1785440342000,'opened','tasting','{}',X'e065cfe3f26d927cac995eefd1ceee99abef18cfd5eb84e7064c6925f7cb0c0a',X'283a150afe49cb2b107ee3ba8ab621cf0938bc5f08a4d8f849a0a0f11103e54d');
INSERT INTO log VALUES(1,14,1785440342000,'began','tasting','{"place":1,"round":1}',X'283a150afe49cb2b107ee3ba8ab621cf0938bc5f08a4d8f849a0a0f11103e54d',X'cbe67eebb837ddb9292374dda795e319d1782eb7b6564327648f2cd6fe06ea0a');
INSERT INTO log VALUES(1,15,1785440821000,'answered','tasting','{"digest":"c91d2c6c3ed1fab583714d9a0bfb95bac3ed550669a0c09a0306910eda9afb56","place":1,"round":1}',X'cbe67eebb837ddb9292374dda795e319d1782eb7b6564327648f2cd6fe06ea0a',X'd26583df0bdda4ab7f6fd43661b595ca8d40ccaf163e5831a812b0dc1a44af07');
INSERT INTO log VALUES(1,16,1785440822000,'began','tasting','{"place":2,"round":1}',X'd26583df0bdda4ab7f6fd43661b595ca8d40ccaf163e5831a812b0dc1a44af07',X'e6c5171423a37a3f838fa710c68747c1df7c4710a48257adf84485b45f60c8cb');
INSERT INTO log VALUES(1,17,1785441301000,'answered','tasting','{"digest":"6f7e7c61769c9f76c2ea9d10fa369f8fbe4adab91769463ef281e0dd779bad35","place":2,"round":1}',X'e6c5171423a37a3f838fa710c68747c1df7c4710a48257adf84485b45f60c8cb',X'0233a324d2016a5fd335c3fb5bd48a77d5d6dcb91653e5c70a5f84263bb6fc69');
INSERT INTO log VALUES(1,18,1785441302000,'began','tasting','{"place":3,"round":1}',X'0233a324d2016a5fd335c3fb5bd48a77d5d6dcb91653e5c70a5f84263bb6fc69',X'ff012624e1aa1a77321a4dfe819e4761063953d5d2554a745a4f62e303fc87a4');
INSERT INTO log VALUES(1,19,1785441781000,'answered','tasting','{"digest":"07cf68fac3499b9572aa203935f1ce803043ba72528fa2ff6ad666422d9930cf","place":3,"round":1}',X'ff012624e1aa1a77321a4dfe819e4761063953d5d2554a745a4f62e303fc87a4',X'd14da370a9f2a711857e8c40228fa39eb9f8d8079f003bc96bff5c56a1f3e67e');
INSERT INTO log VALUES(1,20,1785441782000,'began','tasting','{"place":4,"round":1}',X'd14da370a9f2a711857e8c40228fa39eb9f8d8079f003bc96bff5c56a1f3e67e',X'5cae70152b0df2b9192e05bad21f4a4cecf155090f3f01cf50cf4788857ae20e');
INSERT INTO log VALUES(1,21,1785442261000,'answered','tasting','{"digest":"99beed04833c113b2c637cb3345f8393fba2be0d9d272310653adc59e3f27adb","place":4,"round":1}',X'5cae70152b0df2b9192e05bad21f4a4cecf155090f3f01cf50cf4788857ae20e',X'e29b574263d4baf3a6590a4a1f4a4081159d9514c4510ca49ec2aa8eb7fbc6e8');
INSERT INTO log VALUES(1,22,1785442262000,'began','tasting','{"place":5,"round":1}',X'e29b574263d4baf3a6590a4a1f4a4081159d9514c4510ca49ec2aa8eb7fbc6e8',X'00bb668962d2d0cdd5c37a6f6727881cb3ff51e9a66c13a5aad480bc3f53939f');
INSERT INTO log VALUES(1,23,1785442741000,'answered','tasting','{"digest":"b0975d7c10fd3bf0ef7eb3b1d8b0fad0c942baa86da00de75f40cc893dd2fdcf","place":5,"round":1}',X'00bb668962d2d0cdd5c37a6f6727881cb3ff51e9a66c13a5aad480bc3f53939f',X'3cf900a691c561b03160cc5fa9c8244541819c57ee7e7ec034eb04fad06ca80b');
INSERT INTO log VALUES(1,24,1785442742000,'began','tasting','{"place":6,"round":1}',X'3cf900a691c561b03160cc5fa9c8244541819c57ee7e7ec034eb04fad06ca80b',X'cec9f09a3b226806998a94f6f43be5fcc97e95cc3c93ca21ffce5fc31cd902d2');
INSERT INTO log VALUES(1,25,1785443221000,'answered','tasting','{"digest":"3931a2c1e8f8aa9c56259f280a6f20678b26fb002598d4f3ff36b2801a3bfc54","place":6,"round":1}',X'cec9f09a3b226806998a94f6f43be5fcc97e95cc3c93ca21ffce5fc31cd902d2',X'fd9b1a4e6d6efade351926e34977a74c381a2fa6199b7db864df2f24f84b9433');
INSERT INTO log VALUES(1,26,1785443222000,'began','tasting','{"place":7,"round":1}',X'fd9b1a4e6d6efade351926e34977a74c381a2fa6199b7db864df2f24f84b9433',X'84f8dcd79d35137a6065bacc407b7b22cd6ff4c799b986b6a2cd9d6299de57da');
INSERT INTO log VALUES(1,27,1785443701000,'answered','tasting','{"digest":"1671abd1df3b362cc2b63014296021674e14feb15c0d6f8f56a42422f9419415","place":7,"round":1}',X'84f8dcd79d35137a6065bacc407b7b22cd6ff4c799b986b6a2cd9d6299de57da',X'5e24b883607e6c6f40cd22760162806c9bddd5bb04f16ae2ebf3a6ea1ac7fdf0');
INSERT INTO log VALUES(1,28,1785443702000,'began','tasting','{"place":8,"round":1}',X'5e24b883607e6c6f40cd22760162806c9bddd5bb04f16ae2ebf3a6ea1ac7fdf0',X'4a6f6096f49223cea20a2b85ba5b7de90d4e5cda296c2a553c74d4c4555920fb');
INSERT INTO log VALUES(1,29,1785444181000,'answered','tasting','{"digest":"247d1b32f9ccabdec5b92e4d198afc544fccde6fed7fd82e9e633d7048e18638","place":8,"round":1}',X'4a6f6096f49223cea20a2b85ba5b7de90d4e5cda296c2a553c74d4c4555920fb',X'94d82a423fad04e9f48e43831fc66349c0ba3f2a6d09d6176fff02c045f705a4');
INSERT INTO log VALUES(1,30,1785444182000,'began','tasting','{"place":9,"round":1}',X'94d82a423fad04e9f48e43831fc66349c0ba3f2a6d09d6176fff02c045f705a4',X'a4f90e7d6be464cc2660b5dcacdc5a20e73e53638b06332de3796b88facc9f9d');
INSERT INTO log VALUES(1,31,1785444661000,'answered','tasting','{"digest":"3b9a1403df96d264abe4db8b86de37d7daa56b26db1e337614ff207a64ed5c91","place":9,"round":1}',X'a4f90e7d6be464cc2660b5dcacdc5a20e73e53638b06332de3796b88facc9f9d',X'670f0508801c6950c519e29cdf3bedb0a63e37ad5b939938f260eb936c04d0f4');
INSERT INTO log VALUES(1,32,1785444961000,'closed','closed','{"missing":0}',X'670f0508801c6950c519e29cdf3bedb0a63e37ad5b939938f260eb936c04d0f4',X'756486c30d2af932df5da9532d27385c3f4e96b24ed6726fb8dcea1875a9c70f');
INSERT INTO log VALUES(1,33,1785444962000,'revealed','revealed','{}',X'756486c30d2af932df5da9532d27385c3f4e96b24ed6726fb8dcea1875a9c70f',X'7f6d98ae34c9ee9e90bff57dba6f2406d30f38a6bab75ec3bb1bad5300f45474');
INSERT INTO log VALUES(1,34,1785446161000,'decided','revealed','{"digest":"587fa9e3990b769fc55eab0868821e373422d1f19197a4f2636bee55f68f514d"}',X'7f6d98ae34c9ee9e90bff57dba6f2406d30f38a6bab75ec3bb1bad5300f45474',X'2ca615ee3fedd0e509862511ec7ad7e0ebe99692e9a6322c373125719ad1cdce');
INSERT INTO log VALUES(2,1,1795950013143,'sealed','sealed','{"commitment":"df05c76918d65e716701d11495916fd9f3a25aa06741a997bc809488d6d2f8cb","plan":"711ee7b5199991e1d72e0817a81d3d2df24cc06dbebd7a06134354fab61ab6e2","schema":1}',X'0000000000000000000000000000000000000000000000000000000000000000',X'8d0951033640d0cc770cf059ed42d1f1eafb26f1890f6d93958c9d8a4cc5215d');
INSERT INTO log VALUES(2,2,1795950013144,'pour_sheet_opened','sealed','{}',X'8d0951033640d0cc770cf059ed42d1f1eafb26f1890f6d93958c9d8a4cc5215d',X'ac6669f86305efd0cbccc20b17abb60905b6b8cf3ec71a81959ffd6848ba86af');
INSERT INTO log VALUES(2,3,1795950013223,'place_taken','sealed','{"as":"signed","maker":false,"place":1}',X'ac6669f86305efd0cbccc20b17abb60905b6b8cf3ec71a81959ffd6848ba86af',X'd563ce01e024d2b7ba5305a65d669d86a254fee62468189dd4b6fe85730c6de4');
INSERT INTO log VALUES(2,4,1795950013285,'place_taken','sealed','{"as":"loose","maker":false,"place":2}',X'd563ce01e024d2b7ba5305a65d669d86a254fee62468189dd4b6fe85730c6de4',X'438aa75ec4230dccfbaeec816385cb8101191463d3c7b2f793b89394ac198c39');
INSERT INTO log VALUES(2,5,1795950013333,'poured','sealed','{}',X'438aa75ec4230dccfbaeec816385cb8101191463d3c7b2f793b89394ac198c39',X'2f11ada6e2b7857aedee25afab71b109474af9edf4b50270e38c27b61c9a0664');
INSERT INTO log VALUES(2,6,1795950020636,'opened','tasting','{}',X'2f11ada6e2b7857aedee25afab71b109474af9edf4b50270e38c27b61c9a0664',X'5025c6a1614dbf2f751cdfea88be37f3b7de2f900ad0c25f1df1fb647ffa9a4b');
INSERT INTO log VALUES(2,7,1795950020636,'answered','tasting','{"digest":"51f32c310e04247cae81d1bbada8ebc1c9e45d66a52deaec3f628731b830a2fb","place":1,"round":1}',X'5025c6a1614dbf2f751cdfea88be37f3b7de2f900ad0c25f1df1fb647ffa9a4b',X'3c3fcacdd84471b6f6c2323f4480328bb6d981ad85d8806aa3a0ff5ebde4a32b');
CREATE TABLE session_plan (                -- [frozen] names, strengths, allergens as they were; reports read these, never the live shelf
  session_id   INTEGER PRIMARY KEY REFERENCES session (id),
  body         TEXT NOT NULL CHECK (body GLOB '{*}'),     -- canonical JSON, hashed
  question     TEXT NOT NULL,              -- as in the body, for lists
  commitment   BLOB NOT NULL CHECK (length(commitment) = 32),
  seal_mark    TEXT NOT NULL CHECK (length(seal_mark) = 11)
) STRICT;
INSERT INTO session_plan VALUES(1,'{"analysis":{"alpha_pm":50,"gamma_pm":300,"limit_pm":null,"seeks":"difference","test":"by_taster"},"ceiling_g":20,"claim":"people","country":"GB","cup_ml":20,"cups":[{"code":431,"place":1,"position":1,"round":1,"spare":0},{"code":247,"place":1,"position":1,"round":1,"spare":1},{"code":259,"place":1,"position":2,"round":1,"spare":0},{"code":397,"place":1,"position":2,"round":1,"spare":1},{"code":586,"place":1,"position":3,"round":1,"spare":0},{"code":309,"place":1,"position":3,"round":1,"spare":1},{"code":659,"place":2,"position":1,"round":1,"spare":0},{"code":590,"place":2,"position":1,"round":1,"spare":1},{"code":945,"place":2,"position":2,"round":1,"spare":0},{"code":785,"place":2,"position":2,"round":1,"spare":1},{"code":536,"place":2,"position":3,"round":1,"spare":0},{"code":617,"place":2,"position":3,"round":1,"spare":1},{"code":318,"place":3,"position":1,"round":1,"spare":0},{"code":580,"place":3,"position":1,"round":1,"spare":1},{"code":720,"place":3,"position":2,"round":1,"spare":0},{"code":783,"place":3,"position":2,"round":1,"spare":1},{"code":568,"place":3,"position":3,"round":1,"spare":0},{"code":697,"place":3,"position":3,"round":1,"spare":1},{"code":453,"place":4,"position":1,"round":1,"spare":0},{"code":395,"place":4,"position":1,"round":1,"spare":1},{"code":527,"place":4,"position":2,"round":1,"spare":0},{"code":614,"place":4,"position":2,"round":1,"spare":1},{"code":489,"place":4,"position":3,"round":1,"spare":0},{"code":768,"place":4,"position":3,"round":1,"spare":1},{"code":129,"place":5,"position":1,"round":1,"spare":0},{"code":738,"place":5,"position":1,"round":1,"spare":1},{"code":940,"place":5,"position":2,"round":1,"spare":0},{"code":283,"place":5,"position":2,"round":1,"spare":1},{"code":501,"place":5,"position":3,"round":1,"spare":0},{"code":854,"place":5,"position":3,"round":1,"spare":1},{"code":120,"place":6,"position":1,"round":1,"spare":0},{"code":958,"place":6,"position":1,"round":1,"spare":1},{"code":105,"place":6,"position":2,"round":1,"spare":0},{"code":648,"place":6,"position":2,"round":1,"spare":1},{"code":670,"place":6,"position":3,"round":1,"spare":0},{"code":603,"place":6,"position":3,"round":1,"spare":1},{"code":647,"place":7,"position":1,"round":1,"spare":0},{"code":420,"place":7,"position":1,"round":1,"spare":1},{"code":173,"place":7,"position":2,"round":1,"spare":0},{"code":509,"place":7,"position":2,"round":1,"spare":1},{"code":497,"place":7,"position":3,"round":1,"spare":0},{"code":576,"place":7,"position":3,"round":1,"spare":1},{"code":137,"place":8,"position":1,"round":1,"spare":0},{"code":705,"place":8,"position":1,"round":1,"spare":1},{"code":482,"place":8,"position":2,"round":1,"spare":0},{"code":972,"place":8,"position":2,"round":1,"spare":1},{"code":781,"place":8,"position":3,"round":1,"spare":0},{"code":315,"place":8,"position":3,"round":1,"spare":1},{"code":840,"place":9,"position":1,"round":1,"spare":0},{"code":973,"place":9,"position":1,"round":1,"spare":1},{"code":490,"place":9,"position":2,"round":1,"spare":0},{"code":305,"place":9,"position":2,"round":1,"spare":1},{"code":729,"place":9,"position":3,"round":1,"spare":0},{"code":679,"place":9,"position":3,"round":1,"spare":1}],"items":[{"cup":true,"high":100,"item":1,"kind":"line","limit":10,"low":0,"main":true,"required":true,"word":"hops"},{"cup":true,"high":100,"item":2,"kind":"line","limit":10,"low":0,"main":true,"required":true,"word":"bitter"},{"cup":true,"high":9,"item":3,"kind":"liking","low":1,"required":true}],"lots":[{"abv_bp":490,"allergens":["gluten"],"best_before":"","beverage":"Amber ale no. 7","bottle_ml":500,"ingredients":"known","kind":"beer","lot":"d87272ec56014e8ea8d04b02423d21fd","name":"hopped five days","origin":"batch","packaged_on":"2026-05-20","slot":1,"storage":"cellar, 12 degrees"},{"abv_bp":490,"allergens":["gluten"],"best_before":"","beverage":"Amber ale no. 7","bottle_ml":500,"ingredients":"known","kind":"beer","lot":"89fc1ac58612f24ec5045c5bfd29eed5","name":"hopped two days","origin":"batch","packaged_on":"2026-05-20","role":"reference","slot":2,"storage":"cellar, 12 degrees"}],"makers":1,"method":"sheet","panel":8,"places":9,"pourer":true,"promises":{"not_shown":"f66a4dc60d80176680527bd3a22a3708045548bc00e582f98259fc0f1d794d33","shown":"2d1b31bbafedbac4dd35c0226539cd8827c29bd19df6a39347f786e7fc03e051"},"question":"lacks","rounds":1,"sheet":{"cleanser":"water","duplicate":true,"orders":[[1,3,2],[2,1,3],[3,2,1],[2,3,1],[3,1,2],[1,2,3]],"pause_s":30},"spares":0}','lacks',X'cbb299f5b2e59ea6d06ff2f46dd4a97200fc06b495cbaad905f13592f09bbbd2','towu foli 5');
INSERT INTO session_plan VALUES(2,'{"analysis":{"alpha_pm":50,"gamma_pm":300,"limit_pm":null,"seeks":"difference","test":"by_taster"},"ceiling_g":20,"claim":"people","country":"GB","cup_ml":20,"cups":[{"code":639,"place":1,"position":1,"round":1,"spare":0},{"code":357,"place":1,"position":1,"round":1,"spare":1},{"code":841,"place":1,"position":2,"round":1,"spare":0},{"code":762,"place":1,"position":2,"round":1,"spare":1},{"code":950,"place":1,"position":3,"round":1,"spare":0},{"code":973,"place":1,"position":3,"round":1,"spare":1},{"code":951,"place":2,"position":1,"round":1,"spare":0},{"code":679,"place":2,"position":1,"round":1,"spare":1},{"code":815,"place":2,"position":2,"round":1,"spare":0},{"code":295,"place":2,"position":2,"round":1,"spare":1},{"code":267,"place":2,"position":3,"round":1,"spare":0},{"code":148,"place":2,"position":3,"round":1,"spare":1},{"code":402,"place":3,"position":1,"round":1,"spare":0},{"code":782,"place":3,"position":1,"round":1,"spare":1},{"code":628,"place":3,"position":2,"round":1,"spare":0},{"code":803,"place":3,"position":2,"round":1,"spare":1},{"code":839,"place":3,"position":3,"round":1,"spare":0},{"code":857,"place":3,"position":3,"round":1,"spare":1},{"code":129,"place":4,"position":1,"round":1,"spare":0},{"code":593,"place":4,"position":1,"round":1,"spare":1},{"code":483,"place":4,"position":2,"round":1,"spare":0},{"code":692,"place":4,"position":2,"round":1,"spare":1},{"code":934,"place":4,"position":3,"round":1,"spare":0},{"code":213,"place":4,"position":3,"round":1,"spare":1}],"items":[{"cup":true,"high":100,"item":1,"kind":"line","limit":10,"low":0,"main":true,"required":true,"word":"apple"},{"cup":true,"high":null,"item":2,"kind":"worst","low":null,"required":true},{"cup":true,"high":9,"item":3,"kind":"liking","low":1,"required":true}],"lots":[{"abv_bp":660,"allergens":["sulphites"],"best_before":"","beverage":"Windfall cider","bottle_ml":750,"ingredients":"known","kind":"cider","lot":"46781034c262f527338f9f182d39f7fc","name":"plain, bottled 1 March","origin":"batch","packaged_on":"2026-03-01","slot":1,"storage":"cellar, 12 degrees"},{"abv_bp":660,"allergens":["sulphites"],"best_before":"","beverage":"Windfall cider","bottle_ml":750,"ingredients":"known","kind":"cider","lot":"3a34301a7a2371dbababa077c0b58262","name":"with oak, bottled 1 March","origin":"batch","packaged_on":"2026-03-01","role":"reference","slot":2,"storage":"cellar, 12 degrees"}],"makers":0,"method":"sheet","panel":3,"places":4,"pourer":true,"promises":{},"question":"lacks","rounds":1,"sheet":{"cleanser":"water","duplicate":true,"orders":[[1,3,2],[2,1,3],[3,2,1],[2,3,1],[3,1,2],[1,2,3]],"pause_s":30},"spares":1}','lacks',X'df05c76918d65e716701d11495916fd9f3a25aa06741a997bc809488d6d2f8cb','vuta kudu 5');
CREATE TABLE session_lot (                 -- [frozen] slot = the order in which the plan names its lots
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  slot         INTEGER NOT NULL CHECK (slot BETWEEN 1 AND 40),
  lot_id       INTEGER NOT NULL REFERENCES lot (id),
  PRIMARY KEY (session_id, slot)
) STRICT, WITHOUT ROWID;
INSERT INTO session_lot VALUES(1,1,1);
INSERT INTO session_lot VALUES(1,2,2);
INSERT INTO session_lot VALUES(2,2,6);
INSERT INTO session_lot VALUES(2,1,7);
CREATE TABLE promise (                     -- [person] what will be done in each outcome; the plan holds the digests
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  outcome      TEXT NOT NULL CHECK (outcome IN ('shown', 'not_shown', 'alike')),
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 500),
  PRIMARY KEY (session_id, outcome)
) STRICT, WITHOUT ROWID;
INSERT INTO promise VALUES(1,'not_shown',X'7e0c27c5c9c2c7be2e3a6ceb14649fdf','leave the recipe alone');
INSERT INTO promise VALUES(1,'shown',X'df30c2c18c82234e845008bf092014c0','change one thing and pour it again');
CREATE TABLE invited (                     -- [person] who was counted at the plan, and who pours
  session_id   INTEGER NOT NULL REFERENCES session_plan (session_id),
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  pours        INTEGER NOT NULL CHECK (pours IN (0, 1)),
  is_maker     INTEGER NOT NULL CHECK (is_maker IN (0, 1)),
  PRIMARY KEY (session_id, taster_id)
) STRICT, WITHOUT ROWID;
INSERT INTO invited VALUES(2,3,0,0);
INSERT INTO invited VALUES(2,5,0,0);
INSERT INTO invited VALUES(2,7,0,0);
INSERT INTO invited VALUES(2,11,1,0);
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
INSERT INTO place VALUES(2,1,0);
INSERT INTO place VALUES(2,2,0);
INSERT INTO place VALUES(2,3,0);
INSERT INTO place VALUES(2,4,1);
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
INSERT INTO cup VALUES(1,105,6,1,2,0);
INSERT INTO cup VALUES(1,120,6,1,1,0);
INSERT INTO cup VALUES(1,129,5,1,1,0);
INSERT INTO cup VALUES(1,137,8,1,1,0);
INSERT INTO cup VALUES(1,173,7,1,2,0);
INSERT INTO cup VALUES(1,247,1,1,1,1);
INSERT INTO cup VALUES(1,259,1,1,2,0);
INSERT INTO cup VALUES(1,283,5,1,2,1);
INSERT INTO cup VALUES(1,305,9,1,2,1);
INSERT INTO cup VALUES(1,309,1,1,3,1);
INSERT INTO cup VALUES(1,315,8,1,3,1);
INSERT INTO cup VALUES(1,318,3,1,1,0);
INSERT INTO cup VALUES(1,395,4,1,1,1);
INSERT INTO cup VALUES(1,397,1,1,2,1);
INSERT INTO cup VALUES(1,420,7,1,1,1);
INSERT INTO cup VALUES(1,431,1,1,1,0);
INSERT INTO cup VALUES(1,453,4,1,1,0);
INSERT INTO cup VALUES(1,482,8,1,2,0);
INSERT INTO cup VALUES(1,489,4,1,3,0);
INSERT INTO cup VALUES(1,490,9,1,2,0);
INSERT INTO cup VALUES(1,497,7,1,3,0);
INSERT INTO cup VALUES(1,501,5,1,3,0);
INSERT INTO cup VALUES(1,509,7,1,2,1);
INSERT INTO cup VALUES(1,527,4,1,2,0);
INSERT INTO cup VALUES(1,536,2,1,3,0);
INSERT INTO cup VALUES(1,568,3,1,3,0);
INSERT INTO cup VALUES(1,576,7,1,3,1);
INSERT INTO cup VALUES(1,580,3,1,1,1);
INSERT INTO cup VALUES(1,586,1,1,3,0);
INSERT INTO cup VALUES(1,590,2,1,1,1);
INSERT INTO cup VALUES(1,603,6,1,3,1);
INSERT INTO cup VALUES(1,614,4,1,2,1);
INSERT INTO cup VALUES(1,617,2,1,3,1);
INSERT INTO cup VALUES(1,647,7,1,1,0);
INSERT INTO cup VALUES(1,648,6,1,2,1);
INSERT INTO cup VALUES(1,659,2,1,1,0);
INSERT INTO cup VALUES(1,670,6,1,3,0);
INSERT INTO cup VALUES(1,679,9,1,3,1);
INSERT INTO cup VALUES(1,697,3,1,3,1);
INSERT INTO cup VALUES(1,705,8,1,1,1);
INSERT INTO cup VALUES(1,720,3,1,2,0);
INSERT INTO cup VALUES(1,729,9,1,3,0);
INSERT INTO cup VALUES(1,738,5,1,1,1);
INSERT INTO cup VALUES(1,768,4,1,3,1);
INSERT INTO cup VALUES(1,781,8,1,3,0);
INSERT INTO cup VALUES(1,783,3,1,2,1);
INSERT INTO cup VALUES(1,785,2,1,2,1);
INSERT INTO cup VALUES(1,840,9,1,1,0);
INSERT INTO cup VALUES(1,854,5,1,3,1);
INSERT INTO cup VALUES(1,940,5,1,2,0);
INSERT INTO cup VALUES(1,945,2,1,2,0);
INSERT INTO cup VALUES(1,958,6,1,1,1);
INSERT INTO cup VALUES(1,972,8,1,2,1);
INSERT INTO cup VALUES(1,973,9,1,1,1);
INSERT INTO cup VALUES(2,129,4,1,1,0);
INSERT INTO cup VALUES(2,148,2,1,3,1);
INSERT INTO cup VALUES(2,213,4,1,3,1);
INSERT INTO cup VALUES(2,267,2,1,3,0);
INSERT INTO cup VALUES(2,295,2,1,2,1);
INSERT INTO cup VALUES(2,357,1,1,1,1);
INSERT INTO cup VALUES(2,402,3,1,1,0);
INSERT INTO cup VALUES(2,483,4,1,2,0);
INSERT INTO cup VALUES(2,593,4,1,1,1);
INSERT INTO cup VALUES(2,628,3,1,2,0);
INSERT INTO cup VALUES(2,639,1,1,1,0);
INSERT INTO cup VALUES(2,679,2,1,1,1);
INSERT INTO cup VALUES(2,692,4,1,2,1);
INSERT INTO cup VALUES(2,762,1,1,2,1);
INSERT INTO cup VALUES(2,782,3,1,1,1);
INSERT INTO cup VALUES(2,803,3,1,2,1);
INSERT INTO cup VALUES(2,815,2,1,2,0);
INSERT INTO cup VALUES(2,839,3,1,3,0);
INSERT INTO cup VALUES(2,841,1,1,2,0);
INSERT INTO cup VALUES(2,857,3,1,3,1);
INSERT INTO cup VALUES(2,934,4,1,3,0);
INSERT INTO cup VALUES(2,950,1,1,3,0);
INSERT INTO cup VALUES(2,951,2,1,1,0);
INSERT INTO cup VALUES(2,973,1,1,3,1);
CREATE TABLE sealed_key (                  -- [frozen] lot of every cup, seed, salt. Closed against a glance, not against a locksmith.
  session_id   INTEGER PRIMARY KEY REFERENCES session_plan (session_id),
  box          BLOB NOT NULL,
  secret       BLOB NOT NULL CHECK (length(secret) = 32)
) STRICT;
INSERT INTO sealed_key VALUES(1,X'306c97f64fc2a4965d9f7bf834d12006f786e38483fe950ad11956d15b7d8492b4e6ca209ae2e09fac1fd66c9ebfb831ca666285e2c12accab399045a81b487796eaf5a810ca444cb71a6651372a8695bde100825ebe1a9fd1360a6584486cd721e59b89e8cdb9dccdcf9e30c56f1d89630894917de23f26a8ece8aff30b55d223c5f9f47b9d06a84e90240269a4d3c8547371fc4f5516a7fe36a2cf3bf049baa0619f248e2a31ca9c48fcc301066de2123a2c9feafa9fe40a82360604ba37df6002a4dcadbe0e5b4a25fa2819b4eb70073a36aa5760e81eedc461d447058f5cbe8da2f4bab80f959e3f23055adc9fe45156d8efa0114a56226770227e61945db1a828d866740e7fee52b02a957e5c98e14f999133a7cc600519573a0143d7f747b2998b4d7a84f362e20bc2934e50bb944adfe246fd20a068e0b4a3b12b20a79e0154eb28fc9ce4736d713da2908bbacb9dd833fe973ceabe9e38880613ce2bae535351a493bb300b81a59e46077f47c883ef54f29a6074e51c3416675f049703598de4e8488175e459402d2b3dd2f4880092795559f2cebe5267d3118e309b2b24176c765d4a5e3658fb72deec6badbb3e2f11149a0ff383d88e7c195e522e2703fabeab952a50022b595907a7ebc33cd800b1fd0fac56513eea19bf688464acbb5260603a55ed8ea0dd3a2cbca159ac6a41071e3a6bf3354cea2d63bc98ec361313b198f717c1801b5377535da55cf80cea5d536eca0beb7549b6025efbff557a1bd1faa320bab590afead3c2ac9ab1bfa0b6f1aad034028f33d799340c40f6aba2e8bf106d14ef0e90f397893d192208acb013761fe79efc93b9b98534808f9857419f4d07fa7376be25c555cc82020a8e5cb178d10c37f2cb6c2def4ebe0f9ec63a5abb4b6d6a6703a156b84c5e',X'ad3ce984c6e1aec2112bc920c9ceced4daeb65e2e836fc24378c54b720829aa4');
INSERT INTO sealed_key VALUES(2,X'fe65bbad86b415342e765a0b937a2a5101a3cae77e4c2a2c705929ff77c2224e8437da1b078cca59a01c5b9f91a7102f0e2b346950aec253da0f5056ebe2309584c58929de3348dd83dc1975c40a9cbd41c4333020736038b21d2b36b8178735074d18532e1aa9a6a6d740553444e5c8484dd2d082bd02b60cac75a696bd43fbd9cd9c351b3499dcc50662f3192dfe7a9ba839e92162c4fc40bea5dfff53ae0c09f6f16fe08e0a1b3d2bc9189e7011d3c5a27ee95ccf98a7dd42eff45cc8d02b1c4d4f48c35d14e997208ff47e61a44bd6c6820006150764b6b1f9c4b4a20ef84856b1b5d1410cb6180eef2bc8e3a608f61ccf4276f12dcd2a6819c28943adb96caf563e257162561c02ce164ae6b7cc4d4b0e8582bbc9e06d7de152bcc2c85f850afb61c943147e7335dea1817bae91f95bbc8876cb547c42911b93bd84862de118cb2ebfb2ee1c771a330d1fbebbe7a3127fae4494d8b668cb1941bcd726676382103c6d80b33028ef518ed1f07e166b39a0650d577552f8dad3709aaa051f7ceeb38f4901d3f91142db2cdfeb9c7913e2731e2b1efd682bf9987da27a93d7',X'79ff402e11fd17d405b8f970b05b3d4448e40a04be2d6bd2933353ab1e8d0756');
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
INSERT INTO key_opened VALUES(1,33,X'538db9c887fd48f18c5f1f9bfcac48543ee37119c4d4d21d1180d70a03aeabba',X'12398576f6ca765f51e98b0667ceff37be85d243e7ea8e0752c317f3204ae19b','chacha20/1',1);
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
INSERT INTO key_line VALUES(1,105,2,2);
INSERT INTO key_line VALUES(1,120,1,1);
INSERT INTO key_line VALUES(1,129,1,1);
INSERT INTO key_line VALUES(1,137,1,1);
INSERT INTO key_line VALUES(1,173,1,1);
INSERT INTO key_line VALUES(1,247,2,2);
INSERT INTO key_line VALUES(1,259,1,1);
INSERT INTO key_line VALUES(1,283,1,1);
INSERT INTO key_line VALUES(1,305,1,1);
INSERT INTO key_line VALUES(1,309,1,1);
INSERT INTO key_line VALUES(1,315,1,1);
INSERT INTO key_line VALUES(1,318,1,1);
INSERT INTO key_line VALUES(1,395,1,1);
INSERT INTO key_line VALUES(1,397,1,1);
INSERT INTO key_line VALUES(1,420,1,1);
INSERT INTO key_line VALUES(1,431,2,2);
INSERT INTO key_line VALUES(1,453,1,1);
INSERT INTO key_line VALUES(1,482,2,2);
INSERT INTO key_line VALUES(1,489,1,1);
INSERT INTO key_line VALUES(1,490,1,1);
INSERT INTO key_line VALUES(1,497,2,2);
INSERT INTO key_line VALUES(1,501,2,2);
INSERT INTO key_line VALUES(1,509,1,1);
INSERT INTO key_line VALUES(1,527,2,2);
INSERT INTO key_line VALUES(1,536,1,1);
INSERT INTO key_line VALUES(1,568,2,2);
INSERT INTO key_line VALUES(1,576,2,2);
INSERT INTO key_line VALUES(1,580,1,1);
INSERT INTO key_line VALUES(1,586,1,1);
INSERT INTO key_line VALUES(1,590,2,2);
INSERT INTO key_line VALUES(1,603,1,1);
INSERT INTO key_line VALUES(1,614,2,2);
INSERT INTO key_line VALUES(1,617,1,1);
INSERT INTO key_line VALUES(1,647,1,1);
INSERT INTO key_line VALUES(1,648,2,2);
INSERT INTO key_line VALUES(1,659,2,2);
INSERT INTO key_line VALUES(1,670,1,1);
INSERT INTO key_line VALUES(1,679,2,2);
INSERT INTO key_line VALUES(1,697,2,2);
INSERT INTO key_line VALUES(1,705,1,1);
INSERT INTO key_line VALUES(1,720,1,1);
INSERT INTO key_line VALUES(1,729,2,2);
INSERT INTO key_line VALUES(1,738,1,1);
INSERT INTO key_line VALUES(1,768,1,1);
INSERT INTO key_line VALUES(1,781,1,1);
INSERT INTO key_line VALUES(1,783,1,1);
INSERT INTO key_line VALUES(1,785,1,1);
INSERT INTO key_line VALUES(1,840,1,1);
INSERT INTO key_line VALUES(1,854,2,2);
INSERT INTO key_line VALUES(1,940,1,1);
INSERT INTO key_line VALUES(1,945,1,1);
INSERT INTO key_line VALUES(1,958,1,1);
INSERT INTO key_line VALUES(1,972,2,2);
INSERT INTO key_line VALUES(1,973,1,1);
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
INSERT INTO place_taken VALUES(1,7,10,0,'signed');
INSERT INTO place_taken VALUES(1,8,11,0,'loose');
INSERT INTO place_taken VALUES(1,9,12,1,'signed');
INSERT INTO place_taken VALUES(2,1,3,0,'signed');
INSERT INTO place_taken VALUES(2,2,4,0,'loose');
CREATE TABLE place_person (                -- [person] who sits there; the only link from answers to a name. A loose taster's goes at the close.
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  taster_id    INTEGER NOT NULL REFERENCES taster (id) ON DELETE CASCADE,
  PRIMARY KEY (session_id, place),
  UNIQUE (session_id, taster_id),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place)
) STRICT, WITHOUT ROWID;
INSERT INTO place_person VALUES(1,7,2);
INSERT INTO place_person VALUES(2,2,3);
INSERT INTO place_person VALUES(1,1,5);
INSERT INTO place_person VALUES(2,1,5);
INSERT INTO place_person VALUES(1,4,6);
INSERT INTO place_person VALUES(1,3,7);
INSERT INTO place_person VALUES(1,9,8);
INSERT INTO place_person VALUES(1,6,12);
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
INSERT INTO hand_in VALUES(1,1,1,1,X'5b9e141948a81aa7ac05b90016cdcfb0','device',1785440821000,X'186f34e07720d4553cbb3877fb2571b5',15);
INSERT INTO hand_in VALUES(2,1,2,1,X'7cafe73b10432dee74c798bf3bd87f8b','device',1785441301000,X'f19adafca81bf41fdbdca176f19cd43c',17);
INSERT INTO hand_in VALUES(3,1,3,1,X'c94dbc0bf6f11119e54ecd3bd3ff6831','device',1785441781000,X'012801d030f862b0fc421f87c211b49f',19);
INSERT INTO hand_in VALUES(4,1,4,1,X'8e83d7cbfefe16971b78630593156149','device',1785442261000,X'9652056c19b28bd7f3a4d7ef3bc187e1',21);
INSERT INTO hand_in VALUES(5,1,5,1,X'20a17b34a9e348f5ea5cce196066dbe0','device',1785442741000,X'ac719bcfe075a0058a4686ad1453e660',23);
INSERT INTO hand_in VALUES(6,1,6,1,X'732e8e6987f68f0fb7ad911c0533aad9','device',1785443221000,X'77e384d28c3f3503391531e7147d8eb8',25);
INSERT INTO hand_in VALUES(7,1,7,1,X'b10ab5045f44a974706484223f6851af','device',1785443701000,X'be6f7c8500f6b4f9585cd2a4ae3e8460',27);
INSERT INTO hand_in VALUES(8,1,8,1,X'2ffabc3d0150cb1effe7c1e0e41f1582','device',1785444181000,X'870644d0f05925c9f02b5f5c52a01cc8',29);
INSERT INTO hand_in VALUES(9,1,9,1,X'438f0de1c39d8808979be87fa00158aa','device',1785444661000,X'601ee2b33b010c3f0f73f9222c212335',31);
INSERT INTO hand_in VALUES(10,2,1,1,X'6001ef5f8f4b807e6d3fa8b4b5c91c04','file',1795950020636,X'7f5d66de0a9edddb926774bdd777232c',7);
CREATE TABLE answer (                      -- [person] goes with its hand-in
  hand_in_id   INTEGER NOT NULL REFERENCES hand_in (id) ON DELETE CASCADE,
  item         INTEGER NOT NULL,
  code         INTEGER NOT NULL DEFAULT 0, -- 0 = about the whole flight
  value        INTEGER,
  text_digest  BLOB CHECK (length(text_digest) = 32),                 -- sha256(salt of the words || text)
  PRIMARY KEY (hand_in_id, item, code),
  CHECK ((value IS NULL) <> (text_digest IS NULL))
) STRICT, WITHOUT ROWID;
INSERT INTO answer VALUES(1,1,259,58,NULL);
INSERT INTO answer VALUES(1,1,431,52,NULL);
INSERT INTO answer VALUES(1,1,586,42,NULL);
INSERT INTO answer VALUES(1,2,259,58,NULL);
INSERT INTO answer VALUES(1,2,431,52,NULL);
INSERT INTO answer VALUES(1,2,586,42,NULL);
INSERT INTO answer VALUES(1,3,259,6,NULL);
INSERT INTO answer VALUES(1,3,431,6,NULL);
INSERT INTO answer VALUES(1,3,586,4,NULL);
INSERT INTO answer VALUES(2,1,536,89,NULL);
INSERT INTO answer VALUES(2,1,659,59,NULL);
INSERT INTO answer VALUES(2,1,945,65,NULL);
INSERT INTO answer VALUES(2,2,536,89,NULL);
INSERT INTO answer VALUES(2,2,659,59,NULL);
INSERT INTO answer VALUES(2,2,945,65,NULL);
INSERT INTO answer VALUES(2,3,536,8,NULL);
INSERT INTO answer VALUES(2,3,659,6,NULL);
INSERT INTO answer VALUES(2,3,945,6,NULL);
INSERT INTO answer VALUES(3,1,318,52,NULL);
INSERT INTO answer VALUES(3,1,568,46,NULL);
INSERT INTO answer VALUES(3,1,720,36,NULL);
INSERT INTO answer VALUES(3,2,318,52,NULL);
INSERT INTO answer VALUES(3,2,568,46,NULL);
INSERT INTO answer VALUES(3,2,720,36,NULL);
INSERT INTO answer VALUES(3,3,318,6,NULL);
INSERT INTO answer VALUES(3,3,568,6,NULL);
INSERT INTO answer VALUES(3,3,720,4,NULL);
INSERT INTO answer VALUES(4,1,453,59,NULL);
INSERT INTO answer VALUES(4,1,489,83,NULL);
INSERT INTO answer VALUES(4,1,527,53,NULL);
INSERT INTO answer VALUES(4,2,453,59,NULL);
INSERT INTO answer VALUES(4,2,489,83,NULL);
INSERT INTO answer VALUES(4,2,527,53,NULL);
INSERT INTO answer VALUES(4,3,453,6,NULL);
INSERT INTO answer VALUES(4,3,489,8,NULL);
INSERT INTO answer VALUES(4,3,527,6,NULL);
INSERT INTO answer VALUES(5,1,129,66,NULL);
INSERT INTO answer VALUES(5,1,501,60,NULL);
INSERT INTO answer VALUES(5,1,940,50,NULL);
INSERT INTO answer VALUES(5,2,129,66,NULL);
INSERT INTO answer VALUES(5,2,501,60,NULL);
INSERT INTO answer VALUES(5,2,940,50,NULL);
INSERT INTO answer VALUES(5,3,129,6,NULL);
INSERT INTO answer VALUES(5,3,501,6,NULL);
INSERT INTO answer VALUES(5,3,940,4,NULL);
INSERT INTO answer VALUES(6,1,105,47,NULL);
INSERT INTO answer VALUES(6,1,120,53,NULL);
INSERT INTO answer VALUES(6,1,670,77,NULL);
INSERT INTO answer VALUES(6,2,105,47,NULL);
INSERT INTO answer VALUES(6,2,120,53,NULL);
INSERT INTO answer VALUES(6,2,670,77,NULL);
INSERT INTO answer VALUES(6,3,105,6,NULL);
INSERT INTO answer VALUES(6,3,120,6,NULL);
INSERT INTO answer VALUES(6,3,670,8,NULL);
INSERT INTO answer VALUES(7,1,173,44,NULL);
INSERT INTO answer VALUES(7,1,497,54,NULL);
INSERT INTO answer VALUES(7,1,647,60,NULL);
INSERT INTO answer VALUES(7,2,173,44,NULL);
INSERT INTO answer VALUES(7,2,497,54,NULL);
INSERT INTO answer VALUES(7,2,647,60,NULL);
INSERT INTO answer VALUES(7,3,173,4,NULL);
INSERT INTO answer VALUES(7,3,497,6,NULL);
INSERT INTO answer VALUES(7,3,647,6,NULL);
INSERT INTO answer VALUES(8,1,137,67,NULL);
INSERT INTO answer VALUES(8,1,482,61,NULL);
INSERT INTO answer VALUES(8,1,781,91,NULL);
INSERT INTO answer VALUES(8,2,137,67,NULL);
INSERT INTO answer VALUES(8,2,482,61,NULL);
INSERT INTO answer VALUES(8,2,781,91,NULL);
INSERT INTO answer VALUES(8,3,137,6,NULL);
INSERT INTO answer VALUES(8,3,482,6,NULL);
INSERT INTO answer VALUES(8,3,781,8,NULL);
INSERT INTO answer VALUES(9,1,490,38,NULL);
INSERT INTO answer VALUES(9,1,729,48,NULL);
INSERT INTO answer VALUES(9,1,840,54,NULL);
INSERT INTO answer VALUES(9,2,490,38,NULL);
INSERT INTO answer VALUES(9,2,729,48,NULL);
INSERT INTO answer VALUES(9,2,840,54,NULL);
INSERT INTO answer VALUES(9,3,490,4,NULL);
INSERT INTO answer VALUES(9,3,729,6,NULL);
INSERT INTO answer VALUES(9,3,840,6,NULL);
INSERT INTO answer VALUES(10,1,639,55,NULL);
INSERT INTO answer VALUES(10,1,841,50,NULL);
INSERT INTO answer VALUES(10,1,950,70,NULL);
INSERT INTO answer VALUES(10,2,639,NULL,X'df4f67fa37e0abf00c189ee485d89a3615c9fb5adec9294b0c5fca49e731366c');
INSERT INTO answer VALUES(10,2,841,0,NULL);
INSERT INTO answer VALUES(10,2,950,0,NULL);
INSERT INTO answer VALUES(10,3,639,6,NULL);
INSERT INTO answer VALUES(10,3,841,5,NULL);
INSERT INTO answer VALUES(10,3,950,7,NULL);
CREATE TABLE answer_words (                -- [person] free text apart, so that it can be erased alone
  hand_in_id   INTEGER NOT NULL,
  item         INTEGER NOT NULL,
  code         INTEGER NOT NULL,
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 4000),
  PRIMARY KEY (hand_in_id, item, code),
  FOREIGN KEY (hand_in_id, item, code) REFERENCES answer (hand_in_id, item, code) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
INSERT INTO answer_words VALUES(10,2,639,X'6aa9e523c64116f051335fbe9cdecdfc','thin');
CREATE TABLE remark (                      -- [person] what was said, a reason, a decision: text apart from the log
  session_id   INTEGER NOT NULL,
  seq          INTEGER NOT NULL,
  about        TEXT NOT NULL CHECK (about IN ('said', 'reason', 'decision')),
  salt         BLOB NOT NULL CHECK (length(salt) = 16),
  text         TEXT NOT NULL CHECK (length(text) BETWEEN 1 AND 4000),
  PRIMARY KEY (session_id, seq),
  FOREIGN KEY (session_id, seq) REFERENCES log (session_id, seq)
) STRICT, WITHOUT ROWID;
INSERT INTO remark VALUES(1,34,'decision',X'21b450be0f4220767dbe7fbbb9c2af59','say nothing about the hops yet');
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
INSERT INTO own_word VALUES(1,'efbe2edfd890d0034a77ab25f1a8f468','hedge after rain','floral','wanted','Wet leaves and elderflower, as on the way to the orchard.');
INSERT INTO own_word VALUES(2,'83e5423c365d0596d896c34b5d2dfb9d','old cupboard','cellar','fault','');
CREATE TABLE own_word_drink (              -- [live] of which drinks it is said
  own_word_id  INTEGER NOT NULL REFERENCES own_word (id),
  kind         TEXT NOT NULL CHECK (kind IN ('beer', 'mead', 'cider', 'wine', 'other')),
  PRIMARY KEY (own_word_id, kind)
) STRICT, WITHOUT ROWID;
INSERT INTO own_word_drink VALUES(1,'cider');
INSERT INTO own_word_drink VALUES(1,'mead');
INSERT INTO own_word_drink VALUES(2,'beer');
INSERT INTO own_word_drink VALUES(2,'cider');
INSERT INTO own_word_drink VALUES(2,'mead');
CREATE TABLE word_same_as (                -- [live] merged: answers with the one count as the other
  word         TEXT PRIMARY KEY CHECK (length(word) = 32 AND word NOT GLOB '*[^0-9a-f]*'),
  same_as      TEXT NOT NULL CHECK (length(same_as) = 32 AND same_as NOT GLOB '*[^0-9a-f]*'),
  CHECK (word <> same_as)
) STRICT, WITHOUT ROWID;
INSERT INTO word_same_as VALUES('83e5423c365d0596d896c34b5d2dfb9d','78623108580ddcd428aebd2a032fa4a4');
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
INSERT INTO word_change VALUES(1,1795950012222,'added','efbe2edfd890d0034a77ab25f1a8f468','hedge after rain',NULL);
INSERT INTO word_change VALUES(2,1795950012222,'added','83e5423c365d0596d896c34b5d2dfb9d','old cupboard',NULL);
INSERT INTO word_change VALUES(3,1795950012223,'merged','83e5423c365d0596d896c34b5d2dfb9d','old cupboard','78623108580ddcd428aebd2a032fa4a4');
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
INSERT INTO item VALUES(1,1,'line',0,100,1,1,'main','hops');
INSERT INTO item VALUES(1,2,'line',0,100,1,1,'main','bitter');
INSERT INTO item VALUES(1,3,'liking',1,9,1,1,'main','');
INSERT INTO item VALUES(2,1,'line',0,100,1,1,'main','apple');
INSERT INTO item VALUES(2,2,'worst',NULL,NULL,1,1,'main','');
INSERT INTO item VALUES(2,3,'liking',1,9,1,1,'main','');
CREATE TABLE typed (                       -- [person] what a taster has typed and not handed in yet; gone with the hand-in
  session_id   INTEGER NOT NULL,
  place        INTEGER NOT NULL,
  round        INTEGER NOT NULL CHECK (round BETWEEN 1 AND 99),
  body         TEXT NOT NULL CHECK (body GLOB '[[]*]' AND length(body) <= 2000000),
  at           INTEGER NOT NULL,
  PRIMARY KEY (session_id, place),
  FOREIGN KEY (session_id, place) REFERENCES place_taken (session_id, place)
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
COMMIT;
