#include "shelf/fields.h"

#include "domain/problem.h"
#include "domain/text.h"

#include <cstdlib>

namespace oddglass::shelf {

std::string text(std::string_view raw, const char* argument, std::size_t limit, bool needed) {
  std::string result = cleaned(raw);
  if (needed && result.empty()) throw Problem(Trouble::empty, argument);
  if (lettersIn(result) > limit) throw Problem(Trouble::tooLong, argument, {{"limit", std::to_string(limit)}});
  return result;
}

std::string day(std::string_view raw, const char* argument) {
  std::string result = cleaned(raw);
  if (!result.empty() && !isDay(result)) throw Problem(Trouble::notADay, argument, {{"text", result}});
  return result;
}

std::string decimal(int value, int places) {
  std::string digits = std::to_string(std::abs(value));
  if (digits.size() <= static_cast<std::size_t>(places)) digits.insert(0, static_cast<std::size_t>(places) + 1 - digits.size(), '0');
  std::string fraction = digits.substr(digits.size() - static_cast<std::size_t>(places));
  digits.resize(digits.size() - fraction.size());
  fraction.resize(fraction.find_last_not_of('0') + 1);
  if (value < 0) digits.insert(0, 1, '-');
  if (!fraction.empty()) digits.append(1, '.').append(fraction);
  return digits;
}

void checkGravity(std::optional<int> gravity, const char* argument) {
  if (gravity && (*gravity < 9500 || *gravity > 13000))
    throw Problem(Trouble::outOfRange, argument, {{"text", decimal(*gravity, 4)}, {"low", "0.95"}, {"high", "1.3"}});
}

void checkWhole(int value, int low, int high, const char* argument) {
  if (value < low || value > high)
    throw Problem(Trouble::outOfRange, argument,
                  {{"text", std::to_string(value)}, {"low", std::to_string(low)}, {"high", std::to_string(high)}});
}

std::int64_t rowOf(SQLite::Database& db, Family family, const std::string& uid, const char* argument) {
  const auto row = maybeRowOf(db, family, uid);
  if (!row) throw Problem(Trouble::unknown, argument, {{"what", argument}, {"text", uid}});
  return *row;
}

std::optional<std::int64_t> maybeRowOf(SQLite::Database& db, Family family, const std::string& uid) {
  const char* sql = "";
  switch (family) {
    case Family::beverage: sql = "SELECT id FROM beverage WHERE uid = ?"; break;
    case Family::lot: sql = "SELECT id FROM lot WHERE uid = ?"; break;
    case Family::note: sql = "SELECT id FROM batch_note WHERE uid = ?"; break;
    case Family::taster: sql = "SELECT id FROM taster WHERE uid = ?"; break;
  }
  auto row = store::bound(db, sql, uid);
  if (!row.executeStep()) return std::nullopt;
  return row.getColumn(0).getInt64();
}

std::string newUid(Chance& chance) { return canon::hex(chance.bytes<16>()); }

void checkUid(const std::string& uid) {
  if (!looksLikeUid(uid)) throw Problem(Trouble::notAChoice, "id", {{"text", cleaned(uid)}, {"choices", "32 hex digits"}});
}

std::optional<int> maybeInt(const SQLite::Column& column) {
  if (column.isNull()) return std::nullopt;
  return column.getInt();
}

void bindMaybe(SQLite::Statement& statement, int index, std::optional<int> value) {
  if (value) statement.bind(index, *value);
  else statement.bind(index);
}

void bindMaybe(SQLite::Statement& statement, int index, const std::string& value) {
  if (value.empty()) statement.bind(index);
  else statement.bind(index, value);
}

}  // namespace oddglass::shelf
