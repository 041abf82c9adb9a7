#include "words/sheet_counts.h"

#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/sheet_asked.h"
#include "words/sheet_out.h"
#include "words/sheet_picture.h"

#include <algorithm>

namespace oddglass::words {
namespace {

using insight::SheetFindings;

std::vector<std::string> drinkNames(const Voice& voice, const Plan& plan, const SheetFindings& findings) {
  std::vector<std::string> names;
  for (Slot lot : findings.lots) names.push_back(lotNamed(voice, plan, lot));
  return names;
}

std::string dropLine(const Voice& voice, const insight::RightSide& side, const char* source, const std::string& drink) {
  if (side.people == 0 || !side.drop) return {};
  Values values{{"drink", drink}, {"n", people(voice, side.people)}, {"drop", decimal(voice, *side.drop, 1)}};
  if (side.low && side.high) values["range"] = say(voice, QT_TRANSLATE_NOOP("words", " ({low} to {high})"), {{"low", decimal(voice, *side.low, 1)}, {"high", decimal(voice, *side.high, 1)}});
  else values["range"] = say(voice, QT_TRANSLATE_NOOP("words", ", too few to judge"));
  return say(voice, source, values);
}

OutSection rightSection(const Voice& voice, const insight::RightLine& line, const std::vector<std::string>& names) {
  OutSection section{say(voice, QT_TRANSLATE_NOOP("words", "{what}: too little, too much?"), {{"what", capitalised(line.word)}}), {}, {}, {}, About::right, line.item};
  section.headers = {say(voice, QT_TRANSLATE_NOOP("words", "Drink")), say(voice, QT_TRANSLATE_NOOP("words", "too little")),
                     say(voice, QT_TRANSLATE_NOOP("words", "just right")), say(voice, QT_TRANSLATE_NOOP("words", "too much"))};
  for (std::size_t i = 0; i < line.lots.size(); ++i) {
    const insight::RightLot& lot = line.lots[i];
    section.rows.push_back({names[i], whole(voice, lot.little.people), whole(voice, lot.right), whole(voice, lot.much.people)});
    for (const std::string& each : {dropLine(voice, lot.little, QT_TRANSLATE_NOOP("words", "{drink}: the {n} who said too little liked it {drop} points less than those who said just right{range}."), names[i]),
                                    dropLine(voice, lot.much, QT_TRANSLATE_NOOP("words", "{drink}: the {n} who said too much liked it {drop} points less than those who said just right{range}."), names[i])})
      if (!each.empty()) section.lines.push_back(each);
  }
  return section;
}

OutSection tickedSection(const Voice& voice, const SheetFindings& findings, const std::vector<std::string>& names) {
  OutSection section{say(voice, QT_TRANSLATE_NOOP("words", "Words that apply")), {}, {say(voice, QT_TRANSLATE_NOOP("words", "Word"))}, {}, About::ticked, findings.counts.ticked.front().item};
  section.headers.insert(section.headers.end(), names.begin(), names.end());
  std::vector<std::string> apart;
  for (const insight::TickedLine& line : findings.counts.ticked) {
    std::vector<std::string> row{line.word};
    for (std::size_t i = 0; i < names.size(); ++i) row.push_back(countOf(voice, line.ticked[i], line.people[i]));
    section.rows.push_back(std::move(row));
    if (line.pValue && *line.pValue <= findings.alphaPm / 1000.0) apart.push_back(quoted(voice, line.word));
  }
  if (names.size() > 1)
    section.lines.push_back(apart.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "No word was ticked clearly more often for one drink than for another."))
                                          : say(voice, QT_TRANSLATE_NOOP("words", "Ticked more often for one drink than for another: {words}."), {{"words", listed(voice, apart)}}));
  return section;
}

OutSection rankedSection(const Voice& voice, const insight::RankedLine& line, const SheetFindings& findings, const std::vector<std::string>& names) {
  OutSection section{line.word.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "In order of liking")) : say(voice, QT_TRANSLATE_NOOP("words", "In order of {what}"), {{"what", line.word}}),
                     {}, {say(voice, QT_TRANSLATE_NOOP("words", "Drink")), say(voice, QT_TRANSLATE_NOOP("words", "rank sum (the least has the lowest)"))}, {}, About::ranked, line.item};
  for (std::size_t i = 0; i < names.size(); ++i) section.rows.push_back({names[i], decimal(voice, line.sums[i], 1)});
  if (!line.pValue) section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "These ranks do not allow a judgement.")));
  else if (*line.pValue <= findings.alphaPm / 1000.0) section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "People ranked them alike enough that chance seldom does it.")));
  else section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "No common order shown: people's ranks may have fallen like this by chance.")));
  return section;
}

OutSection behaviourSection(const Voice& voice, const insight::BehaviourLine& line, const std::vector<std::string>& names) {
  OutSection section{say(voice, QT_TRANSLATE_NOOP("words", "What they would do with it")), {},
                     {say(voice, QT_TRANSLATE_NOOP("words", "Drink")), say(voice, QT_TRANSLATE_NOOP("words", "pour it away")), say(voice, QT_TRANSLATE_NOOP("words", "finish it")),
                      say(voice, QT_TRANSLATE_NOOP("words", "ask for more"))}, {}, About::behaviour, line.item};
  for (std::size_t i = 0; i < names.size(); ++i)
    section.rows.push_back({names[i], whole(voice, line.counts[i][0]), whole(voice, line.counts[i][1]), whole(voice, line.counts[i][2])});
  return section;
}

OutSection splitSection(const Voice& voice, const insight::SplitLine& line, const std::vector<std::string>& names) {
  OutSection section{say(voice, QT_TRANSLATE_NOOP("words", "Five points to give")), {}, {say(voice, QT_TRANSLATE_NOOP("words", "Drink")), say(voice, QT_TRANSLATE_NOOP("words", "points, on average"))}, {}, About::split, line.item};
  for (std::size_t i = 0; i < names.size(); ++i) section.rows.push_back({names[i], decimal(voice, line.points[i], 1)});
  return section;
}

// Complaints stand beside those about the reference; everybody had to name one, so a complaint alone says nothing.
OutSection saidSection(const Voice& voice, const insight::SaidLine& line, const Plan& plan, const SheetFindings& findings, const std::vector<std::string>& names) {
  const bool isWorst = line.kind == ItemKind::worst;
  OutSection section{isWorst ? say(voice, QT_TRANSLATE_NOOP("words", "The worst thing")) : say(voice, QT_TRANSLATE_NOOP("words", "The one thing to change")), {},
                     {say(voice, QT_TRANSLATE_NOOP("words", "In their words"))}, {}, About::said, line.item};
  section.headers.insert(section.headers.end(), names.begin(), names.end());
  std::vector<std::string> onlyOwn;
  for (const insight::WordCount& word : line.words) {
    std::vector<std::string> row{word.word};
    int own = 0, reference = 0;
    for (std::size_t i = 0; i < names.size(); ++i) {
      row.push_back(countOf(voice, word.people[i], line.asked[i]));
      const LotRole role = plan.lots[static_cast<std::size_t>(findings.lots[i].value) - 1].role;
      if (role == LotRole::reference) reference += word.people[i];
      if (role == LotRole::compared) own += word.people[i];
    }
    section.rows.push_back(std::move(row));
    if (own > 0 && reference == 0) onlyOwn.push_back(quoted(voice, word.word));
  }
  if (!isWorst) return section;
  std::vector<std::string> none{foundNone(voice)};
  for (std::size_t i = 0; i < names.size(); ++i) none.push_back(countOf(voice, line.none[i], line.asked[i]));
  section.rows.push_back(std::move(none));
  section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Everyone had to name a worst thing, so a complaint alone says nothing.")));
  const bool hasReference = std::ranges::any_of(plan.lots, [](const PlannedLot& lot) { return lot.role == LotRole::reference; });
  if (hasReference && !onlyOwn.empty())
    section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Named on yours and not on the bought one: {words}."), {{"words", listed(voice, onlyOwn)}}));
  return section;
}

OutSection sureSection(const Voice& voice, const insight::SheetSureLine& line) {
  OutSection section{say(voice, QT_TRANSLATE_NOOP("words", "How sure they were")), {},
                     {say(voice, QT_TRANSLATE_NOOP("words", "Sureness")), say(voice, QT_TRANSLATE_NOOP("words", "sheets"))}, {}, About::sure, line.item};
  const auto names = answerWords(voice, ItemKind::sureness);
  for (std::size_t i = 0; i < names.size(); ++i) section.rows.push_back({names[i], whole(voice, line.counts[i])});
  return section;
}

}  // namespace

std::vector<OutSection> countSections(const Voice& voice, const Plan& plan, const SheetFindings& findings) {
  const auto names = drinkNames(voice, plan, findings);
  const insight::Counts& counts = findings.counts;
  std::vector<OutSection> sections;
  for (const auto& line : counts.right) sections.push_back(rightSection(voice, line, names));
  if (!counts.ticked.empty()) sections.push_back(tickedSection(voice, findings, names));
  for (const auto& line : counts.ranked) sections.push_back(rankedSection(voice, line, findings, names));
  for (const auto& line : counts.behaviour) sections.push_back(behaviourSection(voice, line, names));
  for (const auto& line : counts.split) sections.push_back(splitSection(voice, line, names));
  for (const auto& line : counts.said) sections.push_back(saidSection(voice, line, plan, findings, names));
  for (const auto& line : counts.sure) sections.push_back(sureSection(voice, line));
  return sections;
}

}  // namespace oddglass::words
