#include "report/side_pictures.h"

#include "domain/sheet.h"
#include "report/gap_rows.h"
#include "words/sheet_out.h"
#include "words/sheet_picture.h"
#include "words/side_by_side.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace oddglass::report {
namespace {

figures::GapRow stepRow(const words::Voice& voice, const std::vector<std::string>& names, const insight::SideBySide& found, const insight::BatchStep& step, const insight::BatchGap& gap, const std::string& why) {
  const LotQuestion& question = found.lines[static_cast<std::size_t>(gap.line)].question;
  figures::GapRow row;
  row.label = words::questionName(voice, question.kind, question.part, question.word);
  row.gap = gap.difference.estimate;
  if (gap.difference.low && gap.difference.high) row.interval = figures::Span{*gap.difference.low, *gap.difference.high};
  if (gap.limit) row.limit = *gap.limit;
  row.verdict = drawn(gap.verdict);
  row.word = words::gapWord(voice, gap.verdict);
  row.count = words::gapCount(voice, gap.people);
  row.readOut = words::batchGapLine(voice, names, found, step, gap);
  row.why = why;
  return row;
}

// Far enough for every interval.
double intervalReach(const figures::GapPicture& picture) {
  double furthest = 0;
  for (const figures::GapRow& row : picture.rows)
    if (row.interval) furthest = std::max({furthest, std::abs(row.interval->low), std::abs(row.interval->high)});
  return figures::evenReach(furthest);
}

// No two answers lie further apart.
double widestGap(ItemKind kind) {
  const AnswerForm form = answerForm(kind);
  return form.low && form.high ? *form.high - *form.low : 1.0;
}

}  // namespace

std::vector<figures::GapPicture> stepPictures(const words::Voice& voice, const std::vector<std::string>& names, const insight::SideBySide& found, const insight::BatchStep& step) {
  std::map<ItemKind, figures::GapPicture> pictures;
  for (const insight::BatchGap& gap : step.gaps) {
    const ItemKind kind = found.lines[static_cast<std::size_t>(gap.line)].question.kind;
    const words::GapPictureWords text = words::batchPictureWords(voice, names, step, kind);
    auto [at, isNew] = pictures.try_emplace(kind);
    figures::GapPicture& picture = at->second;
    if (isNew) {
      picture.title = picture.sentence = text.title;
      picture.zeroName = text.zero;
      picture.limitName = text.limit;
      picture.scale.lowName = text.less;
      picture.scale.highName = text.more;
      picture.table.headers = text.headers;
      picture.inOrder = true;
    }
    picture.rows.push_back(stepRow(voice, names, found, step, gap, text.why));
    const figures::GapRow& row = picture.rows.back();
    picture.table.rows.push_back({row.label, row.word, row.readOut});
  }
  std::vector<figures::GapPicture> list;
  for (auto& [kind, picture] : pictures) {
    shareLimit(picture);
    const double reach = std::max(figures::gapReach(picture), std::min(intervalReach(picture), widestGap(kind)));
    picture.scale.low = -reach;
    picture.scale.high = reach;
    list.push_back(std::move(picture));
  }
  return list;
}

}  // namespace oddglass::report
