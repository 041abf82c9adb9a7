#pragma once

#include <QColor>
#include <QTextLayout>

#include <memory>
#include <string_view>

class QPainter;

namespace oddglass::print {

/// How a text is set. Always in the typeface of figures, so that paper, pages and figures agree.
struct Type {
  double size = 10;       ///< points
  bool isBold = false;
  QColor colour{"#1d2127"};
};

/// Points from one line to the next.
constexpr double leading(const Type& type) { return type.size * 1.35; }

/// A text in lines of at most `width` points: broken between words, and within a word that is longer than a line. Control characters become blanks.
class SetText {
 public:
  SetText(std::string_view text, const Type& type, double width);
  int lines() const { return layout_->lineCount(); }
  double height() const { return lines() * leading(type_); }
  /// Of its widest line.
  double width() const;
  /// Draws the lines `from` to before `to` with the top left corner of the first one at x, y.
  void draw(QPainter& painter, double x, double y, int from, int to) const;
  void draw(QPainter& painter, double x, double y) const { draw(painter, x, y, 0, lines()); }
  /// Every line in the middle of `room` points.
  void drawInTheMiddle(QPainter& painter, double x, double y, double room) const;

 private:
  void drawLine(QPainter& painter, int line, double x, double y) const;
  Type type_;
  std::unique_ptr<QTextLayout> layout_;
};

/// How wide a text is in one line, and its widest word, in points.
double widthOf(std::string_view text, const Type& type);
double widestWordOf(std::string_view text, const Type& type);

}  // namespace oddglass::print
