#pragma once

#include "words/voice.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <map>
#include <string>

namespace oddglass::testing {

/// The sentences of `words` in German, as the file of translations holds them.
inline const std::map<std::string, std::string>& germanSentences() {
  static const auto all = [] {
    const auto between = [](const std::string& text, const std::string& from, const std::string& to, std::size_t& at) {
      const std::size_t begin = text.find(from, at);
      if (begin == std::string::npos) return std::string();
      at = text.find(to, begin + from.size());
      std::string inside = text.substr(begin + from.size(), at - begin - from.size());
      for (const auto& [coded, letter] : {std::pair{"&quot;", "\""}, {"&apos;", "'"}, {"&lt;", "<"}, {"&gt;", ">"}, {"&amp;", "&"}})
        for (std::size_t found = inside.find(coded); found != std::string::npos; found = inside.find(coded, found + 1)) inside.replace(found, std::string(coded).size(), letter);
      return inside;
    };
    std::ifstream file(GERMAN_SENTENCES);
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    std::map<std::string, std::string> sentences;
    std::size_t at = text.find("<name>words</name>");
    const std::size_t end = std::min(text.find("</context>", at), text.size());
    for (;;) {
      const std::string source = between(text, "<source>", "</source>", at);
      if (source.empty() || at >= end) break;
      sentences[source] = between(text, "<translation>", "</translation>", at);
    }
    return sentences;
  }();
  return all;
}

/// Speaks German as the window does.
inline words::Voice germanVoice() {
  words::Voice voice;
  voice.language = "de";
  voice.decimal = ",";
  voice.group = ".";
  voice.translate = [](const char*, const char* source) {
    const auto found = germanSentences().find(source);
    return found == germanSentences().end() ? std::string(source) : found->second;
  };
  return voice;
}

}  // namespace oddglass::testing
