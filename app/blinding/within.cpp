#include "blinding/within.h"

#include "domain/problem.h"

#include <string>

namespace oddglass::blinding {

void needWithin(int value, int low, int high, const char* argument) {
  if (value < low || value > high)
    throw Problem(Trouble::outOfRange, argument, {{"text", std::to_string(value)}, {"low", std::to_string(low)}, {"high", std::to_string(high)}});
}

}  // namespace oddglass::blinding
