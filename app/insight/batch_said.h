#pragma once

#include "domain/batch.h"

#include <functional>
#include <map>
#include <set>
#include <string>
#include <tuple>
#include <vector>

namespace oddglass::insight {

/// The word of this name among those that were asked, or null.
const WordNow* wordOf(const std::vector<WordNow>& words, const std::string& asked);

/// What an asked word is called today.
std::string nowCalled(const std::vector<WordNow>& words, const std::string& asked);

/// Questions that count as one today, and for each question that was asked its place among them; -1 where it is not one of these.
struct MergedQuestions {
  std::vector<LotQuestion> all;               ///< rising
  std::vector<int> of;
  std::vector<std::set<std::string>> askedAs;
};

/// Those of wanted kinds.
MergedQuestions mergedQuestions(const AboutLots& about, const std::vector<WordNow>& words, const std::function<bool(ItemKind)>& wanted);

/// The mean of what somebody said of a lot in a session, to one merged question.
using SaidOf = std::map<std::tuple<int, int, int>, double>;   // session, person, lot

/// For each merged question; lots that were flawed on purpose left out.
std::vector<SaidOf> saidOf(const BatchTastings& tastings, const MergedQuestions& merged);

}  // namespace oddglass::insight
