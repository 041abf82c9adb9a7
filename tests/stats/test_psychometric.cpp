#include "stats/psychometric.h"

#include "stats/cases.h"
#include "stats/error.h"
#include "stats/named.h"

#include <cmath>
#include <limits>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {
constexpr Method withRightAnswer[] = {Method::triangle, Method::duoTrio, Method::tetrad, Method::pair, Method::threeAfc, Method::twoOutOfFive};
}

// Sources beside each case in thurstone_pc.json.
TEST_CASE("probability of a right answer for a true d'") {
  for (const auto& c : checks::family("thurstone_pc")) {
    INFO(c["id"]);
    const Method method = methodOfCase(c["inputs"]["method"]);
    const auto& d = c["inputs"]["d_prime"];
    const auto& pc = c["expected"]["pc"];
    const double tolerance = c["tolerance"]["abs"];
    if (d.is_array()) {
      REQUIRE(d.size() == pc.size());
      for (std::size_t k = 0; k < d.size(); ++k)
        CHECK_THAT(rightAnswers(method, d[k]), WithinAbs(pc[k].get<double>(), tolerance));
    } else {
      CHECK_THAT(rightAnswers(method, d), WithinAbs(pc.get<double>(), tolerance));
    }
    checks::requireAllSeen(c["expected"], {"pc"});
  }
}

TEST_CASE("at d' 0 an answer is a guess, and pc grows to 1") {
  for (const Method method : withRightAnswer) {
    CHECK_THAT(rightAnswers(method, 0.0), WithinAbs(guessing(method), 1e-9));
    double before = rightAnswers(method, 0.0);
    for (double d = 0.1; d <= 12.0; d += 0.1) {
      const double here = rightAnswers(method, d);
      CHECK(here >= before);
      before = here;
    }
    CHECK_THAT(rightAnswers(method, 60.0), WithinAbs(1.0, 1e-9));
  }
}

TEST_CASE("the slope is the derivative: its integral gives pc back") {
  // Simpson's rule on the closed-form slope is a way to pc that shares nothing with the formulas of pc.
  for (const Method method : withRightAnswer)
    for (const double d : {0.5, 1.0, 2.5}) {
      constexpr int halves = 40;
      const double step = d / (2 * halves);
      double sum = rightAnswersSlope(method, 0.0) + rightAnswersSlope(method, d);
      for (int k = 1; k < 2 * halves; ++k) sum += (k % 2 == 1 ? 4.0 : 2.0) * rightAnswersSlope(method, k * step);
      CHECK_THAT(guessing(method) + sum * step / 3.0, WithinAbs(rightAnswers(method, d), 1e-8));
    }
}

TEST_CASE("d' of pc is the way back") {
  for (const Method method : withRightAnswer) {
    for (double d = 0.3; d < 5.0; d += 0.47) CHECK_THAT(*dPrimeOf(method, rightAnswers(method, d)), WithinAbs(d, 1e-6));
    for (double pc = guessing(method) + 0.001; pc < 0.9995; pc += 0.05)
      CHECK_THAT(rightAnswers(method, *dPrimeOf(method, pc)), WithinAbs(pc, 1e-11));
    CHECK(dPrimeOf(method, guessing(method)) == 0.0);
    CHECK(dPrimeOf(method, 0.0) == 0.0);
    CHECK_FALSE(dPrimeOf(method, 1.0).has_value());
  }
}

TEST_CASE("the share who tell and pc are two ways to say one thing") {
  CHECK_THAT(rightAnswersOfShare(Method::triangle, 0.3), WithinRel(1.6 / 3.0, 1e-15));  // 1/3 + 2/3 x 3/10
  for (const Method method : withRightAnswer)
    for (double pd = 0.0; pd <= 1.0; pd += 0.125) CHECK_THAT(shareOf(method, rightAnswersOfShare(method, pd)), WithinAbs(pd, 1e-15));
  CHECK(shareOf(Method::triangle, 0.2) == 0.0);
}

TEST_CASE("what no panel could have is refused") {
  CHECK_THROWS_AS(rightAnswers(Method::triangle, -0.1), BadInput);
  CHECK_THROWS_AS(rightAnswers(Method::triangle, std::numeric_limits<double>::infinity()), BadInput);
  CHECK_THROWS_AS(rightAnswers(Method::preference, 1.0), BadInput);
  CHECK_THROWS_AS(dPrimeOf(Method::tetrad, 1.01), BadInput);
  CHECK_THROWS_AS(rightAnswersOfShare(Method::pair, -0.2), BadInput);
}
