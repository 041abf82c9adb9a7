#include "planning/within.h"

#include "domain/problem.h"

#include <charconv>
#include <string>

namespace oddglass::planning {

namespace {

std::string text(double value) {
  char room[32];
  return {room, std::to_chars(room, room + sizeof room, value).ptr};
}

}  // namespace

void requireWithin(const char* argument, double value, double low, double high) {
  if (!(value >= low && value <= high))
    throw Problem(Trouble::outOfRange, argument, {{"text", text(value)}, {"low", text(low)}, {"high", text(high)}});
}

}  // namespace oddglass::planning
