#include "print/pages.h"
#include "print/table_pages.h"
#include "words/paper.h"

#include <QPainter>

#include <algorithm>

namespace oddglass::print {
namespace {

void drawLabel(Pages& pages, const QRectF& label, const std::string& code, const std::string& mark, const std::string& line) {
  const double height = label.height(), width = label.width();
  const Type small{std::clamp(height / 10, 5.5, 9.0), false, Type{}.colour};
  const SetText below(line, small, width - 8);
  const double room = height - std::min(below.lines(), 2) * leading(small) - 6;
  const double ofCode = widthOf(code, {10, true, {}}) / 10, ofMark = mark.empty() ? 0 : ofCode * 0.8;
  const double size = std::min({room / 1.4, (width - 12) / (ofCode + ofMark), 60.0});
  const double x = label.left() + (width - size * (ofCode + ofMark)) / 2, y = label.top() + 4 + (room - size * 1.35) / 2;
  pages.code(x, y, code, size);
  if (!mark.empty()) pages.at(x + size * (ofCode + 0.25), y, size * 2, mark, {size * 0.8, true, QColor(Qt::black)});
  for (int i = 0; i < std::min(below.lines(), 2); ++i) below.draw(pages.painter(), label.left() + 4 + (width - 8 - below.width()) / 2, label.bottom() - 3 - (std::min(below.lines(), 2) - i) * leading(small), i, i + 1);
}

}  // namespace

std::string labelsPdf(const words::Voice& voice, const tasting::TablePaper& paper, PaperSize size, const LabelSheet& sheet) {
  requireLabels(sheet, size);
  const words::TablePaperText text = words::tablePaperText(voice);
  // Nothing stands at the foot: a label may reach there.
  return pdf(size, {text.labels, {}, {}}, [&](Pages& pages) {
    int at = sheet.skip;
    for (const Cup& cup : paper.cups) {
      if (at == labelsOn(sheet)) {
        pages.turn();
        at = 0;
      }
      const QRectF label = labelAt(sheet, size, at++);
      const bool isMarked = paper.hasMarked && cup.position == Position{1};
      const auto cups = paper.places.empty() || paper.places.front().flights.empty() ? 0 : static_cast<int>(paper.places.front().flights.front().cups.size());
      cutMarks(pages.painter(), label);
      drawLabel(pages, label, std::to_string(cup.code.value), isMarked ? text.mark : std::string(), words::labelLine(voice, cup, paper.rounds, cups));
    }
  });
}

}  // namespace oddglass::print
