// What only a score sheet has on the page of what came out: a figure for every question, and how the cups lie to each other for those who ask.
#include "ui/came_out_model.h"

#include "figures/map.h"
#include "insight/sheet_map.h"
#include "report/sheet_pictures.h"
#include "session/look.h"
#include "ui/section_lines.h"
#include "ui/voice.h"
#include "words/sheet_map.h"

#include <algorithm>

namespace oddglass::ui {
namespace {

struct MapRead {
  std::vector<std::string> lines;
  std::optional<figures::MapPicture> picture;
};

}  // namespace

QStringList linesOf(const words::OutSection& section, bool withTable) {
  QStringList lines;
  for (const std::string& line : section.lines) lines << shown(line);
  if (!withTable) return lines;
  for (const auto& row : section.rows) {
    QStringList cells;
    for (std::size_t i = 0; i < row.size(); ++i)
      cells << (i == 0 || i >= section.headers.size() ? shown(row[i]) : CameOutModel::tr("%1: %2").arg(shown(section.headers[i]), shown(row[i])));
    lines << cells.join(QStringLiteral(" · "));
  }
  return lines;
}

void CameOutModel::showSections(const words::CameOut& out, const report::SheetDrawings& drawings) {
  std::vector<PairRow> rows;
  for (std::size_t i = 1; i < drawings.lead.size(); ++i) {
    PairRow row;
    row.figure = FigureSource{drawings.lead[i]};
    rows.push_back(row);
  }
  for (std::size_t i = 0; i < out.sections.size(); ++i) {
    const std::vector<report::Drawing>& figures = drawings.sections[i];
    PairRow row;
    row.headline = shown(out.sections[i].heading);
    if (!figures.empty()) row.figure = FigureSource{figures[0]};
    if (figures.size() > 1) row.other = FigureSource{figures[1]};
    row.evidence = linesOf(out.sections[i], figures.empty()).join(QLatin1Char('\n'));
    rows.push_back(row);
  }
  m_pairs.set(rows);
}

void CameOutModel::hideMap(const Plan& plan) {
  const auto lines = std::ranges::count_if(plan.items, [](const SheetItem& item) { return item.kind == ItemKind::line || item.kind == ItemKind::magnitude; });
  m_mayShowMap = plan.sheet && lines > 1;
  m_mapShown = false;
  m_map = {};
  m_mapLines.clear();
  m_mapLink = shown(words::mapLink(voice()));
}

void CameOutModel::showMap() {
  if (m_mapShown) {
    m_mapShown = false;
    emit changed();
    return;
  }
  ask([id = m_stage.current.id()](Cellar& cellar) {
    const RevealedSession session = session::revealed(cellar.store(), id);
    const insight::SheetMap map = insight::sheetMapOf(session);
    return MapRead{words::mapLines(voice(), map), report::mapPicture(voice(), session.plan, insight::sheetFindingsOf(session), map)};
  }, [this](const MapRead& read) {
    m_mapLines = shownAll(read.lines);
    m_map = read.picture ? FigureSource{report::drawingOf(*read.picture, figures::mapFigure)} : FigureSource{};
    m_mapShown = true;
    emit changed();
  });
}

}  // namespace oddglass::ui
