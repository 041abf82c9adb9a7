#include "exchange/session_json.h"

#include "domain/by_hand.h"
#include "domain/flight_form.h"
#include "store/plan_json.h"

#include <algorithm>
#include <functional>
#include <set>
#include <tuple>

namespace oddglass::exchange {
namespace {

using canon::Json;
using session::SessionRecord;

/// Only then has a session more to tell than its plan.
bool isOpen(State state) { return state == State::revealed || state == State::broken; }

// Out -----------------------------------------------------------------------------------------------------------------

Json entryJson(const SessionId& session, const store::LogEntry& entry) {
  return {{"seq", entry.seq.value}, {"at", entry.at},       {"kind", nameOf(entry.event)}, {"state", nameOf(entry.after)},
          {"session", session.text}, {"body", Json::parse(entry.body)}, {"hash", canon::hex(entry.hash)}};
}

Json handInJson(const session::RecordedHandIn& in) {
  Json cells = Json::array(), words = Json::array();
  for (const auto& reply : in.replies) cells.push_back({reply.item.value, reply.code.value, reply.textDigest ? Json(canon::hex(*reply.textDigest)) : Json(reply.value.value())});
  for (const auto& each : in.words) {
    words.push_back({{"item", each.item.value}, {"salt", canon::hex(each.salt)}, {"text", each.text}});
    if (each.code.value != 0) words.back()["code"] = each.code.value;
  }
  return {{"seq", in.seq.value}, {"place", in.place.value},           {"round", in.round.value},     {"at", in.at},
          {"via", in.via},       {"client_id", canon::hex(in.clientId)}, {"salt", canon::hex(in.salt)}, {"cells", cells}, {"words", words}};
}

Json keyJson(const session::RecordedKey& key, Routine routine) {
  Json lines = Json::array(), poured = Json::array();
  for (const auto& [code, slot] : key.lines) lines.push_back({code.value, slot.value});
  for (const auto& each : key.poured)
    poured.push_back({{"seq", each.seq.value}, {"salt", canon::hex(each.salt)}, {"code", each.code.value}, {"slot", each.slot ? Json(each.slot->value) : Json(nullptr)}});
  Json json{{"custody", isDrawn(routine) ? "drawn" : nameOf(routine)}, {"generator", key.generator}, {"seed", canon::hex(key.seed)}, {"salt", canon::hex(key.salt)}, {"lines", lines}, {"poured", poured}};
  if (isDrawn(routine)) return json;
  json["found"] = Json::array();
  for (const auto& each : key.found) {
    Json read = Json::array();
    for (const session::FoundLine& line : each.flight.lines) read.push_back({line.code.value, line.slot ? Json(line.slot->value) : Json(nullptr)});
    json["found"].push_back({{"seq", each.seq.value}, {"salt", canon::hex(each.salt)}, {"place", each.flight.place.value}, {"round", each.flight.round.value}, {"lines", read}});
  }
  return json;
}

// In ------------------------------------------------------------------------------------------------------------------

/// What a session may refer to.
struct Known {
  const SessionRecord& record;

  const store::LogEntry& entry(const Node& node, const char* key, std::initializer_list<Event> kinds) const {
    const Node at = node.at(key);
    const auto seq = at.whole(1, static_cast<std::int64_t>(record.log.size()) + 1000000);
    if (seq > static_cast<std::int64_t>(record.log.size())) at.refuse(Trouble::brokenReference, {{"text", "the log has no entry " + std::to_string(seq)}});
    const auto& found = record.log[static_cast<std::size_t>(seq - 1)];
    if (std::ranges::find(kinds, found.event) == kinds.end())
      at.refuse(Trouble::brokenReference, {{"text", "entry " + std::to_string(seq) + " of the log says \"" + std::string(nameOf(found.event)) + '"'}});
    return found;
  }
  Place place(const Node& node) const {
    const Place place{node.at("place").small(1, 999)};
    if (place.value > record.plan.places) node.at("place").refuse(Trouble::brokenReference, {{"text", "the plan has no place " + std::to_string(place.value)}});
    return place;
  }
  Round round(const Node& node) const {
    const Round round{node.at("round").small(1, 99)};
    if (round.value > record.plan.rounds) node.at("round").refuse(Trouble::brokenReference, {{"text", "the plan has no round " + std::to_string(round.value)}});
    return round;
  }
  const SheetItem& item(const Node& node) const {
    const int number = node.small(1, 200);
    const auto found = std::ranges::find(record.plan.items, Item{number}, &SheetItem::item);
    if (found == record.plan.items.end()) node.refuse(Trouble::brokenReference, {{"text", "the plan has no question " + std::to_string(number)}});
    return *found;
  }
  Code code(const Node& node) const {
    const int number = node.small(100, 9999);
    if (std::ranges::find(record.plan.cups, Code{number}, &Cup::code) == record.plan.cups.end())
      node.refuse(Trouble::brokenReference, {{"text", "the plan has no cup " + std::to_string(number)}});
    return {number};
  }
  Slot slot(const Node& node) const {
    const int number = node.small(1, 40);
    if (std::ranges::find(record.plan.lots, Slot{number}, &PlannedLot::slot) == record.plan.lots.end())
      node.refuse(Trouble::brokenReference, {{"text", "the plan has no lot " + std::to_string(number)}});
    return {number};
  }
};

constexpr std::int64_t farthest = 4102444800000 * 10;  // a moment in milliseconds; far beyond any clock

store::LogEntry entryFrom(const Node& node, const SessionId& session, int seq) {
  node.onlyKeys({"seq", "at", "kind", "state", "session", "body", "hash"});
  if (node.at("seq").whole(1, 100000000) != seq)
    node.at("seq").refuse(Trouble::doesNotVerify, {{"text", "the log is out of order: entry " + std::to_string(seq) + " was expected here"}});
  if (node.at("session").uid<struct SessionTag>() != session) node.at("session").refuse(Trouble::brokenReference, {{"text", "this entry belongs to another session"}});
  const Node body = node.at("body");
  if (!body.json().is_object()) body.refuse("this is no object");
  return {{seq}, node.at("at").whole(0, farthest), node.at("kind").choice<Event>(), node.at("state").choice<State>(), canon::canonical(body.json()), node.at("hash").bytes<32>()};
}

/// Refuses a list in which two records are about the same thing.
template <class Records, class Key>
void requireOnce(const Node& list, const Records& records, Key key) {
  std::set<std::remove_cvref_t<decltype(std::invoke(key, records.front()))>> seen;
  for (std::size_t i = 0; i < records.size(); ++i)
    if (!seen.insert(std::invoke(key, records[i])).second) list.list().at(i).refuse(Trouble::brokenReference, {{"text", "this stands twice"}});
}

session::RecordedHandIn handInFrom(const Node& node, const Known& known) {
  node.onlyKeys({"seq", "place", "round", "at", "via", "client_id", "salt", "cells", "words"});
  session::RecordedHandIn in;
  in.seq = known.entry(node, "seq", {Event::answered}).seq;
  in.place = known.place(node);
  in.round = known.round(node);
  in.at = node.at("at").whole(0, farthest);
  in.via = node.at("via").text(20);
  if (in.via != "device" && in.via != "paper" && in.via != "file") node.at("via").refuse(Trouble::notAChoice, {{"text", in.via}, {"choices", "device, paper, file"}});
  in.clientId = node.at("client_id").bytes<16>();
  in.salt = node.at("salt").bytes<16>();
  for (const Node& cell : node.at("cells").list(8000)) {
    const auto parts = cell.list(3);
    if (parts.size() != 3) cell.refuse("an answer is a list of question, cup (or 0) and value");
    const SheetItem& item = known.item(parts[0]);
    if (!item.perCup) parts[1].whole(0, 0);
    session::RecordedReply reply{item.item, item.perCup ? known.code(parts[1]) : Code{}, std::nullopt, std::nullopt};
    const bool saysNone = item.kind == ItemKind::worst && parts[2].json() == 0;
    if (answerForm(item.kind).isText && !saysNone) reply.textDigest = parts[2].bytes<32>();
    else if (item.kind == ItemKind::choose || (item.kind == ItemKind::prefer && parts[2].json() != 0)) reply.value = known.code(parts[2]).value;
    else reply.value = parts[2].small(item.low.value_or(-1000000), item.high.value_or(1000000));
    in.replies.push_back(reply);
  }
  requireOnce(node.at("cells"), in.replies, [](const session::RecordedReply& reply) { return std::pair(reply.item, reply.code); });
  for (const Node& words : node.at("words").list(8000)) {
    words.onlyKeys({"item", "code", "salt", "text"});
    const Item item = known.item(words.at("item")).item;
    const Code code = words.has("code") ? known.code(words.at("code")) : Code{};
    const bool isAnswered = std::ranges::any_of(in.replies, [&](const auto& reply) { return reply.item == item && reply.code == code && reply.textDigest; });
    if (!isAnswered) words.at("item").refuse(Trouble::brokenReference, {{"text", "no answer goes with these words"}});
    in.words.push_back({item, code, words.at("salt").bytes<16>(), words.at("text").text(4000, false)});
  }
  requireOnce(node.at("words"), in.words, [](const session::RecordedWords& words) { return std::pair(words.item, words.code); });
  return in;
}

// What was read off of a flight where hands hid the key.
session::RecordedFound foundFrom(const Node& node, const Known& known) {
  node.onlyKeys({"seq", "salt", "place", "round", "lines"});
  session::RecordedFound found{known.entry(node, "seq", {Event::found}).seq, node.at("salt").bytes<16>(), {known.place(node), known.round(node), {}}};
  for (const Node& line : node.at("lines").list(50)) {
    const auto parts = line.list(2);
    if (parts.size() != 2) line.refuse("what was read off is a list of code, or 0 for the cup set aside, and lot, or null");
    const Code code = parts[0].small(0, 9999) == 0 ? Code{0} : known.code(parts[0]);
    found.flight.lines.push_back({code, parts[1].isNull() ? std::nullopt : std::optional(known.slot(parts[1]))});
  }
  return found;
}

session::RecordedKey keyFrom(const Node& node, const Known& known) {
  const Routine routine = known.record.plan.routine;
  const std::string custody(isDrawn(routine) ? "drawn" : nameOf(routine));
  node.onlyKeys({"custody", "generator", "seed", "salt", "lines", "poured", "found"});
  if (node.at("custody").text(40) != custody) node.at("custody").refuse(Trouble::notAChoice, {{"text", node.at("custody").text(40)}, {"choices", custody}});
  session::RecordedKey key;
  key.generator = node.at("generator").text(40);
  if (key.generator != "chacha20/1") node.at("generator").refuse(Trouble::notAChoice, {{"text", key.generator}, {"choices", "chacha20/1"}});
  key.seed = node.at("seed").bytes<32>();
  key.salt = node.at("salt").bytes<32>();
  for (const Node& line : node.at("lines").list()) {
    const auto parts = line.list(2);
    if (parts.size() != 2) line.refuse("a line of the key is a list of code and lot");
    key.lines.emplace_back(known.code(parts[0]), known.slot(parts[1]));
    if (key.lines.size() > 1 && key.lines[key.lines.size() - 2].first >= key.lines.back().first) line.refuse("the lines of the key must rise by code");
  }
  if (key.lines.size() != (isDrawn(routine) ? known.record.plan.cups.size() : 0)) node.at("lines").refuse(Trouble::brokenReference, {{"text", "the key does not have one line for each cup"}});
  for (const Node& each : node.at("poured").list()) {
    each.onlyKeys({"seq", "salt", "code", "slot"});
    std::optional<Slot> slot;
    if (!each.at("slot").isNull()) slot = known.slot(each.at("slot"));
    key.poured.push_back({known.entry(each, "seq", {Event::asPoured}).seq, each.at("salt").bytes<16>(), known.code(each.at("code")), slot});
  }
  requireOnce(node.at("poured"), key.poured, &session::RecordedPour::seq);
  if (isDrawn(routine) && node.has("found")) node.at("found").refuse("nothing was read off: this key was drawn");
  for (const Node& each : node.maybeList("found")) key.found.push_back(foundFrom(each, known));
  if (!key.found.empty()) requireOnce(node.at("found"), key.found, [](const session::RecordedFound& each) { return each.seq; });
  return key;
}

void requireSound(const Node& node, const Plan& plan) {
  const auto need = [&](bool holds, const char* key, const char* text) {
    if (!holds) (node.maybe(key) ? node.at(key) : node).refuse(text);
  };
  need(plan.rounds >= 1 && plan.rounds <= 99, "rounds", "the rounds must be 1 to 99");
  need(plan.places >= 1 && plan.places <= 999, "places", "the places must be 1 to 999");
  need(plan.spares >= 0 && plan.spares <= plan.places, "spares", "there cannot be more spare places than places");
  need(plan.alphaPm >= 1 && plan.alphaPm <= 500, "analysis", "alpha must be 1 to 500 in a thousand");
  need(!plan.limitPm || (*plan.limitPm >= 1 && *plan.limitPm <= 1000), "analysis", "the limit must be 1 to 1000 in a thousand");
  need(plan.gammaPm >= 0 && plan.gammaPm < 1000, "analysis", "gamma must be 0 to 999 in a thousand");
  need(plan.cupMl >= 1 && plan.cupMl <= 1000, "cup_ml", "a cup must hold 1 to 1000 ml");
  need(plan.panelPlanned >= 0 && plan.makersPlanned >= 0, "panel", "people cannot be fewer than none");
  need(answers(plan.method, plan.question), "method", "the method does not answer the question");
  need(!holdsAThing(plan.method, plan.question) || (!plan.attribute.empty() && plan.expected && plan.expected->value <= 2), "method", "the method needs a thing and the lot that is asked about as having more of it");
  need(!plan.expectationPc || (*plan.expectationPc >= 1 && *plan.expectationPc <= 99), "expectation_pc", "an expectation must be 1 to 99 in a hundred");
  need(plan.sheet ? !plan.lots.empty() && plan.lots.size() <= 40 : plan.lots.size() == 2 || (plan.lots.size() == 3 && comparesThree(plan.method) && plan.rounds % 3 == 0), "lots", "two lots are compared, or three pair by pair; a score sheet takes one or more");
  for (std::size_t i = 0; i < plan.lots.size(); ++i) need(plan.lots[i].slot == Slot{static_cast<int>(i) + 1}, "lots", "lots are numbered from 1");
  std::set<Item> items;
  for (const SheetItem& item : plan.items) need(items.insert(item.item).second, "items", "a question stands twice");
  std::set<Code> codes;
  std::set<std::tuple<Place, Round, Position>> poured;
  for (const Cup& cup : plan.cups) {
    need(codes.insert(cup.code).second, "cups", "a code stands twice");
    need(cup.place.value >= 1 && cup.place.value <= plan.places && cup.round.value >= 1 && cup.round.value <= plan.rounds && cup.position.value >= 1 &&
             cup.position.value <= cupsInFlight(plan) && cup.spare >= 0 && cup.spare <= 9,
         "cups", "a cup stands at no place of the plan");
    if (cup.spare == 0) poured.insert({cup.place, cup.round, cup.position});
  }
  need(poured.size() == static_cast<std::size_t>(plan.places) * plan.rounds * cupsInFlight(plan), "cups", "a flight does not have all its cups");
}

}  // namespace

Json sessionJson(const SessionRecord& record) {
  Json json{{"id", record.id.text},
            {"title", record.title},
            {"guest_title", record.guestTitle},
            {"came_from", nameOf(record.cameFrom)},
            {"created_at", record.createdAt},
            {"state", nameOf(record.state)},
            {"plan", Json::parse(record.planText)}};
  if (!isOpen(record.state)) return json;
  json["seal_mark"] = record.sealMark;
  for (const char* key : {"log", "promises", "remarks", "hand_ins", "people"}) json[key] = Json::array();
  for (const auto& entry : record.log) json["log"].push_back(entryJson(record.id, entry));
  for (const auto& each : record.promises) json["promises"].push_back({{"outcome", nameOf(each.outcome)}, {"salt", canon::hex(each.salt)}, {"text", each.text}});
  for (const auto& each : record.remarks) json["remarks"].push_back({{"seq", each.seq.value}, {"about", each.about}, {"salt", canon::hex(each.salt)}, {"text", each.text}});
  for (const auto& each : record.handIns) json["hand_ins"].push_back(handInJson(each));
  for (const auto& each : record.people) json["people"].push_back({{"place", each.place.value}, {"taster", each.taster.text}});
  if (record.key) json["key"] = keyJson(*record.key, record.plan.routine);
  for (const auto& each : record.open) json["open"].push_back({{"place", each.place.value}, {"slot", each.slot.value}, {"item", each.item.value}, {"value", each.value}, {"at", each.at}});
  return json;
}

Plan planOf(const Node& node) {
  const Node at = node.at("plan");
  const auto plan = [&] {
    try {
      return store::planFrom(at.json());
    } catch (const Problem& problem) {
      const auto text = problem.values().find("text");
      const auto part = at.maybe(problem.argument().c_str());
      (part ? *part : at).refuse('"' + problem.argument() + "\" " + (text == problem.values().end() ? "is not understood" : text->second));
    }
  }();
  requireSound(at, plan);
  return plan;
}

std::optional<SessionRecord> sessionFrom(const Node& node) {
  node.onlyKeys({"id", "title", "guest_title", "came_from", "created_at", "state", "plan", "seal_mark", "log", "promises", "remarks", "hand_ins", "people", "key", "open"});
  SessionRecord record;
  record.id = node.at("id").uid<struct SessionTag>();
  record.title = node.at("title").text(200);
  record.guestTitle = node.at("guest_title").text(200);
  record.cameFrom = node.at("came_from").choice<CameFrom>();
  record.createdAt = node.at("created_at").whole(0, farthest);
  record.state = node.at("state").choice<State>();
  record.plan = planOf(node);
  record.planText = canon::canonical(node.at("plan").json());
  if (!isOpen(record.state)) {
    for (const char* key : {"log", "hand_ins", "key", "open"})
      if (node.has(key)) node.at(key).refuse("a session whose key was never opened has a plan and nothing else");
    return std::nullopt;
  }
  record.sealMark = node.at("seal_mark").text(20);
  for (const Node& each : node.at("log").list()) record.log.push_back(entryFrom(each, record.id, static_cast<int>(record.log.size()) + 1));
  if (record.log.empty()) node.at("log").refuse("the log is empty");
  if (record.log.back().after != record.state) node.at("state").refuse(Trouble::doesNotVerify, {{"text", "the log ends in the state \"" + std::string(nameOf(record.log.back().after)) + '"'}});
  const Node first = node.at("log").list().front();
  if (record.log.front().event != Event::sealed) first.at("kind").refuse(Trouble::doesNotVerify, {{"text", "the log does not begin with the seal"}});
  record.commitment = first.at("body").at("commitment").bytes<32>();
  const Known known{record};
  for (const Node& each : node.at("promises").list()) {
    each.onlyKeys({"outcome", "salt", "text"});
    record.promises.push_back({each.at("outcome").choice<Outcome>(), each.at("salt").bytes<16>(), each.at("text").text(500, false)});
  }
  for (const Node& each : node.at("remarks").list()) {
    each.onlyKeys({"seq", "about", "salt", "text"});
    const auto& entry = known.entry(each, "seq", {Event::said, Event::voided, Event::broken, Event::abandoned, Event::decided});
    const std::string about = each.at("about").text(20);
    if (about != "said" && about != "reason" && about != "decision") each.at("about").refuse(Trouble::notAChoice, {{"text", about}, {"choices", "said, reason, decision"}});
    record.remarks.push_back({entry.seq, about, each.at("salt").bytes<16>(), each.at("text").text(4000, false)});
  }
  for (const Node& each : node.at("hand_ins").list()) record.handIns.push_back(handInFrom(each, known));
  for (const Node& each : node.at("people").list()) {
    each.onlyKeys({"place", "taster"});
    record.people.push_back({known.place(each), each.at("taster").uid<struct TasterTag>(), {}, {}});
  }
  record.key = keyFrom(node.at("key"), known);
  for (const Node& each : node.maybeList("open")) {
    each.onlyKeys({"place", "slot", "item", "value", "at"});
    record.open.push_back({known.place(each), known.slot(each.at("slot")), known.item(each.at("item")).item, each.at("value").small(0, 1000), each.at("at").whole(0, farthest)});
  }
  requireOnce(node.at("promises"), record.promises, &session::RecordedPromise::outcome);
  requireOnce(node.at("remarks"), record.remarks, &session::RecordedRemark::seq);
  requireOnce(node.at("hand_ins"), record.handIns, &session::RecordedHandIn::seq);
  requireOnce(node.at("people"), record.people, &session::RecordedPerson::place);
  requireOnce(node.at("people"), record.people, &session::RecordedPerson::taster);
  return record;
}

}  // namespace oddglass::exchange
