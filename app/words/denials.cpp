#include "words/denials.h"

#include "words/mark.h"

#include <algorithm>

namespace oddglass::words {
namespace {

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }
// A hyphen joins: "same-different" is the name of a method, not the word "same".
bool isLetter(char c) { return (c >= 'a' && c <= 'z') || c == '-' || static_cast<unsigned char>(c) >= 0x80; }

}  // namespace

const std::vector<std::string>& forbiddenInHeadlines() {
  static const std::vector<std::string> all{"same", "equal", "as good as", "ready", "nobody could tell", "proved"};
  return all;
}

const std::vector<const char*>& denyingSentences() {
  static const std::vector<const char*> all{
      QT_TRANSLATE_NOOP("words", "Do not say: nobody could tell."),
      QT_TRANSLATE_NOOP("words", "It may be equal, slightly more, or less."),
      QT_TRANSLATE_NOOP("words", "Alike is not “as good as”: both may be good, both may be poor."),
  };
  return all;
}

std::string forbiddenWordIn(std::string_view text) {
  std::string plain;
  for (const char c : text) plain += lower(c);
  for (const std::string& word : forbiddenInHeadlines()) {
    for (std::size_t at = plain.find(word); at != std::string::npos; at = plain.find(word, at + 1)) {
      // A closing quotation mark also has bytes above 0x7F; it does not make a longer word.
      const std::size_t end = at + word.size();
      const bool startsWord = at == 0 || !isLetter(plain[at - 1]) || std::string_view(plain).substr(0, at).ends_with("“");
      const bool endsWord = end == plain.size() || !isLetter(plain[end]) || std::string_view(plain).substr(end).starts_with("”");
      if (startsWord && endsWord) return word;
    }
  }
  return {};
}

}  // namespace oddglass::words
