#include "print/pour_pages.h"
#include "print/table_evening.h"

using namespace oddglass;
using namespace oddglass::testing;

namespace {

session::PourSheet hostileSheet(int rounds, int friends) {
  PaperEvening evening(rounds, 1, friends, Method::triangle, hostileName());
  session::PourSheet sheet = session::openPourSheet(*evening.store, evening.clock, evening.session);
  sheet.bottleByBottle.front().name = hostileName();
  return sheet;
}

}  // namespace

TEST_CASE("the pourer's sheet has every cup twice: by bottle, and by place with its drink; spare ones once") {
  for (const print::PaperSize size : {print::PaperSize::a4, print::PaperSize::letter}) {
    PaperEvening evening(2, 1, 3);
    const session::PourSheet sheet = session::openPourSheet(*evening.store, evening.clock, evening.session);
    const bool isA4 = size == print::PaperSize::a4;
    const Paper read(isA4 ? "pour_a4" : "pour_letter", print::pourSheetPdf({}, sheet, size));
    const auto words = read.words();
    for (const session::PourLine& line : sheet.placeByPlace) {
      INFO(line.code.value);
      CHECK(std::ranges::count(words, std::to_string(line.code.value), &Word::text) == (line.spare > 0 ? 1 : 2));
    }
    const std::string text = read.text();
    CHECK_THAT(text, Catch::Contains("this sheet is the key"));
    CHECK_THAT(text, Catch::Contains(sheet.sealMark));
    CHECK_THAT(text, Catch::Contains("15 mL"));
    CHECK(beyond(read, isA4 ? 595.3 : 612, isA4 ? 841.9 : 792, 45) == "");
    CHECK(overlapping(read) == "");
  }
}

TEST_CASE("a hostile drink stands whole on the pourer's sheet and breaks nothing") {
  const session::PourSheet sheet = hostileSheet(2, 3);
  const Paper read("pour_hostile", print::pourSheetPdf({}, sheet, print::PaperSize::letter));
  const long cups = std::ranges::count(sheet.placeByPlace, sheet.bottleByBottle.front().slot, &session::PourLine::slot);
  // Over its bottles once for each round, and beside each of its cups.
  CHECK(timesIn(squeezed(read.text()), squeezed(hostileName()) ) >= cups + 2);
  CHECK(beyond(read, 612, 792, 45) == "");
  CHECK(overlapping(read) == "");
}

TEST_CASE("a key card keeps the key within the quarter that is folded in, on as many cards as it takes") {
  for (const int friends : {3, 30}) {
    const session::PourSheet sheet = hostileSheet(3, friends);
    for (const print::PaperSize size : {print::PaperSize::a4, print::PaperSize::letter}) {
      const double height = size == print::PaperSize::a4 ? 841.89 : 792, quarter = height / 4;
      const Paper read("key_card_" + std::to_string(friends) + (size == print::PaperSize::a4 ? "_a4" : "_letter"), print::keyCardPdf({}, sheet, size));
      const auto words = read.words();
      for (const session::PourLine& line : sheet.placeByPlace) {
        INFO(line.code.value);
        const auto at = std::ranges::find(words, std::to_string(line.code.value), &Word::text);
        REQUIRE(at != words.end());
        CHECK(std::ranges::count(words, std::to_string(line.code.value), &Word::text) == 1);
        CHECK(at->top > quarter * 2);
        CHECK(at->bottom < quarter * 3);
      }
      CHECK(beyond(read, size == print::PaperSize::a4 ? 595.3 : 612, height, 14) == "");
      CHECK(overlapping(read) == "");
      CHECK(timesIn(squeezed(read.text()), "A:" + squeezed(sheet.bottleByBottle.front().name)) == 1);
    }
  }
}
