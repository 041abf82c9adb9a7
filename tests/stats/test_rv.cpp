#include "stats/profile/rv.h"

#include "stats/profile/rearranged.h"
#include "stats/profiles.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// The definition, with traces of matrix products.
double rvByDefinition(Eigen::MatrixXd x, Eigen::MatrixXd y) {
  x = (x.rowwise() - x.colwise().mean()).eval();
  y = (y.rowwise() - y.colwise().mean()).eval();
  const Eigen::MatrixXd w = x * x.transpose(), v = y * y.transpose();
  return (w * v).trace() / std::sqrt((w * w).trace() * (v * v).trace());
}

struct CountedRv {
  double rv, mean, p;
};

/// All orders of the samples, one by one.
CountedRv counted(const Eigen::MatrixXd& x, const Eigen::MatrixXd& y) {
  std::vector<int> order(static_cast<std::size_t>(x.rows()));
  std::iota(order.begin(), order.end(), 0);
  const double seen = rvByDefinition(x, y);
  double sum = 0.0, orders = 0.0, high = 0.0;
  do {
    Eigen::MatrixXd moved(y.rows(), y.cols());
    for (Eigen::Index i = 0; i < y.rows(); ++i) moved.row(i) = y.row(order[static_cast<std::size_t>(i)]);
    const double rv = rvByDefinition(x, moved);
    sum += rv;
    orders += 1.0;
    high += rv >= seen - 1e-10;
  } while (std::ranges::next_permutation(order).found);
  return {seen, sum / orders, high / orders};
}

/// A taster's samples x descriptors, and the mean of the others, from a full profile.
Eigen::MatrixXd configurationOf(const ProfileRows& rows, int taster, bool isOthers) {
  Eigen::MatrixXd sum = Eigen::MatrixXd::Zero(rows.scores.sample.levels, rows.descriptor.levels), count = sum;
  for (std::size_t i = 0; i < rows.scores.response.size(); ++i) {
    if ((rows.scores.taster.of[i] == taster) == isOthers) continue;
    sum(rows.scores.sample.of[i], rows.descriptor.of[i]) += rows.scores.response[i];
    count(rows.scores.sample.of[i], rows.descriptor.of[i]) += 1.0;
  }
  return sum.cwiseQuotient(count);
}

/// The answers that are kept.
ProfileRows only(const ProfileRows& rows, const std::function<bool(int descriptor, int taster, int sample)>& isKept) {
  ProfileRows kept;
  for (std::size_t i = 0; i < rows.scores.response.size(); ++i)
    if (isKept(rows.descriptor.of[i], rows.scores.taster.of[i], rows.scores.sample.of[i])) profiles::add(kept, rows.descriptor.of[i], rows.scores.taster.of[i], rows.scores.sample.of[i], rows.scores.response[i]);
  return kept;
}

}  // namespace

TEST_CASE("RV, its mean and its p are those of the definition over all orders") {
  for (const int samples : {4, 5, 6, 7}) {
    simulated::Chance chance(60u + static_cast<unsigned>(samples));
    const ProfileRows rows = profiles::drawn(chance, {10, samples, 3, 2, 0.3});
    const auto found = rvOf(profileCells(rows));
    REQUIRE(found.size() == 10);
    for (const TasterRv& each : found) {
      const CountedRv wanted = counted(configurationOf(rows, each.taster, false), configurationOf(rows, each.taster, true));
      CAPTURE(samples, each.taster);
      CHECK(each.samples == samples);
      CHECK(each.descriptors == 3);
      CHECK_THAT(*each.rv, WithinAbs(wanted.rv, 1e-12));
      CHECK_THAT(*each.expected, WithinAbs(wanted.mean, 1e-12));
      CHECK_THAT(*each.pValue, WithinAbs(wanted.p, 1e-12));
      CHECK_FALSE(each.error);
    }
  }
}

TEST_CASE("RV does not mind level, scale or turned words") {
  simulated::Chance chance(70);
  const ProfileRows rows = profiles::drawn(chance, {6, 5, 2, 1, 0.4});
  ProfileRows other = rows;
  for (std::size_t i = 0; i < rows.scores.response.size(); ++i)
    if (rows.scores.taster.of[i] == 2) {
      other.scores.response[i] = 7.0 - 4.0 * rows.scores.response[i];
      other.descriptor.of[i] = 1 - rows.descriptor.of[i];
    }
  const TasterRv one = rvOf(profileCells(rows))[2], two = rvOf(profileCells(other))[2];
  CHECK_THAT(*one.rv, WithinAbs(*two.rv, 1e-12));
  CHECK(one.pValue == two.pValue);
  // Two tasters with the same table are just alike, and only orders that leave it as it is come up to that.
  ProfileRows twins;
  for (int t = 0; t < 2; ++t)
    for (int s = 0; s < 4; ++s)
      for (int d = 0; d < 2; ++d) profiles::add(twins, d, t, s, d == 0 ? s * s : 3.0 * ((s + 1) % 4));
  for (const TasterRv& each : rvOf(profileCells(twins))) {
    CHECK_THAT(*each.rv, WithinAbs(1.0, 1e-12));
    CHECK_THAT(*each.pValue, WithinAbs(1.0 / 24.0, 1e-12));
  }
}

TEST_CASE("RV of many samples is drawn, and comes near the exact p", "[repeated]") {
  // Eleven samples have too many orders to count. A table that lines them up evenly, with itself: only the order as it is and its mirror image come up to it, 2 of 11!.
  std::vector<Likeness> pairs;
  Eigen::VectorXd line = Eigen::VectorXd::LinSpaced(11, -5.0, 5.0);
  pairs.push_back({line * line.transpose(), line * line.transpose()});
  const DrawnP p = asLikeRearranged(pairs).at(0);
  CHECK_THAT(p.pValue, WithinAbs(1.0 / 100001.0, 1e-9));
  // One descriptor of noughts and ones: the RV is the square of a correlation, and its p the exact one of a two by two table by the size of r. 5 of 11 and 6 of 11, 4 in common:
  // C(6, k) C(5, 5 - k) = 1, 30, 150, 200, 75, 6 of 462 for k = 0 to 5 (Fisher 1935).
  Eigen::VectorXd x = Eigen::VectorXd::Zero(11), y = x;
  x.head(5).setOnes();
  y.head(4).setOnes(), y.segment(5, 2).setOnes();
  x.array() -= x.mean(), y.array() -= y.mean();
  const DrawnP fisher = asLikeRearranged({{x * x.transpose(), y * y.transpose()}}).at(0);
  // r is proportional to k - 30/11: k = 4 lies 1.27 above, k = 1 lies 1.73 below.
  const double exact = (1.0 + 30.0 + 75.0 + 6.0) / 462.0;
  CHECK(std::abs(fisher.pValue - exact) < 4.0 * fisher.error);
  CHECK_THAT(fisher.error, WithinRel(std::sqrt(exact * (1.0 - exact) / 100000.0), 0.05));
}

TEST_CASE("RV: what cannot be had has its reason") {
  simulated::Chance chance(71);
  const ProfileRows rows = profiles::drawn(chance, {5, 5, 3, 1, 0.4});
  const auto whyOf = [](const ProfileRows& some, std::size_t taster) { return rvOf(profileCells(some))[taster].why; };
  CHECK(whyOf(only(rows, [](int, int t, int) { return t == 0; }), 0) == Reason::oneTaster);
  CHECK(whyOf(only(rows, [](int, int, int s) { return s < 3; }), 0) == Reason::fewSamples);
  // A taster with a hole is compared on the rest; one who left out a descriptor, without it; the others have their means from who was there.
  const auto holes = rvOf(profileCells(only(rows, [](int d, int t, int s) { return !(t == 1 && s == 4 && d == 0) && !(t == 2 && d == 1); })));
  CHECK(holes[1].samples == 4);
  CHECK(holes[1].descriptors == 3);
  CHECK(holes[2].samples == 5);
  CHECK(holes[2].descriptors == 2);
  CHECK(holes[0].descriptors == 3);
  for (const TasterRv& each : holes) CHECK((each.rv && each.pValue && *each.rv > 0.0 && *each.rv <= 1.0));
  ProfileRows flat = rows;
  for (std::size_t i = 0; i < flat.scores.response.size(); ++i)
    if (flat.scores.taster.of[i] == 3) flat.scores.response[i] = 0.1 + 0.2;
  CHECK(whyOf(flat, 3) == Reason::noSpread);
  CHECK_FALSE(whyOf(flat, 2));
}
