#include "session/known_differences.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "session/flights_in.h"
#include "store/plans_read.h"

#include <algorithm>
#include <stdexcept>

namespace oddglass::session {
namespace {

std::map<std::int64_t, TasterId> tastersIn(SQLite::Database& db) {
  std::map<std::int64_t, TasterId> all;
  SQLite::Statement rows(db, "SELECT id, uid FROM taster");
  while (rows.executeStep()) all[rows.getColumn(0).getInt64()] = {rows.getColumn(1).getString()};
  return all;
}

KnownDifferences readAll(SQLite::Database& db) {
  const auto tasters = tastersIn(db);
  FlightsIn flights(db);
  store::PlansRead plans;
  SQLite::Statement rows(db, R"sql(
    SELECT s.id, s.uid, s.title, s.came_from, p.body, g.at
      FROM session_plan p JOIN session s ON s.id = p.session_id JOIN key_opened k ON k.session_id = p.session_id AND k.matches = 1
      JOIN log g ON g.session_id = k.session_id AND g.seq = k.seq AND g.kind = 'revealed'
     WHERE p.question = 'notice')sql");
  KnownDifferences all;
  while (rows.executeStep()) {
    KnownDifference known;
    RevealedSession& session = known.session;
    session.id = {rows.getColumn(1).getString()};
    session.title = rows.getColumn(2).getString();
    session.cameFrom = named<CameFrom>(rows.getColumn(3).getString()).value_or(CameFrom::here);
    session.plan = plans.read(rows.getColumn(4).getString());
    session.revealedAt = rows.getColumn(5).getInt64();
    session.commitmentHolds = true;
    for (const auto& [place, row] : flights.seats(rows.getColumn(0).getInt64(), session))
      if (const auto taster = tasters.find(row); taster != tasters.end()) known.who[place] = taster->second;
    flights.choices(rows.getColumn(0).getInt64(), session);
    all.push_back(std::move(known));
  }
  std::ranges::stable_sort(all, {}, [](const KnownDifference& each) { return each.session.revealedAt; });
  return all;
}

}  // namespace

KnownDifferences knownDifferences(store::Store& store) {
  return store::read(store, [](SQLite::Database& db) {
    try {
      return readAll(db);
    } catch (const std::out_of_range& error) {
      throw Problem(Trouble::storeDamaged, "key", {{"text", error.what()}});
    }
  });
}

}  // namespace oddglass::session
