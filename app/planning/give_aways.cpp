#include "planning/give_aways.h"

#include "domain/flight_form.h"

#include <algorithm>

namespace oddglass::planning {
namespace {

using Settled = oddglass::WayOut;

bool mayBeAsked(GiveAway check) {
  return check == GiveAway::colour || check == GiveAway::haze || check == GiveAway::foam || check == GiveAway::fizz;
}

bool isAskedOn(const std::vector<SheetItem>& items, GiveAway check) {
  if (check == GiveAway::fizz) return std::ranges::any_of(items, [](const SheetItem& item) { return !item.word.empty(); });
  return std::ranges::any_of(items, [](const SheetItem& item) { return item.part == Part::look; });
}

template <class AnyPlan>
std::optional<GiveAway> unfit(const AnyPlan& plan, const std::vector<SheetItem>& items) {
  if (!plan.giveAways) return std::nullopt;
  int asked = 0;
  for (const auto& [check, way] : *plan.giveAways) {
    const auto ways = waysOf(check, plan.method, plan.lots.size());
    if (std::ranges::find(ways, way) == ways.end()) return check;
    if (way != Settled::ask) continue;
    const bool isAsked = plan.method == Method::sheet ? isAskedOn(items, check) : plan.question == Question::more && namesAThing(plan.method) && ++asked == 1;
    if (!isAsked) return check;
  }
  return std::nullopt;
}

}  // namespace

std::vector<Settled> waysOf(GiveAway check, Method method, std::size_t lots) {
  std::vector<Settled> ways;
  if (check != GiveAway::hadBefore) ways.push_back(Settled::mend);
  if (mayBeAsked(check) && (method == Method::sheet || lots <= 2)) ways.push_back(Settled::ask);
  ways.push_back(Settled::anyMeans);
  return ways;
}

std::optional<GiveAway> firstUnfit(const Draft& draft) { return unfit(draft, draft.sheet.items); }
std::optional<GiveAway> firstUnfit(const Plan& plan) { return unfit(plan, plan.items); }

}  // namespace oddglass::planning
