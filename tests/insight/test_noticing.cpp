#include "insight/noticing.h"

#include "insight/table.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::insight;
using Catch::Matchers::WithinAbs;

namespace {

const TasterId ada{"a"}, bede{"b"};

/// A known difference in which person k had right[k] of `rounds`; nobody but `who` is known.
KnownDifference knownOf(Method method, const std::vector<int>& right, int rounds, std::map<Place, TasterId> who, const std::string& word = "butter") {
  KnownDifference known{table::panelOf(method, right, rounds), std::move(who)};
  known.session.plan.question = Question::notice;
  known.session.plan.attribute = word;
  known.session.plan.expected = Slot{1};
  return known;
}

std::string asTyped(const std::string& word) { return word; }

const Noticed& of(const std::vector<Noticed>& all, const TasterId& who, const std::string& word = "butter") {
  const auto found = std::ranges::find_if(all, [&](const Noticed& each) { return each.who == who && each.word == word; });
  REQUIRE(found != all.end());
  return *found;
}

}  // namespace

TEST_CASE("those known to notice a word are found under every name that it was asked by") {
  const KnownDifferences known{knownOf(Method::pair, {5, 3}, 5, {{{1}, ada}, {{2}, bede}})};
  const Meaning meaning = [](const std::string& word) { return word == "butterscotch" ? "butter" : word; };
  std::vector<LotQuestion> asked(4);
  asked[0].word = "butter";
  asked[1].word = "butterscotch";
  asked[2].word = "honey";
  const Noticers noticers = noticersOf(known, asked, meaning);
  CHECK(noticers == Noticers{{"butter", {ada}}, {"butterscotch", {ada}}});
}

// The exact binomial of ISO 5495 (pair) by hand: 5 of 5 is 1/32, 4 of 4 is 1/16.
TEST_CASE("five pairs of five are known to notice, four of four are not") {
  const auto five = noticingOf({knownOf(Method::pair, {5, 3}, 5, {{{1}, ada}, {{2}, bede}})}, asTyped);
  CHECK_THAT(of(five, ada).pValue.value(), WithinAbs(1.0 / 32, 1e-15));
  CHECK(of(five, ada).isKnown);
  CHECK_THAT(of(five, bede).pValue.value(), WithinAbs(0.5, 1e-15));
  CHECK_FALSE(of(five, bede).isKnown);
  const auto four = noticingOf({knownOf(Method::pair, {4}, 4, {{{1}, ada}})}, asTyped);
  CHECK_THAT(of(four, ada).pValue.value(), WithinAbs(1.0 / 16, 1e-15));
  CHECK_FALSE(of(four, ada).isKnown);
}

// Counted by hand: 2 of 2 pairs and 2 of 2 triangles by guessing, 1/4 times 1/9; with one triangle wrong, that or better is 1/4 (1/9 + 4/9) + 1/2 x 1/9.
TEST_CASE("trials of several methods are one count, each with its own chance") {
  const auto all = noticingOf({knownOf(Method::pair, {2, 2}, 2, {{{1}, ada}, {{2}, bede}}), knownOf(Method::triangle, {2, 1}, 2, {{{1}, ada}, {{2}, bede}})}, asTyped);
  CHECK_THAT(of(all, ada).pValue.value(), WithinAbs(1.0 / 36, 1e-15));
  CHECK(of(all, ada).isKnown);
  CHECK_THAT(of(all, bede).pValue.value(), WithinAbs(5.0 / 36 + 2.0 / 36, 1e-15));
  REQUIRE(of(all, ada).methods.size() == 2);
  CHECK(of(all, ada).visits.size() == 2);
}

// Uniform share beforehand and one right answer of one pair: the posterior density of the share is (1 + p) 2/3, its median (sqrt(10) - 2) / 2 by hand.
TEST_CASE("the share that is noticed is freed of guessing") {
  const auto all = noticingOf({knownOf(Method::pair, {1}, 1, {{{1}, ada}})}, asTyped);
  REQUIRE(of(all, ada).methods.size() == 1);
  CHECK_THAT(of(all, ada).methods[0].median, WithinAbs((std::sqrt(10.0) - 2.0) / 2.0, 1e-9));
  CHECK(of(all, ada).methods[0].low < of(all, ada).methods[0].median);
}

TEST_CASE("who asked to be only in the sums is in none, and a maker's answers are their own") {
  KnownDifference known = knownOf(Method::pair, {3, 3}, 3, {{{1}, ada}, {{9}, bede}});
  for (const PanelFlight& flight : known.session.panel)
    if (flight.place == Place{1}) {
      RevealedFlight same = flight;
      same.place = {9};
      known.session.makers.emplace_back(same);
    }
  const auto all = noticingOf({known}, asTyped);
  REQUIRE(all.size() == 2);
  CHECK(of(all, bede).right == 3);
}

TEST_CASE("what was told by look or fizz, or after something was said, does not count") {
  KnownDifference known = knownOf(Method::pair, {4, 4}, 4, {{{1}, ada}, {{2}, bede}});
  for (PanelFlight& flight : known.session.panel) flight.clue = flight.place == Place{1} && flight.round.value <= 2 ? Clue::look : Clue::taste;
  known.session.said.push_back({Seq{350}, 0, {{2}}, {}});  // before the last round of place 2
  const auto all = noticingOf({known}, asTyped);
  CHECK(of(all, ada).trials == 2);
  CHECK(of(all, ada).leftOut == 2);
  CHECK(of(all, bede).trials == 3);
  CHECK(of(all, bede).leftOut == 1);
}

TEST_CASE("a change needs three sessions by one method, and sets the later half against the earlier") {
  const auto with = [](std::vector<int> right, Method third = Method::pair) {
    KnownDifferences known;
    for (std::size_t i = 0; i < right.size(); ++i) known.push_back(knownOf(i == 2 ? third : Method::pair, {right[i]}, 6, {{{1}, ada}}));
    return noticingOf(known, asTyped);
  };
  CHECK_FALSE(of(with({3, 4}), ada).change);
  CHECK_FALSE(of(with({3, 4, 5}, Method::triangle), ada).change);
  const auto three = with({3, 4, 5});
  REQUIRE(of(three, ada).change);
  CHECK(of(three, ada).change->earlierRight == 3);
  CHECK(of(three, ada).change->earlierTrials == 6);
  CHECK(of(three, ada).change->laterRight == 9);
  CHECK(of(three, ada).change->laterTrials == 12);
  const auto steep = with({1, 2, 3, 6, 6, 6});
  CHECK(of(steep, ada).change->low > 0.0);
}

TEST_CASE("words are one under all their names, and a table is told which of them nobody there notices") {
  const Meaning meaning = [](const std::string& word) { return word == "diacetyl" ? std::string("butter") : word; };
  const auto all = noticingOf({knownOf(Method::pair, {5, 1}, 5, {{{1}, ada}, {{2}, bede}}, "diacetyl"), knownOf(Method::pair, {2, 2}, 3, {{{1}, ada}, {{2}, bede}}, "mousy")}, meaning);
  CHECK(unnoticed(all, {ada, bede}, {"mousy", "diacetyl", "mousy", "rubber"}, meaning) == std::vector<std::string>{"mousy", "rubber"});
  CHECK(unnoticed(all, {bede}, {"butter"}, meaning) == std::vector<std::string>{"butter"});
  const auto words = wordsNoticed(all);
  REQUIRE(words.size() == 2);
  CHECK(words[0].word == "butter");
  CHECK(words[0].people == 2);
  CHECK(words[0].known == 1);
  CHECK(wordsNoticed(all, std::vector{bede})[0].known == 0);
}

TEST_CASE("nothing known gives nothing") {
  CHECK(noticingOf({}, asTyped).empty());
  KnownDifference nobody = knownOf(Method::pair, {3}, 3, {{{1}, ada}});
  nobody.session.panel.clear();
  CHECK(noticingOf({nobody}, asTyped).empty());
}
