#include "stats/binomial_masses.h"

#include "stats/binomial.h"
#include "stats/check.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {

std::vector<double> binomialMasses(int trials, double p) {
  requireTrials("trials", trials);
  requireShare("p", p);
  std::vector<double> masses(static_cast<std::size_t>(trials) + 1, 0.0);
  const int likeliest = std::min(trials, static_cast<int>(std::floor((trials + 1.0) * p)));
  masses[static_cast<std::size_t>(likeliest)] = binomialMass(likeliest, trials, p);
  if (p == 0.0 || p == 1.0) return masses;
  constexpr double nothing = 1e-290;  // numbers below the normal range are worked with very slowly
  const double odds = p / (1.0 - p);
  for (int k = likeliest + 1; k <= trials && masses[static_cast<std::size_t>(k) - 1] > nothing; ++k)
    masses[static_cast<std::size_t>(k)] = masses[static_cast<std::size_t>(k) - 1] * odds * (trials - k + 1.0) / k;
  for (int k = likeliest - 1; k >= 0 && masses[static_cast<std::size_t>(k) + 1] > nothing; --k)
    masses[static_cast<std::size_t>(k)] = masses[static_cast<std::size_t>(k) + 1] * (k + 1.0) / (odds * (trials - k));
  return masses;
}

std::vector<double> upperTails(const std::vector<double>& masses) {
  std::vector<double> tails(masses.size() + 1, 0.0);
  for (std::size_t k = masses.size(); k-- > 0;) tails[k] = tails[k + 1] + masses[k];
  return tails;
}

}  // namespace oddglass::stats
