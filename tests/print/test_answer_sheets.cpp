#include "domain/names.h"
#include "planning/amounts.h"
#include "print/run_pages.h"
#include "print/table_evening.h"
#include "print/table_pages.h"
#include "words/paper.h"

#include <map>
#include <set>

using namespace oddglass;
using namespace oddglass::testing;

namespace {

/// The codes in a text, of those that were drawn.
std::multiset<int> codesIn(const std::string& text, const tasting::TablePaper& paper) {
  std::multiset<int> found;
  static const std::regex digits("(^|[^0-9])([0-9]{3,4})(?![0-9])");
  std::set<int> known;
  for (const Cup& cup : paper.cups) known.insert(cup.code.value);
  for (auto at = std::sregex_iterator(text.begin(), text.end(), digits); at != std::sregex_iterator(); ++at)
    if (const int code = std::stoi((*at)[2]); known.contains(code)) found.insert(code);
  return found;
}

std::set<int> codesOf(const tasting::Flight& flight) {
  std::set<int> codes;
  for (const tasting::FlightCup& cup : flight.cups) codes.insert(cup.code.value);
  return codes;
}

/// Which flight each page belongs to, by its heading.
std::string headOf(const tasting::Flight& flight) { return words::placeLine({}, flight.place, flight.round, flight.rounds); }

}  // namespace

TEST_CASE("an answer sheet holds every code of its flight and none of another place, whatever is asked") {
  for (const Method method : allOf<Method>()) {
    INFO(nameOf(method));
    PaperEvening evening(2, 1, 3, method);
    const tasting::TablePaper paper = evening.paper();
    for (const print::PaperSize size : {print::PaperSize::a4, print::PaperSize::letter}) {
      const bool isA4 = size == print::PaperSize::a4;
      const Paper read("answers_" + std::string(nameOf(method)) + (isA4 ? "_a4" : "_letter"), print::answerSheetsPdf({}, paper, size));
      std::map<std::string, std::set<int>> seen;
      std::string head;
      for (int page = 1; page <= read.pages(); ++page) {
        const std::string text = read.text(page);
        for (const tasting::PaperPlace& place : paper.places)
          for (const tasting::Flight& flight : place.flights)
            if (text.find(headOf(flight) + '\n') != std::string::npos) head = headOf(flight);
        REQUIRE_FALSE(head.empty());
        for (const int code : codesIn(text, paper)) seen[head].insert(code);
      }
      for (const tasting::PaperPlace& place : paper.places)
        for (const tasting::Flight& flight : place.flights) {
          INFO(headOf(flight));
          CHECK(seen[headOf(flight)] == codesOf(flight));
        }
      CHECK(beyond(read, isA4 ? 595.3 : 612, isA4 ? 841.9 : 792, 45) == "");
      CHECK(overlapping(read) == "");
    }
  }
}

TEST_CASE("a sheet without codes has none") {
  for (const Method method : {Method::tetrad, Method::sheet}) {
    PaperEvening evening(1, 0, 3, method);
    const Paper read("blank_" + std::string(nameOf(method)), print::answerSheetsPdf({}, evening.paper(), print::PaperSize::a4, true));
    CHECK(codesIn(read.text(), evening.paper()).empty());
    CHECK_THAT(read.text(), Catch::Contains("Write the codes of your cups"));
  }
}

TEST_CASE("a mat shows the codes of one flight from left to right") {
  for (const Method method : {Method::triangle, Method::twoOutOfFive, Method::sheet}) {
    PaperEvening evening(2, 1, 3, method);
    const tasting::TablePaper paper = evening.paper();
    const Paper read("mats_" + std::string(nameOf(method)), print::matsPdf({}, paper, print::PaperSize::letter));
    std::multiset<int> all;
    for (const tasting::PaperPlace& place : paper.places)
      for (const tasting::Flight& flight : place.flights)
        for (const int code : codesOf(flight)) all.insert(code);
    CHECK(codesIn(read.text(), paper) == all);
    const auto words = read.words();
    for (const tasting::PaperPlace& place : paper.places)
      for (const tasting::Flight& flight : place.flights) {
        double before = 0, row = 0;
        for (const tasting::FlightCup& cup : flight.cups) {
          const auto word = std::ranges::find(words, std::to_string(cup.code.value), &Word::text);
          REQUIRE(word != words.end());
          if (word->top > row + 20) before = 0, row = word->top;
          CHECK(word->left > before);
          before = word->left;
        }
      }
    CHECK(beyond(read, 612, 792, 45) == "");
    CHECK(overlapping(read) == "");
  }
}

TEST_CASE("a spilled cup's spare code stands on the next sheets and mats in its stead") {
  PaperEvening evening(1, 0, 3);
  evening.sitAll();
  const Code before = evening.paper().places.at(0).flights.at(0).cups.at(1).code;
  const Code after = tasting::spilled(*evening.store, evening.clock, evening.session, before);
  const std::string text = Paper("answers_spilled", print::answerSheetsPdf({}, evening.paper(), print::PaperSize::a4)).text(1);
  CHECK(codesIn(text, evening.paper()).contains(after.value));
  CHECK_FALSE(codesIn(text, evening.paper()).contains(before.value));
}

TEST_CASE("the run list ends when the plan's minutes are over") {
  // The plan says how long an evening takes, rounded up to 5 minutes: both go by the same paces.
  PaperEvening evening(2, 1, 3);
  const session::DraftFacts facts = [&] {
    Evening other(2, 1, 3);
    return session::draftFacts(*other.store, other.session);
  }();
  const int planned = planning::amountsOf(session::setupOf(facts)).minutes;
  const Paper read("run", print::runPdf({}, evening.paper(), print::PaperSize::a4));
  const std::string text = read.text();
  int last = 0;
  static const std::regex minute("(^|\n)([0-9]+)( to ([0-9]+))? ");
  for (auto at = std::sregex_iterator(text.begin(), text.end(), minute); at != std::sregex_iterator(); ++at) last = std::stoi((*at)[4].matched ? (*at)[4] : (*at)[2]);
  CHECK((last + 4) / 5 * 5 == planned);
  CHECK_THAT(text, Catch::Contains(evening.paper().sealMark));
}

TEST_CASE("hostile titles and words stand whole on everything for the table, and break nothing") {
  const std::string word = "<b>{what}%1</b>" + std::string(45, 'W');
  for (const Method method : {Method::pair, Method::sheet}) {
    PaperEvening evening(1, 0, 3, method);
    tasting::TablePaper paper = evening.paper();
    paper.guestTitle = hostileName();
    for (tasting::PaperPlace& place : paper.places)
      for (tasting::Flight& flight : place.flights) {
        flight.attribute = flight.cleanser = word;
        for (SheetItem& item : flight.items)
          if (!item.word.empty()) item.word = word;
      }
    const std::string name(nameOf(method));
    const Paper answers("hostile_answers_" + name, print::answerSheetsPdf({}, paper, print::PaperSize::letter)), mats("hostile_mats_" + name, print::matsPdf({}, paper, print::PaperSize::letter)),
        run("hostile_run_" + name, print::runPdf({}, paper, print::PaperSize::letter));
    for (const Paper* each : {&answers, &mats, &run}) {
      CHECK(timesIn(squeezed(each->text()), squeezed(hostileName())) >= each->pages());
      CHECK(beyond(*each, 612, 792, 45) == "");
      CHECK(overlapping(*each) == "");
    }
    CHECK(timesIn(squeezed(answers.text()), word) >= static_cast<int>(paper.places.size()));
  }
}
