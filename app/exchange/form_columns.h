#pragma once

#include "exchange/csv.h"
#include "exchange/form_answers.h"

#include <optional>

namespace oddglass::exchange {

/// A column's meaning, read.
struct ColumnMeaning {
  enum class Kind { leftOut, place, name, round, cup, answer };
  Kind kind = Kind::leftOut;
  std::vector<const SheetItem*> items;   ///< of an answer: its question; several for words to tick in one cell, and for cups to choose
  bool isTicks = false;                  ///< the cell lists words
  std::optional<int> cup, round;         ///< of this column alone; a cup below 100 is a position from the left
};

/// Nothing for a text that is no meaning here. `plan` must outlive what is given.
std::optional<ColumnMeaning> meaningOf(const Plan& plan, std::string_view text);
/// The meaning as a text that reads as the same one.
std::string textOf(const ColumnMeaning& meaning);

/// The columns of a table with their meanings, in the order of the table.
struct ReadColumn {
  std::string name;
  ColumnMeaning meaning;
};
std::vector<ReadColumn> readColumns(const Plan& plan, const CsvTable& table, const Meanings& meanings);

}  // namespace oddglass::exchange
