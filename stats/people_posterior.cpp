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

struct Range {
  double low = 0.0, high = 1.0;

  double at(double share) const { return low + share * (high - low); }
};

// Gauss-Legendre nodes on a range.
template <unsigned N>
std::vector<Node> nodes(const Range& range) {
  using Rule = boost::math::quadrature::gauss<double, N>;
  std::vector<Node> list;
  for (std::size_t i = 0; i < Rule::abscissa().size(); ++i)
    for (const double sign : {-1.0, 1.0}) list.push_back({range.at(0.5 + sign * Rule::abscissa()[i] / 2.0), Rule::weights()[i] / 2.0});
  return list;
}

double logPosteriorOf(const People& groups, double mu, double gamma) {
  double sum = 0.0;
  for (const auto& group : groups) sum += group.heads * std::log(group.mixture.probability(mu, gamma));
  return sum;
}

struct Ranges {
  Range mu, gamma;
};

// Where the likelihood is worth a place on the grid: more than exp(-30) of its top. Many people know mu and gamma so well that a grid over everything
// would pass between.
Ranges rangesOf(const People& groups) {
  constexpr int cells = 24;
  Ranges ranges;
  for (int round = 0; round < 6; ++round) {
    std::vector<double> ofMu(cells, -1e308), ofGamma(cells, -1e308);
    double top = -1e308;
    for (int m = 0; m < cells; ++m)
      for (int g = 0; g < cells; ++g) {
        const double here = logPosteriorOf(groups, ranges.mu.at((m + 0.5) / cells), ranges.gamma.at((g + 0.5) / cells));
        ofMu[static_cast<std::size_t>(m)] = std::max(ofMu[static_cast<std::size_t>(m)], here);
        ofGamma[static_cast<std::size_t>(g)] = std::max(ofGamma[static_cast<std::size_t>(g)], here);
        top = std::max(top, here);
      }
    const auto within = [&](const Range& range, const std::vector<double>& highest) {
      const auto isWorth = [&](double here) { return here > top - 30.0; };
      const auto first = std::ranges::find_if(highest, isWorth) - highest.begin();
      const auto last = std::find_if(highest.rbegin(), highest.rend(), isWorth).base() - highest.begin();
      return Range{range.at(static_cast<double>(std::max<std::ptrdiff_t>(0, first - 1)) / cells), range.at(static_cast<double>(std::min<std::ptrdiff_t>(cells, last + 1)) / cells)};
    };
    const Ranges narrower{within(ranges.mu, ofMu), within(ranges.gamma, ofGamma)};
    const bool isSettled = narrower.mu.high - narrower.mu.low > 0.8 * (ranges.mu.high - ranges.mu.low) && narrower.gamma.high - narrower.gamma.low > 0.8 * (ranges.gamma.high - ranges.gamma.low);
    ranges = narrower;
    if (isSettled) break;
  }
  return ranges;
}

// The value where a growing list of cumulated masses over equal cells of a range reaches q, straight within a cell.
double quantileOfCells(const Range& range, const std::vector<double>& cells, double q) {
  double total = 0.0;
  for (const double cell : cells) total += cell;
  double below = 0.0;
  for (std::size_t k = 0; k < cells.size(); ++k) {
    if (below + cells[k] >= q * total)
      return range.at((static_cast<double>(k) + (q * total - below) / cells[k]) / static_cast<double>(cells.size()));
    below += cells[k];
  }
  return range.high;
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
      grid.push_back({mu.at, gamma.at, logPosteriorOf(groups, mu.at, gamma.at)});
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
      gap, least, most, gapLeast, gapMost, [](double low, double high) { return high - low < 1e-8; }, steps);
  return (ends.first + ends.second) / 2.0;
}

}  // namespace

std::optional<SharePosteriorOfPeople> shareOfPeople(const std::vector<PersonCount>& people, double guess, double level) {
  requireOpenShare("level", level);
  const People groups = groupPeople(people, guess);
  if (groups.empty()) return std::nullopt;
  constexpr int cellCount = 400;
  const Ranges ranges = rangesOf(groups);
  std::vector<Node> mus;
  for (int k = 0; k < cellCount; ++k) mus.push_back({ranges.mu.at((k + 0.5) / cellCount), 1.0 / cellCount});
  const auto gammas = nodes<20>(ranges.gamma);
  const auto grid = gridOf(groups, mus, gammas);
  std::vector<double> cells(cellCount, 0.0);
  for (std::size_t k = 0; k < grid.size(); ++k) cells[k / gammas.size()] += grid[k].weight;
  const double tail = (1.0 - level) / 2.0;
  return SharePosteriorOfPeople{quantileOfCells(ranges.mu, cells, 0.5), quantileOfCells(ranges.mu, cells, tail), quantileOfCells(ranges.mu, cells, 1.0 - tail)};
}

std::vector<SharePosteriorOfPeople> eachPerson(const std::vector<PersonCount>& people, double guess, double level) {
  requireOpenShare("level", level);
  const People groups = groupPeople(people, guess);
  if (groups.empty()) return {};
  const Ranges ranges = rangesOf(groups);
  auto grid = gridOf(groups, nodes<30>(ranges.mu), nodes<16>(ranges.gamma));
  double largest = 0.0, total = 0.0;
  for (const auto& point : grid) largest = std::max(largest, point.weight);
  std::erase_if(grid, [&](const GridPoint& point) { return point.weight < 1e-10 * largest; });
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
