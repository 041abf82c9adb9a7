#include "session/vault.h"

auto look(SQLite::Database& db) { return oddglass::session::vault::found(db, 1); }
