#include "print/figure_pages.h"

namespace oddglass::print {

void figureAndTable(Pages& pages, const figures::Figure& figure, const std::string& tableLine) {
  pages.figure(figure);
  if (figure.table.rows.empty()) return;
  pages.paragraph(tableLine, {9, false, quietColour});
  pages.table(figure.table);
}

}  // namespace oddglass::print
