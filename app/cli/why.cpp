#include "cli/why.h"

namespace oddglass::cli {

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
  }
  return {};
}

}  // namespace oddglass::cli
