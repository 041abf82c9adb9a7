#include "words/aging.h"

#include "words/mark.h"
#include "words/numbers.h"
#include "words/over_time.h"

namespace oddglass::words {

AgingWords agingWords(const Voice& voice, const planning::AgingSetup& setup, const planning::AgingOutlook& outlook) {
  const auto sum = [&](const planning::AgingSetup& of, int needed) {
    const Values values{{"sittings", whole(voice, static_cast<long long>(of.ages.size()))}, {"each", whole(voice, of.bottlesEach)}, {"reserve", whole(voice, of.reserve)}, {"needed", bottles(voice, needed)}};
    return of.control == ControlKind::twin ? say(voice, QT_TRANSLATE_NOOP("words", "{sittings} sittings × ({each} + {each} cold) + {reserve} in reserve = {needed}"), values)
                                           : say(voice, QT_TRANSLATE_NOOP("words", "{sittings} sittings × {each} + {reserve} in reserve = {needed}"), values);
  };
  AgingWords out;
  const Values have{{"sum", sum(setup, outlook.needed)}, {"have", bottles(voice, setup.bottles)}};
  out.headline = outlook.needed > setup.bottles ? say(voice, QT_TRANSLATE_NOOP("words", "{sum}; you have {have}."), have) : say(voice, QT_TRANSLATE_NOOP("words", "{sum}."), have);
  if (setup.control == ControlKind::reference) out.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "And {bottles} of the bought drink."), {{"bottles", bottles(voice, outlook.controlBottles)}}));
  if (outlook.smallestChange)
    out.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "With {people} who come both times, a change in liking of about {change} of 9 would come out 8 times in 10; a smaller one may be missed."),
                            {{"people", people(voice, setup.people)}, {"change", decimal(voice, *outlook.smallestChange, 1)}}));
  for (const planning::AgingWarning warning : outlook.warnings) switch (warning) {
      case planning::AgingWarning::tooFewBottles: break;
      case planning::AgingWarning::noControl: out.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Without a kept-back bottle a changed drink and a changed day cannot be told apart. Four ages beside a cold twin say more than six without."))); break;
      case planning::AgingWarning::referenceAges: out.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "A bought drink ages too, and its age is seldom known. A cold twin of your own is the better control."))); break;
      case planning::AgingWarning::dotsOnly: out.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Fewer than three sittings are dots without a line."))); break;
      case planning::AgingWarning::noPeak: out.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Fewer than six sittings cannot say when it was liked best."))); break;
      case planning::AgingWarning::fewPeople: out.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Fewer than three people give no range and no verdict."))); break;
    }
  if (outlook.cheaper) {
    std::vector<std::string> ages;
    for (const int age : outlook.cheaper->ages) ages.push_back(ageName(voice, age / insight::daysOfAMonth));
    out.cheaper = say(voice, QT_TRANSLATE_NOOP("words", "With less: {sum}, at {ages}."), {{"sum", sum(*outlook.cheaper, planning::agingOutlook(*outlook.cheaper).needed)}, {"ages", listed(voice, ages)}});
  } else if (outlook.needed > setup.bottles) {
    out.cheaper = say(voice, QT_TRANSLATE_NOOP("words", "These bottles are too few for a series. Taste them once beside a reference instead."));
  }
  return out;
}

}  // namespace oddglass::words
