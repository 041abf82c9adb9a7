#pragma once

#include "canon/digest.h"
#include "domain/chance.h"
#include "domain/uid.h"
#include "store/step.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace oddglass::shelf {

/// Text as it is stored: cleaned; Problem empty when `needed`, tooLong above `limit` letters.
std::string text(std::string_view raw, const char* argument, std::size_t limit, bool needed);

/// A day or nothing; Problem notADay.
std::string day(std::string_view raw, const char* argument);

/// A whole number shown with `places` decimals, as few as need be: 10550 and 4 give "1.055".
std::string decimal(int value, int places);

/// A specific gravity in 1/10000 within 0.95 to 1.3; Problem outOfRange, which shows it as people write it.
void checkGravity(std::optional<int> gravity, const char* argument);

/// Problem outOfRange.
void checkWhole(int value, int low, int high, const char* argument);

enum class Family { beverage, lot, note, taster };

/// The row of a record by its uid; Problem unknown, or nothing.
std::int64_t rowOf(SQLite::Database& db, Family family, const std::string& uid, const char* argument);
std::optional<std::int64_t> maybeRowOf(SQLite::Database& db, Family family, const std::string& uid);

/// A new id, and the check of one that comes from elsewhere (Problem notAChoice, "id").
std::string newUid(Chance& chance);
void checkUid(const std::string& uid);

/// What is null in the store is nothing here.
std::optional<int> maybeInt(const SQLite::Column& column);
void bindMaybe(SQLite::Statement& statement, int index, std::optional<int> value);
void bindMaybe(SQLite::Statement& statement, int index, const std::string& value);

}  // namespace oddglass::shelf
