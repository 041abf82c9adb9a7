#include "words/typing.h"

#include "words/drinks.h"
#include "words/mark.h"
#include "words/method.h"
#include "words/numbers.h"
#include "words/sheet_asked.h"

namespace oddglass::words {
namespace {

/// "1 a guess, 2 fairly sure, 3 sure".
std::string numberedWords(const Voice& voice, const std::vector<std::string>& answers, int first) {
  std::string all;
  for (const std::string& each : answers) {
    const std::string one = say(voice, QT_TRANSLATE_NOOP("words", "{number} {answer}"), {{"number", whole(voice, first++)}, {"answer", each}});
    all = all.empty() ? one : say(voice, QT_TRANSLATE_NOOP("words", "{list}, {next}"), {{"list", all}, {"next", one}});
  }
  return all;
}

}  // namespace

TypedQuestion typedQuestion(const Voice& voice, Method method, const std::string& attribute, const SheetItem& item, const std::string& codes, int cups) {
  const Values values{{"codes", codes}, {"most", whole(voice, cups)}, {"what", item.word}};
  switch (item.kind) {
    case ItemKind::choose: return {prompt(voice, method, attribute), say(voice, QT_TRANSLATE_NOOP("words", "The code that is ticked: {codes}."), values)};
    case ItemKind::prefer:
      return {say(voice, QT_TRANSLATE_NOOP("words", "Which one did you like better?")),
              item.low == 0 ? say(voice, QT_TRANSLATE_NOOP("words", "The code that is ticked, {codes}; 0 for no preference."), values)
                            : say(voice, QT_TRANSLATE_NOOP("words", "The code that is ticked: {codes}."), values)};
    case ItemKind::same: return {prompt(voice, method, attribute), numberedWords(voice, {sameWord(voice, method, true), sameWord(voice, method, false)}, 1)};
    case ItemKind::sureness: return {say(voice, QT_TRANSLATE_NOOP("words", "How sure are you?")), numberedWords(voice, answerWords(voice, item.kind), 1)};
    case ItemKind::clue: {
      std::vector<std::string> clues;
      for (const Clue each : {Clue::taste, Clue::smell, Clue::mouthfeel, Clue::look, Clue::fizz, Clue::guess}) clues.push_back(clueName(voice, each));
      return {say(voice, QT_TRANSLATE_NOOP("words", "How did you know?")), numberedWords(voice, clues, 1)};
    }
    case ItemKind::line: return {askedLabel(voice, item), say(voice, QT_TRANSLATE_NOOP("words", "Millimetres from the beginning of the line to the stroke, 0 to 100."))};
    case ItemKind::magnitude: return {askedLabel(voice, item), say(voice, QT_TRANSLATE_NOOP("words", "Millimetres from the foot of the line to the stroke, 0 to 100; tenths count."))};
    case ItemKind::check: return {item.word, say(voice, QT_TRANSLATE_NOOP("words", "1 when it is ticked, else nothing."))};
    case ItemKind::rank:
      return {item.word.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "The number beside the cup")) : say(voice, QT_TRANSLATE_NOOP("words", "The number beside the cup: {what}"), values),
              say(voice, QT_TRANSLATE_NOOP("words", "1 for the least to {most} for the most, each once."), values)};
    case ItemKind::split: return {say(voice, QT_TRANSLATE_NOOP("words", "The points of the cup")), say(voice, QT_TRANSLATE_NOOP("words", "0 to 5, five in all; nothing for none."))};
    case ItemKind::worst: return {askedLabel(voice, item), say(voice, QT_TRANSLATE_NOOP("words", "As it is written; 0 where none was found."))};
    case ItemKind::words:
    case ItemKind::changeOne: return {askedLabel(voice, item), item.required ? say(voice, QT_TRANSLATE_NOOP("words", "As it is written.")) : say(voice, QT_TRANSLATE_NOOP("words", "As it is written; nothing where nothing is."))};
    case ItemKind::distance: return {askedLabel(voice, item), say(voice, QT_TRANSLATE_NOOP("words", "0 no different to 10 as far as can be."))};
    case ItemKind::liking:
    case ItemKind::justRight:
    case ItemKind::behaviour: return {askedLabel(voice, item), numberedWords(voice, answerWords(voice, item.kind), item.low.value_or(1))};
  }
  return {};
}

}  // namespace oddglass::words
