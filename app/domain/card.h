#pragma once

#include "domain/known.h"

#include <map>
#include <optional>
#include <vector>

namespace oddglass {

/// Somebody asked to be told how they taste.
struct CardWish {
  TasterId who;
  Millis askedAt = 0;
  std::optional<Millis> shownAt;  ///< when they saw it themselves and let the brewer see it; nothing before
};

/// A revealed score sheet that asks the overall liking, as far as a card needs it: the plan without its cups, the flights that were answered with that
/// one question, what was said and set aside. No names and no words.
struct ScoredSheet {
  RevealedSession session;
  Place seat;                  ///< where the person sat, by name or nickname
  bool isMaker = false;        ///< as a maker of one of the drinks
  std::map<Place, int> known;  ///< others of the panel who are known beyond this session: the same number stands for the same person in all of them, from 1
};

/// All that a person's card is worked out from, by the day of the reveal.
struct CardTastings {
  TasterId who;
  std::vector<ScoredSheet> sheets;
  KnownDifferences known;      ///< those in which the person sat by name or nickname
};

}  // namespace oddglass
