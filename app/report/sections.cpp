#include "report/sections.h"

#include "domain/flight_form.h"
#include "report/made.h"
#include "words/drinks.h"
#include "words/numbers.h"
#include "words/record.h"

namespace oddglass::report {

std::string asServed(const Plan& plan, const std::string& order) {
  const bool hasMarked = plan.sheet ? plan.marked.has_value() : formOf(plan.method).hasMarked;
  return hasMarked && !order.empty() ? '[' + order.substr(0, 1) + ']' + order.substr(1) : order;
}

figures::Table lotTable(const words::Voice& voice, const Plan& plan, Millis at) {
  const auto orUnknown = [&](const std::string& value) { return value.empty() ? words::notKnown(voice) : value; };
  figures::Table table{words::reportWords(voice).lotHeaders, {}};
  for (const PlannedLot& lot : plan.lots)
    table.rows.push_back({std::string(1, letterOf(plan, lot.slot)), words::lotTitle(voice, lot), words::kindName(voice, lot.kind), words::originName(voice, lot.origin),
                          lot.abvBp ? words::strength(voice, *lot.abvBp) : words::notKnown(voice), orUnknown(lot.packagedOn), words::age(voice, lot.packagedOn, at),
                          orUnknown(lot.bestBefore), orUnknown(lot.storage), words::ingredientsName(voice, lot.ingredients)});
  return table;
}

Section servingSection(const words::Voice& voice, const RevealedSession& session, const words::ReportWords& text) {
  figures::Table table{text.orderHeaders, {}};
  for (const OrderCount& each : ordersDealt(session)) table.rows.push_back({asServed(session.plan, each.order), words::whole(voice, each.flights)});
  return {text.servingHeading, words::servingLines(voice, session), table};
}

Section recordSection(const words::Voice& voice, const RevealedSession& session, const words::ReportWords& text) {
  return {text.recordHeading, {words::commitmentLine(voice, session), words::openingsLine(voice, session.pourSheetOpenings), words::standardLine(voice, session.plan)}, std::nullopt};
}

}  // namespace oddglass::report
