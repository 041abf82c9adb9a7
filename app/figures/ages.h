#pragma once

#include "figures/scale.h"

#include <optional>

namespace oddglass::figures {

/// What came out at one age.
struct AgeDot {
  double age = 0;                ///< 0 or more, in the units of the picture
  std::string label;             ///< the age with how many people, as it stands below; needed
  double value = 0;              ///< on the scale
  std::optional<Span> interval;  ///< may run off the scale
  std::string readOut;           ///< in one sentence
};

/// Something that was done to the drink at an age.
struct AgeNote {
  double age = 0;
  std::string letter;            ///< one or a few letters; what they stand for is written beside the picture; needed
  std::string readOut;
};

/// The picture of one question over time. The words come from whoever knows the language.
struct AgePicture {
  std::string title;
  Scale scale;                   ///< of the values, drawn upwards; its ticks rise. A tick whose name does not fit in a third of the width has none
  double lastAge = 1;            ///< where the picture ends; above 0, not below any age in it
  std::vector<AgeDot> dots;
  std::optional<std::pair<double, double>> line;  ///< a fitted straight line: its values at the ages of the first and of the last dot. Not below three dots
  std::vector<AgeNote> notes;
  std::string sentence;          ///< for screen readers
  Table table;
};

/// A filled dot with its upright interval for each age, and a line where one was fitted. Lays the picture out in `width` points, 300 to 860.
/// Throws std::invalid_argument, naming the field, on a width below 120, on numbers out of range, on a line through fewer than three dots and on words that are needed.
Figure ageFigure(const AgePicture& picture, double width, const Measure& measure = roomFor);

}  // namespace oddglass::figures
