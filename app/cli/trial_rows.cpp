#include "cli/trial_rows.h"

#include "domain/problem.h"
#include "exchange/csv.h"

#include <algorithm>
#include <map>

namespace oddglass::cli {
namespace {

using exchange::CsvRow;
using exchange::CsvTable;

void readPreference(const CsvTable& table, const CsvRow& row, const std::string& column, TrialRow& trial) {
  const std::string& cell = table.text(row, column);
  if (exchange::isMissing(cell)) return;
  if (cell != "first" && cell != "second" && cell != "none") table.refuse(row, column, '"' + cell + "\" is neither first nor second nor none");
  trial.prefersNone = cell == "none";
  if (!trial.prefersNone) trial.prefersFirst = cell == "first";
}

}  // namespace

std::vector<TrialRow> readTrials(bool isPreference, const Given& file, const TrialColumns& columns) {
  const std::string& taster = columns.taster.text();
  const bool byWord = isPreference && !columns.correct.isGiven();
  const std::string& answer = byWord ? columns.prefers.text() : columns.correct.text();
  const CsvTable table = exchange::readCsv(file.text());
  for (const Given* each : {&columns.taster, &columns.correct, &columns.prefers, &columns.sure})
    if (each->isGiven()) table.column(each->text());
  std::vector<TrialRow> rows;
  for (const CsvRow& row : table.rows) {
    if (exchange::isMissing(table.text(row, answer))) continue;
    TrialRow trial;
    trial.taster = table.text(row, taster);
    if (exchange::isMissing(trial.taster)) table.refuse(row, taster, "no taster is named");
    if (columns.prefers.isGiven()) readPreference(table, row, columns.prefers.text(), trial);
    trial.right = byWord ? trial.prefersFirst.value_or(false) : table.whole(row, answer, 0, 1) == 1;
    if (isPreference && !columns.prefers.isGiven()) trial.prefersFirst = trial.right;
    if (columns.sure.isGiven() && !exchange::isMissing(table.text(row, columns.sure.text()))) trial.sureness = table.whole(row, columns.sure.text(), 1, 3);
    rows.push_back(std::move(trial));
  }
  return rows;
}

int TasterRows::right() const { return static_cast<int>(std::ranges::count_if(rows, &TrialRow::right)); }

int TasterRows::leanToFirst(bool rightOnly) const {
  int lean = 0;
  for (const TrialRow& row : rows)
    if (row.prefersFirst && (row.right || !rightOnly)) lean += *row.prefersFirst ? 1 : -1;
  return lean;
}

std::vector<TasterRows> byTaster(const std::vector<TrialRow>& rows) {
  std::map<std::string, std::vector<TrialRow>> tasters;
  for (const TrialRow& row : rows) tasters[row.taster].push_back(row);
  std::vector<TasterRows> all;
  for (auto& [taster, theirs] : tasters) all.push_back({taster, std::move(theirs)});
  return all;
}

}  // namespace oddglass::cli
