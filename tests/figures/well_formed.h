#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace oddglass::tests {

/// What keeps a text from being well-formed XML (XML 1.0, 2.1: tags nest, attributes are quoted, & begins a reference), or "".
/// Reads what our writers may write: elements, attributes, text; a doctype and comments are passed over.
inline std::string whatIsWrong(std::string_view xml) {
  std::vector<std::string> open;
  std::size_t at = 0;
  const auto isNameLetter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == ':'; };
  const auto name = [&] {
    const std::size_t from = at;
    while (at < xml.size() && isNameLetter(xml[at])) ++at;
    return std::string(xml.substr(from, at - from));
  };
  const auto reference = [&] {
    for (const std::string_view known : {"&amp;", "&lt;", "&gt;", "&quot;", "&#39;"})
      if (xml.substr(at, known.size()) == known) return at += known.size(), true;
    return false;
  };
  while (at < xml.size()) {
    if (xml[at] == '&') {
      if (!reference()) return "a bare & at " + std::to_string(at);
    } else if (xml.substr(at, 2) == "<!") {
      at = xml.find('>', at);
      if (at == std::string_view::npos) return "an open declaration";
      ++at;
    } else if (xml.substr(at, 2) == "</") {
      at += 2;
      const std::string closing = name();
      if (open.empty() || open.back() != closing) return "</" + closing + "> closes nothing";
      open.pop_back();
      if (at >= xml.size() || xml[at] != '>') return "</" + closing + " has no end";
      ++at;
    } else if (xml[at] == '<') {
      ++at;
      const std::string opening = name();
      if (opening.empty()) return "a bare < at " + std::to_string(at);
      while (at < xml.size() && (xml[at] == ' ' || xml[at] == '\n')) {
        ++at;
        const std::string attribute = name();
        if (attribute.empty()) return "no attribute in " + opening;
        if (xml.substr(at, 2) != "=\"") return attribute + " is not quoted";
        at += 2;
        while (at < xml.size() && xml[at] != '"') {
          if (xml[at] == '<') return "< within " + attribute;
          if (xml[at] == '&') {
            if (!reference()) return "a bare & within " + attribute;
          } else {
            ++at;
          }
        }
        if (at >= xml.size()) return attribute + " has no end";
        ++at;
      }
      if (xml.substr(at, 2) == "/>") {
        at += 2;
      } else if (at < xml.size() && xml[at] == '>') {
        open.push_back(opening);
        ++at;
      } else {
        return "<" + opening + " has no end";
      }
    } else if (xml[at] == '>') {
      return "a bare > at " + std::to_string(at);
    } else {
      ++at;
    }
  }
  return open.empty() ? "" : open.back() + " is not closed";
}

}  // namespace oddglass::tests
