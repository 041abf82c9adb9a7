#pragma once

#include "figures/figure.h"
#include "print/paper_size.h"
#include "print/set_text.h"

#include <functional>
#include <string>

class QPainter;
class QPdfWriter;

namespace oddglass::print {

/// What is said on every page and of the file as a whole.
struct PaperWords {
  std::string title;                                ///< of the file, as a viewer shows it
  std::string foot;                                 ///< stands at the foot of every page; may be empty
  std::function<std::string(int, int)> pageOf;      ///< "page 2 of 5"; nothing: pages are not numbered
};

/// A PDF while it is painted, page after page, in points from the top left corner. Always dark on white. Text that is too long wraps, and a page that is full is turned.
class Pages {
 public:
  Pages(QPdfWriter& writer, QPainter& painter, PaperSize size, const PaperWords& words, int pageCount);

  QPainter& painter() { return painter_; }
  QSizeF paper() const { return paper_; }
  double left() const { return margin_; }
  double width() const { return paper_.width() - 2 * margin_; }
  double top() const { return start_; }
  /// Where the room for content ends; the foot stands below.
  double bottom() const { return footTop_ - 8; }
  /// How far down this page is written.
  double y() const { return y_; }
  int page() const { return page_; }

  /// A new page.
  void turn();
  /// What stands at the top of every new page from here on, so that sheets which fall apart find one another again; nothing for an empty text.
  void continues(const std::string& what) { continued_ = what; }
  /// A new page unless so much room is left on this one; nothing where this one is still empty.
  void need(double height);
  void space(double height) { y_ += height; }
  /// A paragraph, broken over pages where it has to be. Nothing for an empty text.
  void paragraph(const std::string& text, const Type& type = {}, double after = 4);
  /// A heading that does not stand alone at the end of a page: `with` is the height of what has to follow on the same one, three lines at least.
  void heading(const std::string& text, double size = 13, double with = 0);
  /// A hairline over the whole width.
  void rule();
  /// A table whose head stands on every page. Where its columns would be too narrow, each row is set below the other as "head: cell".
  void table(const figures::Table& table);
  /// How high its head and its first row are, of a long row the first lines: what must not fall apart.
  double startOf(const figures::Table& table) const;
  /// How high a figure stands on the page.
  double heightOf(const figures::Figure& figure) const;
  /// A figure, whole, as wide as the column or narrower. It is laid out for `figureWidth` points.
  void figure(const figures::Figure& figure);
  /// A text at a place of one's own; gives its height.
  double at(double x, double y, double width, const std::string& text, const Type& type = {});
  /// A code in type of `size`, underlined so that it cannot be read upside down; in the middle of `width` when that is above 0. Gives its width.
  double code(double x, double y, const std::string& digits, double size, double width = 0);

 private:
  void foot();
  double scaleOf(const figures::Figure& figure) const;
  QPdfWriter& writer_;
  QPainter& painter_;
  QSizeF paper_;
  PaperWords words_;
  int pageCount_;
  int page_ = 1;
  double margin_ = points(16);
  double footTop_ = 0;
  std::string continued_;
  double y_ = margin_, start_ = margin_;
};

/// How wide figures are laid out before they are scaled into the column.
inline constexpr double figureWidth = 640;

/// The bytes of a PDF. `write` is called twice, since the number of pages stands on every page: it must paint the same both times.
std::string pdf(PaperSize size, const PaperWords& words, const std::function<void(Pages&)>& write);

/// Lines of forms and tables, dark enough for any printer.
inline const QColor lineColour{"#8f8a80"};
/// Words of less weight.
inline const QColor quietColour{"#59616b"};

}  // namespace oddglass::print
