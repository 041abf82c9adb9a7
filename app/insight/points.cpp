#include "insight/points.h"

#include "domain/item_kinds.h"
#include "domain/expectation.h"
#include "stats/estimated.h"
#include "stats/profile/profile.h"

#include <algorithm>
#include <cmath>

namespace oddglass::insight {
namespace {

template <class T>
int indexIn(const std::vector<T>& all, T value) {
  const auto found = std::ranges::find(all, value);
  return found == all.end() ? -1 : static_cast<int>(found - all.begin());
}

LotMean meanOf(Slot lot, const std::vector<Score>& people, double level) {
  LotMean line;
  line.lot = lot;
  for (const Score& each : people)
    if (each.lot == lot) line.values.push_back(each.value);
  std::ranges::sort(line.values);
  line.people = static_cast<int>(line.values.size());
  if (line.people == 0) line.why = stats::Reason::emptyCell;
  if (line.people == 1) line.why = stats::Reason::oneTaster;
  if (line.people < 2) return line;
  const stats::Estimated mean = stats::meanOf(line.values, level);
  line.mean = mean.estimate;
  line.why = line.people < fewestForARange ? std::optional(stats::Reason::fewTasters) : mean.why;
  if (line.people >= fewestForARange) {
    line.low = mean.low;
    line.high = mean.high;
  }
  return line;
}

void measureTwice(PointsLine& line, const std::vector<Answer>& answers) {
  const auto pairs = twiceOf(answers);
  double sum = 0.0;
  for (const Twice& pair : pairs) sum += std::abs(pair.first - pair.second);
  line.twice = static_cast<int>(pairs.size());
  if (line.twice > 0) line.moved = sum / line.twice;
}

GapVerdict gapVerdictOf(stats::ProfileVerdict verdict) {
  switch (verdict) {
    case stats::ProfileVerdict::less: return GapVerdict::less;
    case stats::ProfileVerdict::more: return GapVerdict::more;
    case stats::ProfileVerdict::within: return GapVerdict::within;
    case stats::ProfileVerdict::cannotTell: break;
  }
  return GapVerdict::cannotTell;
}

LotGap gapOf(Slot lot, const stats::ProfileDifference& found) {
  LotGap gap;
  gap.lot = lot;
  gap.people = found.tasters;
  gap.difference = found.difference;
  gap.low = found.low;
  gap.high = found.high;
  gap.limitLow = found.limitLow;
  gap.limitHigh = found.limitHigh;
  gap.pDifference = found.pAdjusted;
  gap.pWithin = found.pLimitAdjusted;
  gap.verdict = gapVerdictOf(found.verdict);
  gap.why = found.why;
  return gap;
}

// The questions `which` as one profile, and their gaps.
template <class Flight>
void addGaps(std::vector<PointsLine>& lines, const std::vector<std::size_t>& which, const Plan& plan, const Sheets<Flight>& sheets, stats::ProfileAdjust adjust) {
  const auto target = targetOf(plan);
  const auto lots = codedLots(plan);
  if (which.empty() || !target || lots.size() < 2) return;
  stats::ProfileRows rows;
  stats::ProfileQuestion question;
  question.reference = indexIn(lots, *target);
  question.adjust = adjust;
  question.alpha = plan.alphaPm / 1000.0;
  rows.scores.sample.levels = static_cast<int>(lots.size());
  rows.scores.taster.levels = static_cast<int>(sheets.places.size());
  rows.scores.round.emplace().levels = plan.rounds;
  rows.descriptor.levels = static_cast<int>(which.size());
  for (std::size_t d = 0; d < which.size(); ++d) {
    const PointsLine& line = lines[which[d]];
    question.limits.push_back(line.limit ? std::optional<double>(*line.limit) : std::nullopt);
    for (const Score& score : scoresOf(sheets.answers(line.item))) {
      const int lot = indexIn(lots, score.lot);
      if (lot < 0) continue;
      rows.scores.response.push_back(score.value);
      rows.scores.sample.of.push_back(lot);
      rows.scores.taster.of.push_back(indexIn(sheets.places, score.place));
      rows.scores.round->of.push_back(score.round.value - 1);
      rows.descriptor.of.push_back(static_cast<int>(d));
    }
  }
  if (rows.scores.response.empty()) return;
  const auto profile = stats::profileOf(rows, question);
  for (std::size_t d = 0; d < which.size(); ++d)
    for (const stats::ProfileDifference& found : profile[d].differences)
      lines[which[d]].gaps.push_back(gapOf(lots[static_cast<std::size_t>(found.sample)], found));
}

// The reference's other vintages say how far apart good ones of its own may lie.
void findRange(PointsLine& line, const Plan& plan) {
  std::vector<double> ends{0.0};
  for (const LotGap& gap : line.gaps)
    if (plan.lots[static_cast<std::size_t>(gap.lot.value) - 1].role == LotRole::reference && gap.difference) ends.push_back(*gap.difference);
  if (ends.size() < 2) return;
  const auto [low, high] = std::ranges::minmax(ends);
  line.rangeLow = low;
  line.rangeHigh = high;
}

// "Lacks" may be said only where tasters said too little of the same word.
template <class Flight>
void findLacks(PointsLine& line, const Plan& plan, const Sheets<Flight>& sheets) {
  if (line.word.empty()) return;
  const auto asked = std::ranges::find_if(plan.items, [&](const SheetItem& item) { return item.kind == ItemKind::justRight && item.word == line.word; });
  if (asked == plan.items.end()) return;
  for (const Answer& answer : firstOf(sheets.answers(asked->item)))
    for (LotGap& gap : line.gaps)
      if (gap.lot == answer.lot && answer.value) {
        ++gap.askedRight;
        gap.saidTooLittle += *answer.value < 3;
      }
  for (LotGap& gap : line.gaps) gap.lacks = gap.verdict == GapVerdict::less && 2 * gap.saidTooLittle > gap.askedRight;
}

}  // namespace

std::optional<Slot> targetOf(const Plan& plan) { return heldAgainst(plan.lots, plan.marked); }

std::vector<Slot> codedLots(const Plan& plan) {
  std::vector<Slot> lots;
  for (const PlannedLot& lot : plan.lots)
    if (lot.role != LotRole::warmUp) lots.push_back(lot.slot);
  return lots;
}

template <class Flight>
std::vector<PointsLine> pointsOf(const Plan& plan, const Sheets<Flight>& sheets) {
  std::vector<PointsLine> lines;
  std::vector<std::size_t> main, others;
  for (const SheetItem& item : plan.items) {
    if (!hasPoints(item.kind)) continue;
    PointsLine line;
    line.item = item.item;
    line.kind = item.kind;
    line.part = item.part;
    line.word = item.word;
    line.low = item.low.value_or(0);
    line.high = item.high.value_or(0);
    line.limit = item.limit;
    line.isMain = item.isMain;
    const auto& answers = sheets.answers(item.item);
    const auto people = byPerson(answers);
    for (Slot lot : codedLots(plan)) line.lots.push_back(meanOf(lot, people, 1.0 - plan.alphaPm / 1000.0));
    measureTwice(line, answers);
    (item.isMain ? main : others).push_back(lines.size());
    lines.push_back(std::move(line));
  }
  addGaps(lines, main, plan, sheets, stats::ProfileAdjust::holm);
  addGaps(lines, others, plan, sheets, stats::ProfileAdjust::benjaminiHochberg);
  for (PointsLine& line : lines) {
    findRange(line, plan);
    findLacks(line, plan, sheets);
  }
  return lines;
}

template std::vector<PointsLine> pointsOf(const Plan& plan, const Sheets<PanelFlight>& sheets);
template std::vector<PointsLine> pointsOf(const Plan& plan, const Sheets<MakerFlight>& sheets);

void weaken(std::vector<PointsLine>& all, const std::vector<PointsLine>& unheard) {
  for (PointsLine& line : all) {
    const auto other = std::ranges::find(unheard, line.item, &PointsLine::item);
    for (LotGap& gap : line.gaps) {
      const auto beside = other == unheard.end() ? std::vector<LotGap>{} : other->gaps;
      const auto found = std::ranges::find(beside, gap.lot, &LotGap::lot);
      if (gap.verdict == GapVerdict::cannotTell || (found != beside.end() && found->verdict == gap.verdict)) continue;
      gap.verdict = GapVerdict::cannotTell;
      gap.weaker = true;
      gap.lacks = false;
    }
  }
}

}  // namespace oddglass::insight
