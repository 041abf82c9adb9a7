#include "blinding/draw.h"
#include "blinding/orders.h"
#include "blinding/seeds.h"
#include "domain/problem.h"
#include "stats/design/balance.h"
#include "stats/design/williams.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <map>
#include <set>

using namespace oddglass;
using namespace oddglass::blinding;

namespace {

std::vector<std::vector<int>> williams(int samples) {
  std::vector<std::vector<int>> orders;
  for (const auto& square : stats::williamsSquares(samples))
    for (auto order : square) {
      for (int& sample : order) ++sample;
      orders.push_back(order);
    }
  return orders;
}

Deal sheetDeal(int lots, bool doubles, int places, int rounds = 1) {
  Deal deal;
  deal.method = Method::sheet;
  deal.places = places;
  deal.rounds = rounds;
  deal.sheet.emplace();
  for (int lot = 1; lot <= lots; ++lot) deal.sheet->coded.push_back({lot});
  if (doubles) deal.sheet->mayDouble = deal.sheet->coded;
  deal.sheet->orders = williams(lots + (doubles ? 1 : 0));
  return deal;
}

std::vector<FlightOrder> dealt(const Deal& deal, std::uint8_t which) {
  Stream stream(seedOf(which), StreamName::orders);
  return dealOrders(deal, stream);
}

}  // namespace

// Williams 1949: each sample equally often in each position, and each just before each other one equally often.
TEST_CASE("whole blocks of a score sheet are balanced for position and for what came before") {
  for (int lots : {4, 5}) {
    const Deal deal = sheetDeal(lots, false, static_cast<int>(williams(lots).size()) * 2);
    for (std::uint8_t which = 0; which < 20; ++which) {
      stats::SampleOrders orders;
      for (const auto& flight : dealt(deal, which)) {
        orders.emplace_back();
        for (Slot lot : flight.lots) orders.back().push_back(lot.value - 1);
      }
      const auto balance = stats::balanceOf(orders, lots);
      for (int a = 0; a < lots; ++a)
        for (int b = 0; b < lots; ++b) {
          CHECK(balance.position[a][b] == balance.position[0][0]);
          CHECK(balance.carryover[a][b] == (a == b ? 0 : balance.carryover[0][1]));
        }
    }
  }
}

TEST_CASE("one lot stands twice in every flight where one is poured twice, the same for everybody, and each as often") {
  const Deal deal = sheetDeal(3, true, 7, 2);
  std::map<int, int> doubled;
  const int draws = 250;
  for (int which = 0; which < draws; ++which) {
    std::set<int> twice;
    for (const auto& flight : dealt(deal, static_cast<std::uint8_t>(which))) {
      REQUIRE(flight.lots.size() == 4);
      std::map<int, int> count;
      for (Slot lot : flight.lots) ++count[lot.value];
      REQUIRE(count.size() == 3);
      for (const auto& [lot, times] : count)
        if (times == 2) twice.insert(lot);
    }
    REQUIRE(twice.size() == 1);
    ++doubled[*twice.begin()];
  }
  // Three standard deviations of a binomial count.
  for (int lot = 1; lot <= 3; ++lot) CHECK(std::abs(doubled[lot] - draws / 3.0) < 3.0 * std::sqrt(draws * 2.0 / 9.0));
}

TEST_CASE("a lot that must not be doubled is not, and a marked cup comes first") {
  Deal deal = sheetDeal(3, true, 8);
  deal.sheet->mayDouble = {Slot{2}, Slot{3}};
  deal.marked = Slot{3};
  CHECK(deal.cupsPerFlight() == 5);
  for (int which = 0; which < 60; ++which)
    for (const auto& flight : dealt(deal, static_cast<std::uint8_t>(which))) {
      REQUIRE(flight.lots.size() == 5);
      CHECK(flight.lots.front() == Slot{3});
      CHECK(std::count(flight.lots.begin() + 1, flight.lots.end(), Slot{1}) == 1);
    }
}

TEST_CASE("which sample of a design is which lot is drawn too") {
  Deal deal = sheetDeal(4, false, 1);
  deal.sheet->orders = {{1, 2, 3, 4}};
  std::set<int> first;
  for (int which = 0; which < 60; ++which) first.insert(dealt(deal, static_cast<std::uint8_t>(which)).front().lots.front().value);
  CHECK(first == std::set<int>{1, 2, 3, 4});
}

TEST_CASE("the cups of a score sheet are drawn and drawn again the same") {
  const Shape shape{sheetDeal(3, true, 5, 2), 1};
  Streams streams = streamsFrom(seedOf(9));
  const Drawn drawn = draw(shape, streams);
  CHECK(drawn.cups.size() == 5 * 2 * 4 * 2);
  CHECK(reproduces(seedOf(9), shape, drawn));
  CHECK_FALSE(reproduces(seedOf(10), shape, drawn));
}

TEST_CASE("orders that hold no flight are refused by name") {
  const auto refused = [](auto&& change) {
    Deal deal = sheetDeal(3, false, 4);
    change(*deal.sheet);
    try {
      dealt(deal, 1);
    } catch (const Problem& problem) {
      return problem.argument();
    }
    return std::string("taken");
  };
  CHECK(refused([](SheetDeal& sheet) { sheet.orders.clear(); }) == "orders");
  CHECK(refused([](SheetDeal& sheet) { sheet.orders.push_back({1, 2}); }) == "orders");
  CHECK(refused([](SheetDeal& sheet) { sheet.orders.front().front() = 4; }) == "orders");
  CHECK(refused([](SheetDeal& sheet) { sheet.orders.front().front() = 0; }) == "orders");
  CHECK(refused([](SheetDeal& sheet) { sheet.coded.clear(); }) == "samples");
}
