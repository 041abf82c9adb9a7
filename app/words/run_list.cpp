#include "words/run_list.h"

#include "words/mark.h"
#include "words/numbers.h"
#include "words/units.h"

namespace oddglass::words {
namespace {

using planning::RunStep;
using planning::RunStepKind;

std::string placesOf(const Voice& voice, const RunStep& step) {
  const Values values{{"first", whole(voice, step.firstPlace)}, {"last", whole(voice, step.lastPlace)}};
  return step.firstPlace == step.lastPlace ? say(voice, QT_TRANSLATE_NOOP("words", "place {first}"), values) : say(voice, QT_TRANSLATE_NOOP("words", "places {first} to {last}"), values);
}

std::string whatOf(const Voice& voice, const RunStep& step, bool isSheet) {
  const Values values{{"round", whole(voice, step.round)}, {"places", placesOf(voice, step)}, {"cups", cups(voice, step.cups)}};
  switch (step.kind) {
    case RunStepKind::settle:
      return say(voice, QT_TRANSLATE_NOOP("words", "Everybody sits down. Read the cautions aloud; who drives is first offered the pouring. Everybody agrees, or sits out; nobody asks why. Say the seal mark."));
    case RunStepKind::pour:
      return say(voice, QT_TRANSLATE_NOOP("words", "Round {round}, {places}: the pourer pours {cups} out of sight and carries them in on their mats. Each taster compares codes and mat."), values);
    case RunStepKind::taste:
      return isSheet ? say(voice, QT_TRANSLATE_NOOP("words", "Round {round}, {places}: everybody fills in a sheet. No talking; water and spit cups stand ready."), values)
                     : say(voice, QT_TRANSLATE_NOOP("words", "Round {round}, {places}: taste from left to right and answer. No talking until everybody is done."), values);
    case RunStepKind::close:
      return say(voice, QT_TRANSLATE_NOOP("words", "Ask whether somebody is still to answer, then close the table. Open the key with everybody there. Write down what you will do. See that everybody has a way home."));
  }
  return {};
}

}  // namespace

RunPage runPage(const Voice& voice, const std::vector<std::vector<planning::RunStep>>& evenings, bool isSheet, int cupMl, int cupCount, int spares) {
  RunPage page;
  page.title = say(voice, QT_TRANSLATE_NOOP("words", "The run of the evening"));
  page.beforeHeading = say(voice, QT_TRANSLATE_NOOP("words", "Before"));
  page.before = {
      say(voice, QT_TRANSLATE_NOOP("words", "One to three days before: stand all bottles upright and cold, all in the same place.")),
      say(voice, QT_TRANSLATE_NOOP("words", "Count {cups} alike and opaque or dark, marked at {volume}, and some more.")
          , {{"cups", cups(voice, cupCount - spares)}, {"volume", volume(voice, cupMl)}}),
      say(voice, QT_TRANSLATE_NOOP("words", "Cut the labels and stick them on in the order in which they are printed. {spares} are kept aside for spilled cups."), {{"spares", whole(voice, spares)}}),
      say(voice, QT_TRANSLATE_NOOP("words", "Lay the mats. Water, something plain to eat, a spit cup at every place. No perfume, no cooking, nobody smokes.")),
      say(voice, QT_TRANSLATE_NOOP("words", "A box for folded sheets, pens, and the seal mark where everybody can read it."))};
  int number = 0;
  for (const auto& steps : evenings) {
    RunPage::Evening evening;
    ++number;
    if (evenings.size() > 1) evening.heading = say(voice, QT_TRANSLATE_NOOP("words", "Evening {n} of {all}"), {{"n", whole(voice, number)}, {"all", whole(voice, static_cast<long long>(evenings.size()))}});
    evening.headers = {say(voice, QT_TRANSLATE_NOOP("words", "minute")), say(voice, QT_TRANSLATE_NOOP("words", "what happens"))};
    for (const planning::RunStep& step : steps)
      evening.rows.push_back({step.fromMinute == step.toMinute ? whole(voice, step.fromMinute)
                                                               : say(voice, QT_TRANSLATE_NOOP("words", "{from} to {to}"), {{"from", whole(voice, step.fromMinute)}, {"to", whole(voice, step.toMinute)}}),
                              whatOf(voice, step, isSheet)});
    page.evenings.push_back(std::move(evening));
  }
  page.pace = isSheet ? say(voice, QT_TRANSLATE_NOOP("words", "Minutes are our own figures: 10 to settle, 20 seconds to pour a cup, 30 to taste one, 5 for each question about it, and the pause between cups."))
                      : say(voice, QT_TRANSLATE_NOOP("words", "Minutes are our own figures: 10 to settle, 20 seconds to pour a cup, 30 to taste one with one screen passed round. On paper, when all taste at once, it is quicker."));
  page.law = say(voice, QT_TRANSLATE_NOOP("words", "Adults only. Nobody drives or handles machines afterwards. Nothing here is called safe: the law where you live holds, and a doctor knows about medicines and pregnancy."));
  return page;
}

}  // namespace oddglass::words
