#pragma once

#include "domain/plan.h"
#include "exchange/csv.h"
#include "tasting/hand_in.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace oddglass::exchange {

/// A text and the column that it stands in, for what is said about it.
struct NamedCell {
  std::string column;
  std::string text;
};

/// What one answer of a table is made of: the cup it is about and what was answered.
struct AnswerCells {
  const CsvTable& table;
  const CsvRow& row;
  NamedCell code, value;

  [[noreturn]] void refuse(const NamedCell& cell, const std::string& text) const;
  /// A whole number within bounds. Problem badFile.
  int whole(const NamedCell& cell, int low, int high) const;
};

/// True for what means the flight as a whole: nothing, or 0.
bool isFlightWide(const std::string& code);

/// The answer to one question. A cup is chosen by its code under `value`, or under `code` with `value` empty or 1; "none" or 0 is no preference. Sureness, clue, and the same
/// or not are numbers or words. Problem badFile with line and column.
tasting::Reply replyOf(const SheetItem& item, const AnswerCells& cells);

/// Flights as they are gathered: round by round, as the table takes them.
using Flights = std::map<std::pair<Round, Place>, tasting::HandIn>;

/// True when this question, about this cup, has an answer among those of the flight.
bool answersAlready(const tasting::HandIn& in, const tasting::Reply& reply);

/// The hand-ins with ids made of what they hold, so that the same answers read twice are one hand-in.
std::vector<tasting::HandIn> handInsOf(const SessionId& session, Flights flights);

}  // namespace oddglass::exchange
