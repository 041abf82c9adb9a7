#include "evening.h"
#include "store/plan_json.h"
#include "store/step.h"
#include "trouble.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <functional>

using namespace oddglass;
using canon::Json;
using testing::Evening;
using testing::troubleOf;

// Records by somebody who knows the form and makes every hash again: what they say must still be what the program's own steps can have written.

namespace {

session::SessionRecord eventful(Evening& evening) {
  evening.seal();
  const session::PourSheet sheet = session::openPourSheet(*evening.store, evening.clock, evening.session);
  session::pouredReally(*evening.store, evening.clock, evening.chance, evening.session, sheet.placeByPlace[0].code, Slot{1});
  session::sayPoured(*evening.store, evening.clock, evening.session);
  for (int place = 1; place <= 5; ++place)
    evening.sit(place, evening.friends[static_cast<std::size_t>(place - 1)], place == 5 ? ShownAs::loose : place == 4 ? ShownAs::nickname : ShownAs::signedName);
  evening.sit(7, evening.maker);
  const auto cups = tasting::nextFlight(*evening.store, evening.session, {2})->cups;
  tasting::spilled(*evening.store, evening.clock, evening.session, cups[0].code);
  tasting::said(*evening.store, evening.clock, evening.chance, evening.session, {{1}, {2}}, "that one is sweet");
  for (int place : {1, 2, 5, 7}) evening.answer(place, 2, "words of " + std::to_string(place));
  tasting::setAside(*evening.store, evening.clock, evening.chance, evening.session, {3}, {1}, VoidReason::other, "a fly");
  tasting::stopHere(*evening.store, evening.clock, evening.session, {4});
  session::close(*evening.store, evening.clock, evening.session);
  session::reveal(*evening.store, evening.clock, evening.session);
  session::decide(*evening.store, evening.clock, evening.chance, evening.session, "pour pairs");
  return session::record(*evening.store, evening.session);
}

void chainAgain(session::SessionRecord& record) {
  canon::Digest before{};
  for (store::LogEntry& entry : record.log) before = entry.hash = store::Log::hashOf(before, record.id, entry);
}

store::LogEntry& entryOf(session::SessionRecord& record, Event event, int nth = 0) {
  for (store::LogEntry& entry : record.log)
    if (entry.event == event && nth-- == 0) return entry;
  throw std::logic_error("no such entry");
}

using Change = std::function<void(session::SessionRecord&)>;

Change body(Event event, const std::string& key, const Json& value, int nth = 0) {
  return [=](session::SessionRecord& record) {
    store::LogEntry& entry = entryOf(record, event, nth);
    Json json = Json::parse(entry.body);
    json[key] = value;
    entry.body = canon::canonical(json);
  };
}

Change insteadOf(Event event, const Json& whole) {
  return [=](session::SessionRecord& record) { entryOf(record, event).body = canon::canonical(whole); };
}

}  // namespace

TEST_CASE("a record that no evening can have written is refused by name, though its chain is whole") {
  Evening evening;
  const session::SessionRecord good = eventful(evening);
  REQUIRE(session::check(good).holds());
  const int code = Json::parse(entryOf(const_cast<session::SessionRecord&>(good), Event::spilled).body)["code"].get<int>();
  const int other = good.plan.cups.back().code.value;
  const std::vector<std::pair<std::string, Change>> all{
      {"a place beyond the plan", body(Event::placeTaken, "place", 400)},
      {"a place that overflows into one", body(Event::placeTaken, "place", 4294967297)},
      {"place 0", body(Event::placeTaken, "place", 0)},
      {"a place as text", body(Event::placeTaken, "place", "1")},
      {"a place taken twice", body(Event::placeTaken, "place", 1, 1)},
      {"somebody shown in an unknown way", body(Event::placeTaken, "as", "famous")},
      {"a maker as a number", body(Event::placeTaken, "maker", 1)},
      {"an entry with a name", body(Event::placeTaken, "name", "Friend A")},
      {"a left place as text", body(Event::placeLeft, "place", "4")},
      {"a place left by nobody", body(Event::placeLeft, "place", 6)},
      {"cups confirmed at a place as text", body(Event::began, "place", "x")},
      {"cups confirmed in round 9", body(Event::began, "round", 9)},
      {"cups confirmed with words", body(Event::began, "heard", Json::array({"x"}))},
      {"cups confirmed at an empty place", body(Event::began, "place", 6)},
      {"an answer in round 2 of 1", body(Event::answered, "round", 2)},
      {"an answer from nobody", body(Event::answered, "place", 6)},
      {"an answer without a digest", body(Event::answered, "digest", nullptr)},
      {"an answer typed in by a maker", body(Event::answered, "typed_by", 7, 1)},
      {"an answer typed in by somebody with cups of their own", body(Event::answered, "typed_by", 2)},
      {"an answer typed in by an empty place", body(Event::answered, "typed_by", 6)},
      {"an answer typed in by a name", body(Event::answered, "typed_by", "Friend A")},
      {"a spill that goes in circles", [=](session::SessionRecord& record) {
         store::LogEntry& entry = entryOf(record, Event::spilled);
         Json json = Json::parse(entry.body);
         std::swap(json["by"], json["code"]);
         entry.body = canon::canonical(json);
       }},
      {"a cup that replaces itself", body(Event::spilled, "by", code)},
      {"a cup replaced by another flight's", body(Event::spilled, "by", other)},
      {"a spilled code that is none", body(Event::spilled, "code", 111)},
      {"a flight set aside beyond the plan", body(Event::voided, "round", 7)},
      {"an unknown reason", body(Event::voided, "reason", "rain")},
      {"a reason in words", body(Event::voided, "reason", Json::array())},
      {"heard by a place as text", body(Event::said, "heard", Json::array({"1"}))},
      {"heard by a place twice", body(Event::said, "heard", Json::array({1, 1}))},
      {"heard by no list", body(Event::said, "heard", 1)},
      {"fewer missing than none", body(Event::closed, "missing", -1)},
      {"missing as text", body(Event::closed, "missing", "one")},
      {"a reveal that says more", insteadOf(Event::revealed, {{"place", "x"}})},
      {"an entry that is a list", insteadOf(Event::poured, Json::array())},
      {"a decision in words", body(Event::decided, "digest", "pour pairs")},
      {"a moment before the first", [](session::SessionRecord& record) { record.log[2].at = -1; }},
      {"a moment in the year 300000", [](session::SessionRecord& record) { record.log[2].at = 9400000000000000; }},
  };
  testing::Folder folder;
  auto store = store::Store::open(folder / "other.oddglass", store::Access::write, evening.clock, evening.chance);
  for (const auto& [name, change] : all) {
    INFO(name);
    session::SessionRecord bad = good;
    change(bad);
    chainAgain(bad);
    const session::Verification found = session::check(bad);
    const auto states = std::ranges::find(found.checks, "states", &session::Check::what);
    REQUIRE(states != found.checks.end());
    CHECK_FALSE(states->holds);
    CHECK(states->where.starts_with("entry "));
    CHECK(troubleOf([&] { session::insertRecord(*store, evening.clock, evening.chance, bad); }) == Trouble::doesNotVerify);
    CHECK(session::sessions(*store).empty());
  }
}

TEST_CASE("an answer may be typed in by a taster who has locked everything, or by somebody who is not at the table") {
  Evening evening;
  const session::SessionRecord good = eventful(evening);
  for (const int place : {0, 1}) {
    INFO(place);
    session::SessionRecord typed = good;
    body(Event::answered, "typed_by", place, 1)(typed);
    chainAgain(typed);
    CHECK(session::check(typed).holds());
  }
}

TEST_CASE("answers, people and remarks that cannot have been are refused by name") {
  Evening evening;
  const session::SessionRecord good = eventful(evening);
  REQUIRE(session::check(good).holds());
  const auto again = [](session::RecordedHandIn& in, session::SessionRecord& record) {
    Json cells = Json::array();
    for (const auto& reply : in.replies) cells.push_back({reply.item.value, 0, reply.value ? Json(*reply.value) : Json(canon::hex(*reply.textDigest))});
    for (store::LogEntry& entry : record.log) {
      if (entry.seq != in.seq) continue;
      Json json = Json::parse(entry.body);
      json["digest"] = canon::hex(canon::sha256({in.salt, canon::bytesOf(canon::canonical(cells))}));
      entry.body = canon::canonical(json);
    }
    chainAgain(record);
  };
  struct Case {
    std::string name, what;
    Change change;
  };
  const std::vector<Case> all{
      {"sureness of nine", "answers", [&](auto& r) { r.handIns[0].replies[1].value = 9; again(r.handIns[0], r); }},
      {"a question left open", "answers", [&](auto& r) { r.handIns[0].replies.erase(r.handIns[0].replies.begin()); again(r.handIns[0], r); }},
      {"a question answered twice", "answers", [&](auto& r) { r.handIns[0].replies.push_back(r.handIns[0].replies[1]); again(r.handIns[0], r); }},
      {"a question that nobody asked", "answers", [&](auto& r) { r.handIns[0].replies[1].item = {77}; again(r.handIns[0], r); }},
      {"the cup of another flight", "answers", [&](auto& r) { r.handIns[0].replies[0].value = r.plan.cups.back().code.value; again(r.handIns[0], r); }},
      {"a cup that was spilled", "answers", [&](auto& r) {
         r.handIns[1].replies[0].value = Json::parse(entryOf(r, Event::spilled).body)["code"].template get<int>();
         again(r.handIns[1], r);
       }},
      {"another time than the entry's", "answers", [&](auto& r) { r.handIns[0].at += 60000; }},
      {"two answers of one entry", "answers", [&](auto& r) { r.handIns.push_back(r.handIns[0]); }},
      {"a name at a loose place", "people", [&](auto& r) { r.people.push_back({{5}, TasterId{std::string(32, 'e')}, "Friend E", ""}); }},
      {"a name at an empty place", "people", [&](auto& r) { r.people.push_back({{6}, TasterId{std::string(32, 'e')}, "Friend F", ""}); }},
      {"two names at one place", "people", [&](auto& r) { r.people.push_back({{1}, TasterId{std::string(32, 'e')}, "Friend A", ""}); }},
      {"one person at two places", "people", [&](auto& r) { r.people[1].taster = r.people[0].taster; }},
      {"a remark twice", "remarks", [&](auto& r) { r.remarks.push_back(r.remarks[0]); }},
      {"a decision called a reason", "remarks", [&](auto& r) { r.remarks.back().about = "reason"; }},
      {"a promise twice", "promises", [&](auto& r) { r.promises.push_back(r.promises[0]); }},
      {"a pour twice", "poured", [&](auto& r) { r.key->poured.push_back(r.key->poured[0]); }},
  };
  testing::Folder folder;
  auto store = store::Store::open(folder / "other.oddglass", store::Access::write, evening.clock, evening.chance);
  for (const Case& each : all) {
    INFO(each.name);
    session::SessionRecord bad = good;
    each.change(bad);
    const session::Verification found = session::check(bad);
    const auto check = std::ranges::find(found.checks, each.what, &session::Check::what);
    REQUIRE(check != found.checks.end());
    CHECK_FALSE(check->holds);
    CHECK(troubleOf([&] { session::insertRecord(*store, evening.clock, evening.chance, bad); }) == Trouble::doesNotVerify);
    CHECK(session::sessions(*store).empty());
  }
}

TEST_CASE("a plan outside what can be planned does not check") {
  Evening evening;
  const session::SessionRecord good = eventful(evening);
  const std::vector<std::function<void(Plan&)>> all{
      [](Plan& plan) { plan.gammaPm = 1000; },        [](Plan& plan) { plan.alphaPm = 0; },
      [](Plan& plan) { plan.limitPm = 501; },         [](Plan& plan) { plan.sought = Sought::alike; },
      [](Plan& plan) { plan.country = "gb"; },        [](Plan& plan) { plan.ceilingGrams = 0; },
      [](Plan& plan) { plan.spares = plan.places + 1; }, [](Plan& plan) { plan.panelPlanned = -1; },
      [](Plan& plan) { plan.lots[0].bottleMl = 0; },  [](Plan& plan) { plan.lots[0].abvBp = -5; },
      [](Plan& plan) { plan.lots[1].slot = {3}; },    [](Plan& plan) { plan.lots[1].lot = plan.lots[0].lot; },
      [](Plan& plan) { plan.lots[0].beverageName = ""; }, [](Plan& plan) { plan.lots[0].lotName = "left\xE2\x80\xAEright"; },
      [](Plan& plan) { plan.lots[0].packagedOn = "2026-02-30"; }, [](Plan& plan) { plan.items[1].high = 9; },
      [](Plan& plan) { plan.items.erase(plan.items.begin()); },   [](Plan& plan) { plan.cupMl = 0; },
  };
  for (std::size_t i = 0; i < all.size(); ++i) {
    INFO("plan " << i);
    session::SessionRecord bad = good;
    all[i](bad.plan);
    bad.planText = canon::canonical(store::planJson(bad.plan));
    Json sealed = Json::parse(bad.log[0].body);
    sealed["plan"] = canon::hex(canon::sha256({canon::bytesOf(bad.planText)}));
    bad.log[0].body = canon::canonical(sealed);
    chainAgain(bad);
    const session::Verification found = session::check(bad);
    const auto plan = std::ranges::find(found.checks, "plan", &session::Check::what);
    REQUIRE(plan != found.checks.end());
    CHECK_FALSE(plan->holds);
  }
}

TEST_CASE("a store that was altered with other tools is shown as far as it can be read, or called damaged; nothing hangs") {
  const std::vector<std::pair<std::string, std::string>> all{
      {"log", "UPDATE log SET body = '{\"place\":\"x\"}' WHERE kind = 'place_taken'"},
      {"log", "UPDATE log SET body = '{nonsense}' WHERE kind = 'began'"},
      {"log", "UPDATE log SET body = '{\"heard\":7,\"digest\":null}' WHERE kind = 'said'"},
      {"log", "UPDATE log SET body = '{\"by\":1,\"code\":1}' WHERE kind = 'spilled'"},
      {"log", "UPDATE log SET kind = 'sang' WHERE kind = 'said'"},
      {"session_plan", "UPDATE session_plan SET body = '{}'"},
      {"session_plan", "UPDATE session_plan SET body = '{\"no\"}'"},
      {"key_line", "DELETE FROM key_line"},
      {"as_poured", "UPDATE as_poured SET box = x'00'"},
      {"answer", "UPDATE answer SET value = 99 WHERE item IN (1, 2, 3)"},
  };
  for (const auto& [table, sql] : all) {
    INFO(sql);
    Evening evening;
    eventful(evening);
    SQLite::Database& db = evening.store->db();
    db.exec("DROP TRIGGER " + table + "_no_update");
    db.exec("DROP TRIGGER IF EXISTS " + table + "_no_delete");
    db.exec(sql);
    const auto onlyProblems = [](const auto& look) {
      try {
        look();
      } catch (const Problem&) {
      }
    };
    CHECK_NOTHROW(onlyProblems([&] { session::revealed(*evening.store, evening.session); }));
    CHECK_NOTHROW(onlyProblems([&] { session::history(*evening.store, evening.session); }));
    CHECK_NOTHROW(onlyProblems([&] { session::sessions(*evening.store); }));
    CHECK_NOTHROW(onlyProblems([&] { tasting::board(*evening.store, evening.session); }));
    bool holds = false;
    CHECK_NOTHROW(onlyProblems([&] { holds = session::verify(*evening.store, evening.session).holds(); }));
    CHECK_FALSE(holds);
  }
}
