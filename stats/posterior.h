#pragma once

#include <optional>

namespace oddglass::stats {

/// What a count says about the share of people who tell, pd, uniform on [0, 1] beforehand: right answers are binomial with
/// pc = guess + pd (1 - guess), so pc is a Beta(x + 1, n - x + 1) cut to [guess, 1].
/// guess in [0, 1): at 0 pd is the share of right answers itself. Source: Bayes' rule; truncated beta.
class SharePosterior {
 public:
  /// 0 <= correct <= trials. Empty where the count lies so far below guessing that the posterior has no numbers.
  static std::optional<SharePosterior> of(int correct, int trials, double guess);

  /// The value below which pd lies with probability q, in (0, 1).
  double quantile(double q) const;
  /// P(pd > share), share in [0, 1].
  double above(double share) const;
  /// The density of pd at a share in [0, 1].
  double density(double share) const;
  double mean() const;

 private:
  SharePosterior(double a, double b, double guess, double mass) : a_(a), b_(b), guess_(guess), mass_(mass) {}
  double a_, b_, guess_, mass_;
};

/// Bayes factor of pd uniform on [0, 1] against pd = 0; above 1 speaks for a difference. Empty beyond the range of numbers.
/// guess in (0, 1), 0 <= correct <= trials; 1 without trials. Source: (1 - I_guess(x+1, n-x+1)) / ((n+1)(1-guess)) / binomial mass.
std::optional<double> bayesFactorDifference(int correct, int trials, double guess);

}  // namespace oddglass::stats
