#pragma once

#include "fixed.h"

#include <catch2/catch.hpp>

#include <array>
#include <cstdio>
#include <fstream>
#include <regex>
#include <string>
#include <vector>

namespace oddglass::testing {

/// A word of a page with its box, in points from the top left corner.
struct Word {
  int page = 0;
  double left = 0, top = 0, right = 0, bottom = 0;
  std::string text;
};

/// A PDF as poppler reads it. A copy is left in the build folder under its name, to be looked at.
class Paper {
 public:
  Paper(const std::string& name, const std::string& bytes) {
    std::filesystem::create_directories(SHEETS);
    file_ = (std::filesystem::path(SHEETS) / (name + ".pdf")).string();
    std::ofstream(file_, std::ios::binary) << bytes;
  }

  /// Its text page by page, in the order in which it was painted.
  std::string text(int page = 0) const { return said("pdftotext -raw " + only(page) + '\'' + file_ + "' -"); }
  std::string fonts() const { return said("pdffonts '" + file_ + '\''); }
  std::string images() const { return said("pdfimages -list '" + file_ + '\''); }
  int pages() const { return std::stoi(infoOf("Pages:")); }
  /// "594.96 x 841.92 pts (A4)".
  std::string size() const { return infoOf("Page size:"); }
  /// Every dot of every page; two papers that look alike give the same bytes.
  std::string dots(int perInch = 60) const { return said("pdftoppm -r " + std::to_string(perInch) + " '" + file_ + '\''); }

  std::vector<Word> words() const {
    static const std::regex word("<page width|<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">([^<]*)<");
    const std::string boxes = said("pdftotext -bbox '" + file_ + "' -");
    std::vector<Word> all;
    int page = 0;
    for (auto at = std::sregex_iterator(boxes.begin(), boxes.end(), word); at != std::sregex_iterator(); ++at) {
      if ((*at)[0].str().starts_with("<page")) ++page;
      else all.push_back({page, std::stod((*at)[1]), std::stod((*at)[2]), std::stod((*at)[3]), std::stod((*at)[4]), (*at)[5]});
    }
    return all;
  }

  /// What a program of the system prints.
  static std::string said(const std::string& command) {
    std::unique_ptr<FILE, int (*)(FILE*)> pipe(::popen((command + " 2>/dev/null").c_str(), "r"), ::pclose);
    REQUIRE(pipe);
    std::string text;
    std::array<char, 65536> buffer{};
    for (std::size_t got; (got = std::fread(buffer.data(), 1, buffer.size(), pipe.get())) > 0;) text.append(buffer.data(), got);
    return text;
  }

 private:
  static std::string only(int page) { return page > 0 ? "-f " + std::to_string(page) + " -l " + std::to_string(page) + ' ' : std::string(); }
  std::string infoOf(const std::string& key) const {
    const std::string info = said("pdfinfo '" + file_ + '\'');
    const std::size_t at = info.find(key);
    REQUIRE(at != std::string::npos);
    const std::size_t from = info.find_first_not_of(' ', at + key.size());
    return info.substr(from, info.find('\n', at) - from);
  }
  std::string file_;
};

/// Without blanks and line ends: a long name is broken over lines, and must still be all there.
inline std::string squeezed(std::string text) {
  std::erase_if(text, [](char c) { return c == ' ' || c == '\n' || c == '\f' || c == '\r'; });
  return text;
}

inline int timesIn(const std::string& text, const std::string& what) {
  int times = 0;
  for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + what.size())) ++times;
  return times;
}

/// Words beyond the edges of the paper less `margin`, one line each.
inline std::string beyond(const Paper& paper, double width, double height, double margin) {
  std::string out;
  for (const Word& word : paper.words())
    if (word.left < margin - 1 || word.right > width - margin + 1 || word.top < margin - 2 || word.bottom > height - margin + 14) out += std::to_string(word.page) + ": " + word.text + '\n';
  return out;
}

/// Words that lie over one another by more than a hair.
inline std::string overlapping(const Paper& paper) {
  std::string out;
  const std::vector<Word> all = paper.words();
  for (std::size_t i = 0; i < all.size(); ++i)
    for (std::size_t j = i + 1; j < all.size() && all[j].page == all[i].page; ++j) {
      const double wide = std::min(all[i].right, all[j].right) - std::max(all[i].left, all[j].left), high = std::min(all[i].bottom, all[j].bottom) - std::max(all[i].top, all[j].top);
      if (wide > 1 && high > 2) out += std::to_string(all[i].page) + ": " + all[i].text + " / " + all[j].text + '\n';
    }
  return out;
}

/// Nearly two hundred letters that would break a page: no blank for long stretches, marks of other languages and of our own sentences.
inline std::string hostileName() {
  std::string name = "<b>&amp;\"{title}%1%n</b>-Ölgärungsüberschwangsmeßgerät-Γεύση-Кириллица-3x4->";
  while (name.size() < 190) name += "WWWWWWWWWW";
  return name;
}

}  // namespace oddglass::testing
