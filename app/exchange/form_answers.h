#pragma once

#include "domain/plan.h"
#include "store/store.h"
#include "tasting/hand_in.h"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace oddglass::exchange {

/// What each column of a table means, by the column's name. A meaning is
///   place, name (or nickname) of whoever answered, round, or cup (its code, or its position from the left): of the whole row;
///   a question by its number, its kind, or kind and word ("liking", "line:bitter"), then "@2" for the second cup from the left (or "@472" for a code) where the column
///   itself stands for a cup, then "#2" where it stands for a round;
///   "check" for a cell that lists all words that were ticked; "choose" for one or more cups;
///   "-" for a column that is left out.
using Meanings = std::map<std::string, std::string>;

/// One column of a table.
struct FormColumn {
  std::string name;
  std::string means;      ///< as it will be taken: what was said, else what its name says by itself, else "-"; questions by their numbers, but "check" and "choose" where they stand for several
  std::string example;    ///< the first cell of it that holds something
};

/// The columns of a table as they would be taken. A column whose name is a meaning needs none ("place", "Liking", "liking@1").
/// Problem badFile: no table, a meaning for a column that is not there, or one that this session does not know.
std::vector<FormColumn> formColumns(store::Store& store, const SessionId& session, const std::filesystem::path& file, const Meanings& meanings);

/// Reads answers from a table of any form: a row a person, a row a person and round, or a row a cup. All of it or nothing: every cell is looked at, every flight must be
/// whole. A missing cell (nothing, NA, a point) is left out; a word to tick, or points to give, are then 0, as on paper. A cup is chosen by its code or by its position from
/// the left. Codes are those of the place alone. The same table twice gives the same hand-ins.
/// Problem badFile with line and column. Whether the table takes them is for tasting::handInTable.
std::vector<tasting::HandIn> readForm(store::Store& store, const SessionId& session, const std::filesystem::path& file, const Meanings& meanings);

}  // namespace oddglass::exchange
