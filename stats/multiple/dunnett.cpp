#include "stats/multiple/dunnett.h"

#include "stats/check.h"
#include "stats/multiple/quantile.h"
#include "stats/multiple/spread.h"
#include "stats/normal.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

namespace oddglass::stats {
namespace {


/// One load and how many treatments have it.
struct Load {
  double load, rest, count;  ///< rest = sqrt(1 - load^2)
};

/// The treatments given the control: t_i is normal about load_i z with standard deviation rest_i.
class GivenControl {
 public:
  explicit GivenControl(const DunnettPlan& plan) : isTwoSided_(plan.isTwoSided) {
    std::map<double, int> counts;
    for (double load : plan.loads) ++counts[load];
    for (const auto& [load, count] : counts) loads_.push_back({load, std::sqrt((1.0 - load) * (1.0 + load)), static_cast<double>(count)});
    const Load& steepest = loads_.back();
    step_ = std::min(0.22, 0.5 * steepest.rest / std::max(steepest.load, 1e-9)) / (1.0 + std::log(static_cast<double>(plan.loads.size())) / 3.0);
    aboveZero_ = integrated(0.0, &GivenControl::outside);
    belowZero_ = integrated(0.0, &GivenControl::inside);
  }

  double above(double d) const { return std::abs(d) < nothing ? aboveZero_ : integrated(d, &GivenControl::outside); }
  double allBelow(double d) const { return std::abs(d) < nothing ? belowZero_ : integrated(d, &GivenControl::inside); }

 private:
  static constexpr double nothing = 1e-18;  ///< as good as 0 for d

  /// Some treatment passes d, the control being at z.
  double outside(double z, double d) const {
    double logBelow = 0.0;
    for (const Load& each : loads_) {
      double far = normalBelow((each.load * z - d) / each.rest);
      if (isTwoSided_) far += normalBelow((-each.load * z - d) / each.rest);
      logBelow += each.count * std::log1p(-std::min(1.0, far));
    }
    return -std::expm1(logBelow);
  }

  /// None does.
  double inside(double z, double d) const {
    double chance = 1.0;
    for (const Load& each : loads_) {
      const double high = (d - each.load * z) / each.rest, low = (-d - each.load * z) / each.rest;
      const double one = !isTwoSided_ ? normalBelow(high) : z > 0.0 ? normalBelow(high) - normalBelow(low) : normalBelow(-low) - normalBelow(-high);
      chance *= std::pow(std::max(0.0, one), each.count);
    }
    return chance;
  }

  /// The mean over the control, by the trapezoidal rule.
  double integrated(double d, double (GivenControl::*chance)(double, double) const) const {
    const double edge = loads_.back().load * std::min(std::abs(d), 60.0) + 9.5;
    const int half = static_cast<int>(std::ceil(edge / step_));
    // With both sides z and -z are alike.
    double sum = isTwoSided_ ? (this->*chance)(0.0, d) / -2.0 : 0.0;
    for (int i = isTwoSided_ ? 0 : -half; i <= half; ++i) {
      const double z = i * step_;
      sum += std::exp(-z * z / 2.0) * (this->*chance)(z, d);
    }
    return std::min(1.0, (isTwoSided_ ? 2.0 : 1.0) * sum * step_ / std::sqrt(2.0 * std::numbers::pi));
  }

  std::vector<Load> loads_;
  double step_ = 0.1, aboveZero_ = 1.0, belowZero_ = 0.0;
  bool isTwoSided_;
};

void requireDunnettPlan(const DunnettPlan& plan) {
  if (plan.loads.empty() || plan.loads.size() > 500) throw BadInput("treatments", "must be from 1 to 500");
  for (double load : plan.loads)
    if (!(load >= 0.0 && load <= 0.9999995)) throw BadInput("loads", "must be from 0 to below 1");
  if (!(plan.df >= fewestDf)) throw BadInput("df", "must be 0.1 or more");
}

void requireValue(double value, const DunnettPlan& plan) {
  requireDunnettPlan(plan);
  if (!std::isfinite(value)) throw BadInput("value", "must be a number");
  if (plan.isTwoSided && value < 0.0) throw BadInput("value", "must be 0 or more when both sides count");
}

}  // namespace

std::vector<double> equalLoads(int treatments) {
  if (treatments < 1 || treatments > 500) throw BadInput("treatments", "must be from 1 to 500");
  return std::vector<double>(static_cast<std::size_t>(treatments), std::numbers::sqrt2 / 2.0);
}

std::vector<double> loadsOf(double controlSize, const std::vector<double>& sizes) {
  std::vector<double> loads;
  for (double size : sizes) {
    if (!(controlSize >= 1.0 && size >= 1.0) || !std::isfinite(controlSize + size)) throw BadInput("sizes", "must be 1 or more");
    loads.push_back(std::sqrt(size / (size + controlSize)));
  }
  return loads;
}

double dunnettAbove(double value, const DunnettPlan& plan) {
  requireValue(value, plan);
  const GivenControl given(plan);
  // Below zero the chance rises with the estimate, and nothing of it is small.
  if (value < 0.0) return 1.0 - dunnettBelow(value, plan);
  return meanOverSpread(plan.df, plan.loads.size(), false, [&](double s) { return given.above(value * s); });
}

double dunnettBelow(double value, const DunnettPlan& plan) {
  requireValue(value, plan);
  const GivenControl given(plan);
  return meanOverSpread(plan.df, plan.loads.size(), value > 0.0, [&](double s) { return given.allBelow(value * s); });
}

std::optional<double> dunnettCritical(double above, const DunnettPlan& plan) {
  requireOpenShare("above", above);
  requireDunnettPlan(plan);
  return whereUpperTailIs(above, !plan.isTwoSided, [&](double d) { return dunnettAbove(d, plan); },
                          [&](double d) { return dunnettBelow(d, plan); });
}

DunnettTable::DunnettTable(const DunnettPlan& plan) : plan_(plan) {
  requireDunnettPlan(plan);
  if (!plan.isTwoSided) throw BadInput("plan", "must be two-sided");
  const double step = spreadStep(plan.df, plan.loads.size());
  onLadder_ = [given = GivenControl(plan), known = std::map<int, double>(), step](int rung) mutable {
    const auto [at, isNew] = known.try_emplace(rung, 0.0);
    if (isNew) at->second = given.above(std::exp(rung * step));
    return at->second;
  };
}

double DunnettTable::above(double value) const {
  requireValue(value, plan_);
  if (plan_.df >= asGoodAsKnown || value < 1e-300) return dunnettAbove(value, plan_);
  const double step = spreadStep(plan_.df, plan_.loads.size()), place = std::log(value) / step;
  const double nearest = std::round(place);
  return meanOverSpread(plan_.df, plan_.loads.size(), false, [&](double s) { return onLadder_(static_cast<int>(std::lround(std::log(s) / step + place))); }, nearest - place);
}

std::optional<double> DunnettTable::critical(double probability) const {
  requireOpenShare("probability", probability);
  return whereUpperTailIs(probability, false, [&](double d) { return above(d); }, [&](double d) { return dunnettBelow(d, plan_); });
}

}  // namespace oddglass::stats
