#include "insight/batch_gaps.h"

#include "stats/alike/paired_alike.h"
#include "stats/multiple/adjust.h"

#include <algorithm>

namespace oddglass::insight {
namespace {

constexpr double alphaBeside = 0.05;
constexpr double levelBeside = 0.95;

/// What each person who had both said of base and of other: minus the shared lot where that is the link.
std::map<int, std::pair<double, double>> bothSaid(const BatchStep& step, int base, int other, const SaidOf& said) {
  // For each person the sum and number of sessions of a lot, or of a lot minus the shared one.
  using Sums = std::map<int, std::pair<double, int>>;
  const auto add = [](Sums& sums, int person, double value) {
    auto& [sum, count] = sums[person];
    sum += value;
    ++count;
  };
  Sums ofBase, ofOther;
  for (const auto& [key, value] : said) {
    const auto& [session, person, lot] = key;
    const auto partner = [&](int wanted) { return said.find({session, person, wanted}); };
    if (step.link == BatchLink::together) {
      if (lot != base || partner(other) == said.end()) continue;
      add(ofBase, person, value);
      add(ofOther, person, partner(other)->second);
    } else {
      if ((lot != base && lot != other) || partner(*step.shared) == said.end()) continue;
      add(lot == base ? ofBase : ofOther, person, value - partner(*step.shared)->second);
    }
  }
  std::map<int, std::pair<double, double>> both;
  for (const auto& [person, sum] : ofBase)
    if (const auto found = ofOther.find(person); found != ofOther.end()) both[person] = {sum.first / sum.second, found->second.first / found->second.second};
  return both;
}

}  // namespace

std::optional<int> narrowestLimit(const LotQuestion& question, const BatchStep& step, const AboutLots& about, const std::vector<WordNow>& words) {
  std::set<int> used(step.baseSessions.begin(), step.baseSessions.end());
  used.insert(step.otherSessions.begin(), step.otherSessions.end());
  std::optional<int> narrowest;
  for (const int session : used)
    for (const SheetItem& item : about.sessions[static_cast<std::size_t>(session)].plan.items) {
      if (item.kind != question.kind || item.part != question.part || nowCalled(words, item.word) != question.word) continue;
      if (!item.limit) return std::nullopt;
      narrowest = std::min(narrowest.value_or(*item.limit), *item.limit);
    }
  return narrowest;
}

std::optional<BatchGap> batchGapOf(int line, const LotQuestion& question, std::optional<int> limit, const BatchStep& step, int base, int other, const SaidOf& said) {
  const auto both = bothSaid(step, base, other, said);
  if (both.empty()) return std::nullopt;
  BatchGap gap;
  gap.line = line;
  gap.limit = limit;
  gap.people = static_cast<int>(both.size());
  std::vector<double> ofBase, ofOther, differences;
  for (const auto& [person, pair] : both) {
    ofBase.push_back(pair.first);
    ofOther.push_back(pair.second);
    differences.push_back(pair.second - pair.first);
  }
  gap.base = stats::meanAndSpread(ofBase).mean;
  gap.other = stats::meanAndSpread(ofOther).mean;
  gap.difference = stats::meanOf(differences, levelBeside, stats::Reason::fewTasters, question.high);
  if (gap.people < fewestForARange) gap.difference = stats::alone(*gap.difference.estimate, stats::Reason::fewTasters);
  if (gap.limit && gap.difference.pValue) {
    const stats::Alike alike = stats::pairedAlike(differences, *gap.limit, alphaBeside);
    gap.limitLow = alike.low;
    gap.limitHigh = alike.high;
    gap.pWithin = alike.pValue;
  }
  return gap;
}

void judgeSteps(SideBySide& found) {
  std::vector<double> differ, within;
  std::vector<BatchGap*> gaps, limited;
  for (BatchStep& step : found.steps)
    for (BatchGap& gap : step.gaps) {
      if (gap.difference.pValue) differ.push_back(*gap.difference.pValue), gaps.push_back(&gap);
      if (gap.pWithin) within.push_back(*gap.pWithin), limited.push_back(&gap);
    }
  found.comparisons = static_cast<int>(gaps.size());
  const auto p = stats::adjustHolm(differ), q = stats::adjustHolm(within);
  for (std::size_t i = 0; i < limited.size(); ++i) limited[i]->pWithin = q[i];
  for (std::size_t i = 0; i < gaps.size(); ++i) {
    BatchGap& gap = *gaps[i];
    gap.pDifference = p[i];
    if (gap.pWithin && *gap.pWithin <= alphaBeside) gap.verdict = GapVerdict::within;
    else if (p[i] <= alphaBeside) gap.verdict = *gap.difference.estimate > 0 ? GapVerdict::more : GapVerdict::less;
  }
}

}  // namespace oddglass::insight
