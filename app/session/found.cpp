#include "session/found.h"

#include "domain/by_hand.h"
#include "domain/flight_form.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "session/plan_now.h"
#include "session/vault.h"
#include "store/together.h"
#include "tasting/table.h"

#include <algorithm>
#include <map>
#include <set>

namespace oddglass::session {
namespace {

using store::bound;

Problem::Values where(Place place, Round round) { return {{"place", std::to_string(place.value)}, {"round", std::to_string(round.value)}}; }

bool hasRow(SQLite::Database& db, const char* sql, std::int64_t session, Place place, Round round) {
  auto row = bound(db, sql, session, place.value, round.value);
  return row.executeStep();
}

bool isLocked(SQLite::Database& db, std::int64_t session, Place place, Round round) {
  return hasRow(db, "SELECT 1 FROM hand_in WHERE session_id = ? AND place = ? AND round = ?", session, place, round);
}

bool isSetAside(SQLite::Database& db, std::int64_t session, Place place, Round round) {
  return hasRow(db, "SELECT 1 FROM voided WHERE session_id = ? AND place = ? AND round = ?", session, place, round);
}

bool isReadOff(SQLite::Database& db, std::int64_t session, Place place, Round round) {
  return hasRow(db, R"sql(SELECT 1 FROM log WHERE session_id = ? AND kind = 'found' AND json_extract(body, '$.place') = ? AND json_extract(body, '$.round') = ?)sql",
                session, place, round);
}

// Alone the cups are washed up before the next round; the others' lists keep until nobody tastes any more.
bool isTime(State state, Routine routine) { return state == State::closed || (state == State::tasting && routine == Routine::alone); }

void requireTime(SQLite::Database& db, std::int64_t session, Routine routine) {
  if (isDrawn(routine)) throw Problem(Trouble::keyDrawn, "session");
  const State state = store::stateOf(db, session);
  if (isTime(state, routine)) return;
  if (state == State::sealed || state == State::tasting) throw Problem(routine == Routine::alone ? Trouble::notTastedYet : Trouble::tableOpen, "session", where({1}, {1}));
  throw Problem(Trouble::wrongState, "session", {{"state", std::string(nameOf(state))}});
}

// The cups of a flight whose content is hidden, from left to right, as they stand now.
std::vector<std::pair<Position, Code>> hiddenCups(SQLite::Database& db, std::int64_t session, const Plan& plan, Place place, Round round) {
  auto cups = tasting::currentCodes(db, session, place, round);
  if (hasMarkedCup(plan) && !cups.empty()) cups.erase(cups.begin());
  return cups;
}

bool setsAside(const Plan& plan) {
  const auto hands = pouredByHand(plan.routine, plan.method, plan.expected);
  return hands && hands->setsOneAside;
}

void requireEachOnce(const FoundFlight& found, const std::vector<std::pair<Position, Code>>& cups, bool hasAside) {
  std::set<int> wanted, told;
  std::string codes;
  for (const auto& [position, code] : cups) {
    wanted.insert(code.value);
    codes += (codes.empty() ? "" : ", ") + std::to_string(code.value);
  }
  if (hasAside) wanted.insert(0);
  auto values = where(found.place, found.round);
  for (const FoundLine& line : found.lines) {
    values["code"] = std::to_string(line.code.value);
    values["codes"] = codes;
    if (!wanted.contains(line.code.value)) throw Problem(Trouble::codeNotHere, "code", values);
    if (!told.insert(line.code.value).second) throw Problem(Trouble::cupsNotTold, "code", values);
  }
  values["codes"] = codes;
  if (told != wanted) throw Problem(Trouble::cupsNotTold, "code", values);
}

std::optional<VoidReason> keep(SQLite::Database& db, std::int64_t session, Clock& clock, Chance& chance, const Plan& plan, FoundFlight found, ReadBy by) {
  requireTime(db, session, plan.routine);
  tasting::requirePlace(db, session, found.place);
  tasting::requireRound(db, session, found.round);
  auto taken = bound(db, "SELECT 1 FROM place_taken WHERE session_id = ? AND place = ?", session, found.place.value);
  if (!taken.executeStep()) throw Problem(Trouble::placeEmpty, "place", where(found.place, found.round));
  const bool isVoid = isSetAside(db, session, found.place, found.round);
  if (!isVoid && !isLocked(db, session, found.place, found.round)) throw Problem(Trouble::notTastedYet, "round", where(found.place, found.round));
  if (isReadOff(db, session, found.place, found.round)) throw Problem(Trouble::alreadyRead, "round", where(found.place, found.round));
  requireEachOnce(found, hiddenCups(db, session, plan, found.place, found.round), setsAside(plan));
  for (const FoundLine& line : found.lines)
    if (line.slot && std::ranges::find(plan.lots, *line.slot, &PlannedLot::slot) == plan.lots.end())
      throw Problem(Trouble::unknown, "lot", {{"what", "lot"}, {"text", std::to_string(line.slot->value)}});
  // In the order of the codes, so that the order of typing tells nothing.
  std::ranges::sort(found.lines, {}, &FoundLine::code);
  const canon::Salt salt = chance.bytes<16>();
  const Logged entry = store::Log::append(db, session, clock.now(), Event::found,
                                          {{"by", std::string(nameOf(by))}, {"digest", tasting::digestOf(salt, foundText(found))}, {"place", found.place.value}, {"round", found.round.value}});
  vault::putFound(db, session, {entry.seq(), salt, found}, chance);
  const auto reason = whyNotCounted(plan, found);
  if (!reason || isVoid) return std::nullopt;
  tasting::setAsideWithin(db, session, clock.now(), chance.bytes<16>(), found.place, found.round, *reason, {});
  return reason;
}

}  // namespace

std::string foundText(const FoundFlight& found) {
  canon::Json lines = canon::Json::array();
  for (const FoundLine& line : found.lines) lines.push_back({line.code.value, line.slot ? canon::Json(line.slot->value) : canon::Json(nullptr)});
  return canon::canonical({{"lines", lines}, {"place", found.place.value}, {"round", found.round.value}});
}

std::optional<VoidReason> whyNotCounted(const Plan& plan, const FoundFlight& found) {
  std::map<Slot, int> count;
  for (const FoundLine& line : found.lines) {
    if (!line.slot) return VoidReason::cannotRead;
    ++count[*line.slot];
  }
  if (const auto hands = pouredByHand(plan.routine, plan.method, plan.expected))
    return count[{1}] == hands->cups[0] && count[{2}] == hands->cups[1] ? std::nullopt : std::optional(VoidReason::doesNotAddUp);
  // Whole bottles of a score sheet: each lot is in one bottle, so no flight holds one twice.
  const bool isOnce = std::ranges::all_of(count, [&](const auto& each) {
    const auto lot = std::ranges::find(plan.lots, each.first, &PlannedLot::slot);
    return each.second == 1 && lot != plan.lots.end() && lot->role != LotRole::warmUp;
  });
  return isOnce ? std::nullopt : std::optional(VoidReason::doesNotAddUp);
}

std::vector<std::pair<Code, std::optional<Slot>>> linesOf(const Plan& plan, const FoundFlight& found) {
  std::vector<std::pair<Code, std::optional<Slot>>> lines;
  for (const FoundLine& line : found.lines)
    if (line.code.value != 0) lines.emplace_back(line.code, line.slot);
  if (hasMarkedCup(plan) && plan.marked)
    for (const Cup& cup : plan.cups)
      if (cup.place == found.place && cup.round == found.round && cup.position == Position{1}) lines.emplace_back(cup.code, plan.marked);
  return lines;
}

std::vector<ToRead> toRead(store::Store& store, const SessionId& session) {
  return store::read(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    const Plan plan = planNow(db, id).plan;
    if (isDrawn(plan.routine)) throw Problem(Trouble::keyDrawn, "session");
    const bool time = isTime(store::stateOf(db, id), plan.routine);
    std::vector<ToRead> all;
    auto rows = bound(db, R"sql(
      SELECT DISTINCT c.place, c.round FROM cup c JOIN place_taken t ON t.session_id = c.session_id AND t.place = c.place
       WHERE c.session_id = ? ORDER BY c.round, c.place)sql", id);
    while (rows.executeStep()) {
      ToRead each{{rows.getColumn(0).getInt()}, {rows.getColumn(1).getInt()}, {}, setsAside(plan)};
      each.isVoid = isSetAside(db, id, each.place, each.round);
      if (!each.isVoid && !isLocked(db, id, each.place, each.round)) continue;
      each.cups = hiddenCups(db, id, plan, each.place, each.round);
      each.isRead = isReadOff(db, id, each.place, each.round);
      each.mayRead = time && !each.isRead;
      all.push_back(std::move(each));
    }
    return all;
  });
}

std::vector<std::optional<VoidReason>> readOffAll(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::vector<FoundFlight>& all, ReadBy by) {
  return store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    const Plan plan = planNow(db, id).plan;
    std::vector<std::optional<VoidReason>> reasons;
    for (const FoundFlight& each : all) reasons.push_back(keep(db, id, clock, chance, plan, each, by));
    return reasons;
  });
}

std::optional<VoidReason> readOff(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const FoundFlight& found, ReadBy by) {
  return readOffAll(store, clock, chance, session, {found}, by).front();
}

std::vector<FoundFlight> joined(const std::vector<MarkedLot>& first, const std::vector<MarkedCode>& second) {
  using Mark = std::tuple<Place, Round, std::string>;
  std::map<Mark, std::optional<Slot>> lots;
  const auto values = [](const auto& line) {
    auto all = where(line.place, line.round);
    all["mark"] = all["text"] = line.mark;
    return all;
  };
  for (const MarkedLot& line : first)
    if (!lots.emplace(Mark{line.place, line.round, line.mark}, line.slot).second) throw Problem(Trouble::alreadyThere, "mark", values(line));
  std::set<Mark> once;
  std::map<std::pair<Round, Place>, FoundFlight> flights;
  for (const MarkedCode& line : second) {
    const Mark mark{line.place, line.round, line.mark};
    if (!once.insert(mark).second) throw Problem(Trouble::alreadyThere, "mark", values(line));
    const auto lot = lots.find(mark);
    if (lot == lots.end()) throw Problem(Trouble::markNotThere, "mark", values(line));
    FoundFlight& flight = flights[{line.round, line.place}];
    flight.place = line.place;
    flight.round = line.round;
    flight.lines.push_back({line.code, lot->second});
  }
  std::vector<FoundFlight> all;
  for (auto& [where, flight] : flights) all.push_back(std::move(flight));
  return all;
}

std::vector<std::optional<VoidReason>> peel(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::vector<Peeled>& all, ReadBy by) {
  store::Together together(store);
  const Plan plan = store::read(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    Plan now = planNow(db, id).plan;
    requireTime(db, id, now.routine);
    return now;
  });
  const int bottles = letteredBottles(plan);
  std::map<int, std::optional<Slot>> under;
  for (const Peeled& each : all) under[each.bottle] = each.slot;
  const bool isEach = under.size() == all.size() && static_cast<int>(all.size()) == bottles && bottles > 0 && under.begin()->first == 1 && under.rbegin()->first == bottles;
  if (!isEach) throw Problem(Trouble::bottlesNotTold, "bottle", {{"bottles", std::to_string(bottles)}});
  // Two labels that say the same spoil all that was poured from either; a flight does not show it where only one of them stood in it.
  std::map<Slot, int> times;
  for (const auto& [bottle, slot] : under)
    if (slot) ++times[*slot];
  std::map<Code, std::optional<Slot>> lots;
  for (const Cup& cup : plan.cups) lots[cup.code] = under[cup.bottle];
  std::vector<FoundFlight> flights;
  for (const ToRead& each : toRead(store, session)) {
    if (each.isRead) throw Problem(Trouble::alreadyRead, "round", where(each.place, each.round));
    FoundFlight flight{each.place, each.round, {}};
    for (const auto& [position, code] : each.cups) flight.lines.push_back({code, lots[code]});
    flights.push_back(std::move(flight));
  }
  auto reasons = readOffAll(store, clock, chance, session, flights, by);
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    for (std::size_t i = 0; i < flights.size(); ++i) {
      const bool isTwice = std::ranges::any_of(flights[i].lines, [&](const FoundLine& line) { return line.slot && times[*line.slot] > 1; });
      if (!isTwice || isSetAside(db, id, flights[i].place, flights[i].round)) continue;
      tasting::setAsideWithin(db, id, clock.now(), chance.bytes<16>(), flights[i].place, flights[i].round, VoidReason::doesNotAddUp, {});
      reasons[i] = VoidReason::doesNotAddUp;
    }
  });
  together.commit();
  return reasons;
}

}  // namespace oddglass::session
