#include "words/vocabulary.h"

#include "words/drinks.h"
#include "words/hint_rows.h"
#include "words/mark.h"

#include <algorithm>

namespace oddglass::words {
namespace {

const HintRow* hintOf(const std::string& word) {
  for (const auto& rows : {hintsMadeOf(), hintsOfTaste(), hintsOfFaults()})
    for (const HintRow& row : rows)
      if (word == row.word) return &row;
  return nullptr;
}

std::string sourceName(const Voice& voice, HintSource source) {
  switch (source) {
    case HintSource::guides: return say(voice, QT_TRANSLATE_NOOP("words", "From extension-service fault series and fermentation guides."));
    case HintSource::ageing: return say(voice, QT_TRANSLATE_NOOP("words", "From the general course of ageing in beer (Dalgliesh 1977); the rest is common practice."));
    case HintSource::commonPractice: return say(voice, QT_TRANSLATE_NOOP("words", "Common practice."));
  }
  return {};
}

std::string listedNames(const TastingWord& word) {
  std::string names;
  for (const std::string& name : word.alsoCalled) names += (names.empty() ? "" : "; ") + name;
  return names;
}

}  // namespace

std::string wordText(const Voice& voice, const TastingWord& word) { return word.own ? word.text : say(voice, word.text.c_str()); }

std::vector<std::string> otherNames(const Voice& voice, const TastingWord& word) {
  // Translated as one text, so that a language may have more of them, or fewer.
  return word.alsoCalled.empty() ? std::vector<std::string>{} : namesIn(say(voice, listedNames(word).c_str()));
}

std::string otherNamesLine(const Voice& voice, const TastingWord& word) {
  std::string line;
  if (const auto names = otherNames(voice, word); !names.empty()) line = say(voice, QT_TRANSLATE_NOOP("words", "Also {names}."), {{"names", listed(voice, names)}});
  if (word.compound.empty()) return line;
  return (line.empty() ? "" : line + ' ') + say(voice, QT_TRANSLATE_NOOP("words", "Compound: {compound}."), {{"compound", say(voice, word.compound.c_str())}});
}

std::string wordCount(const Voice& voice, int count) {
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 word"), QT_TRANSLATE_NOOP("words", "{n} words"), count);
}

std::string leaningName(const Voice& voice, Leaning leaning) {
  switch (leaning) {
    case Leaning::fault: return say(voice, QT_TRANSLATE_NOOP("words", "usually a fault"));
    case Leaning::either: return say(voice, QT_TRANSLATE_NOOP("words", "a fault or wanted, as the style has it"));
    case Leaning::wanted: return say(voice, QT_TRANSLATE_NOOP("words", "usually wanted"));
  }
  return {};
}

std::string drinksLine(const Voice& voice, const TastingWord& word) {
  std::vector<std::string> names;
  for (const Kind kind : word.drinks) names.push_back(kindName(voice, kind));
  return say(voice, QT_TRANSLATE_NOOP("words", "Said of {drinks}."), {{"drinks", listed(voice, names)}});
}

std::string careSentence(const Voice& voice, Care care) {
  switch (care) {
    case Care::none: return {};
    case Care::pressure:
      return say(voice, QT_TRANSLATE_NOOP("words", "Pressure: what still ferments can burst its bottle. Bottle only after the gravity has stood still for several days. "
                                                   "If a bottle gushes, keep the others cool and covered, and wear gloves and goggles before you touch them."));
    case Care::sulphite:
      return say(voice, QT_TRANSLATE_NOOP("words", "Sulphite: some people with asthma react to it. Tell it to everybody before pouring, and keep to the law where you live."));
    case Care::doNotSwallow:
      return say(voice, QT_TRANSLATE_NOOP("words", "Smell first. If in doubt, do not swallow it, and do not pour it for others."));
  }
  return {};
}

std::optional<WordHint> wordHint(const Voice& voice, const TastingWord& word) {
  const HintRow* row = word.own ? nullptr : hintOf(word.text);
  if (!row) return std::nullopt;
  return WordHint{say(voice, row->causes), say(voice, row->deeds), sourceName(voice, row->source),
                  say(voice, QT_TRANSLATE_NOOP("words", "A hint, not a diagnosis: one taste can have several causes, and two tasters can mean two things by one word."))};
}

std::string changeLine(const Voice& voice, const WordChange& change, const std::string& word, const std::string& other) {
  const Values values{{"day", day(voice, change.at)}, {"word", quoted(voice, word)}, {"other", quoted(voice, other)}, {"former", quoted(voice, change.text)}};
  switch (change.kind) {
    case WordChangeKind::added: return say(voice, QT_TRANSLATE_NOOP("words", "{day}: {former} was added."), values);
    case WordChangeKind::renamed: return say(voice, QT_TRANSLATE_NOOP("words", "{day}: {former} got another name."), values);
    case WordChangeKind::merged: return say(voice, QT_TRANSLATE_NOOP("words", "{day}: {word} was merged into {other}."), values);
    case WordChangeKind::takenApart: return say(voice, QT_TRANSLATE_NOOP("words", "{day}: {word} was taken apart from {other}."), values);
    case WordChangeKind::retired: return say(voice, QT_TRANSLATE_NOOP("words", "{day}: {word} was retired."), values);
    case WordChangeKind::broughtBack: return say(voice, QT_TRANSLATE_NOOP("words", "{day}: {word} was brought back."), values);
  }
  return {};
}

}  // namespace oddglass::words
