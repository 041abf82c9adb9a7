#include "domain/vocabulary_rows.h"

#include <algorithm>

namespace oddglass {
namespace {

std::set<Kind> drinksOf(unsigned bits) {
  std::set<Kind> kinds;
  for (const auto& [bit, kind] : {std::pair{drinks::beer, Kind::beer}, {drinks::mead, Kind::mead}, {drinks::cider, Kind::cider}, {drinks::wine, Kind::wine}})
    if (bits & bit) kinds.insert(kind);
  return kinds;
}

TastingWord wordOf(const WordRow& row) {
  TastingWord word;
  word.id.text = row.uid;
  word.text = row.text;
  word.alsoCalled = namesIn(row.also);
  word.wordClass = row.wordClass;
  word.drinks = drinksOf(row.drinks);
  word.compound = row.compound;
  word.leaning = row.leaning;
  word.care = row.care;
  return word;
}

}  // namespace

std::vector<std::string> namesIn(std::string_view text) {
  std::vector<std::string> names;
  while (!text.empty()) {
    const auto end = std::min(text.find(';'), text.size());
    std::string_view name = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    while (name.starts_with(' ')) name.remove_prefix(1);
    while (name.ends_with(' ')) name.remove_suffix(1);
    if (!name.empty()) names.emplace_back(name);
  }
  return names;
}

const std::vector<TastingWord>& builtInWords() {
  static const std::vector<TastingWord> all = [] {
    std::vector<TastingWord> words;
    for (const auto& rows : {wordsMadeOf(), wordsOfTaste(), wordsOfFaults()})
      for (const WordRow& row : rows) words.push_back(wordOf(row));
    return words;
  }();
  return all;
}

const TastingWord* builtInWord(const WordId& id) {
  const auto found = std::ranges::find(builtInWords(), id, &TastingWord::id);
  return found == builtInWords().end() ? nullptr : &*found;
}

}  // namespace oddglass
