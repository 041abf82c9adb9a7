#include "planning/recommend.h"

#include <algorithm>

namespace oddglass::planning {

Recommendation recommend(Question question, const Setup& setup) {
  Recommendation result;
  switch (question) {
    case Question::differ: result = {Method::triangle, {Because::natureUnknown, Because::fewerCups}}; break;
    case Question::more: result = {Method::pair, {}}; break;
    case Question::prefer: result = {Method::preference, {}}; break;
  }
  if (std::any_of(setup.lots.begin(), setup.lots.end(), [](const SetupLot& lot) { return lot.abvBp.value_or(0) >= 2000; }))
    result.because.push_back(Because::strong);
  return result;
}

}  // namespace oddglass::planning
