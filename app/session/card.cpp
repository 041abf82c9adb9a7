#include "session/card.h"

#include "domain/item_kinds.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "session/flights_in.h"
#include "session/known_differences.h"
#include "store/plans_read.h"

#include <algorithm>
#include <limits>
#include <stdexcept>

namespace oddglass::session {
namespace {

using store::bound;

std::int64_t tasterRow(SQLite::Database& db, const TasterId& who) {
  auto row = bound(db, "SELECT id FROM taster WHERE uid = ?", who.text);
  if (!row.executeStep()) throw Problem(Trouble::unknown, "taster", {{"what", "taster"}, {"text", who.text}});
  return row.getColumn(0).getInt64();
}

std::vector<ScoredSheet> scoredBy(SQLite::Database& db, std::int64_t taster, Millis until) {
  FlightsIn flights(db);
  store::PlansRead plans;
  std::map<std::int64_t, int> numbers;
  auto rows = bound(db, R"sql(
    SELECT s.id, s.uid, s.title, p.body, g.at, w.place, t.is_maker
      FROM place_person w JOIN place_taken t ON t.session_id = w.session_id AND t.place = w.place
      JOIN key_opened k ON k.session_id = w.session_id AND k.matches = 1
      JOIN log g ON g.session_id = k.session_id AND g.seq = k.seq AND g.kind = 'revealed' AND g.at <= ?2
      JOIN session s ON s.id = w.session_id JOIN session_plan p ON p.session_id = s.id
     WHERE w.taster_id = ?1 AND EXISTS (SELECT 1 FROM item i WHERE i.session_id = s.id AND i.kind = 'liking' AND i.per_cup = 1))sql", taster, until);
  std::vector<ScoredSheet> sheets;
  while (rows.executeStep()) {
    ScoredSheet sheet;
    RevealedSession& session = sheet.session;
    session.id = {rows.getColumn(1).getString()};
    session.title = rows.getColumn(2).getString();
    session.plan = plans.read(rows.getColumn(3).getString());
    session.revealedAt = rows.getColumn(4).getInt64();
    session.commitmentHolds = true;
    sheet.seat = {rows.getColumn(5).getInt()};
    sheet.isMaker = rows.getColumn(6).getInt() != 0;
    const auto liking = std::ranges::find_if(session.plan.items, isOverallLiking);
    if (!session.plan.sheet || liking == session.plan.items.end()) continue;
    const auto id = rows.getColumn(0).getInt64();
    const auto seats = flights.seats(id, session);
    for (const ShownPerson& person : session.people)
      if (const auto row = seats.find(person.place); !person.isMaker && person.place != sheet.seat && row != seats.end())
        sheet.known[person.place] = numbers.try_emplace(row->second, static_cast<int>(numbers.size()) + 1).first->second;
    flights.scores(id, liking->item, session);
    sheets.push_back(std::move(sheet));
  }
  std::ranges::stable_sort(sheets, {}, [](const ScoredSheet& each) { return each.session.revealedAt; });
  return sheets;
}

CardWish wishOf(SQLite::Statement& row) {
  CardWish wish{{row.getColumn(0).getString()}, row.getColumn(1).getInt64(), {}};
  if (!row.getColumn(2).isNull()) wish.shownAt = row.getColumn(2).getInt64();
  return wish;
}

}  // namespace

std::vector<CardWish> cards(store::Store& store) {
  return store::read(store, [](SQLite::Database& db) {
    std::vector<CardWish> all;
    SQLite::Statement rows(db, "SELECT t.uid, c.asked_at, c.shown_at FROM card c JOIN taster t ON t.id = c.taster_id ORDER BY c.asked_at, t.id");
    while (rows.executeStep()) all.push_back(wishOf(rows));
    return all;
  });
}

std::optional<CardWish> cardOf(store::Store& store, const TasterId& who) {
  return store::read(store, [&](SQLite::Database& db) -> std::optional<CardWish> {
    auto row = bound(db, "SELECT t.uid, c.asked_at, c.shown_at FROM card c JOIN taster t ON t.id = c.taster_id WHERE t.uid = ?", who.text);
    return row.executeStep() ? std::optional(wishOf(row)) : std::nullopt;
  });
}

void askForCard(store::Store& store, Clock& clock, const TasterId& who) {
  store::write(store, [&](SQLite::Database& db) {
    store::run(db, "INSERT OR IGNORE INTO card (taster_id, asked_at) VALUES (?, ?)", tasterRow(db, who), clock.now());
  });
}

void takeCardBack(store::Store& store, const TasterId& who) {
  store::write(store, [&](SQLite::Database& db) { store::run(db, "DELETE FROM card WHERE taster_id = ?", tasterRow(db, who)); });
}

void letCardBeSeen(store::Store& store, Clock& clock, const TasterId& who) {
  store::write(store, [&](SQLite::Database& db) {
    const auto taster = tasterRow(db, who);
    auto row = bound(db, "SELECT 1 FROM card WHERE taster_id = ?", taster);
    if (!row.executeStep()) throw Problem(Trouble::unknown, "card", {{"what", "card"}, {"text", who.text}});
    store::run(db, "UPDATE card SET shown_at = ? WHERE taster_id = ?", clock.now(), taster);
  });
}

CardTastings cardTastings(store::Store& store, const TasterId& who, std::optional<Millis> until) {
  return store::read(store, [&](SQLite::Database& db) {
    CardTastings tastings{who, {}, {}};
    const auto taster = tasterRow(db, who);
    try {
      tastings.sheets = scoredBy(db, taster, until.value_or(std::numeric_limits<Millis>::max()));
    } catch (const std::out_of_range& error) {
      throw Problem(Trouble::storeDamaged, "key", {{"text", error.what()}});
    }
    tastings.known = knownDifferences(store);
    std::erase_if(tastings.known, [&](const KnownDifference& known) {
      return (until && known.session.revealedAt > *until) || std::ranges::none_of(known.who, [&](const auto& seat) { return seat.second == who; });
    });
    return tastings;
  });
}

}  // namespace oddglass::session
