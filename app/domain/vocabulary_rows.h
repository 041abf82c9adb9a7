#pragma once

#include "domain/vocabulary.h"

#include <span>

namespace oddglass {

/// Of which drinks a word is usually said.
namespace drinks {
constexpr unsigned beer = 1, mead = 2, cider = 4, wine = 8, all = 15;
}

/// A row of the program's own list. `also` holds other names, parted by semicolons.
struct WordRow {
  const char* uid;
  const char* text;
  const char* also;
  WordClass wordClass;
  unsigned drinks;
  const char* compound;
  Leaning leaning;
  Care care;
};

std::span<const WordRow> wordsMadeOf();
std::span<const WordRow> wordsOfTaste();
std::span<const WordRow> wordsOfFaults();

}  // namespace oddglass
