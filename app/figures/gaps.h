#pragma once

#include "figures/scale.h"

#include <optional>

namespace oddglass::figures {

/// What is known of a gap to the reference.
enum class GapVerdict { less, more, within, unclear };

/// One descriptor: how far the sample lies from the reference.
struct GapRow {
  std::string label;             ///< the descriptor
  std::optional<double> gap;     ///< sample minus reference, on the scale; none: words only
  std::optional<Span> interval;  ///< of the gap; may run off the scale
  std::optional<double> limit;   ///< of this row alone, where the rows have limits of their own: above 0 and on the scale both ways
  std::optional<Span> range;     ///< how far the reference lies from itself (several vintages), on the scale
  GapVerdict verdict = GapVerdict::unclear;
  std::string word;              ///< the verdict in words; needed
  std::string count;             ///< of how many; needed
  std::string readOut;           ///< the row in one sentence
  std::string why;               ///< why there is no interval or no gap; needed then
  std::string rangeReadOut;      ///< the range in one sentence
};

/// The picture of a sample next to its reference, one row a descriptor. The words come from whoever knows the language.
struct GapPicture {
  std::string title;
  Scale scale;                  ///< around 0
  std::vector<GapRow> rows;
  std::optional<double> limit;  ///< of all rows; above 0 and on the scale both ways; drawn as two dashed lines
  std::string zeroName;         ///< what stands at 0, the reference
  std::string limitName;        ///< needed with a limit
  std::string rangeName;        ///< needed with a range
  bool inOrder = false;         ///< rows stand as they come instead
  std::string sentence;         ///< for screen readers
  Table table;
};

/// Rows from the largest gap below zero to the largest above, those without a gap last; equal ones as they came (or all, `inOrder`). Filled dot: less or
/// more. Two bars: within the limit. Open ring: cannot tell yet. Lays the picture out in `width` points, 300 to 860.
/// Throws std::invalid_argument, naming the field, on a width below 120, on numbers out of range and on words that are needed.
Figure gapFigure(const GapPicture& picture, double width, const Measure& measure = roomFor);

/// The smallest even end for a scale around zero that holds every gap, range and limit; intervals may run off it.
double gapReach(const GapPicture& picture);

}  // namespace oddglass::figures
