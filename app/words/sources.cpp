#include "words/sources.h"

#include "words/mark.h"
#include "words/method.h"
#include "words/plan.h"
#include "words/reading.h"

namespace oddglass::words {

std::vector<std::string> planSources(const Voice& voice, Method method, const planning::Outlook& outlook, int gammaPm) {
  Plan plan;
  plan.method = method;
  const std::vector<std::string> standards = standardsOf(plan);
  const Values values{{"method", capitalised(methodName(voice, method))}, {"standard", listed(voice, standards)}};
  std::vector<std::string> lines{standards.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "{method}: common practice, after no standard of its own."), values)
                                                  : say(voice, QT_TRANSLATE_NOOP("words", "{method}: after {standard}, not certified."), values),
                                 outlookMethod(voice, outlook, gammaPm)};
  if (outlook.sequential) lines.push_back(stoppingSource(voice));
  return lines;
}

std::vector<std::string> sheetPlanSources(const Voice& voice, const std::vector<SheetItem>& items) {
  Plan plan;
  plan.method = Method::sheet;
  plan.items = items;
  const std::vector<std::string> standards = standardsOf(plan);
  return {standards.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "Score sheets, as is common practice."))
                            : say(voice, QT_TRANSLATE_NOOP("words", "Score sheets after {standards}, not certified."), {{"standards", listed(voice, standards)}}),
          say(voice, QT_TRANSLATE_NOOP("words", "The smallest gap that shows: Student’s t over people (paired), each one’s rounds averaged first, two-sided, 8 times in 10. Where some people do not get "
                                                "both cups of a pair, those who do are counted. With several main questions the risk of a false alarm is shared (Holm 1979).")),
          say(voice, QT_TRANSLATE_NOOP("words", "How much people differ comes from your own tastings with them, and from our stated default until there are any."))};
}

std::string stoppingSource(const Voice& voice) {
  return say(voice, QT_TRANSLATE_NOOP("words", "Going on or stopping follows Wald’s sequential probability ratio test (Wald 1947; ISO 16820:2019, not certified), looked at after whole rounds and sealed with the plan."));
}

std::vector<std::string> overTimeSources(const Voice& voice) {
  return {say(voice, QT_TRANSLATE_NOOP("words", "What the series was begun for: that sitting less the first, by Student’s t over the people who sat at both (paired).")),
          say(voice, QT_TRANSLATE_NOOP("words", "The lines over time: least squares on the means of the sittings. Where people were missing, REML (Patterson and Thompson 1971) with Satterthwaite’s degrees of "
                                                "freedom (1946). The sitting counts, not the cup.")),
          say(voice, QT_TRANSLATE_NOOP("words", "The lines share the risk of a false alarm (Holm 1979). Within your limit: two one-sided tests (Schuirmann 1987).")),
          say(voice, QT_TRANSLATE_NOOP("words", "When it was liked best: the peak of a bent line, with its range after Fieller (1954)."))};
}

std::vector<std::string> sideBySideSources(const Voice& voice) {
  return {say(voice, QT_TRANSLATE_NOOP("words", "Each gap: Student’s t over the people who had both (paired). Within your limit: two one-sided tests (Schuirmann 1987). All gaps of the page share the risk of a "
                                                "false alarm (Holm 1979)."))};
}

std::vector<std::string> roomSources(const Voice& voice) {
  return {say(voice, QT_TRANSLATE_NOOP("words", "How you lean: one person against a small sample (Crawford and Howell 1998). People are the unit.")),
          say(voice, QT_TRANSLATE_NOOP("words", "What you expected: the mean squared miss (Brier 1950), and how often a count as far off would come, worked out exactly (Poisson 1837).")),
          say(voice, QT_TRANSLATE_NOOP("words", "The fewest tastings and people that are asked for are our own rules."))};
}

}  // namespace oddglass::words
