#include "insight/counts.h"

#include "canon/folded.h"
#include "domain/vocabulary.h"
#include "insight/points.h"
#include "stats/checks/checked.h"
#include "stats/ranks/friedman.h"
#include "stats/right/just_right.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace oddglass::insight {
namespace {

int columnOf(const std::vector<Slot>& lots, Slot lot) { return static_cast<int>(std::ranges::find(lots, lot) - lots.begin()); }

int rowOf(const std::vector<Place>& places, Place place) { return static_cast<int>(std::ranges::find(places, place) - places.begin()); }

RightSide sideOf(const stats::LikingDrop& found) {
  RightSide side;
  side.people = found.answers;
  side.drop = found.drop.estimate;
  side.low = found.drop.low;
  side.high = found.drop.high;
  if (found.permuted) side.pValue = found.permuted->pValue;
  side.penalty = found.penalty;
  side.why = found.drop.why;
  return side;
}

/// How well each person liked each lot when they first had it, beside what else they said of it then.
std::vector<Answer> likings(const Plan& plan, const auto& sheets) {
  const auto liking = std::ranges::find_if(plan.items, [](const SheetItem& item) { return item.kind == ItemKind::liking && item.part == Part::main && item.word.empty(); });
  return liking == plan.items.end() ? std::vector<Answer>{} : firstOf(sheets.answers(liking->item));
}

template <class Flight>
RightLine rightOf(const SheetItem& item, const Plan& plan, const Sheets<Flight>& sheets, const std::vector<Slot>& lots) {
  RightLine line{item.item, item.word, {}};
  const auto answers = firstOf(sheets.answers(item.item)), liked = likings(plan, sheets);
  stats::RightRows rows;
  rows.sample.levels = static_cast<int>(lots.size());
  rows.taster.levels = static_cast<int>(sheets.places.size());
  for (const Answer& answer : answers) {
    const auto liking = std::ranges::find_if(liked, [&](const Answer& each) { return each.place == answer.place && each.lot == answer.lot; });
    if (liking == liked.end()) continue;
    rows.category.push_back(*answer.value);
    rows.liking.push_back(*liking->value);
    rows.sample.of.push_back(columnOf(lots, answer.lot));
    rows.taster.of.push_back(rowOf(sheets.places, answer.place));
  }
  std::vector<stats::RightSample> found;
  if (!rows.category.empty()) found = stats::justRight(rows, 1.0 - plan.alphaPm / 1000.0);
  for (std::size_t i = 0; i < lots.size(); ++i) {
    RightLot lot;
    lot.lot = lots[i];
    if (i < found.size()) {
      lot.little = sideOf(found[i].low);
      lot.much = sideOf(found[i].high);
    }
    // Counted from all who answered, whether or not they were asked how they liked it.
    lot.little.people = lot.much.people = 0;
    for (const Answer& answer : answers) {
      if (answer.lot != lots[i]) continue;
      ++lot.people;
      ++(*answer.value < 3 ? lot.little.people : *answer.value > 3 ? lot.much.people : lot.right);
    }
    line.lots.push_back(lot);
  }
  return line;
}

template <class Flight>
RankedLine rankedOf(const SheetItem& item, const Sheets<Flight>& sheets, const std::vector<Slot>& lots) {
  RankedLine line{item.item, item.word, std::vector<std::vector<int>>(lots.size(), std::vector<int>(lots.size(), 0)), std::vector<double>(lots.size(), 0.0), 0,
                  std::nullopt, std::nullopt, std::nullopt};
  // A doubled lot has two ranks, and a person with several rounds several: averaged, then ranked anew.
  std::vector<double> values;
  stats::Factor sample{{}, static_cast<int>(lots.size())}, taster{{}, static_cast<int>(sheets.places.size())};
  for (const Score& score : byPerson(sheets.answers(item.item))) {
    values.push_back(score.value);
    sample.of.push_back(columnOf(lots, score.lot));
    taster.of.push_back(rowOf(sheets.places, score.place));
  }
  if (values.empty() || lots.size() < 2) {
    line.why = lots.size() < 2 ? stats::Reason::fewSamples : stats::Reason::emptyCell;
    return line;
  }
  const stats::RankBlocks blocks = stats::rankBlocks(values, sample, taster);
  line.people = static_cast<int>(blocks.blocks.size());
  for (const stats::RankBlock& block : blocks.blocks)
    for (std::size_t i = 0; i < block.samples.size(); ++i) {
      const auto lot = static_cast<std::size_t>(block.samples[i]);
      line.sums[lot] += block.doubled[i] / 2.0;
      ++line.given[lot][static_cast<std::size_t>(std::lround(block.doubled[i] / 2.0)) - 1];
    }
  if (!stats::isComplete(blocks)) {
    line.why = stats::Reason::emptyCell;
    return line;
  }
  const stats::Friedman found = stats::friedman(blocks);
  line.why = found.why;
  line.agreement = found.kendallW;
  line.pValue = found.arranged.exact ? found.arranged.exact : found.arranged.drawn ? std::optional(found.arranged.drawn->pValue) : found.pValue;
  return line;
}

template <class Flight>
BehaviourLine behaviourOf(const SheetItem& item, const Sheets<Flight>& sheets, const std::vector<Slot>& lots) {
  BehaviourLine line{item.item, std::vector<std::vector<int>>(lots.size(), std::vector<int>(3, 0))};
  for (const Answer& answer : firstOf(sheets.answers(item.item)))
    ++line.counts[static_cast<std::size_t>(columnOf(lots, answer.lot))][static_cast<std::size_t>(*answer.value - 1)];
  return line;
}

template <class Flight>
SplitLine splitOf(const SheetItem& item, const Plan& plan, const Sheets<Flight>& sheets, const std::vector<Slot>& lots) {
  SplitLine line{item.item, std::vector<double>(lots.size(), 0.0), static_cast<int>(sheets.places.size())};
  // The two cups of a doubled lot are one drink: what they were given is added up.
  for (const Answer& answer : sheets.answers(item.item)) line.points[static_cast<std::size_t>(columnOf(lots, answer.lot))] += *answer.value;
  for (double& points : line.points) points /= std::max(1, line.people * plan.rounds);
  return line;
}

/// The program's own tasting words by all their names. Words added at a table are left out: a finding does not change with today's list.
const std::map<std::string, std::string>& builtInNames() {
  static const std::map<std::string, std::string> names = [] {
    std::map<std::string, std::string> all;
    for (const TastingWord& word : builtInWords()) all.emplace(canon::folded(word.text), word.text);
    for (const TastingWord& word : builtInWords())
      for (const std::string& name : word.alsoCalled) all.emplace(canon::folded(name), word.text);
    return all;
  }();
  return names;
}

template <class Flight>
SaidLine saidOf(const SheetItem& item, const Sheets<Flight>& sheets, const std::vector<Slot>& lots) {
  SaidLine line{item.item, item.kind, std::vector<int>(lots.size(), 0), std::vector<int>(lots.size(), 0), {}};
  std::vector<std::string> folded;
  for (const Answer& answer : firstOf(sheets.answers(item.item))) {
    const auto lot = static_cast<std::size_t>(columnOf(lots, answer.lot));
    ++line.asked[lot];
    if (answer.value) ++line.none[lot];
    if (answer.words.empty()) continue;
    const std::string written = canon::folded(answer.words);
    const auto known = builtInNames().find(written);
    const std::string key = known == builtInNames().end() ? written : canon::folded(known->second);
    const auto at = static_cast<std::size_t>(std::ranges::find(folded, key) - folded.begin());
    if (at == folded.size()) {
      folded.push_back(key);
      line.words.push_back({answer.words, std::vector<int>(lots.size(), 0)});
    }
    // Two names of one word count together, under the word's own.
    if (canon::folded(line.words[at].word) != written) line.words[at].word = known->second;
    ++line.words[at].people[lot];
  }
  const auto all = [](const WordCount& word) {
    int sum = 0;
    for (int each : word.people) sum += each;
    return sum;
  };
  // In the order of the letters where they were named as often, so that no order of places shows.
  std::ranges::sort(line.words, {}, [&](const WordCount& word) { return std::tuple(-all(word), canon::folded(word.word), word.word); });
  return line;
}

template <class Flight>
SheetSureLine sureOf(const SheetItem& item, const Sheets<Flight>& sheets) {
  SheetSureLine line{item.item, std::vector<int>(3, 0)};
  for (const Answer& answer : sheets.answers(item.item))
    if (answer.value) ++line.counts[static_cast<std::size_t>(*answer.value - 1)];
  return line;
}

template <class Flight>
std::vector<TickedLine> tickedOf(const Plan& plan, const Sheets<Flight>& sheets, const std::vector<Slot>& lots) {
  std::vector<TickedLine> lines;
  stats::CheckRows rows;
  rows.sample.levels = static_cast<int>(lots.size());
  rows.taster.levels = static_cast<int>(sheets.places.size());
  for (const SheetItem& item : plan.items) {
    if (item.kind != ItemKind::check) continue;
    TickedLine line{item.item, item.word, std::vector<int>(lots.size(), 0), std::vector<int>(lots.size(), 0), std::nullopt, std::nullopt};
    for (const Answer& answer : firstOf(sheets.answers(item.item))) {
      const int lot = columnOf(lots, answer.lot);
      ++line.people[static_cast<std::size_t>(lot)];
      line.ticked[static_cast<std::size_t>(lot)] += *answer.value;
      rows.checked.push_back(*answer.value);
      rows.sample.of.push_back(lot);
      rows.taster.of.push_back(rowOf(sheets.places, answer.place));
      rows.descriptor.of.push_back(static_cast<int>(lines.size()));
    }
    lines.push_back(std::move(line));
  }
  rows.descriptor.levels = static_cast<int>(lines.size());
  if (rows.checked.empty() || lots.size() < 2) return lines;
  for (const stats::CheckedDescriptor& found : stats::checkedDescriptors(rows)) {
    TickedLine& line = lines[static_cast<std::size_t>(found.descriptor)];
    line.pValue = found.pHolm;
    line.why = found.test.why;
  }
  return lines;
}

}  // namespace

template <class Flight>
Counts countsOf(const Plan& plan, const Sheets<Flight>& sheets) {
  const auto lots = codedLots(plan);
  Counts counts;
  for (const SheetItem& item : plan.items) {
    switch (item.kind) {
      case ItemKind::justRight: counts.right.push_back(rightOf(item, plan, sheets, lots)); break;
      case ItemKind::rank: counts.ranked.push_back(rankedOf(item, sheets, lots)); break;
      case ItemKind::behaviour: counts.behaviour.push_back(behaviourOf(item, sheets, lots)); break;
      case ItemKind::split: counts.split.push_back(splitOf(item, plan, sheets, lots)); break;
      case ItemKind::worst:
      case ItemKind::changeOne: counts.said.push_back(saidOf(item, sheets, lots)); break;
      case ItemKind::sureness: counts.sure.push_back(sureOf(item, sheets)); break;
      default: break;
    }
  }
  counts.ticked = tickedOf(plan, sheets, lots);
  return counts;
}

template Counts countsOf(const Plan& plan, const Sheets<PanelFlight>& sheets);
template Counts countsOf(const Plan& plan, const Sheets<MakerFlight>& sheets);

}  // namespace oddglass::insight
