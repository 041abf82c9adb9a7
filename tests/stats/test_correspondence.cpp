#include "cases.h"
#include "stats/checks/correspondence.h"
#include "stats/error.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <random>

using namespace oddglass::stats;
using checks::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

using Counts = std::vector<std::vector<double>>;

double sumOf(const Counts& counts) {
  double sum = 0.0;
  for (const auto& row : counts) sum = std::accumulate(row.begin(), row.end(), sum);
  return sum;
}

/// Pearson's chi-square of a table, by its expected counts.
double chiSquare(const Counts& counts) {
  const double all = sumOf(counts);
  double total = 0.0;
  for (std::size_t i = 0; i < counts.size(); ++i)
    for (std::size_t j = 0; j < counts[i].size(); ++j) {
      double row = 0.0, column = 0.0;
      for (double count : counts[i]) row += count;
      for (const auto& each : counts) column += each[j];
      const double expected = row * column / all;
      if (expected > 0.0) total += (counts[i][j] - expected) * (counts[i][j] - expected) / expected;
    }
  return total;
}

Counts randomCounts(std::mt19937& chance, std::size_t rows, std::size_t columns) {
  Counts counts(rows, std::vector<double>(columns));
  for (auto& row : counts)
    for (double& cell : row) cell = static_cast<double>(1 + chance() % 12);
  return counts;
}

}  // namespace

// Every case of tests/data/checks/correspondence.json: Greenacre 1984 (smoking), Fisher 1940 (eyes and hair), one constructed.
TEST_CASE("inertia and coordinates of the cases") {
  int looked = 0;
  for (const Json& each : checks::family("correspondence")) {
    const Json& wanted = each.at("expected");
    INFO(each.at("id"));
    const auto counts = each.at("inputs").at("table").get<Counts>();
    const double within = each.at("tolerance").at("abs");
    const Correspondence got = correspondence(counts);
    REQUIRE_FALSE(got.why.has_value());
    const double total = std::accumulate(got.inertia.begin(), got.inertia.end(), 0.0);
    for (const char* key : {"singular_values", "canonical_correlations"})
      if (wanted.contains(key)) {
        REQUIRE(wanted.at(key).size() == got.inertia.size());
        for (std::size_t i = 0; i < got.inertia.size(); ++i) CHECK_THAT(std::sqrt(got.inertia[i]), WithinAbs(wanted.at(key)[i].get<double>(), within));
      }
    if (wanted.contains("principal_inertias"))
      for (std::size_t i = 0; i < got.inertia.size(); ++i) CHECK_THAT(got.inertia[i], WithinAbs(wanted.at("principal_inertias")[i].get<double>(), within));
    if (wanted.contains("total_inertia")) CHECK_THAT(total, WithinAbs(wanted.at("total_inertia").get<double>(), within));
    if (wanted.contains("chi2")) CHECK_THAT(total * sumOf(counts), WithinAbs(wanted.at("chi2").get<double>(), 1e-7));
    // Standard coordinates are principal ones over the singular value.
    const double first = std::sqrt(got.inertia[0]);
    if (wanted.contains("abs_row_std_coord_dim1"))
      for (std::size_t i = 0; i < got.rows.size(); ++i) CHECK_THAT(std::abs(got.rows[i].value()[0]) / first, WithinAbs(wanted.at("abs_row_std_coord_dim1")[i].get<double>(), 1e-7));
    if (wanted.contains("abs_col_std_coord_dim1"))
      for (std::size_t i = 0; i < got.columns.size(); ++i) CHECK_THAT(std::abs(got.columns[i].value()[0]) / first, WithinAbs(wanted.at("abs_col_std_coord_dim1")[i].get<double>(), 1e-7));
    checks::requireAllSeen(wanted, {"singular_values", "canonical_correlations", "principal_inertias", "total_inertia", "chi2", "abs_row_std_coord_dim1", "abs_col_std_coord_dim1"});
    ++looked;
  }
  CHECK(looked == 3);
}

TEST_CASE("inertia times all counts is chi-square; coordinates are centred, and as far apart as chi-square has it") {
  std::mt19937 chance(7);
  for (const auto& [height, width] : {std::pair{2u, 2u}, {3u, 7u}, {6u, 4u}, {5u, 5u}}) {
    const Counts counts = randomCounts(chance, height, width);
    const Correspondence got = correspondence(counts);
    const double all = sumOf(counts);
    CHECK(got.inertia.size() == std::min(height, width) - 1);
    CHECK_THAT(std::accumulate(got.inertia.begin(), got.inertia.end(), 0.0) * all, WithinRel(chiSquare(counts), 1e-10));
    for (std::size_t axis = 0; axis < got.inertia.size(); ++axis) {
      double mean = 0.0, spread = 0.0, farthest = 0.0, atFarthest = 0.0;
      for (std::size_t i = 0; i < height; ++i) {
        const double mass = std::accumulate(counts[i].begin(), counts[i].end(), 0.0) / all, at = got.rows[i].value()[axis];
        mean += mass * at;
        spread += mass * at * at;
      }
      for (const auto& column : got.columns)
        if (std::abs((*column)[axis]) > farthest) farthest = std::abs((*column)[axis]), atFarthest = (*column)[axis];
      CHECK_THAT(mean, WithinAbs(0.0, 1e-12));
      CHECK_THAT(spread, WithinRel(got.inertia[axis], 1e-9));
      CHECK(atFarthest > 0.0);
      if (axis > 0) CHECK(got.inertia[axis] <= got.inertia[axis - 1]);
    }
    // Between two rows: the distance of chi-square between their profiles.
    double seen = 0.0, wanted = 0.0;
    const double first = std::accumulate(counts[0].begin(), counts[0].end(), 0.0), second = std::accumulate(counts[1].begin(), counts[1].end(), 0.0);
    for (std::size_t axis = 0; axis < got.inertia.size(); ++axis) seen += std::pow(got.rows[0].value()[axis] - got.rows[1].value()[axis], 2);
    for (std::size_t j = 0; j < width; ++j) {
      double mass = 0.0;
      for (const auto& row : counts) mass += row[j] / all;
      wanted += std::pow(counts[0][j] / first - counts[1][j] / second, 2) / mass;
    }
    CHECK_THAT(seen, WithinRel(wanted, 1e-9));
  }
}

TEST_CASE("the order of rows and columns, or ten times the counts, change nothing") {
  std::mt19937 chance(11);
  Counts counts = randomCounts(chance, 4, 6);
  const Correspondence first = correspondence(counts);
  std::ranges::reverse(counts);
  for (auto& row : counts) {
    std::ranges::reverse(row);
    for (double& cell : row) cell *= 10;
  }
  const Correspondence second = correspondence(counts);
  for (std::size_t axis = 0; axis < first.inertia.size(); ++axis) {
    CHECK_THAT(second.inertia[axis], WithinRel(first.inertia[axis], 1e-9));
    for (std::size_t i = 0; i < 4; ++i) CHECK_THAT(second.rows[3 - i].value()[axis], WithinAbs(first.rows[i].value()[axis], 1e-9));
    for (std::size_t j = 0; j < 6; ++j) CHECK_THAT(second.columns[5 - j].value()[axis], WithinAbs(first.columns[j].value()[axis], 1e-9));
  }
}

TEST_CASE("rows and columns without counts are left out; a table without a map says why") {
  const Correspondence full = correspondence({{4, 1, 3}, {1, 5, 2}}), wider = correspondence({{4, 0, 1, 3}, {0, 0, 0, 0}, {1, 0, 5, 2}});
  REQUIRE(wider.inertia.size() == 1);
  CHECK_THAT(wider.inertia[0], WithinRel(full.inertia[0], 1e-12));
  CHECK_FALSE(wider.rows[1].has_value());
  CHECK_FALSE(wider.columns[1].has_value());
  CHECK_THAT(wider.columns[2].value()[0], WithinAbs(full.columns[1].value()[0], 1e-12));
  CHECK(correspondence({}).why == Reason::fewSamples);
  CHECK(correspondence({{0, 0}, {0, 0}}).why == Reason::fewSamples);
  CHECK(correspondence({{1, 2, 3}}).why == Reason::fewSamples);
  CHECK(correspondence({{3, 0}, {4, 0}}).why == Reason::fewSamples);
  const Correspondence alike = correspondence({{1, 2, 3}, {2, 4, 6}});
  CHECK(alike.why == Reason::noSpread);
  CHECK(alike.inertia.empty());
  CHECK_FALSE(alike.rows[0].has_value());
  // One axis of two is empty: its coordinates are zero.
  const Correspondence flat = correspondence({{6, 2, 1}, {2, 6, 1}, {4, 4, 1}});
  CHECK_THAT(flat.inertia.at(1), WithinAbs(0.0, 1e-20));
  CHECK(flat.rows[0].value()[1] == 0.0);
}

TEST_CASE("impossible tables of counts are refused by name") {
  CHECK_THROWS_AS(correspondence({{1, 2}, {1}}), BadInput);
  CHECK_THROWS_AS(correspondence({{1, -2}, {1, 3}}), BadInput);
  CHECK_THROWS_AS(correspondence({{1, std::numeric_limits<double>::quiet_NaN()}, {1, 3}}), BadInput);
  CHECK_THROWS_AS(correspondence(Counts(301, {1, 2})), BadInput);
  CHECK_THROWS_AS(correspondence({std::vector<double>(301, 1.0)}), BadInput);
}
