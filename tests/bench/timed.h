#pragma once

#include <algorithm>
#include <chrono>
#include <concepts>
#include <vector>

namespace oddglass::testing {

/// The median time in milliseconds of so many runs of `work`, which may take the number of its run.
template <class Work>
double medianMs(int runs, Work&& work) {
  std::vector<double> times;
  for (int i = 0; i < runs; ++i) {
    const auto start = std::chrono::steady_clock::now();
    if constexpr (std::invocable<Work, int>) work(i);
    else work();
    times.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
  }
  std::ranges::nth_element(times, times.begin() + runs / 2);
  return times[static_cast<std::size_t>(runs / 2)];
}

}  // namespace oddglass::testing
