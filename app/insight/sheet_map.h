#pragma once

#include "insight/sheets.h"
#include "stats/reason.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace oddglass::insight {

/// A question that takes part: a word that was scored on a line.
struct MapWord {
  Item item;
  ItemKind kind = ItemKind::line;
  Part part = Part::main;
  std::string word;
  std::vector<double> loadings;      ///< one for each axis; empty with `why`
  std::optional<stats::Reason> why;  ///< emptyCell, notConnected: no mean for some lot
};

/// How sure a lot's place is: where the panel's mean lies at level 1 - alpha by Hotelling, on the first two axes.
struct MapSure {
  double longer = 0.0, shorter = 0.0;  ///< half axes
  double turn = 0.0;                   ///< of the longer one, in degrees anticlockwise from the first axis
};

/// Where a lot lies.
struct MapLot {
  Slot lot;
  std::vector<double> at;                     ///< on each axis
  int people = 0;                             ///< who scored it in every word
  std::optional<MapSure> sure;
  std::vector<std::array<double, 2>> points;  ///< one for each of these people, nobody named; only where there is no ellipse for want of people
  std::optional<stats::Reason> why;           ///< why there is no ellipse: fewTasters (under 5), noSpread, emptyCell
};

/// How the lots lie to each other over all words that were scored on lines: principal components of the panel's means. Looked at afterwards, never part of
/// a verdict. Everything is in hundredths of a line's length, so that lines of both kinds weigh alike; liking and distance take no part.
struct SheetMap {
  int people = 0;              ///< who scored anything
  std::vector<double> shares;  ///< of each axis in what differs between the lots, 0 to 1
  std::vector<MapWord> words;  ///< in the order of the sheet
  std::vector<MapLot> lots;    ///< in the order of the plan
  std::optional<stats::Reason> why;  ///< no axes: fewSamples (under 3 lots), notGiven (under 2 words), noSpread, emptyCell, notConnected

  /// True where there are two axes to draw on.
  bool isPlane() const { return shares.size() >= 2; }
};

/// From the sheets that count: the panel's, or alone the maker's. Two cups of one lot and rounds are averaged first. No lots are left out.
/// Source: stats/profile/components.h.
SheetMap sheetMapOf(const RevealedSession& session);

}  // namespace oddglass::insight
