#include "cellar.h"
#include "planning/aging.h"

#include <algorithm>
#include <cmath>

using namespace oddglass;
using namespace oddglass::planning;
using Catch::Matchers::WithinAbs;

namespace {

AgingSetup sixAges(int bottles, ControlKind control = ControlKind::twin) {
  AgingSetup setup;
  setup.ages = usualAges();
  setup.control = control;
  setup.bottles = bottles;
  setup.people = 6;
  return setup;
}

bool warns(const AgingOutlook& outlook, AgingWarning warning) { return std::ranges::find(outlook.warnings, warning) != outlook.warnings.end(); }

}  // namespace

TEST_CASE("bottles of a series are counted, and a cheaper plan keeps the twin") {
  const AgingOutlook outlook = agingOutlook(sixAges(12));
  CHECK(outlook.batchBottles == 8);    // six sittings of one, and two in reserve
  CHECK(outlook.controlBottles == 6);
  CHECK(outlook.needed == 14);
  CHECK(warns(outlook, AgingWarning::tooFewBottles));
  REQUIRE(outlook.cheaper);
  CHECK(outlook.cheaper->control == ControlKind::twin);
  CHECK(outlook.cheaper->ages.front() == 14);
  CHECK(outlook.cheaper->ages.back() == 365);
  CHECK(agingOutlook(*outlook.cheaper).needed <= 12);
  CHECK_FALSE(agingOutlook(*outlook.cheaper).cheaper);

  const AgingOutlook enough = agingOutlook(sixAges(14));
  CHECK_FALSE(warns(enough, AgingWarning::tooFewBottles));
  CHECK_FALSE(enough.cheaper);
  CHECK_FALSE(agingOutlook(sixAges(6)).cheaper);   // not even three ages, twice one bottle and one in reserve
}

TEST_CASE("every cheaper plan that is offered fits, and keeps the first and the last age") {
  for (int bottles = 0; bottles < 60; ++bottles)
    for (int each = 1; each <= 3; ++each)
      for (const ControlKind control : {ControlKind::none, ControlKind::twin, ControlKind::reference}) {
        AgingSetup setup = sixAges(bottles, control);
        setup.bottlesEach = each;
        const AgingOutlook outlook = agingOutlook(setup);
        CHECK(warns(outlook, AgingWarning::tooFewBottles) == (outlook.needed > bottles));
        if (!outlook.cheaper) continue;
        CHECK(agingOutlook(*outlook.cheaper).needed <= bottles);
        CHECK(outlook.cheaper->control == control);
        CHECK(outlook.cheaper->ages.size() >= 3);
        CHECK(outlook.cheaper->ages.front() == setup.ages.front());
        CHECK(outlook.cheaper->ages.back() == setup.ages.back());
        CHECK(std::ranges::is_sorted(outlook.cheaper->ages));
        CHECK(std::ranges::adjacent_find(outlook.cheaper->ages) == outlook.cheaper->ages.end());
      }
}

TEST_CASE("a series says what it cannot tell") {
  CHECK(warns(agingOutlook(sixAges(20, ControlKind::none)), AgingWarning::noControl));
  CHECK_FALSE(warns(agingOutlook(sixAges(20)), AgingWarning::noControl));
  CHECK(warns(agingOutlook(sixAges(20, ControlKind::reference)), AgingWarning::referenceAges));
  AgingSetup two = sixAges(20);
  two.ages = {14, 365};
  CHECK(warns(agingOutlook(two), AgingWarning::dotsOnly));
  CHECK_FALSE(warns(agingOutlook(two), AgingWarning::noPeak));
  two.ages = {14, 91, 365};
  CHECK(warns(agingOutlook(two), AgingWarning::noPeak));
  CHECK_FALSE(warns(agingOutlook(sixAges(20)), AgingWarning::noPeak));
  two.people = 2;
  CHECK(warns(agingOutlook(two), AgingWarning::fewPeople));
  CHECK_FALSE(agingOutlook(two).smallestChange);
}

// R 4.2.2, the root of power.t.test(n, sd = 1, delta, type = "paired", strict = TRUE) at a power of 0.8, to 1e-12: 1.1560346779945 with eight people,
// 0.88865426529322 with twelve, in spreads of people's own differences. The change between two sittings of batch minus control holds four cups of a variance of 1 + 1 each: a spread of the square root of 8.
TEST_CASE("the smallest change that would show") {
  AgingSetup setup = sixAges(20);
  setup.people = 8;
  CHECK_THAT(agingOutlook(setup).smallestChange.value(), WithinAbs(1.1560346779945 * std::sqrt(8.0), 1e-6));
  setup.people = 12;
  CHECK_THAT(agingOutlook(setup).smallestChange.value(), WithinAbs(0.88865426529322 * std::sqrt(8.0), 1e-6));
}

TEST_CASE("an impossible series is refused by name") {
  const auto refused = [](auto change) {
    AgingSetup setup = sixAges(20);
    change(setup);
    return testing::problemOf([&] { agingOutlook(setup); }).argument();
  };
  CHECK(refused([](AgingSetup& setup) { setup.ages.clear(); }) == "ages");
  CHECK(refused([](AgingSetup& setup) { setup.ages = {30, 30}; }) == "ages");
  CHECK(refused([](AgingSetup& setup) { setup.ages = {-1, 30}; }) == "ages");
  CHECK(refused([](AgingSetup& setup) { setup.bottlesEach = 0; }) == "bottles_each");
  CHECK(refused([](AgingSetup& setup) { setup.reserve = -1; }) == "reserve");
}
