#include "cellar.h"
#include "raw_session.h"
#include "shelf/beverages.h"
#include "shelf/bring.h"
#include "shelf/people.h"

using namespace oddglass;
using namespace oddglass::shelf;
using testing::Cellar;
using testing::problemOf;
using testing::troubleOf;

namespace {

struct Friends : Cellar {
  std::unique_ptr<store::Store> open_ = open();
  store::Store& store = *open_;

  TasterId add(const std::string& name, bool isBrewer = false) { return save(store, chance, {{}, name, "", isBrewer, false}); }

  std::vector<std::string> names(bool all = false) {
    std::vector<std::string> result;
    for (const Taster& person : people(store, all)) result.push_back(person.name);
    return result;
  }
};

using Refusal = std::pair<Trouble, std::string>;

}  // namespace

TEST_CASE("people come back by name") {
  Friends friends;
  CHECK_FALSE(brewer(friends.store));
  friends.add("wren");
  const TasterId linnet = friends.add("Linnet", true);
  friends.add("\xC3\x89lan");
  CHECK(friends.names() == std::vector<std::string>{"Linnet", "wren", "\xC3\x89lan"});
  REQUIRE(brewer(friends.store));
  CHECK(brewer(friends.store)->id == linnet);
  const Taster changed{linnet, "Linnet", "Finch", false, false};
  CHECK(save(friends.store, friends.chance, changed) == linnet);
  CHECK(taster(friends.store, linnet) == changed);
  CHECK_FALSE(brewer(friends.store));
}

TEST_CASE("every wrong field of a person is named") {
  Friends friends;
  const TasterId wren = friends.add("Wren", true);
  const auto refused = [&](const Taster& person) {
    const Problem problem = problemOf([&] { save(friends.store, friends.chance, person); });
    CHECK(people(friends.store).size() == 1);
    CHECK(taster(friends.store, wren).name == "Wren");
    return Refusal{problem.trouble(), problem.argument()};
  };
  CHECK(refused({{}, " ", "", false, false}) == Refusal{Trouble::empty, "name"});
  CHECK(refused({{}, std::string(101, 'a'), "", false, false}) == Refusal{Trouble::tooLong, "name"});
  CHECK(refused({{}, "Linnet", std::string(61, 'a'), false, false}) == Refusal{Trouble::tooLong, "nickname"});
  CHECK(refused({{}, "WREN", "", false, false}) == Refusal{Trouble::alreadyThere, "name"});
  CHECK(refused({{}, "Linnet", "", true, false}) == Refusal{Trouble::alreadyThere, "is_brewer"});
  CHECK(refused({{"x"}, "Linnet", "", false, false}) == Refusal{Trouble::unknown, "taster"});
  CHECK(troubleOf([&] { taster(friends.store, {"x"}); }) == Trouble::unknown);
  friends.add(std::string(100, '\''));
  CHECK(people(friends.store).size() == 2);
}

TEST_CASE("a person is found by the unique start of the name") {
  Friends friends;
  const TasterId jo = friends.add("Jo");
  const TasterId joan = friends.add("Joan");
  friends.add("Joanna");
  const TasterId elan = friends.add("\xC3\x89lan");
  CHECK(tasterNamed(friends.store, "jo").id == jo);
  CHECK(tasterNamed(friends.store, "JOAN").id == joan);
  CHECK(tasterNamed(friends.store, "Joann").name == "Joanna");
  CHECK(tasterNamed(friends.store, "E\xCC\x81l").id == elan);
  CHECK(troubleOf([&] { tasterNamed(friends.store, "Joa"); }) == Trouble::ambiguous);
  CHECK(troubleOf([&] { tasterNamed(friends.store, "%"); }) == Trouble::unknown);
  CHECK(troubleOf([&] { tasterNamed(friends.store, "  "); }) == Trouble::empty);
  archivePerson(friends.store, friends.clock, joan);
  CHECK(tasterNamed(friends.store, "Joan").name == "Joanna");
  CHECK(friends.names().size() == 3);
  CHECK(friends.names(true).size() == 4);
  bringBackPerson(friends.store, joan);
  CHECK(tasterNamed(friends.store, "Joan").id == joan);
}

TEST_CASE("whoever is invited to a sealed session cannot be archived until it is over") {
  Friends friends;
  const TasterId wren = friends.add("Wren");
  testing::RawSession session(friends.store, std::string(32, '1'));
  store::write(friends.store, [&](SQLite::Database& db) {
    store::run(db, "INSERT INTO invited SELECT ?, id, 0, 0 FROM taster WHERE uid = ?", session.row, wren.text);
  });
  CHECK(troubleOf([&] { archivePerson(friends.store, friends.clock, wren); }) == Trouble::stillInUse);
  CHECK_FALSE(taster(friends.store, wren).archived);
  session.append(Event::abandoned);
  archivePerson(friends.store, friends.clock, wren);
  CHECK(taster(friends.store, wren).archived);
}

TEST_CASE("a person from elsewhere is the brewer only where nobody is") {
  Friends friends;
  const Taster first{{std::string(32, '1')}, "Wren", "W", true, true};
  Taster second{{std::string(32, '2')}, "Linnet", "", true, false};
  CHECK(bring(friends.store, friends.clock, first));
  CHECK(taster(friends.store, first.id) == first);
  CHECK(bring(friends.store, friends.clock, second));
  CHECK_FALSE(taster(friends.store, second.id).isBrewer);
  CHECK_FALSE(bring(friends.store, friends.clock, second));
  CHECK(problemOf([&] { bring(friends.store, friends.clock, Taster{{std::string(32, '3')}, "wren", "", false, false}); }).argument() == "name");
}
