#include "stats/profile/components.h"
#include "stats/profile/profile.h"

#include "stats/profiles.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>

using namespace oddglass::stats;
using profiles::Drawn;
using simulated::Chance;
using simulated::Share;

namespace {

ProfileQuestion asked(std::optional<double> limit, ProfileAdjust adjust) {
  ProfileQuestion question;
  question.reference = 0;
  question.limit = limit;
  question.adjust = adjust;
  return question;
}

/// How often two one-sided paired t tests keep a limit when there is no difference: the mean and the spread are independent, so the chance of the mean is integrated
/// over the spread (Phillips 1990, J Pharmacokinet Biopharm 18:137).
double keeps(int tasters, double sdOfDifference, double limit) {
  const double n = tasters, t = quantile(complement(boost::math::students_t(n - 1.0), 0.05));
  const boost::math::chi_squared spread(n - 1.0);
  const boost::math::normal normal;
  const int steps = 20'000;
  double sum = 0.0;
  for (int i = 0; i < steps; ++i) {
    const double s = sdOfDifference * std::sqrt(quantile(spread, (i + 0.5) / steps) / (n - 1.0)), room = limit - t * s / std::sqrt(n);
    if (room > 0.0) sum += 1.0 - 2.0 * cdf(complement(normal, room * std::sqrt(n) / sdOfDifference));
  }
  return sum / steps;
}

/// Descriptors without an adjustment are draws of their own: 500 in one profile.
Share within(Chance& chance, const Drawn& plan, int sheets) {
  Share found;
  for (int draw = 0; draw < sheets; ++draw)
    for (const auto& each : profileOf(profiles::drawn(chance, plan), asked(1.0, ProfileAdjust::none))) found.add(each.differences[0].verdict == ProfileVerdict::within);
  return found;
}

// The project's own plan: six tasters seldom earn "within the limit", 2 % simulated. With its usual spreads (taster x sample 1, repeat 1 on nine points), one round, no true
// difference, a limit of one point and one descriptor it is 2.5 %; with four descriptors and Benjamini-Hochberg 0.3 %. Steady tasters (repeat 0) get 12 %.
void requireWithin(int sheets) {
  Chance chance(90);
  CHECK(std::abs(keeps(6, 2.0, 1.0) - 0.02) < 0.006);
  for (const auto& [tasters, rounds, repeat] : {std::tuple(6, 1, 1.0), std::tuple(6, 2, 1.0), std::tuple(6, 1, 0.0), std::tuple(12, 1, 1.0)}) {
    const double sd = std::sqrt(2.0 * (1.0 + repeat * repeat / rounds)), promised = keeps(tasters, sd, 1.0);
    const Share found = within(chance, {tasters, 2, 500, rounds, 0.0, 1.0, 1.0, repeat}, sheets);
    CAPTURE(tasters, rounds, repeat, found.value(), promised);
    CHECK(std::abs(found.value() - promised) < found.slack(promised));
  }
}

/// Where nothing differs: a false less or more in any descriptor, alpha exactly when descriptors are independent (Simes 1986, Biometrika 73:751); one other sample
/// by paired t, three by Dunnett together (one descriptor, any of the samples).
void requireFalseAlarms(int draws) {
  Chance chance(91);
  const auto isAny = [](const std::vector<DescriptorProfile>& profile) {
    return std::ranges::any_of(profile, [](const auto& each) {
      return std::ranges::any_of(each.differences, [](const auto& one) { return one.verdict == ProfileVerdict::less || one.verdict == ProfileVerdict::more; });
    });
  };
  for (const int tasters : {6, 10}) {
    Share paired, alone, several;
    for (int draw = 0; draw < draws; ++draw) {
      paired.add(isAny(profileOf(profiles::drawn(chance, {tasters, 2, 8}), asked({}, ProfileAdjust::benjaminiHochberg))));
      alone.add(isAny(profileOf(profiles::drawn(chance, {tasters, 2, 1, 2}), asked({}, ProfileAdjust::none))));
      several.add(isAny(profileOf(profiles::drawn(chance, {tasters, 4, 1}), asked({}, ProfileAdjust::none))));
    }
    CAPTURE(tasters, paired.value(), alone.value(), several.value());
    for (const Share& each : {paired, alone, several}) CHECK(std::abs(each.value() - 0.05) < each.slack(0.05));
  }
}

/// A true difference of exactly the limit is called within it at most alpha of the time.
void requireLimitSize(int sheets) {
  Chance chance(92);
  Share found;
  for (int draw = 0; draw < sheets; ++draw) {
    ProfileRows rows = profiles::drawn(chance, {12, 2, 500, 1, 0.0, 1.0, 0.3, 0.3});
    for (std::size_t i = 0; i < rows.scores.response.size(); ++i) rows.scores.response[i] += rows.scores.sample.of[i];
    for (const auto& each : profileOf(rows, asked(1.0, ProfileAdjust::none))) found.add(each.differences[0].verdict == ProfileVerdict::within);
  }
  CAPTURE(found.value());
  CHECK(std::abs(found.value() - 0.05) < found.slack(0.05));
}

/// The ellipse about a sample's place, the axes being taken as given: they come from the same answers, which is allowed half a point for.
void requireEllipses(int draws) {
  for (const int tasters : {6, 12}) {
    Chance chance(93u + static_cast<unsigned>(tasters));
    Share found;
    for (int draw = 0; draw < draws; ++draw) {
      const Drawn plan{tasters, 4, 6, 1, 1.0, 2.0, 0.7, 0.7};
      const ProfileComponents map = componentsOf(profileCells(profiles::drawn(chance, plan)));
      Eigen::MatrixXd truth(4, 6);
      for (int s = 0; s < 4; ++s)
        for (int d = 0; d < 6; ++d) truth(s, d) = (s * (d + 2)) % 7;
      truth.rowwise() -= truth.colwise().mean().eval();
      const SampleEllipse& each = map.ellipses[static_cast<std::size_t>(draw % 4)];
      const Eigen::Vector2d away = (truth.row(each.sample) * map.descriptors.leftCols(2)).transpose() - *each.center;
      const double turn = *each.angle * std::numbers::pi / 180.0;
      found.add(std::hypot((std::cos(turn) * away.x() + std::sin(turn) * away.y()) / (*each.semiAxes)(0), (std::cos(turn) * away.y() - std::sin(turn) * away.x()) / (*each.semiAxes)(1)) <= 1.0);
    }
    CAPTURE(tasters, found.value());
    CHECK(std::abs(found.value() - 0.95) < found.slack(0.95) + 0.005);
  }
}

}  // namespace

TEST_CASE("profile: six tasters seldom earn within the limit", "[repeated]") { requireWithin(4); }
TEST_CASE("profile: false less or more", "[repeated]") { requireFalseAlarms(300); }
TEST_CASE("profile: a difference as large as the limit", "[repeated]") { requireLimitSize(4); }
TEST_CASE("profile: ellipses cover their level", "[repeated]") { requireEllipses(1'000); }

TEST_CASE("profile: six tasters seldom earn within the limit, in full", "[.long]") { requireWithin(80); }
TEST_CASE("profile: false less or more, in full", "[.long]") { requireFalseAlarms(20'000); }
TEST_CASE("profile: a difference as large as the limit, in full", "[.long]") { requireLimitSize(80); }
TEST_CASE("profile: ellipses cover their level, in full", "[.long]") { requireEllipses(40'000); }
