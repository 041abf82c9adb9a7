#pragma once

#include <functional>
#include <optional>
#include <vector>

namespace oddglass::stats {

/// Several treatments against one control: the largest of the t values, which share the control and the estimate of the standard deviation
/// on `df` degrees of freedom (at least 0.1, whole or not). The correlation of t_i and t_j is load_i load_j, each load in [0, 1), one for
/// each treatment (1 to 500). BadInput otherwise. Source: Dunnett 1955 and 1964; integrated over the control and over the estimate with
/// positive terms only, so that small probabilities keep nine digits or more.
struct DunnettPlan {
  std::vector<double> loads;
  double df = 0.0;
  bool isTwoSided = true;
};

/// Groups of one size: every load is sqrt(1/2).
std::vector<double> equalLoads(int treatments);
/// Groups of other sizes than the control: load_i = sqrt(n_i / (n_i + n_control)). Sizes are 1 or more.
std::vector<double> loadsOf(double controlSize, const std::vector<double>& sizes);

/// P(largest t > value), or of the largest |t|, value 0 or more then.
double dunnettAbove(double value, const DunnettPlan& plan);
/// P(largest t <= value), or of the largest |t|.
double dunnettBelow(double value, const DunnettPlan& plan);
/// The value that is passed with probability `above`, strictly between 0 and 1; empty where it lies beyond 1e303.
std::optional<double> dunnettCritical(double above, const DunnettPlan& plan);

/// The same two-sided figures for one plan and many values: the integrals over the control lie on one ladder of values and are done once, since the
/// trapezoidal rule over the estimate may start anywhere. The figures agree with `dunnettAbove` to 1e-12. Not for several threads at once.
class DunnettTable {
 public:
  /// `plan` as above, two-sided.
  explicit DunnettTable(const DunnettPlan& plan);
  /// P(largest |t| > value), value 0 or more.
  double above(double value) const;
  std::optional<double> critical(double probability) const;

 private:
  DunnettPlan plan_;
  std::function<double(int)> onLadder_;
};

}  // namespace oddglass::stats
