#include "insight/batch_links.h"

#include <algorithm>
#include <iterator>
#include <tuple>

namespace oddglass::insight {
namespace {

std::set<int> inBothSets(const std::set<int>& a, const std::set<int>& b) {
  std::set<int> both;
  std::ranges::set_intersection(a, b, std::inserter(both, both.end()));
  return both;
}

/// Sessions in which somebody had both lots, and who.
struct Shared {
  std::vector<int> sessions;
  std::set<int> people;
};

Shared sharedBy(const std::map<int, std::set<int>>& one, const std::map<int, std::set<int>>& other) {
  Shared shared;
  for (const auto& [session, people] : one) {
    const auto there = other.find(session);
    if (there == other.end()) continue;
    const auto both = inBothSets(people, there->second);
    if (both.empty()) continue;
    shared.sessions.push_back(session);
    shared.people.insert(both.begin(), both.end());
  }
  return shared;
}

}  // namespace

bool isFlawed(const LotSession& session, const LotId& lot) {
  const auto planned = std::ranges::find(session.plan.lots, lot, &PlannedLot::lot);
  return planned != session.plan.lots.end() && planned->role == LotRole::control;
}

HadLots whoHad(const AboutLots& about, const std::vector<LotId>& lots) {
  HadLots had(lots.size());
  for (const LotAnswer& each : about.answers) {
    const auto lot = static_cast<std::size_t>(each.lot);
    if (!isFlawed(about.sessions[static_cast<std::size_t>(each.session)], lots[lot])) had[lot][each.session].insert(each.person);
  }
  return had;
}

BatchStep linkBetween(int base, int other, const HadLots& had) {
  const auto& hadBase = had[static_cast<std::size_t>(base)];
  const auto& hadOther = had[static_cast<std::size_t>(other)];
  BatchStep step;
  if (const Shared together = sharedBy(hadBase, hadOther); !together.people.empty()) {
    step.link = BatchLink::together;
    step.baseSessions = step.otherSessions = together.sessions;
    step.people = static_cast<int>(together.people.size());
    return step;
  }
  for (std::size_t lot = 0; lot < had.size(); ++lot) {
    if (static_cast<int>(lot) == base || static_cast<int>(lot) == other) continue;
    const Shared one = sharedBy(hadBase, had[lot]), two = sharedBy(hadOther, had[lot]);
    if (one.sessions.empty() || two.sessions.empty()) continue;
    const int people = static_cast<int>(inBothSets(one.people, two.people).size());
    if (step.shared && people <= step.people) continue;
    step.link = BatchLink::reference;
    step.shared = static_cast<int>(lot);
    step.baseSessions = one.sessions;
    step.otherSessions = two.sessions;
    step.people = people;
  }
  return step;
}

std::vector<std::optional<int>> lotsThatCount(int batches, const BatchTastings& tastings, const HadLots& had) {
  std::vector<std::optional<int>> best(static_cast<std::size_t>(batches));
  std::vector<std::tuple<std::size_t, std::size_t, std::size_t>> worth(static_cast<std::size_t>(batches));
  for (std::size_t lot = 0; lot < had.size(); ++lot) {
    if (tastings.batchOf[lot] < 0) continue;
    const auto batch = static_cast<std::size_t>(tastings.batchOf[lot]);
    std::set<int> together, linked;
    for (std::size_t other = 0; other < had.size(); ++other) {
      const int of = tastings.batchOf[other];
      if (of < 0 || of == tastings.batchOf[lot]) continue;
      const BatchLink link = linkBetween(static_cast<int>(lot), static_cast<int>(other), had).link;
      if (link == BatchLink::together) together.insert(of);
      if (link != BatchLink::none) linked.insert(of);
    }
    const std::tuple here{together.size(), linked.size(), had[lot].size()};
    if (best[batch] && here <= worth[batch]) continue;
    worth[batch] = here;
    best[batch] = static_cast<int>(lot);
  }
  return best;
}

}  // namespace oddglass::insight
