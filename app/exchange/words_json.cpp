#include "exchange/words_json.h"

#include "exchange/each_record.h"
#include "shelf/vocabulary.h"

#include <algorithm>

namespace oddglass::exchange {
namespace {

using canon::Json;

struct MergedWord {
  WordId id, sameAs;
};

struct RetiredWord {
  WordId id;
};

Json wordJson(const TastingWord& word) {
  Json drinks = Json::array();
  for (const Kind kind : word.drinks) drinks.push_back(nameOf(kind));
  return {{"id", word.id.text}, {"word", word.text}, {"class", nameOf(word.wordClass)}, {"drinks", drinks}, {"leaning", nameOf(word.leaning)}, {"meaning", word.meaning}};
}

TastingWord wordFrom(const Node& node) {
  node.onlyKeys({"id", "word", "class", "drinks", "leaning", "meaning"});
  TastingWord word;
  word.id = node.at("id").uid<struct WordTag>();
  word.text = node.at("word").text(60, false);
  word.wordClass = node.at("class").choice<WordClass>();
  for (const Node& each : node.at("drinks").list()) word.drinks.insert(each.choice<Kind>());
  if (word.drinks.empty()) node.at("drinks").refuse(Trouble::empty);
  word.leaning = node.at("leaning").choice<Leaning>();
  if (const auto meaning = node.maybe("meaning")) word.meaning = meaning->text(1000);
  word.own = true;
  return word;
}

MergedWord mergedFrom(const Node& node) {
  node.onlyKeys({"id", "same_as"});
  const MergedWord merged{node.at("id").uid<struct WordTag>(), node.at("same_as").uid<struct WordTag>()};
  if (merged.id == merged.sameAs) node.at("same_as").refuse(Trouble::ringOfWords);
  return merged;
}

RetiredWord retiredFrom(const Node& node) {
  node.onlyKeys({"id"});
  return {node.at("id").uid<struct WordTag>()};
}

}  // namespace

void writeWords(store::Store& store, Json& file) {
  for (const char* key : {"words", "merged_words", "retired_words"}) file[key] = Json::array();
  shelf::WordList list = shelf::vocabulary(store);
  // A word that is called like another goes after the one it counts as, so that it finds that one there.
  std::ranges::stable_partition(list, [](const TastingWord& word) { return !word.sameAs; });
  for (const TastingWord& word : list) {
    if (word.own) file["words"].push_back(wordJson(word));
    if (word.sameAs) file["merged_words"].push_back({{"id", word.id.text}, {"same_as", word.sameAs->text}});
    if (word.retired) file["retired_words"].push_back({{"id", word.id.text}});
  }
}

void bringWords(store::Store& store, Clock& clock, const Node& file, Brought& brought) {
  const auto count = [&brought](bool isNew, int& counter) { ++(isNew ? counter : brought.alreadyThere); };
  eachRecord(file, "words", wordFrom, [&](const TastingWord& word) { count(shelf::bring(store, clock, word), brought.words); });
  eachRecord(file, "merged_words", mergedFrom, [&](const MergedWord& merged) { count(shelf::bringMerge(store, clock, merged.id, merged.sameAs), brought.mergedWords); });
  eachRecord(file, "retired_words", retiredFrom, [&](const RetiredWord& word) { count(shelf::bringRetired(store, clock, word.id), brought.retiredWords); });
}

void requireWords(const Node& file) {
  eachRecord(file, "words", wordFrom, [](const TastingWord&) {});
  eachRecord(file, "merged_words", mergedFrom, [](const MergedWord&) {});
  eachRecord(file, "retired_words", retiredFrom, [](const RetiredWord&) {});
}

}  // namespace oddglass::exchange
