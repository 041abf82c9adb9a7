#pragma once

#include "domain/flight_form.h"
#include "stats/methods.h"

#include <optional>

namespace oddglass::planning {

/// What a share of people in a plan's sentences is a share of.
enum class ShareOf {
  able,            ///< who can give the right answer of this method for sure; the others guess
  ableInTriangle,  ///< who could in a triangle: for methods that have no guessing chance
  preferring,      ///< who prefer one and the same of the two
};
ShareOf shareMeantBy(Method method);

/// The method as the statistics name it. Problem(doesNotFit) for those that have no guessing chance; preference is there.
stats::Method statsMethod(Method method);

/// How big a difference is, as the method's own chances need it: for methods with a guessing chance the share of people able, for a preference
/// the share preferring, for same-different and A-not-A d'.
struct Difference {
  double size = 0.0;
};

/// The difference of a share in 1/1000, 0 to 1000, as `shareMeantBy` reads it.
Difference differenceOfShare(Method method, int sharePm);

/// The difference of a d' of 0 or more; nothing for a preference. Methods can only be compared through d': the share of people able belongs to
/// one method. Source: the psychometric functions of stats/psychometric.h, Abbott's formula.
std::optional<Difference> differenceOfDPrime(Method method, double dPrime);

/// The d' at which a share of people, in 1/1000 and below 1000, is able in this method (for same-different and A-not-A: in a triangle). Not for a preference.
double dPrimeOfShare(Method method, int sharePm);

}  // namespace oddglass::planning
