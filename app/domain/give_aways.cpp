#include "domain/give_aways.h"

#include <algorithm>

namespace oddglass {
namespace {

template <class Is>
bool any(const Plan& plan, Is&& is) {
  return plan.giveAways && std::ranges::any_of(*plan.giveAways, is);
}

}  // namespace

bool byAnyMeans(const Plan& plan) {
  return any(plan, [](const auto& each) { return each.second == WayOut::anyMeans && each.first != GiveAway::hadBefore; });
}

bool lookMayTell(const Plan& plan) {
  return byAnyMeans(plan) || (!plan.sheet && any(plan, [](const auto& each) { return each.second == WayOut::ask; }));
}

}  // namespace oddglass
