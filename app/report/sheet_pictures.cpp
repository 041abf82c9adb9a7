#include "report/sheet_pictures.h"

#include "report/gap_rows.h"
#include "words/lots.h"
#include "words/sheet_map.h"
#include "words/sheet_out.h"
#include "words/sheet_picture.h"

#include <algorithm>

namespace oddglass::report {
std::optional<figures::GapPicture> gapPicture(const words::Voice& voice, const RevealedSession& session, const insight::SheetFindings& findings, Slot lot) {
  if (!findings.target || findings.why || findings.people < insight::fewestForARange) return std::nullopt;
  const words::GapPictureWords text = words::gapPictureWords(voice, session.plan, *findings.target, lot);
  figures::GapPicture picture;
  picture.title = text.title;
  picture.zeroName = text.zero;
  picture.rangeName = text.range;
  picture.limitName = text.limit;
  picture.sentence = text.title;
  picture.table.headers = text.headers;
  for (const insight::PointsLine& line : findings.points) {
    const auto gap = std::ranges::find(line.gaps, lot, &insight::LotGap::lot);
    if (line.kind != ItemKind::line || gap == line.gaps.end()) continue;
    figures::GapRow row;
    row.label = words::questionName(voice, line.kind, line.part, line.word);
    row.gap = gap->difference;
    if (gap->low && gap->high) row.interval = figures::Span{*gap->low, *gap->high};
    if (line.rangeLow && line.rangeHigh) row.range = figures::Span{*line.rangeLow, *line.rangeHigh};
    row.verdict = drawn(gap->verdict);
    row.word = words::gapWord(voice, gap->verdict);
    row.count = words::gapCount(voice, gap->people);
    row.readOut = words::gapLine(voice, session.plan, findings, line, *gap);
    row.why = text.why;
    row.rangeReadOut = text.range;
    if (line.limit) row.limit = *line.limit;
    picture.table.rows.push_back({row.label, row.word, row.readOut});
    picture.rows.push_back(std::move(row));
  }
  if (picture.rows.empty()) return std::nullopt;
  shareLimit(picture);
  const double reach = figures::gapReach(picture);
  picture.scale = {-reach, reach, text.less, text.more, {}};
  return picture;
}

std::optional<figures::MapPicture> mapPicture(const words::Voice& voice, const Plan& plan, const insight::SheetFindings& findings, const insight::SheetMap& map) {
  if (findings.why || !map.isPlane()) return std::nullopt;
  const words::MapPictureWords text = words::mapPictureWords(voice, plan, map);
  figures::MapPicture picture;
  picture.title = text.title;
  picture.xName = text.across;
  picture.yName = text.up;
  picture.count = text.count;
  picture.note = text.note;
  picture.sentence = text.sentence;
  picture.table = {text.headers, text.rows};
  for (std::size_t i = 0; i < map.lots.size(); ++i) {
    const insight::MapLot& lot = map.lots[i];
    figures::MapPoint point;
    point.label = words::lotNamed(voice, plan, lot.lot);
    point.x = lot.at[0];
    point.y = lot.at[1];
    point.isOpen = lot.lot == findings.target;
    point.readOut = text.lots[i];
    if (lot.sure) point.ellipse = figures::MapEllipse{lot.sure->longer, lot.sure->shorter, lot.sure->turn, text.sure[i]};
    picture.points.push_back(std::move(point));
  }
  return picture;
}

SheetDrawings sheetDrawings(const words::Voice& voice, const RevealedSession& session, const insight::SheetFindings& findings, const words::CameOut& out) {
  SheetDrawings drawings;
  for (const PlannedLot& lot : session.plan.lots)
    if (lot.role == LotRole::compared)
      if (const auto picture = gapPicture(voice, session, findings, lot.slot)) drawings.lead.push_back(drawingOf(*picture, figures::gapFigure));
  for (const words::OutSection& section : out.sections) {
    const auto line = std::ranges::find(findings.points, section.item, &insight::PointsLine::item);
    const bool isPoints = section.about == words::About::points && line != findings.points.end();
    drawings.sections.push_back(isPoints ? pointsDrawings(voice, session.plan, *line) : countDrawings(voice, session.plan, findings, section));
  }
  return drawings;
}

}  // namespace oddglass::report
