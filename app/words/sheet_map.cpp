#include "words/sheet_map.h"

#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/sheet_out.h"

#include <algorithm>
#include <cmath>

namespace oddglass::words {
namespace {

using insight::SheetMap;

constexpr double telling = 0.5;  // a word is named where its loading is at least half of the largest; own rule
constexpr std::size_t mostNamed = 4;

std::string onAxis(const Voice& voice, double value) { return decimal(voice, value, 0); }

// "more sweet and honey, less sour": the words that an axis is mostly made of, the strongest first.
std::string madeOf(const Voice& voice, const SheetMap& map, std::size_t axis) {
  std::vector<const insight::MapWord*> words;
  for (const insight::MapWord& word : map.words)
    if (axis < word.loadings.size()) words.push_back(&word);
  const auto size = [axis](const insight::MapWord* word) { return std::abs(word->loadings[axis]); };
  std::ranges::stable_sort(words, std::greater<>(), size);
  std::vector<std::string> more, less;
  for (const insight::MapWord* word : words) {
    if (more.size() + less.size() == mostNamed || size(word) < telling * size(words.front())) break;
    (word->loadings[axis] > 0.0 ? more : less).push_back(questionName(voice, word->kind, word->part, word->word));
  }
  const Values values{{"more", listed(voice, more)}, {"less", listed(voice, less)}};
  return less.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "more {more}"), values) : say(voice, QT_TRANSLATE_NOOP("words", "more {more}, less {less}"), values);
}

std::string lotLine(const Voice& voice, const Plan& plan, const insight::MapLot& lot) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{drink}: {x} across, {y} up, {people}"),
             {{"drink", capitalised(lotNamed(voice, plan, lot.lot))}, {"x", onAxis(voice, lot.at[0])}, {"y", onAxis(voice, lot.at[1])}, {"people", people(voice, lot.people)}});
}

}  // namespace

MapPictureWords mapPictureWords(const Voice& voice, const Plan& plan, const SheetMap& map) {
  MapPictureWords words;
  const auto named = [&](const char* source, std::size_t axis) {
    return say(voice, source, {{"words", madeOf(voice, map, axis)}, {"share", whole(voice, std::lround(100.0 * map.shares[axis]))}});
  };
  words.title = say(voice, QT_TRANSLATE_NOOP("words", "How the drinks lie to each other, in hundredths of a line"));
  words.across = named(QT_TRANSLATE_NOOP("words", "To the right: {words} ({share} of 100 parts of what differs)"), 0);
  words.up = named(QT_TRANSLATE_NOOP("words", "Upwards: {words} ({share} of 100 parts)"), 1);
  words.count = people(voice, map.people);
  const bool hasSure = std::ranges::any_of(map.lots, [](const insight::MapLot& lot) { return lot.sure.has_value(); });
  words.note = hasSure ? say(voice, QT_TRANSLATE_NOOP("words", "The rounds say where a drink may lie with other people like these. Drinks whose rounds overlap are not told apart here."))
                       : say(voice, QT_TRANSLATE_NOOP("words", "No rounds around the drinks: from fewer than five people, or from answers all alike, nobody knows how sure their places are."));
  std::vector<std::string> places;
  for (const insight::MapLot& lot : map.lots) {
    words.lots.push_back(lotLine(voice, plan, lot));
    places.push_back(words.lots.back());
    words.sure.push_back(lot.sure ? say(voice, QT_TRANSLATE_NOOP("words", "{drink} may lie up to {far} from its place one way, {near} the other"),
                                        {{"drink", capitalised(lotNamed(voice, plan, lot.lot))}, {"far", onAxis(voice, lot.sure->longer)}, {"near", onAxis(voice, lot.sure->shorter)}})
                                  : std::string());
    words.rows.push_back({capitalised(lotNamed(voice, plan, lot.lot)), onAxis(voice, lot.at[0]), onAxis(voice, lot.at[1]), people(voice, lot.people)});
  }
  for (const insight::MapWord& word : map.words)
    if (word.loadings.size() >= 2)
      words.rows.push_back({questionName(voice, word.kind, word.part, word.word), decimal(voice, word.loadings[0], 2), decimal(voice, word.loadings[1], 2), {}});
  words.sentence = words.title + ": " + listed(voice, places) + '.';
  words.headers = {say(voice, QT_TRANSLATE_NOOP("words", "Drink, or the weight of a word")), say(voice, QT_TRANSLATE_NOOP("words", "To the right")),
                   say(voice, QT_TRANSLATE_NOOP("words", "Upwards")), say(voice, QT_TRANSLATE_NOOP("words", "People"))};
  return words;
}

std::vector<std::string> mapLines(const Voice& voice, const SheetMap& map) {
  if (map.isPlane())
    return {say(voice, QT_TRANSLATE_NOOP("words", "Looked at afterwards, no part of the verdict. Near each other means alike over all words that were put on lines; it says nothing of better or worse."))};
  if (map.why == stats::Reason::fewSamples) return {say(voice, QT_TRANSLATE_NOOP("words", "It takes three drinks or more to see how they lie to each other."))};
  if (map.why == stats::Reason::notGiven) return {say(voice, QT_TRANSLATE_NOOP("words", "It takes two words or more that were put on lines."))};
  if (map.why == stats::Reason::noSpread || !map.why) return {say(voice, QT_TRANSLATE_NOOP("words", "The drinks differ in no more than one way, so there is nothing to draw."))};
  return {say(voice, QT_TRANSLATE_NOOP("words", "Some drinks were not scored by anybody who scored the others, so their places cannot be compared."))};
}

std::string mapHeading(const Voice& voice) { return say(voice, QT_TRANSLATE_NOOP("words", "How the cups lie to each other")); }
std::string mapLink(const Voice& voice) { return say(voice, QT_TRANSLATE_NOOP("words", "Show how the cups lie to each other")); }

}  // namespace oddglass::words
