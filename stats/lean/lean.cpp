#include "stats/lean/lean.h"

#include "stats/error.h"
#include "stats/panel/cells.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace oddglass::stats {
namespace {

constexpr int mostPeople = 10'000'000;

Estimated against(double maker, const std::vector<double>& friends, double level, double scale) {
  if (friends.empty()) return nothing(Reason::fewTasters);
  const auto [mean, sd] = meanAndSpread(friends, scale);
  const double k = static_cast<double>(friends.size());
  if (friends.size() < 3) return alone(maker - mean, Reason::fewTasters);
  return byStudent(maker - mean, *sd * std::sqrt(1.0 + 1.0 / k), k - 1.0, level);
}

MakerContrast::Session contrastOf(int session, const std::vector<Cell>& cells, int maker, double level, double scale) {
  std::vector<double> friends;
  std::optional<double> theirs;
  for (const Cell& cell : cells) {
    if (cell.column != session) continue;
    if (cell.row == maker) theirs = cell.mean;
    else friends.push_back(cell.mean);
  }
  return {session, static_cast<int>(friends.size()), theirs ? against(*theirs, friends, level, scale) : nothing(Reason::notGiven)};
}

}  // namespace

MakerContrast makerContrast(const std::vector<PersonDifference>& differences, int maker, double level, double scale) {
  if (maker < 0) throw BadInput("maker", "must not be negative");
  std::vector<double> values;
  Factor people, sessions;
  for (const PersonDifference& each : differences) {
    if (!std::isfinite(each.difference)) throw BadInput("differences", "must be finite numbers");
    if (each.person < 0 || each.session < 0) throw BadInput("differences", "people and sessions are numbered from 0");
    if (each.person >= mostPeople || each.session >= mostPeople) throw BadInput("differences", "hold more than 10 million people or sessions");
    values.push_back(each.difference);
    people.of.push_back(each.person);
    sessions.of.push_back(each.session);
    people.levels = std::max(people.levels, each.person + 1);
    sessions.levels = std::max(sessions.levels, each.session + 1);
  }
  const std::vector<Cell> cells = cellsOf(values, people, sessions);
  if (cells.size() != values.size()) throw BadInput("differences", "hold a person twice in one session");
  MakerContrast found;
  std::vector<std::vector<Cell>> bySession(static_cast<std::size_t>(sessions.levels));
  for (const Cell& cell : cells) bySession[static_cast<std::size_t>(cell.column)].push_back(cell);
  for (int session = 0; session < sessions.levels; ++session)
    if (const auto& theirs = bySession[static_cast<std::size_t>(session)]; !theirs.empty()) found.sessions.push_back(contrastOf(session, theirs, maker, level, scale));
  if (maker >= people.levels || std::ranges::find(people.of, maker) == people.of.end()) {
    found.lean = nothing(Reason::notGiven);
    return found;
  }
  const auto fit = additive(cells, people.levels, sessions.levels);
  if (!fit) {
    found.lean = nothing(Reason::tooLarge);
    return found;
  }
  std::vector<double> friends;
  for (int person = 0; person < people.levels; ++person)
    if (const auto at = static_cast<std::size_t>(person); person != maker && fit->part[at] == fit->part[static_cast<std::size_t>(maker)]) friends.push_back(fit->row[at]);
  found.friends = static_cast<int>(friends.size());
  found.lean = against(fit->row[static_cast<std::size_t>(maker)], friends, level, scale);
  return found;
}

std::vector<PersonDifference> ownMinusReference(const ScoreRows& rows, int own, int reference) { return openMinusBlind(rows, {}, own, reference); }

std::vector<PersonDifference> openMinusBlind(const ScoreRows& rows, const std::vector<bool>& isOpen, int own, int reference) {
  requireSound(rows);
  if (own < 0 || own >= rows.sample.levels) throw BadInput("own", "is not among the samples");
  if (reference < 0 || reference >= rows.sample.levels) throw BadInput("reference", "is not among the samples");
  if (own == reference) throw BadInput("reference", "must be another sample than the own");
  if (!isOpen.empty() && isOpen.size() != rows.response.size()) throw BadInput("condition", "must have as many rows as the response");
  /// Sum and count of: own, reference; and where conditions are given own and reference of the blind cups.
  struct Sums {
    double sum[4]{};
    int count[4]{};
    double mean(int at) const { return sum[at] / count[at]; }
  };
  std::map<std::pair<int, int>, Sums> people;
  for (std::size_t i = 0; i < rows.response.size(); ++i) {
    if (rows.sample.of[i] != own && rows.sample.of[i] != reference) continue;
    const int at = (rows.sample.of[i] == own ? 0 : 1) + (!isOpen.empty() && !isOpen[i] ? 2 : 0);
    Sums& sums = people[{rows.taster.of[i], rows.session ? rows.session->of[i] : 0}];
    sums.sum[at] += rows.response[i];
    ++sums.count[at];
  }
  std::vector<PersonDifference> differences;
  for (const auto& [who, sums] : people) {
    if (!sums.count[0] || !sums.count[1] || (!isOpen.empty() && (!sums.count[2] || !sums.count[3]))) continue;
    const double blind = isOpen.empty() ? 0.0 : sums.mean(2) - sums.mean(3);
    differences.push_back({who.first, who.second, sums.mean(0) - sums.mean(1) - blind});
  }
  return differences;
}

double sizeOf(const ScoreRows& rows) {
  double largest = 0.0;
  for (double value : rows.response) largest = std::max(largest, std::fabs(value));
  return largest;
}

}  // namespace oddglass::stats
