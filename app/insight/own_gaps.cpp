#include "insight/own_gaps.h"

#include "domain/expectation.h"
#include "domain/item_kinds.h"

#include <algorithm>

namespace oddglass::insight {
namespace {

constexpr int themselves = 0;

/// What a person's own is held against, where both are in a session and the overall liking is asked.
struct Sides {
  Item liking;
  Slot reference;
};

std::optional<Sides> sidesOf(const OwnSession& own) {
  const Plan& plan = own.session.plan;
  const auto liking = std::ranges::find_if(plan.items, isOverallLiking);
  const auto reference = heldAgainst(plan.lots, plan.marked);
  if (!plan.sheet || !own.seat || own.own.empty() || liking == plan.items.end() || !reference || std::ranges::find(own.own, *reference) != own.own.end()) return std::nullopt;
  return Sides{liking->item, *reference};
}

// By drink of one person; nothing where one is missing.
template <class Value>
std::optional<double> gapIn(const std::map<Slot, Value>& lots, const std::vector<Slot>& above, Slot below) {
  if (!lots.contains(below) || !std::ranges::all_of(above, [&](Slot lot) { return lots.contains(lot); })) return std::nullopt;
  double sum = 0.0;
  for (const Slot lot : above) sum += static_cast<double>(lots.at(lot));
  return sum / static_cast<double>(above.size()) - static_cast<double>(lots.at(below));
}

}  // namespace

template <class Flight>
Gaps gapsOf(const Sheets<Flight>& sheets, Item item, const std::vector<Slot>& above, Slot below) {
  std::map<Place, std::map<Slot, double>> scores;
  for (const Score& score : byPerson(sheets.answers(item))) scores[score.place][score.lot] = score.value;
  Gaps gaps;
  for (const auto& [place, lots] : scores)
    if (const auto gap = gapIn(lots, above, below)) gaps[place] = *gap;
  return gaps;
}

template Gaps gapsOf(const Sheets<PanelFlight>&, Item, const std::vector<Slot>&, Slot);
template Gaps gapsOf(const Sheets<MakerFlight>&, Item, const std::vector<Slot>&, Slot);

Beside besideOf(const OwnSession& own, bool unheard) {
  Beside beside;
  const auto sides = sidesOf(own);
  if (!sides) return beside;
  const Gaps makers = gapsOf(makerSheets(own.session, unheard), sides->liking, own.own, sides->reference);
  if (const auto found = makers.find(*own.seat); found != makers.end()) beside.theirs = found->second;
  beside.panel = gapsOf(panelSheets(own.session, unheard), sides->liking, own.own, sides->reference);
  return beside;
}

Beside openMinusBlind(const OwnSession& own) {
  Beside change;
  if (own.open.empty()) return change;
  const auto sides = sidesOf(own);
  if (!sides) return change;
  const Beside blind = besideOf(own, false);
  for (const auto& [place, lots] : own.open) {
    const auto open = gapIn(lots, own.own, sides->reference);
    if (!open) continue;
    if (place == *own.seat && blind.theirs) change.theirs = *open - *blind.theirs;
    if (const auto found = blind.panel.find(place); found != blind.panel.end()) change.panel[place] = *open - found->second;
  }
  return change;
}

stats::MakerContrast within(const Beside& beside) {
  std::vector<stats::PersonDifference> differences{{themselves, 0, *beside.theirs}};
  for (const auto& [place, gap] : beside.panel) differences.push_back({static_cast<int>(differences.size()), 0, gap});
  return stats::makerContrast(differences, themselves, ownLevel, largestLiking);
}

void OverSessions::add(const OwnSession& own, const Beside& beside) {
  std::vector<stats::PersonDifference> known;
  for (const auto& [place, gap] : beside.panel) {
    const auto person = own.known.find(place);
    if (person == own.known.end()) ++onlyInSums_;
    else known.push_back({person->second, together_, gap});
  }
  if (known.empty()) return;
  differences_.push_back({themselves, together_, *beside.theirs});
  differences_.insert(differences_.end(), known.begin(), known.end());
  ++together_;
}

stats::MakerContrast OverSessions::contrast() const { return stats::makerContrast(differences_, themselves, ownLevel, largestLiking); }

}  // namespace oddglass::insight
