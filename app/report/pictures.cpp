#include "report/pictures.h"

namespace oddglass::report {

figures::IntervalPicture picture(const words::IntervalWords& interval) {
  figures::IntervalPicture made;
  made.low = interval.low;
  made.high = interval.high;
  made.point = interval.point;
  made.limit = interval.limit;
  made.title = interval.title;
  made.none = interval.none;
  made.half = interval.half;
  made.all = interval.all;
  made.range = interval.range;
  made.limitLabel = interval.limitLabel;
  made.sentence = interval.sentence;
  made.table = {interval.headers, interval.rows};
  return made;
}

figures::SharesPicture picture(const words::OutlookPicture& outlook) {
  figures::SharesPicture made;
  made.title = outlook.title;
  for (const words::OutlookBar& bar : outlook.bars) made.bars.push_back({bar.label, bar.share, bar.value, bar.readOut});
  made.nothing = outlook.nothing;
  made.always = outlook.always;
  made.sentence = outlook.sentence;
  made.table = {outlook.headers, outlook.rows};
  return made;
}

figures::Figure verdictMark(words::Shape shape, const std::string& word) {
  using namespace figures;
  Figure figure{32, 32, word, word, {}, {}};
  switch (shape) {
    case words::Shape::disc: figure.marks.push_back({Disc{16, 16, 15}, Role::accent, word}); break;
    case words::Shape::ring: figure.marks.push_back({Ring{16, 16, 13, 4}, Role::accent, word}); break;
    case words::Shape::bars:
      figure.marks.push_back({Rect{2, 7, 28, 6, 0, false, Role::accent}, Role::accent, word});
      figure.marks.push_back({Rect{2, 19, 28, 6, 0, false, Role::accent}, Role::accent, {}});
      break;
    case words::Shape::dash: figure.marks.push_back({Rect{2, 14, 28, 4, 0, false, Role::accent}, Role::accent, word}); break;
  }
  return figure;
}

}  // namespace oddglass::report
