#include "cli/plan_facts.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "planning/amounts.h"
#include "planning/gap.h"
#include "planning/outlook.h"
#include "planning/recommend.h"
#include "session/follow.h"
#include "words/came_out.h"
#include "words/care.h"
#include "words/expectation.h"
#include "words/give_aways.h"
#include "words/lots.h"
#include "words/method.h"
#include "words/plan.h"
#include "words/routine.h"
#include "words/problems.h"
#include "words/recommend.h"
#include "words/sheet_plan.h"

namespace oddglass::cli {
namespace {

const char* shareWord(planning::ShareOf share) {
  switch (share) {
    case planning::ShareOf::able: return "able";
    case planning::ShareOf::ableInTriangle: return "able_in_triangle";
    case planning::ShareOf::preferring: return "preferring";
  }
  return "";
}

Json endJson(const planning::SequentialEnd& end) {
  return {{"difference", numberOrNull(end.difference)}, {"none", numberOrNull(end.none)}, {"undecided", numberOrNull(end.undecided)}, {"expected_trials", numberOrNull(end.expectedTrials)}};
}

Json stoppingJson(const std::optional<Stopping>& stopping) {
  if (!stopping) return nullptr;
  return {{"share_pm", stopping->sharePm}, {"beta_pm", stopping->betaPm}};
}

Json outlookJson(const planning::Outlook& outlook) {
  Json finds = Json::array();
  for (const planning::Finding& each : outlook.findings)
    finds.push_back({{"share", each.sharePm / 1000.0}, {"chance", numberOrNull(each.chance)}, {"chance_independent", numberOrNull(each.independent)}});
  Json json{{"claim", nameOf(outlook.claim)}, {"people", outlook.people}, {"trials", outlook.trials}, {"comparisons", outlook.comparisons}, {"can_show", outlook.canShow},
            {"needed", numberOrNull(outlook.needed)}, {"alpha_actual", numberOrNull(outlook.alphaActual)}, {"share_of", shareWord(outlook.shareOf)},
            {"finds", std::move(finds)}, {"alike", nullptr}, {"sequential", nullptr}};
  if (!outlook.canShow) json["why"] = "no count reaches this risk";
  else if (!outlook.needed) json["why"] = outlook.sequential ? "looked at after each round" : "both kinds of answers count";
  const auto inTurn = [](const std::vector<std::optional<int>>& counts) {
    Json list = Json::array();
    for (const auto& each : counts) list.push_back(numberOrNull(each));
    return list;
  };
  if (outlook.comparisons > 1) json["needed_in_turn"] = inTurn(outlook.neededInTurn);
  if (outlook.sequential)
    json["sequential"] = {{"every", outlook.sequential->every}, {"last", outlook.sequential->last}, {"none", endJson(outlook.sequential->nobody)}, {"p1", endJson(outlook.sequential->share)}};
  if (outlook.alike) json["alike"] = {{"limit", outlook.alike->limitPm / 1000.0}, {"largest", numberOrNull(outlook.alike->largest)}, {"chance", numberOrNull(outlook.alike->chance)}};
  if (outlook.alike && outlook.comparisons > 1) json["alike"]["largest_in_turn"] = inTurn(outlook.alike->largestInTurn);
  return json;
}

Json sheetOutlookJson(const planning::SheetOutlook& outlook) {
  Json gaps = Json::array();
  for (const planning::Gap& gap : outlook.gaps)
    gaps.push_back({{"kind", nameOf(gap.kind)}, {"scale", gap.scale}, {"smallest", numberOrNull(gap.smallest)}, {"questions", gap.questions}});
  return {{"people", outlook.people}, {"samples", outlook.samples}, {"cups", outlook.cups}, {"complete", outlook.isComplete}, {"from_past", outlook.spread.fromPast},
          {"spread", {{"from", outlook.spread.fromPast ? "past" : "default"}, {"tables", outlook.spread.tables}, {"interaction", outlook.spread.interaction}, {"repeat", outlook.spread.repeat}}},
          {"gaps", std::move(gaps)}, {"intervals", !outlook.noIntervals}, {"will_be_guessed", outlook.willBeGuessed}, {"reference", !outlook.noReference}};
}

Json amountsJson(const planning::Amounts& amounts) {
  Json bottles = Json::array();
  for (const planning::LotAmount& each : amounts.lots) bottles.push_back(numberOrNull(each.bottles));
  Json wave = nullptr;
  if (amounts.wave) wave = {{"waves", amounts.wave->waves}, {"places", amounts.wave->places}, {"cups", amounts.wave->cups}, {"ml", amounts.wave->ml}};
  return {{"cups", amounts.cups}, {"cups_per_person", amounts.cupsPerPerson}, {"ml_per_person", amounts.mlPerPerson}, {"bottles", std::move(bottles)},
          {"evenings", amounts.evenings}, {"cups_an_evening", amounts.cupsAnEvening}, {"ml_an_evening", amounts.mlAnEvening}, {"wave", std::move(wave)},
          {"minutes", amounts.minutes}, {"grams", numberOrNull(amounts.grams)}, {"drinks", numberOrNull(amounts.drinks)}, {"drink_grams", numberOrNull(amounts.drinkGrams)}};
}

Json choiceJson(const planning::Choice& choice) {
  return {{"method", nameOf(choice.method)}, {"needed", numberOrNull(choice.needed)}, {"chance", numberOrNull(choice.chance)}, {"cups_per_person", choice.amounts.cupsPerPerson},
          {"ml_per_person", choice.amounts.mlPerPerson}, {"cups", choice.amounts.cups}, {"grams", numberOrNull(choice.amounts.grams)},
          {"above_ceiling", choice.amounts.aboveCeiling}, {"enough_bottles", choice.enoughBottles}};
}

// The methods that answer the question, the recommended one first.
void addRecommendation(const words::Voice& voice, const session::DraftFacts& facts, const planning::Setup& setup, Answer& answer) {
  const auto found = session::recommendationFor(facts);
  if (!found) return;
  const planning::Recommendation& recommendation = *found;
  Json ranked = Json::array();
  for (const planning::Choice& choice : recommendation.choices) {
    Json json = choiceJson(choice);
    json["because"] = Json::array();
    for (const planning::Because because : choice.because) json["because"].push_back(words::reasonLine(voice, because));
    ranked.push_back(std::move(json));
  }
  answer.json["recommended"] = std::move(ranked);
  const planning::Choice& best = recommendation.best();
  answer.lines.push_back(words::pickedLine(voice, recommendation, facts.draft.method, facts.draft.methodChosen));
  answer.lines.push_back("Recommended: " + words::methodName(voice, best.method) + ". " + words::choiceChance(voice, best, planning::claimOf(setup)) + ' ' + words::choicePrice(voice, best));
  for (const planning::Because because : best.because) answer.lines.push_back("  " + words::reasonLine(voice, because));
  if (!recommendation.references) return;
  const planning::TwoReferences& two = *recommendation.references;
  answer.json["one_target"] = choiceJson(two.oneTarget);
  answer.json["three_comparisons"] = choiceJson(two.three);
  answer.json["one_is_better"] = two.oneIsBetter;
  std::vector<PlannedLot> lots;
  for (const session::DraftLot& each : facts.lots) lots.push_back(each.lot);
  const words::ReferencesWords references = words::referencesWords(voice, two, planning::claimOf(setup), lots);
  answer.lines.push_back(references.advice);
  for (const words::WayToCompare& way : references.ways) {
    answer.lines.push_back(way.name + ':');
    for (const std::string& line : way.lines) answer.lines.push_back("  " + line);
  }
}

void addOutlook(const words::Voice& voice, const planning::Outlook& outlook, Sought sought, Answer& answer) {
  answer.json["outlook"] = outlookJson(outlook);
  answer.lines.push_back(words::outlookHeadline(voice, outlook, sought));
  addLines(answer.lines, words::outlookLines(voice, outlook, sought));
  for (const planning::TooSmall rule : outlook.tooSmall) answer.lines.push_back(words::tooSmallLine(voice, outlook, rule));
  for (const planning::WayOut& way : outlook.waysOut) answer.lines.push_back(words::wayOutLine(voice, way, outlook, sought));
}

void addSheetOutlook(const words::Voice& voice, const planning::SheetOutlook& outlook, Answer& answer) {
  answer.json["outlook"] = sheetOutlookJson(outlook);
  const words::SheetPlanWords found = words::sheetPlanWords(voice, outlook);
  answer.lines.push_back(found.headline);
  addLines(answer.lines, found.lines);
  addLines(answer.lines, found.cautions);
}

// What is known beforehand, and the care that it takes.
void addKnown(const words::Voice& voice, const Draft& draft, const std::vector<std::string>& lots, std::vector<std::string>& lines) {
  if (draft.question != Question::notice) return;
  const auto at = static_cast<std::size_t>(draft.expected.value_or(Slot{1}).value) - 1;
  if (at < lots.size() && !draft.attribute.empty()) lines.push_back(words::knownLine(voice, lots[at], draft.attribute, draft.dose));
  lines.push_back(words::dosedLine(voice));
}

Json servingJson(const Serving& serving) {
  return {{"vessel", serving.vessel.empty() ? Json(nullptr) : Json(serving.vessel)}, {"temperature_c", serving.temperatureC ? Json(*serving.temperatureC) : Json(nullptr)},
          {"mouthful", serving.mouthful ? Json(nameOf(*serving.mouthful)) : Json(nullptr)}};
}

Json giveAwaysJson(const Draft& draft) {
  if (!draft.giveAways) return nullptr;
  Json json = Json::object();
  for (const auto& [check, way] : *draft.giveAways) json[std::string(nameOf(check))] = nameOf(way);
  return json;
}

}  // namespace

Answer planAnswer(const words::Voice& voice, const session::DraftFacts& facts, const planning::Spread& spread) {
  const Draft& draft = facts.draft;
  Json lots = Json::array();
  std::vector<std::string> lotNames;
  for (const session::DraftLot& each : facts.lots) lotNames.push_back(words::lotTitle(voice, each.lot));
  for (const std::string& name : lotNames) lots.push_back(name);
  Answer answer{Json{{"id", draft.id.text}, {"title", draft.title}, {"state", "draft"}, {"question", nameOf(draft.question)}, {"method", nameOf(draft.method)}, {"method_chosen", draft.methodChosen},
                     {"lots", std::move(lots)}, {"panel", facts.panel.size()}, {"makers", facts.makers.size()}, {"places", facts.places()}, {"rounds", draft.rounds},
                     {"cup_ml", draft.cupMl}, {"evenings", draft.evenings}, {"wave", draft.wave}, {"attribute", draft.attribute.empty() ? Json(nullptr) : Json(draft.attribute)},
                     {"expected", draft.expected ? Json(draft.expected->value) : Json(nullptr)}, {"dose", draft.dose.empty() ? Json(nullptr) : Json(draft.dose)}, {"marked", draft.marked ? Json(draft.marked->value) : Json(nullptr)},
                     {"routine", nameOf(draft.routine)}, {"may_have_none", draft.mayHaveNone}, {"also_prefer", draft.alsoPrefer}, {"stopping", stoppingJson(draft.stopping)}, {"expectation_pc", draft.expectationPc ? Json(*draft.expectationPc) : Json(nullptr)}, {"give_aways", giveAwaysJson(draft)}, {"serving", servingJson(draft.serving)}, {"recommended", Json::array()}, {"outlook", nullptr}, {"amounts", nullptr}, {"ready", true}},
                {draft.id.text + "  " + draft.title}};
  const planning::Setup setup = session::setupOf(facts);
  try {
    const planning::Amounts amounts = planning::amountsOf(setup);
    answer.json["amounts"] = amountsJson(amounts);
    answer.lines.push_back(words::questionLine(voice, draft.question, draft.attribute, planning::claimOf(setup) == Claim::me));
    answer.lines.push_back(words::methodLine(voice, draft.method, draft.attribute));
    addKnown(voice, draft, lotNames, answer.lines);
    answer.lines.push_back(words::panelLine(voice, setup, draft.pourer || !draft.pourerName.empty()));
    if (draft.routine != Routine::pourer) answer.lines.push_back(words::routineLine(voice, draft.routine));
    if (setup.sheet) addSheetOutlook(voice, planning::sheetOutlook(setup, draft.sheet.items, spread), answer);
    else addOutlook(voice, planning::outlookFor(setup), draft.sought, answer);
    addLines(answer.lines, words::amountLines(voice, setup, amounts, lotNames));
    addRecommendation(voice, facts, setup, answer);
  } catch (const Problem& problem) {
    answer.json["why_no_outlook"] = words::sentence(voice, problem);
  }
  if (draft.expectationPc) {
    words::ExpectationFacts expected{draft.method, {}, draft.marked, draft.sheet.items};
    for (const session::DraftLot& each : facts.lots) expected.lots.push_back(each.lot);
    answer.lines.push_back(words::expectationLine(voice, expected, *draft.expectationPc));
  }
  addLines(answer.lines, words::giveAwayLines(voice, draft.giveAways));
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
