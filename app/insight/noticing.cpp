#include "insight/noticing.h"

#include "insight/choices.h"
#include "insight/trials.h"
#include "stats/lean/expectation.h"
#include "stats/methods.h"
#include "stats/posterior.h"
#include "stats/share_change.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace oddglass::insight {
namespace {

constexpr double noticingLevel = 0.95;

double guessOf(Method method) { return stats::guessing(statsMethod(method)); }

/// What one person did in one session.
struct Tally {
  int right = 0, trials = 0, leftOut = 0;
};

template <class Flight>
void tally(const Tasted<Flight>& tasted, const KnownDifference& known, std::map<TasterId, Tally>& of) {
  for (const Trial& trial : tasted.trials) {
    const auto who = known.who.find(trial.place);
    if (who == known.who.end()) continue;
    Tally& one = of[who->second];
    if (byLookOrFizz(trial) || afterSaid(trial, known.session.said)) {
      ++one.leftOut;
      continue;
    }
    ++one.trials;
    one.right += trial.isRight;
  }
}

double pValueOf(const Noticed& noticed) {
  std::vector<double> guesses;
  for (const NoticedVisit& visit : noticed.visits) guesses.insert(guesses.end(), static_cast<std::size_t>(visit.trials), guessOf(visit.method));
  const std::vector<double> masses = stats::poissonBinomial(guesses);
  double tail = 0.0;
  for (std::size_t count = masses.size(); count-- > static_cast<std::size_t>(noticed.right);) tail += masses[count];
  return std::min(1.0, tail);
}

std::vector<NoticedBy> byMethod(const Noticed& noticed) {
  std::vector<NoticedBy> methods;
  for (const NoticedVisit& visit : noticed.visits) {
    auto found = std::ranges::find(methods, visit.method, &NoticedBy::method);
    if (found == methods.end()) found = methods.insert(found, NoticedBy{visit.method});
    found->right += visit.right;
    found->trials += visit.trials;
  }
  for (NoticedBy& each : methods)
    if (const auto share = stats::SharePosterior::of(each.right, each.trials, guessOf(each.method))) {
      each.median = share->quantile(0.5);
      each.low = share->quantile(0.5 * (1.0 - noticingLevel));
      each.high = share->quantile(0.5 * (1.0 + noticingLevel));
    }
  return methods;
}

std::optional<NoticedChange> changeOf(const Noticed& noticed) {
  std::map<Method, std::vector<const NoticedVisit*>> visits;
  for (const NoticedVisit& visit : noticed.visits) visits[visit.method].push_back(&visit);
  const auto most = std::ranges::max_element(visits, {}, [](const auto& each) { return each.second.size(); });
  if (most == visits.end() || static_cast<int>(most->second.size()) < fewestToChange) return std::nullopt;
  NoticedChange change;
  change.method = most->first;
  change.sessions = static_cast<int>(most->second.size());
  for (std::size_t i = 0; i < most->second.size(); ++i) {
    const bool isLater = i >= most->second.size() / 2;
    (isLater ? change.laterRight : change.earlierRight) += most->second[i]->right;
    (isLater ? change.laterTrials : change.earlierTrials) += most->second[i]->trials;
  }
  const auto found = stats::changeOfShare({change.earlierRight, change.earlierTrials}, {change.laterRight, change.laterTrials}, guessOf(change.method), noticingLevel);
  if (!found) return std::nullopt;
  change.median = found->median;
  change.low = found->low;
  change.high = found->high;
  return change;
}

}  // namespace

std::vector<Noticed> noticingOf(const KnownDifferences& known, const Meaning& meaning) {
  std::map<std::pair<TasterId, std::string>, Noticed> all;
  for (std::size_t at = 0; at < known.size(); ++at) {
    std::map<TasterId, Tally> of;
    tally(panelTasted(known[at].session), known[at], of);
    tally(makersTasted(known[at].session), known[at], of);
    const std::string word = meaning(known[at].session.plan.attribute);
    for (const auto& [who, one] : of) {
      Noticed& noticed = all.try_emplace({who, word}, Noticed{who, word, {}, 0, 0, 0, {}, false, {}, {}}).first->second;
      noticed.leftOut += one.leftOut;
      if (one.trials == 0) continue;
      noticed.visits.push_back({at, known[at].session.plan.method, one.right, one.trials});
      noticed.right += one.right;
      noticed.trials += one.trials;
    }
  }
  std::vector<Noticed> listed;
  for (auto& [key, noticed] : all) {
    if (noticed.trials > 0) {
      noticed.pValue = pValueOf(noticed);
      noticed.isKnown = *noticed.pValue <= noticedBelow * (1.0 + 1e-12);
      noticed.methods = byMethod(noticed);
      noticed.change = changeOf(noticed);
    }
    listed.push_back(std::move(noticed));
  }
  return listed;
}

Noticers noticersOf(const KnownDifferences& known, const std::vector<LotQuestion>& asked, const Meaning& meaning) {
  std::map<std::string, std::set<TasterId>> ofWord;
  for (const Noticed& each : noticingOf(known, meaning))
    if (each.isKnown) ofWord[each.word].insert(each.who);
  Noticers noticers;
  if (ofWord.empty()) return noticers;
  for (const LotQuestion& question : asked)
    if (const auto found = question.word.empty() ? ofWord.end() : ofWord.find(meaning(question.word)); found != ofWord.end()) noticers[question.word] = found->second;
  return noticers;
}

std::vector<std::string> wordsOf(const std::vector<SheetItem>& items) {
  std::vector<std::string> words;
  for (const SheetItem& item : items)
    if (!item.word.empty()) words.push_back(item.word);
  return words;
}

std::vector<std::string> unnoticed(const std::vector<Noticed>& noticing, const std::vector<TasterId>& people, const std::vector<std::string>& words, const Meaning& meaning) {
  std::vector<std::string> left;
  std::set<std::string> seen;
  for (const std::string& each : words) {
    const std::string word = meaning(each);
    if (!seen.insert(word).second) continue;
    const bool isNoticed = std::ranges::any_of(noticing, [&](const Noticed& one) { return one.isKnown && one.word == word && std::ranges::find(people, one.who) != people.end(); });
    if (!isNoticed) left.push_back(word);
  }
  return left;
}

std::vector<WordNoticed> wordsNoticed(const std::vector<Noticed>& noticing, const std::optional<std::vector<TasterId>>& people) {
  std::map<std::string, WordNoticed> words;
  for (const Noticed& one : noticing) {
    if (one.trials == 0 || (people && std::ranges::find(*people, one.who) == people->end())) continue;
    WordNoticed& word = words[one.word];
    word.word = one.word;
    ++word.people;
    word.known += one.isKnown;
  }
  std::vector<WordNoticed> listed;
  for (auto& [name, word] : words) listed.push_back(std::move(word));
  return listed;
}

}  // namespace oddglass::insight
