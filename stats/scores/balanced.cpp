#include "stats/scores/balanced.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace oddglass::stats {

std::optional<BalancedTable> balancedTable(const ScoreRows& rows) {
  const int samples = rows.sample.levels, tasters = rows.taster.levels;
  const std::size_t n = rows.response.size(), cells = static_cast<std::size_t>(samples) * static_cast<std::size_t>(tasters);
  if (n % cells != 0) return std::nullopt;
  std::vector<double> cell(cells);
  std::vector<std::size_t> count(cells);
  const auto at = [&](std::size_t row) { return static_cast<std::size_t>(rows.sample.of[row]) * static_cast<std::size_t>(tasters) + static_cast<std::size_t>(rows.taster.of[row]); };
  const double centre = std::accumulate(rows.response.begin(), rows.response.end(), 0.0) / static_cast<double>(n);
  double size = 0.0;
  for (std::size_t row = 0; row < n; ++row) {
    cell[at(row)] += rows.response[row] - centre;
    ++count[at(row)];
    size += rows.response[row] * rows.response[row];
  }
  const std::size_t rounds = n / cells;
  if (std::ranges::any_of(count, [&](std::size_t each) { return each != rounds; })) return std::nullopt;
  BalancedTable table{samples, tasters, static_cast<int>(rounds), {}};
  for (double& each : cell) each /= static_cast<double>(rounds);
  std::vector<double> ofSample(static_cast<std::size_t>(samples)), ofTaster(static_cast<std::size_t>(tasters));
  for (std::size_t s = 0; s < ofSample.size(); ++s)
    for (std::size_t t = 0; t < ofTaster.size(); ++t) {
      ofSample[s] += cell[s * ofTaster.size() + t] / tasters;
      ofTaster[t] += cell[s * ofTaster.size() + t] / samples;
    }
  for (double each : ofSample) {
    table.means.push_back(centre + each);
    table.ofSamples += each * each * tasters * static_cast<double>(rounds);
  }
  for (double each : ofTaster) table.ofTasters += each * each * samples * static_cast<double>(rounds);
  for (std::size_t s = 0; s < ofSample.size(); ++s)
    for (std::size_t t = 0; t < ofTaster.size(); ++t) table.ofInteraction += std::pow(cell[s * ofTaster.size() + t] - ofSample[s] - ofTaster[t], 2) * static_cast<double>(rounds);
  for (std::size_t row = 0; row < n; ++row) table.ofResidual += std::pow(rows.response[row] - centre - cell[at(row)], 2);
  for (double* each : {&table.ofSamples, &table.ofTasters, &table.ofInteraction, &table.ofResidual})
    if (*each <= 1e-26 * size) *each = 0.0;
  return table;
}

}  // namespace oddglass::stats
