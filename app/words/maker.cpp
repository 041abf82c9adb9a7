#include "words/maker.h"

#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"

#include <algorithm>

namespace oddglass::words {
namespace {

const ShownPerson* personAt(const RevealedSession& session, Place place) {
  for (const ShownPerson& each : session.people)
    if (each.place == place) return &each;
  return nullptr;
}

bool hasRow(const ShownPerson* person) { return person && !person->erased && person->as != ShownAs::loose && !person->shown.empty(); }

std::string ofCount(const Voice& voice, int right, int trials) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{right} of {trials}"), {{"right", whole(voice, right)}, {"trials", whole(voice, trials)}});
}

/// "liked better: Heather mead 2 and the bought one 1"; empty where it was not asked.
template <class Line>
std::string likedBetter(const Voice& voice, const Plan& plan, const insight::Findings& findings, const Line& line) {
  if (line.first + line.second + line.none == 0 || !findings.pairs.empty()) return {};
  const auto names = namesOf(voice, plan, findings.lots.value_or(std::pair{Slot{1}, Slot{2}}));
  std::vector<std::string> liked;
  const auto add = [&](const std::string& what, int count) {
    if (count > 0) liked.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{what} {n}"), {{"what", what}, {"n", whole(voice, count)}}));
  };
  add(names.one, line.first);
  add(names.other, line.second);
  add(say(voice, QT_TRANSLATE_NOOP("words", "no preference")), line.none);
  return say(voice, QT_TRANSLATE_NOOP("words", "liked better: {list}"), {{"list", listed(voice, liked)}});
}

/// What one person answered; `right` is how right answers are written.
template <class Line>
std::string answers(const Voice& voice, const Plan& plan, const insight::Findings& findings, const Line& line, const std::string& right) {
  const std::string liked = likedBetter(voice, plan, findings, line);
  if (findings.method == Method::preference) return liked;
  return liked.empty() ? right : say(voice, QT_TRANSLATE_NOOP("words", "{right}; {liked}"), {{"right", right}, {"liked", liked}});
}

std::string makerLine(const Voice& voice, const RevealedSession& session, const insight::Findings& findings, const insight::MakerLine& line) {
  const ShownPerson* person = personAt(session, line.place);
  const std::string right = say(voice, QT_TRANSLATE_NOOP("words", "{right} right"), {{"right", ofCount(voice, line.right, line.trials)}});
  const Values values{{"answers", answers(voice, session.plan, findings, line, right)}, {"name", hasRow(person) ? person->shown : std::string()}};
  return say(voice, hasRow(person) ? QT_TRANSLATE_NOOP("words", "A maker, beside the panel and not counted with it: {name}, {answers}.") : QT_TRANSLATE_NOOP("words", "A maker, beside the panel and not counted with it: {answers}."), values);
}

std::string remark(const Voice& voice, const RevealedSession& session, const RevealedFlight& flight) {
  const ShownPerson* person = personAt(session, flight.place);
  if (!hasRow(person)) return quoted(voice, flight.words);
  return say(voice, QT_TRANSLATE_NOOP("words", "{name}: {text}"), {{"name", person->shown}, {"text", quoted(voice, flight.words)}});
}

}  // namespace

MakerPart makerPart(const Voice& voice, const RevealedSession& session, const insight::Findings& findings) {
  MakerPart part;
  for (const insight::MakerLine& each : findings.makers) part.makers.push_back(makerLine(voice, session, findings, each));
  int withoutRow = 0;
  if (findings.claim != Claim::me) {
    for (const insight::PersonLine& each : insight::panelByPerson(session)) {
      const ShownPerson* person = personAt(session, each.place);
      if (hasRow(person)) part.people.push_back({person->shown, answers(voice, session.plan, findings, each, ofCount(voice, each.right, each.trials))});
      else ++withoutRow;
    }
  }
  if (withoutRow > 0)
    part.onlyInSums = sayCount(voice, QT_TRANSLATE_NOOP("words", "1 person asked to be only in the sums."), QT_TRANSLATE_NOOP("words", "{n} people asked to be only in the sums."), withoutRow);
  if (findings.peopleDiffer) {
    const bool differ = findings.peopleDiffer->pValue <= findings.alphaPm / 1000.0;
    part.differ = say(voice, differ ? QT_TRANSLATE_NOOP("words", "Looked at afterwards: people seem to differ in how well they tell; if they did not, as much would come up {often}. Read single people's counts with care: much of their spread may be luck.")
                                    : QT_TRANSLATE_NOOP("words", "Looked at afterwards: it is not shown that people differ in how well they tell. Read single people's counts with care: their spread may be luck."),
                      {{"often", timesIn(voice, findings.peopleDiffer->pValue)}});
  }
  std::vector<std::string> unattributed;
  const auto collect = [&](const auto& flights) {
    for (const auto& flight : flights) {
      if (flight.words.empty()) continue;
      (hasRow(personAt(session, flight.place)) ? part.remarks : unattributed).push_back(remark(voice, session, flight));
    }
  };
  collect(session.panel);
  collect(session.makers);
  // In the order of the letters, so that the order of the places tells nothing about who wrote what.
  std::sort(unattributed.begin(), unattributed.end());
  part.remarks.insert(part.remarks.end(), unattributed.begin(), unattributed.end());
  for (const SaidAloud& each : session.said)
    if (!each.words.empty()) part.said.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{time}: {text}"), {{"time", timeOfDay(voice, each.at)}, {"text", quoted(voice, each.words)}}));
  return part;
}

}  // namespace oddglass::words
