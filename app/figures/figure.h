#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace oddglass::figures {

/// What a mark is for; whoever paints gives each role its colour. No meaning hangs on colour alone.
enum class Role { ink, muted, hair, accent, soft };

/// Which end of a text stands at its x.
enum class Anchor { start, middle, end };

/// A straight stroke. All lengths are points in the figure's own box: x to the right, y downwards, from the top left corner.
struct Line {
  double x1 = 0, y1 = 0, x2 = 0, y2 = 0;
  double stroke = 1;
  bool dashed = false;  ///< in dashes and gaps of `dash` points
};

inline constexpr double dash = 4;

/// A box or a bar, filled with its role. An outline of 1 point in `outline` is drawn when `outlined`. `radius` rounds the corners.
struct Rect {
  double x = 0, y = 0, width = 0, height = 0;
  double radius = 0;
  bool outlined = false;
  Role outline = Role::accent;
};

/// A filled circle.
struct Disc {
  double x = 0, y = 0, radius = 0;
};

/// An open circle.
struct Ring {
  double x = 0, y = 0, radius = 0;
  double stroke = 2;
};

/// An open ellipse around x, y. `turn` is how far its `rx` axis is turned from x towards y, in degrees.
struct Ellipse {
  double x = 0, y = 0, rx = 0, ry = 0;
  double turn = 0;
  double stroke = 1;
};

/// One line of plain text; `y` is its baseline, `size` the height of the type in points.
struct Text {
  double x = 0, y = 0;
  double size = 14;
  Anchor anchor = Anchor::start;
  std::string text;
};

/// One thing to paint, later ones over earlier ones. `readOut` is what a pointer or a screen reader is told about it; empty for mere decoration.
struct Mark {
  std::variant<Line, Rect, Disc, Ring, Ellipse, Text> shape;
  Role role = Role::ink;
  std::string readOut;
};

/// The numbers behind a figure, as words: every row has as many cells as there are headers.
struct Table {
  std::vector<std::string> headers;
  std::vector<std::vector<std::string>> rows;
};

/// A figure as a list of marks. Everything lies inside 0..width and 0..height; no two texts overlap.
struct Figure {
  double width = 0, height = 0;
  std::string title;     ///< what it shows; also the first text among the marks
  std::string sentence;  ///< the whole figure in one sentence, for those who cannot see it
  std::vector<Mark> marks;
  Table table;
};

/// How wide a text is in points at a size. The window passes its font's measure.
using Measure = std::function<double(std::string_view text, double size)>;

/// A measure without a font: not below the width in common sans-serif faces. Text is UTF-8.
double roomFor(std::string_view text, double size);

}  // namespace oddglass::figures
