#include "print/figure_pages.h"

namespace oddglass::print {

void figureAndTable(Pages& pages, const figures::Figure& figure, const std::string& tableLine) {
  pages.figure(figure);
  if (figure.table.rows.empty()) return;
  const Type quiet{9, false, quietColour};
  pages.need(leading(quiet) + 4 + pages.startOf(figure.table));
  pages.paragraph(tableLine, quiet);
  pages.table(figure.table);
}

}  // namespace oddglass::print
