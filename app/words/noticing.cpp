#include "words/noticing.h"

#include "words/mark.h"
#include "words/method.h"
#include "words/numbers.h"

#include <algorithm>
#include <cmath>

namespace oddglass::words {
namespace {

constexpr std::size_t mostWordsNamed = 6;

// "a, b or c"; what goes beyond is counted.
std::string oneOf(const Voice& voice, const std::vector<std::string>& words) {
  std::vector<std::string> named;
  for (const std::string& word : words)
    if (named.size() < mostWordsNamed) named.push_back(quoted(voice, word));
  if (words.size() > mostWordsNamed)
    return say(voice, QT_TRANSLATE_NOOP("words", "{list} and {n} more of the words asked about"), {{"list", listed(voice, named)}, {"n", whole(voice, static_cast<long long>(words.size() - mostWordsNamed))}});
  if (named.size() == 1) return named.front();
  const std::string last = named.back();
  named.pop_back();
  std::string first;
  for (const std::string& each : named) first += (first.empty() ? "" : ", ") + each;
  return say(voice, QT_TRANSLATE_NOOP("words", "{first} or {last}"), {{"first", first}, {"last", last}});
}

std::string inSessions(const Voice& voice, std::size_t sessions) {
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "in one tasting"), QT_TRANSLATE_NOOP("words", "over {n} tastings"), static_cast<long long>(sessions));
}

// A change of a share of times, to the nearest tenth.
std::string moreOrLess(const Voice& voice, double change) {
  const long long tenths = std::llround(std::abs(change) * 10.0);
  if (tenths == 0) return change > 0 ? say(voice, QT_TRANSLATE_NOOP("words", "hardly more often")) : say(voice, QT_TRANSLATE_NOOP("words", "hardly less often"));
  return change > 0 ? sayCount(voice, QT_TRANSLATE_NOOP("words", "once more in 10"), QT_TRANSLATE_NOOP("words", "{n} times more in 10"), tenths)
                    : sayCount(voice, QT_TRANSLATE_NOOP("words", "once less in 10"), QT_TRANSLATE_NOOP("words", "{n} times less in 10"), tenths);
}

}  // namespace

std::string coverageLine(const Voice& voice, const std::vector<std::string>& unnoticed, bool anyTried) {
  if (unnoticed.empty()) return {};
  if (!anyTried) return say(voice, QT_TRANSLATE_NOOP("words", "Who here notices which of these words is not known yet: nobody at this table has tasted a known difference."));
  return say(voice, QT_TRANSLATE_NOOP("words", "Nobody here is known to notice {words}. If it is not named tonight, it may be there all the same."), {{"words", oneOf(voice, unnoticed)}});
}

std::string wordNoticedLine(const Voice& voice, const insight::WordNoticed& word) {
  const Values values{{"word", quoted(voice, word.word)}, {"known", whole(voice, word.known)}};
  if (word.known == 0) return sayCount(voice, QT_TRANSLATE_NOOP("words", "{word}: nobody here is known to notice it; 1 person tried."), QT_TRANSLATE_NOOP("words", "{word}: nobody here is known to notice it; {n} people tried."), word.people, values);
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "{word}: {known} of the 1 who tried it is known to notice it."), QT_TRANSLATE_NOOP("words", "{word}: {known} of the {n} who tried it are known to notice it."), word.people, values);
}

std::vector<std::string> noticedLines(const Voice& voice, const insight::Noticed& noticed) {
  std::vector<std::string> lines;
  const Values values{{"word", quoted(voice, noticed.word)}, {"right", whole(voice, noticed.right)}, {"n", whole(voice, noticed.trials)}, {"sessions", inSessions(voice, noticed.visits.size())}};
  if (noticed.trials == 0) {
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{word}: nothing counts yet."), values));
  } else {
    lines.push_back(say(voice, noticed.isKnown ? QT_TRANSLATE_NOOP("words", "{word}: {right} of {n} right, {sessions}. Known to notice it.")
                                               : QT_TRANSLATE_NOOP("words", "{word}: {right} of {n} right, {sessions}. Not shown yet; that is not “does not notice it”."), values));
    for (const insight::NoticedBy& by : noticed.methods)
      lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Guessing taken off, it was noticed in this share of the tastings: {range} ({method}, {right} of {n})."),
                          {{"range", shareRange(voice, by.low, by.high)}, {"method", methodName(voice, by.method)}, {"right", whole(voice, by.right)}, {"n", whole(voice, by.trials)}}));
  }
  if (noticed.leftOut > 0)
    lines.push_back(sayCount(voice, QT_TRANSLATE_NOOP("words", "1 answer is left out: told by look or fizz, or given after something was said."),
                             QT_TRANSLATE_NOOP("words", "{n} answers are left out: told by look or fizz, or given after something was said."), noticed.leftOut));
  return lines;
}

std::string changeLine(const Voice& voice, const insight::Noticed& noticed) {
  const Values word{{"word", quoted(voice, noticed.word)}, {"least", spelled(voice, insight::fewestToChange)}, {"n", whole(voice, static_cast<long long>(noticed.visits.size()))}};
  if (!noticed.change) return say(voice, QT_TRANSLATE_NOOP("words", "Getting better at {word}? Too little known: it takes {least} tastings asked in one way, so far {n}."), word);
  const insight::NoticedChange& change = *noticed.change;
  Values values = word;
  values["before"] = whole(voice, change.earlierRight);
  values["beforeOf"] = whole(voice, change.earlierTrials);
  values["after"] = whole(voice, change.laterRight);
  values["afterOf"] = whole(voice, change.laterTrials);
  values["low"] = moreOrLess(voice, change.low);
  values["high"] = moreOrLess(voice, change.high);
  const char* source = change.low > 0.0    ? QT_TRANSLATE_NOOP("words", "Getting better at {word}: {before} of {beforeOf} right in the earlier tastings, {after} of {afterOf} in the later ones. Noticed now from {low} to {high}.")
                       : change.high < 0.0 ? QT_TRANSLATE_NOOP("words", "{word} was noticed less often lately: {before} of {beforeOf} right in the earlier tastings, {after} of {afterOf} in the later ones. Noticed now from {low} to {high}. A cold, a tired evening or a smaller dose does that too.")
                                           : QT_TRANSLATE_NOOP("words", "Getting better at {word}? No change shown: {before} of {beforeOf} right in the earlier tastings, {after} of {afterOf} in the later ones. Anything from {low} to {high} fits.");
  return say(voice, source, values);
}

std::string nothingNoticed(const Voice& voice) {
  return say(voice, QT_TRANSLATE_NOOP("words", "No tasting of a known difference was opened yet. Plan one: ask whether your friends, or you alone, can taste what you know is there."));
}

std::string noticingRule(const Voice& voice) {
  return say(voice, QT_TRANSLATE_NOOP("words", "Known to notice: so many right answers, over all tastings of a known difference in that word, come by guessing alone no more often than 5 times in 100. The rule is our own. It holds for the amounts that were poured; less of it may pass unnoticed."));
}

}  // namespace oddglass::words
