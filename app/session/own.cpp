#include "session/own.h"

#include "domain/expectation.h"
#include "domain/item_kinds.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "session/flights_in.h"
#include "store/plans_read.h"
#include "store/step.h"

#include <algorithm>
#include <set>

namespace oddglass::session {
namespace {

// One question's answers of a score sheet are read: the overall liking, or what was expected about.
std::optional<Item> itemOf(const Plan& plan) {
  const auto liking = std::ranges::find_if(plan.items, isOverallLiking);
  if (liking != plan.items.end()) return liking->item;
  const auto above = expectedAbove(plan.lots, plan.marked, plan.items);
  return above ? std::optional(above->item) : std::nullopt;
}

// Holds the statements that are asked anew for every session.
class OwnReader {
 public:
  OwnReader(SQLite::Database& db, std::int64_t taster, bool isBrewer) : db_(db), taster_(taster), isBrewer_(isBrewer) {
    auto made = store::bound(db, "SELECT l.uid FROM made_by m JOIN lot l ON l.beverage_id = m.beverage_id WHERE m.taster_id = ?", taster);
    while (made.executeStep()) made_.insert({made.getColumn(0).getString()});
  }

  // Put in order afterwards: the texts of plans are long, and the store would carry them along.
  std::vector<OwnSession> read() {
    auto rows = store::bound(db_, R"sql(
      SELECT s.id, s.uid, s.title, s.came_from, p.body, g.at,
             (SELECT w.place FROM place_person w JOIN place_taken t ON t.session_id = w.session_id AND t.place = w.place AND t.is_maker = 1
               WHERE w.session_id = s.id AND w.taster_id = ?1)
        FROM key_opened k CROSS JOIN log g ON g.session_id = k.session_id AND g.seq = k.seq
        JOIN session s ON s.id = k.session_id JOIN session_plan p ON p.session_id = s.id
       WHERE g.kind = 'revealed' AND k.matches = 1)sql", taster_);
    std::vector<OwnSession> all;
    while (rows.executeStep()) {
      const bool sat = !rows.getColumn(6).isNull();
      OwnSession own;
      own.session.plan = plans_.read(rows.getColumn(4).getString());
      if (!(isBrewer_ && own.session.plan.expectationPc) && !(sat && own.session.plan.sheet)) continue;
      own.session.id = {rows.getColumn(1).getString()};
      own.session.title = rows.getColumn(2).getString();
      own.session.cameFrom = named<CameFrom>(rows.getColumn(3).getString()).value_or(CameFrom::here);
      own.session.revealedAt = rows.getColumn(5).getInt64();
      own.session.commitmentHolds = true;
      if (sat) own.seat = Place{rows.getColumn(6).getInt()};
      if (readOne(rows.getColumn(0).getInt64(), own)) all.push_back(std::move(own));
    }
    std::ranges::stable_sort(all, {}, [](const OwnSession& each) { return each.session.revealedAt; });
    return all;
  }

 private:
  bool readOne(std::int64_t id, OwnSession& own) {
    const Plan& plan = own.session.plan;
    own.isExpected = isBrewer_ && plan.expectationPc && own.session.cameFrom != CameFrom::import;
    const auto item = plan.sheet ? itemOf(plan) : std::nullopt;
    const auto isTheirs = [&](const PlannedLot& lot) { return lot.origin == Origin::batch && made_.contains(lot.lot); };
    const auto held = heldAgainst(plan.lots, plan.marked);
    // Beside a drink of their own, such as its cold twin, nobody leans to their own.
    if (own.seat && std::ranges::none_of(plan.lots, [&](const PlannedLot& lot) { return lot.slot == held && isTheirs(lot); }))
      for (const PlannedLot& lot : plan.lots)
        if (lot.role == LotRole::compared && isTheirs(lot)) own.own.push_back(lot.slot);
    if (plan.sheet ? !item || (own.own.empty() && !own.isExpected) : !own.isExpected) return false;
    readPeople(id, own);
    readOpen(id, own);
    if (item) flights_.scores(id, *item, own.session);
    else flights_.choices(id, own.session);
    return true;
  }

  void readPeople(std::int64_t id, OwnSession& own) {
    const auto known = flights_.seats(id, own.session);
    for (const ShownPerson& person : own.session.people)
      if (const auto row = known.find(person.place); !person.isMaker && row != known.end())
        own.known[person.place] = numbers_.try_emplace(row->second, static_cast<int>(numbers_.size()) + 1).first->second;
  }

  void readOpen(std::int64_t id, OwnSession& own) {
    const auto& items = own.session.plan.items;
    const auto liking = std::ranges::find_if(items, isOverallLiking);
    if (liking == items.end()) return;
    open_.reset();
    open_.bind(1, id);
    open_.bind(2, liking->item.value);
    while (open_.executeStep()) own.open[{open_.getColumn(0).getInt()}][{open_.getColumn(1).getInt()}] = open_.getColumn(2).getInt();
  }

  SQLite::Database& db_;
  std::int64_t taster_;
  bool isBrewer_;
  std::set<LotId> made_;
  std::map<std::int64_t, int> numbers_;
  FlightsIn flights_{db_};
  store::PlansRead plans_;
  SQLite::Statement open_{db_, "SELECT place, slot, value FROM open_answer WHERE session_id = ?1 AND item = ?2"};
};

}  // namespace

OwnTastings ownTastings(store::Store& store, const TasterId& who) {
  return store::read(store, [&](SQLite::Database& db) {
    auto row = store::bound(db, "SELECT id, is_brewer FROM taster WHERE uid = ?", who.text);
    if (!row.executeStep()) throw Problem(Trouble::unknown, "taster", {{"what", "taster"}, {"text", who.text}});
    const bool isBrewer = row.getColumn(1).getInt() != 0;
    try {
      return OwnTastings{who, isBrewer, OwnReader(db, row.getColumn(0).getInt64(), isBrewer).read()};
    } catch (const std::out_of_range& error) {
      throw Problem(Trouble::storeDamaged, "key", {{"text", error.what()}});
    }
  });
}

}  // namespace oddglass::session
