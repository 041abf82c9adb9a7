#include "session/own.h"

#include "domain/expectation.h"
#include "domain/item_kinds.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "session/choice_reply.h"
#include "store/plan_json.h"
#include "store/step.h"

#include <algorithm>
#include <set>

namespace oddglass::session {
namespace {

using canon::Json;

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

  // The texts of plans are long: which are needed is seen before they are read, and they are put in order without being sorted by the store.
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
      const std::string body = rows.getColumn(4).getString();
      const bool sat = !rows.getColumn(6).isNull(), isWritten = isBrewer_ && body.find("\"expectation_pc\"") != std::string::npos;
      if (!isWritten && !(sat && body.find("\"method\":\"sheet\"") != std::string::npos)) continue;
      OwnSession own;
      own.session.id = {rows.getColumn(1).getString()};
      own.session.title = rows.getColumn(2).getString();
      own.session.cameFrom = named<CameFrom>(rows.getColumn(3).getString()).value_or(CameFrom::here);
      own.session.plan = store::planWithoutCups(body);
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
    readSaid(id, own.session);
    readVoided(id);
    if (item) readScores(id, *item, own.session);
    else readChoices(id, own.session);
    return true;
  }

  void readPeople(std::int64_t id, OwnSession& own) {
    isMaker_.clear();
    for (auto& rows = asked(people_, id); rows.executeStep();) {
      const Place place{rows.getColumn(0).getInt()};
      const bool maker = rows.getColumn(1).getInt() != 0;
      isMaker_[place] = maker;
      own.session.people.push_back({place, ShownAs::loose, {}, maker, false, false, false});
      if (!maker && !rows.getColumn(2).isNull()) own.known[place] = numbers_.try_emplace(rows.getColumn(2).getInt64(), static_cast<int>(numbers_.size()) + 1).first->second;
    }
  }

  void readSaid(std::int64_t id, RevealedSession& session) {
    for (auto& rows = asked(said_, id); rows.executeStep();) {
      SaidAloud said{{rows.getColumn(0).getInt()}, 0, {}, {}};
      const Json body = Json::parse(rows.getColumn(1).getString());
      for (const Json& place : body.at("heard")) said.heardBy.insert({place.get<int>()});
      session.said.push_back(std::move(said));
    }
  }

  void readVoided(std::int64_t id) {
    voided_.clear();
    for (auto& rows = asked(voids_, id); rows.executeStep();) voided_.insert({Place{rows.getColumn(0).getInt()}, Round{rows.getColumn(1).getInt()}});
  }

  // A flight begins with its first row; its cups are counted as they come.
  void readScores(std::int64_t id, Item item, RevealedSession& session) {
    scores_.reset();
    scores_.bind(2, item.value);
    RevealedFlight flight;
    for (auto& rows = asked(scores_, id); rows.executeStep();) {
      begin(flight, rows, session);
      const auto slot = rows.getColumn(5).isNull() ? std::nullopt : std::optional(Slot{rows.getColumn(5).getInt()});
      flight.drawn.push_back({rows.getColumn(4).getInt()});
      flight.poured.push_back(slot);
      flight.replies.push_back({item, Position{static_cast<int>(flight.drawn.size())}, rows.getColumn(3).getInt(), {}});
    }
    end(flight, session);
  }

  void readChoices(std::int64_t id, RevealedSession& session) {
    std::map<Code, Code> replaced;
    for (auto& rows = asked(spilled_, id); rows.executeStep();) replaced[{rows.getColumn(0).getInt()}] = {rows.getColumn(1).getInt()};
    struct Line {
      Slot drawn;
      std::optional<Slot> poured;
    };
    std::map<std::pair<Place, Round>, std::vector<Code>> first;
    std::map<Code, Line> lines;
    for (auto& rows = asked(cups_, id); rows.executeStep();) {
      const Code code{rows.getColumn(3).getInt()};
      if (rows.getColumn(2).getInt() == 0) first[{Place{rows.getColumn(0).getInt()}, Round{rows.getColumn(1).getInt()}}].push_back(code);
      lines[code] = {{rows.getColumn(4).getInt()}, rows.getColumn(5).isNull() ? std::nullopt : std::optional(Slot{rows.getColumn(5).getInt()})};
    }
    RevealedFlight flight;
    std::vector<Code> codes;
    for (auto& rows = asked(choices_, id); rows.executeStep();) {
      if (begin(flight, rows, session)) {
        codes.clear();
        for (Code code : first[{flight.place, flight.round}]) {
          flight.drawn.push_back(lines.at(code).drawn);
          int steps = 0;
          for (auto next = replaced.find(code); next != replaced.end() && steps < 9; next = replaced.find(code), ++steps) code = next->second;
          codes.push_back(code);
          flight.poured.push_back(lines.at(code).poured);
        }
      }
      if (!rows.getColumn(4).isNull()) addReply(flight, session.plan, {rows.getColumn(3).getInt()}, rows.getColumn(4).getInt(), codes);
    }
    end(flight, session);
  }

  // Place, round and entry stand first in a row. True where another flight begins.
  bool begin(RevealedFlight& flight, SQLite::Statement& rows, RevealedSession& session) {
    const Place place{rows.getColumn(0).getInt()};
    const Round round{rows.getColumn(1).getInt()};
    if (flight.place == place && flight.round == round) return false;
    end(flight, session);
    flight.place = place;
    flight.round = round;
    flight.lockedAt = {rows.getColumn(2).getInt()};
    if (voided_.contains({place, round})) flight.voided = VoidReason::other;
    return true;
  }

  void end(RevealedFlight& flight, RevealedSession& session) {
    if (flight.place.value > 0) {
      const auto maker = isMaker_.find(flight.place);
      if (maker == isMaker_.end()) throw Problem(Trouble::storeDamaged, "place_taken");
      if (maker->second) session.makers.emplace_back(std::move(flight));
      else session.panel.emplace_back(std::move(flight));
    }
    flight = {};
  }

  static SQLite::Statement& asked(SQLite::Statement& statement, std::int64_t id) {
    statement.reset();
    statement.bind(1, id);
    return statement;
  }

  SQLite::Database& db_;
  std::int64_t taster_;
  bool isBrewer_;
  std::set<LotId> made_;
  std::map<std::int64_t, int> numbers_;
  std::map<Place, bool> isMaker_;
  std::set<std::pair<Place, Round>> voided_;
  SQLite::Statement people_{db_, "SELECT t.place, t.is_maker, w.taster_id FROM place_taken t LEFT JOIN place_person w ON w.session_id = t.session_id AND w.place = t.place WHERE t.session_id = ?1 ORDER BY t.place"};
  SQLite::Statement said_{db_, "SELECT seq, body FROM log WHERE session_id = ?1 AND kind = 'said' ORDER BY seq"};
  SQLite::Statement voids_{db_, "SELECT place, round FROM voided WHERE session_id = ?1"};
  SQLite::Statement spilled_{db_, "SELECT code, by_code FROM spilled WHERE session_id = ?1"};
  SQLite::Statement scores_{db_, R"sql(
    SELECT h.place, h.round, h.seq, a.value, k.slot, k.poured_slot
      FROM hand_in h JOIN answer a ON a.hand_in_id = h.id AND a.item = ?2 JOIN key_line k ON k.session_id = h.session_id AND k.code = a.code
     WHERE h.session_id = ?1 AND a.value IS NOT NULL ORDER BY h.place, h.round)sql"};
  SQLite::Statement cups_{db_, R"sql(
    SELECT c.place, c.round, c.spare, c.code, k.slot, k.poured_slot
      FROM hand_in h JOIN cup c ON c.session_id = h.session_id AND c.place = h.place AND c.round = h.round
      JOIN key_line k ON k.session_id = c.session_id AND k.code = c.code
     WHERE h.session_id = ?1 ORDER BY c.place, c.round, c.position, c.spare)sql"};
  SQLite::Statement choices_{db_, R"sql(
    SELECT h.place, h.round, h.seq, a.item, a.value FROM hand_in h JOIN answer a ON a.hand_in_id = h.id
     WHERE h.session_id = ?1 ORDER BY h.place, h.round, a.item)sql"};
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
