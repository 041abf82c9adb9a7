#pragma once

#include "domain/revealed.h"

#include <string>
#include <vector>

namespace oddglass::exchange {

/// The answers of a revealed score sheet, one row an answer, with a head row: session, place, person, who (panel or maker), round, set_aside, position,
/// code, lot (its number in the plan, by what was poured), drink, item, kind, part, word, value, words. Position to drink are empty for a question
/// about the flight; lot and drink where the pourer was not sure.
std::vector<std::vector<std::string>> scoreRows(const RevealedSession& session);

/// What the columns mean, for the codebook: table, column, meaning.
const std::vector<std::vector<std::string>>& scoreCodebook();

}  // namespace oddglass::exchange
