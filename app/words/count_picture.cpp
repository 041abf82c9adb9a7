// The words around the pictures of what a score sheet counts.
#include "words/mark.h"
#include "words/numbers.h"
#include "words/sheet_out.h"
#include "words/sheet_picture.h"

namespace oddglass::words {
namespace {

std::string drinkHeader(const Voice& voice) { return say(voice, QT_TRANSLATE_NOOP("words", "Drink")); }

}  // namespace

SideNames sideNames(const Voice& voice) {
  return {say(voice, QT_TRANSLATE_NOOP("words", "too little")), say(voice, QT_TRANSLATE_NOOP("words", "just right")), say(voice, QT_TRANSLATE_NOOP("words", "too much"))};
}

CountPictureWords countPictureWords(const Voice& voice, const insight::RightLine& line) {
  const SideNames sides = sideNames(voice);
  return {say(voice, QT_TRANSLATE_NOOP("words", "How many said so of “{what}”"), {{"what", line.word}}),
          {drinkHeader(voice), sides.little, sides.right, sides.much, say(voice, QT_TRANSLATE_NOOP("words", "people"))}};
}

CountPictureWords countPictureWords(const Voice& voice, const insight::RankedLine& line) {
  const Values values{{"what", line.word}, {"people", people(voice, line.people)}};
  return {line.word.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "Ranks by liking, {people}"), values) : say(voice, QT_TRANSLATE_NOOP("words", "Ranks by “{what}”, {people}"), values),
          {drinkHeader(voice)}};
}

CountPictureWords countPictureWords(const Voice& voice, const insight::BehaviourLine&) {
  CountPictureWords words{say(voice, QT_TRANSLATE_NOOP("words", "What people would do with the glass")), {drinkHeader(voice)}};
  for (const std::string& answer : answerWords(voice, ItemKind::behaviour)) words.headers.push_back(answer);
  return words;
}

CountPictureWords countPictureWords(const Voice& voice, const insight::SplitLine& line) {
  return {say(voice, QT_TRANSLATE_NOOP("words", "Where five points went, on average, {people}"), {{"people", people(voice, line.people)}}),
          {drinkHeader(voice), say(voice, QT_TRANSLATE_NOOP("words", "points, on average"))}};
}

CountPictureWords countPictureWords(const Voice& voice, const insight::SaidLine& line) {
  return {line.kind == ItemKind::worst ? say(voice, QT_TRANSLATE_NOOP("words", "How many named it as the worst thing")) : say(voice, QT_TRANSLATE_NOOP("words", "How many would change it")),
          {say(voice, QT_TRANSLATE_NOOP("words", "In their words"))}};
}

CountPictureWords countPictureWords(const Voice& voice, const insight::SheetSureLine&) {
  return {say(voice, QT_TRANSLATE_NOOP("words", "How sure people were of their sheets")), {say(voice, QT_TRANSLATE_NOOP("words", "Sureness")), say(voice, QT_TRANSLATE_NOOP("words", "sheets"))}};
}

CountPictureWords tickedPictureWords(const Voice& voice) {
  return {say(voice, QT_TRANSLATE_NOOP("words", "How many ticked each word")), {say(voice, QT_TRANSLATE_NOOP("words", "Word"))}};
}

std::string rightSideLine(const Voice& voice, const std::string& drink, const std::string& side, int count, int of, const std::optional<double>& drop) {
  Values values{{"drink", drink}, {"side", side}, {"k", whole(voice, count)}, {"n", people(voice, of)}};
  if (!drop || count == 0) return say(voice, QT_TRANSLATE_NOOP("words", "{drink}, {side}: {k} of {n}"), values);
  values["drop"] = decimal(voice, *drop, 1);
  return say(voice, QT_TRANSLATE_NOOP("words", "{drink}, {side}: {k} of {n}, who liked it {drop} points less"), values);
}

std::string mentionLine(const Voice& voice, const std::string& drink, const std::string& word, int count, int of) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{drink}, {word}: {count}"), {{"drink", drink}, {"word", word}, {"count", countOf(voice, count, of)}});
}

Ends rankEnds(const Voice& voice, const std::string& word) {
  if (word.empty()) return {say(voice, QT_TRANSLATE_NOOP("words", "liked least")), say(voice, QT_TRANSLATE_NOOP("words", "liked most"))};
  return {say(voice, QT_TRANSLATE_NOOP("words", "least {what}"), {{"what", word}}), say(voice, QT_TRANSLATE_NOOP("words", "most {what}"), {{"what", word}})};
}

std::string rankLine(const Voice& voice, const std::string& drink, int rank, int count, int of) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{drink}, rank {rank}: {k} of {n}"),
             {{"drink", drink}, {"rank", whole(voice, rank)}, {"k", whole(voice, count)}, {"n", people(voice, of)}});
}

std::string rankSumWord(const Voice& voice, double sum) { return say(voice, QT_TRANSLATE_NOOP("words", "rank sum {sum}"), {{"sum", decimal(voice, sum, 1)}}); }

std::string splitWord(const Voice& voice, double points) { return say(voice, QT_TRANSLATE_NOOP("words", "{points} of 5"), {{"points", decimal(voice, points, 1)}}); }

Ends splitEnds(const Voice& voice) { return {say(voice, QT_TRANSLATE_NOOP("words", "none")), say(voice, QT_TRANSLATE_NOOP("words", "all five"))}; }

std::string sheetsWord(const Voice& voice, int count) { return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 sheet"), QT_TRANSLATE_NOOP("words", "{n} sheets"), count); }

std::string foundNone(const Voice& voice) { return say(voice, QT_TRANSLATE_NOOP("words", "looked and found none")); }

}  // namespace oddglass::words
