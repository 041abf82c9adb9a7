#pragma once

#include "tasting/flight.h"

#include <string>
#include <vector>

namespace oddglass::tasting {

/// A place with its flights as they stand now: a code that replaced a spilled one in its stead.
struct PaperPlace {
  Place place;
  bool isSpare = false;
  std::vector<Flight> flights;   ///< in the order of the rounds
};

/// All that labels, mats, answer sheets and the run list are made of. Nothing in it depends on the key, and no lot can stand in it.
struct TablePaper {
  SessionId id;
  std::string guestTitle;
  std::string sealMark;
  int cupMl = 0;
  int rounds = 1;
  int evenings = 1;
  int wave = 0;                       ///< how many places are served at a time; 0: all at once
  std::vector<PaperPlace> places;
  std::vector<Cup> cups;              ///< every code that was drawn: place by place, round by round, from left to right; then the spare ones likewise
  bool hasMarked = false;             ///< the first cup of each flight is marked
};

/// Problem notSealed, unknown.
TablePaper tablePaper(store::Store& store, const SessionId& session);

}  // namespace oddglass::tasting
