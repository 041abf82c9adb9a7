#include "cli/said_rows.h"

#include "exchange/csv.h"

namespace oddglass::cli {

std::vector<SaidRow> readSaid(const Given& file, const Given& signal, const Given& said, const Given& sure, int mostSure) {
  const exchange::CsvTable table = exchange::readCsv(file.text());
  table.column(signal.text());
  for (const Given* each : {&said, &sure})
    if (each->isGiven()) table.column(each->text());
  std::vector<SaidRow> rows;
  for (const exchange::CsvRow& row : table.rows) {
    const auto isMissing = [&](const Given& column) { return column.isGiven() && exchange::isMissing(table.text(row, column.text())); };
    if (isMissing(said) || isMissing(sure)) continue;
    SaidRow trial;
    trial.isSignal = table.whole(row, signal.text(), 0, 1) == 1;
    if (said.isGiven()) trial.saidSignal = table.whole(row, said.text(), 0, 1) == 1;
    if (sure.isGiven()) trial.sure = table.whole(row, sure.text(), 1, mostSure);
    rows.push_back(trial);
  }
  return rows;
}

}  // namespace oddglass::cli
