#include "stats/design/incomplete.h"
#include "stats/drawn.h"
#include "stats/error.h"

#include <algorithm>
#include <cstdlib>

namespace oddglass::stats {
namespace {

using Counts = std::vector<std::vector<int>>;

std::size_t index(int value) { return static_cast<std::size_t>(value); }

/// Shares out two positions anew: every block is an edge between the two samples that stand there; walking along circuits, each edge gets the sample it
/// leaves first. Every sample then stands in the two positions equally often, to within one. The walk is drawn.
void shareOut(SampleOrders& orders, int samples, std::size_t first, std::size_t second, DrawnStream& stream) {
  struct End {
    int to;
    std::size_t edge;
  };
  std::vector<std::vector<End>> ends(index(samples) + 1);
  std::vector<int> degree(index(samples), 0);
  std::vector<std::size_t> walk(orders.size());
  for (std::size_t i = 0; i < walk.size(); ++i) walk[i] = i;
  stream.shuffle(walk);
  const auto join = [&](int a, int b, std::size_t edge) {
    ends[index(a)].push_back({b, edge});
    ends[index(b)].push_back({a, edge});
  };
  for (std::size_t i : walk) {
    join(orders[i][first], orders[i][second], i);
    ++degree[index(orders[i][first])], ++degree[index(orders[i][second])];
  }
  // Samples with an odd number of edges are joined to one more point, so that every walk closes.
  std::size_t edges = orders.size();
  for (int sample = 0; sample < samples; ++sample)
    if (degree[index(sample)] % 2) join(sample, samples, edges++);
  std::vector<bool> used(edges, false);
  for (int start = 0; start <= samples; ++start)
    for (int at = start;;) {
      auto& here = ends[index(at)];
      while (!here.empty() && used[here.back().edge]) here.pop_back();
      if (here.empty()) break;
      const End next = here.back();
      used[next.edge] = true;
      if (next.edge < orders.size()) {
        orders[next.edge][first] = at;
        orders[next.edge][second] = next.to;
      }
      at = next.to;
    }
}

bool isUneven(const SampleOrders& orders, int samples, std::size_t first, std::size_t second) {
  std::vector<int> ahead(index(samples), 0);
  for (const auto& order : orders) ++ahead[index(order[first])], --ahead[index(order[second])];
  return std::ranges::any_of(ahead, [](int difference) { return std::abs(difference) > 1; });
}

long long unevenness(const SampleOrders& orders, int samples) {
  Counts before(index(samples), std::vector<int>(index(samples), 0));
  for (const auto& order : orders)
    for (std::size_t i = 1; i < order.size(); ++i) ++before[index(order[i - 1])][index(order[i])];
  long long sum = 0;
  for (const auto& row : before)
    for (int count : row) sum += static_cast<long long>(count) * count;
  return sum;
}

}  // namespace

SampleOrders evenOrders(const Blocks& blocks, int samples) {
  if (blocks.empty()) throw BadInput("blocks", "there are none");
  for (const auto& block : blocks) {
    if (block.size() != blocks[0].size() || block.empty()) throw BadInput("blocks", "must be of one size");
    for (int sample : block)
      if (sample < 0 || sample >= samples || std::ranges::count(block, sample) != 1) throw BadInput("blocks", "hold a sample twice, or one that is not there");
  }
  SampleOrders orders = blocks;
  const std::size_t size = blocks[0].size();
  DrawnStream stream;
  for (bool hasMoved = true; hasMoved;) {
    hasMoved = false;
    for (std::size_t first = 0; first < size; ++first)
      for (std::size_t second = first + 1; second < size; ++second)
        if (isUneven(orders, samples, first, second)) {
          shareOut(orders, samples, first, second, stream);
          hasMoved = true;
        }
  }
  if (size < 2) return orders;
  long long here = unevenness(orders, samples);
  const int rounds = static_cast<int>(400'000 / (orders.size() * size + 100));
  for (int round = 0; round < rounds; ++round) {
    const std::size_t first = stream.below(static_cast<std::uint32_t>(size)), second = (first + 1 + stream.below(static_cast<std::uint32_t>(size - 1))) % size;
    SampleOrders other = orders;
    shareOut(other, samples, first, second, stream);
    const long long there = unevenness(other, samples);
    if (there > here) continue;
    here = there;
    orders = std::move(other);
  }
  return orders;
}

}  // namespace oddglass::stats
