#include "insight/room.h"

#include "domain/expectation.h"
#include "domain/item_kinds.h"
#include "insight/findings.h"
#include "insight/sheets.h"
#include "stats/lean/lean.h"

#include <algorithm>
#include <map>

namespace oddglass::insight {
namespace {

constexpr double level = 0.95, largestLiking = 9.0;
constexpr int themselves = 0;

using Gaps = std::map<Place, double>;

// The mean of the lots in `above` minus that of `below`, for whoever scored all of them.
template <class Flight>
Gaps gapsOf(const Sheets<Flight>& sheets, Item item, const std::vector<Slot>& above, Slot below) {
  std::map<Place, std::map<Slot, double>> scores;
  for (const Score& score : byPerson(sheets.answers(item))) scores[score.place][score.lot] = score.value;
  Gaps gaps;
  for (const auto& [place, lots] : scores) {
    if (!lots.contains(below) || !std::ranges::all_of(above, [&](Slot lot) { return lots.contains(lot); })) continue;
    double sum = 0.0;
    for (const Slot lot : above) sum += lots.at(lot);
    gaps[place] = sum / static_cast<double>(above.size()) - lots.at(below);
  }
  return gaps;
}

/// A session's gaps: the person's own, and those of the panel.
struct Beside {
  std::optional<double> theirs;
  Gaps panel;
};

Beside besideOf(const OwnSession& own, bool unheard) {
  const Plan& plan = own.session.plan;
  const auto liking = std::ranges::find_if(plan.items, isOverallLiking);
  const auto reference = heldAgainst(plan.lots, plan.marked);
  Beside beside;
  if (!plan.sheet || !own.seat || own.own.empty() || liking == plan.items.end() || !reference || std::ranges::find(own.own, *reference) != own.own.end()) return beside;
  const Gaps makers = gapsOf(makerSheets(own.session, unheard), liking->item, own.own, *reference);
  if (const auto found = makers.find(*own.seat); found != makers.end()) beside.theirs = found->second;
  beside.panel = gapsOf(panelSheets(own.session, unheard), liking->item, own.own, *reference);
  return beside;
}

stats::MakerContrast within(const Beside& beside) {
  std::vector<stats::PersonDifference> differences{{themselves, 0, *beside.theirs}};
  for (const auto& [place, gap] : beside.panel) differences.push_back({static_cast<int>(differences.size()), 0, gap});
  return stats::makerContrast(differences, themselves, level, largestLiking);
}

/// What is compared over sessions: the people who are known in them.
struct Over {
  std::vector<stats::PersonDifference> differences;
  int together = 0, onlyInSums = 0;

  void add(const OwnSession& own, const Beside& beside) {
    std::vector<stats::PersonDifference> known;
    for (const auto& [place, gap] : beside.panel) {
      const auto person = own.known.find(place);
      if (person == own.known.end()) ++onlyInSums;
      else known.push_back({person->second, together, gap});
    }
    if (known.empty()) return;
    differences.push_back({themselves, together, *beside.theirs});
    differences.insert(differences.end(), known.begin(), known.end());
    ++together;
  }

  stats::MakerContrast contrast() const { return stats::makerContrast(differences, themselves, level, largestLiking); }
};

LeanVerdict leaningOf(const stats::Estimated& lean) {
  if (!lean.low || !lean.high) return LeanVerdict::none;
  if (*lean.low > 0.0) return LeanVerdict::kinder;
  return *lean.high < 0.0 ? LeanVerdict::harder : LeanVerdict::notShown;
}

std::optional<NoLean> whyNot(const Lean& lean) {
  if (static_cast<int>(lean.sessions.size()) < fewestOfOwn) return NoLean::fewSessions;
  if (lean.together < fewestOfOwn) return NoLean::fewKnown;
  if (lean.friends < 3) return NoLean::fewFriends;
  return lean.over.low ? std::nullopt : std::optional(NoLean::noSpread);
}

Lean leanOf(const OwnTastings& tastings) {
  Lean lean;
  Over all, unheard;
  bool wasSaid = false;
  for (std::size_t at = 0; at < tastings.sessions.size(); ++at) {
    const OwnSession& own = tastings.sessions[at];
    const Beside beside = besideOf(own, false);
    if (!beside.theirs || beside.panel.empty()) continue;
    lean.sessions.push_back({at, static_cast<int>(beside.panel.size()), within(beside).lean});
    all.add(own, beside);
    wasSaid |= !own.session.said.empty();
    const Beside before = own.session.said.empty() ? beside : besideOf(own, true);
    if (before.theirs) unheard.add(own, before);
  }
  lean.together = all.together;
  lean.onlyInSums = all.onlyInSums;
  if (all.together > 0) {
    const stats::MakerContrast found = all.contrast();
    lean.over = found.lean;
    lean.friends = found.friends;
  }
  lean.why = whyNot(lean);
  if (lean.why) return lean;
  lean.verdict = leaningOf(lean.over);
  if (lean.verdict == LeanVerdict::notShown || !wasSaid) return lean;
  lean.weaker = unheard.together == 0 || leaningOf(unheard.contrast().lean) != lean.verdict;
  if (lean.weaker) lean.verdict = LeanVerdict::notShown;
  return lean;
}

std::optional<bool> cameTrue(const RevealedSession& session) {
  const Plan& plan = session.plan;
  if (!plan.sheet) {
    const Verdict verdict = verdictOf(session);
    return verdict == Verdict::none ? std::nullopt : std::optional(verdict == Verdict::shown || verdict == Verdict::both);
  }
  const auto above = expectedAbove(plan.lots, plan.marked, plan.items);
  if (!above) return std::nullopt;
  const Gaps gaps = gapsOf(panelSheets(session), above->item, {above->own}, above->reference);
  if (gaps.empty()) return std::nullopt;
  double sum = 0.0;
  for (const auto& [place, gap] : gaps) sum += gap;
  return sum > 1e-9 * largestLiking;
}

}  // namespace

RoomFindings roomOf(const OwnTastings& tastings) {
  RoomFindings room;
  room.lean = leanOf(tastings);
  std::vector<double> probabilities;
  std::vector<bool> outcomes;
  for (std::size_t at = 0; at < tastings.sessions.size(); ++at) {
    const OwnSession& own = tastings.sessions[at];
    if (!own.isExpected) continue;
    const ExpectationLine line{at, *own.session.plan.expectationPc, cameTrue(own.session)};
    if (line.cameTrue) {
      probabilities.push_back(line.percent / 100.0);
      outcomes.push_back(*line.cameTrue);
    }
    room.expectations.push_back(line);
  }
  room.settled = static_cast<int>(outcomes.size());
  if (room.settled >= fewestOfOwn) room.calibration = stats::calibration(probabilities, outcomes, level);
  return room;
}

}  // namespace oddglass::insight
