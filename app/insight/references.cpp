#include "insight/references.h"

#include "domain/day.h"
#include "domain/item_kinds.h"
#include "insight/batch_links.h"
#include "insight/over_time.h"
#include "stats/estimated.h"

#include <algorithm>
#include <map>
#include <set>

namespace oddglass::insight {
namespace {

ReferenceLot lotToday(const Lot& lot, const std::string& today) {
  ReferenceLot now;
  if (const auto days = daysBetween(lot.packagedOn, today); days && *days >= 0) now.age = *days / daysOfAMonth;
  now.daysPast = daysBetween(lot.bestBefore, today);
  now.isLast = lot.bottles == 1;
  now.isGone = lot.bottles <= 0;
  return now;
}

// Sessions in which somebody answered about two of the lots.
std::set<int> sessionsWithTwo(const HadLots& had) {
  std::map<int, int> counts;
  for (const auto& sessions : had)
    for (const auto& [session, people] : sessions) ++counts[session];
  std::set<int> two;
  for (const auto& [session, count] : counts)
    if (count >= 2) two.insert(session);
  return two;
}

std::optional<VintageRange> rangeOver(int question, const Reference& reference, const std::set<int>& sessions) {
  const AboutLots& about = reference.together;
  std::map<std::pair<int, int>, std::pair<double, int>> said;   // lot, person
  std::set<int> used;
  for (const LotAnswer& each : about.answers) {
    if (each.question != question || !sessions.contains(each.session)) continue;
    if (isFlawed(about.sessions[static_cast<std::size_t>(each.session)], reference.lots[static_cast<std::size_t>(each.lot)].id)) continue;
    auto& [sum, count] = said[{each.lot, each.person}];
    sum += each.value;
    ++count;
    used.insert(each.session);
  }
  std::map<int, std::vector<double>> byLot;
  for (const auto& [key, sum] : said) byLot[key.first].push_back(sum.first / sum.second);
  std::vector<VintageMean> means;
  for (const auto& [lot, values] : byLot)
    if (values.size() >= 2) means.push_back({lot, static_cast<int>(values.size()), stats::meanAndSpread(values).mean});
  if (means.size() < 2) return std::nullopt;
  const auto [low, high] = std::ranges::minmax(means, {}, &VintageMean::mean);
  return VintageRange{about.questions[static_cast<std::size_t>(question)], low, high, static_cast<int>(means.size()), static_cast<int>(used.size())};
}

}  // namespace

ReferenceFindings referenceOf(const Reference& reference, const std::string& today) {
  ReferenceFindings found;
  std::vector<LotId> lots;
  for (const Lot& lot : reference.lots) {
    found.lots.push_back(lotToday(lot, today));
    lots.push_back(lot.id);
  }
  const std::set<int> sessions = sessionsWithTwo(whoHad(reference.together, lots));
  for (std::size_t q = 0; q < reference.together.questions.size(); ++q)
    if (hasPoints(reference.together.questions[q].kind))
      if (const auto range = rangeOver(static_cast<int>(q), reference, sessions)) found.ranges.push_back(*range);
  return found;
}

}  // namespace oddglass::insight
