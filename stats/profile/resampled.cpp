#include "stats/profile/resampled.h"

#include "stats/check.h"
#include "stats/drawn.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

constexpr int fewestToResample = 20, mostDraws = 1'000'000;
constexpr double mostNumbers = 2e8;

/// The value below which this share of the sorted draws lies, between neighbours by a straight line.
double percentile(std::vector<double>& draws, double share) {
  const double place = share * (static_cast<double>(draws.size()) - 1.0);
  const auto below = draws.begin() + static_cast<std::ptrdiff_t>(std::floor(place));
  std::nth_element(draws.begin(), below, draws.end());
  if (below + 1 == draws.end()) return *below;
  return *below + (place - std::floor(place)) * (*std::min_element(below + 1, draws.end()) - *below);
}

}  // namespace

ResampledMeans resampledMeans(const ProfileCells& cells, int draws) {
  if (draws < 1 || draws > mostDraws) throw BadInput("draws", "must be from 1 to 1000000");
  if (cells.tasters < 2) return {{}, Reason::oneTaster};
  const auto samples = static_cast<Eigen::Index>(cells.samples), columns = samples * static_cast<Eigen::Index>(cells.descriptors.size());
  for (const auto& each : cells.descriptors)
    if (each.size() != static_cast<std::size_t>(cells.tasters) * static_cast<std::size_t>(cells.samples)) return {{}, Reason::emptyCell};
  if (static_cast<double>(columns) * draws > mostNumbers) return {{}, Reason::tooLarge};
  Eigen::MatrixXd said(cells.tasters, columns);
  for (std::size_t d = 0; d < cells.descriptors.size(); ++d)
    for (const Cell& cell : cells.descriptors[d]) said(cell.row, static_cast<Eigen::Index>(d) * samples + cell.column) = cell.mean;
  // How often each taster was drawn, over their number: the means are one product of matrices.
  Eigen::MatrixXd weights = Eigen::MatrixXd::Zero(draws, cells.tasters);
  DrawnStream stream;
  for (Eigen::Index draw = 0; draw < draws; ++draw)
    for (int i = 0; i < cells.tasters; ++i) weights(draw, static_cast<Eigen::Index>(stream.below(static_cast<std::uint32_t>(cells.tasters)))) += 1.0 / cells.tasters;
  return {weights * said, {}};
}

ResampledProfile resampledProfile(const ProfileCells& cells, int draws, double level) {
  requireOpenShare("level", level);
  if (cells.tasters < fewestToResample) return {{}, Reason::fewTasters};
  const ResampledMeans drawn = resampledMeans(cells, draws);
  ResampledProfile found{{}, drawn.why};
  if (!drawn.means) return found;
  for (Eigen::Index column = 0; column < drawn.means->cols(); ++column) {
    const int descriptor = static_cast<int>(column) / cells.samples, sample = static_cast<int>(column) % cells.samples;
    std::vector<double> values(drawn.means->col(column).data(), drawn.means->col(column).data() + drawn.means->rows());
    const double low = percentile(values, (1.0 - level) / 2.0), high = percentile(values, (1.0 + level) / 2.0);
    const Eigen::VectorXd means = *panelMeans(cells.descriptors[static_cast<std::size_t>(descriptor)], cells.tasters, cells.samples).samples;
    found.means.push_back({descriptor, sample, means(sample), low, high});
  }
  return found;
}

}  // namespace oddglass::stats
