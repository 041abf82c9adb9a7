#pragma once

#include "domain/revealed.h"

#include <map>
#include <optional>
#include <vector>

namespace oddglass {

/// A revealed session as far as the page about one person needs it. Of the session there is the plan without its cups, the flights that were answered,
/// who sat where, what was said aloud and set aside; of a score sheet only the answers to one question: the overall liking, or without it the one that
/// was expected about. No names, words, promises or log.
struct OwnSession {
  RevealedSession session;
  std::vector<Slot> own;          ///< lots compared that this person made: a batch in the plan, and theirs on the shelf; none beside a reference of their own
  std::optional<Place> seat;      ///< where they sat as a maker, by name or nickname; nothing where they did not, or asked to be only in the sums
  std::map<Place, int> known;     ///< others who are known beyond this session: the same number stands for the same person in all of them
  std::map<Place, std::map<Slot, int>> open{};  ///< the overall liking once more after the reveal, with the labels known; by place, one value a drink
  bool isExpected = false;        ///< the plan holds what this person expected
};

/// All of one person's, by the day of the reveal. Sessions whose seal was broken or does not hold are not among them.
struct OwnTastings {
  TasterId who;
  bool isBrewer = false;
  std::vector<OwnSession> sessions;
};

}  // namespace oddglass
