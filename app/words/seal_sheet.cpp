#include "words/seal_sheet.h"

#include "words/came_out.h"
#include "words/give_aways.h"
#include "words/mark.h"
#include "words/method.h"
#include "words/numbers.h"
#include "words/serving.h"
#include "words/routine.h"
#include "words/seal_rule.h"
#include "words/sheet_out.h"

#include <algorithm>

namespace oddglass::words {
namespace {

std::vector<std::string> lotsThatAre(const Voice& voice, const std::vector<PlannedLot>& lots, LotRole role) {
  std::vector<std::string> names;
  for (const PlannedLot& lot : lots)
    if (lot.role == role) names.push_back(lotTitle(voice, lot));
  return names;
}

std::string whoFills(const Voice& voice, const SheetSealFacts& facts) {
  if (facts.claim == Claim::me) return say(voice, QT_TRANSLATE_NOOP("words", "You taste alone: the answers speak of you only."));
  const Values values{{"people", people(voice, facts.outlook.people)}, {"rounds", rounds(voice, facts.draft.rounds)}};
  return facts.draft.rounds == 1 ? say(voice, QT_TRANSLATE_NOOP("words", "{people} who did not make it fill in a sheet each; the person counts, not the cup."), values)
                                 : say(voice, QT_TRANSLATE_NOOP("words", "{people} who did not make it, {rounds} each; a person's answers are averaged first."), values);
}

// What stands on the table, and as what.
void addCups(const Voice& voice, const SheetSealFacts& facts, std::vector<std::string>& lines) {
  const auto add = [&](LotRole role, const char* one) {
    const auto names = lotsThatAre(voice, facts.lots, role);
    if (!names.empty()) lines.push_back(say(voice, one, {{"lots", listed(voice, names)}}));
  };
  add(LotRole::reference, QT_TRANSLATE_NOOP("words", "Held against {lots}, under codes like the rest."));
  add(LotRole::control, QT_TRANSLATE_NOOP("words", "Flawed or thinned on purpose, to see how sharp the table is: {lots}."));
  add(LotRole::warmUp, QT_TRANSLATE_NOOP("words", "Before the first flight everybody gets an open cup of {lots}; it is not scored."));
  if (facts.draft.marked && facts.draft.marked->value <= static_cast<int>(facts.lots.size()))
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "A marked cup of {lot} stands beside the coded ones, to go back to."), {{"lot", lotTitle(voice, facts.lots[static_cast<std::size_t>(facts.draft.marked->value) - 1])}}));
  if (facts.draft.sheet.hasDuplicate) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "One of the drinks is poured twice under two codes. Which one is drawn.")));
  if (!facts.outlook.isComplete)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Of {samples} cups everybody gets {cups}."), {{"samples", whole(voice, facts.outlook.samples)}, {"cups", whole(voice, facts.outlook.cups)}}));
}

/// The limit of all of them, where it is one and there are several; empty otherwise.
std::string sharedLimit(const Voice& voice, const std::vector<SheetItem>& items) {
  std::vector<std::string> limits;
  for (const SheetItem& item : items)
    if (item.isMain) limits.push_back(item.limit ? limitPoints(voice, item.kind, *item.limit) : std::string());
  return limits.size() > 1 && std::ranges::count(limits, limits.front()) == std::ssize(limits) ? limits.front() : std::string();
}

std::string mainQuestion(const Voice& voice, const SheetItem& item) {
  const std::string name = questionName(voice, item.kind, item.part, item.word);
  if (!item.limit) return name;
  return say(voice, QT_TRANSLATE_NOOP("words", "{what} (up to {limit} does not matter)"), {{"what", name}, {"limit", limitPoints(voice, item.kind, *item.limit)}});
}

// What is judged, and what is only looked at.
void addJudging(const Voice& voice, const SheetSealFacts& facts, std::vector<std::string>& lines) {
  const std::string limit = sharedLimit(voice, facts.draft.sheet.items);
  std::vector<std::string> about;
  for (const SheetItem& item : facts.draft.sheet.items)
    if (item.isMain) about.push_back(limit.empty() ? mainQuestion(voice, item) : questionName(voice, item.kind, item.part, item.word));
  const auto others = static_cast<int>(facts.draft.sheet.items.size() - about.size());
  if (about.empty()) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "No question is what the plan is about: all are looked at afterwards, as hints.")));
  else lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "The plan is about {questions}."), {{"questions", listed(voice, about)}}));
  if (!limit.empty()) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "In each of them a gap of up to {limit} does not matter."), {{"limit", limit}}));
  if (!about.empty() && others > 0)
    lines.push_back(sayCount(voice, QT_TRANSLATE_NOOP("words", "1 more question is looked at afterwards, as a hint."), QT_TRANSLATE_NOOP("words", "{n} more questions are looked at afterwards, as hints."), others));
  const Values chance{{"chance", risk(voice, facts.draft.alphaPm)}};
  if (facts.outlook.noIntervals) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "With fewer than three people the answers are shown as they are: no range, no verdict.")));
  else if (about.size() > 1) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "A gap is shown when chance alone brings any such gap among them no more often than {chance}."), chance));
  else if (about.size() == 1) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "A gap is shown when chance alone brings such a gap no more often than {chance}."), chance));
}

}  // namespace

std::string sheetQuestion(const Voice& voice, Question question, const std::vector<PlannedLot>& lots) {
  const auto asked = lotsThatAre(voice, lots, LotRole::compared), beside = lotsThatAre(voice, lots, LotRole::reference);
  const Values values{{"lots", listed(voice, asked)}, {"beside", listed(voice, beside)}};
  const bool isOne = asked.size() == 1;
  if (question == Question::good) return isOne ? say(voice, QT_TRANSLATE_NOOP("words", "How good is {lots} really?"), values) : say(voice, QT_TRANSLATE_NOOP("words", "How good are {lots} really?"), values);
  if (beside.empty()) return isOne ? say(voice, QT_TRANSLATE_NOOP("words", "What is {lots} like?"), values) : say(voice, QT_TRANSLATE_NOOP("words", "What are {lots} like?"), values);
  return isOne ? say(voice, QT_TRANSLATE_NOOP("words", "What is {lots} like, and what does it lack next to {beside}?"), values)
               : say(voice, QT_TRANSLATE_NOOP("words", "What are {lots} like, and what do they lack next to {beside}?"), values);
}

SealPage sheetSealPage(const Voice& voice, const SheetSealFacts& facts) {
  SealPage page;
  page.question = sheetQuestion(voice, facts.draft.question, facts.lots);
  page.rule = {methodLine(voice, Method::sheet, {}), whoFills(voice, facts)};
  addCups(voice, facts, page.rule);
  addJudging(voice, facts, page.rule);
  for (std::string& line : giveAwayLines(voice, facts.draft.giveAways)) page.rule.push_back(std::move(line));
  for (std::string& line : servedLines(voice, facts.draft.serving)) page.rule.push_back(std::move(line));
  addPeopleBeside(voice, facts.makers, facts.pourer, page.rule);
  if (!isDrawn(facts.draft.routine)) page.rule.push_back(routineLine(voice, facts.draft.routine));
  for (const Outcome outcome : {Outcome::shown, Outcome::notShown}) page.promises.push_back(promisedLine(voice, outcomeIf(voice, outcome, Method::sheet, facts.draft.question), facts.draft.promises, outcome));
  page.binding = bindingLine(voice, facts.draft.routine);
  return page;
}

}  // namespace oddglass::words
