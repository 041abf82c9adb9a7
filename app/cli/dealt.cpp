#include "cli/dealt.h"

#include "canon/digest.h"

#include <numeric>

namespace oddglass::cli {

blinding::Seed seedOf(const Given& typed) {
  if (const auto bytes = canon::fromHex<32>(typed.text())) return *bytes;
  return canon::sha256({canon::bytesOf(typed.text())});
}

stats::SampleOrders dealt(const std::vector<stats::SampleOrders>& blocks, int tasters, int samples, bool renamed, blinding::Stream& stream) {
  stats::SampleOrders all;
  std::vector<int> names(static_cast<std::size_t>(samples));
  std::iota(names.begin(), names.end(), 0);
  while (static_cast<int>(all.size()) < tasters) {
    if (renamed) stream.shuffle(names);
    for (stats::SampleOrders block : blocks) {
      stream.shuffle(block);
      for (std::vector<int>& row : block) {
        if (static_cast<int>(all.size()) == tasters) break;
        for (int& sample : row) sample = names[static_cast<std::size_t>(sample)];
        all.push_back(std::move(row));
      }
    }
  }
  return all;
}

}  // namespace oddglass::cli
