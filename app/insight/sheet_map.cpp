#include "insight/sheet_map.h"

#include "insight/points.h"
#include "stats/profile/components.h"

#include <algorithm>
#include <iterator>

namespace oddglass::insight {
namespace {

bool isLine(ItemKind kind) { return kind == ItemKind::line || kind == ItemKind::magnitude; }

template <class Flight>
stats::ProfileRows mapRows(const SheetMap& map, const Sheets<Flight>& sheets, const std::vector<Slot>& lots) {
  stats::ProfileRows rows;
  rows.scores.sample.levels = static_cast<int>(lots.size());
  rows.scores.taster.levels = static_cast<int>(sheets.places.size());
  rows.descriptor.levels = static_cast<int>(map.words.size());
  for (std::size_t d = 0; d < map.words.size(); ++d) {
    const double length = *answerForm(map.words[d].kind).high;
    for (const Score& score : byPerson(sheets.answers(map.words[d].item))) {
      rows.scores.response.push_back(100.0 * score.value / length);
      rows.scores.sample.of.push_back(static_cast<int>(std::ranges::find(lots, score.lot) - lots.begin()));
      rows.scores.taster.of.push_back(static_cast<int>(std::ranges::find(sheets.places, score.place) - sheets.places.begin()));
      rows.descriptor.of.push_back(static_cast<int>(d));
    }
  }
  return rows;
}

void place(MapLot& lot, const stats::SampleEllipse& found) {
  lot.people = static_cast<int>(found.points.size());
  lot.why = found.why;
  if (found.semiAxes && found.angle) lot.sure = MapSure{found.semiAxes->x(), found.semiAxes->y(), *found.angle};
  if (found.why == stats::Reason::fewTasters)
    for (const Eigen::Vector2d& point : found.points) lot.points.push_back({point.x(), point.y()});
  std::ranges::sort(lot.points);  // nobody is known by the order
}

std::vector<double> listOf(const auto& row) { return {row.begin(), row.end()}; }

template <class Flight>
SheetMap mapOf(const Plan& plan, const Sheets<Flight>& sheets) {
  SheetMap map;
  map.people = static_cast<int>(sheets.places.size());
  for (const SheetItem& item : plan.items)
    if (isLine(item.kind)) map.words.push_back({item.item, item.kind, item.part, item.word, {}, std::nullopt});
  const auto lots = codedLots(plan);
  if (lots.size() < 3) map.why = stats::Reason::fewSamples;
  else if (map.words.size() < 2) map.why = stats::Reason::notGiven;
  if (map.why) return map;
  const stats::ProfileRows rows = mapRows(map, sheets, lots);
  if (rows.scores.response.empty()) {
    map.why = stats::Reason::emptyCell;
    return map;
  }
  const stats::ProfileComponents found = stats::componentsOf(stats::profileCells(rows), false, 1.0 - plan.alphaPm / 1000.0);
  map.shares = found.shares;
  map.why = found.why;
  for (std::size_t d = 0; d < map.words.size(); ++d) {
    map.words[d].why = found.leftOut[d];
    if (!found.leftOut[d] && !found.why) map.words[d].loadings = listOf(found.descriptors.row(static_cast<Eigen::Index>(d)));
  }
  if (found.why) return map;
  for (std::size_t i = 0; i < lots.size(); ++i) {
    MapLot lot;
    lot.lot = lots[i];
    lot.at = listOf(found.samples.row(static_cast<Eigen::Index>(i)));
    place(lot, found.ellipses[i]);
    map.lots.push_back(std::move(lot));
  }
  return map;
}

}  // namespace

SheetMap sheetMapOf(const RevealedSession& session) {
  return session.plan.claim == Claim::me ? mapOf(session.plan, makerSheets(session)) : mapOf(session.plan, panelSheets(session));
}

}  // namespace oddglass::insight
