#include "store/schema.h"

namespace oddglass::store {

// Migration 5: a batch that is tasted again and again while it ages. What a series is begun for is fixed once its first sitting is sealed.
const char* const schema5 = R"sql(
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
CREATE INDEX series_lot ON series (lot_id);

CREATE TABLE series_sitting (              -- [live] as proposed; the real day is the session's
  series_id     INTEGER NOT NULL REFERENCES series (id) ON DELETE CASCADE,
  number        INTEGER NOT NULL CHECK (number BETWEEN 1 AND 24),
  due_on        TEXT NOT NULL CHECK (due_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  session_id    INTEGER UNIQUE REFERENCES session (id) ON DELETE SET NULL,
  PRIMARY KEY (series_id, due_on)
) STRICT, WITHOUT ROWID;

CREATE TABLE series_seen (                 -- [grows] its old pages were opened while one of its sittings was sealed
  series_id     INTEGER NOT NULL REFERENCES series (id),
  session_id    INTEGER NOT NULL REFERENCES session (id),
  at            INTEGER NOT NULL
) STRICT;
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
)sql";

}  // namespace oddglass::store
