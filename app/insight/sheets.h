#pragma once

#include "domain/revealed.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace oddglass::insight {

/// One answer of a score sheet that counts, with what was really in the cup.
struct Answer {
  Place place;
  Round round;
  Position cup;                ///< 0 for a question about the flight
  Slot lot;                    ///< 0 for a question about the flight
  std::optional<int> value;    ///< nothing where it is in words
  std::string words;           ///< may have been erased
  Seq lockedAt;
};

/// What one group wrote on its sheets. The panel's and the makers' are different types: nothing takes both.
template <class Flight>
struct Sheets {
  std::map<Item, std::vector<Answer>> to;  ///< by question; by place, then round, then cup
  std::vector<Place> places;               ///< whoever handed in a sheet that counts, rising
  int flights = 0;                         ///< all that were laid for people who sat, erased people apart
  int missing = 0, voided = 0;
  int unsure = 0;                          ///< cups left out because the pourer was not sure of them

  /// The answers to a question; empty when nobody gave one.
  const std::vector<Answer>& answers(Item item) const {
    static const std::vector<Answer> none;
    const auto found = to.find(item);
    return found == to.end() ? none : found->second;
  }
};

/// Reads the panel's sheets. People whose answers were erased are left out, and with `unheard` every sheet that was locked after something had been
/// said in its taster's hearing.
Sheets<PanelFlight> panelSheets(const RevealedSession& session, bool unheard = false);
Sheets<MakerFlight> makerSheets(const RevealedSession& session, bool unheard = false);

/// What one person said of one lot in one round: two cups of one lot in a flight are averaged.
struct Score {
  Place place;
  Round round;
  Slot lot;
  double value = 0.0;
};
std::vector<Score> scoresOf(const std::vector<Answer>& answers);

/// What one person said of one lot, whatever they had of it: all their cups and rounds averaged. By place, then lot.
std::vector<Score> byPerson(const std::vector<Answer>& answers);

/// What each person said of each lot when they first had it: for answers that cannot be averaged. By place, then lot.
std::vector<Answer> firstOf(const std::vector<Answer>& answers);

/// How far apart one person put two cups of the same drink in one flight.
struct Twice {
  Place place;
  Round round;
  Slot lot;
  double first = 0.0, second = 0.0;  ///< by position
};
std::vector<Twice> twiceOf(const std::vector<Answer>& answers);

}  // namespace oddglass::insight
