// How people asked to be shown, that they are told when they will be guessed, and that talk is kept apart from what they answered.
#include "insight/sheet_table.h"
#include "words/care.h"
#include "words/plain_voice.h"
#include "words/sheet_maker.h"
#include "words/sheet_out.h"
#include "words/sheet_plan.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using namespace oddglass::words;
using oddglass::testing::plainVoice;
using oddglass::testing::SheetTable;
using Catch::Matchers::Contains;

namespace {

/// Four people write one thing each about the first cup; all of them ask to be shown like this.
SheetTable written(const std::vector<std::string>& remarks, ShownAs as) {
  SheetTable table(2, {LotRole::compared, LotRole::reference});
  table.session.plan.lots[0].beverageName = "Heather mead";
  table.session.plan.lots[1].beverageName = "Bought mead";
  const Item worst = table.ask(ItemKind::worst), liking = table.ask(ItemKind::liking, "", std::nullopt, true);
  for (int place = 1; place <= static_cast<int>(remarks.size()); ++place) {
    table.write(place, worst, 1, remarks[static_cast<std::size_t>(place - 1)]);
    table.say(place, worst, 2, 0);
    table.say(place, liking, 1, 4 + place % 3);
    table.say(place, liking, 2, 6 + place % 2);
    table.session.people.push_back({{place}, as, as == ShownAs::loose ? "B" : as == ShownAs::nickname ? "the owl" : "Ash Barrow", false, false, false, false});
  }
  table.session.commitmentHolds = true;
  return table;
}

std::string roomOf(const SheetTable& table) {
  std::string all;
  for (const std::string& line : sheetOut(plainVoice, table.session, insight::sheetFindingsOf(table.session)).lines()) all += line + '\n';
  return all;
}

std::string makerOf(const SheetTable& table) {
  std::string all;
  for (const OutSection& section : sheetMakerSections(plainVoice, table.session, insight::sheetFindingsOf(table.session)))
    for (const std::string& line : section.lines) all += line + '\n';
  return all;
}

}  // namespace

TEST_CASE("remarks of people without a name come in no order of places") {
  std::vector<std::string> remarks{"too thin", "a bitter end", "no honey", "Nothing but acid"};
  std::ranges::sort(remarks);
  const std::string room = roomOf(written(remarks, ShownAs::loose)), maker = makerOf(written(remarks, ShownAs::loose));
  CHECK_THAT(maker, Contains("“no honey” about Heather mead\n"));
  CHECK_THAT(room, Contains("no honey"));
  while (std::ranges::next_permutation(remarks).found) {
    CHECK(makerOf(written(remarks, ShownAs::loose)) == maker);
    CHECK(roomOf(written(remarks, ShownAs::loose)) == room);
  }
}

TEST_CASE("a remark stands with a name, a nickname or nothing, as its writer asked; for the room with nothing") {
  const std::vector<std::string> remarks{"too thin", "too thin", "too thin", "no honey"};
  CHECK_THAT(makerOf(written(remarks, ShownAs::signedName)), Contains("“no honey” about Heather mead (Ash Barrow)"));
  CHECK_THAT(makerOf(written(remarks, ShownAs::nickname)), Contains("“no honey” about Heather mead (the owl)"));
  for (ShownAs as : {ShownAs::signedName, ShownAs::nickname, ShownAs::loose}) {
    CHECK_THAT(roomOf(written(remarks, as)), !Contains("Ash Barrow") && !Contains("the owl"));
    if (as == ShownAs::loose) CHECK_THAT(makerOf(written(remarks, as)), !Contains("(B)"));
  }
}

TEST_CASE("what is said after the lock is kept apart: it changes no finding and is told to the maker alone") {
  SheetTable table = written({"too thin", "a bitter end", "no honey", "sour"}, ShownAs::loose);
  const auto before = insight::sheetFindingsOf(table.session);
  Seq last{0};
  for (const PanelFlight& flight : table.session.panel) last = std::max(last, flight.lockedAt);
  table.session.said.push_back({Seq{last.value + 1}, 0, {}, "I knew it was yours"});
  const auto after = insight::sheetFindingsOf(table.session);
  REQUIRE(after.points.size() == before.points.size());
  for (std::size_t i = 0; i < before.points.size(); ++i) {
    CHECK(after.points[i].lots[0].mean == before.points[i].lots[0].mean);
    CHECK(after.points[i].gaps[0].verdict == before.points[i].gaps[0].verdict);
    CHECK(after.points[i].gaps[0].pDifference == before.points[i].gaps[0].pDifference);
    CHECK_FALSE(after.points[i].gaps[0].weaker);
  }
  CHECK_THAT(roomOf(table), !Contains("I knew it was yours"));
  CHECK_THAT(makerOf(table), Contains("I knew it was yours"));
}

TEST_CASE("fewer than four friends are told that they will be guessed; makers do not hide anybody") {
  Plan plan;
  plan.panelPlanned = 3;
  plan.makersPlanned = 2;
  CHECK(placeQuestions(plainVoice, guessedAmong(plan)).fewFriends == "With 3 people it will be guessed who answered what. Signed sheets are more honest.");
  plan.panelPlanned = 4;
  CHECK(placeQuestions(plainVoice, guessedAmong(plan)).fewFriends.empty());
  plan.panelPlanned = 0;
  CHECK_THAT(placeQuestions(plainVoice, guessedAmong(plan)).fewFriends, Catch::StartsWith("With 2 people"));
  planning::SheetOutlook outlook;
  outlook.people = 3;
  outlook.willBeGuessed = true;
  CHECK_THAT(sheetPlanWords(plainVoice, outlook).cautions.back(), Contains("With three people you will guess who wrote what."));
}

TEST_CASE("a sheet that would show almost nothing says so in its headline") {
  planning::SheetOutlook outlook;
  outlook.people = 3;
  outlook.gaps = {{ItemKind::liking, 8.0, 7.4, 1}};
  CHECK(sheetPlanWords(plainVoice, outlook).headline == "With this panel almost nothing would show: to come out 8 times in 10 a gap has to be 7.4 of 9 on liking.");
  outlook.gaps = {{ItemKind::liking, 8.0, 2.0, 1}};
  CHECK_THAT(sheetPlanWords(plainVoice, outlook).headline, Catch::StartsWith("The smallest gap that would show"));
  outlook.gaps = {{ItemKind::liking, 8.0, std::nullopt, 1}};
  CHECK_THAT(sheetPlanWords(plainVoice, outlook).headline, Catch::StartsWith("With this panel no gap would show"));
}
