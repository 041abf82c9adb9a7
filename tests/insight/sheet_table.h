#pragma once

#include "domain/revealed.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace oddglass::testing {

/// A revealed score sheet made by hand: everybody gets the lots in the order of the plan, one flight each round.
struct SheetTable {
  RevealedSession session;

  explicit SheetTable(int lots, std::vector<LotRole> roles = {}) {
    Plan& plan = session.plan;
    plan.question = Question::lacks;
    plan.method = Method::sheet;
    plan.sheet.emplace();
    for (int lot = 1; lot <= lots; ++lot) {
      PlannedLot planned;
      planned.slot = {lot};
      planned.beverageName = "Drink " + std::to_string(lot);
      planned.lotName = "bottled";
      if (static_cast<std::size_t>(lot) <= roles.size()) planned.role = roles[static_cast<std::size_t>(lot - 1)];
      plan.lots.push_back(planned);
    }
  }

  /// Adds a question and gives its number.
  Item ask(ItemKind kind, const std::string& word = {}, std::optional<int> limit = std::nullopt, bool isMain = false) {
    SheetItem item;
    item.kind = kind;
    item.word = word;
    item.limit = limit;
    item.isMain = isMain;
    if (kind == ItemKind::rank || kind == ItemKind::split) item.part = Part::last;
    auto items = session.plan.items;
    items.push_back(item);
    session.plan.items = numbered(items, static_cast<int>(session.plan.lots.size()));
    return session.plan.items.back().item;
  }

  /// The flight of a place in a round, with a cup of each of these lots from left to right (all lots when left out).
  PanelFlight& flight(int place, int round = 1, std::vector<int> lots = {}) {
    for (PanelFlight& each : session.panel)
      if (each.place == Place{place} && each.round == Round{round}) return each;
    if (lots.empty())
      for (const PlannedLot& lot : session.plan.lots) lots.push_back(lot.slot.value);
    RevealedFlight made;
    made.place = {place};
    made.round = {round};
    made.lockedAt = {place * 10 + round};
    for (int lot : lots) {
      made.drawn.push_back({lot});
      made.poured.push_back(Slot{lot});
    }
    session.plan.places = std::max(session.plan.places, place);
    session.plan.panelPlanned = session.plan.places;
    session.plan.rounds = std::max(session.plan.rounds, round);
    session.panel.emplace_back(made);
    return session.panel.back();
  }

  void say(int place, Item item, int cup, int value, int round = 1) { flight(place, round).replies.push_back({item, Position{cup}, value, {}}); }
  void write(int place, Item item, int cup, const std::string& words, int round = 1) {
    flight(place, round).replies.push_back({item, Position{cup}, std::nullopt, words});
  }
};

}  // namespace oddglass::testing
