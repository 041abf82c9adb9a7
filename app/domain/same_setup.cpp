#include "domain/same_setup.h"

#include <algorithm>

namespace oddglass {
namespace {

// A limit is set for one evening; what is asked stays comparable without it.
bool asksTheSame(const SheetItem& a, const SheetItem& b) { return a.kind == b.kind && a.part == b.part && a.word == b.word; }

}  // namespace

int cupsAtOnceOf(const Plan& plan) {
  return plan.sheet && !plan.sheet->orders.empty() ? static_cast<int>(plan.sheet->orders.front().size()) : 0;
}

std::vector<SetupPart> setupDifferences(const Plan& before, const Plan& now) {
  std::vector<SetupPart> parts;
  const auto differs = [&](bool is, SetupPart part) {
    if (is) parts.push_back(part);
  };
  const auto sheetOf = [](const Plan& plan) { return plan.sheet.value_or(SheetPlan{}); };
  differs(before.method != now.method || before.question != now.question, SetupPart::method);
  differs(before.sheet.has_value() && now.sheet.has_value() && !std::ranges::equal(before.items, now.items, asksTheSame), SetupPart::sheet);
  differs(before.cupMl != now.cupMl, SetupPart::cupMl);
  differs(before.roundsEach() != now.roundsEach(), SetupPart::rounds);
  differs(cupsAtOnceOf(before) != cupsAtOnceOf(now), SetupPart::cupsAtOnce);
  differs(sheetOf(before).pauseSeconds != sheetOf(now).pauseSeconds, SetupPart::pause);
  differs(sheetOf(before).cleanser != sheetOf(now).cleanser, SetupPart::cleanser);
  differs(before.ceilingGrams != now.ceilingGrams, SetupPart::ceiling);
  differs(before.marked != now.marked, SetupPart::markedCup);
  differs(sheetOf(before).hasDuplicate != sheetOf(now).hasDuplicate, SetupPart::duplicate);
  differs(before.serving.vessel != now.serving.vessel, SetupPart::vessel);
  differs(before.serving.temperatureC != now.serving.temperatureC, SetupPart::temperature);
  differs(before.serving.mouthful != now.serving.mouthful, SetupPart::mouthful);
  return parts;
}

}  // namespace oddglass
