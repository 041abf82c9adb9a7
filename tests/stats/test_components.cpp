#include "stats/profile/components.h"

#include "stats/cases.h"
#include "stats/error.h"
#include "stats/open_table.h"
#include "stats/profiles.h"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using checks::Json;

namespace {

/// One taster whose scores are the table: a row is a sample, a column a descriptor.
ProfileRows ofTable(const open_data::Table& table, const std::vector<std::string>& columns) {
  ProfileRows rows;
  for (std::size_t d = 0; d < columns.size(); ++d) {
    const auto values = table.numbers(columns[d]);
    for (std::size_t s = 0; s < values.size(); ++s) profiles::add(rows, static_cast<int>(d), 0, static_cast<int>(s), values[s]);
  }
  return rows;
}

void requireLike(const std::vector<double>& got, const Json& wanted, double tolerance, double factor = 1.0) {
  REQUIRE(got.size() == wanted.size());
  for (std::size_t i = 0; i < got.size(); ++i) CHECK_THAT(factor * got[i], WithinAbs(wanted[i].get<double>(), tolerance));
}

std::vector<double> roots(std::vector<double> values) {
  for (double& each : values) each = std::sqrt(each);
  return values;
}

/// The components of the same profile with tasters, samples or descriptors in another order.
ProfileRows turned(const ProfileRows& rows, std::vector<int>& samples, std::vector<int>& descriptors) {
  ProfileRows other = rows;
  for (int& level : other.scores.sample.of) level = samples[static_cast<std::size_t>(level)];
  for (int& level : other.descriptor.of) level = descriptors[static_cast<std::size_t>(level)];
  for (int& level : other.scores.taster.of) level = rows.scores.taster.levels - 1 - level;
  return other;
}

}  // namespace

// Sources beside each case in profile.json.
TEST_CASE("components: published tables") {
  const Json all = checks::family("profile");
  const Json &arrests = all.at(1), &iris = all.at(2);
  REQUIRE(arrests.at("id") == "pca_usarrests");
  REQUIRE(iris.at("id") == "pca_iris_cov");
  const auto scaled = componentsOf(profileCells(ofTable(open_data::Table("usarrests"), {"Murder", "Assault", "UrbanPop", "Rape"})), true);
  const Json& wanted = arrests.at("expected");
  requireLike(scaled.variances, wanted.at("eigenvalues"), 1e-8);
  requireLike(roots(scaled.variances), wanted.at("sdev"), 1e-8);
  requireLike(scaled.shares, wanted.at("explained_pct"), 1e-8, 100.0);
  for (Eigen::Index d = 0; d < 4; ++d) {
    // All four go the same way, so the largest, made positive, makes all of them so.
    CHECK_THAT(scaled.descriptors(d, 0), WithinAbs(wanted.at("abs_loadings_PC1")[static_cast<std::size_t>(d)].get<double>(), 1e-8));
  }
  checks::requireAllSeen(wanted, {"eigenvalues", "sdev", "explained_pct", "abs_loadings_PC1"});
  const auto plain = componentsOf(profileCells(ofTable(open_data::Table("iris"), {"Sepal.Length", "Sepal.Width", "Petal.Length", "Petal.Width"})));
  requireLike(plain.variances, iris.at("expected").at("eigenvalues"), 1e-8);
  requireLike(roots(plain.variances), iris.at("expected").at("sdev"), 1e-8);
  checks::requireAllSeen(iris.at("expected"), {"eigenvalues", "sdev"});
  CHECK(plain.ellipses.size() == 150);
  for (const SampleEllipse& each : plain.ellipses) CHECK(each.why == Reason::fewTasters);
}

TEST_CASE("components: scores and loadings give the means back, and each axis is signed") {
  simulated::Chance chance(3);
  const ProfileRows rows = profiles::drawn(chance, {6, 5, 9, 2, 0.4});
  const ProfileCells cells = profileCells(rows);
  for (const bool isScaled : {false, true}) {
    const auto found = componentsOf(cells, isScaled);
    REQUIRE(found.variances.size() == 4);
    for (std::size_t d = 0; d < 9; ++d) {
      const Eigen::VectorXd means = *panelMeans(cells.descriptors[d], 6, 5).samples;
      const Eigen::VectorXd rest = means.array() - means.mean();
      const Eigen::VectorXd back = found.samples * found.descriptors.row(static_cast<Eigen::Index>(d)).transpose();
      CHECK((back - rest / (isScaled ? rest.norm() / 2.0 : 1.0)).norm() < 1e-11);
    }
    for (Eigen::Index axis = 0; axis < 4; ++axis) {
      Eigen::Index at = 0;
      found.descriptors.col(axis).cwiseAbs().maxCoeff(&at);
      CHECK(found.descriptors(at, axis) > 0.0);
      CHECK_THAT(found.descriptors.col(axis).norm(), WithinRel(1.0, 1e-12));
      CHECK_THAT(found.samples.col(axis).squaredNorm() / 4.0, WithinRel(found.variances[static_cast<std::size_t>(axis)], 1e-10));
    }
    // The place of a sample is the middle of its tasters' points.
    for (int s = 0; s < 5; ++s) CHECK((*found.ellipses[static_cast<std::size_t>(s)].center - found.samples.row(s).head<2>().transpose()).norm() < 1e-11);
  }
}

TEST_CASE("components: relabelling moves the labels only; levels do not matter; a scale stretches") {
  simulated::Chance chance(4);
  const ProfileRows rows = profiles::drawn(chance, {7, 4, 5, 1, 0.5});
  const auto found = componentsOf(profileCells(rows));
  std::vector<int> samples{2, 0, 3, 1}, descriptors{4, 2, 0, 1, 3};
  const auto other = componentsOf(profileCells(turned(rows, samples, descriptors)));
  ProfileRows lifted = rows, stretched = rows;
  for (std::size_t row = 0; row < rows.scores.response.size(); ++row) {
    lifted.scores.response[row] += 10.0 * rows.scores.taster.of[row] + rows.descriptor.of[row];
    stretched.scores.response[row] *= 3.0;
  }
  const auto high = componentsOf(profileCells(lifted)), wide = componentsOf(profileCells(stretched));
  for (std::size_t axis = 0; axis < found.variances.size(); ++axis) {
    CHECK_THAT(other.variances[axis], WithinRel(found.variances[axis], 1e-9));
    CHECK_THAT(high.variances[axis], WithinRel(found.variances[axis], 1e-9));
    CHECK_THAT(wide.variances[axis], WithinRel(9.0 * found.variances[axis], 1e-9));
  }
  for (std::size_t s = 0; s < 4; ++s) {
    const SampleEllipse &one = found.ellipses[s], &moved = other.ellipses[static_cast<std::size_t>(samples[s])];
    CHECK((*one.center - *moved.center).norm() < 1e-9);
    CHECK((*one.semiAxes - *moved.semiAxes).norm() < 1e-9);
    CHECK_THAT(*one.angle, WithinAbs(*moved.angle, 1e-6));
    CHECK((*one.semiAxes - *high.ellipses[s].semiAxes).norm() < 1e-8);
    CHECK((3.0 * *one.semiAxes - *wide.ellipses[s].semiAxes).norm() < 1e-9);
  }
}

TEST_CASE("an ellipse, worked by hand") {
  // Six points about (1, 2): the covariance is diagonal, 2 * 9 / 5 along x and 2 * 1 / 5 along y (the other two lie in the middle).
  // Half axes by the definition, with F(0.95; 2, 4) = 6.9443 from a table (Fisher and Yates): sqrt(lambda * 2 * 5 / (6 * 4) * F).
  const std::vector<Eigen::Vector2d> points{{4, 2}, {-2, 2}, {1, 3}, {1, 1}, {1, 2}, {1, 2}};
  const SampleEllipse flat = ellipseOf(0, points, 0.95);
  CHECK((*flat.center - Eigen::Vector2d(1, 2)).norm() < 1e-14);
  CHECK_THAT((*flat.semiAxes)(0), WithinAbs(std::sqrt(3.6 * 10.0 / 24.0 * 6.9443), 1e-4));
  CHECK_THAT((*flat.semiAxes)(1), WithinAbs(std::sqrt(0.4 * 10.0 / 24.0 * 6.9443), 1e-4));
  CHECK_THAT(*flat.angle, WithinAbs(0.0, 1e-9));
  for (const double degrees : {30.0, 90.0, -45.0, 89.9}) {
    const double turn = degrees * std::numbers::pi / 180.0;
    std::vector<Eigen::Vector2d> moved;
    for (const Eigen::Vector2d& p : points) moved.emplace_back(std::cos(turn) * p.x() - std::sin(turn) * p.y(), std::sin(turn) * p.x() + std::cos(turn) * p.y());
    const SampleEllipse found = ellipseOf(0, moved, 0.95);
    CHECK_THAT(*found.angle, WithinAbs(degrees, 1e-6));
    CHECK((*found.semiAxes - *flat.semiAxes).norm() < 1e-12);
  }
  CHECK(ellipseOf(0, {points.begin(), points.begin() + 4}, 0.95).why == Reason::fewTasters);
  CHECK(ellipseOf(0, {{0, 0}, {1, 2}, {2, 4}, {3, 6}, {5, 10}}, 0.95).why == Reason::noSpread);
  CHECK(ellipseOf(0, {}, 0.95).why == Reason::emptyCell);
}

TEST_CASE("components: what cannot be had has its reason") {
  // All means alike.
  const auto nothing = componentsOf(profileCells(profiles::ofDifferences({{1, -1}, {2, -2}})));
  CHECK(nothing.why == Reason::noSpread);
  CHECK(nothing.variances.empty());
  // One descriptor, or two samples: one axis and no ellipse.
  const auto single = componentsOf(profileCells(profiles::ofDifferences({{1, 2, 1, 3, 2, 2}})));
  CHECK(single.variances.size() == 1);
  CHECK(single.shares == std::vector<double>{1.0});
  for (const SampleEllipse& each : single.ellipses) CHECK((each.why == Reason::noSpread && each.center && !each.semiAxes));
  // A descriptor with all scores alike loads nothing; scaled, it is left out. One that nobody scored in a sample is left out.
  simulated::Chance chance(9);
  ProfileRows rows = profiles::drawn(chance, {5, 4, 3, 1, 0.6});
  for (int t = 0; t < 5; ++t)
    for (int s = 0; s < 4; ++s) profiles::add(rows, 3, t, s, 5.0);
  for (int t = 0; t < 5; ++t)
    for (int s = 0; s < 3; ++s) profiles::add(rows, 4, t, s, s + t);
  const auto plain = componentsOf(profileCells(rows)), scaled = componentsOf(profileCells(rows), true);
  CHECK(plain.descriptors.row(3).norm() == 0.0);
  CHECK_FALSE(plain.leftOut[3]);
  CHECK(scaled.leftOut[3] == Reason::noSpread);
  CHECK(plain.leftOut[4] == Reason::emptyCell);
  CHECK(plain.descriptors.row(4).norm() == 0.0);
  CHECK(plain.ellipses[3].semiAxes);
  // Two halves that were never poured together.
  ProfileRows parted;
  for (int t = 0; t < 4; ++t)
    for (int s = 0; s < 2; ++s) profiles::add(parted, 0, t, 2 * (t % 2) + s, s + t);
  CHECK(componentsOf(profileCells(parted)).why == Reason::notConnected);
  for (double bad : {0.0, 1.0, static_cast<double>(NAN)}) CHECK_THROWS_AS(componentsOf(profileCells(parted), false, bad), BadInput);
}

TEST_CASE("components: who is missing does not move a mean") {
  // Taster 1 scores two points more than taster 0 throughout and missed sample 2: by hand its mean is 6 + 1.
  ProfileRows rows;
  for (int s = 0; s < 3; ++s) profiles::add(rows, 0, 0, s, 4.0 + s);
  for (int s = 0; s < 2; ++s) profiles::add(rows, 0, 1, s, 6.0 + s);
  const PanelMeans means = panelMeans(profileCells(rows).descriptors[0], 2, 3);
  for (Eigen::Index s = 0; s < 3; ++s) CHECK_THAT((*means.samples)(s), WithinAbs(5.0 + static_cast<double>(s), 1e-12));
  CHECK_THAT(means.level(1) - means.level(0), WithinAbs(2.0, 1e-12));
  CHECK_THAT((*panelMeans(profileCells(rows).descriptors[0], 2, 3, 1).samples)(2), WithinAbs(6.0, 1e-12));
  CHECK(panelMeans(profileCells(rows).descriptors[0], 2, 3, 0).why == Reason::emptyCell);
}
