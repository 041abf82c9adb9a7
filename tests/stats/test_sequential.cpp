#include "stats/sequential/sprt.h"

#include "stats/cases.h"
#include "stats/error.h"
#include "stats/named.h"
#include "stats/psychometric.h"

#include <cmath>
#include <limits>
#include <random>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

std::vector<bool> answersOf(const std::string& digits, int times = 1) {
  std::vector<bool> answers;
  for (int i = 0; i < times; ++i)
    for (const char digit : digits) answers.push_back(digit == '1');
  return answers;
}

/// ["reject_H0", 11, 8]
void requireDecision(const SequentialDecision& found, const checks::Json& wanted) {
  CHECK((found.verdict == SequentialVerdict::difference) == (wanted[0] == "reject_H0"));
  CHECK((found.verdict == SequentialVerdict::none) == (wanted[0] == "accept_H0"));
  CHECK(found.after == wanted[1].get<int>());
  CHECK(found.right == wanted[2].get<int>());
}

/// By Wald's own rule: the log of the likelihood ratio, added up answer by answer.
SequentialVerdict byRatio(const SequentialPlan& plan, const std::vector<bool>& answers, int& after) {
  double ratio = 0.0;
  after = 0;
  for (const bool answer : answers) {
    ++after;
    ratio += answer ? std::log(plan.p1 / plan.p0) : std::log((1 - plan.p1) / (1 - plan.p0));
    if (ratio >= std::log((1 - plan.beta) / plan.alpha) - 1e-12) return SequentialVerdict::difference;
    if (ratio <= std::log(plan.beta / (1 - plan.alpha)) + 1e-12) return SequentialVerdict::none;
  }
  return SequentialVerdict::goOn;
}

}  // namespace

// Sources beside each case in sequential.json.
TEST_CASE("sequential cases") {
  int looked = 0;
  for (const auto& c : checks::family("sequential")) {
    INFO(c["id"]);
    const auto &in = c["inputs"], &out = c["expected"];
    const double within = c["tolerance"]["abs"];
    ++looked;
    if (in.contains("method")) {
      const Method method = in["method"] == "pair" ? Method::pair : methodOfCase(in["method"]);
      const SequentialLines lines = linesOf({guessing(method), rightAnswersOfShare(method, in["pd"]), in["alpha"], in["beta"]});
      CHECK_THAT(lines.slope, WithinAbs(out["slope"].get<double>(), within));
      CHECK_THAT(lines.acceptIntercept, WithinAbs(out["accept_intercept"].get<double>(), within));
      CHECK_THAT(lines.rejectIntercept, WithinAbs(out["reject_intercept"].get<double>(), within));
      std::vector<bool> answers;
      for (const auto& each : in["answers"]) answers.push_back(each == 1);
      const SequentialDecision decision = decide(lines, answers, {});
      CHECK(decision.verdict == SequentialVerdict::difference);
      CHECK(out["decision"] == "difference");
      CHECK(decision.after == out["after"].get<int>());
      checks::requireAllSeen(out, {"slope", "accept_intercept", "reject_intercept", "decision", "after"});
      continue;
    }
    const SequentialPlan plan{in["p0"], in["p1"], in["alpha"], in["beta"]};
    const SequentialLines lines = linesOf(plan);
    if (in.contains("true_p")) {
      const auto outcome = outcomeOf(lines, in["true_p"], {1, in["truncate_at"].get<int>()});
      REQUIRE(outcome.has_value());
      CHECK_THAT(outcome->difference, WithinAbs(out["P_reject"].get<double>(), within));
      CHECK_THAT(outcome->none, WithinAbs(out["P_accept"].get<double>(), within));
      CHECK_THAT(outcome->undecided, WithinAbs(out["P_undecided"].get<double>(), within));
      CHECK_THAT(outcome->expectedTrials, WithinAbs(out["mean_n_with_truncation"].get<double>(), within));
      checks::requireAllSeen(out, {"P_reject", "P_accept", "P_undecided", "mean_n_with_truncation"});
      continue;
    }
    CHECK_THAT(lines.slope, WithinAbs(out["slope"].get<double>(), within));
    CHECK_THAT(lines.acceptIntercept, WithinAbs(-out["h0"].get<double>(), within));
    CHECK_THAT(lines.rejectIntercept, WithinAbs(out["h1"].get<double>(), within));
    requireDecision(decide(lines, std::vector<bool>(100, true), {}), out["all_correct"]);
    requireDecision(decide(lines, std::vector<bool>(100, false), {}), out["none_correct"]);
    requireDecision(decide(lines, answersOf("10110111011011110111", 2), {}), out["pattern_10110111011011110111x2"]);
    const WaldExpected expected = waldExpected(plan);
    CHECK_THAT(expected.none, WithinAbs(out["ASN_p0"].get<double>(), within));
    CHECK_THAT(expected.p1, WithinAbs(out["ASN_p1"].get<double>(), within));
    checks::requireAllSeen(out, {"slope", "h0", "h1", "all_correct", "none_correct", "pattern_10110111011011110111x2", "ASN_p0", "ASN_p1"});
  }
  CHECK(looked == 9);
}

TEST_CASE("the lines decide as the likelihood ratio does") {
  std::mt19937_64 chance(3);
  for (const SequentialPlan& plan : {SequentialPlan{1.0 / 3, 2.0 / 3, 0.05, 0.05}, SequentialPlan{0.5, 0.75, 0.1, 0.2}, SequentialPlan{0.1, 0.4, 0.05, 0.1}})
    for (int i = 0; i < 500; ++i) {
      std::vector<bool> answers;
      for (int k = 0; k < 60; ++k) answers.push_back(chance() % 100 < 50);
      int after = 0;
      const SequentialVerdict verdict = byRatio(plan, answers, after);
      const SequentialDecision found = decide(linesOf(plan), answers, {});
      CHECK(found.verdict == verdict);
      CHECK(found.after == after);
    }
}

TEST_CASE("how a plan ends, by every row of answers there can be") {
  const SequentialLines lines = linesOf({1.0 / 3, 0.7, 0.1, 0.2});
  const int last = 14;
  for (const int every : {1, 3, 5})
    for (const double p : {0.0, 1.0 / 3, 0.6, 1.0}) {
      SequentialOutcome sum{0, 0, 0, 0};
      for (unsigned mask = 0; mask < 1u << last; ++mask) {
        std::vector<bool> answers;
        double chance = 1.0;
        for (int i = 0; i < last; ++i) {
          answers.push_back(mask >> i & 1u);
          chance *= answers.back() ? p : 1.0 - p;
        }
        if (chance == 0.0) continue;
        const SequentialDecision found = decide(lines, answers, {every, last});
        CHECK(found.verdict != SequentialVerdict::goOn);
        (found.verdict == SequentialVerdict::difference ? sum.difference : found.verdict == SequentialVerdict::none ? sum.none : sum.undecided) += chance;
        sum.expectedTrials += chance * found.after;
      }
      const auto outcome = outcomeOf(lines, p, {every, last});
      REQUIRE(outcome.has_value());
      INFO(every << ' ' << p);
      CHECK_THAT(outcome->difference, WithinAbs(sum.difference, 1e-12));
      CHECK_THAT(outcome->none, WithinAbs(sum.none, 1e-12));
      CHECK_THAT(outcome->undecided, WithinAbs(sum.undecided, 1e-12));
      CHECK_THAT(outcome->expectedTrials, WithinAbs(sum.expectedTrials, 1e-10));
    }
}

// Wald 1947: without truncation the true risks together are at most alpha + beta together (his inequality), and the plan ends.
TEST_CASE("a plan without a last trial ends, within Wald's bounds") {
  for (const Method method : {Method::triangle, Method::duoTrio, Method::tetrad, Method::twoOutOfFive, Method::pair, Method::threeAfc})
    for (const double pd : {0.2, 0.5, 0.9}) {
      const SequentialPlan plan{guessing(method), rightAnswersOfShare(method, pd), 0.05, 0.1};
      const SequentialLines lines = linesOf(plan);
      const auto none = outcomeOf(lines, plan.p0, {}), some = outcomeOf(lines, plan.p1, {});
      REQUIRE(none.has_value());
      REQUIRE(some.has_value());
      CHECK(none->undecided < 1e-12);
      CHECK_THAT(none->difference + none->none, WithinAbs(1.0, 1e-9));
      CHECK(none->difference <= plan.alpha / (1 - plan.beta));
      CHECK(some->none <= plan.beta / (1 - plan.alpha));
      CHECK(none->difference + some->none <= plan.alpha + plan.beta);
      // The count goes over the lines rather than stopping on them, so the plan takes a little longer than Wald says.
      CHECK(none->expectedTrials >= waldExpected(plan).none * 0.9);
    }
}

TEST_CASE("answers after the decision are not looked at; none yet goes on") {
  const SequentialLines lines = linesOf({1.0 / 3, 2.0 / 3, 0.05, 0.05});
  CHECK(decide(lines, {}, {}).verdict == SequentialVerdict::goOn);
  CHECK(decide(lines, {}, {}).after == 0);
  CHECK(decide(lines, answersOf("111110000000"), {}).after == 5);
  CHECK(decide(lines, answersOf("1111100000"), {6, std::nullopt}).verdict == SequentialVerdict::goOn);
  CHECK(decide(lines, answersOf("10"), {1, 2}).verdict == SequentialVerdict::undecided);
}

TEST_CASE("impossible plans are refused by name, endless ones are left empty") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  for (const SequentialPlan& plan : {SequentialPlan{0.5, 0.5, 0.05, 0.05}, SequentialPlan{0.5, 0.4, 0.05, 0.05}, SequentialPlan{0.5, 1.0, 0.05, 0.05}, SequentialPlan{0.0, 0.5, 0.05, 0.05},
                                     SequentialPlan{0.5, 0.7, 0.0, 0.05}, SequentialPlan{0.5, 0.7, 0.05, 1.0}, SequentialPlan{0.5, 0.7, 0.6, 0.4}, SequentialPlan{nan, 0.7, 0.05, 0.05},
                                     SequentialPlan{0.5, nan, 0.05, 0.05}, SequentialPlan{0.5, 0.7, nan, 0.05}, SequentialPlan{0.5, std::nextafter(0.5, 1.0), 0.05, 0.05}})
    CHECK_THROWS_AS(linesOf(plan), BadInput);
  const SequentialLines lines = linesOf({0.5, 0.7, 0.05, 0.05});
  CHECK_THROWS_AS(outcomeOf(lines, 1.5, {}), BadInput);
  CHECK_THROWS_AS(outcomeOf(lines, 0.5, {0, std::nullopt}), BadInput);
  CHECK_THROWS_AS(outcomeOf(lines, 0.5, {1, 0}), BadInput);
  CHECK_THROWS_AS(decide(lines, {true}, {0, std::nullopt}), BadInput);
  CHECK_FALSE(outcomeOf(linesOf({0.5, 0.50001, 0.05, 0.05}), 0.5, {}).has_value());
  CHECK_FALSE(outcomeOf(lines, 0.5, {1, 1'000'000}).has_value());
}
