#include "stats/multiple/adjust.h"

#include "stats/check.h"

#include <algorithm>
#include <numeric>

namespace oddglass::stats {
namespace {

std::vector<std::size_t> smallestFirst(const std::vector<double>& p) {
  for (double each : p) requireShare("p", each);
  std::vector<std::size_t> order(p.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) { return p[a] < p[b]; });
  return order;
}

}  // namespace

std::vector<double> adjustHolm(const std::vector<double>& p) {
  const auto order = smallestFirst(p);
  std::vector<double> adjusted(p.size());
  double highest = 0.0;
  for (std::size_t i = 0; i < order.size(); ++i) {
    highest = std::max(highest, std::min(1.0, static_cast<double>(order.size() - i) * p[order[i]]));
    adjusted[order[i]] = highest;
  }
  return adjusted;
}

std::vector<double> holmRisks(double alpha, int tests) {
  requireOpenShare("alpha", alpha);
  if (tests < 1) throw BadInput("tests", "must be at least 1");
  std::vector<double> risks;
  for (int left = tests; left >= 1; --left) risks.push_back(alpha / left);
  return risks;
}

std::vector<double> adjustBenjaminiHochberg(const std::vector<double>& p) {
  const auto order = smallestFirst(p);
  std::vector<double> adjusted(p.size());
  double lowest = 1.0;
  for (std::size_t i = order.size(); i-- > 0;) {
    lowest = std::min(lowest, static_cast<double>(order.size()) / static_cast<double>(i + 1) * p[order[i]]);
    adjusted[order[i]] = lowest;
  }
  return adjusted;
}

}  // namespace oddglass::stats
