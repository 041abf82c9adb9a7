#include "stats/alike/paired_alike.h"

#include "stats/cases.h"
#include "stats/error.h"
#include "stats/rows.h"

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;

// Sources beside each case in equivalence_tost.json and people_and_time.json.
TEST_CASE("alike within a limit: published cases") {
  for (const auto& c : checks::family("equivalence_tost")) {
    INFO(c["id"]);
    std::vector<double> differences;
    for (std::size_t i = 0; i < c["inputs"]["batch"].size(); ++i) differences.push_back(c["inputs"]["batch"][i].get<double>() - c["inputs"]["reference"][i].get<double>());
    const Alike found = pairedAlike(differences, c["inputs"]["margin"], 0.05);
    const auto& out = c["expected"];
    CHECK_THAT(found.difference.value(), WithinAbs(out["mean_diff"].get<double>(), 1e-9));
    CHECK_THAT(found.pValue.value(), WithinAbs(out["p_tost"].get<double>(), 1e-9));
    CHECK_THAT(found.low.value(), WithinAbs(out["ci90"][0].get<double>(), 1e-9));
    CHECK_THAT(found.high.value(), WithinAbs(out["ci90"][1].get<double>(), 1e-9));
    checks::requireAllSeen(out, {"mean_diff", "p_tost", "ci90", "t_diff", "p_diff_two_sided"});  // the test of a difference is another question
  }
  int looked = 0;
  for (const auto& c : checks::family("people_and_time")) {
    if (!c["id"].get<std::string>().starts_with("alike_")) continue;
    INFO(c["id"]);
    const Alike found = pairedAlike(c["inputs"]["differences_by_taster"].get<std::vector<double>>(), c["inputs"]["limit"], c["inputs"]["alpha"]);
    const auto& out = c["expected"];
    CHECK_THAT(found.difference.value(), WithinAbs(out["difference"].get<double>(), 1e-9));
    CHECK_THAT(found.pValue.value(), WithinAbs(out["p_value"].get<double>(), 1e-9));
    CHECK(found.low.has_value() == !out["low"].is_null());
    CHECK(found.high.has_value() == !out["high"].is_null());
    if (found.low) CHECK_THAT(*found.low, WithinAbs(out["low"].get<double>(), 1e-9));
    if (found.high) CHECK_THAT(*found.high, WithinAbs(out["high"].get<double>(), 1e-9));
    CHECK(found.isAlike == (out["verdict"] == "alike"));
    checks::requireAllSeen(out, {"difference", "low", "high", "p_value", "verdict"});
    ++looked;
  }
  CHECK(looked == 2);
}

TEST_CASE("without spread the p is by signs") {
  // 2^-n where the mean lies inside the limit, 1 where it does not: enumeration of all signs.
  CHECK_THAT(pairedAlike({0.5, 0.5, 0.5, 0.5, 0.5}, 1.0, 0.05).pValue.value(), WithinAbs(1.0 / 32.0, 1e-15));
  CHECK(pairedAlike({0.5, 0.5, 0.5, 0.5, 0.5}, 1.0, 0.05).isAlike);
  CHECK(pairedAlike({1.0, 1.0, 1.0, 1.0, 1.0}, 1.0, 0.05).pValue == 1.0);
  CHECK(pairedAlike({2.0, 2.0, 2.0}, 1.0, 0.05).pValue == 1.0);
  const Alike rounding = pairedAlike({0.1 + 0.2 - 0.3, 0.0, 0.0, 0.0}, 1.0, 0.05);
  CHECK(rounding.why == Reason::noSpread);
  CHECK(rounding.pValue == 0.0625);
  CHECK_FALSE(rounding.low);
}

TEST_CASE("alike: too few tasters") {
  const Alike one = pairedAlike({0.1}, 1.0, 0.05);
  CHECK(one.difference == 0.1);
  CHECK_FALSE((one.pValue || one.low || one.high));
  CHECK_FALSE(one.isAlike);
  CHECK(one.why == Reason::oneTaster);
  CHECK(pairedAlike({}, 1.0, 0.05).why == Reason::fewTasters);
}

TEST_CASE("differences are paired by taster, rounds averaged first") {
  ScoreRows answers;
  rows::add(answers, 0, 0, 4.0), rows::add(answers, 0, 0, 6.0), rows::add(answers, 0, 1, 3.0);
  rows::add(answers, 1, 0, 7.0), rows::add(answers, 2, 1, 2.0), rows::add(answers, 3, 0, 1.0), rows::add(answers, 3, 1, 2.0);
  rows::add(answers, 3, 2, 9.0);
  CHECK(differencesByTaster(answers, 0, 1) == std::vector{2.0, -1.0});
  CHECK(differencesByTaster(answers, 1, 0) == std::vector{-2.0, 1.0});
}

TEST_CASE("alike: impossible input is refused by name") {
  const auto refused = [](const std::vector<double>& differences, double limit, double alpha, const char* argument) {
    try {
      pairedAlike(differences, limit, alpha);
      FAIL("not refused");
    } catch (const BadInput& bad) {
      CHECK(bad.argument() == argument);
    }
  };
  refused({1, 2}, 0.0, 0.05, "limit");
  refused({1, 2}, NAN, 0.05, "limit");
  refused({1, 2}, INFINITY, 0.05, "limit");
  refused({1, 2}, 1.0, 0.5, "alpha");
  refused({1, NAN}, 1.0, 0.05, "differences");
  CHECK_THROWS_AS(differencesByTaster(rows::ofTasters({{1, 2}, {2, 3}}), 0, 0), BadInput);
  CHECK_THROWS_AS(differencesByTaster(rows::ofTasters({{1, 2}, {2, 3}}), 5, 0), BadInput);
}
