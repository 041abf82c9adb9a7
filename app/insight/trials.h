#pragma once

#include "domain/revealed.h"

#include <optional>
#include <utility>
#include <vector>

namespace oddglass::insight {

/// One answered flight that counts.
struct Trial {
  Place place;
  Round round;
  Seq lockedAt;
  std::vector<Position> picks{};      ///< the cups picked, rising; empty where the answer was a word
  std::vector<Position> rightCups{};  ///< those that were right by what was poured (domain/trial.h)
  bool isRight = false;               ///< false for a preference, which cannot be right
  std::optional<Sureness> sureness{};
  std::optional<Clue> clue{};
  std::pair<Slot, Slot> lots{};       ///< the two lots that stood in the flight, lower slot first
  std::optional<bool> saidSame{};     ///< same-different and A-not-A only
  std::optional<bool> wasSame{};      ///< what it really was, there
  std::optional<Position> preferredAt{};
  std::optional<Slot> preferred{};    ///< the lot that was liked better
  bool preferredNone = false;         ///< "no preference" was answered
  bool right() const { return isRight; }
};

/// What became of all the flights of one group. The panel's and the makers' are different types: nothing takes both.
template <class Flight>
struct Tasted {
  std::vector<Trial> trials;  ///< in the order of the session
  int flights = 0;            ///< all that were laid for people who sat, erased people apart
  int missing = 0;            ///< nothing handed in
  int voided = 0;             ///< set aside, or no flight of the method as poured
};

/// The two lots of a plan, in its order; of a plan of three, or without lots, slots 1 and 2.
std::pair<Slot, Slot> lotsOf(const Plan& plan);

/// Sorts the panel's flights. People whose answers were erased are left out altogether. With `lots` only the flights that compare this pair
/// are taken: by what was poured where they count, by what was drawn else.
Tasted<PanelFlight> panelTasted(const RevealedSession& session, std::optional<std::pair<Slot, Slot>> lots = std::nullopt);

/// Sorts the makers' flights.
Tasted<MakerFlight> makersTasted(const RevealedSession& session, std::optional<std::pair<Slot, Slot>> lots = std::nullopt);

/// True when a trial was told by look or fizz.
bool byLookOrFizz(const Trial& trial);

/// True when something had been said in this taster's hearing before they locked.
bool afterSaid(const Trial& trial, const std::vector<SaidAloud>& said);

}  // namespace oddglass::insight
