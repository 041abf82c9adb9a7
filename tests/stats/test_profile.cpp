#include "stats/profile/profile.h"

#include "stats/cases.h"
#include "stats/error.h"
#include "stats/multiple/adjust.h"
#include "stats/profiles.h"

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using checks::Json;

namespace {

std::string nameOf(ProfileVerdict verdict) {
  switch (verdict) {
    case ProfileVerdict::within: return "within the limit";
    case ProfileVerdict::less: return "less";
    case ProfileVerdict::more: return "more";
    case ProfileVerdict::cannotTell: return "cannot tell yet";
  }
  return {};
}

ProfileQuestion against(int reference, std::optional<double> limit = {}) {
  ProfileQuestion question;
  question.reference = reference;
  question.limit = limit;
  return question;
}

/// Only a reason, and no verdict.
void requireNoAnswer(const ProfileDifference& found, Reason why) {
  CHECK_FALSE((found.pValue || found.pAdjusted || found.low || found.high || found.se || found.pLimit || found.pLimitAdjusted || found.limitLow || found.limitHigh));
  CHECK(found.verdict == ProfileVerdict::cannotTell);
  CHECK(found.why == why);
}

}  // namespace

// Sources beside each case in profile.json, equivalence_tost.json, anova.json and p_adjust.json.
TEST_CASE("profile: published verdicts") {
  const Json all = checks::family("profile");
  const Json& each = all.at(0);
  REQUIRE(each.at("id") == "profile_verdicts");
  const Json& wanted = each.at("expected").at("descriptors");
  std::vector<std::vector<double>> differences;
  for (const Json& one : wanted) differences.push_back(each.at("inputs").at("differences_from_reference_by_taster").at(one.at("descriptor").get<std::string>()).get<std::vector<double>>());
  const auto found = profileOf(profiles::ofDifferences(differences), against(0, each.at("inputs").at("limit").get<double>()));
  REQUIRE(found.size() == wanted.size());
  for (std::size_t d = 0; d < found.size(); ++d) {
    INFO(wanted[d].at("descriptor"));
    const ProfileDifference& one = found[d].differences.at(0);
    const auto check = [&](const std::optional<double>& value, const char* key) { CHECK_THAT(value.value(), WithinAbs(wanted[d].at(key).get<double>(), 1e-9)); };
    check(one.difference, "difference");
    check(one.low, "low");
    check(one.high, "high");
    check(one.pValue, "p_value");
    check(one.pAdjusted, "p_bh");
    check(one.pLimit, "p_limit");
    check(one.pLimitAdjusted, "p_limit_bh");
    CHECK(nameOf(one.verdict) == wanted[d].at("verdict"));
    checks::requireAllSeen(wanted[d], {"descriptor", "difference", "low", "high", "p_value", "p_bh", "p_limit", "p_limit_bh", "verdict"});
    CHECK(one.tasters == 6);
    // With one other sample the test of the samples is the same paired t test.
    CHECK_THAT(found[d].test.value().F, WithinRel(std::pow(*one.difference / *one.se, 2), 1e-9));
    CHECK_THAT(found[d].test->pValue, WithinRel(*one.pValue, 1e-9));
  }
}

TEST_CASE("profile: published paired tests, and the F tests of published tables") {
  for (const Json& each : checks::family("equivalence_tost")) {
    INFO(each.at("id"));
    const Json &in = each.at("inputs"), &out = each.at("expected");
    ProfileRows rows;
    for (std::size_t t = 0; t < in.at("batch").size(); ++t) {
      profiles::add(rows, 0, static_cast<int>(t), 0, in.at("batch")[t]);
      profiles::add(rows, 0, static_cast<int>(t), 1, in.at("reference")[t]);
    }
    const ProfileDifference one = profileOf(rows, against(1, in.at("margin").get<double>())).at(0).differences.at(0);
    CHECK_THAT(*one.difference, WithinAbs(out.at("mean_diff").get<double>(), 1e-9));
    CHECK_THAT(*one.pLimit, WithinAbs(out.at("p_tost").get<double>(), 1e-9));
    CHECK_THAT(*one.limitLow, WithinAbs(out.at("ci90")[0].get<double>(), 1e-9));
    CHECK_THAT(*one.limitHigh, WithinAbs(out.at("ci90")[1].get<double>(), 1e-9));
    CHECK_THAT(*one.difference / *one.se, WithinAbs(out.at("t_diff").get<double>(), 1e-9));
    CHECK_THAT(*one.pValue, WithinAbs(out.at("p_diff_two_sided").get<double>(), 1e-9));
    checks::requireAllSeen(out, {"mean_diff", "p_tost", "ci90", "t_diff", "p_diff_two_sided"});
  }
  // Every published table as a descriptor of its own: all tables have other samples and tasters.
  ProfileRows rows;
  const Json tables = checks::family("anova");
  for (std::size_t d = 0; d < tables.size(); ++d) {
    const Json& scores = tables[d].at("inputs").at("scores_product_x_assessor_x_rep");
    for (std::size_t s = 0; s < scores.size(); ++s)
      for (std::size_t t = 0; t < scores[s].size(); ++t)
        for (const Json& score : scores[s][t]) profiles::add(rows, static_cast<int>(d), static_cast<int>(t), static_cast<int>(s), score);
  }
  const auto found = profileOf(rows);
  REQUIRE(found.size() == tables.size());
  std::vector<double> p;
  for (std::size_t d = 0; d < tables.size(); ++d) {
    INFO(tables[d].at("id"));
    const Json& out = tables[d].at("expected");
    CHECK(found[d].fit == ScoreFit::classical);
    CHECK_THAT(found[d].test.value().F, WithinAbs(out.at("F_product").get<double>(), 1e-6));
    CHECK_THAT(found[d].test->pValue, WithinAbs(out.at("p_product").get<double>(), 1e-6));
    CHECK(found[d].test->df1 == out.at("df")[0]);
    CHECK(found[d].test->df2 == out.at("df")[2]);
    CHECK(found[d].differences.empty());
    p.push_back(found[d].test->pValue);
  }
  const auto holm = adjustHolm(p), bh = adjustBenjaminiHochberg(p);
  for (std::size_t d = 0; d < p.size(); ++d) {
    CHECK(found[d].pHolm == holm[d]);
    CHECK(found[d].pBenjaminiHochberg == bh[d]);
  }
}

TEST_CASE("profile: several samples against the reference are the Dunnett comparisons of the scores") {
  // A full table: the residual of taster + sample is the taster x sample mean square, so both ways end at one figure.
  simulated::Chance chance(5);
  for (const int rounds : {1, 3}) {
    const ProfileRows rows = profiles::drawn(chance, {7, 5, 3, rounds, 0.3});
    const auto found = profileOf(rows, against(2));
    const auto parts = byDescriptor(rows);
    for (std::size_t d = 0; d < parts.size(); ++d) {
      ScoreQuestion question;
      question.reference = 2;
      const SampleScores scores = scoresOf(parts[d], question);
      REQUIRE(scores.fit == ScoreFit::classical);
      for (std::size_t i = 0; i < 4; ++i) {
        const SampleDifference& theirs = scores.fromReference[i];
        const ProfileDifference& ours = found[d].differences[i];
        CHECK(ours.sample == theirs.a);
        CHECK_THAT(*ours.difference, WithinAbs(*theirs.difference, 1e-12));
        CHECK_THAT(*ours.se, WithinRel(*theirs.se, 1e-12));
        CHECK(ours.df == theirs.df);
        CHECK_THAT(*ours.pValue, WithinRel(*theirs.pValue, 1e-9));
        CHECK_THAT(*ours.low, WithinAbs(*theirs.low, 1e-9));
        CHECK_THAT(*ours.high, WithinAbs(*theirs.high, 1e-9));
      }
    }
  }
}

TEST_CASE("profile: the verdict looks at the limit first, and at nothing it was not given") {
  // Small and steady: a difference is shown, and it lies within the limit.
  const ProfileRows steady = profiles::ofDifferences({{0.3, 0.4, 0.2, 0.3, 0.4, 0.2}});
  const auto verdict = [&](const ProfileQuestion& question) { return profileOf(steady, question)[0].differences[0]; };
  CHECK(*verdict(against(0, 1.0)).pAdjusted < 0.05);
  CHECK(verdict(against(0, 1.0)).verdict == ProfileVerdict::within);
  CHECK(verdict(against(0, 0.35)).verdict == ProfileVerdict::more);
  CHECK(verdict(against(0)).verdict == ProfileVerdict::more);
  CHECK_FALSE(verdict(against(0)).pLimit);
  CHECK(verdict(against(1)).verdict == ProfileVerdict::less);
  // Verdict and interval are of one piece: the limit's interval lies inside just where its p is at most alpha.
  for (const double alpha : {0.01, 0.05, 0.2}) {
    ProfileQuestion question = against(0, 0.4);
    question.alpha = alpha;
    const ProfileDifference found = verdict(question);
    CHECK((*found.limitHigh < 0.4) == (*found.pLimit < alpha));
    CHECK((*found.low > 0.0) == (*found.pValue < alpha));
  }
}

TEST_CASE("profile: adjusted over the descriptors, for each sample by itself") {
  simulated::Chance chance(8);
  const ProfileRows rows = profiles::drawn(chance, {6, 3, 4, 1, 0.25});
  for (const ProfileAdjust by : {ProfileAdjust::benjaminiHochberg, ProfileAdjust::holm, ProfileAdjust::none}) {
    ProfileQuestion question = against(0, 2.0);
    question.adjust = by;
    const auto found = profileOf(rows, question);
    for (std::size_t other = 0; other < 2; ++other) {
      std::vector<double> p, q;
      for (const auto& each : found) p.push_back(*each.differences[other].pValue), q.push_back(*each.differences[other].pLimit);
      const auto wanted = [&](const std::vector<double>& values) { return by == ProfileAdjust::none ? values : by == ProfileAdjust::holm ? adjustHolm(values) : adjustBenjaminiHochberg(values); };
      for (std::size_t d = 0; d < found.size(); ++d) {
        CHECK(found[d].differences[other].pAdjusted == wanted(p)[d]);
        CHECK(found[d].differences[other].pLimitAdjusted == wanted(q)[d]);
      }
    }
  }
}

TEST_CASE("profile: no spread, too few tasters, an empty cell") {
  // Descriptor 0: all differences alike. 1: two tasters. 2: nobody scored both. 3: sound; it alone counts for the adjustment.
  ProfileRows rows = profiles::ofDifferences({{0, 0, 0, 0}, {1, 2}, {}, {1, 2, 1, 3}});
  profiles::add(rows, 2, 0, 0, 4), profiles::add(rows, 2, 1, 1, 6), profiles::add(rows, 2, 2, 1, 5);
  const auto found = profileOf(rows, against(0, 1.0));
  requireNoAnswer(found[0].differences[0], Reason::noSpread);
  CHECK(found[0].differences[0].difference == 0.0);
  CHECK_FALSE(found[0].test);
  CHECK(found[0].why == Reason::noSpread);
  requireNoAnswer(found[1].differences[0], Reason::fewTasters);
  CHECK(found[1].differences[0].difference == 1.5);
  CHECK(found[1].differences[0].tasters == 2);
  requireNoAnswer(found[2].differences[0], Reason::emptyCell);
  CHECK_FALSE(found[2].differences[0].difference);
  CHECK(found[3].differences[0].pAdjusted == found[3].differences[0].pValue);
  CHECK(found[3].differences[0].verdict == ProfileVerdict::more);
  // One taster, and one sample in one of the descriptors.
  ProfileRows one = profiles::ofDifferences({{1}});
  profiles::add(one, 1, 0, 1, 3.0);
  const auto alone = profileOf(one, against(0));
  CHECK(alone[0].why == Reason::oneTaster);
  requireNoAnswer(alone[0].differences[0], Reason::fewTasters);
  CHECK(alone[1].why == Reason::fewSamples);
  CHECK(alone[1].samples == 1);
}

TEST_CASE("profile: tasters who scored both are paired, and the holes are said") {
  // Taster 3 has no reference: the paired t test of the other three (R: t.test(c(1, 2, 1.5)), t = 5.196152, p = 0.03510).
  ProfileRows rows = profiles::ofDifferences({{1.0, 2.0, 1.5}});
  profiles::add(rows, 0, 3, 1, 9.0);
  const auto found = profileOf(rows, against(0));
  CHECK(found[0].fit == ScoreFit::mixed);
  CHECK(found[0].tasters == 4);
  const ProfileDifference& one = found[0].differences[0];
  CHECK(one.tasters == 3);
  CHECK(one.df == 2.0);
  CHECK_THAT(*one.difference, WithinAbs(1.5, 1e-12));
  CHECK_THAT(*one.difference / *one.se, WithinRel(std::sqrt(27.0), 1e-9));
  CHECK_THAT(*one.pValue, WithinAbs(0.03510, 1e-5));
}

TEST_CASE("profile: impossible input is refused by name") {
  const ProfileRows good = profiles::ofDifferences({{1, 2, 3}});
  const auto refused = [](const ProfileRows& rows, const ProfileQuestion& question, const char* argument) {
    try {
      profileOf(rows, question);
      FAIL("not refused: " << argument);
    } catch (const BadInput& bad) {
      CHECK(bad.argument() == argument);
    }
  };
  refused(good, against(2), "reference");
  refused(good, against(-1), "reference");
  for (double bad : {0.0, -1.0, static_cast<double>(NAN), static_cast<double>(INFINITY)}) refused(good, against(0, bad), "limit");
  for (double bad : {0.0, 0.5, static_cast<double>(NAN)}) {
    ProfileQuestion question = against(0, 1.0);
    question.alpha = bad;
    refused(good, question, "alpha");
  }
  ProfileQuestion level = against(0);
  level.level = 1.0;
  refused(good, level, "level");
  ProfileRows bad = good;
  bad.scores.response[0] = NAN;
  refused(bad, {}, "response");
  bad = good;
  bad.scores.response[0] = 1e101;
  refused(bad, {}, "response");
  bad = good;
  bad.descriptor.of[1] = 1;
  refused(bad, {}, "descriptor");
  bad.descriptor.of.pop_back();
  refused(bad, {}, "descriptor");
  bad = good;
  bad.descriptor.levels = 501;
  refused(bad, {}, "descriptor");
  bad = good;
  bad.scores.sample.levels = 201;
  refused(bad, {}, "sample");
  refused({}, {}, "response");
}
