#include "shelf/word_list.h"

#include "domain/text.h"
#include "shelf/folded.h"

#include <algorithm>
#include <tuple>

namespace oddglass::shelf {
namespace {

bool hasPart(const TastingWord& word, const std::string& part) {
  const auto holds = [&](const std::string& name) { return folded(name).find(part) != std::string::npos; };
  return holds(word.text) || holds(word.compound) || std::ranges::any_of(word.alsoCalled, holds);
}

}  // namespace

const TastingWord* wordWith(const WordList& list, const WordId& id) {
  const auto found = std::ranges::find(list, id, &TastingWord::id);
  return found == list.end() ? nullptr : &*found;
}

const TastingWord* standsFor(const WordList& list, const WordId& id) {
  const TastingWord* word = wordWith(list, id);
  // The store lets no ring in; a list from elsewhere is followed no longer than it is.
  for (std::size_t step = 0; word && word->sameAs && step < list.size(); ++step) {
    const TastingWord* next = wordWith(list, *word->sameAs);
    if (!next) break;
    word = next;
  }
  return word;
}

const TastingWord* resolve(const WordList& list, std::string_view typed) {
  const std::string wanted = folded(cleaned(typed));
  if (wanted.empty()) return nullptr;
  const TastingWord* found = nullptr;
  for (const TastingWord& word : list) {
    // Of two that are called alike, one of which is merged, both lead to the same.
    if (folded(word.text) == wanted) return standsFor(list, word.id);
    if (!found && std::ranges::any_of(word.alsoCalled, [&](const std::string& name) { return folded(name) == wanted; })) found = &word;
  }
  return found ? standsFor(list, found->id) : nullptr;
}

std::string nameMeant(const WordList& list, std::string_view typed) {
  const TastingWord* word = resolve(list, typed);
  return word ? word->text : folded(cleaned(typed));
}

WordList mergedInto(const WordList& list, const WordId& id) {
  WordList merged;
  for (const TastingWord& word : list)
    if (const TastingWord* end = word.sameAs ? standsFor(list, word.id) : nullptr; end && end->id == id) merged.push_back(word);
  return merged;
}

WordList wordsOf(const WordList& list, const WordsWanted& wanted) {
  const std::string part = folded(cleaned(wanted.text));
  WordList found;
  for (const TastingWord& word : list) {
    if ((word.retired && !wanted.withRetired) || (word.sameAs && !wanted.withMerged)) continue;
    if (wanted.wordClass && word.wordClass != *wanted.wordClass) continue;
    if (wanted.drink && !word.drinks.contains(*wanted.drink)) continue;
    if (hasPart(word, part)) found.push_back(word);
  }
  std::ranges::stable_sort(found, {}, [](const TastingWord& word) { return std::tuple(word.wordClass, word.own, word.own ? folded(word.text) : std::string()); });
  return found;
}

}  // namespace oddglass::shelf
