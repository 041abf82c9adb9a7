#include "insight/past_spread.h"

#include "domain/item_kinds.h"
#include "insight/points.h"
#include "stats/panel/cells.h"

#include <algorithm>
#include <cmath>

namespace oddglass::insight {
namespace {

constexpr int fewestTables = 2, fewestFreedom = 12, fewestRepeats = 8;

/// Sums of squares with their degrees of freedom, and how much of the repeats' variance stands in the cell means.
struct Squares {
  double within = 0.0, left = 0.0, share = 0.0;
  int freedomWithin = 0, freedomLeft = 0;
};

// One question: answers in shares of the scale, by person and drink.
void addQuestion(Squares& squares, const std::vector<Answer>& answers, const Sheets<PanelFlight>& sheets, const std::vector<Slot>& lots, double length) {
  std::vector<double> values;
  stats::Factor people{{}, static_cast<int>(sheets.places.size())}, drinks{{}, static_cast<int>(lots.size())};
  for (const Answer& answer : answers) {
    if (!answer.value) continue;
    values.push_back(*answer.value / length);
    people.of.push_back(static_cast<int>(std::ranges::find(sheets.places, answer.place) - sheets.places.begin()));
    drinks.of.push_back(static_cast<int>(std::ranges::find(lots, answer.lot) - lots.begin()));
  }
  if (values.empty()) return;
  const std::vector<stats::Cell> cells = stats::cellsOf(values, people, drinks);
  double share = 0.0;
  for (const stats::Cell& cell : cells) {
    squares.within += cell.squares;
    squares.freedomWithin += cell.count - 1;
    share += 1.0 / cell.count / static_cast<double>(cells.size());
  }
  const auto fit = stats::additive(cells, people.levels, drinks.levels);
  if (!fit || fit->residualDf < 1) return;
  squares.left += fit->residualSquares;
  squares.freedomLeft += fit->residualDf;
  squares.share += fit->residualDf * share;
}

}  // namespace

std::optional<PastSpread> pastSpreadOf(const std::vector<RevealedSession>& sessions) {
  Squares all;
  PastSpread spread;
  for (const RevealedSession& session : sessions) {
    const int before = all.freedomLeft;
    const auto sheets = panelSheets(session);
    const auto lots = codedLots(session.plan);
    if (lots.size() < 2 || sheets.places.size() < 2) continue;
    for (const SheetItem& item : session.plan.items) {
      if (!hasPoints(item.kind)) continue;
      const AnswerForm form = answerForm(item.kind);
      addQuestion(all, sheets.answers(item.item), sheets, lots, *form.high - *form.low);
    }
    spread.tables += all.freedomLeft > before;
  }
  if (spread.tables < fewestTables || all.freedomLeft < fewestFreedom) return std::nullopt;
  const double left = all.left / all.freedomLeft, share = all.share / all.freedomLeft;
  spread.hasRepeats = all.freedomWithin >= fewestRepeats;
  const double repeat = spread.hasRepeats ? all.within / all.freedomWithin : left / 2.0;
  spread.repeat = std::sqrt(repeat);
  spread.interaction = std::sqrt(std::max(0.0, spread.hasRepeats ? left - share * repeat : left / 2.0));
  constexpr double nothing = 1e-9;
  if (spread.repeat < nothing && spread.interaction < nothing) return std::nullopt;
  return spread;
}

}  // namespace oddglass::insight
