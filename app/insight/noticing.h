#pragma once

#include "domain/about_lots.h"
#include "domain/known.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace oddglass::insight {

/// What people have shown to notice, from tastings of differences that were known beforehand.

/// Known to notice: so many right answers, over all trials with that word, would come by guessing alone no more often than this (own rule).
constexpr double noticedBelow = 0.05;
/// Sessions below which nothing is said of a change (own rule).
constexpr int fewestToChange = 3;

/// The name that a word counts under, so that one word under two names is one.
using Meaning = std::function<std::string(const std::string&)>;

/// One session of one person.
struct NoticedVisit {
  std::size_t at = 0;   ///< which of the known differences
  Method method = Method::pair;
  int right = 0, trials = 0;
};

/// All trials of one method.
struct NoticedBy {
  Method method = Method::pair;
  int right = 0, trials = 0;
  double median = 0.0, low = 0.0, high = 1.0;  ///< share of their tastings in which they notice it, freed of guessing: posterior at 0.95
};

/// The later sessions against the earlier ones, of the method that was tasted most often; with an odd number the later ones have one more.
struct NoticedChange {
  Method method = Method::pair;
  int sessions = 0;
  int earlierRight = 0, earlierTrials = 0, laterRight = 0, laterTrials = 0;
  double median = 0.0, low = -1.0, high = 1.0;  ///< change of that share, later minus earlier: posterior at 0.95
};

/// One person and one word.
struct Noticed {
  TasterId who;
  std::string word;
  std::vector<NoticedVisit> visits;    ///< by the day of the reveal; sessions without a trial that counts are left out
  int right = 0, trials = 0;
  int leftOut = 0;                     ///< told by look or fizz, or locked after something was said
  std::optional<double> pValue;        ///< P(this many or more right by guessing), exact; nothing without trials
  bool isKnown = false;
  std::vector<NoticedBy> methods;
  std::optional<NoticedChange> change; ///< from three sessions by one method
};

/// Every person and word that was tried, by person and then by word. Who asked to be only in the sums is in none.
/// Sources: exact binomial, for several methods Poisson 1837 by convolution; stats/posterior.h; stats/share_change.h.
std::vector<Noticed> noticingOf(const KnownDifferences& known, const Meaning& meaning);

/// Who is known to notice each of these words, under the names that they were asked by; a word that nobody is known to notice is left out.
Noticers noticersOf(const KnownDifferences& known, const std::vector<LotQuestion>& asked, const Meaning& meaning);

/// The tasting words that a sheet asks about, in its order.
std::vector<std::string> wordsOf(const std::vector<SheetItem>& items);

/// Of those words the ones that none of these people is known to notice, in their order, each once.
std::vector<std::string> unnoticed(const std::vector<Noticed>& noticing, const std::vector<TasterId>& people, const std::vector<std::string>& words, const Meaning& meaning);

/// One word over everybody: how many tried it, and how many of them are known to notice it.
struct WordNoticed {
  std::string word;
  int people = 0, known = 0;
};
/// By word. With `people` only they count.
std::vector<WordNoticed> wordsNoticed(const std::vector<Noticed>& noticing, const std::optional<std::vector<TasterId>>& people = std::nullopt);

}  // namespace oddglass::insight
