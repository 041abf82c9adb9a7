#include "stats/power_curve.h"

#include "stats/binomial.h"
#include "stats/error.h"
#include "stats/power.h"
#include "stats/psychometric.h"

#include <catch2/catch.hpp>

#include <limits>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// The same numbers in a second way: each number of trials by itself, through the incomplete beta integral.
TEST_CASE("a power curve is the power of each number of trials") {
  for (const Method method : {Method::triangle, Method::duoTrio, Method::tetrad, Method::twoOutOfFive, Method::pair, Method::threeAfc})
    for (const double alpha : {0.2, 0.05, 0.03125, 0.001, 1e-9})
      for (const double pd : {0.02, 0.3, 1.0}) {
        const double pc = rightAnswersOfShare(method, pd);
        const auto curve = powerCurve(method, pc, alpha, 1200);
        REQUIRE(curve.size() == 1200);
        for (const PowerPoint& point : curve) {
          if (point.trials > 150 && point.trials % 37 != 0) continue;
          const Power alone = powerOf(method, point.trials, pc, alpha);
          INFO(static_cast<int>(method) << ' ' << alpha << ' ' << pd << ' ' << point.trials);
          REQUIRE(point.critical == alone.critical);
          CHECK_THAT(point.alphaActual, WithinRel(alone.alphaActual, 1e-10));
          CHECK_THAT(point.power, WithinAbs(alone.power, 1e-11));
        }
      }
}

TEST_CASE("a long power curve does not drift") {
  const double pc = 0.36;
  const auto curve = powerCurve(Method::triangle, pc, 0.05, 100'000);
  for (const int n : {999, 4'999, 20'011, 99'999, 100'000}) {
    const PowerPoint& point = curve[static_cast<std::size_t>(n) - 1];
    const Power alone = powerOf(Method::triangle, n, pc, 0.05);
    CHECK(point.critical == alone.critical);
    CHECK_THAT(point.power, WithinAbs(alone.power, 1e-11));
  }
}

TEST_CASE("impossible curves are refused by name") {
  CHECK_THROWS_AS(powerCurve(Method::preference, 0.7, 0.05, 10), BadInput);
  CHECK_THROWS_AS(powerCurve(Method::triangle, 1.0 / 3.0, 0.05, 10), BadInput);
  CHECK_THROWS_AS(powerCurve(Method::triangle, std::numeric_limits<double>::quiet_NaN(), 0.05, 10), BadInput);
  CHECK_THROWS_AS(powerCurve(Method::triangle, 0.5, 1.0, 10), BadInput);
  CHECK_THROWS_AS(powerCurve(Method::triangle, 0.5, 0.05, 0), BadInput);
  CHECK_THROWS_AS(powerCurve(Method::triangle, 0.5, 0.05, 100'001), BadInput);
}
