#pragma once

#include "domain/numbers.h"
#include "domain/sheet.h"

#include <optional>
#include <vector>

namespace oddglass {

/// One reply of a hand-in as far as it can be checked: which question, about which cup (0: the flight), and a number or words.
struct GivenReply {
  Item item;
  Code code;
  std::optional<int> value;
  bool hasText = false;
};

/// Why a hand-in is not taken.
enum class ReplyFault {
  unknown,       ///< a question that was not asked
  twice,         ///< a question answered twice (about one cup), or one cup picked twice
  missing,       ///< a question that needs an answer has none
  outOfRange,    ///< no such answer, words where a number belongs or the other way round, a cup named where none is asked about
  notHere,       ///< a code that does not stand in this flight
  notARanking,   ///< a rank given twice
  notFivePoints, ///< the points split do not add up to five
};

struct FaultyReply {
  ReplyFault fault;
  Item item;
  Code code;     ///< 0: the flight
  int value = 0;
};

/// The first thing wrong with the replies of one flight. `cups` are the codes that can be chosen and scored, a marked one not among them.
std::optional<FaultyReply> firstFault(const std::vector<SheetItem>& items, const std::vector<Code>& cups, const std::vector<GivenReply>& replies);

}  // namespace oddglass
