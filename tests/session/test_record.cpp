#include "evening.h"
#include "session/erase.h"
#include "store/keep.h"
#include "trouble.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <functional>

using namespace oddglass;
using testing::Evening;
using testing::troubleOf;

namespace {

session::SessionRecord playedRecord(Evening& evening) {
  evening.seal();
  const session::PourSheet sheet = session::openPourSheet(*evening.store, evening.clock, evening.session);
  session::pouredReally(*evening.store, evening.clock, evening.chance, evening.session, sheet.placeByPlace[0].code, Slot{1});
  evening.sitAll();
  tasting::said(*evening.store, evening.clock, evening.chance, evening.session, {}, "a word");
  for (int place = 1; place <= 7; ++place) evening.answer(place, 2, "words of " + std::to_string(place));
  session::close(*evening.store, evening.clock, evening.session);
  session::reveal(*evening.store, evening.clock, evening.session);
  session::decide(*evening.store, evening.clock, evening.chance, evening.session, "decided");
  return session::record(*evening.store, evening.session);
}

}  // namespace

TEST_CASE("a record goes into another store and says the same there") {
  Evening evening;
  const session::SessionRecord record = playedRecord(evening);
  testing::Folder folder;
  auto other = store::Store::open(folder / "other.oddglass", store::Access::write, evening.clock, evening.chance);
  session::insertRecord(*other, evening.clock, evening.chance, record);
  CHECK(session::verify(*other, evening.session).holds());
  CHECK(store::isWhole(*other));
  const RevealedSession here = session::revealed(*evening.store, evening.session), there = session::revealed(*other, evening.session);
  REQUIRE(there.panel.size() == here.panel.size());
  for (std::size_t i = 0; i < here.panel.size(); ++i) {
    CHECK(there.panel[i].drawn == here.panel[i].drawn);
    CHECK(there.panel[i].poured == here.panel[i].poured);
    CHECK(there.panel[i].picks == here.panel[i].picks);
    CHECK(there.panel[i].words == here.panel[i].words);
  }
  CHECK(there.decision == here.decision);
  CHECK(there.said.size() == 1);
  CHECK(troubleOf([&] { session::insertRecord(*other, evening.clock, evening.chance, record); }) == Trouble::sessionThere);
}

TEST_CASE("a record that was tampered with is refused and nothing is written") {
  Evening evening;
  const session::SessionRecord good = playedRecord(evening);
  REQUIRE(session::check(good).holds());
  const std::vector<std::function<void(session::SessionRecord&)>> tampering{
      [](auto& r) { r.log[3].at += 1; },
      [](auto& r) { std::swap(r.log[4], r.log[5]); },
      [](auto& r) { r.log.pop_back(); },
      [](auto& r) { r.log.erase(r.log.begin() + 2); },
      [](auto& r) { r.handIns[0].replies[1].value = 1; },
      [](auto& r) { r.handIns.pop_back(); },
      [](auto& r) { r.handIns.push_back(r.handIns[0]); r.handIns.back().seq = {1}; },
      [](auto& r) { r.handIns[0].words[0].text = "sweeter words"; },
      [](auto& r) { r.handIns[0].words.clear(); },
      [](auto& r) { r.key->lines[0].second = {r.key->lines[0].second.value == 1 ? 2 : 1}; },
      [](auto& r) { r.key->seed[0] ^= 1; },
      [](auto& r) { r.key->salt[0] ^= 1; },
      [](auto& r) { r.key->poured[0].slot = Slot{2}; },
      [](auto& r) { r.key->poured.clear(); },
      [](auto& r) { r.commitment[0] ^= 1; },
      [](auto& r) { r.sealMark = "kapo rilu 7"; },
      [](auto& r) { r.plan.rounds = 2; },
      [](auto& r) { r.planText += " "; },
      [](auto& r) { r.promises[0].text = "something else"; },
      [](auto& r) { r.promises.clear(); },
      [](auto& r) { r.remarks.clear(); },
      [](auto& r) { r.remarks[0].text = "another word"; },
  };
  testing::Folder folder;
  auto other = store::Store::open(folder / "other.oddglass", store::Access::write, evening.clock, evening.chance);
  for (std::size_t i = 0; i < tampering.size(); ++i) {
    session::SessionRecord bad = good;
    tampering[i](bad);
    INFO("tampering " << i);
    CHECK_FALSE(session::check(bad).holds());
    CHECK(troubleOf([&] { session::insertRecord(*other, evening.clock, evening.chance, bad); }) == Trouble::doesNotVerify);
    CHECK(session::sessions(*other).empty());
  }
}

TEST_CASE("an erased taster is no break in a record") {
  Evening evening;
  playedRecord(evening);
  session::erase(*evening.store, evening.clock, evening.chance, evening.friends[3], ErasureKind::everything, true);
  const session::SessionRecord record = session::record(*evening.store, evening.session);
  testing::Folder folder;
  auto other = store::Store::open(folder / "other.oddglass", store::Access::write, evening.clock, evening.chance);
  session::insertRecord(*other, evening.clock, evening.chance, record);
  CHECK(session::verify(*other, evening.session).holds());
  CHECK(session::revealed(*other, evening.session).panel.size() == 5);
}

TEST_CASE("what only the store's own guards refuse is refused by name too, and nothing is written") {
  Evening evening;
  session::SessionRecord record = playedRecord(evening);
  record.title = std::string(201, 'x');
  REQUIRE(session::check(record).holds());
  testing::Folder folder;
  auto other = store::Store::open(folder / "other.oddglass", store::Access::write, evening.clock, evening.chance);
  CHECK(troubleOf([&] { session::insertRecord(*other, evening.clock, evening.chance, record); }) == Trouble::brokenReference);
  record.title = "short";
  record.state = State::closed;
  CHECK(troubleOf([&] { session::insertRecord(*other, evening.clock, evening.chance, record); }) == Trouble::stillSealed);
  CHECK(session::sessions(*other).empty());
}

TEST_CASE("a reveal stands though no backup can be made, and says why there is none") {
  Evening evening;
  evening.seal();
  evening.sitAll();
  for (int place = 1; place <= 7; ++place) evening.answer(place, 1);
  session::close(*evening.store, evening.clock, evening.session);
  std::ofstream(evening.folder / "backups") << "a file where the folder should be";
  const session::Revealed revealed = session::reveal(*evening.store, evening.clock, evening.session);
  CHECK(revealed.commitmentHolds);
  CHECK(revealed.backup.empty());
  REQUIRE(revealed.backupProblem);
  CHECK(revealed.backupProblem->trouble() == Trouble::storeReadOnly);
  CHECK(tasting::board(*evening.store, evening.session).state == State::revealed);
}
