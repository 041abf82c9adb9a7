// A person's card: raw and shrunk, only of what is known, and of nobody else.
#include "insight/card.h"

#include "insight/sheet_table.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace oddglass;
using namespace oddglass::insight;
using Catch::Matchers::WithinAbs;
using testing::SheetTable;

namespace {

const TasterId mona{"m"};

/// A revealed sheet at which the person sat at place 1, with the liking of two drinks by place; `known` are the others' numbers.
ScoredSheet liked(const std::vector<std::pair<int, int>>& byPlace, bool areKnown = true) {
  SheetTable table(2, {LotRole::compared, LotRole::reference});
  const Item liking = table.ask(ItemKind::liking);
  ScoredSheet sheet;
  for (std::size_t i = 0; i < byPlace.size(); ++i) {
    const int place = static_cast<int>(i) + 1;
    table.say(place, liking, 1, byPlace[i].first);
    table.say(place, liking, 2, byPlace[i].second);
    if (place > 1 && areKnown) sheet.known[{place}] = place - 1;
  }
  sheet.session = table.session;
  sheet.seat = {1};
  return sheet;
}

/// The same drink in two cups, and another one; the person alone is of interest.
ScoredSheet repeated(int one, int again) {
  SheetTable table(2, {LotRole::compared, LotRole::reference});
  const Item liking = table.ask(ItemKind::liking);
  table.flight(1, 1, {1, 2, 1});
  table.say(1, liking, 1, one);
  table.say(1, liking, 2, 5);
  table.say(1, liking, 3, again);
  ScoredSheet sheet;
  sheet.session = table.session;
  sheet.seat = {1};
  return sheet;
}

std::string typedAs(const std::string& word) { return word; }

Card cardFrom(const std::vector<ScoredSheet>& sheets) { return insight::cardOf({mona, sheets, {}}, typedAs); }

const std::vector<ScoredSheet>& three() {
  static const std::vector<ScoredSheet> sheets{liked({{7, 5}, {6, 4}, {5, 5}}), liked({{8, 4}, {6, 4}, {7, 3}}), liked({{6, 6}, {5, 5}, {6, 4}})};
  return sheets;
}

}  // namespace

// All by hand from the table of three people and six drinks: means 6, 5 and 5; mean squares of people 2 and of the rest 0.4, so the level is drawn in by
// 1 - 0.4 / 2 (Henderson 1975); variances 2, 0.8 and 2, so the spread is the root of (4 x 1.6 + 5 x 2) / 9 (Smyth 2004).
TEST_CASE("a card of three complete sheets, worked by hand") {
  const Card card = cardFrom(three());
  CHECK_FALSE(card.isTooFew);
  CHECK(card.sessions == 3);
  CHECK(card.sheets == 3);
  CHECK(card.samples == 6);
  CHECK_THAT(card.level.value(), WithinAbs(2.0 / 3, 1e-12));
  CHECK_THAT(card.shrunkLevel.value(), WithinAbs(0.8 * 2 / 3, 1e-12));
  CHECK_THAT(card.spread.value(), WithinAbs(std::sqrt(2.0), 1e-12));
  CHECK_THAT(card.shrunkSpread.value(), WithinAbs(std::sqrt(16.4 / 9), 1e-12));
  CHECK_THAT(card.othersSpread.value(), WithinAbs(std::sqrt(1.4), 1e-12));
  CHECK_THAT(card.agreement.value(), WithinAbs(7 / std::sqrt(55.0), 1e-12));
  CHECK(std::abs(card.shrunkAgreement.value()) < 1.0);
  CHECK_FALSE(card.repeats.sd);
}

TEST_CASE("too little is known below three sessions, and of scores below three sheets beside two others") {
  CHECK(cardFrom({three()[0], three()[1]}).isTooFew);
  CHECK_FALSE(cardFrom({three()[0], three()[1]}).level);
  const Card alone = cardFrom({liked({{7, 5}, {6, 4}}), three()[1], three()[2]});
  CHECK_FALSE(alone.isTooFew);
  CHECK(alone.sheets == 2);
  CHECK_FALSE(alone.level);
  ScoredSheet made = three()[0];
  made.isMaker = true;
  CHECK(cardFrom({made, three()[1], three()[2]}).sheets == 2);
  CHECK(cardFrom({}).isTooFew);
}

TEST_CASE("whoever asked to be only in the sums is somebody else each time, and counts in the mean of the others") {
  const Card card = cardFrom({liked({{7, 5}, {6, 4}, {5, 5}}, false), liked({{8, 4}, {6, 4}, {7, 3}}, false), liked({{6, 6}, {5, 5}, {6, 4}}, false)});
  CHECK(card.sheets == 3);
  CHECK_THAT(card.agreement.value(), WithinAbs(7 / std::sqrt(55.0), 0.1));
  CHECK(card.level.value() > 0.0);
}

// Deviations by hand: 6 and 8 lie 1 from their middle, 5 and 6 half a point.
TEST_CASE("repeats say how far one drink moves, and from three sessions whether that changed") {
  const Repeats two = repeatsOf({repeated(6, 8), repeated(5, 6)});
  CHECK(two.sessions == 2);
  CHECK(two.repeats == 2);
  CHECK_THAT(two.sd.value(), WithinAbs(std::sqrt((2.0 + 0.5) / 2), 1e-12));
  CHECK_FALSE(two.change);
  const Repeats four = repeatsOf({repeated(4, 8), repeated(3, 7), repeated(6, 7), repeated(5, 6)});
  REQUIRE(four.change);
  CHECK_THAT(four.change->earlierSd, WithinAbs(std::sqrt(8.0), 1e-12));
  CHECK_THAT(four.change->laterSd, WithinAbs(std::sqrt(0.5), 1e-12));
  CHECK_THAT(four.change->ratio, WithinAbs(0.25, 1e-12));
  // F with 2 and 2 degrees of freedom has its 97.5 % point at 39 (every table of F).
  CHECK_THAT(four.change->low, WithinAbs(0.25 / std::sqrt(39.0), 1e-4));
  CHECK_THAT(four.change->high, WithinAbs(0.25 * std::sqrt(39.0), 1e-3));
  CHECK_FALSE(repeatsOf({repeated(5, 5), repeated(5, 5), repeated(5, 5)}).change);
  CHECK_FALSE(repeatsOf({}).sd);
}

TEST_CASE("no answer, one drink, one score throughout: no number and no crash") {
  CHECK_FALSE(cardFrom({liked({}), liked({}), liked({})}).level);
  const Card flat = cardFrom({liked({{5, 5}, {5, 5}, {5, 5}}), liked({{5, 5}, {5, 5}, {5, 5}}), liked({{5, 5}, {5, 5}, {5, 5}})});
  CHECK(flat.spread == 0.0);
  CHECK_FALSE(flat.agreement);
}
