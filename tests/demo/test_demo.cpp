#include "cellar.h"
#include "demo/demo_files.h"
#include "exchange/demo.h"
#include "exchange/take_in.h"
#include "exchange/told.h"

#include <sstream>

using namespace oddglass;

namespace {

const std::filesystem::path folder = DEMO_SESSIONS;

std::string onDisk(const std::string& name) {
  std::ifstream in(folder / name, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

/// Right answers and trials of a panel, by what was really poured.
std::pair<int, int> counted(const RevealedSession& session) {
  int right = 0, trials = 0;
  for (const auto& flight : session.panel) {
    if (flight.voided || !flight.isAnswered()) continue;
    ++trials;
    const auto& mine = flight.poured.at(flight.picks.front().value - 1);
    right += std::ranges::count(flight.poured, mine) == 1;
  }
  return {right, trials};
}

}  // namespace

TEST_CASE("Made anew, the demo has the same bytes") {
  for (const auto& [name, text] : demoFiles()) {
    INFO(name);
    CHECK(text == onDisk(name));
  }
}

TEST_CASE("The demo verifies, in the program and by the script") {
  for (const char* name : {"evening_1.json", "evening_2.json"}) {
    const auto checked = exchange::verifyFile(folder / name);
    REQUIRE(checked.size() == 1);
    CHECK(checked[0].found.holds());
    CHECK(checked[0].found.pourSheetOpenings == 1);
    testing::Folder scratch;
    std::filesystem::copy_file(folder / name, scratch / name);
    CHECK(outsideCheck(scratch / name) == 0);
  }
}

// Exact binomial with one in three: of ten, seven right are the fewest that guessing reaches at most once in twenty; of seven, five are
// (tables of the triangle test in ISO 4120).
TEST_CASE("One evening of the demo is enough to show a difference, the other is not") {
  testing::Cellar cellar;
  const auto store = cellar.open();
  const auto demo = exchange::loadDemo(*store, cellar.clock, cellar.chance, folder);
  REQUIRE(demo.revealed.size() == 2);
  CHECK(counted(session::revealed(*store, demo.revealed[0])) == std::pair{8, 10});
  CHECK(counted(session::revealed(*store, demo.revealed[1])) == std::pair{3, 7});
  CHECK(session::revealed(*store, demo.revealed[1]).said.size() == 1);
  for (const auto& session : demo.revealed) CHECK(session::revealed(*store, session).cameFrom == CameFrom::demo);
}

TEST_CASE("The plan of the demo is sealed with the chance of whoever loads it, and waits") {
  std::set<std::string> marks;
  for (unsigned which : {1U, 2U, 3U}) {
    testing::Cellar cellar;
    const auto store = cellar.open();
    testing::FixedChance chance(which);
    const auto demo = exchange::loadDemo(*store, cellar.clock, chance, folder);
    CHECK(tasting::board(*store, demo.waiting).state == State::sealed);
    CHECK(tasting::board(*store, demo.waiting).sealMark == demo.sealMark);
    CHECK(session::verify(*store, demo.waiting).holds());
    marks.insert(demo.sealMark);
  }
  CHECK(marks.size() == 3);
}

TEST_CASE("The demo is not loaded twice, and a second try leaves nothing") {
  testing::Cellar cellar;
  const auto store = cellar.open();
  exchange::loadDemo(*store, cellar.clock, cellar.chance, folder);
  const auto before = session::sessions(*store).size();
  CHECK(testing::troubleOf([&] { exchange::loadDemo(*store, cellar.clock, cellar.chance, folder); }) == Trouble::sessionThere);
  CHECK(session::sessions(*store).size() == before);
  CHECK(testing::troubleOf([&] { exchange::loadDemo(*store, cellar.clock, cellar.chance, folder / "nowhere"); }) == Trouble::storeMissing);
}
