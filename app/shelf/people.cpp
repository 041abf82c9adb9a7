#include "shelf/people.h"

#include "domain/problem.h"
#include "domain/text.h"
#include "shelf/fields.h"
#include "shelf/folded.h"
#include "shelf/rows.h"

#include <algorithm>

namespace oddglass::shelf {
namespace {

Taster tasterOf(SQLite::Statement& row) {
  return {{row.getColumn(0).getString()}, row.getColumn(1).getString(), row.getColumn(2).getString(), row.getColumn(3).getInt() != 0,
          !row.getColumn(4).isNull()};
}

std::vector<Taster> everybody(SQLite::Database& db) {
  std::vector<Taster> all;
  SQLite::Statement rows(db, "SELECT uid, name, nickname, is_brewer, archived_at FROM taster ORDER BY id");
  while (rows.executeStep()) all.push_back(tasterOf(rows));
  std::ranges::stable_sort(all, {}, [](const Taster& person) { return folded(person.name); });
  return all;
}

}  // namespace

void checkTaster(Taster& taster) {
  taster.name = text(taster.name, "name", 100, true);
  taster.nickname = text(taster.nickname, "nickname", 60, false);
}

void writeTaster(SQLite::Database& db, const Taster& taster) {
  for (const Taster& other : everybody(db)) {
    if (other.id == taster.id) continue;
    if (folded(other.name) == folded(taster.name)) throw Problem(Trouble::alreadyThere, "name", {{"text", other.name}});
    if (other.isBrewer && taster.isBrewer) throw Problem(Trouble::alreadyThere, "is_brewer", {{"text", other.name}});
  }
  store::run(db, R"(INSERT INTO taster (uid, name, nickname, is_brewer) VALUES (?, ?, ?, ?)
      ON CONFLICT (uid) DO UPDATE SET name = ?2, nickname = ?3, is_brewer = ?4)", taster.id.text, taster.name, taster.nickname, taster.isBrewer ? 1 : 0);
}

TasterId save(store::Store& store, Chance& chance, Taster taster) {
  checkTaster(taster);
  return store::write(store, [&](SQLite::Database& db) {
    if (taster.id.empty()) taster.id.text = newUid(chance);
    else rowOf(db, Family::taster, taster.id.text, "taster");
    writeTaster(db, taster);
    return taster.id;
  });
}

std::vector<Taster> people(store::Store& store, bool includeArchived) {
  auto all = store::read(store, everybody);
  if (!includeArchived) std::erase_if(all, &Taster::archived);
  return all;
}

Taster taster(store::Store& store, const TasterId& id) {
  return store::read(store, [&](SQLite::Database& db) {
    auto row = store::bound(db, "SELECT uid, name, nickname, is_brewer, archived_at FROM taster WHERE uid = ?", id.text);
    if (!row.executeStep()) throw Problem(Trouble::unknown, "taster", {{"what", "taster"}, {"text", id.text}});
    return tasterOf(row);
  });
}

std::optional<Taster> brewer(store::Store& store) {
  for (const Taster& person : people(store, true))
    if (person.isBrewer) return person;
  return std::nullopt;
}

Taster tasterNamed(store::Store& store, std::string_view name) {
  const std::string shown = text(name, "taster", 100, true);
  const std::string wanted = folded(shown);
  std::vector<Taster> begins;
  for (const Taster& person : people(store)) {
    const std::string theirs = folded(person.name);
    if (theirs == wanted) return person;
    if (theirs.starts_with(wanted)) begins.push_back(person);
  }
  if (begins.empty()) throw Problem(Trouble::unknown, "taster", {{"what", "taster"}, {"text", shown}});
  if (begins.size() > 1) throw Problem(Trouble::ambiguous, "taster", {{"text", shown}});
  return begins.front();
}

void archivePerson(store::Store& store, Clock& clock, const TasterId& id) {
  store::write(store, [&](SQLite::Database& db) {
    const auto row = rowOf(db, Family::taster, id.text, "taster");
    auto used = store::bound(db, R"(SELECT 1 FROM session_state s WHERE s.state IN ('sealed', 'tasting', 'closed')
      AND (EXISTS (SELECT 1 FROM invited i WHERE i.session_id = s.session_id AND i.taster_id = ?1)
        OR EXISTS (SELECT 1 FROM place_person p WHERE p.session_id = s.session_id AND p.taster_id = ?1)))", row);
    if (used.executeStep()) throw Problem(Trouble::stillInUse, "taster");
    store::run(db, "UPDATE taster SET archived_at = ? WHERE id = ? AND archived_at IS NULL", clock.now(), row);
  });
}

void bringBackPerson(store::Store& store, const TasterId& id) {
  store::write(store, [&](SQLite::Database& db) {
    store::run(db, "UPDATE taster SET archived_at = NULL WHERE id = ?", rowOf(db, Family::taster, id.text, "taster"));
  });
}

}  // namespace oddglass::shelf
