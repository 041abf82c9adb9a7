#include "cellar.h"
#include "print/table_evening.h"
#include "print/table_pages.h"

#include <set>

using namespace oddglass;
using namespace oddglass::testing;

namespace {

std::string codeWord(const Cup& cup) { return std::to_string(cup.code.value); }

}  // namespace

TEST_CASE("every code has one label, in the order of the places, spare ones last") {
  for (const print::PaperSize size : {print::PaperSize::a4, print::PaperSize::letter}) {
    PaperEvening evening;
    const tasting::TablePaper paper = evening.paper();
    const Paper read(size == print::PaperSize::a4 ? "labels_a4" : "labels_letter", print::labelsPdf({}, paper, size));
    std::vector<std::string> wanted, found;
    for (const Cup& cup : paper.cups) wanted.push_back(codeWord(cup));
    const std::set<std::string> known(wanted.begin(), wanted.end());
    for (const Word& word : read.words())
      if (known.contains(word.text) && word.bottom - word.top > 15) found.push_back(word.text);
    CHECK(found == wanted);
    REQUIRE(std::ranges::is_sorted(paper.cups, {}, [](const Cup& cup) { return std::tuple(cup.spare > 0, cup.place, cup.round, cup.position, cup.spare); }));
    CHECK(overlapping(read) == "");
  }
}

TEST_CASE("labels lie where their measures say, within their own edges") {
  PaperEvening evening(1, 0, 5);
  const tasting::TablePaper paper = evening.paper();
  print::LabelSheet sheet;
  sheet.columns = 4;
  sheet.rows = 10;
  sheet.top = 13;
  sheet.right = 8;
  sheet.bottom = 13;
  sheet.left = 8;
  sheet.across = 2.5;
  sheet.down = 1;
  sheet.skip = 6;
  const Paper read("labels_measured", print::labelsPdf({}, paper, print::PaperSize::a4, sheet));
  const auto words = read.words();
  for (std::size_t i = 0; i < paper.cups.size(); ++i) {
    // 210 mm less both margins and three gaps, in four; 297 mm less both margins and nine gaps, in ten.
    const int on = static_cast<int>(i) + 6, at = on % 40, column = at % 4, row = at / 4;
    const double wide = (210.0 - 16 - 7.5) / 4, high = (297.0 - 26 - 9) / 10;
    const double left = (8 + column * (wide + 2.5)) * 72 / 25.4, top = (13 + row * (high + 1)) * 72 / 25.4;
    const auto word = std::ranges::find_if(words, [&](const Word& each) { return each.page == on / 40 + 1 && each.text == codeWord(paper.cups[i]) && each.bottom - each.top > 15; });
    INFO(i << ' ' << codeWord(paper.cups[i]));
    REQUIRE(word != words.end());
    CHECK(word->left > left);
    CHECK(word->right < left + wide * 72 / 25.4);
    CHECK(word->top > top - 4);
    CHECK(word->bottom < top + high * 72 / 25.4 + 2);
  }
}

TEST_CASE("labels that do not fit are refused, naming what is wrong") {
  PaperEvening evening(1, 0, 2);
  const auto refused = [&](const print::LabelSheet& sheet) { return problemOf([&] { print::labelsPdf({}, evening.paper(), print::PaperSize::letter, sheet); }); };
  print::LabelSheet sheet;
  sheet.columns = 12;
  CHECK(refused(sheet).trouble() == Trouble::labelsDoNotFit);
  CHECK(refused(sheet).argument() == "columns");
  sheet.columns = 0;
  CHECK(refused(sheet).trouble() == Trouble::outOfRange);
  sheet = {};
  sheet.left = -1;
  CHECK(refused(sheet).argument() == "margins");
  sheet = {};
  sheet.down = std::numeric_limits<double>::quiet_NaN();
  CHECK(refused(sheet).argument() == "gaps");
  sheet = {};
  sheet.skip = 24;
  CHECK(refused(sheet).argument() == "skip");
}
