#pragma once

#include "domain/revealed.h"
#include "insight/findings.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace oddglass::report {

/// One of the six orders and how many of the panel's (alone: the maker's) flights were dealt it; "ABB": A is the plan's first lot.
struct OrderCount {
  std::string order;
  int flights = 0;
};
/// All six, in the order of the letters; flights of three cups only.
std::vector<OrderCount> ordersDealt(const RevealedSession& session);

/// One flight of somebody who did not ask to be only in the sums.
struct FlightRow {
  std::string who;
  bool isMaker = false;
  Round round;
  std::string poured;              ///< "ABA"; "?" where the pourer was not sure
  std::vector<Position> picks;     ///< the cups picked; empty when missing
  std::optional<bool> right;       ///< nothing when it does not count
  std::optional<VoidReason> voided;
  std::optional<Sureness> sureness;
  std::optional<Clue> clue;
};
std::vector<FlightRow> flightRows(const RevealedSession& session);

/// The words of codes in files.
std::string_view nameOf(insight::Verdict verdict);
std::string_view nameOf(insight::NoVerdict why);
std::string_view nameOf(insight::WeakenedBy by);
std::string_view nameOf(insight::RangeBy by);
std::string_view nameOf(insight::DeviationKind kind);
std::string_view nameOf(insight::Caution caution);

/// When the first flight began; the reveal's own time where no flight did.
Millis tastedAt(const RevealedSession& session);

}  // namespace oddglass::report
