#include "session/vault.h"

auto look(SQLite::Database& db) { return oddglass::session::vault::poured(db, 1); }
