#include "insight/room.h"

#include "domain/expectation.h"
#include "insight/findings.h"
#include "insight/own_gaps.h"

#include <algorithm>

namespace oddglass::insight {
namespace {

LeanVerdict leaningOf(const stats::Estimated& lean) {
  if (!lean.low || !lean.high) return LeanVerdict::none;
  if (*lean.low > 0.0) return LeanVerdict::kinder;
  return *lean.high < 0.0 ? LeanVerdict::harder : LeanVerdict::notShown;
}

template <class Effect>
std::optional<NoLean> whyNot(const Effect& lean) {
  if (static_cast<int>(lean.sessions.size()) < fewestOfOwn) return NoLean::fewSessions;
  if (lean.together < fewestOfOwn) return NoLean::fewKnown;
  if (lean.friends < 3) return NoLean::fewFriends;
  return lean.over.low ? std::nullopt : std::optional(NoLean::noSpread);
}

Lean leanOf(const OwnTastings& tastings) {
  Lean lean;
  OverSessions all, unheard;
  bool wasSaid = false;
  for (std::size_t at = 0; at < tastings.sessions.size(); ++at) {
    const OwnSession& own = tastings.sessions[at];
    const Beside beside = besideOf(own, false);
    if (!beside.isCounted()) continue;
    lean.sessions.push_back({at, static_cast<int>(beside.panel.size()), within(beside).lean});
    all.add(own, beside);
    wasSaid |= !own.session.said.empty();
    const Beside before = own.session.said.empty() ? beside : besideOf(own, true);
    if (before.theirs) unheard.add(own, before);
  }
  lean.together = all.together();
  lean.onlyInSums = all.onlyInSums();
  if (lean.together > 0) {
    const stats::MakerContrast found = all.contrast();
    lean.over = found.lean;
    lean.friends = found.friends;
  }
  lean.why = whyNot(lean);
  if (lean.why) return lean;
  lean.verdict = leaningOf(lean.over);
  if (lean.verdict == LeanVerdict::notShown || !wasSaid) return lean;
  lean.weaker = unheard.together() == 0 || leaningOf(unheard.contrast().lean) != lean.verdict;
  if (lean.weaker) lean.verdict = LeanVerdict::notShown;
  return lean;
}

Label labelOf(const OwnTastings& tastings) {
  Label label;
  OverSessions all;
  for (std::size_t at = 0; at < tastings.sessions.size(); ++at) {
    const Beside change = openMinusBlind(tastings.sessions[at]);
    if (!change.isCounted()) continue;
    double sum = 0.0;
    for (const auto& [place, gap] : change.panel) sum += gap;
    label.sessions.push_back({at, static_cast<int>(change.panel.size()), *change.theirs, sum / static_cast<double>(change.panel.size()), within(change).lean});
    all.add(tastings.sessions[at], change);
  }
  label.together = all.together();
  if (label.together > 0) {
    const stats::MakerContrast found = all.contrast();
    label.over = found.lean;
    label.friends = found.friends;
  }
  label.why = whyNot(label);
  if (!label.why) label.verdict = leaningOf(label.over);
  return label;
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
  room.label = labelOf(tastings);
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
  if (room.settled >= fewestOfOwn) room.calibration = stats::calibration(probabilities, outcomes, ownLevel);
  return room;
}

}  // namespace oddglass::insight
