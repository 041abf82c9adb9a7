#include "tasting/sheet_steps.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace oddglass;
using namespace oddglass::tasting;

namespace {

Flight flightOf(int place, bool hasMarked = false) {
  Flight flight;
  flight.place = {place};
  flight.round = {1};
  flight.method = Method::sheet;
  flight.pauseSeconds = 30;
  if (hasMarked) flight.cups.push_back({{700}, {1}, true});
  for (int cup = 1; cup <= 3; ++cup) flight.cups.push_back({{100 + cup}, {static_cast<int>(flight.cups.size()) + 1}, false});
  const auto ask = [&](ItemKind kind, Part part = Part::main, const std::string& word = {}) {
    SheetItem item;
    item.kind = kind;
    item.part = part;
    item.word = word;
    flight.items.push_back(item);
  };
  ask(ItemKind::liking);
  for (const char* word : {"sweet", "sour", "bitter", "body", "smoke", "fruit"}) ask(ItemKind::line, Part::main, word);
  ask(ItemKind::liking, Part::look, "colour");
  ask(ItemKind::line, Part::late, "mousy");
  ask(ItemKind::rank, Part::last);
  ask(ItemKind::sureness);
  flight.items = numbered(flight.items, 3);
  return flight;
}

const SessionId sheetSession{std::string(32, '4')};

}  // namespace

TEST_CASE("a sheet goes from look to taste to what comes late, cup by cup, and to all cups together") {
  const auto steps = sheetSteps(flightOf(1), sheetSession);
  std::vector<SheetStepKind> kinds;
  for (const SheetStep& step : steps) kinds.push_back(step.kind);
  using enum SheetStepKind;
  CHECK(kinds == std::vector{cup, cup, cup, cup, swallow, cup, pause, cup, swallow, cup, pause, cup, swallow, cup, together});
  CHECK(steps[0].part == Part::look);
  CHECK(steps[4].seconds == lateAfterSeconds);
  CHECK(steps[6].seconds == 30);
  CHECK(steps[6].cup == 1);
  CHECK(steps.back().items == std::vector<Item>{{10}, {11}});
}

TEST_CASE("liking comes last among what is tasted, and a marked cup is not asked about") {
  const auto steps = sheetSteps(flightOf(2, true), sheetSession);
  for (const SheetStep& step : steps) {
    CHECK(step.cup != 0);
    if (step.kind == SheetStepKind::cup && step.part == Part::main) {
      REQUIRE(step.items.size() == 7);
      CHECK(step.items.back() == Item{1});
    }
  }
}

TEST_CASE("words come in another order at another place, in the same for all cups of one") {
  std::set<std::vector<Item>> orders;
  for (int place = 1; place <= 12; ++place) {
    std::set<std::vector<Item>> own;
    for (const SheetStep& step : sheetSteps(flightOf(place), sheetSession))
      if (step.kind == SheetStepKind::cup && step.part == Part::main) own.insert(step.items);
    REQUIRE(own.size() == 1);
    orders.insert(*own.begin());
  }
  CHECK(orders.size() > 6);
}

TEST_CASE("without late questions there is no wait, without a pause none, and every question is asked once of each cup") {
  Flight flight = flightOf(1);
  std::erase_if(flight.items, [](const SheetItem& item) { return item.part == Part::late; });
  flight.pauseSeconds = 0;
  std::multiset<std::pair<int, Item>> asked;
  for (const SheetStep& step : sheetSteps(flight, sheetSession)) {
    CHECK(step.kind != SheetStepKind::pause);
    CHECK(step.kind != SheetStepKind::swallow);
    for (Item item : step.items) asked.emplace(step.cup.value_or(-1), item);
  }
  CHECK(asked.size() == 3 * 8 + 2);
  for (const auto& each : asked) CHECK(asked.count(each) == 1);
}
