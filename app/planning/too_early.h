#pragma once

#include "domain/shelf.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace oddglass::planning {

/// Two readings that are this many days apart, and what lies between them, may be called steady; a fall within so many days says that it was still falling. *Common
/// practice*: several days; the number is ours.
constexpr int steadyDays = 3;
/// What a hydrometer's reader can tell apart, in 1/10000 (*common practice*: 0.001).
constexpr int steadyWithin = 10;
/// Volumes of carbon dioxide that a fall of 0.001 adds in a closed bottle (*common practice*, rounded up). By Balling's figures it is 0.49: 0.001 is 2.6 g/L of
/// extract by the hydrometer, 0.81 of that in truth, of which 0.463 becomes carbon dioxide; a volume is 1.96 g/L at 0 C.
constexpr double volumesEach = 0.55;
/// What bottles for beer are typically made for, in volumes (*common practice*).
constexpr double beerBottleVolumes = 4;

/// What the readings of a batch say.
enum class GravityWatch {
  none,      ///< there is no reading
  one,       ///< one only
  tooClose,  ///< nothing moved, over fewer than `steadyDays`
  falling,   ///< within `steadyDays`, by more than can be misread
  fell,      ///< the same over a longer time: somewhere in between, and perhaps not any more
  rising,    ///< above an earlier one by more than can be misread: read again
  steady,    ///< within `steadyWithin` over `steadyDays` or more
};

/// One thing that is watched in the bottles, by its notes.
struct Watched {
  NoteKind kind = NoteKind::haze;    ///< haze, sediment or sulphur
  std::string day, before;           ///< of the last note and of the one before it; empty where there is none
  int level = 0;                     ///< 0 to 3
  std::optional<int> levelBefore;
};

/// Whether a batch may have been bottled, or be opened, too early: what its notes and readings say, and what they leave open. It never says that it is not.
struct TooEarly {
  GravityWatch gravity = GravityWatch::none;
  std::string lastDay, sinceDay;     ///< the last reading, and the one it is held against
  std::optional<int> last, since;    ///< their gravities in 1/10000
  int days = 0;                      ///< between them
  std::string nextDay;               ///< when another reading would say more; empty where it would not
  std::optional<double> extractLeft; ///< g/L, by Balling from the original gravity and the last reading; not all of it can ferment
  std::optional<int> fallLeft;       ///< from the last reading to the final gravity that was given, in 1/10000, above 0
  std::optional<double> volumesLeft; ///< what that fall would add in a closed bottle
  std::string stabilisedOn;          ///< empty where it was not
  std::string bottledOn;             ///< the first bottling; empty where it was not
  std::optional<int> daysInBottle;
  std::vector<Watched> watched;      ///< haze, sediment, sulphur, those that have a note
  std::string gushedOn;              ///< the last bottle that ran over; empty where none did
};

/// `notes` as they stand now, in any order; `today` YYYY-MM-DD. Readings after today, or without a gravity, do not count; of one day the later written first in
/// `notes` counts. Balling's real extract: 0.1808 of the original and 0.8192 of the apparent one, in degrees Plato (1843; coefficients from memory).
TooEarly tooEarly(const Beverage& drink, const std::vector<Lot>& lots, const std::vector<Note>& notes, std::string_view today);

}  // namespace oddglass::planning
