#include "stats/right/label_splits.h"

#include "stats/drawn.h"
#include "stats/error.h"

#include <boost/math/special_functions/binomial.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace oddglass::stats {
namespace {

/// Values that are equal, and how many they are.
struct Alike {
  double value;
  int times;
};

double choose(int all, int taken) { return boost::math::binomial_coefficient<double>(static_cast<unsigned>(all), static_cast<unsigned>(taken)); }

std::vector<Alike> alikeIn(std::vector<double> values) {
  std::ranges::sort(values);
  std::vector<Alike> groups;
  for (double value : values) {
    if (groups.empty() || groups.back().value != value) groups.push_back({value, 0});
    ++groups.back().times;
  }
  return groups;
}

/// How many unlike ways there are to take so many of them.
double unlikeSplits(const std::vector<Alike>& groups, int taken) {
  std::vector<double> ways(static_cast<std::size_t>(taken) + 1, 0.0);
  ways[0] = 1.0;
  for (const Alike& group : groups) {
    const std::vector<double> before = ways;
    for (int sum = 0; sum <= taken; ++sum)
      for (int here = 1; here <= std::min(group.times, sum); ++here) ways[static_cast<std::size_t>(sum)] += before[static_cast<std::size_t>(sum - here)];
  }
  return ways.back();
}

/// Goes through all unlike splits and adds up in how many ways each comes about.
class AllSplits {
 public:
  AllSplits(const std::vector<Alike>& groups, double least) : groups_(groups), least_(least), left_(groups.size() + 1, 0), rest_(groups.size() + 1, 0.0) {
    for (std::size_t i = groups.size(); i-- > 0;) {
      left_[i] = left_[i + 1] + groups[i].times;
      rest_[i] = rest_[i + 1] + groups[i].times * groups[i].value;
      for (int taken = 0; taken <= groups[i].times; ++taken) ways_.push_back(choose(groups[i].times, taken));
    }
    std::size_t first = ways_.size();
    for (const Alike& group : groups) firstWay_.push_back(first -= static_cast<std::size_t>(group.times) + 1);
  }

  double shareAsFar(int taken) {
    deal(0, taken, 0.0, 1.0);
    return asFar_ / all_;
  }

 private:
  void deal(std::size_t at, int need, double sum, double ways) {
    if (need == 0) return count(sum, ways);
    if (need == left_[at]) return count(sum + rest_[at], ways);
    const auto [value, times] = groups_[at];
    for (int taken = std::max(0, need - left_[at + 1]); taken <= std::min(times, need); ++taken)
      deal(at + 1, need - taken, sum + taken * value, ways * ways_[firstWay_[at] + static_cast<std::size_t>(taken)]);
  }
  void count(double sum, double ways) {
    all_ += ways;
    if (std::abs(sum) >= least_) asFar_ += ways;
  }

  const std::vector<Alike>& groups_;
  double least_;
  std::vector<int> left_;     ///< how many values from here on
  std::vector<double> rest_;  ///< and their sum
  std::vector<double> ways_;
  std::vector<std::size_t> firstWay_;
  double asFar_ = 0.0, all_ = 0.0;
};

SplitP drawnSplits(std::vector<double> values, std::size_t taken, double least) {
  DrawnStream stream;
  int asFar = 0;
  for (int draw = 0; draw < drawnArrangements; ++draw) {
    double sum = 0.0;
    for (std::size_t i = 0; i < taken; ++i) {
      std::swap(values[i], values[i + stream.below(static_cast<std::uint32_t>(values.size() - i))]);
      sum += values[i];
    }
    asFar += std::abs(sum) >= least;
  }
  const DrawnP p = drawnP(asFar, drawnArrangements);
  return {p.pValue, false, p.error};
}

}  // namespace

std::optional<SplitP> labelSplits(const std::vector<double>& one, const std::vector<double>& other) {
  if (one.empty() || other.empty()) throw BadInput("values", "there must be one or more in each group");
  const auto& few = one.size() <= other.size() ? one : other;
  std::vector<double> values = few;
  const auto& many = &few == &one ? other : one;
  values.insert(values.end(), many.begin(), many.end());
  double largest = 0.0;
  for (double value : values) {
    if (!(std::abs(value) <= 1e100)) throw BadInput("values", "must be numbers of a size up to 1e100");
    largest = std::max(largest, std::abs(value));
  }
  if (values.size() > static_cast<std::size_t>(mostSplitValues)) return std::nullopt;
  if (largest == 0.0) return SplitP{1.0, true, 0.0};
  // Around the common mean and scaled: a difference is as far from zero as the sum of either group is.
  for (double& value : values) value /= largest;
  const double mean = std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
  double seen = 0.0, size = 0.0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    values[i] -= mean;
    seen += i < few.size() ? values[i] : 0.0;
    size += std::abs(values[i]);
  }
  const double least = std::abs(seen) - 1e-9 * size;
  const auto groups = alikeIn(values);
  const int taken = static_cast<int>(few.size());
  if (unlikeSplits(groups, taken) > mostArrangements) return drawnSplits(std::move(values), few.size(), least);
  return SplitP{AllSplits(groups, least).shareAsFar(taken), true, 0.0};
}

}  // namespace oddglass::stats
