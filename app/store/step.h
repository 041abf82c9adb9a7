#pragma once

#include "canon/canonical.h"
#include "store/store.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <utility>

namespace oddglass::store {

/// Turns what SQLite says into a Problem that names the cause: a full disk, a read-only file, a damaged one, one in use.
/// `argument` and `file` say which file, when it is not the store at hand.
[[noreturn]] void rethrow(const SQLite::Exception& error, const char* argument = "store", const std::filesystem::path& file = {});

/// A text of the store that should be JSON of a known form and is not: Problem storeDamaged.
[[noreturn]] void rethrow(const canon::Json::exception& error);

/// Takes the write lock at once (BEGIN IMMEDIATE), so that what is checked is still true when it is written. Inside a step that is running already it
/// is a part of that one: undone alone when it fails, on disk with the whole. Throws storeReadOnly for a store that was opened to read.
class Writing {
 public:
  explicit Writing(Store& store);
  ~Writing();
  Writing(const Writing&) = delete;
  Writing& operator=(const Writing&) = delete;
  void commit();

 private:
  SQLite::Database& db_;
  bool isPart_ = false;
  bool done_ = false;
};

/// True while a transaction is running on this connection.
bool isInside(SQLite::Database& db);

/// Runs `work(db)` in one immediate transaction: all of it is on disk when this returns, or nothing is and a Problem is thrown.
/// Use cases called from inside `work` become parts of the same transaction.
template <class Work>
auto write(Store& store, Work&& work) {
  try {
    Writing writing(store);
    if constexpr (std::is_void_v<decltype(work(store.db()))>) {
      work(store.db());
      writing.commit();
    } else {
      auto result = work(store.db());
      writing.commit();
      return result;
    }
  } catch (const SQLite::Exception& error) {
    rethrow(error);
  } catch (const canon::Json::exception& error) {
    rethrow(error);
  }
}

/// Runs `work(db)` on one unchanging view of the store.
template <class Work>
auto read(Store& store, Work&& work) {
  try {
    if (isInside(store.db())) return work(store.db());
    SQLite::Transaction view(store.db());
    return work(store.db());
  } catch (const SQLite::Exception& error) {
    rethrow(error);
  } catch (const canon::Json::exception& error) {
    rethrow(error);
  }
}

/// A prepared statement kept by the connection's owner for one call; binds in order.
template <class... Values>
SQLite::Statement bound(SQLite::Database& db, const char* sql, const Values&... values) {
  SQLite::Statement statement(db, sql);
  int index = 0;
  (statement.bind(++index, values), ...);
  return statement;
}

/// Runs one statement that returns no rows.
template <class... Values>
int run(SQLite::Database& db, const char* sql, const Values&... values) {
  return bound(db, sql, values...).exec();
}

}  // namespace oddglass::store
