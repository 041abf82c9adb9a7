#include "cli/families.h"
#include "cli/options.h"
#include "exchange/csv.h"
#include "stats/positions.h"

#include <cmath>

namespace oddglass::cli {

void describePositions(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "positions", "Whether answers favour a place; where the right ones are marked, from wrong answers only");
  const auto file = command.argument("FILE", "A CSV table, one answer a row");
  const auto method = methodOption(command);
  const auto position = command.option("--position", "P", "The column of the place chosen, from 1");
  const auto correct = command.option("--correct", "C", "The column that holds 1 for right and 0 for wrong");
  command.does([=](Desk&) -> Answer {
    // A guess picks one of 1 / guess possible answers: three cups in a triangle, two in a pair.
    const int places = static_cast<int>(std::lround(1.0 / stats::guessing(methodOf(*method))));
    const exchange::CsvTable table = exchange::readCsv(file->text());
    table.column(position->text());
    if (correct->isGiven()) table.column(correct->text());
    std::vector<int> counts(static_cast<std::size_t>(places));
    int all = 0;
    for (const exchange::CsvRow& row : table.rows) {
      if (exchange::isMissing(table.text(row, position->text()))) continue;
      const int place = table.whole(row, position->text(), 1, places);
      if (correct->isGiven()) {
        if (exchange::isMissing(table.text(row, correct->text())) || table.whole(row, correct->text(), 0, 1) == 1) continue;
      }
      ++counts[static_cast<std::size_t>(place - 1)];
      ++all;
    }
    Json json{{"statistic", nullptr}, {"df", places - 1}, {"p_value", nullptr}, {"p_exact", nullptr}, {"counts", counts}};
    if (all == 0) {
      json["why"] = "there is no answer to look at";
      return {std::move(json), {}};
    }
    const stats::PositionCheck check = stats::positionCheck(counts);
    json["statistic"] = numberOrNull(check.statistic);
    json["df"] = check.df;
    json["p_value"] = numberOrNull(check.pValue);
    json["p_exact"] = numberOrNull(check.pExact);
    if (!check.pExact) json["why"] = "p_exact is worked out where fewer than five are expected at a place, for up to three million outcomes";
    return {std::move(json), {}};
  });
}

}  // namespace oddglass::cli
