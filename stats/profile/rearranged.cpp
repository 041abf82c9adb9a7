#include "stats/profile/rearranged.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>

namespace oddglass::stats {
namespace {

constexpr std::size_t width = 8;
using Lanes = Eigen::Array<double, static_cast<int>(width), 1>;

/// Up to eight pairs side by side. The sum of products of W with a rearranged V is minus that of W's entries above the diagonal with the squared distances of V,
/// v_ii + v_jj - 2 v_ij, since the rows of W sum to 0: nothing to do on the diagonal.
class Block {
 public:
  Block(const std::vector<Likeness>& pairs, std::size_t first, int n) : n_(n), products_(n * n, Lanes::Zero()), distances_(n * n, Lanes::Zero()) {
    used_ = std::min(width, pairs.size() - first);
    for (std::size_t lane = 0; lane < used_; ++lane) {
      const Eigen::MatrixXd &one = pairs[first + lane].one, &other = pairs[first + lane].other;
      const auto l = static_cast<Eigen::Index>(lane);
      for (int i = 0; i < n; ++i)
        for (int j = 0; j < n; ++j) {
          products_[at(i, j)](l) = -one(i, j);
          distances_[at(i, j)](l) = other(i, i) + other(j, j) - 2.0 * other(i, j);
        }
      needed_(l) = (one.array() * other.array()).sum() - 1e-10 * one.norm() * other.norm();
    }
  }

  std::size_t used() const { return used_; }
  std::int64_t reached(std::size_t lane) const { return reached_[lane]; }

  void lookAt(const std::uint8_t* order) {
    Lanes sum = Lanes::Zero();
    for (int i = 1; i < n_; ++i) sum += row(i, order);
    note(sum);
  }

  void lookAtAll() {
    std::vector<std::uint8_t> order(static_cast<std::size_t>(n_));
    place(0, (1u << n_) - 1u, Lanes::Zero(), order.data());
  }

 private:
  std::size_t at(int i, int j) const { return static_cast<std::size_t>(i * n_ + j); }

  /// What the i-th place adds to those before it.
  Lanes row(int i, const std::uint8_t* order) const {
    Lanes sum = Lanes::Zero();
    for (int j = 0; j < i; ++j) sum += products_[at(i, j)] * distances_[at(order[i], order[j])];
    return sum;
  }

  void note(const Lanes& sum) {
    for (std::size_t lane = 0; lane < width; ++lane) reached_[lane] += sum(static_cast<Eigen::Index>(lane)) >= needed_(static_cast<Eigen::Index>(lane));
  }

  void place(int depth, unsigned free, const Lanes& before, std::uint8_t* order) {
    if (depth == n_) return note(before);
    for (unsigned left = free; left != 0; left &= left - 1) {
      order[depth] = static_cast<std::uint8_t>(__builtin_ctz(left));
      place(depth + 1, free & ~(1u << order[depth]), before + row(depth, order), order);
    }
  }

  int n_;
  std::size_t used_ = 0;
  std::vector<Lanes> products_, distances_;
  Lanes needed_ = Lanes::Constant(std::numeric_limits<double>::infinity());
  std::int64_t reached_[width] = {};
};

/// The drawn orders, one after another: the same for every block.
std::vector<std::uint8_t> drawnOrders(int n) {
  std::vector<std::uint8_t> order(static_cast<std::size_t>(n)), all;
  std::iota(order.begin(), order.end(), std::uint8_t{0});
  all.reserve(static_cast<std::size_t>(n) * drawnArrangements);
  DrawnStream stream;
  for (int draw = 0; draw < drawnArrangements; ++draw) {
    stream.shuffle(order);
    all.insert(all.end(), order.begin(), order.end());
  }
  return all;
}

}  // namespace

std::vector<DrawnP> asLikeRearranged(const std::vector<Likeness>& pairs) {
  if (pairs.empty()) return {};
  const int n = static_cast<int>(pairs.front().one.rows());
  const double arrangements = std::tgamma(n + 1.0);
  const bool isCounted = arrangements <= mostArrangements;
  const std::vector<std::uint8_t> orders = isCounted ? std::vector<std::uint8_t>() : drawnOrders(n);
  std::vector<DrawnP> found;
  for (std::size_t first = 0; first < pairs.size(); first += width) {
    Block block(pairs, first, n);
    if (isCounted) block.lookAtAll();
    for (auto order = orders.data(); order != orders.data() + orders.size(); order += n) block.lookAt(order);
    for (std::size_t lane = 0; lane < block.used(); ++lane) {
      if (isCounted) found.push_back({static_cast<double>(block.reached(lane)) / std::round(arrangements), 0.0});
      else found.push_back(drawnP(static_cast<int>(block.reached(lane)), drawnArrangements));
    }
  }
  return found;
}

}  // namespace oddglass::stats
