#include "report/room_pictures.h"

namespace oddglass::report {

figures::GapPicture picture(const words::LeanPicture& words) {
  figures::GapPicture picture;
  picture.title = words.title;
  picture.zeroName = words.zero;
  picture.sentence = words.sentence;
  picture.inOrder = true;
  picture.scale = {-words.reach, words.reach, words.harder, words.kinder, {}};
  picture.table = {words.headers, words.table};
  for (const words::LeanRow& row : words.rows) {
    figures::GapRow drawn;
    drawn.label = row.label;
    drawn.gap = row.lean;
    if (row.low && row.high) drawn.interval = figures::Span{*row.low, *row.high};
    if (row.isKinder) drawn.verdict = figures::GapVerdict::more;
    if (row.isHarder) drawn.verdict = figures::GapVerdict::less;
    drawn.word = row.word;
    drawn.count = row.count;
    drawn.readOut = row.readOut;
    drawn.why = row.why;
    picture.rows.push_back(std::move(drawn));
  }
  return picture;
}

figures::MeanPicture picture(const words::CurvePicture& words) {
  figures::MeanPicture picture;
  picture.title = words.title;
  picture.sentence = words.title;
  picture.scale = {0.0, 1.0, words.never, words.always, {}};
  picture.table = {words.headers, words.table};
  for (const words::CurveRow& row : words.rows) picture.rows.push_back({row.label, row.share, figures::Span{row.low, row.high}, row.word, row.count, row.readOut, {}, {}});
  return picture;
}

}  // namespace oddglass::report
