#include "stats/cases.h"
#include "stats/direct_range.h"
#include "stats/error.h"
#include "stats/multiple/adjust.h"
#include "stats/multiple/dunnett.h"
#include "stats/multiple/studentized_range.h"

#include <boost/math/distributions/students_t.hpp>

#include <algorithm>
#include <limits>

using namespace oddglass::stats;
using checks::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

TEST_CASE("studentized range: tables and packages") {
  int looked = 0;
  for (const Json& each : checks::family("multiple_comparison")) {
    if (!each.at("inputs").contains("k")) continue;  // worked examples: with the scores
    INFO(each.at("id"));
    const int k = each.at("inputs").at("k");
    const double df = each.at("inputs").at("df");
    // The tolerance of the case is that of printed tables; R's qtukey stops after 1e-4 of its own, SciPy's six digits stand in `verified_by`.
    CHECK_THAT(studentizedRangeCritical(0.05, k, df).value(), WithinAbs(each.at("expected").at("q_05").get<double>(), 2e-5));
    CHECK_THAT(studentizedRangeCritical(0.01, k, df).value(), WithinAbs(each.at("expected").at("q_01").get<double>(), 2e-5));
    ++looked;
  }
  CHECK(looked == 7);
}

TEST_CASE("Dunnett: tables and packages") {
  int looked = 0;
  for (const Json& each : checks::family("multiple_comparison")) {
    if (!each.at("inputs").contains("treatments_vs_control")) continue;
    INFO(each.at("id"));
    DunnettPlan plan{equalLoads(each.at("inputs").at("treatments_vs_control")), each.at("inputs").at("df"), true};
    CHECK_THAT(dunnettCritical(0.05, plan).value(), WithinAbs(each.at("expected").at("d_two_sided_05").get<double>(), 1e-8));
    plan.isTwoSided = false;
    CHECK_THAT(dunnettCritical(0.05, plan).value(), WithinAbs(each.at("expected").at("d_one_sided_05").get<double>(), 1e-8));
    CHECK_THAT(dunnettCritical(0.05, plan).value(), WithinAbs(each.at("published").at("one_sided").get<double>(), 0.005001));
    ++looked;
  }
  CHECK(looked == 7);
}

TEST_CASE("studentized range: body and far tail against direct integration") {
  // R's ptukey gives 4.78e-6 here; the true value to five digits is from the project's own plan, by two integrations.
  CHECK_THAT(studentizedRangeAbove(25.0, 3, 6.0), WithinRel(5.2195e-6, 1e-5));
  for (int k : {2, 3, 12, 40})
    for (double df : {1.0, 6.0, 60.0})
      for (double q : {0.4, 3.7, 10.0, 60.0}) {
        const double theirs = direct::studentizedRangeAbove(q, k, df), ours = studentizedRangeAbove(q, k, df);
        if (theirs < 1e-200) continue;
        INFO(k << " groups, " << df << " df, q " << q);
        CHECK_THAT(ours, WithinAbs(theirs, 1e-8));
        CHECK_THAT(ours, WithinRel(theirs, 1e-6));
      }
}

TEST_CASE("Dunnett: body and far tail against direct integration, groups of one size and of others") {
  const std::vector<std::vector<double>> sizes{{4.0, 5.0}, {3.0, 20.0, 60.0, 6.0}};
  for (const auto& each : sizes) {
    const std::vector<double> b = loadsOf(6.0, each);
    for (bool both : {true, false})
      for (double df : {1.5, 12.0})
        for (double d : {0.5, 2.6, 15.0}) {
          const double theirs = direct::dunnettAbove(d, b, both, df), ours = dunnettAbove(d, {b, df, both});
          if (theirs < 1e-60) continue;
          INFO(each.size() << " treatments, " << df << " df, d " << d << (both ? ", both sides" : ", one side"));
          CHECK_THAT(ours, WithinAbs(theirs, 1e-8));
          CHECK_THAT(ours, WithinRel(theirs, 1e-6));
        }
  }
}

TEST_CASE("two groups and one treatment are Student's t") {
  for (double df : {1.0, 3.3, 12.0, 1e6}) {
    const boost::math::students_t t(df);
    for (double value : {0.3, 2.0, 9.0, 80.0}) {
      const double one = cdf(complement(t, value));
      INFO(df << " df, " << value);
      CHECK_THAT(dunnettAbove(value, {equalLoads(1), df, false}), WithinRel(one, 1e-9));
      CHECK_THAT(dunnettAbove(value, {equalLoads(1), df, true}), WithinRel(2.0 * one, 1e-9));
      CHECK_THAT(dunnettAbove(-value, {equalLoads(1), df, false}), WithinRel(1.0 - one, 1e-9));
      CHECK_THAT(studentizedRangeAbove(value * std::sqrt(2.0), 2, df), WithinRel(2.0 * one, 1e-9));
    }
  }
}

TEST_CASE("independent treatments and a known spread have closed forms") {
  // A control without error: the largest of k independent normal values. Known spread: df without end.
  const double endless = std::numeric_limits<double>::infinity();
  for (int k : {1, 4, 30})
    for (double d : {0.5, 2.0, 5.0}) {
      const std::vector<double> none(static_cast<std::size_t>(k), 0.0);
      CHECK_THAT(dunnettAbove(d, {none, endless, false}), WithinRel(-std::expm1(k * std::log1p(-direct::Phi(-d))), 1e-10));
      CHECK_THAT(dunnettAbove(d, {none, endless, true}), WithinRel(-std::expm1(k * std::log1p(-2.0 * direct::Phi(-d))), 1e-10));
    }
  // Two groups, known spread: the range is |x - y|, normal with variance 2.
  CHECK_THAT(studentizedRangeAbove(3.0, 2, endless), WithinRel(2.0 * direct::Phi(-3.0 / std::numbers::sqrt2), 1e-12));
}

TEST_CASE("a critical value leads back to its probability, and both sides add up") {
  for (double p : {1e-100, 1e-8, 0.01, 0.3, 0.7, 0.999, 1.0 - 1e-9})
    for (double df : {2.0, 33.0}) {
      INFO(p << " at " << df << " df");
      const double q = studentizedRangeCritical(p, 5, df).value();
      CHECK_THAT(studentizedRangeAbove(q, 5, df), WithinRel(p, 1e-9));
      CHECK_THAT(studentizedRangeAbove(q, 5, df) + studentizedRangeBelow(q, 5, df), WithinAbs(1.0, 1e-11));
      for (bool both : {true, false}) {
        const DunnettPlan plan{loadsOf(8.0, {3.0, 8.0, 12.0}), df, both};
        const double d = dunnettCritical(p, plan).value();
        CHECK_THAT(dunnettAbove(d, plan), WithinRel(p, 1e-9));
        CHECK_THAT(dunnettAbove(d, plan) + dunnettBelow(d, plan), WithinAbs(1.0, 1e-11));
      }
    }
  // So far out that no number reaches it.
  CHECK_FALSE(studentizedRangeCritical(1e-300, 3, 0.2).has_value());
  CHECK_FALSE(dunnettCritical(1e-300, {equalLoads(2), 0.2, true}).has_value());
}

TEST_CASE("p values adjusted for their number") {
  int looked = 0;
  for (const Json& each : checks::family("p_adjust")) {
    INFO(each.at("id"));
    const auto p = each.at("inputs").at("p").get<std::vector<double>>();
    // Bonferroni and Hochberg stand in the cases too; the program does not offer them.
    const auto holm = adjustHolm(p), bh = adjustBenjaminiHochberg(p);
    for (std::size_t i = 0; i < p.size(); ++i) {
      CHECK_THAT(holm[i], WithinAbs(each.at("expected").at("holm")[i].get<double>(), 1e-12));
      CHECK_THAT(bh[i], WithinAbs(each.at("expected").at("benjamini_hochberg")[i].get<double>(), 1e-12));
    }
    ++looked;
  }
  CHECK(looked == 2);
  CHECK(adjustHolm({}).empty());
  CHECK(adjustBenjaminiHochberg({0.2}) == std::vector<double>{0.2});
}

TEST_CASE("many comparisons: impossible input is refused by name") {
  const double nan = std::nan(""), inf = std::numeric_limits<double>::infinity();
  const auto named = [](const std::string& argument) { return Catch::Matchers::Predicate<BadInput>([=](const BadInput& bad) { return bad.argument() == argument; }, argument); };
  for (double bad : {-0.1, nan, inf}) CHECK_THROWS_MATCHES(studentizedRangeAbove(bad, 3, 6.0), BadInput, named("value"));
  for (int bad : {-1, 0, 1, 1001}) CHECK_THROWS_MATCHES(studentizedRangeBelow(1.0, bad, 6.0), BadInput, named("groups"));
  for (double bad : {-1.0, 0.0, 0.05, nan}) CHECK_THROWS_MATCHES(studentizedRangeCritical(0.05, 3, bad), BadInput, named("df"));
  for (double bad : {-1.0, 0.0, 1.0, nan}) CHECK_THROWS_MATCHES(studentizedRangeCritical(bad, 3, 6.0), BadInput, named("above"));
  CHECK_THROWS_MATCHES(dunnettAbove(-1.0, {equalLoads(2), 6.0, true}), BadInput, named("value"));
  CHECK_THROWS_MATCHES(dunnettAbove(nan, {equalLoads(2), 6.0, false}), BadInput, named("value"));
  CHECK_THROWS_MATCHES(dunnettAbove(1.0, {{}, 6.0, false}), BadInput, named("treatments"));
  CHECK_THROWS_MATCHES(dunnettAbove(1.0, {{0.5, 1.0}, 6.0, false}), BadInput, named("loads"));
  CHECK_THROWS_MATCHES(dunnettCritical(0.05, {{0.5}, nan, false}), BadInput, named("df"));
  CHECK_THROWS_MATCHES(equalLoads(0), BadInput, named("treatments"));
  CHECK_THROWS_MATCHES(loadsOf(0.0, {3.0}), BadInput, named("sizes"));
  for (double bad : {-1e-9, 1.1, nan}) {
    CHECK_THROWS_MATCHES(adjustHolm({0.5, bad}), BadInput, named("p"));
    CHECK_THROWS_MATCHES(adjustBenjaminiHochberg({bad}), BadInput, named("p"));
  }
}

TEST_CASE("many comparisons: every answer is a probability, whatever is asked") {
  std::vector<double> dfs{0.1, 1.0, 7.7, 1e9, 1e11}, values{0.0, 1e-30, 1.0, 70.0, 1e200};
  for (double df : dfs)
    for (double value : values) {
      for (int k : {2, 7, 1000}) {
        const double above = studentizedRangeAbove(value, k, df);
        CHECK((above >= 0.0 && above <= 1.0));
      }
      for (double load : {0.0, 0.7, 0.99})
        for (double sign : {1.0, -1.0}) {
          const double above = dunnettAbove(sign * value, {{load, 0.2, load}, df, false});
          CHECK((above >= 0.0 && above <= 1.0));
        }
    }
  // So far out that no number reaches it.
  CHECK_FALSE(studentizedRangeCritical(1e-300, 3, 0.2).has_value());
  CHECK_FALSE(dunnettCritical(1e-300, {equalLoads(2), 0.2, true}).has_value());
}

TEST_CASE("Holm's steps and Holm's adjusted values say the same") {
  // Holm 1979, Scand J Statist 6:65: the smallest of k against alpha / k, and so on.
  CHECK(holmRisks(0.05, 1) == std::vector{0.05});
  CHECK(holmRisks(0.06, 3) == std::vector{0.06 / 3, 0.06 / 2, 0.06});
  for (const std::vector<double>& p : {std::vector{0.016, 0.024, 0.049}, std::vector{0.016, 0.026, 0.001}, std::vector{0.017, 0.001, 0.049}, std::vector{0.2, 0.001, 0.03}}) {
    const std::vector<double> adjusted = adjustHolm(p), risks = holmRisks(0.05, 3);
    std::vector<double> rising = p;
    std::ranges::sort(rising);
    bool reached = true;
    for (std::size_t step = 0; step < 3; ++step) {
      reached = reached && rising[step] <= risks[step];
      const auto at = std::ranges::find(p, rising[step]) - p.begin();
      CHECK((adjusted[static_cast<std::size_t>(at)] <= 0.05) == reached);
    }
  }
  CHECK_THROWS_AS(holmRisks(0.05, 0), BadInput);
  CHECK_THROWS_AS(holmRisks(1.0, 3), BadInput);
}
