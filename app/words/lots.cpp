#include "words/lots.h"

#include "words/came_out.h"
#include "words/mark.h"

#include <algorithm>

namespace oddglass::words {

std::string lotNamed(const Voice& voice, const Plan& plan, Slot slot) {
  const auto lot = std::ranges::find(plan.lots, slot, &PlannedLot::slot);
  if (lot == plan.lots.end())
    return slot == Slot{1} ? say(voice, QT_TRANSLATE_NOOP("words", "the first drink")) : say(voice, QT_TRANSLATE_NOOP("words", "the second drink"));
  const bool isAlone = std::ranges::count(plan.lots, lot->beverageName, &PlannedLot::beverageName) == 1;
  return isAlone ? lot->beverageName : lotTitle(voice, *lot);
}

TwoNames namesOf(const Voice& voice, const Plan& plan, std::pair<Slot, Slot> lots) {
  return {lotNamed(voice, plan, lots.first), lotNamed(voice, plan, lots.second)};
}

std::string knownLine(const Voice& voice, const std::string& lot, const std::string& word, const std::string& dose) {
  const Values values{{"lot", lot}, {"word", word}, {"dose", dose}};
  return dose.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "Known beforehand: {lot} has more of “{word}”."), values)
                      : say(voice, QT_TRANSLATE_NOOP("words", "Known beforehand: {lot} has more of “{word}” ({dose})."), values);
}

std::string knownLine(const Voice& voice, const Plan& plan) {
  return knownLine(voice, lotNamed(voice, plan, plan.expected.value_or(Slot{1})), plan.attribute, plan.dose);
}

}  // namespace oddglass::words
