#include "words/expectation.h"

#include "domain/flight_form.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/sheet_out.h"

namespace oddglass::words {

ExpectationFacts expectationFacts(const Plan& plan) { return {plan.method, plan.lots, plan.marked, plan.items}; }

std::string expectedEvent(const Voice& voice, const ExpectationFacts& facts) {
  if (facts.method == Method::sheet) {
    const auto above = expectedAbove(facts.lots, facts.marked, facts.items);
    if (!above) return {};
    const auto lot = [&](Slot slot) { return facts.lots[static_cast<std::size_t>(slot.value) - 1].beverageName; };
    const SheetItem& item = facts.items[static_cast<std::size_t>(above->item.value) - 1];
    return say(voice, QT_TRANSLATE_NOOP("words", "the panel's mean puts {own} above {reference} ({what})"),
               {{"own", lot(above->own)}, {"reference", lot(above->reference)}, {"what", questionName(voice, item.kind, item.part, item.word)}});
  }
  if (facts.method == Method::preference) return say(voice, QT_TRANSLATE_NOOP("words", "a preference is shown"));
  if (namesAThing(facts.method)) return say(voice, QT_TRANSLATE_NOOP("words", "it is shown to be more so"));
  if (facts.lots.size() == 3) return say(voice, QT_TRANSLATE_NOOP("words", "two of the three are told apart"));
  return say(voice, QT_TRANSLATE_NOOP("words", "they are told apart"));
}

std::string expectationAsked(const Voice& voice, const ExpectationFacts& facts) {
  const std::string event = expectedEvent(voice, facts);
  if (event.empty()) return {};
  return say(voice, QT_TRANSLATE_NOOP("words", "How likely is it, do you think, that {event}?"), {{"event", event}});
}

std::string expectationHint(const Voice& voice) {
  return say(voice, QT_TRANSLATE_NOOP("words", "1 to 99 in 100, sealed with the plan; it may stay empty. Nobody at the table is shown it. Once the key is open it stands on the page “You and the room”."));
}

std::string expectationLine(const Voice& voice, const ExpectationFacts& facts, int percent) {
  return say(voice, QT_TRANSLATE_NOOP("words", "Written beforehand: {percent} in 100 that {event}."), {{"percent", whole(voice, percent)}, {"event", expectedEvent(voice, facts)}});
}

}  // namespace oddglass::words
