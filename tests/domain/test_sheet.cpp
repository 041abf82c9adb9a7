#include "domain/flight_form.h"
#include "domain/names.h"
#include "domain/replies.h"

#include <catch2/catch.hpp>

using namespace oddglass;

namespace {

SheetItem ask(ItemKind kind, const std::string& word = {}, Part part = Part::main, bool required = true) {
  SheetItem item;
  item.kind = kind;
  item.word = word;
  item.part = part;
  item.required = required;
  return item;
}

const std::vector<SheetItem> sheet = numbered({ask(ItemKind::liking, "colour", Part::look, false), ask(ItemKind::line, "sweet"), ask(ItemKind::liking),
                                               ask(ItemKind::worst), ask(ItemKind::rank, "", Part::last), ask(ItemKind::split, "", Part::last),
                                               ask(ItemKind::sureness)}, 3);
const std::vector<Code> cups{{318}, {472}, {905}};

// All that a taster of three cups can say: liking of the colour left out for the second cup.
std::vector<GivenReply> full() {
  std::vector<GivenReply> all;
  int rank = 0;
  for (Code cup : cups) {
    if (cup != Code{472}) all.push_back({{1}, cup, 6, false});
    all.push_back({{2}, cup, 40, false});
    all.push_back({{3}, cup, 7, false});
    all.push_back({{4}, cup, rank == 0 ? std::optional(0) : std::nullopt, rank != 0});
    all.push_back({{5}, cup, ++rank, false});
    all.push_back({{6}, cup, rank == 1 ? 3 : 1, false});
  }
  all.push_back({{7}, {}, 2, false});
  return all;
}

std::optional<ReplyFault> faultOf(const std::vector<GivenReply>& replies) {
  const auto found = firstFault(sheet, cups, replies);
  return found ? std::optional(found->fault) : std::nullopt;
}

GivenReply& at(std::vector<GivenReply>& replies, int item, int code) {
  return *std::ranges::find_if(replies, [&](const GivenReply& each) { return each.item == Item{item} && each.code == Code{code}; });
}

}  // namespace

TEST_CASE("a sheet is numbered, with the range that each kind of answer has") {
  // Nine points: Peryam and Pilgrim 1957. A line of 0 to 100, five points of just about right, ten of distance: common practice.
  CHECK(sheet[0].item == Item{1});
  CHECK(sheet[2].low == 1);
  CHECK(sheet[2].high == 9);
  CHECK(sheet[1].high == 100);
  CHECK(sheet[4].high == 3);
  CHECK(sheet[5].high == 5);
  CHECK(sheet[1].perCup);
  CHECK_FALSE(sheet[6].perCup);
  CHECK(numbered({ask(ItemKind::justRight, "sweet")}, 2)[0].high == 5);
  CHECK(numbered({ask(ItemKind::distance)}, 2)[0].high == 10);
  CHECK(numbered({ask(ItemKind::words)}, 2)[0].perCup);
  CHECK_FALSE(numbered({ask(ItemKind::words, "", Part::last)}, 2)[0].perCup);
}

TEST_CASE("a sheet that cannot be asked is found out by the number of the question") {
  CHECK_FALSE(firstImpossible(sheet, false));
  CHECK(firstImpossible({}, false) == 0);
  CHECK(firstImpossible({ask(ItemKind::words)}, false) == 0);  // asks nothing of a cup
  CHECK(firstImpossible(std::vector<SheetItem>(201, ask(ItemKind::liking)), false) == 0);
  CHECK(firstImpossible({ask(ItemKind::liking), ask(ItemKind::line)}, false) == 2);         // without a word
  CHECK(firstImpossible({ask(ItemKind::liking), ask(ItemKind::liking)}, false) == 2);       // twice
  CHECK(firstImpossible({ask(ItemKind::choose)}, false) == 1);                              // belongs to another method
  CHECK(firstImpossible({ask(ItemKind::distance)}, false) == 1);                            // no marked cup
  CHECK_FALSE(firstImpossible({ask(ItemKind::distance)}, true));
  CHECK(firstImpossible({ask(ItemKind::rank)}, false) == 1);                                // before all cups were tasted
  CHECK(firstImpossible({ask(ItemKind::liking, "", Part::last)}, false) == 1);
  CHECK(firstImpossible({ask(ItemKind::line, std::string(61, 'x'))}, false) == 1);
  SheetItem wide = ask(ItemKind::liking);
  wide.limit = 9;
  CHECK(firstImpossible({wide}, false) == 1);  // the scale is eight points long
  wide.limit = 1;
  CHECK_FALSE(firstImpossible({wide}, false));
  SheetItem check = ask(ItemKind::check, "smoky");
  check.limit = 1;
  CHECK(firstImpossible({check}, false) == 1);
}

TEST_CASE("replies to a sheet are taken whole, or refused by the first thing that is wrong") {
  CHECK_FALSE(faultOf(full()));
  auto replies = full();
  const auto wrong = [&](auto&& change) {
    replies = full();
    change(replies);
    return faultOf(replies);
  };
  CHECK(wrong([](auto& all) { all.pop_back(); }) == ReplyFault::missing);
  CHECK(wrong([](auto& all) { std::erase_if(all, [](const auto& each) { return each.item == Item{2} && each.code == Code{905}; }); }) == ReplyFault::missing);
  CHECK_FALSE(wrong([](auto& all) { std::erase_if(all, [](const auto& each) { return each.item == Item{1}; }); }));  // "I don't judge colour"
  CHECK(wrong([](auto& all) { all.push_back(all.front()); }) == ReplyFault::twice);
  CHECK(wrong([](auto& all) { all.front().item = {8}; }) == ReplyFault::unknown);
  CHECK(wrong([](auto& all) { all.front().code = {590}; }) == ReplyFault::notHere);
  CHECK(wrong([](auto& all) { all.back().code = {318}; }) == ReplyFault::outOfRange);   // a question about the flight
  CHECK(wrong([](auto& all) { at(all, 2, 472).code = {}; }) == ReplyFault::outOfRange); // a question about each cup
  CHECK(wrong([](auto& all) { at(all, 2, 472).value = 101; }) == ReplyFault::outOfRange);
  CHECK(wrong([](auto& all) { at(all, 3, 472) = {{3}, {472}, std::nullopt, true}; }) == ReplyFault::outOfRange);
  CHECK(wrong([](auto& all) { at(all, 4, 318).value = 1; }) == ReplyFault::outOfRange); // "none" is 0 and nothing else
  CHECK(wrong([](auto& all) { at(all, 5, 905).value = 2; }) == ReplyFault::notARanking);
  CHECK(wrong([](auto& all) { at(all, 6, 905).value = 2; }) == ReplyFault::notFivePoints);
}

TEST_CASE("a ranking that may be left out is left out whole") {
  const auto items = numbered({ask(ItemKind::liking), ask(ItemKind::rank, "", Part::last, false)}, 2);
  const std::vector<Code> two{{318}, {472}};
  std::vector<GivenReply> replies{{{1}, {318}, 5, false}, {{1}, {472}, 6, false}};
  CHECK_FALSE(firstFault(items, two, replies));
  replies.push_back({{2}, {318}, 1, false});
  REQUIRE(firstFault(items, two, replies));
  CHECK(firstFault(items, two, replies)->fault == ReplyFault::missing);
  replies.push_back({{2}, {472}, 2, false});
  CHECK_FALSE(firstFault(items, two, replies));
}

TEST_CASE("a plan of score sheets knows its cups") {
  Plan plan;
  plan.method = Method::sheet;
  plan.sheet = SheetPlan{{{1, 2, 3}, {2, 3, 1}}, false, 30, {}};
  CHECK(cupsInFlight(plan) == 3);
  CHECK_FALSE(hasMarkedCup(plan));
  plan.marked = Slot{2};
  CHECK(cupsInFlight(plan) == 4);
  CHECK(hasMarkedCup(plan));
  Plan triangle;
  CHECK(cupsInFlight(triangle) == 3);
}
