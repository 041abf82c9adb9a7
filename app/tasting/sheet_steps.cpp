#include "tasting/sheet_steps.h"

#include "canon/digest.h"

#include <algorithm>
#include <tuple>

namespace oddglass::tasting {
namespace {

int turnOf(const SheetItem& item) {
  switch (item.kind) {
    case ItemKind::check: return 1;
    case ItemKind::line:
    case ItemKind::magnitude:
    case ItemKind::distance: return 2;
    case ItemKind::justRight: return 3;
    case ItemKind::worst: return 4;
    case ItemKind::changeOne: return 5;
    case ItemKind::words: return 6;
    case ItemKind::behaviour: return 7;
    case ItemKind::liking: return 8;
    case ItemKind::rank: return 9;
    case ItemKind::split: return 10;
    default: return 11;
  }
}

// A number that says nothing but which question comes before which at this place.
canon::Digest lotOf(const SessionId& session, Place place, Item item) {
  const std::string text = "order " + session.text + ' ' + std::to_string(place.value) + ' ' + std::to_string(item.value);
  return canon::sha256({canon::bytesOf(text)});
}

std::vector<Item> asked(const Flight& flight, const SessionId& session, Part part, bool perCup) {
  std::vector<const SheetItem*> items;
  for (const SheetItem& item : flight.items)
    if (perCup ? item.part == part && item.perCup : item.part == Part::last || !item.perCup) items.push_back(&item);
  std::ranges::sort(items, {}, [&](const SheetItem* item) { return std::tuple(turnOf(*item), lotOf(session, flight.place, item->item)); });
  std::vector<Item> order;
  for (const SheetItem* item : items) order.push_back(item->item);
  return order;
}

}  // namespace

std::vector<SheetStep> sheetSteps(const Flight& flight, const SessionId& session) {
  std::vector<int> cups;
  for (std::size_t i = 0; i < flight.cups.size(); ++i)
    if (!flight.cups[i].isMarked) cups.push_back(static_cast<int>(i));
  std::vector<SheetStep> steps;
  for (Part part : {Part::look, Part::smell})
    if (const auto items = asked(flight, session, part, true); !items.empty())
      for (int cup : cups) steps.push_back({SheetStepKind::cup, part, cup, items, 0});
  const auto main = asked(flight, session, Part::main, true), late = asked(flight, session, Part::late, true);
  for (std::size_t i = 0; i < cups.size() && (!main.empty() || !late.empty()); ++i) {
    if (i > 0 && flight.pauseSeconds > 0) steps.push_back({SheetStepKind::pause, Part::main, cups[i], {}, flight.pauseSeconds});
    steps.push_back({SheetStepKind::cup, Part::main, cups[i], main, 0});
    if (late.empty()) continue;
    steps.push_back({SheetStepKind::swallow, Part::late, cups[i], {}, lateAfterSeconds});
    steps.push_back({SheetStepKind::cup, Part::late, cups[i], late, 0});
  }
  if (const auto items = asked(flight, session, Part::last, false); !items.empty()) steps.push_back({SheetStepKind::together, Part::last, std::nullopt, items, 0});
  return steps;
}

}  // namespace oddglass::tasting
