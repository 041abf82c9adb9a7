#include "session/about_lots.h"

#include "domain/day.h"
#include "domain/names.h"
#include "session/plan_now.h"
#include "store/step.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>

namespace oddglass::session {
namespace {

// Revealed sessions that poured at least so many of the lots.
std::set<std::int64_t> revealedWith(SQLite::Database& db, const std::vector<LotId>& lots, int fewest = 1) {
  std::map<std::int64_t, int> counts;
  for (const LotId& lot : lots) {
    auto rows = store::bound(db, R"sql(
      SELECT DISTINCT l.session_id FROM lot o JOIN session_lot l ON l.lot_id = o.id JOIN key_opened k ON k.session_id = l.session_id AND k.matches = 1
        JOIN session_state s ON s.session_id = l.session_id AND s.state = 'revealed' WHERE o.uid = ?)sql", lot.text);
    while (rows.executeStep()) ++counts[rows.getColumn(0).getInt64()];
  }
  std::set<std::int64_t> ids;
  for (const auto& [id, count] : counts)
    if (count >= fewest) ids.insert(id);
  return ids;
}

/// A session that somebody answered in.
struct HeldSession {
  SessionId id;
  std::string title;
  Millis at = 0;   ///< of the first answer
};

std::optional<HeldSession> heldSession(SQLite::Database& db, std::int64_t id) {
  auto row = store::bound(db, "SELECT s.uid, s.title, (SELECT min(at) FROM hand_in WHERE session_id = s.id) FROM session s WHERE s.id = ?", id);
  row.executeStep();
  if (row.getColumn(2).isNull()) return std::nullopt;
  return HeldSession{{row.getColumn(0).getString()}, row.getColumn(1).getString(), row.getColumn(2).getInt64()};
}

// Score sheets among these sessions with their row in the store, oldest first.
std::vector<std::pair<std::int64_t, LotSession>> sheetsOf(SQLite::Database& db, const std::set<std::int64_t>& ids) {
  std::vector<std::tuple<Millis, std::int64_t, LotSession>> found;
  for (const std::int64_t id : ids) {
    const auto held = heldSession(db, id);
    if (!held) continue;
    LotSession session{held->id, held->title, dayOf(held->at), planNow(db, id).plan, {}};
    if (session.plan.sheet) found.emplace_back(held->at, id, std::move(session));
  }
  std::ranges::sort(found, [](const auto& a, const auto& b) { return std::tie(std::get<0>(a), std::get<1>(a)) < std::tie(std::get<0>(b), std::get<1>(b)); });
  std::vector<std::pair<std::int64_t, LotSession>> sessions;
  for (auto& [at, id, session] : found) sessions.emplace_back(id, std::move(session));
  return sessions;
}

// The answers about `lots` in these sessions.
AboutLots answersIn(SQLite::Database& db, std::vector<std::pair<std::int64_t, LotSession>> sessions, const std::vector<LotId>& lots) {
  AboutLots about;
  std::map<std::string, int> people;
  std::map<LotQuestion, int> questions;
  struct Raw {
    LotAnswer answer;
    LotQuestion question;
  };
  std::vector<Raw> raw;
  SQLite::Statement rows(db, R"sql(
    SELECT coalesce(t.uid, ''), h.place, k.poured_slot, i.kind, i.part, i.word, i.low, i.high, a.value
      FROM hand_in h JOIN place_taken p ON p.session_id = h.session_id AND p.place = h.place AND p.is_maker = 0
      LEFT JOIN place_person w ON w.session_id = h.session_id AND w.place = h.place LEFT JOIN taster t ON t.id = w.taster_id
      JOIN answer a ON a.hand_in_id = h.id AND a.code <> 0 AND a.value IS NOT NULL
      JOIN item i ON i.session_id = h.session_id AND i.item = a.item AND i.per_cup = 1
      JOIN key_line k ON k.session_id = h.session_id AND k.code = a.code AND k.poured_slot IS NOT NULL
     WHERE h.session_id = ? AND NOT EXISTS (SELECT 1 FROM voided v WHERE v.session_id = h.session_id AND v.place = h.place AND v.round = h.round)
     ORDER BY h.place, h.round, a.item, a.code)sql");
  for (auto& [id, session] : sessions) {
    session.poured.clear();
    for (const LotId& lot : lots) session.poured.push_back(std::ranges::find(session.plan.lots, lot, &PlannedLot::lot) != session.plan.lots.end());
    const int at = static_cast<int>(about.sessions.size());
    rows.reset();
    rows.bind(1, id);
    while (rows.executeStep()) {
      const auto slot = static_cast<std::size_t>(rows.getColumn(2).getInt()) - 1;
      if (slot >= session.plan.lots.size()) continue;
      const auto lot = std::ranges::find(lots, session.plan.lots[slot].lot);
      const auto kind = named<ItemKind>(rows.getColumn(3).getString());
      const auto part = named<Part>(rows.getColumn(4).getString());
      if (lot == lots.end() || !kind || !part) continue;
      const std::string uid = rows.getColumn(0).getString();
      const std::string who = uid.empty() ? std::to_string(at) + '/' + std::to_string(rows.getColumn(1).getInt()) : uid;
      const auto [known, isNew] = people.emplace(who, static_cast<int>(people.size()));
      if (isNew) about.who.push_back({uid});
      const int person = known->second;
      const LotQuestion question{*kind, *part, rows.getColumn(5).getString(), rows.getColumn(6).getInt(), rows.getColumn(7).getInt()};
      questions.emplace(question, 0);
      raw.push_back({{at, person, static_cast<int>(lot - lots.begin()), 0, rows.getColumn(8).getInt()}, question});
    }
    about.sessions.push_back(std::move(session));
  }
  for (auto& [question, number] : questions) {
    number = static_cast<int>(about.questions.size());
    about.questions.push_back(question);
  }
  for (Raw& each : raw) {
    each.answer.question = questions.at(each.question);
    about.answers.push_back(each.answer);
  }
  about.people = static_cast<int>(people.size());
  return about;
}

}  // namespace

AboutLots aboutLots(store::Store& store, const std::vector<LotId>& lots) {
  return store::read(store, [&](SQLite::Database& db) { return answersIn(db, sheetsOf(db, revealedWith(db, lots)), lots); });
}

BatchTastings batchTastings(store::Store& store, const std::vector<Batch>& batches) {
  BatchTastings tastings;
  for (std::size_t i = 0; i < batches.size(); ++i)
    for (const Lot& lot : batches[i].lots) {
      tastings.lots.push_back(lot.id);
      tastings.names.push_back(batches[i].beverage.name + ", " + lot.name);
      tastings.batchOf.push_back(static_cast<int>(i));
    }
  return store::read(store, [&](SQLite::Database& db) {
    auto sessions = sheetsOf(db, revealedWith(db, tastings.lots));
    for (const auto& [id, session] : sessions)
      for (const PlannedLot& lot : session.plan.lots) {
        if (std::ranges::find(tastings.lots, lot.lot) != tastings.lots.end()) continue;
        tastings.lots.push_back(lot.lot);
        tastings.names.push_back(lot.beverageName + ", " + lot.lotName);
        tastings.batchOf.push_back(-1);
      }
    tastings.about = answersIn(db, std::move(sessions), tastings.lots);
    return tastings;
  });
}

void readPoured(store::Store& store, Reference& reference) {
  std::vector<LotId> lots;
  for (const Lot& lot : reference.lots) lots.push_back(lot.id);
  store::read(store, [&](SQLite::Database& db) {
    reference.poured.clear();
    for (std::size_t lot = 0; lot < lots.size(); ++lot)
      for (const std::int64_t id : revealedWith(db, {lots[lot]}))
        if (const auto held = heldSession(db, id)) reference.poured.push_back({static_cast<int>(lot), held->id, held->title, dayOf(held->at)});
    std::ranges::stable_sort(reference.poured, {}, &PouredIn::heldOn);
    reference.together = answersIn(db, sheetsOf(db, revealedWith(db, lots, 2)), lots);
  });
}

AboutLots aboutLots(store::Store& store, const Series& series) {
  std::vector<LotId> lots{series.batch};
  if (series.controlLot) lots.push_back(*series.controlLot);
  return aboutLots(store, lots);
}

}  // namespace oddglass::session
