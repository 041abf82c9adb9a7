#include "domain/flight_form.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/plan.h"
#include "words/recommend.h"

#include <algorithm>

namespace oddglass::words {
namespace {

using planning::ShareOf;

std::string timesRound(const Voice& voice, int rounds) {
  if (rounds == 1) return say(voice, QT_TRANSLATE_NOOP("words", "once round"));
  if (rounds == 2) return say(voice, QT_TRANSLATE_NOOP("words", "twice round"));
  return say(voice, QT_TRANSLATE_NOOP("words", "{n} times round"), {{"n", spelled(voice, rounds)}});
}

/// "six people once round", "you alone, three times round,".
std::string whoOften(const Voice& voice, const planning::Outlook& outlook) {
  const Values values{{"n", spelled(voice, outlook.people)}, {"round", timesRound(voice, outlook.rounds)}};
  if (outlook.claim == Claim::me) return say(voice, QT_TRANSLATE_NOOP("words", "you alone, {round},"), values);
  return say(voice, outlook.people == 1 ? QT_TRANSLATE_NOOP("words", "one person {round}") : QT_TRANSLATE_NOOP("words", "{n} people {round}"), values);
}

bool isPreference(const planning::Outlook& outlook) { return outlook.shareOf == ShareOf::preferring; }

std::string alikeLine(const Voice& voice, const planning::Outlook& outlook) {
  const planning::AlikeOutlook& alike = *outlook.alike;
  Values values{{"limit", shareLimit(voice, alike.limitPm)}, {"often", roughlyOften(voice, alike.chance)}, {"nobody", ifNobodyTells(voice, outlook.claim)}};
  if (!alike.largest) return say(voice, QT_TRANSLATE_NOOP("words", "So few tastings cannot come out as alike within {limit}, whatever is answered."), values);
  if (alike.largestInTurn.size() == 3)
    return alikeInTurnLine(voice, alike.largestInTurn, outlook.trials) + ' ' +
           say(voice, QT_TRANSLATE_NOOP("words", "That is alike within {limit}; one pair by itself would come out like that {often} {nobody}."), values);
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "Alike within {limit} takes no more than 1 right answer. It would come out like that {often} {nobody}."),
                  QT_TRANSLATE_NOOP("words", "Alike within {limit} takes no more than {n} right answers. It would come out like that {often} {nobody}."), *alike.largest, values);
}

std::vector<std::string> neededLines(const Voice& voice, const planning::Outlook& outlook) {
  const Values values{{"needed", whole(voice, outlook.needed.value_or(0))}, {"trials", whole(voice, outlook.trials)},
                      {"rest", whole(voice, outlook.trials - outlook.needed.value_or(0))}};
  if (outlook.sequential || (!outlook.needed && !isPreference(outlook) && outlook.comparisons == 1)) return {};
  if (outlook.comparisons > 1) return {neededInTurnLine(voice, outlook.neededInTurn, outlook.trials)};
  if (!isPreference(outlook)) return {say(voice, QT_TRANSLATE_NOOP("words", "{needed} of {trials} right answers are needed."), values)};
  std::vector<std::string> lines;
  if (outlook.needed == outlook.trials) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Only {needed} to 0 could show a preference."), values));
  else if (outlook.needed) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "It takes {needed} to {rest} at least to show a preference."), values));
  if (outlook.rounds > 1) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Each person has one vote: more rounds show how steady it is, they are no more votes.")));
  if (outlook.mayHaveNone) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Whoever has no preference is left out of the count; then fewer votes are left.")));
  return lines;
}

std::vector<std::string> sequentialLines(const Voice& voice, const planning::Outlook& outlook) {
  const planning::SequentialOutlook& looks = *outlook.sequential;
  const auto about = [&](double trials) { return tastings(voice, static_cast<int>(trials + 0.5)); };
  const Values values{{"every", whole(voice, looks.every)}, {"last", whole(voice, looks.last)}, {"what", canTaste(voice, outlook.claim, looks.sharePm)},
                      {"short", about(looks.nobody.expectedTrials)}, {"long", about(looks.share.expectedTrials)},
                      {"none", roughlyOften(voice, looks.nobody.none)}, {"shown", roughlyOften(voice, looks.share.difference)},
                      {"nobody", ifNobodyTells(voice, outlook.claim)}, {"open", timesIn(voice, std::max(looks.nobody.undecided, looks.share.undecided))}};
  return {say(voice, QT_TRANSLATE_NOOP("words", "Looked at after every {every} tastings, for go on or stop only; it ends after {last} at the latest."), values),
          say(voice, QT_TRANSLATE_NOOP("words", "It takes about {short} and stops with no difference shown {none} {nobody}."), values),
          say(voice, QT_TRANSLATE_NOOP("words", "With what {what} it takes about {long} and shows a difference {shown}."), values),
          say(voice, QT_TRANSLATE_NOOP("words", "It may still be undecided at the end, at most {open}."), values)};
}

const char* headlineSource(const planning::Outlook& outlook, bool found) {
  if (!outlook.canShow) return QT_TRANSLATE_NOOP("words", "{who} can show nothing, whatever is answered.");
  if (outlook.comparisons > 1)
    return found ? QT_TRANSLATE_NOOP("words", "{who} would find in each of three comparisons {what} {often}.")
                 : QT_TRANSLATE_NOOP("words", "{who} would miss in each of three comparisons {what} {often}.");
  return found ? QT_TRANSLATE_NOOP("words", "{who} would find {what} {often}.") : QT_TRANSLATE_NOOP("words", "{who} would miss {what} {often}.");
}

}  // namespace

std::string canTaste(const Voice& voice, Claim claim, int sharePm) {
  if (claim == Claim::me) return say(voice, QT_TRANSLATE_NOOP("words", "you can taste {often}"), {{"often", timesLimit(voice, sharePm)}});
  return say(voice, QT_TRANSLATE_NOOP("words", "{share} can taste"), {{"share", shareLimit(voice, sharePm)}});
}

std::string ifNobodyTells(const Voice& voice, Claim claim) {
  return claim == Claim::me ? say(voice, QT_TRANSLATE_NOOP("words", "if you cannot tell them apart")) : say(voice, QT_TRANSLATE_NOOP("words", "if nobody can tell them apart"));
}

std::string whatIsFound(const Voice& voice, const planning::Outlook& outlook, int sharePm) {
  const Values values{{"share", shareLimit(voice, sharePm)}, {"often", timesLimit(voice, sharePm)}, {"what", canTaste(voice, outlook.claim, sharePm)}};
  switch (outlook.shareOf) {
    case ShareOf::preferring: return say(voice, QT_TRANSLATE_NOOP("words", "what {share} prefer"), values);
    case ShareOf::ableInTriangle:
      return outlook.claim == Claim::me ? say(voice, QT_TRANSLATE_NOOP("words", "what you can pick out of three cups {often}"), values)
                                        : say(voice, QT_TRANSLATE_NOOP("words", "what {share} can pick out of three cups"), values);
    case ShareOf::able: break;
  }
  return say(voice, QT_TRANSLATE_NOOP("words", "what {what}"), values);
}

std::string outlookHeadline(const Voice& voice, const planning::Outlook& outlook, Sought sought) {
  if (outlook.people == 0) return say(voice, QT_TRANSLATE_NOOP("words", "Nobody counts yet. Add at least one person who did not make it, or taste alone."));
  Values values{{"who", whoOften(voice, outlook)}, {"what", whatIsFound(voice, outlook, planning::halfOf(outlook.method))}, {"nobody", ifNobodyTells(voice, outlook.claim)}};
  const char* source = nullptr;
  if (sought == Sought::alike) {
    values["often"] = roughlyOften(voice, outlook.alike ? outlook.alike->chance : 0.0);
    source = !outlook.alike                ? QT_TRANSLATE_NOOP("words", "Set the limit: how few may still taste it?")
             : !outlook.alike->largest     ? QT_TRANSLATE_NOOP("words", "{who} cannot show that two drinks are alike.")
                                           : QT_TRANSLATE_NOOP("words", "{who} would show it {often} {nobody}.");
  } else {
    const double chance = outlook.half().chance;
    const bool found = chance >= 0.5;
    values["often"] = found ? roughlyOften(voice, chance) : roughlyMissed(voice, chance);
    source = headlineSource(outlook, found);
  }
  return capitalised(say(voice, source, values));
}

std::vector<std::string> outlookLines(const Voice& voice, const planning::Outlook& outlook, Sought sought) {
  std::vector<std::string> lines;
  if (outlook.people == 0) return lines;
  if (sought != Sought::alike && outlook.canShow) {
    lines = outlook.sequential ? sequentialLines(voice, outlook) : neededLines(voice, outlook);
    for (const planning::Finding& each : outlook.findings)
      lines.push_back(capitalised(say(voice, QT_TRANSLATE_NOOP("words", "{what} would be found {often}."),
                                      {{"what", whatIsFound(voice, outlook, each.sharePm)}, {"often", timesIn(voice, each.chance)}})));
  }
  if (sought != Sought::difference && outlook.alike) lines.push_back(alikeLine(voice, outlook));
  return lines;
}

std::string outlookMethod(const Voice& voice, const planning::Outlook& outlook, int gammaPm) {
  if (isPreference(outlook)) return say(voice, QT_TRANSLATE_NOOP("words", "Worked out exactly from the binomial distribution, with one vote a person; either drink may be preferred."));
  if (outlook.sequential)
    return say(voice, QT_TRANSLATE_NOOP("words", "Worked out exactly, round by round, as if every tasting were by somebody new. The people who come back make it less certain than this."));
  std::string line = outlook.people > 0 && outlook.rounds > 1 && outlook.claim != Claim::me
                         ? say(voice, QT_TRANSLATE_NOOP("words", "Worked out with the person as the unit, not the cup: people are taken to differ with a spread (gamma) of {gamma}, our own figure. The sum behind it is exact."),
                               {{"gamma", decimal(voice, gammaPm / 1000.0, 2)}})
                         : say(voice, QT_TRANSLATE_NOOP("words", "Worked out exactly from the binomial distribution."));
  if (outlook.shareOf == ShareOf::ableInTriangle)
    line += ' ' + (outlook.method == Method::aNotA
                       ? say(voice, QT_TRANSLATE_NOOP("words", "Both kinds of answers count, so there is no single needed number. People are taken to lean neither way."))
                       : say(voice, QT_TRANSLATE_NOOP("words", "Both kinds of answers count, so there is no single needed number. People are taken to say “different” when two cups lie further apart than a cup lies from itself (tau 1).")));
  if (outlook.comparisons > 1) line += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "The three comparisons share the risk of a false alarm (Holm)."));
  return line;
}

std::string tooSmallLine(const Voice& voice, const planning::Outlook& outlook, planning::TooSmall rule) {
  switch (rule) {
    case planning::TooSmall::practice:
      if (isPreference(outlook) && outlook.claim == Claim::me) return say(voice, QT_TRANSLATE_NOOP("words", "Your one vote cannot settle this, however often you taste. You may pour it as practice; it will end without a verdict."));
      if (isPreference(outlook))
        return capitalised(outlook.people == 1 ? say(voice, QT_TRANSLATE_NOOP("words", "One person cannot settle this, whatever is answered."))
                                               : say(voice, QT_TRANSLATE_NOOP("words", "{n} people cannot settle this, whatever they answer."), {{"n", spelled(voice, outlook.people)}}));
      return say(voice, QT_TRANSLATE_NOOP("words", "Even all right would show nothing. You may pour it as practice; it will end without a verdict."));
    case planning::TooSmall::halfMissed:
      return capitalised(say(voice, QT_TRANSLATE_NOOP("words", "{what} would be missed {missed}. You may go on; this stays in the report."),
                             {{"missed", roughlyMissed(voice, outlook.half().chance)}, {"what", whatIsFound(voice, outlook, planning::halfOf(outlook.method))}}));
    case planning::TooSmall::alikeUnlikely:
      return say(voice, QT_TRANSLATE_NOOP("words", "Likely to end in “not shown”, even {nobody}. You may go on; this stays in the report."), {{"nobody", ifNobodyTells(voice, outlook.claim)}});
    case planning::TooSmall::limitTooWide:
      return say(voice, QT_TRANSLATE_NOOP("words", "Half the room tasting it is not alike. Set a limit of half the people or fewer."));
    case planning::TooSmall::fewFriends:
      return sayCount(voice, QT_TRANSLATE_NOOP("words", "With one person you will know who wrote what. A signed sheet is more honest."),
                      QT_TRANSLATE_NOOP("words", "With {n} people you will guess who wrote what. Signed sheets are more honest."), outlook.people);
  }
  return {};
}

}  // namespace oddglass::words
