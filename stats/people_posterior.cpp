#include "stats/check.h"
#include "stats/people.h"
#include "stats/replicated.h"

#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace oddglass::stats {

namespace {

struct Node {
  double at;
  double weight;
};

// Gauss-Legendre nodes on [0, 1].
template <unsigned N>
std::vector<Node> nodes() {
  using Rule = boost::math::quadrature::gauss<double, N>;
  std::vector<Node> list;
  for (std::size_t i = 0; i < Rule::abscissa().size(); ++i)
    for (const double sign : {-1.0, 1.0}) list.push_back({0.5 + sign * Rule::abscissa()[i] / 2.0, Rule::weights()[i] / 2.0});
  return list;
}

double logOf(const People& groups, double mu, double gamma) {
  double sum = 0.0;
  for (const auto& group : groups) sum += group.heads * std::log(group.mixture.probability(mu, gamma));
  return sum;
}

// The value where a growing list of cumulated masses over equal cells of [0, 1] reaches q, straight within a cell.
double quantileOfCells(const std::vector<double>& cells, double q) {
  double total = 0.0;
  for (const double cell : cells) total += cell;
  double below = 0.0;
  for (std::size_t k = 0; k < cells.size(); ++k) {
    if (below + cells[k] >= q * total)
      return (static_cast<double>(k) + (q * total - below) / cells[k]) / static_cast<double>(cells.size());
    below += cells[k];
  }
  return 1.0;
}

struct GridPoint {
  double mu, gamma;
  double weight;  // node weights times the likelihood of all people, over its largest value
};

std::vector<GridPoint> gridOf(const People& groups, const std::vector<Node>& mus, const std::vector<Node>& gammas) {
  std::vector<GridPoint> grid;
  double largest = -1e308;
  for (const auto& mu : mus)
    for (const auto& gamma : gammas) {
      grid.push_back({mu.at, gamma.at, logOf(groups, mu.at, gamma.at)});
      largest = std::max(largest, grid.back().weight);
    }
  std::size_t k = 0;
  for (const auto& mu : mus)
    for (const auto& gamma : gammas) {
      grid[k].weight = mu.weight * gamma.weight * std::exp(grid[k].weight - largest);
      ++k;
    }
  return grid;
}

// P(pi <= value) for one person with this count: a mixture of betas over the grid and over what was known. Within a grid
// point the betas differ by whole steps of a, so I_x(a + 1, b) = I_x(a, b) - x^a (1 - x)^b / (a B(a, b)) serves all but the first.
double belowFor(const CountMixture& own, const std::vector<GridPoint>& grid, double value) {
  double sum = 0.0;
  for (const auto& point : grid) {
    const double size = (1.0 - point.gamma) / point.gamma, b = (1.0 - point.mu) * size + own.wrong();
    double a = point.mu * size;
    double below = boost::math::ibeta(a, b, value);
    double step = boost::math::ibeta_derivative(a, b, value) * value * (1.0 - value) / a;
    double here = 0.0;
    for (int known = 0; known <= own.right(); ++known) {
      here += own.part(known, point.mu, point.gamma) * below;
      below -= step;
      step *= value * (a + b) / (a + 1.0);
      a += 1.0;
    }
    sum += point.weight * here / own.probability(point.mu, point.gamma);
  }
  return sum;
}

double personQuantile(const CountMixture& own, const std::vector<GridPoint>& grid, double total, double q) {
  const auto gap = [&](double value) { return belowFor(own, grid, value) / total - q; };
  const double least = 1e-6, most = 1.0 - 1e-6;
  const double gapLeast = gap(least), gapMost = gap(most);
  if (gapLeast >= 0.0) return 0.0;
  if (gapMost <= 0.0) return 1.0;
  std::uintmax_t steps = 60;
  const auto ends = boost::math::tools::toms748_solve(
      gap, least, most, gapLeast, gapMost, [](double low, double high) { return high - low < 1e-5; }, steps);
  return (ends.first + ends.second) / 2.0;
}

}  // namespace

std::optional<SharePosteriorOfPeople> shareOfPeople(const std::vector<PersonCount>& people, double guess, double level) {
  requireOpenShare("level", level);
  const People groups = groupPeople(people, guess);
  if (groups.empty()) return std::nullopt;
  constexpr int cellCount = 400;
  std::vector<Node> mus;
  for (int k = 0; k < cellCount; ++k) mus.push_back({(k + 0.5) / cellCount, 1.0 / cellCount});
  const auto gammas = nodes<20>();
  const auto grid = gridOf(groups, mus, gammas);
  std::vector<double> cells(cellCount, 0.0);
  for (std::size_t k = 0; k < grid.size(); ++k) cells[k / gammas.size()] += grid[k].weight;
  const double tail = (1.0 - level) / 2.0;
  return SharePosteriorOfPeople{quantileOfCells(cells, 0.5), quantileOfCells(cells, tail), quantileOfCells(cells, 1.0 - tail)};
}

std::vector<SharePosteriorOfPeople> eachPerson(const std::vector<PersonCount>& people, double guess, double level) {
  requireOpenShare("level", level);
  const People groups = groupPeople(people, guess);
  if (groups.empty()) return {};
  auto grid = gridOf(groups, nodes<30>(), nodes<16>());
  double largest = 0.0, total = 0.0;
  for (const auto& point : grid) largest = std::max(largest, point.weight);
  std::erase_if(grid, [&](const GridPoint& point) { return point.weight < 1e-7 * largest; });
  for (const auto& point : grid) total += point.weight;
  const double tail = (1.0 - level) / 2.0;
  std::map<std::pair<int, int>, SharePosteriorOfPeople> known;
  std::vector<SharePosteriorOfPeople> each;
  for (const auto& person : people) {
    const std::pair key{person.correct, person.trials};
    if (!known.contains(key)) {
      const CountMixture own(person.correct, person.trials, guess);
      known[key] = {personQuantile(own, grid, total, 0.5), personQuantile(own, grid, total, tail),
                    personQuantile(own, grid, total, 1.0 - tail)};
    }
    each.push_back(known[key]);
  }
  return each;
}

}  // namespace oddglass::stats
