#pragma once

#include "domain/names.h"
#include "domain/problem.h"
#include "domain/shelf.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace oddglass::shelf {

/// The value of a stored word; Problem storeDamaged when it is none (the schema's CHECKs keep others out).
template <class E>
E known(const SQLite::Column& column) {
  const auto value = named<E>(column.getString());
  if (!value) throw Problem(Trouble::storeDamaged, "store");
  return *value;
}

/// Cleans the texts of a record and refuses what cannot be stored. Called before the transaction.
void checkBeverage(Beverage& drink);
void checkLot(Lot& lot);
void checkNote(Note& note);
void checkTaster(Taster& taster);

/// Writes a checked record inside the running transaction: a new one, or over the one with its id (notes are only added).
void writeBeverage(SQLite::Database& db, const Beverage& drink);
void writeLot(SQLite::Database& db, const Lot& lot);
void writeNote(SQLite::Database& db, const Note& note);
void writeTaster(SQLite::Database& db, const Taster& taster);

}  // namespace oddglass::shelf
