#include "stats/beta_mixture.h"

#include <boost/math/special_functions/binomial.hpp>

#include <cmath>

namespace oddglass::stats {

double betaMoment(int hits, int misses, double mu, double gamma) {
  // B(a + hits, b + misses) / B(a, b) as rising products of a = mu s, b = (1 - mu) s and s = (1 - gamma) / gamma, each factor
  // times gamma / (1 - gamma) or gamma, so that nothing is divided by zero at either end.
  double moment = 1.0;
  if (hits > 0) moment *= mu;
  if (misses > 0) moment *= 1.0 - mu;
  if (hits > 0 && misses > 0) moment *= 1.0 - gamma;
  int below = 1;  // the next factor of the denominator, divided as we go to stay in range
  const auto divide = [&] {
    if (below < hits + misses) {
      moment /= (1.0 - gamma) + below * gamma;
      ++below;
    }
  };
  for (int j = 1; j < hits; ++j) {
    moment *= mu * (1.0 - gamma) + j * gamma;
    divide();
  }
  for (int j = 1; j < misses; ++j) {
    moment *= (1.0 - mu) * (1.0 - gamma) + j * gamma;
    divide();
  }
  while (below < hits + misses) divide();
  return moment;
}

CountMixture::CountMixture(int x, int n, double guess) : x_(x), n_(n), weights_(static_cast<std::size_t>(x) + 1) {
  const auto choose = [](int from, int take) {
    return boost::math::binomial_coefficient<double>(static_cast<unsigned>(from), static_cast<unsigned>(take));
  };
  for (int i = 0; i <= x; ++i)
    weights_[static_cast<std::size_t>(i)] = choose(n, x) * choose(x, i) * std::pow(guess, x - i) * std::pow(1.0 - guess, n - x + i);
}

double CountMixture::probability(double mu, double gamma) const {
  double sum = 0.0;
  for (int known = 0; known <= x_; ++known) sum += part(known, mu, gamma);
  return sum;
}

double CountMixture::part(int known, double mu, double gamma) const {
  return weights_[static_cast<std::size_t>(known)] * betaMoment(known, n_ - x_, mu, gamma);
}

}  // namespace oddglass::stats
