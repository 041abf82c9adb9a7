#include "cli/families.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "shelf/vocabulary.h"
#include "words/vocabulary.h"

namespace oddglass::cli {
namespace {

/// The list of the store; where no store was named and there is none, the program's own.
shelf::WordList listOf(Desk& desk) {
  try {
    return shelf::vocabulary(*desk.toRead());
  } catch (const Problem& problem) {
    if (problem.trouble() != Trouble::storeMissing || desk.storeOption.isGiven()) throw;
    return builtInWords();
  }
}

template <class E>
std::optional<E> choiceOf(const Given& given) {
  if (!given.isGiven()) return std::nullopt;
  std::vector<std::string> choices;
  for (const E each : allOf<E>()) choices.emplace_back(nameOf(each));
  return named<E>(given.oneOf(choices));
}

Json wordJson(const words::Voice& voice, const TastingWord& word) {
  Json drinks = Json::array();
  for (const Kind kind : word.drinks) drinks.push_back(nameOf(kind));
  Json json{{"id", word.id.text}, {"word", words::wordText(voice, word)}, {"also", words::otherNames(voice, word)}, {"class", nameOf(word.wordClass)}, {"drinks", drinks},
            {"leaning", nameOf(word.leaning)}, {"compound", word.compound.empty() ? Json() : Json(word.compound)}, {"own", word.own}, {"retired", word.retired},
            {"same_as", word.sameAs ? Json(word.sameAs->text) : Json()}};
  if (word.own) json["meaning"] = word.meaning;
  if (const auto hint = words::wordHint(voice, word)) {
    json["causes"] = hint->causes;
    json["deeds"] = hint->deeds;
    json["source"] = hint->source + ' ' + hint->reservation;
  }
  json["caution"] = words::careSentence(voice, word.care);
  return json;
}

/// For people: the words class by class; of a single one all that is known.
std::vector<std::string> wordLinesOf(const words::Voice& voice, const shelf::WordList& found) {
  std::vector<std::string> lines;
  std::optional<WordClass> last;
  for (const TastingWord& word : found) {
    if (last != word.wordClass) lines.push_back(words::className(voice, word.wordClass));
    last = word.wordClass;
    lines.push_back("  " + words::wordText(voice, word) + (word.own ? " *" : ""));
  }
  if (found.size() != 1) return lines;
  const TastingWord& only = found.front();
  lines.push_back(words::otherNamesLine(voice, only));
  lines.push_back(words::careSentence(voice, only.care));
  if (const auto hint = words::wordHint(voice, only))
    for (const std::string& line : {hint->causes, hint->deeds, hint->reservation + ' ' + hint->source}) lines.push_back(line);
  lines.push_back(only.meaning);
  std::erase(lines, std::string());
  return lines;
}

}  // namespace

void describeWords(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "words", "The tasting words, the program's own and those added here (*), with what often lies behind them");
  const auto find = command.option("--find", "TEXT", "A part of the word, of another name for it, or of a compound");
  const auto wordClass = command.option("--class", "CLASS", "Of one class, such as sulphur");
  const auto drink = command.option("--drink", "KIND", "Said of beer, mead, cider, wine or other");
  const auto all = command.flag("--all", "Retired and merged ones too");
  command.does([=](Desk& desk) -> Answer {
    const shelf::WordsWanted wanted{find->isGiven() ? find->text() : std::string(), choiceOf<WordClass>(*wordClass), choiceOf<Kind>(*drink), *all, *all};
    const shelf::WordList found = shelf::wordsOf(listOf(desk), wanted);
    Json words = Json::array();
    for (const TastingWord& word : found) words.push_back(wordJson(desk.voice(), word));
    return {Json{{"words", std::move(words)}}, wordLinesOf(desk.voice(), found)};
  });
}

}  // namespace oddglass::cli
