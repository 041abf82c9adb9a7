#pragma once

#include "domain/plan.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace oddglass {

/// What one person of the panel answered to one question of a score sheet about one cup.
struct LotAnswer {
  int session = 0;   ///< its place in `AboutLots::sessions`
  int person = 0;    ///< the same number for the same person in every session; a loose taster has a number of their own in each
  int lot = 0;       ///< its place in the lots that were asked for
  int question = 0;  ///< its place in `AboutLots::questions`
  int value = 0;
};

/// A question as it was asked; the same wherever kind, part and word are.
struct LotQuestion {
  ItemKind kind = ItemKind::liking;
  Part part = Part::main;
  std::string word;
  int low = 0, high = 0;
  auto operator<=>(const LotQuestion&) const = default;
};

/// One revealed session in which at least one of the lots was poured.
struct LotSession {
  SessionId id;
  std::string title;
  std::string heldOn;             ///< the day of the first answer
  Plan plan;
  std::vector<bool> poured;       ///< for each lot that was asked for
};

/// The panel's answers about some lots, over all revealed score-sheet sessions that poured them, oldest first. Makers, voided flights, cups that the pourer was not sure of
/// and sessions whose seal did not hold are left out.
struct AboutLots {
  std::vector<LotSession> sessions;
  std::vector<LotQuestion> questions;   ///< rising
  std::vector<LotAnswer> answers;       ///< by session, then person, question, cup
  int people = 0;
  std::vector<TasterId> who;            ///< for each person who they are; empty for a loose taster. Never shown: only to tell whether they are known to notice a word
};

/// The word of each question, in their order; empty where one has none.
inline std::vector<std::string> wordsAsked(const AboutLots& about) {
  std::vector<std::string> words;
  for (const LotQuestion& each : about.questions) words.push_back(each.word);
  return words;
}

/// For a tasting word, as it stands on the sheet, who is known to notice it.
using Noticers = std::map<std::string, std::set<TasterId>>;

}  // namespace oddglass
