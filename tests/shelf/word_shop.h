#pragma once

#include "cellar.h"
#include "shelf/vocabulary.h"

namespace oddglass::testing {

/// A store with the vocabulary in it, and short ways to its words.
struct WordShop : Cellar {
  std::unique_ptr<store::Store> open_ = open();
  store::Store& store = *open_;

  static TastingWord made(const std::string& text, WordClass wordClass = WordClass::other, std::set<Kind> drinks = {Kind::mead}) {
    TastingWord word;
    word.text = text;
    word.wordClass = wordClass;
    word.drinks = std::move(drinks);
    return word;
  }
  WordId add(const std::string& text) { return shelf::addWord(store, clock, chance, made(text)); }
  shelf::WordList all() { return shelf::vocabulary(store); }
  /// The id of what is meant by a name; empty when nothing is.
  WordId id(const std::string& text) {
    const auto list = all();
    const TastingWord* word = shelf::resolve(list, text);
    return word ? word->id : WordId{};
  }
  /// What a typed word is taken for.
  std::string meant(const std::string& text) {
    const auto list = all();
    const TastingWord* word = shelf::resolve(list, text);
    return word ? word->text : "";
  }
  TastingWord word(const WordId& id) {
    const auto list = all();
    const TastingWord* found = shelf::wordWith(list, id);
    REQUIRE(found);
    return *found;
  }
};

}  // namespace oddglass::testing
