#include "session/vault.h"

#include "blinding/box.h"
#include "canon/canonical.h"
#include "domain/problem.h"
#include "store/blob.h"
#include "store/step.h"

namespace oddglass::session::vault {
namespace {

using store::bound;

blinding::Secret secretOf(SQLite::Database& db, std::int64_t session) {
  auto row = bound(db, "SELECT secret FROM sealed_key WHERE session_id = ?", session);
  if (!row.executeStep()) throw Problem(Trouble::storeDamaged, "key");
  return store::blobOf<32>(row.getColumn(0));
}

void requireOpening(const Logged& entry) {
  if (entry.event() != Event::pourSheetOpened && entry.event() != Event::looked && entry.event() != Event::revealed && entry.event() != Event::broken)
    throw Problem(Trouble::stillSealed, "key");
}

void insertFound(SQLite::Database& db, std::int64_t session, const Found& found, const blinding::Secret& secret, Chance& chance) {
  auto insert = bound(db, "INSERT INTO found_key (session_id, seq, salt, box) VALUES (?, ?, ?, ?)", session, found.seq.value);
  store::bindBlob(insert, 3, found.salt);
  store::bindBlob(insert, 4, blinding::closeBox(foundText(found.flight), secret, chance));
  insert.exec();
}

void insertPoured(SQLite::Database& db, std::int64_t session, const Poured& line, const blinding::Secret& secret, Chance& chance) {
  const canon::Json text{{"code", line.code.value}, {"slot", line.slot ? canon::Json(line.slot->value) : canon::Json(nullptr)}};
  auto insert = bound(db, "INSERT INTO as_poured (session_id, seq, salt, box) VALUES (?, ?, ?, ?)", session, line.seq.value);
  store::bindBlob(insert, 3, line.salt);
  store::bindBlob(insert, 4, blinding::closeBox(canon::canonical(text), secret, chance));
  insert.exec();
}

}  // namespace

void put(SQLite::Database& db, std::int64_t session, blinding::SealedKey&& key) {
  auto insert = bound(db, "INSERT INTO sealed_key (session_id, box, secret) VALUES (?, ?, ?)", session);
  store::bindBlob(insert, 2, key.box());
  store::bindBlob(insert, 3, key.secret());
  insert.exec();
}

blinding::OpenedKey open(SQLite::Database& db, std::int64_t session, const Logged& entry) {
  auto row = bound(db, "SELECT box, secret FROM sealed_key WHERE session_id = ?", session);
  if (!row.executeStep()) throw Problem(Trouble::storeDamaged, "key");
  return blinding::open(blinding::SealedKey::fromBox(store::blob(row.getColumn(0)), store::blobOf<32>(row.getColumn(1))), entry);
}

void putPoured(SQLite::Database& db, std::int64_t session, const Logged& entry, const std::array<std::uint8_t, 16>& salt, Code code,
               std::optional<Slot> slot, Chance& chance) {
  insertPoured(db, session, {entry.seq(), salt, code, slot}, secretOf(db, session), chance);
}

std::vector<Poured> poured(SQLite::Database& db, std::int64_t session, const Logged& entry) {
  requireOpening(entry);
  const auto secret = secretOf(db, session);
  std::vector<Poured> all;
  auto rows = bound(db, "SELECT seq, salt, box FROM as_poured WHERE session_id = ? ORDER BY seq", session);
  while (rows.executeStep()) {
    const auto text = blinding::openBox(store::blob(rows.getColumn(2)), secret);
    if (!text) throw Problem(Trouble::storeDamaged, "key");
    const auto json = canon::Json::parse(*text);
    Poured line{{rows.getColumn(0).getInt()}, store::blobOf<16>(rows.getColumn(1)), {json.at("code").get<int>()}, std::nullopt};
    if (!json.at("slot").is_null()) line.slot = Slot{json.at("slot").get<int>()};
    all.push_back(line);
  }
  return all;
}

void putFound(SQLite::Database& db, std::int64_t session, const Found& found, Chance& chance) { insertFound(db, session, found, secretOf(db, session), chance); }

std::vector<Found> found(SQLite::Database& db, std::int64_t session, const Logged& entry) {
  requireOpening(entry);
  const auto secret = secretOf(db, session);
  std::vector<Found> all;
  auto rows = bound(db, "SELECT seq, salt, box FROM found_key WHERE session_id = ? ORDER BY seq", session);
  while (rows.executeStep()) {
    const auto text = blinding::openBox(store::blob(rows.getColumn(2)), secret);
    if (!text) throw Problem(Trouble::storeDamaged, "key");
    const auto json = canon::Json::parse(*text);
    Found each{{rows.getColumn(0).getInt()}, store::blobOf<16>(rows.getColumn(1)), {{json.at("place").get<int>()}, {json.at("round").get<int>()}, {}}};
    for (const auto& line : json.at("lines"))
      each.flight.lines.push_back({{line.at(0).get<int>()}, line.at(1).is_null() ? std::nullopt : std::optional(Slot{line.at(1).get<int>()})});
    all.push_back(std::move(each));
  }
  return all;
}

void tick(SQLite::Database& db, std::int64_t session, Millis at, Code code, bool isPoured) {
  if (isPoured)
    store::run(db, "INSERT OR REPLACE INTO pour_tick VALUES (?, ?, ?)", session, code.value, at);
  else
    store::run(db, "DELETE FROM pour_tick WHERE session_id = ? AND code = ?", session, code.value);
}

std::set<Code> ticks(SQLite::Database& db, std::int64_t session, const Logged& entry) {
  requireOpening(entry);
  std::set<Code> all;
  auto rows = bound(db, "SELECT code FROM pour_tick WHERE session_id = ?", session);
  while (rows.executeStep()) all.insert({rows.getColumn(0).getInt()});
  return all;
}

void putOpened(SQLite::Database& db, std::int64_t session, const blinding::KeyContents& key, const std::vector<Poured>& lines, const std::vector<Found>& read, Chance& chance) {
  blinding::KeyContents copy = key;
  put(db, session, blinding::seal(std::move(copy), chance));
  const auto secret = secretOf(db, session);
  for (const Poured& line : lines) insertPoured(db, session, line, secret, chance);
  for (const Found& each : read) insertFound(db, session, each, secret, chance);
}

}  // namespace oddglass::session::vault
