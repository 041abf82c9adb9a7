#include "print/report_pages.h"

#include "print/figure_pages.h"
#include "print/paint_figure.h"
#include "print/pages.h"
#include "report/pictures.h"
#include "words/paper.h"
#include "words/report.h"

#include <QPainter>

namespace oddglass::print {
namespace {

const Type leadType{12, false, Type{}.colour};
const Type quietType{9, false, quietColour};

void drawings(Pages& pages, const std::vector<report::Drawing>& all, const words::ReportWords& text) {
  for (const report::Drawing& layOut : all) figureAndTable(pages, layOut(figureWidth, figureMeasure()), text.picture);
}

void sections(Pages& pages, const std::vector<report::Section>& all, const words::ReportWords& text, double headingSize) {
  for (const report::Section& section : all) {
    pages.heading(section.heading, headingSize);
    for (const std::string& line : section.lines) pages.paragraph(line);
    if (section.table) pages.table(*section.table);
    drawings(pages, section.drawings, text);
  }
}

/// How high some lines and the figure below them are, which stay with their heading on one page; nothing where they would take most of one.
double withFigure(const Pages& pages, const std::vector<std::string>& lines, const report::Drawing& layOut) {
  double height = pages.heightOf(layOut(figureWidth, figureMeasure())) + 6;
  for (const std::string& line : lines) height += SetText(line, {}, pages.width()).height() + 4;
  return height < (pages.bottom() - pages.top()) * 0.7 ? height : 0;
}

/// The mark of the verdict beside its headline.
void headline(Pages& pages, const words::CameOut& out, double size) {
  const Type type{size, true, Type{}.colour};
  const double mark = size * 1.1, indent = mark + size * 0.5;
  const SetText set(out.headline, type, pages.width() - indent);
  pages.need(set.height() + 3 * leading({}));
  pages.painter().save();
  pages.painter().translate(pages.left(), pages.y() + size * 0.15);
  pages.painter().scale(mark / 32, mark / 32);
  paintFigure(pages.painter(), report::verdictMark(out.shape, out.word));
  pages.painter().restore();
  set.draw(pages.painter(), pages.left() + indent, pages.y());
  pages.space(set.height() + 4);
}

// `document` holds the figures of a score sheet; none belong to one of several pairs.
void cameOut(Pages& pages, const words::CameOut& out, const words::ReportWords& text, double size, const report::Document* document = nullptr) {
  for (const std::string& line : out.first) pages.paragraph(line, {11, true, Type{}.colour}, 6);
  headline(pages, out, size);
  pages.paragraph(out.under, {12, false, quietColour});
  pages.paragraph(out.count, leadType, 8);
  for (const words::CameOut& pair : out.pairs) {
    pages.rule();
    cameOut(pages, pair, text, 14);
  }
  if (out.interval) {
    figureAndTable(pages, figures::intervalFigure(report::picture(*out.interval), figureWidth, figureMeasure()), text.picture);
  }
  if (document) drawings(pages, document->lead, text);
  if (!out.interval || out.range != out.interval->sentence) pages.paragraph(out.range);  // the picture says it already
  for (const std::string* line : {&out.notSaid, &out.missed, &out.weaker, &out.howKnew, &out.sureness}) pages.paragraph(*line);
  for (std::size_t i = 0; i < out.sections.size(); ++i) {
    const words::OutSection& section = out.sections[i];
    const bool isDrawn = document && i < document->drawings.size() && !document->drawings[i].empty();
    pages.heading(section.heading, 13, isDrawn ? withFigure(pages, section.lines, document->drawings[i].front()) : 0);
    for (const std::string& line : section.lines) pages.paragraph(line);
    if (isDrawn) drawings(pages, document->drawings[i], text);
    else if (!section.rows.empty()) pages.table({section.headers, section.rows});
  }
  // Paper cannot be asked: what the window shows on request stands there.
  if (document && document->onRequest) sections(pages, {*document->onRequest}, text, 13);
  for (const std::string& line : out.beside) pages.paragraph(line);
  for (const std::string& line : out.cautions) pages.paragraph(line);
  for (const std::string* line : {&out.next, &out.promise, &out.decision}) pages.paragraph(*line);
  if (!out.deviations.empty()) {
    pages.heading(text.deviationsHeading);
    for (const std::string& line : out.deviations) pages.paragraph(line);
  }
}

}  // namespace

std::string reportPdf(const words::Voice& voice, const report::Document& document, PaperSize size) {
  const words::ReportWords text = words::reportWords(voice);
  PaperWords about{document.title, document.title, [&voice](int page, int pages) { return words::pageOf(voice, page, pages); }};
  return pdf(size, about, [&](Pages& pages) {
    pages.paragraph(document.title, quietType);
    pages.paragraph(document.out.what, quietType, 8);
    cameOut(pages, document.out, text, 21, &document);
    sections(pages, document.room, text, 13);
    pages.space(6);
    pages.paragraph(document.out.method, quietType);
    pages.paragraph(document.date, quietType);
    if (document.makerHeading.empty()) return;
    pages.turn();
    pages.heading(document.makerHeading, 16);
    sections(pages, document.maker, text, 11);
  });
}

}  // namespace oddglass::print
