#include "tasting/typed.h"

#include "canon/canonical.h"
#include "domain/problem.h"
#include "domain/text.h"
#include "tasting/table.h"

#include <algorithm>

namespace oddglass::tasting {

using canon::Json;
using store::bound;

void keepTyped(store::Store& store, Clock& clock, const SessionId& session, Place place, Round round, const std::vector<Reply>& replies) {
  Json body = Json::array();
  for (const Reply& reply : replies)
    body.push_back({reply.item.value, reply.code.value, reply.text ? Json(cleaned(*reply.text)) : Json(reply.value)});
  const std::string text = canon::canonical(body);
  if (replies.size() > 8000 || text.size() > 1'000'000) throw Problem(Trouble::tooLong, "replies", {{"limit", "8000"}});
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    requireOpenTable(db, id);
    requireSeated(db, id, place);
    if (nextRound(db, id, place) != round.value)
      throw Problem(Trouble::notThisRound, "round", {{"round", std::to_string(round.value)}, {"place", std::to_string(place.value)}});
    store::run(db, "INSERT INTO typed VALUES (?1, ?2, ?3, ?4, ?5) ON CONFLICT DO UPDATE SET round = ?3, body = ?4, at = ?5", id, place.value, round.value, text, clock.now());
  });
}

std::vector<Reply> typed(store::Store& store, const SessionId& session, Place place, Round round) {
  return store::read(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    std::vector<Reply> replies;
    auto row = bound(db, "SELECT body FROM typed WHERE session_id = ? AND place = ? AND round = ?", id, place.value, round.value);
    if (!row.executeStep()) return replies;
    const auto standing = currentCodes(db, id, place, round);
    for (const Json& each : Json::parse(row.getColumn(0).getString())) {
      Reply reply{{each.at(0).get<int>()}, 0, std::nullopt, {each.at(1).get<int>()}};
      if (each.at(2).is_string()) reply.text = each.at(2).get<std::string>();
      else reply.value = each.at(2).get<int>();
      const bool stands = reply.code.value == 0 || std::ranges::any_of(standing, [&](const auto& cup) { return cup.second == reply.code; });
      if (stands) replies.push_back(std::move(reply));
    }
    return replies;
  });
}

}  // namespace oddglass::tasting
