#pragma once

#include "figures/figure.h"

#include <optional>

namespace oddglass::figures {

/// How sure a point of the map is: half axes in the units of the map, the first turned from the first component towards the second, in degrees.
struct MapEllipse {
  double rx = 0, ry = 0;  ///< 0 or more
  double turn = 0;
  std::string readOut;    ///< in one sentence
};

/// One sample on the map.
struct MapPoint {
  std::string label;
  double x = 0, y = 0;  ///< on the first and on the second component
  bool isOpen = false;  ///< an open ring, for one the reference; else a filled dot
  std::optional<MapEllipse> ellipse;
  std::string readOut;  ///< in one sentence
};

/// The picture of samples on two components. The words come from whoever knows the language.
struct MapPicture {
  std::string title;
  std::string xName, yName;  ///< what the components are called, each with its share of what differs; needed
  std::string count;         ///< of how many tasters; needed
  std::string note;          ///< below the map, for one why there are no ellipses; may be empty
  std::vector<MapPoint> points;
  std::string sentence;      ///< for screen readers
  Table table;
};

/// A point for each sample, as far apart one way as the other, without lines through the middle. Names stand beside their points; where
/// they crowd, numbers do and the names follow below. Lays the picture out in `width` points, 300 to 860.
/// Throws std::invalid_argument, naming the field, on a width below 120, on numbers out of range and on words that are needed.
Figure mapFigure(const MapPicture& picture, double width, const Measure& measure = roomFor);

}  // namespace oddglass::figures
