#include "words/bottle_watch.h"

#include "words/drinks.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/over_time.h"
#include "words/sheet_out.h"

#include <algorithm>

namespace oddglass::words {
namespace {

std::string deedName(const Voice& voice, const Note& note) {
  std::string what = note.text.empty() ? noteKindName(voice, note.kind) : note.text;
  if (note.level) what = say(voice, QT_TRANSLATE_NOOP("words", "{what}, {level}"), {{"what", noteKindName(voice, note.kind)}, {"level", noteLevelName(voice, note.kind, *note.level)}});
  return what;
}

OutSection seenSection(const Voice& voice, const insight::SeenInBottle& seen) {
  OutSection section;
  section.heading = capitalised(noteKindName(voice, seen.kind));
  section.lines = {say(voice, QT_TRANSLATE_NOOP("words", "As it was noted with the label known: no blind result."))};
  section.headers = seenHeaders(voice);
  for (const auto& look : seen.looks) section.rows.push_back({ageName(voice, look.age), noteLevelName(voice, seen.kind, look.level)});
  return section;
}

// Deeds against faults that nobody was asked about: what they did cannot be seen here.
void addUnasked(const Voice& voice, const insight::OverTime& over, const std::vector<Note>& notes, std::vector<OutSection>& sections) {
  std::vector<std::string> asked;
  for (const insight::TimeLine& line : over.lines) asked.push_back(line.question.word);
  for (const auto& mentions : over.mentions) asked.push_back(mentions.question.word);
  for (const std::string& fault : insight::faultsNotAsked(asked, notes)) {
    OutSection section;
    section.heading = capitalised(fault);
    section.lines = {deedsLine(voice, fault, notes), say(voice, QT_TRANSLATE_NOOP("words", "It was not asked about in these sittings: put the word on the next sheet."))};
    sections.push_back(std::move(section));
  }
}

}  // namespace

std::string deedsLine(const Voice& voice, const std::string& word, const std::vector<Note>& notes) {
  std::vector<std::string> deeds;
  for (const Note& note : insight::deedsAgainst(word, notes)) deeds.push_back(deedName(voice, note) + " (" + note.doneOn + ")");
  return deeds.empty() ? std::string() : say(voice, QT_TRANSLATE_NOOP("words", "Done against it: {deeds}. What came after it may have come of it, or of time."), {{"deeds", listed(voice, deeds)}});
}

OutSection mentionsSection(const Voice& voice, const insight::OverTime& over, const insight::TimeMentions& mentions, const std::vector<Note>& notes) {
  OutSection section;
  section.heading = capitalised(mentions.question.word);
  section.headers = {say(voice, QT_TRANSLATE_NOOP("words", "age")), say(voice, QT_TRANSLATE_NOOP("words", "batch"))};
  if (over.control != ControlKind::none) section.headers.push_back(say(voice, QT_TRANSLATE_NOOP("words", "control")));
  const bool hasNoticers = std::ranges::any_of(mentions.counts, [](const auto& each) { return each.noticersOf > 0; });
  if (hasNoticers) section.headers.push_back(say(voice, QT_TRANSLATE_NOOP("words", "batch, by those known to notice it")));
  for (const auto& each : mentions.counts) {
    const auto of = [&](int count, int all) { return countOf(voice, count, all); };
    std::vector<std::string> row{ageName(voice, over.sittings[static_cast<std::size_t>(each.sitting)].age), of(each.batch, each.batchOf)};
    if (over.control != ControlKind::none) row.push_back(of(each.control, each.controlOf));
    if (hasNoticers) row.push_back(of(each.noticers, each.noticersOf));
    section.rows.push_back(std::move(row));
  }
  section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "How many ticked it, of those who were asked. Counts are shown, not judged.")));
  if (const std::string deeds = deedsLine(voice, mentions.question.word, notes); !deeds.empty()) section.lines.push_back(deeds);
  return section;
}

std::vector<std::string> seenHeaders(const Voice& voice) { return {say(voice, QT_TRANSLATE_NOOP("words", "age")), say(voice, QT_TRANSLATE_NOOP("words", "what was noted"))}; }

std::string noteLine(const Voice& voice, const Note& note) {
  const Values values{{"day", note.doneOn}, {"what", deedName(voice, note)}, {"word", quoted(voice, note.word)}};
  return note.word.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "{day}: {what}"), values) : say(voice, QT_TRANSLATE_NOOP("words", "{day}: {what}, against {word}"), values);
}

std::vector<OutSection> seenSections(const Voice& voice, const Series& series, const insight::OverTime& over, const std::vector<Note>& notes) {
  std::vector<OutSection> sections;
  for (const insight::SeenInBottle& seen : insight::seenInBottle(series, notes)) sections.push_back(seenSection(voice, seen));
  addUnasked(voice, over, notes, sections);
  return sections;
}

}  // namespace oddglass::words
