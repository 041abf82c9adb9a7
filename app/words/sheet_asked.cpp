#include "words/sheet_asked.h"

#include "words/mark.h"
#include "words/numbers.h"

namespace oddglass::words {

std::string askedLabel(const Voice& voice, const SheetItem& item) {
  const Values values{{"what", item.word}};
  switch (item.kind) {
    case ItemKind::liking:
      return item.word.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "How do you like it?")) : say(voice, QT_TRANSLATE_NOOP("words", "How do you like it: {what}?"), values);
    case ItemKind::line:
    case ItemKind::magnitude: return say(voice, QT_TRANSLATE_NOOP("words", "How much: {what}?"), values);
    case ItemKind::justRight: return say(voice, QT_TRANSLATE_NOOP("words", "For you: {what}?"), values);
    case ItemKind::check: return ticksLabel(voice);
    case ItemKind::rank:
      return item.word.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "Tap the cups from the one you like most to the one you like least."))
                               : say(voice, QT_TRANSLATE_NOOP("words", "Tap the cups from the most to the least: {what}."), values);
    case ItemKind::split: return say(voice, QT_TRANSLATE_NOOP("words", "You have five points. Give them to the cups."));
    case ItemKind::behaviour: return say(voice, QT_TRANSLATE_NOOP("words", "What would you do with the glass?"));
    case ItemKind::worst: return say(voice, QT_TRANSLATE_NOOP("words", "The worst thing about it"));
    case ItemKind::changeOne: return say(voice, QT_TRANSLATE_NOOP("words", "The one thing you would change"));
    case ItemKind::distance: return say(voice, QT_TRANSLATE_NOOP("words", "How far is it from the marked cup?"));
    case ItemKind::words: return say(voice, QT_TRANSLATE_NOOP("words", "In your own words, if you like"));
    case ItemKind::sureness: return say(voice, QT_TRANSLATE_NOOP("words", "How sure are you of all this?"));
    case ItemKind::choose:
    case ItemKind::same:
    case ItemKind::prefer:
    case ItemKind::clue: break;
  }
  return {};
}

std::string ticksLabel(const Voice& voice) { return say(voice, QT_TRANSLATE_NOOP("words", "Tap every word that applies. None is an answer too.")); }

std::vector<std::string> answerWords(const Voice& voice, ItemKind kind) {
  const auto all = [&](std::initializer_list<const char*> sources) {
    std::vector<std::string> words;
    for (const char* source : sources) words.push_back(say(voice, source));
    return words;
  };
  switch (kind) {
    case ItemKind::liking:
      return all({QT_TRANSLATE_NOOP("words", "dislike extremely"), QT_TRANSLATE_NOOP("words", "dislike very much"), QT_TRANSLATE_NOOP("words", "dislike moderately"),
                  QT_TRANSLATE_NOOP("words", "dislike slightly"), QT_TRANSLATE_NOOP("words", "neither like nor dislike"), QT_TRANSLATE_NOOP("words", "like slightly"),
                  QT_TRANSLATE_NOOP("words", "like moderately"), QT_TRANSLATE_NOOP("words", "like very much"), QT_TRANSLATE_NOOP("words", "like extremely")});
    case ItemKind::justRight:
      return all({QT_TRANSLATE_NOOP("words", "much too little"), QT_TRANSLATE_NOOP("words", "too little"), QT_TRANSLATE_NOOP("words", "just about right"),
                  QT_TRANSLATE_NOOP("words", "too much"), QT_TRANSLATE_NOOP("words", "much too much")});
    case ItemKind::behaviour: return all({QT_TRANSLATE_NOOP("words", "pour it away"), QT_TRANSLATE_NOOP("words", "finish it"), QT_TRANSLATE_NOOP("words", "ask for more")});
    case ItemKind::sureness: return all({QT_TRANSLATE_NOOP("words", "a guess"), QT_TRANSLATE_NOOP("words", "fairly sure"), QT_TRANSLATE_NOOP("words", "sure")});
    case ItemKind::distance: {
      std::vector<std::string> steps{say(voice, QT_TRANSLATE_NOOP("words", "0, no different"))};
      for (int step = 1; step < 10; ++step) steps.push_back(whole(voice, step));
      steps.push_back(say(voice, QT_TRANSLATE_NOOP("words", "10, as far as can be")));
      return steps;
    }
    default: return {};
  }
}

Ends scaleEnds(const Voice& voice, ItemKind kind) {
  if (kind == ItemKind::line) return {say(voice, QT_TRANSLATE_NOOP("words", "none")), say(voice, QT_TRANSLATE_NOOP("words", "very much"))};
  if (kind == ItemKind::magnitude) return {say(voice, QT_TRANSLATE_NOOP("words", "none")), say(voice, QT_TRANSLATE_NOOP("words", "the strongest imaginable"))};
  return {};
}

std::vector<ScaleMark> magnitudeMarks(const Voice& voice) {
  return {{14, say(voice, QT_TRANSLATE_NOOP("words", "barely detectable"))}, {61, say(voice, QT_TRANSLATE_NOOP("words", "weak"))},
          {172, say(voice, QT_TRANSLATE_NOOP("words", "moderate"))}, {347, say(voice, QT_TRANSLATE_NOOP("words", "strong"))},
          {525, say(voice, QT_TRANSLATE_NOOP("words", "very strong"))}};
}

std::string scaleReadOut(const Voice& voice, ItemKind kind, int value) {
  if (kind == ItemKind::line) return say(voice, QT_TRANSLATE_NOOP("words", "{value} of 100"), {{"value", whole(voice, value)}});
  std::string below = scaleEnds(voice, kind).low;
  for (const ScaleMark& mark : magnitudeMarks(voice))
    if (value >= mark.at) below = mark.word;
  return say(voice, QT_TRANSLATE_NOOP("words", "{value} of 100, {word} or above"), {{"value", decimal(voice, value / 10.0, 1)}, {"word", below}});
}

std::string passWords(const Voice& voice, const SheetItem& item) {
  return item.word.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "I leave this out")) : say(voice, QT_TRANSLATE_NOOP("words", "I don't judge {what}"), {{"what", item.word}});
}

}  // namespace oddglass::words
