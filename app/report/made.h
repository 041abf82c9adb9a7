#pragma once

#include "domain/revealed.h"
#include "insight/findings.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace oddglass::report {

/// One possible order of the method and how many of the panel's (alone: the maker's) flights were dealt it; "ABB": A is the plan's first lot.
/// A marked cup comes first.
struct OrderCount {
  std::string order;
  int flights = 0;
};
/// All possible orders of the plan's method and lots, in the order of the letters; of a score sheet those that were dealt.
std::vector<OrderCount> ordersDealt(const RevealedSession& session);

/// One flight of somebody who did not ask to be only in the sums.
struct FlightRow {
  std::string who;
  bool isMaker = false;
  Round round;
  std::string poured;              ///< "ABA"; "?" where the pourer was not sure
  std::vector<Position> picks;     ///< the cups picked; empty when missing, and where the answer is a word
  std::optional<bool> saidSame;
  std::optional<Position> preferred;
  bool preferredNone = false;
  bool isAnswered = false;
  bool counts = false;             ///< answered, not set aside, and a flight of the method as poured
  std::optional<bool> right;       ///< nothing when it does not count, and for a preference
  std::optional<VoidReason> voided;
  std::optional<Sureness> sureness;
  std::optional<Clue> clue;
};
std::vector<FlightRow> flightRows(const RevealedSession& session);

/// What somebody who did not ask to be only in the sums answered about one cup of a score sheet, or of the flight as a whole. Words are not among it.
struct SheetRow {
  std::string who;
  bool isMaker = false;
  Round round;
  std::optional<Slot> lot;         ///< as poured; nothing for the flight as a whole, and where the pourer was not sure
  std::optional<Position> cup;     ///< nothing for the flight as a whole
  std::optional<VoidReason> voided;
  std::vector<std::pair<Item, int>> values;   ///< in the order of the sheet
};
/// By place and round, from the first cup on, then the flight.
std::vector<SheetRow> sheetRows(const RevealedSession& session);

/// The words of codes in files.
std::string_view nameOf(insight::Verdict verdict);
std::string_view nameOf(insight::NoVerdict why);
std::string_view nameOf(insight::WeakenedBy by);
std::string_view nameOf(insight::RangeBy by);
std::string_view nameOf(insight::DeviationKind kind);
std::string_view nameOf(insight::Caution caution);
std::string_view nameOf(insight::Decision decision);

/// The letter of a lot: A for the plan's first; '?' for none of them.
char letterOf(const Plan& plan, Slot slot);

/// When the first flight began; the reveal's own time where no flight did.
Millis tastedAt(const RevealedSession& session);

}  // namespace oddglass::report
