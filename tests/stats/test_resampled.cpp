#include "stats/profile/resampled.h"

#include "stats/error.h"
#include "stats/profiles.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using simulated::Share;

TEST_CASE("resampled profiles: the mean of the draws is the panel's, and their spread that of a mean") {
  simulated::Chance chance(80);
  const ProfileCells cells = profileCells(profiles::drawn(chance, {12, 3, 2, 1, 0.5}));
  const int draws = 20'000;
  const Eigen::MatrixXd means = *resampledMeans(cells, draws).means;
  REQUIRE(means.cols() == 6);
  for (int d = 0; d < 2; ++d) {
    const TasterTable table = tasterTable(cells.descriptors[static_cast<std::size_t>(d)], 12, 3);
    for (int s = 0; s < 3; ++s) {
      const Eigen::VectorXd said = table.mean.col(s);
      // Exact over all resamples: variance of the 12 about their mean, over 12 (Efron 1979).
      const double variance = (said.array() - said.mean()).square().sum() / 144.0;
      const Eigen::VectorXd drawn = means.col(d * 3 + s);
      CHECK(std::abs(drawn.mean() - said.mean()) < 4.0 * std::sqrt(variance / draws));
      CHECK(std::abs((drawn.array() - said.mean()).square().mean() / variance - 1.0) < 4.0 * std::sqrt(2.0 / draws));
    }
  }
  CHECK(means == *resampledMeans(cells, draws).means);
}

TEST_CASE("resampled profiles: intervals from 20 tasters only, and near their level") {
  simulated::Chance chance(81);
  CHECK(resampledProfile(profileCells(profiles::drawn(chance, {19, 3, 2})), 100).why == Reason::fewTasters);
  // Steady tasters' means at 40: a percentile interval covers nearly what it says.
  Share covered;
  for (int draw = 0; draw < 60; ++draw) {
    const ProfileCells cells = profileCells(profiles::drawn(chance, {40, 2, 10, 1, 0.5}));
    for (const ResampledMean& each : resampledProfile(cells, 400).means) {
      REQUIRE(each.low < each.mean);
      REQUIRE(each.mean < each.high);
      const double truth = 5.0 + 0.5 * ((each.sample * (each.descriptor + 2)) % 7);
      covered.add(each.low <= truth && truth <= each.high);
    }
  }
  CHECK(std::abs(covered.value() - 0.94) < covered.slack(0.95) + 0.01);
}

TEST_CASE("resampled profiles: what cannot be had, and impossible input") {
  simulated::Chance chance(82);
  const ProfileCells holes = profileCells(profiles::drawn(chance, {25, 3, 2, 1, 0.0, 1.0, 1.0, 1.0, 0.2}));
  CHECK(resampledMeans(holes, 10).why == Reason::emptyCell);
  CHECK(resampledProfile(holes, 10).why == Reason::emptyCell);
  CHECK(resampledMeans(profileCells(profiles::drawn(chance, {1, 3, 2})), 10).why == Reason::oneTaster);
  CHECK(resampledMeans(profileCells(profiles::drawn(chance, {2, 100, 3})), 1'000'000).why == Reason::tooLarge);
  for (int bad : {0, -1, 1'000'001}) CHECK_THROWS_AS(resampledMeans(holes, bad), BadInput);
  CHECK_THROWS_AS(resampledProfile(holes, 10, 1.0), BadInput);
}
