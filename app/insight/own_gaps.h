#pragma once

#include "domain/own.h"
#include "insight/sheets.h"
#include "stats/lean/lean.h"

#include <map>
#include <optional>
#include <vector>

namespace oddglass::insight {

/// How far people put a person's own drinks above the reference, in points of the overall liking: what leans and label effects are made of.

constexpr double ownLevel = 0.95, largestLiking = 9.0;

/// By place.
using Gaps = std::map<Place, double>;

/// The mean of the lots in `above` minus that of `below`, for whoever scored all of them.
template <class Flight>
Gaps gapsOf(const Sheets<Flight>& sheets, Item item, const std::vector<Slot>& above, Slot below);

/// A session's gaps: the person's own, and those of the panel.
struct Beside {
  std::optional<double> theirs;
  Gaps panel;
  bool isCounted() const { return theirs && !panel.empty(); }
};

/// From the blind sheets. Empty where the person did not sit there, or has nothing of their own beside a reference there.
/// `unheard`: without what was locked after something had been said aloud.
Beside besideOf(const OwnSession& own, bool unheard);

/// How much further than blind each of them put the own drinks above the reference with the labels known; whoever did both.
Beside openMinusBlind(const OwnSession& own);

/// One session's contrast: the person against the panel.
stats::MakerContrast within(const Beside& beside);

/// The contrast over sessions, by the people who are known in them.
class OverSessions {
 public:
  void add(const OwnSession& own, const Beside& beside);
  stats::MakerContrast contrast() const;
  int together() const { return together_; }        ///< sessions with somebody who is known
  int onlyInSums() const { return onlyInSums_; }    ///< times that somebody sat who cannot be known again

 private:
  std::vector<stats::PersonDifference> differences_;
  int together_ = 0, onlyInSums_ = 0;
};

}  // namespace oddglass::insight
