#pragma once

#include <span>

namespace oddglass::words {

/// Where a hint comes from.
enum class HintSource {
  guides,          ///< extension-service fault series and fermentation guides
  ageing,          ///< the general course of ageing after Dalgliesh (1977); the rest common practice
  commonPractice,
};

/// The hint of one word of the program's own list, by its English name.
struct HintRow {
  const char* word;
  HintSource source;
  const char* causes;
  const char* deeds;
};

std::span<const HintRow> hintsMadeOf();
std::span<const HintRow> hintsOfTaste();
std::span<const HintRow> hintsOfFaults();

}  // namespace oddglass::words
