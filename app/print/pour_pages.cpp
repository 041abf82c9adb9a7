#include "print/pour_pages.h"

#include "print/form.h"
#include "words/paper.h"
#include "words/record.h"

#include <algorithm>

namespace oddglass::print {
namespace {

using session::PourLine;
using session::PourSheet;

std::string whereOf(const words::Voice& voice, const PourSheet& sheet, const PourLine& line) {
  const std::string mark = sheet.hasMarked && line.position == Position{1} ? " (" + words::tablePaperText(voice).mark + ')' : std::string();
  return words::labelLine(voice, {line.code, line.place, line.round, line.position, line.spare}, sheet.rounds, sheet.cupsPerFlight) + mark;
}

/// A box, the code, where it stands; and what goes in, where `drink` is given.
void cupLine(Pages& pages, const std::string& code, const std::string& where, const std::string& drink, bool isCrossed) {
  constexpr double ofBox = 18, ofCode = 62, size = 13;
  const Type type{10, false, Type{}.colour};
  const double room = pages.width() - ofBox - ofCode, half = drink.empty() ? room : room * 0.42;
  const SetText stands(where, type, half - 8), goesIn(drink, type, room - half);
  const double height = std::max({stands.height(), drink.empty() ? 0.0 : goesIn.height(), 20.0});
  pages.need(height + 3);
  box(pages, pages.left(), pages.y() + 2, 11);
  if (isCrossed) pages.at(pages.left() + 2.5, pages.y() + 1, 12, "x", {11, true, Type{}.colour});
  pages.code(pages.left() + ofBox, pages.y(), code, size);
  stands.draw(pages.painter(), pages.left() + ofBox + ofCode, pages.y() + 2);
  if (!drink.empty()) goesIn.draw(pages.painter(), pages.left() + ofBox + ofCode + half, pages.y() + 2);
  pages.space(height + 3);
}

}  // namespace

std::string pourSheetPdf(const words::Voice& voice, const PourSheet& sheet, PaperSize size) {
  const words::PourPaperText text = words::pourPaperText(voice, sheet.cupMl);
  const PaperWords about{text.title, words::paperFoot(voice, sheet.guestTitle, sheet.sealMark), [&voice](int page, int pages) { return words::pageOf(voice, page, pages); }};
  return pdf(size, about, [&](Pages& pages) {
    pages.paragraph(text.warning, {13, true, QColor(Qt::black)}, 4);
    pages.paragraph(text.amount, {12, false, Type{}.colour}, 2);
    pages.paragraph(words::openingsLine(voice, sheet.openings), {9, false, quietColour}, 4);
    pages.heading(text.pourOrder, 15);
    for (const session::PourStep& step : session::pourSteps(sheet)) {
      pages.heading(words::pourHeading(voice, {step.round, sheet.rounds, step.evening, sheet.evenings, step.first, step.last, session::isInWaves(sheet), step.name}), 11);
      for (const PourLine& line : step.lines) cupLine(pages, std::to_string(line.code.value), whereOf(voice, sheet, line), {}, line.isPoured);
    }
    pages.turn();
    pages.heading(text.placeOrder, 15);
    std::pair<Place, Round> before{};
    bool isSpares = false;
    for (const PourLine& line : sheet.placeByPlace) {
      if (line.spare > 0 && !isSpares) pages.heading(text.spares, 13);
      if (line.spare == 0 && before != std::pair(line.place, line.round)) pages.heading(words::placeLine(voice, line.place, line.round, sheet.rounds), 11);
      isSpares = line.spare > 0;
      before = {line.place, line.round};
      cupLine(pages, std::to_string(line.code.value), whereOf(voice, sheet, line), sheet.nameOf(line.slot), line.isPoured);
    }
  });
}

}  // namespace oddglass::print
