#include "report/sheet_pictures.h"

#include "words/lots.h"
#include "words/sheet_out.h"
#include "words/sheet_picture.h"

#include <algorithm>

namespace oddglass::report {
namespace {

figures::GapVerdict drawn(insight::GapVerdict verdict) {
  switch (verdict) {
    case insight::GapVerdict::less: return figures::GapVerdict::less;
    case insight::GapVerdict::more: return figures::GapVerdict::more;
    case insight::GapVerdict::within: return figures::GapVerdict::within;
    case insight::GapVerdict::cannotTell: break;
  }
  return figures::GapVerdict::unclear;
}

}  // namespace

std::optional<figures::GapPicture> gapPicture(const words::Voice& voice, const RevealedSession& session, const insight::SheetFindings& findings, Slot lot) {
  if (!findings.target || findings.why) return std::nullopt;
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
    if (line.limit) picture.limit = std::max(picture.limit.value_or(0.0), static_cast<double>(*line.limit));
    picture.table.rows.push_back({row.label, row.word, row.readOut});
    picture.rows.push_back(std::move(row));
  }
  if (picture.rows.empty()) return std::nullopt;
  // One limit is drawn only where all rows share it.
  for (const insight::PointsLine& line : findings.points)
    if (line.kind == ItemKind::line && line.limit.value_or(0) != picture.limit.value_or(0.0)) picture.limit.reset();
  const double reach = figures::gapReach(picture);
  picture.scale = {-reach, reach, text.less, text.more, {}};
  return picture;
}

}  // namespace oddglass::report
