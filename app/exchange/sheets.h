#pragma once

#include "session/open_round.h"
#include "session/pour.h"
#include "store/store.h"
#include "tasting/hand_in.h"

#include <filesystem>
#include <vector>

namespace oddglass::exchange {

/// Reads answers from CSV with the columns place, round, item, code, value: one answer a row. `item` is the number of a question or its word
/// (choose, same, prefer, sureness, clue, words; of a score sheet also "liking", "line:bitter" and so on); where two cups are picked, "choose" stands in two rows. `code` is empty or 0, where a question is about the whole flight, and the cup's code on a score sheet; the cup chosen is the value of
/// choose or prefer (it may stand under `code` instead, with value empty or 1; none or 0 is no preference). Same is 1 or same, 2 or different. Sureness is 1 to 3 or guess, fairly, sure; clue 1 to 6 or its word.
/// A missing value (nothing, NA or a point) is left out. The same file twice gives the same hand-ins, so that nothing counts double.
/// Problem badFile with line and column. Whether the table takes them is for tasting::handInAll.
std::vector<tasting::HandIn> readAnswers(store::Store& store, const SessionId& session, const std::filesystem::path& file);

/// Reads what was really poured from CSV with the columns code, lot. `lot` is an id, a name, a number of the plan, or "not sure".
/// Problem badFile with line and column.
std::vector<session::ReallyPoured> readPoured(store::Store& store, const SessionId& session, const std::filesystem::path& file);

/// Reads what was said of the drinks with the labels known from CSV with the columns place, lot (or slot), value. `lot` is an id, a name or a number of the plan.
/// Problem badFile with line and column. Whether the session takes them is for session::answerOpenly.
std::vector<session::OpenAnswers> readOpen(store::Store& store, const SessionId& session, const std::filesystem::path& file);

}  // namespace oddglass::exchange
