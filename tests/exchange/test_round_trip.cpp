#include "exchange/take_in.h"
#include "refused.h"
#include "told.h"

using namespace oddglass;
using namespace oddglass::exchange;

namespace {

canon::Json sessionOnly(store::Store& store, Clock& clock, const SessionId& session) {
  auto json = interchange(store, clock, session).at("sessions").at(0);
  json.erase("came_from");
  return json;
}

}  // namespace

TEST_CASE("A session that was told elsewhere is the same here") {
  Told told;
  Elsewhere elsewhere;
  const auto file = exportJson(*told.store, told.clock, told.session, told.folder / "out");
  CHECK(file.filename() == "oddglass-" + told.session.text.substr(0, 8) + ".json");
  const Brought brought = importFile(*elsewhere.store, elsewhere.clock, elsewhere.chance, file);
  CHECK(brought.sessions == std::vector{told.session});
  CHECK(brought.leftOut.empty());
  CHECK(brought.lots == 2);
  CHECK(sessionOnly(*elsewhere.store, elsewhere.clock, told.session) == sessionOnly(*told.store, told.clock, told.session));
  CHECK(session::verify(*elsewhere.store, told.session).holds());

  const RevealedSession there = session::revealed(*told.store, told.session), here = session::revealed(*elsewhere.store, told.session);
  CHECK(here.cameFrom == CameFrom::import);
  CHECK(here.commitmentHolds);
  CHECK(here.commitment == there.commitment);
  CHECK(here.sealMark == there.sealMark);
  REQUIRE(here.panel.size() == there.panel.size());
  for (std::size_t i = 0; i < here.panel.size(); ++i) {
    CHECK(here.panel[i].picks == there.panel[i].picks);
    CHECK(here.panel[i].poured == there.panel[i].poured);
    CHECK(here.panel[i].words == there.panel[i].words);
    CHECK(here.panel[i].voided == there.panel[i].voided);
  }
  CHECK(here.makers.size() == there.makers.size());
  CHECK(here.decision == "look at the hops, then pour again");
  CHECK(here.promises == there.promises);
  CHECK(here.plan.expectationPc == 65);
}

TEST_CASE("The program and the independent script agree that it holds") {
  Told told;
  const auto file = told.write(told.json());
  CHECK(outsideCheck(file) == 0);
  const auto checked = verifyFile(file);
  REQUIRE(checked.size() == 1);
  CHECK(checked[0].id == told.session);
  CHECK(checked[0].found.holds());
  CHECK(checked[0].found.pourSheetOpenings == 1);
  CHECK(checked[0].found.erased == 0);
}

TEST_CASE("What was erased is no break, here, elsewhere and for the script") {
  Told told;
  session::erase(*told.store, told.clock, told.chance, told.friends[0], ErasureKind::words, true);
  session::erase(*told.store, told.clock, told.chance, told.friends[3], ErasureKind::everything, true);
  session::erase(*told.store, told.clock, told.chance, told.maker, ErasureKind::words, true);
  const auto file = told.write(told.json());
  CHECK(outsideCheck(file) == 0);
  CHECK(verifyFile(file).at(0).found.holds());
  CHECK(verifyFile(file).at(0).found.erased >= 2);
  Elsewhere elsewhere;
  importFile(*elsewhere.store, elsewhere.clock, elsewhere.chance, file);
  CHECK(sessionOnly(*elsewhere.store, elsewhere.clock, told.session) == sessionOnly(*told.store, told.clock, told.session));
  CHECK(session::verify(*elsewhere.store, told.session).holds());
}

TEST_CASE("Nobody is named who did not ask for it") {
  Told told;
  const std::string text = told.json().dump();
  CHECK(text.find("Friend A") != std::string::npos);    // signed
  CHECK(text.find("Friend B") == std::string::npos);    // by nickname
  CHECK(text.find("fox 1") != std::string::npos);
  CHECK(text.find("Friend C") == std::string::npos);    // loose
  CHECK(text.find("Friend E") == std::string::npos);
  CHECK(text.find("fox 4") == std::string::npos);
  CHECK(text.find("Odo Pell") == std::string::npos);    // the pourer
}

TEST_CASE("Before the reveal a session goes out as its plan, and nothing in it depends on the key") {
  testing::Evening evening;
  evening.seal();
  session::openPourSheet(*evening.store, evening.clock, evening.session);
  evening.sitAll();
  evening.answer(1, 2, "words");
  const auto session = interchange(*evening.store, evening.clock, evening.session).at("sessions").at(0);
  std::set<std::string> keys;
  for (const auto& [key, value] : session.items()) keys.insert(key);
  CHECK(keys == std::set<std::string>{"id", "title", "guest_title", "came_from", "created_at", "state", "plan"});
  session::close(*evening.store, evening.clock, evening.session);
  CHECK_FALSE(interchange(*evening.store, evening.clock, evening.session).at("sessions").at(0).contains("hand_ins"));

  const auto file = exportAllJson(*evening.store, evening.clock, evening.folder / "out");
  CHECK(verifyFile(file).at(0).isSealedPlan);
  CHECK(outsideCheck(file) == 0);
  Elsewhere elsewhere;
  const Brought brought = importFile(*elsewhere.store, elsewhere.clock, elsewhere.chance, file);
  CHECK(brought.sessions.empty());
  CHECK(brought.leftOut == std::vector{evening.session});
  CHECK(brought.tasters == 8);
}

TEST_CASE("A draft cannot go out as a session") {
  testing::Evening evening;
  CHECK(problemOf([&] { interchange(*evening.store, evening.clock, evening.session); }).trouble() == Trouble::notSealed);
  CHECK(interchangeOfAll(*evening.store, evening.clock).at("sessions").empty());
}

TEST_CASE("A broken session is carried on with its record") {
  testing::Evening evening;
  evening.seal();
  evening.sitAll();
  evening.answer(1, 1, "first");
  session::breakSeal(*evening.store, evening.clock, evening.chance, evening.session, "we gave up", true);
  const auto file = evening.folder / "broken.json";
  std::ofstream(file) << interchange(*evening.store, evening.clock, evening.session);
  CHECK(outsideCheck(file) == 0);
  Elsewhere elsewhere;
  importFile(*elsewhere.store, elsewhere.clock, elsewhere.chance, file);
  CHECK(session::sessions(*elsewhere.store).at(0).state == State::broken);
}

TEST_CASE("The whole store goes to another one, bottles and all") {
  Told told;
  const auto file = exportAllJson(*told.store, told.clock, told.folder / "out");
  Elsewhere elsewhere;
  const Brought brought = importFile(*elsewhere.store, elsewhere.clock, elsewhere.chance, file);
  CHECK(brought.tasters == 9);
  CHECK(brought.beverages == 2);
  CHECK(brought.sessions.size() == 1);
  CHECK(shelf::lot(*elsewhere.store, told.mine).bottles == shelf::lot(*told.store, told.mine).bottles);
  CHECK(shelf::brewer(*elsewhere.store)->name == "Wenna Tarn");
  auto there = interchangeOfAll(*told.store, told.clock), here = interchangeOfAll(*elsewhere.store, elsewhere.clock);
  for (auto* json : {&there, &here}) {
    json->erase("written_at");
    json->at("sessions").at(0).erase("came_from");
  }
  CHECK(here == there);
}

TEST_CASE("The same session does not come twice, and the second file leaves nothing behind") {
  Told told;
  Elsewhere elsewhere;
  const auto file = told.write(told.json());
  importFile(*elsewhere.store, elsewhere.clock, elsewhere.chance, file);
  const std::string before = elsewhere.all();
  auto json = told.json();
  json["tasters"].push_back({{"id", std::string(32, 'a')}, {"name", "Somebody new"}});
  const auto problem = problemOf([&] { importFile(*elsewhere.store, elsewhere.clock, elsewhere.chance, told.write(json)); });
  CHECK(problem.trouble() == Trouble::sessionThere);
  CHECK(elsewhere.all() == before);
}
