#include "session/vault.h"

auto look(SQLite::Database& db) { return oddglass::session::vault::open(db, 1); }
