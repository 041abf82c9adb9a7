#include "aging_evenings.h"
#include "print/read_back.h"
#include "print/tag_pages.h"
#include "trouble.h"

#include <set>

using namespace oddglass;
using namespace oddglass::testing;

namespace {

const words::NamedLot warm{"Heather mead", "bottled in March"}, cold{"Heather mead", "kept cold"};

Series seriesOf(int bottlesEach, int reserve) {
  AgingEvenings evening;
  Series series = shelf::series(*evening.store, evening.series);
  series.bottlesEach = bottlesEach;
  series.reserve = reserve;
  return series;
}

}  // namespace

TEST_CASE("every bottle that a series sets aside has a tag of its own, in letters that no cup's code can be") {
  const Series series = seriesOf(2, 3);
  const auto tags = words::bottleTags({}, series, warm, cold);
  // Four looks of two bottles each beside two of the twin, and three in reserve.
  REQUIRE(tags.size() == 4 * (2 + 2) + 3);
  std::set<std::string> letters;
  for (const words::BottleTag& tag : tags) {
    CHECK(letters.insert(tag.letters).second);
    CHECK(tag.letters.find_first_of("0123456789IO") == std::string::npos);
  }
  CHECK(tags.front().letters == "A");
  CHECK(tags.front().keptFor.find(series.sittings.front().dueOn) != std::string::npos);
  CHECK(tags[2].drink.find("kept cold") != std::string::npos);
  CHECK(tags.back().drink.find("bottled in March") != std::string::npos);

  Series alone = series;
  alone.control = ControlKind::none;
  CHECK(words::bottleTags({}, alone, warm, cold).size() == 4 * 2 + 3);
  // Twenty-four letters are left without I and O; the twenty-fifth bottle begins again with two.
  const auto many = words::bottleTags({}, seriesOf(4, 0), warm, cold);
  CHECK(many[23].letters == "Z");
  CHECK(many[24].letters == "AA");
}

TEST_CASE("tags are read back from paper, each within its own label, however long the names are") {
  const Series series = seriesOf(1, 1);
  const std::string longName(200, 'm');
  for (const words::NamedLot& batch : {warm, words::NamedLot{longName, longName}}) {
    const auto tags = words::bottleTags({}, series, batch, cold);
    const Paper read("tags", print::tagsPdf("Tags", tags, print::PaperSize::a4));
    std::vector<std::string> found, wanted;
    for (const auto& tag : tags) wanted.push_back(tag.letters);
    for (const Word& word : read.words())
      if (std::ranges::find(wanted, word.text) != wanted.end() && word.bottom - word.top > 20) found.push_back(word.text);
    std::ranges::sort(found);   // a page is read block by block
    CHECK(found == wanted);
    CHECK(overlapping(read) == "");
  }
  CHECK(troubleOf([&] { print::tagsPdf("Tags", {}, print::PaperSize::a4, {.columns = 0}); }) == Trouble::outOfRange);
}
