#include "insight/sheet_table.h"
#include "words/reading.h"
#include "words/denials.h"
#include "words/ready_sheets.h"
#include "words/report.h"
#include "words/sheet_asked.h"
#include "words/sheet_out.h"
#include "words/sheet_plan.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using namespace oddglass::words;
using oddglass::testing::SheetTable;
using Catch::Matchers::Contains;

namespace {

const Voice voice{};

// Eight people; the batch is this much less sweet than the bought one, with a spread of a few points.
SheetTable scoredEvening(int gap, std::optional<int> limit = 10, int tooLittle = 0) {
  SheetTable table(2, {LotRole::compared, LotRole::reference});
  table.session.plan.lots[0].beverageName = "Heather mead";
  table.session.plan.lots[1].beverageName = "the bought mead";
  const Item line = table.ask(ItemKind::line, "sweet", limit, true), right = table.ask(ItemKind::justRight, "sweet"), liking = table.ask(ItemKind::liking),
             worst = table.ask(ItemKind::worst);
  for (int place = 1; place <= 8; ++place) {
    table.say(place, line, 1, 50 - gap + place % 3);
    table.say(place, line, 2, 50 + place % 4);
    table.say(place, right, 1, place <= tooLittle ? 2 : 3);
    table.say(place, right, 2, 3);
    table.say(place, liking, 1, 4 + place % 3);
    table.say(place, liking, 2, 6 + place % 2);
    table.write(place, worst, 1, "thin");
    table.say(place, worst, 2, 0);
  }
  table.session.commitmentHolds = true;
  return table;
}

CameOut sheetOutOf(const SheetTable& table) { return sheetOut(voice, table.session, insight::sheetFindingsOf(table.session)); }

std::string joined(const CameOut& out) {
  std::string all;
  for (const std::string& line : out.lines()) all += line + '\n';
  return all;
}

}  // namespace

TEST_CASE("a sheet names the standards that its questions follow, and none that they do not") {
  // ISO 13299 is about profiles of described attributes, ISO 8587 about ranking (titles of the standards); a hedonic score is neither.
  Plan plan;
  plan.method = Method::sheet;
  plan.sheet.emplace();
  plan.items = {{}};
  plan.items[0].kind = ItemKind::liking;
  CHECK(words::standardsOf(plan).empty());
  plan.items[0].kind = ItemKind::rank;
  CHECK(words::standardsOf(plan) == std::vector<std::string>{"ISO 8587:2006"});
  plan.items.push_back({});
  plan.items[1].kind = ItemKind::line;
  plan.items[1].word = "sweet";
  CHECK(words::standardsOf(plan) == std::vector<std::string>{"ISO 13299:2016", "ISO 8587:2006"});
}

TEST_CASE("a drink that is less in something is said to be less, and to lack it only where tasters said too little") {
  const CameOut less = sheetOutOf(scoredEvening(30));
  CHECK(less.shape == Shape::disc);
  CHECK(less.headline == "Less than the bought mead in sweet.");
  CHECK_THAT(joined(less), Contains("Sweet: Heather mead less than the bought mead, by 30 of 100 ("));
  CHECK_THAT(joined(less), !Contains("lacks"));
  const CameOut lacks = sheetOutOf(scoredEvening(30, 10, 6));
  CHECK_THAT(joined(lacks), Contains("It lacks it: 6 of 8 said too little."));
  CHECK_THAT(lacks.next, Contains("pour pairs of old and new on “sweet”"));
}

TEST_CASE("within the limit, and cannot tell yet") {
  const CameOut within = sheetOutOf(scoredEvening(0));
  CHECK(within.shape == Shape::bars);
  CHECK_THAT(joined(within), Contains("within your limit (no more than 10 of 100 from the bought mead; here between "));
  const CameOut open = sheetOutOf(scoredEvening(0, std::nullopt));
  CHECK(open.shape == Shape::ring);
  CHECK(open.headline == "No difference from the bought mead shown. That is not “no difference”.");
  CHECK_THAT(joined(open), Contains("Sweet: cannot tell yet whether Heather mead differs from the bought mead; anything from "));
}

TEST_CASE("complaints stand beside those about the reference") {
  const std::string all = joined(sheetOutOf(scoredEvening(30)));
  CHECK_THAT(all, Contains("Everyone had to name a worst thing, so a complaint alone says nothing."));
  CHECK_THAT(all, Contains("Named on yours and not on the bought one: “thin”."));
}

TEST_CASE("what was looked at afterwards says so, and stands after the question of the plan") {
  const CameOut out = sheetOutOf(scoredEvening(30));
  REQUIRE(out.sections.size() >= 2);
  CHECK(out.sections[0].heading == "Sweet");
  CHECK_THAT(out.sections[1].lines.front(), Contains("Looked at afterwards"));
}

TEST_CASE("a score by itself is given with its range and with what it does not say") {
  SheetTable table(1);
  table.session.plan.question = Question::good;
  table.session.plan.lots[0].beverageName = "Heather mead";
  const Item liking = table.ask(ItemKind::liking);
  for (int place = 1; place <= 6; ++place) table.say(place, liking, 1, 4 + place % 3);
  const CameOut out = sheetOutOf(table);
  CHECK_THAT(out.headline, Contains("Heather mead: 5.0 of 9 on average ("));
  CHECK_THAT(out.notSaid, Contains("Friends are kind"));
  CHECK_THAT(out.next, Contains("pour a bought drink beside it"));
}

TEST_CASE("no person, no place and no total stands in what the room sees") {
  auto table = scoredEvening(30);
  for (int place = 1; place <= 8; ++place) table.session.people.push_back({{place}, ShownAs::signedName, "Person" + std::to_string(place), false, false, false, false});
  const std::string all = joined(sheetOutOf(table));
  CHECK_THAT(all, !Contains("Person"));
  CHECK_THAT(all, !Contains("Place "));
  CHECK_THAT(all, !Contains("of 50"));
}

TEST_CASE("no headline of a sheet says too much") {
  for (int gap : {-40, -10, 0, 3, 10, 40})
    for (const auto& limit : {std::optional<int>(), std::optional(5), std::optional(20)}) {
      const CameOut out = sheetOutOf(scoredEvening(gap, limit));
      CHECK(forbiddenWordIn(out.headline).empty());
      for (const OutSection& section : out.sections)
        for (const std::string& line : section.lines) {
          CHECK(line.find("nan") == std::string::npos);
          CHECK(line.find('{') == std::string::npos);
        }
    }
}

TEST_CASE("nobody answered, or the seal was broken: no verdict, with its reason") {
  SheetTable nobody(2, {LotRole::compared, LotRole::reference});
  nobody.ask(ItemKind::line, "sweet");
  nobody.flight(1);
  CHECK(sheetOutOf(nobody).headline == "No verdict: there is no answer that counts.");
  auto broken = scoredEvening(30);
  broken.session.log.push_back({Seq{99}, 0, Event::broken, std::nullopt, std::nullopt});
  const CameOut out = sheetOutOf(broken);
  CHECK(out.shape == Shape::dash);
  CHECK_THAT(joined(out), !Contains("less than"));
}

TEST_CASE("every ready sheet can be asked, liking comes without a total, and its words are known") {
  for (ReadySheet sheet : readySheets()) {
    INFO(readyName(voice, sheet));
    const auto items = readyItems(voice, sheet);
    CHECK_FALSE(firstImpossible(items, sheet == ReadySheet::marked));
    CHECK(std::ranges::any_of(items, &SheetItem::isMain));
    for (const SheetItem& item : items) {
      CHECK_FALSE(askedLabel(voice, item).empty());
      CHECK_FALSE(sheetItemLine(voice, item).empty());
    }
  }
}

// Green, Shaffer and Gilmore 1993: barely detectable 1.4, weak 6.1, moderate 17.2, strong 34.7, very strong 52.5 per cent of the line.
TEST_CASE("a place on the labelled line is read out with the word below it") {
  CHECK(scaleReadOut(voice, ItemKind::magnitude, 0) == "0.0 of 100, none or above");
  CHECK(scaleReadOut(voice, ItemKind::magnitude, 172) == "17.2 of 100, moderate or above");
  CHECK(scaleReadOut(voice, ItemKind::magnitude, 346) == "34.6 of 100, moderate or above");
  CHECK(scaleReadOut(voice, ItemKind::line, 40) == "40 of 100");
  CHECK(answerWords(voice, ItemKind::liking).size() == 9);
  CHECK(answerWords(voice, ItemKind::distance).size() == 11);
}

TEST_CASE("what was written for an outcome is held against a verdict only, else it is the brewer's to judge") {
  SheetTable table = scoredEvening(30);
  table.session.promises = {{Outcome::shown, "less honey"}, {Outcome::notShown, "brew it again"}};
  CHECK(sheetOutOf(table).promise == "Written before anything was poured, for this outcome: “less honey”");
  // Within all limits no gap is shown.
  SheetTable within = scoredEvening(0);
  within.session.promises = table.session.promises;
  CHECK(sheetOutOf(within).shape == Shape::bars);
  CHECK(sheetOutOf(within).promise == "Written before anything was poured, for this outcome: “brew it again”");
  // How good it is, is a score: it must not choose for the brewer.
  table.session.plan.question = Question::good;
  CHECK(sheetOutOf(table).promise == "Written before anything was poured; which of them holds is yours to say. If people like it: “less honey”. If they do not: “brew it again”.");
  table.session.promises.clear();
  CHECK(sheetOutOf(table).promise.empty());
}

TEST_CASE("a sheet of three drinks is no comparison in three pairs") {
  Plan plan = SheetTable(3).session.plan;
  plan.rounds = 2;
  CHECK(plan.comparisons() == 1);
  CHECK(plan.roundsEach() == 2);
  for (const std::string& line : planLines(voice, plan)) CHECK(line.find("pairs") == std::string::npos);
}
