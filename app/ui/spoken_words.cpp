#include "ui/spoken_words.h"

#include "shelf/folded.h"
#include "ui/voice.h"
#include "words/vocabulary.h"

#include <algorithm>

namespace oddglass::ui {
namespace {

bool isSpokenWith(const TastingWord& word, const std::string& part) {
  const auto holds = [&](const std::string& name) { return shelf::folded(name).find(part) != std::string::npos; };
  return holds(words::wordText(voice(), word)) || std::ranges::any_of(words::otherNames(voice(), word), holds);
}

}  // namespace

shelf::WordList wordsSpoken(const shelf::WordList& list, const shelf::WordsWanted& wanted) {
  if (voice().language == "en" || wanted.text.empty()) return shelf::wordsOf(list, wanted);
  const shelf::WordList written = shelf::wordsOf(list, wanted);
  shelf::WordsWanted any = wanted;
  any.text.clear();
  shelf::WordList found = shelf::wordsOf(list, any);
  std::erase_if(found, [&, part = shelf::folded(wanted.text)](const TastingWord& word) { return !shelf::wordWith(written, word.id) && !isSpokenWith(word, part); });
  return found;
}

}  // namespace oddglass::ui
