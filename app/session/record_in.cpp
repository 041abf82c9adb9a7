#include "blinding/commitment.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "session/opened.h"
#include "session/plan_now.h"
#include "session/record.h"
#include "session/vault.h"
#include "store/blob.h"
#include "store/plan_json.h"
#include "tasting/table.h"

#include <sqlite3.h>

#include <algorithm>

namespace oddglass::session {
namespace {

using canon::Json;
using store::bound;

// Fills the tables by going through the log once more, entry by entry, so that every guard of the store sees what it saw then.
class Replay {
 public:
  Replay(SQLite::Database& db, const SessionRecord& record, Chance& chance) : db_(db), record_(record), chance_(chance) {}

  void run() {
    store::run(db_, "INSERT INTO session (uid, title, guest_title, came_from, created_at) VALUES (?, ?, ?, ?, ?)", record_.id.text, record_.title,
               record_.guestTitle, std::string(nameOf(record_.cameFrom)), record_.createdAt);
    session_ = db_.getLastInsertRowid();
    for (const store::LogEntry& entry : record_.log) {
      const Logged logged = store::Log::putAgain(db_, session_, entry);
      follow(entry, Json::parse(entry.body), logged);
    }
    for (const RecordedPerson& person : record_.people) seat(person);
    for (const RecordedOpen& each : record_.open)
      store::run(db_, "INSERT INTO open_answer VALUES (?, ?, ?, ?, ?, ?)", session_, each.place.value, each.slot.value, each.item.value, each.value, each.at);
  }

 private:
  void follow(const store::LogEntry& entry, const Json& body, const Logged& logged) {
    const auto number = [&](const char* key) { return body.at(key).get<int>(); };
    switch (entry.event) {
      case Event::sealed: plan(); break;
      case Event::placeTaken:
        store::run(db_, "INSERT INTO place_taken VALUES (?, ?, ?, ?, ?)", session_, number("place"), entry.seq.value, body.at("maker").get<bool>() ? 1 : 0,
                   body.at("as").get<std::string>());
        break;
      case Event::placeLeft: store::run(db_, "INSERT INTO place_left VALUES (?, ?, ?)", session_, number("place"), entry.seq.value); break;
      case Event::placeFreed: store::run(db_, "DELETE FROM place_taken WHERE session_id = ? AND place = ?", session_, number("place")); break;
      case Event::spilled: store::run(db_, "INSERT INTO spilled VALUES (?, ?, ?, ?)", session_, number("code"), number("by"), entry.seq.value); break;
      case Event::voided:
        store::run(db_, "INSERT INTO voided VALUES (?, ?, ?, ?, ?)", session_, number("place"), number("round"), body.at("reason").get<std::string>(),
                   entry.seq.value);
        break;
      case Event::said:
        for (const Json& place : body.at("heard")) store::run(db_, "INSERT INTO said_aloud VALUES (?, ?, ?)", session_, entry.seq.value, place.get<int>());
        break;
      case Event::answered: answers(entry.seq); break;
      case Event::erased:
        store::run(db_, "INSERT OR IGNORE INTO erasure VALUES (?, ?, ?, ?)", session_, number("place"), body.at("what").get<std::string>(), entry.seq.value);
        break;
      case Event::revealed:
      case Event::broken: key(logged); break;
      case Event::pourSheetOpened:
      case Event::poured:
      case Event::asPoured:
      case Event::matsSwapped:
      case Event::found:
      case Event::opened:
      case Event::began:
      case Event::looked:
      case Event::judged:
      case Event::closed:
      case Event::abandoned:
      case Event::decided: break;
    }
    remark(logged);
  }

  void plan() {
    for (const PlannedLot& lot : record_.plan.lots) putOnShelf(lot);
    writePlan(db_, session_, record_.plan, record_.planText, record_.commitment, record_.sealMark);
    for (const RecordedPromise& each : record_.promises) {
      auto row = bound(db_, "INSERT INTO promise (session_id, outcome, text, salt) VALUES (?, ?, ?, ?)", session_, std::string(nameOf(each.outcome)), each.text);
      store::bindBlob(row, 4, each.salt);
      row.exec();
    }
  }

  // A lot that this shelf does not know comes from the plan, put away at once.
  void putOnShelf(const PlannedLot& lot) {
    auto there = bound(db_, "SELECT 1 FROM lot WHERE uid = ?", lot.lot.text);
    if (there.executeStep()) return;
    auto beverage = bound(db_, R"sql(
      INSERT INTO beverage (uid, origin, kind, name, abv_bp, abv_from, ingredients, archived_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?))sql",
                          canon::hex(chance_.bytes<16>()), std::string(nameOf(lot.origin)), std::string(nameOf(lot.kind)), lot.beverageName);
    if (lot.abvBp) {
      beverage.bind(5, *lot.abvBp);
      beverage.bind(6, "label");
    }
    beverage.bind(7, std::string(nameOf(lot.ingredients.how)));
    beverage.bind(8, record_.createdAt);
    beverage.exec();
    const auto row = db_.getLastInsertRowid();
    for (Allergen each : lot.ingredients.allergens) store::run(db_, "INSERT INTO beverage_allergen VALUES (?, ?)", row, std::string(nameOf(each)));
    auto insert = bound(db_, "INSERT INTO lot (uid, beverage_id, name, bottle_ml, storage, archived_at, packaged_on, best_before) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                        lot.lot.text, row, lot.lotName, lot.bottleMl, lot.storage, record_.createdAt);
    if (!lot.packagedOn.empty()) insert.bind(7, lot.packagedOn);
    if (!lot.bestBefore.empty()) insert.bind(8, lot.bestBefore);
    insert.exec();
  }

  void answers(Seq seq) {
    const auto found = std::ranges::find(record_.handIns, seq, &RecordedHandIn::seq);
    if (found == record_.handIns.end()) return;
    const RecordedHandIn& in = *found;
    auto insert = bound(db_, "INSERT INTO hand_in (session_id, place, round, via, at, seq, client_id, salt) VALUES (?, ?, ?, ?, ?, ?, ?, ?)", session_,
                        in.place.value, in.round.value, in.via, in.at, in.seq.value);
    store::bindBlob(insert, 7, in.clientId);
    store::bindBlob(insert, 8, in.salt);
    insert.exec();
    const auto handIn = db_.getLastInsertRowid();
    for (const RecordedReply& reply : in.replies) {
      auto row = bound(db_, "INSERT INTO answer (hand_in_id, item, code, value, text_digest) VALUES (?, ?, ?, ?, ?)", handIn, reply.item.value, reply.code.value);
      if (reply.value) row.bind(4, *reply.value);
      if (reply.textDigest) store::bindBlob(row, 5, *reply.textDigest);
      row.exec();
    }
    for (const RecordedWords& words : in.words) {
      auto row = bound(db_, "INSERT INTO answer_words (hand_in_id, item, code, text, salt) VALUES (?, ?, ?, ?, ?)", handIn, words.item.value, words.code.value, words.text);
      store::bindBlob(row, 5, words.salt);
      row.exec();
    }
  }

  void remark(const Logged& logged) {
    for (const RecordedRemark& each : record_.remarks)
      if (each.seq == logged.seq()) tasting::keepRemark(db_, session_, logged, each.about.c_str(), each.salt, each.text);
  }

  void key(const Logged& logged) {
    if (!record_.key) throw Problem(Trouble::brokenReference, "key", {{"text", "is missing"}});
    const blinding::KeyContents contents{record_.key->seed, record_.key->salt, record_.key->generator, record_.key->lines, blinding::custodyOf(record_.plan.routine)};
    std::vector<vault::Poured> poured;
    std::map<Code, std::optional<Slot>> really;
    for (const RecordedPour& each : record_.key->poured) {
      poured.push_back({each.seq, each.salt, each.code, each.slot});
      really[each.code] = each.slot;
    }
    std::vector<vault::Found> found;
    std::vector<FoundFlight> flights;
    for (const RecordedFound& each : record_.key->found) {
      found.push_back({each.seq, each.salt, each.flight});
      flights.push_back(each.flight);
    }
    vault::putOpened(db_, session_, contents, poured, found, chance_);
    writeOpened(db_, session_, planNow(db_, session_), contents, logged, really, flights);
  }

  void seat(const RecordedPerson& person) {
    auto there = bound(db_, "SELECT id FROM taster WHERE uid = ?", person.taster.text);
    std::int64_t row = 0;
    if (there.executeStep()) {
      row = there.getColumn(0).getInt64();
    } else {
      store::run(db_, "INSERT INTO taster (uid, name, nickname, archived_at) VALUES (?, ?, ?, ?)", person.taster.text, person.name, person.nickname,
                 record_.createdAt);
      row = db_.getLastInsertRowid();
    }
    store::run(db_, "INSERT INTO place_person VALUES (?, ?, ?)", session_, person.place.value, row);
  }

  SQLite::Database& db_;
  const SessionRecord& record_;
  Chance& chance_;
  std::int64_t session_ = 0;
};

}  // namespace

void insertRecord(store::Store& store, Clock&, Chance& chance, const SessionRecord& record) {
  if (record.state != State::revealed && record.state != State::broken)
    throw Problem(Trouble::stillSealed, "session", {{"text", record.id.text}});
  const Verification verification = check(record);
  for (const Check& each : verification.checks)
    if (!each.holds) throw Problem(Trouble::doesNotVerify, each.what, {{"text", each.where}, {"title", record.title}});
  store::write(store, [&](SQLite::Database& db) {
    auto there = bound(db, "SELECT 1 FROM session WHERE uid = ?", record.id.text);
    if (there.executeStep()) throw Problem(Trouble::sessionThere, "session", {{"text", record.id.text}, {"title", record.title}});
    try {
      Replay(db, record, chance).run();
    } catch (const Json::exception& error) {
      throw Problem(Trouble::brokenReference, "log", {{"text", error.what()}});
    } catch (const SQLite::Exception& error) {
      // A guard of the store has seen what `check` did not: this record cannot have come about.
      if (error.getErrorCode() != SQLITE_CONSTRAINT) throw;
      throw Problem(Trouble::brokenReference, "session", {{"text", error.what()}});
    }
  });
}

}  // namespace oddglass::session
