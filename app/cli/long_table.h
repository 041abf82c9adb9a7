#pragma once

#include "cli/given.h"
#include "exchange/csv.h"
#include "stats/long_rows.h"

#include <memory>
#include <string>
#include <vector>

namespace oddglass::cli {

/// The labels of a column, in alphabetical order, and which of them each row holds.
struct Labels {
  std::vector<std::string> names;
  stats::Factor factor;
};

/// A CSV table in long form, one answer a row, whose columns are named by options. A row whose answer is missing is left out
/// (`keepAnswered`); what stands in the other columns of a row that is kept must be there.
/// Problems everywhere: badFile with file, line and column; empty when the option of a column was not given.
class LongTable {
 public:
  /// Reads the file; every given column must be there.
  LongTable(const Given& file, const std::vector<const Given*>& columns);

  /// Leaves out the rows in which this column is missing. Problem(badFile) when none is left.
  void keepAnswered(const Given& column);

  std::size_t rows() const { return kept_.size(); }
  std::vector<double> numbers(const Given& column, double low = -1e12, double high = 1e12) const;
  std::vector<int> wholes(const Given& column, int low, int high) const;
  /// The labels of a column. With `atLeast` 2, a column that holds one label only is refused.
  Labels labels(const Given& column, int atLeast = 1) const;
  /// As typed, missing ones empty.
  std::vector<std::string> texts(const Given& column) const;
  /// Refuses the first row in which the same labels come together again; the message is "taster VERB sample before", in the order of `labels`,
  /// and names `column`.
  void requireOnce(const std::vector<const Labels*>& labels, const Given& column, const std::string& verb) const;
  /// Says what is wrong in the column of a kept row.
  [[noreturn]] void refuse(std::size_t row, const Given& column, const std::string& text) const;

 private:
  exchange::CsvTable table_;
  std::vector<std::size_t> kept_;
};

/// Which label of a column was meant by an option, such as --reference; Problem(notAChoice) that names the option.
int labelOf(const Labels& labels, const Given& wanted);

/// The columns that score commands share. Those that were not given are left out of the rows.
struct ScoreColumns {
  std::shared_ptr<Given> file, response, sample, taster, round, session, position, descriptor;
};

/// Scores with the names of their labels.
struct NamedScores {
  stats::ScoreRows rows;
  std::vector<std::string> samples, tasters, rounds, sessions;
  Labels descriptors;  ///< empty unless a command has them
};

/// Reads scores; rows without a response are left out. One sample only is refused.
NamedScores readScores(const ScoreColumns& columns);

}  // namespace oddglass::cli
