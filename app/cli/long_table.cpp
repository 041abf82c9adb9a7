#include "cli/long_table.h"

#include "domain/problem.h"

#include <algorithm>
#include <set>

namespace oddglass::cli {

LongTable::LongTable(const Given& file, const std::vector<const Given*>& columns) : table_(exchange::readCsv(file.text())) {
  for (const Given* column : columns)
    if (column && column->isGiven()) table_.column(column->text());
  for (std::size_t row = 0; row < table_.rows.size(); ++row) kept_.push_back(row);
}

void LongTable::keepAnswered(const Given& column) {
  const std::size_t at = table_.column(column.text());
  std::erase_if(kept_, [&](std::size_t row) { return exchange::isMissing(table_.rows[row].cells[at]); });
  if (kept_.empty()) throw Problem(Trouble::badFile, column.text(), {{"file", table_.file}, {"line", "1"}, {"text", "no row has an answer in this column"}});
}

std::vector<double> LongTable::numbers(const Given& column, double low, double high) const {
  std::vector<double> values;
  values.reserve(kept_.size());
  for (std::size_t row : kept_) values.push_back(table_.number(table_.rows[row], column.text(), low, high));
  return values;
}

std::vector<int> LongTable::wholes(const Given& column, int low, int high) const {
  std::vector<int> values;
  values.reserve(kept_.size());
  for (std::size_t row : kept_) values.push_back(table_.whole(table_.rows[row], column.text(), low, high));
  return values;
}

std::vector<std::string> LongTable::texts(const Given& column) const {
  const std::size_t at = table_.column(column.text());
  std::vector<std::string> values;
  values.reserve(kept_.size());
  for (std::size_t row : kept_) values.push_back(exchange::isMissing(table_.rows[row].cells[at]) ? std::string() : table_.rows[row].cells[at]);
  return values;
}

Labels LongTable::labels(const Given& column, int atLeast) const {
  const std::vector<std::string> values = texts(column);
  Labels labels;
  for (std::size_t row = 0; row < values.size(); ++row)
    if (values[row].empty()) refuse(row, column, "this is missing");
  labels.names = values;
  std::ranges::sort(labels.names);
  labels.names.erase(std::unique(labels.names.begin(), labels.names.end()), labels.names.end());
  labels.factor.levels = static_cast<int>(labels.names.size());
  if (labels.factor.levels < atLeast) refuse(0, column, "every row says " + labels.names.front() + "; a comparison needs two");
  for (const std::string& value : values) labels.factor.of.push_back(static_cast<int>(std::ranges::lower_bound(labels.names, value) - labels.names.begin()));
  return labels;
}

void LongTable::requireOnce(const std::vector<const Labels*>& labels, const Given& column, const std::string& verb) const {
  std::set<std::vector<int>> seen;
  for (std::size_t row = 0; row < kept_.size(); ++row) {
    std::vector<int> together;
    for (const Labels* each : labels) together.push_back(each->factor.of[row]);
    if (seen.insert(together).second) continue;
    std::string text;
    for (std::size_t i = 0; i < labels.size(); ++i) text += (i == 0 ? "" : i == 1 ? ' ' + verb + ' ' : ", ") + labels[i]->names[static_cast<std::size_t>(together[i])];
    refuse(row, column, text + " before");
  }
}

void LongTable::refuse(std::size_t row, const Given& column, const std::string& text) const { table_.refuse(table_.rows[kept_[row]], column.text(), text); }

int labelOf(const Labels& labels, const Given& wanted) { return static_cast<int>(std::ranges::find(labels.names, wanted.oneOf(labels.names)) - labels.names.begin()); }

NamedScores readScores(const ScoreColumns& columns) {
  LongTable table(*columns.file, {columns.response.get(), columns.sample.get(), columns.taster.get(), columns.round.get(), columns.session.get(), columns.position.get(),
                                  columns.descriptor.get()});
  table.keepAnswered(*columns.response);
  NamedScores scores;
  scores.rows.response = table.numbers(*columns.response);
  const auto take = [&](const std::shared_ptr<Given>& column, std::optional<stats::Factor>& into, std::vector<std::string>* names) {
    if (!column || !column->isGiven()) return;
    Labels labels = table.labels(*column);
    into = std::move(labels.factor);
    if (names) *names = std::move(labels.names);
  };
  Labels samples = table.labels(*columns.sample, 2), tasters = table.labels(*columns.taster);
  scores.rows.sample = std::move(samples.factor);
  scores.samples = std::move(samples.names);
  scores.rows.taster = std::move(tasters.factor);
  scores.tasters = std::move(tasters.names);
  take(columns.round, scores.rows.round, &scores.rounds);
  take(columns.session, scores.rows.session, &scores.sessions);
  take(columns.position, scores.rows.position, nullptr);
  if (columns.descriptor) scores.descriptors = table.labels(*columns.descriptor);
  return scores;
}

}  // namespace oddglass::cli
