#include "stats/trend/visits.h"

#include "stats/column.h"
#include "stats/error.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace oddglass::stats {
namespace {

void requireNumbers(const char* name, const std::vector<double>& values) {
  for (double value : values)
    if (!(std::fabs(value) <= 1e12)) throw BadInput(name, "must be finite numbers of at most 1e12");
}

}  // namespace

void requireSound(const TimeRows& rows) {
  if (rows.response.empty()) throw BadInput("response", "there are no answers");
  requireNumbers("response", rows.response);
  requireColumn("taster", rows.taster, rows.response.size());
  requireColumn("session", rows.session, rows.response.size());
  if (rows.age.size() != static_cast<std::size_t>(rows.session.levels)) throw BadInput("age", "must be given once for each session");
  requireNumbers("age", rows.age);
  if (rows.hasControl() && rows.isControl.size() != rows.response.size()) throw BadInput("control", "must have as many rows as the response");
}

Visits visitsOf(const TimeRows& rows) {
  requireSound(rows);
  std::vector<double> side[2];
  Factor taster[2], session[2];
  Visits visits;
  visits.tasterLevels = rows.taster.levels;
  for (std::size_t i = 0; i < rows.response.size(); ++i) {
    const int at = rows.hasControl() && rows.isControl[i] ? 1 : 0;
    side[at].push_back(rows.response[i]);
    taster[at].of.push_back(rows.taster.of[i]);
    session[at].of.push_back(rows.session.of[i]);
    visits.scale = std::max(visits.scale, std::fabs(rows.response[i]));
  }
  visits.cells = cellsOf(side[0], taster[0], session[0]);
  if (rows.hasControl()) {
    std::map<std::pair<int, int>, double> control;
    for (const Cell& cell : cellsOf(side[1], taster[1], session[1])) control[{cell.row, cell.column}] = cell.mean;
    std::erase_if(visits.cells, [&](const Cell& cell) { return !control.contains({cell.row, cell.column}); });
    for (Cell& cell : visits.cells) cell.mean -= control.at({cell.row, cell.column});
  }
  std::vector<int> order(rows.age.size()), number(rows.age.size(), -1);
  std::iota(order.begin(), order.end(), 0);
  std::ranges::stable_sort(order, {}, [&](int s) { return rows.age[static_cast<std::size_t>(s)]; });
  std::vector<char> holds(rows.age.size()), sat(static_cast<std::size_t>(rows.taster.levels));
  for (const Cell& cell : visits.cells) holds[static_cast<std::size_t>(cell.column)] = sat[static_cast<std::size_t>(cell.row)] = 1;
  for (int s : order) {
    const auto at = static_cast<std::size_t>(s);
    if (!holds[at]) continue;
    number[at] = visits.sessions();
    visits.age.push_back(rows.age[at]);
    visits.session.push_back(s);
  }
  for (Cell& cell : visits.cells) cell.column = number[static_cast<std::size_t>(cell.column)];
  visits.tasters = static_cast<int>(std::ranges::count(sat, 1));
  return visits;
}

std::vector<double> changes(const Visits& visits, int earlier, int later) {
  std::map<int, double> before;
  std::vector<double> all;
  for (const Cell& cell : visits.cells)
    if (cell.column == earlier) before[cell.row] = cell.mean;
  for (const Cell& cell : visits.cells)
    if (cell.column == later && before.contains(cell.row)) all.push_back(cell.mean - before[cell.row]);
  return all;
}

}  // namespace oddglass::stats
