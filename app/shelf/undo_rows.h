#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

namespace oddglass::shelf {

/// Makes the table of inverse statements and the triggers that fill it, all of them temporary. They call `undo_change()`, the number of the running
/// change, or null while nothing is to be written down. In a statement ?1 stands for the time at which it is taken back; one that begins with SELECT must
/// find nothing, else the change cannot be taken back.
void writeInversesFrom(SQLite::Database& db);

}  // namespace oddglass::shelf
