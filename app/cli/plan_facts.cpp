#include "cli/plan_facts.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "planning/amounts.h"
#include "planning/outlook.h"
#include "words/came_out.h"
#include "words/plan.h"
#include "words/problems.h"

namespace oddglass::cli {
namespace {

Json outlookJson(const planning::Outlook& outlook) {
  Json finds = Json::array();
  for (const planning::Finding& each : outlook.findings)
    finds.push_back({{"share", each.sharePm / 1000.0}, {"chance", numberOrNull(each.chance)}, {"chance_independent", numberOrNull(each.independent)}});
  Json json{{"claim", nameOf(outlook.claim)}, {"people", outlook.people}, {"trials", outlook.trials}, {"needed", numberOrNull(outlook.needed)},
            {"alpha_actual", numberOrNull(outlook.alphaActual)}, {"finds", std::move(finds)}, {"alike", nullptr}};
  if (!outlook.needed) json["why"] = "no count reaches this risk";
  if (outlook.alike) json["alike"] = {{"limit", outlook.alike->limitPm / 1000.0}, {"largest", numberOrNull(outlook.alike->largest)}, {"chance", numberOrNull(outlook.alike->chance)}};
  return json;
}

Json amountsJson(const planning::Amounts& amounts) {
  Json bottles = Json::array();
  for (const planning::LotAmount& each : amounts.lots) bottles.push_back(numberOrNull(each.bottles));
  return {{"cups", amounts.cups}, {"cups_per_person", amounts.cupsPerPerson}, {"ml_per_person", amounts.mlPerPerson}, {"bottles", std::move(bottles)},
          {"minutes", amounts.minutes}, {"grams", numberOrNull(amounts.grams)}, {"drinks", numberOrNull(amounts.drinks)}, {"drink_grams", numberOrNull(amounts.drinkGrams)}};
}

void addLines(std::vector<std::string>& lines, const std::vector<std::string>& more) { lines.insert(lines.end(), more.begin(), more.end()); }

}  // namespace

Answer planAnswer(const words::Voice& voice, const session::DraftFacts& facts) {
  const Draft& draft = facts.draft;
  Json lots = Json::array();
  std::vector<std::string> lotNames;
  for (const session::DraftLot& each : facts.lots) lotNames.push_back(words::lotTitle(voice, each.lot));
  for (const std::string& name : lotNames) lots.push_back(name);
  Answer answer{Json{{"id", draft.id.text}, {"title", draft.title}, {"state", "draft"}, {"question", nameOf(draft.question)}, {"method", nameOf(draft.method)},
                     {"lots", std::move(lots)}, {"panel", facts.panel.size()}, {"makers", facts.makers.size()}, {"places", facts.places()}, {"rounds", draft.rounds},
                     {"cup_ml", draft.cupMl}, {"outlook", nullptr}, {"amounts", nullptr}, {"ready", true}},
                {draft.id.text + "  " + draft.title}};
  const planning::Setup setup = session::setupOf(facts);
  try {
    const planning::Outlook outlook = planning::outlookFor(setup);
    const planning::Amounts amounts = planning::amountsOf(setup);
    answer.json["outlook"] = outlookJson(outlook);
    answer.json["amounts"] = amountsJson(amounts);
    answer.lines.push_back(words::panelLine(voice, setup, draft.pourer || !draft.pourerName.empty()));
    answer.lines.push_back(words::outlookHeadline(voice, outlook, draft.sought));
    addLines(answer.lines, words::outlookLines(voice, outlook, draft.sought));
    for (const planning::TooSmall rule : outlook.tooSmall) answer.lines.push_back(words::tooSmallLine(voice, outlook, rule));
    for (const planning::WayOut& way : outlook.waysOut) answer.lines.push_back(words::wayOutLine(voice, way, outlook, draft.sought));
    addLines(answer.lines, words::amountLines(voice, setup, amounts, lotNames));
  } catch (const Problem& problem) {
    answer.json["why_no_outlook"] = words::sentence(voice, problem);
  }
  try {
    session::requireReady(facts);
  } catch (const Problem& problem) {
    answer.json["ready"] = false;
    answer.json["why"] = words::sentence(voice, problem);
    answer.lines.push_back(words::sentence(voice, problem));
  }
  return answer;
}

}  // namespace oddglass::cli
