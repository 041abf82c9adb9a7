#pragma once

#include "stats/long_rows.h"
#include "stats/panel/cells.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// Scores of one batch over time, one answer a row; where a control stood in the sittings too, its rows are among them.
struct TimeRows {
  std::vector<double> response;
  Factor taster;
  Factor session;
  std::vector<double> age;      ///< one for each level of `session`, in any unit
  std::vector<bool> isControl;  ///< for each row; empty without a control
  bool hasControl() const { return !isControl.empty(); }
};

/// Throws BadInput that names the column: another length, a label outside its levels, a number that is not finite or above 1e12 in size, no rows.
void requireSound(const TimeRows& rows);

/// One value for each taster and session they sat in: the mean of the batch, or with a control the mean of the batch minus that of the control.
/// A visit without either is left out.
struct Visits {
  std::vector<Cell> cells;    ///< row taster, column session; the sessions are renumbered
  std::vector<double> age;    ///< of the sessions that hold a visit, by age, then by the label of the session
  std::vector<int> session;   ///< the label each of them had
  int tasterLevels = 0;
  int tasters = 0;            ///< how many have a visit
  double scale = 0.0;         ///< the largest score, without its sign
  int sessions() const { return static_cast<int>(age.size()); }
  /// True when everybody sat in every session.
  bool isComplete() const { return static_cast<int>(cells.size()) == tasters * sessions(); }
};
Visits visitsOf(const TimeRows& rows);

/// Later minus earlier value of each taster who sat in both sessions (numbers of `Visits`).
std::vector<double> changes(const Visits& visits, int earlier, int later);

}  // namespace oddglass::stats
