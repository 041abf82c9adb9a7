#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/reading.h"

namespace oddglass::words {
namespace {

using insight::Findings;

void addVotes(const Voice& voice, const Findings& findings, const insight::Votes& votes, std::vector<std::string>& lines) {
  const bool alone = findings.claim == Claim::me;
  if (votes.none > 0 && votes.split) {
    const Values values{{"first", whole(voice, votes.split->first)}, {"second", whole(voice, votes.split->second)},
                        {"then", votes.split->changes ? say(voice, QT_TRANSLATE_NOOP("words", "the verdict would change")) : say(voice, QT_TRANSLATE_NOOP("words", "the verdict stays"))}};
    lines.push_back(alone ? sayCount(voice, QT_TRANSLATE_NOOP("words", "In 1 round you had no preference; it is not in the count. Split half and half it would be {first} to {second}, and {then}."),
                                     QT_TRANSLATE_NOOP("words", "In {n} rounds you had no preference; they are not in the count. Split half and half it would be {first} to {second}, and {then}."), votes.none, values)
                          : sayCount(voice, QT_TRANSLATE_NOOP("words", "1 had no preference and is not in the count. Split half and half it would be {first} to {second}, and {then}."),
                                     QT_TRANSLATE_NOOP("words", "{n} had no preference and are not in the count. Split half and half it would be {first} to {second}, and {then}."), votes.none, values));
  }
  if (votes.even > 0)
    lines.push_back(sayCount(voice, QT_TRANSLATE_NOOP("words", "1 liked the one as often as the other over the rounds: no vote."), QT_TRANSLATE_NOOP("words", "{n} liked the one as often as the other over the rounds: no vote."), votes.even));
  if (votes.repeated > 0)
    lines.push_back(sayCount(voice, QT_TRANSLATE_NOOP("words", "Steadiness: {k} of 1 stuck to one answer over the rounds."), QT_TRANSLATE_NOOP("words", "Steadiness: {k} of {n} stuck to one answer over the rounds."), votes.repeated,
                             {{"k", whole(voice, votes.steady)}}));
}

void addLiking(const Voice& voice, const Plan& plan, const Findings& findings, std::vector<std::string>& lines) {
  const insight::Liking& liking = *findings.liking;
  const auto names = namesOf(voice, plan, findings.lots.value_or(std::pair{Slot{1}, Slot{2}}));
  Values values{{"one", names.one}, {"other", names.other}, {"first", whole(voice, liking.votes.first)}, {"second", whole(voice, liking.votes.second)},
                {"often", timesIn(voice, liking.pValue)}};
  std::string line = findings.claim == Claim::me
                         ? say(voice, QT_TRANSLATE_NOOP("words", "Looked at afterwards: where you were right, you liked {one} better {first} to {second}."), values)
                         : say(voice, QT_TRANSLATE_NOOP("words", "Looked at afterwards: among those who were right, {first} liked {one} better and {second} {other}."), values);
  if (liking.votes.cast() > 0 && !liking.needed)
    line += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "So few cannot show a preference, whatever they say."));
  else if (liking.votes.cast() > 0)
    line += ' ' + say(voice, liking.isShown ? QT_TRANSLATE_NOOP("words", "By chance alone, that or clearer, either way, comes {often}: a hint at a preference, to be asked by itself.")
                                            : QT_TRANSLATE_NOOP("words", "By chance alone, that or clearer, either way, comes {often}: no preference shown."), values);
  lines.push_back(line);
  addVotes(voice, findings, {0, 0, 0, liking.votes.even, liking.votes.repeated, liking.votes.steady, {}}, lines);
  if (liking.votes.none > 0)
    lines.push_back(sayCount(voice, QT_TRANSLATE_NOOP("words", "Of those who were right, 1 had no preference."), QT_TRANSLATE_NOOP("words", "Of those who were right, {n} had no preference."), liking.votes.none));
  if (!liking.tellers) return;
  values["range"] = shareRange(voice, liking.tellers->low, liking.tellers->high);
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Of those who can tell, {range} like {one} better. Some who chose may have guessed; that is counted in, nobody is left out."), values));
}

std::string readiness(const Voice& voice, Method method, double criterion) {
  const Values values{{"c", decimal(voice, criterion, 2)}};
  if (method == Method::sameDifferent)
    return say(voice, QT_TRANSLATE_NOOP("words", "“Different” was said of cups that lay about {c} or more apart (tau, in the measure of d′)."), values);
  if (criterion < -0.25) return say(voice, QT_TRANSLATE_NOOP("words", "Cups were readily taken for the marked one (criterion {c}; 0 is no lean)."), values);
  if (criterion > 0.25) return say(voice, QT_TRANSLATE_NOOP("words", "Cups were seldom taken for the marked one (criterion {c}; 0 is no lean)."), values);
  return say(voice, QT_TRANSLATE_NOOP("words", "No strong lean to one answer (criterion {c}; 0 is none)."), values);
}

}  // namespace

std::vector<std::string> besideLines(const Voice& voice, const Plan& plan, const Findings& findings) {
  std::vector<std::string> lines;
  const insight::Reading& reading = findings.printed();
  if (findings.why == insight::NoVerdict::sealBroken) return lines;
  if (reading.votes) addVotes(voice, findings, *reading.votes, lines);
  if (reading.signal && reading.signal->criterion) lines.push_back(readiness(voice, findings.method, *reading.signal->criterion));
  if (findings.surenessIndex) {
    const insight::SurenessIndex& index = *findings.surenessIndex;
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Looked at afterwards, with how sure they were: R-index {r}, from {low} to {high}, where 0.50 is guessing and 1.00 a clean split."),
                        {{"r", decimal(voice, index.rIndex, 2)}, {"low", decimal(voice, index.low, 2)}, {"high", decimal(voice, index.high, 2)}}));
  }
  if (findings.liking) addLiking(voice, plan, findings, lines);
  return lines;
}

}  // namespace oddglass::words
