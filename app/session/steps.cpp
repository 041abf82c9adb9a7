#include "session/steps.h"

#include "domain/by_hand.h"
#include "domain/expectation.h"
#include "domain/flight_form.h"
#include "domain/names.h"
#include "domain/replies.h"
#include "domain/text.h"
#include "planning/give_aways.h"

#include <algorithm>
#include <map>
#include <set>

namespace oddglass::session {
namespace {

using canon::Json;

bool hasOnly(const Json& body, std::initializer_list<const char*> keys) {
  return body.is_object() && body.size() == keys.size() && std::ranges::all_of(keys, [&](const char* key) { return body.contains(key); });
}

std::optional<int> whole(const Json& value, int low, int high) {
  if (!value.is_number_integer()) return std::nullopt;
  if (value.is_number_unsigned() && value.get<std::uint64_t>() > static_cast<std::uint64_t>(std::max(0, high))) return std::nullopt;
  const auto number = value.get<std::int64_t>();
  if (number < low || number > high) return std::nullopt;
  return static_cast<int>(number);
}

bool isDigest(const Json& value) { return value.is_string() && canon::fromHex<32>(value.get_ref<const std::string&>()).has_value(); }

template <class E>
std::optional<E> choice(const Json& value) {
  return value.is_string() ? named<E>(value.get_ref<const std::string&>()) : std::nullopt;
}

// Walks through a log and knows who sits where, which flights are locked or set aside and which codes stand on the table.
class Walk {
 public:
  explicit Walk(const Plan& plan) : plan_(plan) {
    for (const Cup& cup : plan.cups) cups_[cup.code] = cup;
  }

  bool step(const store::LogEntry& entry, const Json& body) {
    if (isLooking_ && entry.event != Event::judged) return false;
    switch (entry.event) {
      case Event::sealed: return hasOnly(body, {"commitment", "plan", "schema"}) && isDigest(body["commitment"]) && isDigest(body["plan"]) && body["schema"] == 1;
      case Event::pourSheetOpened:
      case Event::poured:
      case Event::opened:
      case Event::revealed: return hasOnly(body, {});
      case Event::asPoured:
      case Event::broken:
      case Event::abandoned:
      case Event::decided: return hasOnly(body, {"digest"}) && isDigest(body["digest"]);
      case Event::closed: return hasOnly(body, {"missing"}) && whole(body["missing"], 0, plan_.places * plan_.rounds).has_value();
      case Event::placeTaken: return take(body);
      case Event::placeLeft: return hasOnly(body, {"place"}) && sits(body["place"]) && left_.insert(body["place"].get<int>()).second;
      case Event::said: return said(body);
      case Event::matsSwapped: return swap(body);
      case Event::placeFreed: return free(body);
      case Event::found: return find(body);
      case Event::began: return hasOnly(body, {"place", "round"}) && sits(body["place"]) && round(body["round"]) && isNext(body);
      case Event::answered:
        return (hasOnly(body, {"digest", "place", "round"}) || (hasOnly(body, {"digest", "place", "round", "typed_by"}) && mayType(body["typed_by"]))) && isDigest(body["digest"]) && sits(body["place"]) && round(body["round"]) && isNext(body) &&
               locked_.insert(flight(body)).second;
      case Event::looked: return look(body);
      case Event::judged: return judge(body);
      case Event::voided: return setAside(body);
      case Event::spilled: return spill(body);
      case Event::erased: return erase(body);
    }
    return false;
  }

  /// The codes of a flight that can be chosen now: all that stand there but the marked one.
  std::vector<Code> codes(Place place, Round round) const {
    const bool hasMarked = hasMarkedCup(plan_);
    std::vector<Code> all;
    for (const auto& [code, cup] : cups_)
      if (cup.place == place && cup.round == round && stands(cup) && !(hasMarked && cup.position == Position{1})) all.push_back(code);
    return all;
  }

 private:
  using Flight = std::pair<int, int>;

  static Flight flight(const Json& body) { return {body["place"].get<int>(), body["round"].get<int>()}; }
  bool place(const Json& value, int low = 1) const { return whole(value, low, plan_.places).has_value(); }
  bool round(const Json& value) const { return whole(value, 1, plan_.rounds).has_value(); }
  bool sits(const Json& value) const { return place(value) && taken_.contains(value.get<int>()) && !left_.contains(value.get<int>()); }
  bool isDone(const Flight& each) const { return locked_.contains(each) || aside_.contains(each); }

  bool isNext(const Json& body) const {
    const auto [at, number] = flight(body);
    if (plan_.stopping && (number > looks_ + 1 || stopped_)) return false;
    for (int before = 1; before < number; ++before)
      if (!isDone({at, before})) return false;
    return !isDone({at, number});
  }

  bool take(const Json& body) {
    if (!hasOnly(body, {"as", "maker", "place"}) || !choice<ShownAs>(body["as"]) || !body["maker"].is_boolean() || !place(body["place"])) return false;
    if (body["maker"].get<bool>()) makers_.insert(body["place"].get<int>());
    return taken_.insert(body["place"].get<int>()).second;
  }

  // Somebody who is not at the table (0), or who sits there, made none of it, and has nothing open.
  bool mayType(const Json& value) const {
    if (!place(value, 0)) return false;
    const int by = value.get<int>();
    if (by == 0) return true;
    if (!taken_.contains(by) || makers_.contains(by)) return false;
    const int open = !plan_.stopping ? plan_.rounds : stopped_ ? 0 : std::min(plan_.rounds, looks_ + 1);
    for (int each = 1; each <= open && !left_.contains(by); ++each)
      if (!isDone({by, each})) return false;
    return true;
  }

  bool swap(const Json& body) const {
    if (!hasOnly(body, {"places", "round"}) || !round(body["round"]) || !body["places"].is_array() || body["places"].size() != 2) return false;
    const Json &one = body["places"][0], &other = body["places"][1];
    return sits(one) && sits(other) && one.get<int>() < other.get<int>();
  }

  bool free(const Json& body) {
    if (!hasOnly(body, {"place"}) || !sits(body["place"])) return false;
    const int place = body["place"].get<int>();
    if (std::ranges::any_of(locked_, [&](const Flight& each) { return each.first == place; })) return false;
    makers_.erase(place);
    return taken_.erase(place) == 1;
  }

  // Read off once, after the flight was locked or set aside, and never where a key was drawn.
  bool find(const Json& body) {
    return plan_.routine != Routine::pourer && hasOnly(body, {"by", "digest", "place", "round"}) && choice<ReadBy>(body["by"]) && isDigest(body["digest"]) &&
           place(body["place"]) && taken_.contains(body["place"].get<int>()) && round(body["round"]) && isDone(flight(body)) && found_.insert(flight(body)).second;
  }

  bool said(const Json& body) const {
    if (!hasOnly(body, {"digest", "heard"}) || (!body["digest"].is_null() && !isDigest(body["digest"])) || !body["heard"].is_array()) return false;
    std::set<int> heard;
    return std::ranges::all_of(body["heard"], [&](const Json& each) { return place(each) && heard.insert(each.get<int>()).second; });
  }

  bool setAside(const Json& body) {
    return hasOnly(body, {"digest", "place", "reason", "round"}) && (body["digest"].is_null() || isDigest(body["digest"])) && choice<VoidReason>(body["reason"]) &&
           place(body["place"]) && round(body["round"]) && aside_.insert(flight(body)).second;
  }

  bool stands(const Cup& cup) const {
    const bool isOut = cup.spare > 0;
    return (!isOut || inUse_.contains(cup.code)) && !gone_.contains(cup.code);
  }

  bool spill(const Json& body) {
    if (!hasOnly(body, {"by", "code"})) return false;
    const auto code = whole(body["code"], 100, 9999), by = whole(body["by"], 100, 9999);
    if (!code || !by) return false;
    const auto from = cups_.find({*code}), to = cups_.find({*by});
    if (from == cups_.end() || to == cups_.end()) return false;
    const Cup &cup = from->second, &spare = to->second;
    if (cup.place != spare.place || cup.round != spare.round || cup.position != spare.position || spare.spare != cup.spare + 1) return false;
    if (!stands(cup) || locked_.contains({cup.place.value, cup.round.value})) return false;
    gone_.insert(cup.code);
    inUse_.insert(spare.code);
    return true;
  }

  // A sequential plan is looked at once after each whole round but the last, never after it said stop, and only when nobody has that round open.
  bool look(const Json& body) {
    if (!plan_.stopping || stopped_ || isLooking_ || !hasOnly(body, {"round"})) return false;
    if (whole(body["round"], looks_ + 1, std::min(looks_ + 1, plan_.rounds - 1)) != looks_ + 1) return false;
    for (int place : taken_)
      if (!left_.contains(place) && !isDone({place, looks_ + 1})) return false;
    ++looks_;
    isLooking_ = true;
    return true;
  }

  bool judge(const Json& body) {
    if (!isLooking_ || !hasOnly(body, {"go_on", "round"}) || !body["go_on"].is_boolean() || body["round"] != looks_) return false;
    stopped_ = !body["go_on"].get<bool>();
    isLooking_ = false;
    return true;
  }

  // Whoever takes everything back may have answered, and nobody answers there again: the place is left or the table is closed.
  bool erase(const Json& body) const {
    return hasOnly(body, {"place", "what"}) && choice<ErasureKind>(body["what"]) && place(body["place"], 0) &&
           (body["place"] == 0 || taken_.contains(body["place"].get<int>()));
  }

  const Plan& plan_;
  std::map<Code, Cup> cups_;
  std::set<int> taken_, makers_, left_;
  std::set<Flight> locked_, aside_, found_;
  std::set<Code> gone_, inUse_;
  int looks_ = 0;
  bool isLooking_ = false, stopped_ = false;
};

bool isTaken(const Plan& plan, const RecordedHandIn& in, const std::vector<Code>& codes) {
  std::vector<GivenReply> given;
  for (const RecordedReply& reply : in.replies) given.push_back({reply.item, reply.code, reply.value, reply.textDigest.has_value()});
  std::set<std::pair<Item, Code>> words;
  for (const RecordedWords& each : in.words)
    if (!words.emplace(each.item, each.code).second) return false;
  return !firstFault(plan.items, codes, given);
}

bool isLine(const std::string& text, std::size_t limit) { return cleaned(text) == text && lettersIn(text) <= limit; }

bool isPossible(const PlannedLot& lot) {
  return !lot.beverageName.empty() && isLine(lot.beverageName, 200) && !lot.lotName.empty() && isLine(lot.lotName, 200) && isLine(lot.storage, 200) &&
         looksLikeUid(lot.lot.text) && (!lot.abvBp || (*lot.abvBp >= 0 && *lot.abvBp <= 9600)) && lot.bottleMl >= 1 && lot.bottleMl <= 100000 &&
         (lot.packagedOn.empty() || isDay(lot.packagedOn)) && (lot.bestBefore.empty() || isDay(lot.bestBefore)) &&
         (lot.ingredients.how == IngredientsKnown::known || lot.ingredients.allergens.empty());
}

// What only some methods have must go with the method.
bool areExtrasPossible(const Plan& plan) {
  const FlightForm form = formOf(plan.method);
  const auto isLot = [&](const std::optional<Slot>& slot) { return !slot || (slot->value >= 1 && slot->value <= static_cast<int>(plan.lots.size())); };
  const bool asksMore = holdsAThing(plan.method, plan.question);
  return asksMore == !plan.attribute.empty() && asksMore == plan.expected.has_value() && isLine(plan.attribute, 60) && isLine(plan.dose, 60) &&
         (plan.dose.empty() || plan.question == Question::notice) && isLot(plan.expected) && isLot(plan.marked) &&
         (!plan.marked || form.hasMarked || plan.sheet) && (plan.method != Method::aNotA || plan.marked) && (!plan.mayHaveNone || (!form.hasRight && !plan.sheet) || plan.alsoPrefer) &&
         (!plan.alsoPrefer || mayAlsoPrefer(plan.method)) && (!plan.stopping || (mayStopEarly(plan.method, plan.lots.size()) && plan.rounds >= 2 &&
         plan.stopping->sharePm >= 1 && plan.stopping->sharePm <= 1000 && plan.stopping->betaPm >= 10 && plan.stopping->betaPm <= 500)) &&
         isLine(plan.serving.vessel, 60) && (!plan.serving.temperatureC || (*plan.serving.temperatureC >= coldestServed && *plan.serving.temperatureC <= warmestServed)) &&
         plan.evenings >= 1 && plan.evenings <= 6 && plan.wave >= 0 && plan.wave <= 999 &&
         (!plan.expectationPc || (*plan.expectationPc >= 1 && *plan.expectationPc <= 99 && mayExpect(plan))) && !planning::firstUnfit(plan);
}

bool areLotsPossible(const Plan& plan) {
  if (!plan.sheet && std::ranges::any_of(plan.lots, [](const PlannedLot& lot) { return lot.role != LotRole::compared; })) return false;
  if (plan.sheet ? plan.lots.empty() || plan.lots.size() > 40 : plan.lots.size() != 2 && !(plan.lots.size() == 3 && comparesThree(plan.method) && plan.rounds % 3 == 0 && !plan.marked)) return false;
  std::set<LotId> once;
  for (std::size_t i = 0; i < plan.lots.size(); ++i)
    if (plan.lots[i].slot != Slot{static_cast<int>(i) + 1} || !once.insert(plan.lots[i].lot).second || !isPossible(plan.lots[i])) return false;
  return true;
}

// A score sheet goes with its method and asks what can be asked; every other method asks its own questions. That the orders hold the plan's
// samples is looked at where they are drawn once more.
bool isSheetPossible(const Plan& plan) {
  if (plan.sheet.has_value() != (plan.method == Method::sheet)) return false;
  if (!plan.sheet) return plan.items == sheetOf(plan.method, plan.mayHaveNone, plan.alsoPrefer);
  const SheetPlan& sheet = *plan.sheet;
  const int coded = cupsInFlight(plan) - (plan.marked ? 1 : 0);
  return coded >= 1 && coded <= 40 && sheet.pauseSeconds >= 0 && sheet.pauseSeconds <= 600 && isLine(sheet.cleanser, 60) &&
         std::ranges::count(plan.lots, LotRole::warmUp, &PlannedLot::role) <= 1 && (!plan.marked || plan.lots[plan.marked->value - 1].role != LotRole::warmUp) &&
         !firstImpossible(plan.items, plan.marked.has_value()) && plan.items == numbered(plan.items, coded);
}

}  // namespace

std::optional<Seq> impossibleStep(const Plan& plan, const std::vector<store::LogEntry>& log, const std::vector<Json>& bodies) {
  constexpr Millis farthest = 253402300799999;  // the end of the year 9999
  Walk walk(plan);
  for (std::size_t i = 0; i < log.size(); ++i)
    if (log[i].at < 0 || log[i].at > farthest || !walk.step(log[i], bodies[i])) return log[i].seq;
  return std::nullopt;
}

std::optional<Seq> impossibleAnswer(const SessionRecord& record, const std::vector<Json>& bodies) {
  std::map<Seq, const RecordedHandIn*> handIns;
  for (const RecordedHandIn& in : record.handIns)
    if (!handIns.emplace(in.seq, &in).second) return in.seq;
  Walk walk(record.plan);
  for (std::size_t i = 0; i < record.log.size(); ++i) {
    walk.step(record.log[i], bodies[i]);
    const auto found = handIns.find(record.log[i].seq);
    if (record.log[i].event != Event::answered || found == handIns.end()) continue;
    const RecordedHandIn& in = *found->second;
    if (in.at != record.log[i].at || !isTaken(record.plan, in, walk.codes(in.place, in.round))) return in.seq;
  }
  return std::nullopt;
}

bool isPossible(const Plan& plan) {
  return plan.places >= 1 && plan.places <= 999 && plan.spares >= 0 && plan.spares <= plan.places && plan.rounds >= 1 && plan.rounds <= 99 && plan.cupMl >= 1 &&
         plan.cupMl <= 1000 && plan.ceilingGrams >= 1 && plan.ceilingGrams <= 100 && plan.country.size() == 2 &&
         std::ranges::all_of(plan.country, [](char c) { return c >= 'A' && c <= 'Z'; }) && plan.alphaPm >= 1 && plan.alphaPm <= 500 &&
         (!plan.limitPm || (*plan.limitPm >= 1 && *plan.limitPm <= 500)) && (plan.sought == Sought::difference || plan.limitPm) && plan.gammaPm >= 0 &&
         plan.gammaPm <= 999 && plan.panelPlanned >= 0 && plan.panelPlanned <= plan.places && plan.makersPlanned >= 0 && plan.makersPlanned <= plan.places &&
         mayHide(plan.routine, plan.method) && (isDrawn(plan.routine) || plan.sheet || plan.lots.size() == 2) && areLotsPossible(plan) && areExtrasPossible(plan) && isSheetPossible(plan);
}

}  // namespace oddglass::session
