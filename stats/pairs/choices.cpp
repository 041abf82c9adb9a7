#include "stats/pairs/choices.h"

#include "stats/error.h"

#include <map>

namespace oddglass::stats {

std::vector<PairCount> countPairs(const std::vector<PairedChoice>& choices, int samples) {
  if (samples < 2) throw BadInput("samples", "a comparison needs two samples or more");
  if (choices.empty()) throw BadInput("choices", "there are no answers");
  std::map<std::pair<int, int>, PairCount> counts;
  for (const PairedChoice& each : choices) {
    if (each.left < 0 || each.left >= samples) throw BadInput("left", "holds a sample that is not there");
    if (each.right < 0 || each.right >= samples) throw BadInput("right", "holds a sample that is not there");
    if (each.left == each.right) throw BadInput("right", "must be another sample than the left one");
    PairCount& count = counts[{each.left, each.right}];
    count.left = each.left;
    count.right = each.right;
    (each.came == Choice::left ? count.leftWins : each.came == Choice::right ? count.rightWins : count.ties) += 1.0;
  }
  std::vector<PairCount> list;
  for (const auto& [pair, count] : counts) list.push_back(count);
  return list;
}

}  // namespace oddglass::stats
