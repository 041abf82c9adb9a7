#pragma once

#include "stats/panel/cells.h"
#include "stats/profile/profile_rows.h"
#include "stats/reason.h"

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace oddglass::stats {

/// A profile as cells, rounds and repeats averaged: for each descriptor the cells by taster (row) and sample (column).
struct ProfileCells {
  int tasters = 0, samples = 0;
  std::vector<std::vector<Cell>> descriptors;
};
/// BadInput as `requireSound`.
ProfileCells profileCells(const ProfileRows& rows);

/// The panel's mean of each sample in one descriptor.
struct PanelMeans {
  std::optional<Eigen::VectorXd> samples;  ///< empty with `why`
  Eigen::VectorXd level;                   ///< each taster's level at the average sample; 0 for one without an answer
  std::optional<Reason> why;               ///< emptyCell: nobody scored some sample; notConnected: no chain of tasters links all samples; tooLarge
};

/// Means freed of who is missing: taster + sample by least squares; plain means of a complete table. `without` leaves a taster out.
/// Source: Scheffe 1959, chapter 4.
PanelMeans panelMeans(const std::vector<Cell>& cells, int tasters, int samples, std::optional<int> without = {});

/// One descriptor's cells as a table, tasters in rows and samples in columns.
struct TasterTable {
  Eigen::MatrixXd mean;                                   ///< 0 where nothing was answered
  Eigen::Array<bool, Eigen::Dynamic, Eigen::Dynamic> has;
};
TasterTable tasterTable(const std::vector<Cell>& cells, int tasters, int samples);

}  // namespace oddglass::stats
