#include "stats/design/balance.h"

#include "stats/error.h"

#include <algorithm>
#include <set>

namespace oddglass::stats {

Balance balanceOf(const SampleOrders& orders, int samples) {
  if (samples < 1 || samples > 1000) throw BadInput("samples", "must be from 1 to 1000");
  std::size_t longest = 0;
  for (const auto& order : orders) {
    longest = std::max(longest, order.size());
    for (const int sample : order)
      if (sample < 0 || sample >= samples) throw BadInput("orders", "hold a sample that does not exist");
  }
  const auto table = [&](std::size_t columns) { return std::vector<std::vector<int>>(static_cast<std::size_t>(samples), std::vector<int>(columns, 0)); };
  const auto square = table(static_cast<std::size_t>(samples));
  Balance balance{table(longest), square, square, square};
  for (const auto& order : orders) {
    for (std::size_t i = 0; i < order.size(); ++i) {
      const auto here = static_cast<std::size_t>(order[i]);
      ++balance.position[here][i];
      if (i >= 1) ++balance.carryover[static_cast<std::size_t>(order[i - 1])][here];
      if (i >= 2) ++balance.second[static_cast<std::size_t>(order[i - 2])][here];
    }
    const std::set<int> held(order.begin(), order.end());
    for (const int a : held)
      for (const int b : held) ++balance.pairs[static_cast<std::size_t>(a)][static_cast<std::size_t>(b)];
  }
  return balance;
}

}  // namespace oddglass::stats
