#include "session/vault.h"

auto look(SQLite::Database& db) { return oddglass::session::vault::ticks(db, 1); }
