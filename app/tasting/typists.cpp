#include "domain/problem.h"
#include "store/step.h"
#include "store/together.h"
#include "tasting/table.h"
#include "tasting/typing.h"

#include <algorithm>

namespace oddglass::tasting {
namespace {

std::vector<Typist> typistsIn(SQLite::Database& db, std::int64_t session) {
  std::vector<Typist> all;
  // Whoever was invited is what they were at the seal; somebody else is what the shelf says now.
  auto rows = store::bound(db, R"sql(
    SELECT t.uid, t.name,
           coalesce(i.is_maker, EXISTS (SELECT 1 FROM session_lot s JOIN lot l ON l.id = s.lot_id JOIN made_by m ON m.beverage_id = l.beverage_id
                                         WHERE s.session_id = ?1 AND m.taster_id = t.id)),
           coalesce(i.pours, 0), p.place, i.taster_id IS NOT NULL,
           EXISTS (SELECT 1 FROM place_left e WHERE e.session_id = ?1 AND e.place = p.place)
      FROM taster t LEFT JOIN invited i ON i.session_id = ?1 AND i.taster_id = t.id LEFT JOIN place_person p ON p.session_id = ?1 AND p.taster_id = t.id
     WHERE t.archived_at IS NULL ORDER BY t.name, t.uid)sql", session);
  while (rows.executeStep()) {
    Typist each{{rows.getColumn(0).getString()}, rows.getColumn(1).getString(), rows.getColumn(2).getInt() != 0, rows.getColumn(3).getInt() != 0, false};
    const bool sits = !rows.getColumn(4).isNull(), isInvited = rows.getColumn(5).getInt() != 0, hasLeft = rows.getColumn(6).getInt() != 0;
    if (sits) each.place = Place{rows.getColumn(4).getInt()};
    each.hasOpen = sits ? !hasLeft && nextRound(db, session, {rows.getColumn(4).getInt()}) != 0 : isInvited && !each.isPourer;
    all.push_back(std::move(each));
  }
  return all;
}

}  // namespace

std::vector<Typist> typists(store::Store& store, const SessionId& session) {
  return store::read(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    askedIn(db, id);
    return typistsIn(db, id);
  });
}

namespace {

// Where whoever may type sits; 0 for somebody who does not.
Place placeOf(store::Store& store, const SessionId& session, const std::optional<TasterId>& typist) {
  if (!typist) return {0};
  std::string choices, name;
  for (const Typist& each : typists(store, session)) {
    if (each.taster == *typist && each.mayType()) return each.place.value_or(Place{0});
    if (each.mayType()) choices += (choices.empty() ? "" : ", ") + each.name;
    if (each.taster == *typist) name = each.name;
  }
  throw Problem(Trouble::notAChoice, "typist", {{"text", name}, {"choices", choices}});
}

}  // namespace

Receipt handInTyped(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::optional<TasterId>& typist, HandIn in) {
  in.via = Via::paper;
  return handInTable(store, clock, chance, session, typist, {std::move(in)}).front();
}

std::vector<Receipt> handInTable(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::optional<TasterId>& typist, std::vector<HandIn> all) {
  store::Together together(store);
  const Place place = placeOf(store, session, typist);
  for (HandIn& in : all) in.typedBy = place;
  std::vector<Receipt> receipts = handInAll(store, clock, chance, session, all);
  together.commit();
  return receipts;
}

}  // namespace oddglass::tasting
