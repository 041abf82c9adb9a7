#pragma once

#include <optional>
#include <vector>

namespace oddglass::stats {

/// A column of labels: for each row, which of `levels` labels it holds, from 0. Callers number labels in alphabetical order.
struct Factor {
  std::vector<int> of;
  int levels = 0;
};

/// The levels that occur, in rising order.
std::vector<int> levelsIn(const Factor& factor);
/// The same column with only these levels, numbered anew in their order.
Factor occurring(const Factor& factor);

/// Scores in long form, one answer a row; every column has as many rows as `response`. `sample` has two levels or more.
/// Rows may be missing or repeated in any pattern: an answer that was not given is simply not here.
struct ScoreRows {
  std::vector<double> response;
  Factor sample;
  Factor taster;
  std::optional<Factor> round;
  std::optional<Factor> session;
  std::optional<Factor> position;
};

/// Throws BadInput that names the column when one has another length, a label outside its levels, a score that is not finite, or
/// when there are no rows or fewer than two samples.
void requireSound(const ScoreRows& rows);

}  // namespace oddglass::stats
