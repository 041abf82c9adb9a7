#include "domain/flight_form.h"

#include "domain/names.h"

namespace oddglass {

const std::vector<Method>& comparingMethods() {
  static const std::vector<Method> all = [] {
    std::vector<Method> methods = allOf<Method>();
    std::erase(methods, Method::sheet);
    return methods;
  }();
  return all;
}

std::vector<SheetItem> sheetOf(Method method, bool mayHaveNone, bool alsoPrefer) {
  const FlightForm form = formOf(method);
  std::vector<SheetItem> items;
  const auto ask = [&](ItemKind kind, bool isRequired, std::optional<int> low = std::nullopt, std::optional<int> high = std::nullopt) {
    items.push_back({{static_cast<int>(items.size()) + 1}, kind, isRequired, low, high});
  };
  for (int pick = 0; pick < form.picks; ++pick) ask(ItemKind::choose, true);
  if (form.saysSame) ask(ItemKind::same, true, 1, 2);
  // 0 is "no preference"; where it may not be said, the lowest answer is a code.
  if (!form.hasRight) ask(ItemKind::prefer, true, mayHaveNone ? 0 : 100, 9999);
  ask(ItemKind::sureness, true, 1, 3);
  if (form.hasRight) ask(ItemKind::clue, true, 1, 6);
  if (alsoPrefer) ask(ItemKind::prefer, true, mayHaveNone ? 0 : 100, 9999);
  ask(ItemKind::words, false);
  return items;
}

}  // namespace oddglass
