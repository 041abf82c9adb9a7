#include "report/why.h"

namespace oddglass::report {

std::string why(stats::Reason reason) {
  switch (reason) {
    case stats::Reason::noTrials: return "nothing was answered";
    case stats::Reason::allRight: return "every trial was right, so there is only a lower limit";
    case stats::Reason::noGuessing: return "a preference has no right answer";
    case stats::Reason::oneRound: return "everybody tasted once, so people cannot be told from chance";
    case stats::Reason::onePerson: return "one taster says nothing about people";
    case stats::Reason::tooFarBelow: return "so far below guessing that it is smaller than any number";
    case stats::Reason::beyondSearch: return "more trials than are looked at (100,000)";
    case stats::Reason::neverAlike: return "no count is small enough";
    case stats::Reason::oneTaster: return "one taster says nothing about people";
    case stats::Reason::fewTasters: return "too few tasters for this";
    case stats::Reason::oneSession: return "one session says nothing about other days";
    case stats::Reason::fewSessions: return "too few sessions for this";
    case stats::Reason::oneAge: return "every session has the same age";
    case stats::Reason::fewSamples: return "too few samples for this";
    case stats::Reason::noSpread: return "the answers do not vary, so there is nothing to judge by";
    case stats::Reason::noRepeats: return "nothing was answered twice";
    case stats::Reason::allTied: return "nothing was told apart: ties everywhere";
    case stats::Reason::emptyCell: return "a combination that this needs was never answered";
    case stats::Reason::notConnected: return "some of these were never compared with the others";
    case stats::Reason::noConvergence: return "the fit did not settle";
    case stats::Reason::tooLarge: return "too many arrangements or levels to work out";
    case stats::Reason::notGiven: return "what this needs was not given";
    case stats::Reason::underFifth: return "under 20 % of the panel";
    case stats::Reason::fewAnswers: return "too few answers for this";
    case stats::Reason::repeatedPeople: return "somebody answered more than once, and one person's answers are not independent";
    case stats::Reason::confounded: return "two things always changed together here, so they cannot be told apart";
    case stats::Reason::separated: return "the answers fall apart so cleanly that no finite estimate fits best";
    case stats::Reason::allOneWay: return "one of the two answers was given always or never, so there is no finite distance";
    case stats::Reason::atGuessing: return "at or below guessing d' has no standard error";
  }
  return {};
}

Json estimatedJson(const stats::Estimated& found, const std::string& noSpread) {
  Json json{{"estimate", orNull(found.estimate)}, {"se", orNull(found.se)}, {"df", orNull(found.df)},
            {"low", orNull(found.low)}, {"high", orNull(found.high)}, {"p_value", orNull(found.pValue)}};
  if (found.why) json["why"] = *found.why == stats::Reason::noSpread && !noSpread.empty() ? noSpread : why(*found.why);
  return json;
}

Json alikeJson(const stats::Alike& found, double limit, const std::string& shown) {
  Json json{{"difference", orNull(found.difference)}, {"low", orNull(found.low)}, {"high", orNull(found.high)}, {"limit", limit},
            {"p_value", orNull(found.pValue)}, {"verdict", found.isAlike ? shown : "cannot tell"}, {"tasters", found.tasters}};
  if (found.why) json["why"] = why(*found.why);
  return json;
}

}  // namespace oddglass::report
