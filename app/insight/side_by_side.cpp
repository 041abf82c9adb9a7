#include "insight/side_by_side.h"

#include "domain/day.h"
#include "domain/item_kinds.h"
#include "insight/batch_gaps.h"
#include "insight/batch_links.h"
#include "insight/over_time.h"

#include <algorithm>
#include <map>
#include <set>

namespace oddglass::insight {
namespace {

std::optional<double> ageAt(const Lot& lot, const std::string& heldOn) {
  const auto days = daysBetween(lot.packagedOn, heldOn);
  return days && *days >= 0 ? std::optional(*days / daysOfAMonth) : std::nullopt;
}

const Lot& lotNumbered(const std::vector<Batch>& batches, const BatchTastings& tastings, int lot) {
  const Batch& batch = batches[static_cast<std::size_t>(tastings.batchOf[static_cast<std::size_t>(lot)])];
  return *std::ranges::find(batch.lots, tastings.lots[static_cast<std::size_t>(lot)], &Lot::id);
}

std::vector<BatchColumn> columnsOf(const std::vector<Batch>& batches, const BatchTastings& tastings, const HadLots& had) {
  std::vector<BatchColumn> columns(batches.size());
  const auto chosen = lotsThatCount(static_cast<int>(batches.size()), tastings, had);
  for (std::size_t b = 0; b < batches.size(); ++b) {
    BatchColumn& column = columns[b];
    column.lot = chosen[b];
    for (std::size_t lot = 0; lot < had.size(); ++lot) column.lotsLeftOut += tastings.batchOf[lot] == static_cast<int>(b) && static_cast<int>(lot) != column.lot && !had[lot].empty();
    if (!column.lot) continue;
    for (const auto& [session, people] : had[static_cast<std::size_t>(*column.lot)]) {
      const std::string& day = tastings.about.sessions[static_cast<std::size_t>(session)].heldOn;
      column.tasted.push_back({session, day, ageAt(lotNumbered(batches, tastings, *column.lot), day), static_cast<int>(people.size())});
    }
  }
  return columns;
}

std::optional<double> meanAge(const BatchColumn& column, const std::vector<int>& sessions) {
  double sum = 0;
  int count = 0;
  for (const TastedOnce& each : column.tasted)
    if (each.age && std::ranges::find(sessions, each.session) != sessions.end()) sum += *each.age, ++count;
  return count > 0 ? std::optional(sum / count) : std::nullopt;
}

// The other batch reaches the age of the base; ages are whole days in the end.
std::optional<std::string> sameAge(const BatchStep& step, const std::vector<Batch>& batches, const BatchTastings& tastings, const BatchColumn& other) {
  if (!step.baseAge || !step.otherAge || *step.otherAge >= *step.baseAge) return std::nullopt;
  return dayAfter(lotNumbered(batches, tastings, *other.lot).packagedOn, static_cast<int>(*step.baseAge * daysOfAMonth + 0.5));
}

BatchStep stepTo(int other, const SideBySide& found, const HadLots& had) {
  const auto lot = [&](int column) { return found.columns[static_cast<std::size_t>(column)].lot; };
  const auto linked = [&](int base) {
    BatchStep step;
    if (lot(base) && lot(other)) step = linkBetween(*lot(base), *lot(other), had);
    step.base = base;
    step.other = other;
    return step;
  };
  if (found.good) return linked(*found.good);
  for (int base = other - 1; base >= 0; --base)
    if (BatchStep step = linked(base); step.link != BatchLink::none) return step;
  return linked(other - 1);
}

// A word that was always asked under one name keeps it.
LotQuestion underItsName(const MergedQuestions& merged, std::size_t at) {
  LotQuestion question = merged.all[at];
  if (merged.askedAs[at].size() == 1) question.word = *merged.askedAs[at].begin();
  return question;
}

bool isNoticer(const Noticers& noticers, const std::set<std::string>& words, const AboutLots& about, int person) {
  return std::ranges::any_of(words, [&](const std::string& word) { return notices(noticers, word, about, person); });
}

void markWords(SideBySide& found, const MergedQuestions& merged, const std::vector<SaidOf>& said, const AboutLots& about, const std::vector<WordNow>& words) {
  for (std::size_t q = 0; q < merged.all.size(); ++q) {
    BatchLine& line = found.lines[q];
    std::set<std::string> days, changed;
    for (const auto& [key, value] : said[q]) days.insert(about.sessions[static_cast<std::size_t>(std::get<0>(key))].heldOn);
    for (const std::string& asked : merged.askedAs[q]) {
      if (asked != line.question.word) line.formerly.push_back(asked);
      const WordNow* word = wordOf(words, asked);
      if (!word || days.empty()) continue;
      for (const WordChange& change : word->changes)
        if (const std::string day = dayOf(change.at); day > *days.begin() && day <= *days.rbegin()) changed.insert(day);
    }
    line.changedOn.assign(changed.begin(), changed.end());
  }
}

}  // namespace

SideBySide sideBySideOf(const std::vector<Batch>& batches, const BatchTastings& tastings, const std::vector<WordNow>& words, std::optional<int> good, const Noticers& noticers) {
  SideBySide found;
  found.good = good;
  const HadLots had = whoHad(tastings.about, tastings.lots);
  found.columns = columnsOf(batches, tastings, had);
  const MergedQuestions points = mergedQuestions(tastings.about, words, hasPoints);
  const MergedQuestions ticks = mergedQuestions(tastings.about, words, [](ItemKind kind) { return kind == ItemKind::check; });
  const std::vector<SaidOf> said = saidOf(tastings, points), ticked = saidOf(tastings, ticks);

  for (std::size_t q = 0; q < points.all.size(); ++q) {
    BatchLine line;
    line.question = underItsName(points, q);
    for (const BatchColumn& column : found.columns) {
      std::map<int, std::pair<double, int>> people;
      for (const auto& [key, value] : said[q])
        if (std::get<2>(key) == column.lot) people[std::get<1>(key)].first += value, ++people[std::get<1>(key)].second;
      std::vector<double> values;
      for (const auto& [person, sum] : people) values.push_back(sum.first / sum.second);
      BatchMean mean{static_cast<int>(values.size()), std::nullopt};
      if (values.size() >= 2) mean.mean = stats::meanAndSpread(values).mean;
      line.means.push_back(mean);
    }
    found.lines.push_back(std::move(line));
  }
  markWords(found, points, said, tastings.about, words);

  for (std::size_t q = 0; q < ticks.all.size(); ++q) {
    BatchMentions mentions{underItsName(ticks, q), {}};
    for (const BatchColumn& column : found.columns) {
      std::map<int, bool> people;
      for (const auto& [key, value] : ticked[q])
        if (std::get<2>(key) == column.lot) people[std::get<1>(key)] |= value > 0;
      BatchMentions::Count count;
      for (const auto& [person, hasTicked] : people) {
        const bool isOne = isNoticer(noticers, ticks.askedAs[q], tastings.about, person);
        ++count.asked, count.ticked += hasTicked;
        count.noticers += isOne, count.noticersTicked += isOne && hasTicked;
      }
      mentions.counts.push_back(count);
    }
    found.mentions.push_back(std::move(mentions));
  }

  for (int other = good ? 0 : 1; other < static_cast<int>(batches.size()); ++other) {
    if (other == good) continue;
    BatchStep step = stepTo(other, found, had);
    const auto& base = found.columns[static_cast<std::size_t>(step.base)];
    const auto& later = found.columns[static_cast<std::size_t>(step.other)];
    for (int b = std::min(step.base, step.other) + 1; b <= std::max(step.base, step.other); ++b)
      std::ranges::copy(batches[static_cast<std::size_t>(b)].changed, std::back_inserter(step.changed));
    step.baseAge = meanAge(base, step.baseSessions);
    step.otherAge = meanAge(later, step.otherSessions);
    step.sameAgeOn = sameAge(step, batches, tastings, later);
    if (step.link != BatchLink::none)
      for (std::size_t q = 0; q < points.all.size(); ++q)
        if (auto gap = batchGapOf(static_cast<int>(q), points.all[q], narrowestLimit(points.all[q], step, tastings.about, words), step, *base.lot, *later.lot, said[q])) step.gaps.push_back(*gap);
    found.steps.push_back(std::move(step));
  }
  judgeSteps(found);
  return found;
}

std::vector<LotId> lotsToLink(const SideBySide& found, const BatchTastings& tastings, const std::vector<int>& free) {
  std::vector<std::size_t> picked;
  std::vector<std::size_t> drunk;
  for (std::size_t column = 0; column < found.columns.size(); ++column) {
    const auto chosen = found.columns[column].lot;
    std::optional<std::size_t> has;
    for (std::size_t lot = 0; lot < free.size(); ++lot)
      if (tastings.batchOf[lot] == static_cast<int>(column) && free[lot] > 0 && (!has || static_cast<int>(lot) == chosen)) has = lot;
    if (has) picked.push_back(*has);
    else if (chosen) drunk.push_back(static_cast<std::size_t>(*chosen));
  }
  if (!drunk.empty() && !picked.empty()) {
    const HadLots had = whoHad(tastings.about, tastings.lots);
    std::optional<std::size_t> best;
    std::ptrdiff_t most = 0;
    for (std::size_t lot = 0; lot < free.size(); ++lot) {
      if (tastings.batchOf[lot] >= 0 || free[lot] <= 0) continue;
      const auto stoodBeside = std::ranges::count_if(drunk, [&](std::size_t gone) {
        return std::ranges::any_of(had[gone], [&](const auto& each) { return had[lot].contains(each.first); });
      });
      if (stoodBeside > most) most = stoodBeside, best = lot;
    }
    if (best) picked.push_back(*best);
  }
  std::vector<LotId> lots;
  for (const std::size_t lot : picked) lots.push_back(tastings.lots[lot]);
  return lots.size() >= 2 ? lots : std::vector<LotId>{};
}

}  // namespace oddglass::insight
