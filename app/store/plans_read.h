#pragma once

#include "domain/plan.h"

#include <string>
#include <unordered_map>
#include <vector>

namespace oddglass::store {

/// Reads many sealed plans without their cups. Evenings of one brewer ask the same questions of the same drinks again and again: drinks and questions that stood
/// word for word in an earlier plan are taken from there.
class PlansRead {
 public:
  /// The plan in its canonical text, with no cup in it. Problem brokenReference as `planFrom`.
  Plan read(std::string text);

 private:
  std::unordered_map<std::string, std::vector<PlannedLot>> lots_;
  std::unordered_map<std::string, std::vector<SheetItem>> items_;
};

}  // namespace oddglass::store
