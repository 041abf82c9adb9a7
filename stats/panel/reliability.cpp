#include "stats/panel/reliability.h"

#include "stats/check.h"
#include "stats/estimated.h"

#include <cmath>

namespace oddglass::stats {
namespace {

std::optional<double> ratio(double above, double below) {
  if (!(below > 0.0)) return std::nullopt;
  const double value = above / below;
  return std::isfinite(value) ? std::optional(value) : std::nullopt;
}

std::optional<double> ofMany(const std::optional<double>& single, double k) { return single ? ratio(k * *single, 1.0 + (k - 1.0) * *single) : std::nullopt; }

/// Limits of ICC(2,1) at an estimate below 1. Where the Satterthwaite df go to 0 the F point grows beyond all numbers, and the limits go to their bounds.
Estimate withLimits(const TwoWay& ms, double icc, double level) {
  const double k = ms.tasters, n = ms.samples, tail = (1.0 - level) / 2.0;
  const double a = k * icc * ms.taster, b = (n * (1.0 + (k - 1.0) * icc) - k * icc) * ms.residual;
  const double df = (k - 1.0) * (n - 1.0) * (a + b) * (a + b) / ((n - 1.0) * a * a + b * b);
  const double between = k * ms.taster + (k * n - k - n) * ms.residual;
  const double down = fisherPoint(tail, n - 1.0, df), up = fisherPoint(tail, df, n - 1.0);
  Estimate found{icc, {}, {}};
  found.low = std::isfinite(down) ? ratio(n * (ms.sample - down * ms.residual), down * between + n * ms.sample) : ratio(-n * ms.residual, between);
  found.high = std::isfinite(up) ? ratio(n * (up * ms.sample - ms.residual), between + n * up * ms.sample) : std::optional(1.0);
  return found;
}

}  // namespace

TwoWay twoWay(const Eigen::MatrixXd& table) {
  if (table.rows() < 2) throw BadInput("sample", "a comparison needs two samples or more");
  if (table.cols() < 2) throw BadInput("taster", "agreement needs two tasters or more");
  if (!table.allFinite()) throw BadInput("response", "must be finite numbers");
  const double n = static_cast<double>(table.rows()), k = static_cast<double>(table.cols()), mean = table.mean();
  const Eigen::VectorXd samples = table.rowwise().mean().array() - mean;
  const Eigen::RowVectorXd tasters = table.colwise().mean().array() - mean;
  const Eigen::MatrixXd rest = ((table.colwise() - samples).rowwise() - tasters).array() - mean;
  // Sums of squares that are rounding only: 1e-12 of the largest score, in every cell.
  const double size = table.cwiseAbs().maxCoeff(), nothing = 1e-24 * size * size * n * k;
  const auto meanSquare = [&](double squares, double df) { return squares <= nothing ? 0.0 : squares / df; };
  return {static_cast<int>(n), static_cast<int>(k), meanSquare(k * samples.squaredNorm(), n - 1.0), meanSquare(n * tasters.squaredNorm(), k - 1.0),
          meanSquare(rest.squaredNorm(), (n - 1.0) * (k - 1.0))};
}

Reliability reliability(const TwoWay& ms, double level) {
  requireOpenShare("level", level);
  if (ms.samples < 2) throw BadInput("sample", "a comparison needs two samples or more");
  if (ms.tasters < 2) throw BadInput("taster", "agreement needs two tasters or more");
  const double k = ms.tasters, n = ms.samples, apart = ms.sample - ms.residual;
  Reliability found;
  const auto single = ratio(apart, ms.sample + (k - 1.0) * ms.residual + k * (ms.taster - ms.residual) / n);
  found.ofPanel.estimate = ratio(apart, ms.sample + (ms.taster - ms.residual) / n);
  found.alpha = ratio(apart, ms.sample);
  if (single && *single < 1.0) {
    found.single = withLimits(ms, *single, level);
    if (found.ofPanel.estimate) {
      found.ofPanel.low = ofMany(found.single.low, k);
      found.ofPanel.high = ofMany(found.single.high, k);
    }
  } else {
    found.single.estimate = single;
  }
  for (const auto& part : {found.single.estimate, found.single.low, found.single.high, found.ofPanel.estimate, found.ofPanel.low, found.ofPanel.high, found.alpha})
    if (!part) found.why = Reason::noSpread;
  return found;
}

}  // namespace oddglass::stats
