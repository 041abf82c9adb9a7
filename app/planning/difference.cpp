#include "planning/difference.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "stats/psychometric.h"

namespace oddglass::planning {

ShareOf shareMeantBy(Method method) {
  if (!formOf(method).hasRight) return ShareOf::preferring;
  return hasGuessing(method) ? ShareOf::able : ShareOf::ableInTriangle;
}

stats::Method statsMethod(Method method) {
  if (!formOf(method).saysSame) return stats::methodNamed(nameOf(method));
  throw Problem(Trouble::doesNotFit, "method", {{"what", std::string(nameOf(method))}});
}

Difference differenceOfShare(Method method, int sharePm) {
  if (shareMeantBy(method) == ShareOf::ableInTriangle) return {dPrimeOfShare(method, sharePm)};
  return {sharePm / 1000.0};
}

std::optional<Difference> differenceOfDPrime(Method method, double dPrime) {
  switch (shareMeantBy(method)) {
    case ShareOf::preferring: return std::nullopt;
    case ShareOf::ableInTriangle: return Difference{dPrime};
    case ShareOf::able: break;
  }
  return Difference{stats::shareOf(statsMethod(method), stats::rightAnswers(statsMethod(method), dPrime))};
}

double dPrimeOfShare(Method method, int sharePm) {
  const stats::Method scale = shareMeantBy(method) == ShareOf::able ? statsMethod(method) : stats::Method::triangle;
  return stats::dPrimeOf(scale, stats::rightAnswersOfShare(scale, sharePm / 1000.0)).value_or(0.0);
}

}  // namespace oddglass::planning
