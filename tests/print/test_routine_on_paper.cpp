#include "evening.h"
#include "print/read_back.h"
#include "print/routine_pages.h"

#include <algorithm>

using namespace oddglass;
using testing::Evening;
using testing::Paper;

namespace {

print::RoutinePaper sealedPaper(Routine routine, Method method, int friendCount, bool withMaker) {
  Evening evening(2, 0, friendCount);
  Draft draft = session::draft(*evening.store, evening.session);
  draft.routine = routine;
  draft.method = method;
  draft.methodChosen = true;
  if (method == Method::preference) draft.question = Question::prefer;
  if (routine != Routine::die) draft.pourer.reset();
  if (!withMaker) draft.tasters.pop_back();
  session::saveDraft(*evening.store, evening.clock, draft);
  evening.seal();
  const session::SessionRecord record = session::record(*evening.store, evening.session);
  return {record.plan, record.guestTitle, record.sealMark};
}

// The page on which these words stand first; 0 where they stand on none.
int pageWith(const Paper& paper, const std::string& words) {
  for (int page = 1; page <= paper.pages(); ++page)
    if (paper.text(page).find(words) != std::string::npos) return page;
  return 0;
}

}  // namespace

TEST_CASE("a couple's paper: the steps, a first sheet without codes, a second without drinks") {
  const print::RoutinePaper made = sealedPaper(Routine::couple, Method::triangle, 2, false);
  const Paper paper("routine_couple", print::routinePdf({}, made, print::PaperSize::a4));
  const int first = pageWith(paper, "First sheet"), second = pageWith(paper, "Second sheet");
  REQUIRE(first > 1);
  REQUIRE(second > first);
  std::string one, two;
  for (int page = first; page < second; ++page) one += paper.text(page);
  for (int page = second; page <= paper.pages(); ++page) two += paper.text(page);
  for (const Cup& cup : made.plan.cups) {
    CHECK(one.find(std::to_string(cup.code.value)) == std::string::npos);
    CHECK(two.find(std::to_string(cup.code.value)) != std::string::npos);
  }
  for (const char* drink : {"Heather mead", "Bought mead"}) {
    CHECK(paper.text(1).find(drink) != std::string::npos);
    CHECK(two.find(drink) == std::string::npos);
  }
  // Four marks for each of two places and two rounds; three codes and the cup set aside.
  CHECK(std::ranges::count(one, '\n') > 16);
  CHECK(two.find("set aside") != std::string::npos);
  CHECK(paper.text(1).find(made.sealMark) != std::string::npos);
}

TEST_CASE("every routine's paper keeps to its pages, on A4 and Letter") {
  struct Case {
    Routine routine;
    Method method;
    const char* list;
  };
  for (const auto& [routine, method, list] : {Case{Routine::alone, Method::triangle, "under the cups"}, Case{Routine::die, Method::preference, "which cup got what"},
                                              Case{Routine::bottles, Method::preference, "under the covers"}}) {
    for (const auto size : {print::PaperSize::a4, print::PaperSize::letter}) {
      const print::RoutinePaper made = sealedPaper(routine, method, routine == Routine::alone ? 0 : 3, routine == Routine::alone);
      const Paper paper("routine_" + std::string(list).substr(0, 5), print::routinePdf({}, made, size));
      CHECK(paper.text().find(list) != std::string::npos);
      for (const Cup& cup : made.plan.cups) CHECK(paper.text().find(std::to_string(cup.code.value)) != std::string::npos);
      const double right = size == print::PaperSize::a4 ? 595 : 612, bottom = size == print::PaperSize::a4 ? 842 : 792;
      for (const testing::Word& word : paper.words()) CHECK((word.left >= 30 && word.right <= right - 30 && word.top >= 20 && word.bottom <= bottom - 15));
    }
  }
}
