#include "report/gap_rows.h"

#include <algorithm>

namespace oddglass::report {

figures::GapVerdict drawn(insight::GapVerdict verdict) {
  switch (verdict) {
    case insight::GapVerdict::less: return figures::GapVerdict::less;
    case insight::GapVerdict::more: return figures::GapVerdict::more;
    case insight::GapVerdict::within: return figures::GapVerdict::within;
    case insight::GapVerdict::cannotTell: break;
  }
  return figures::GapVerdict::unclear;
}

const char* nameOfVerdict(insight::GapVerdict verdict) {
  switch (verdict) {
    case insight::GapVerdict::less: return "less";
    case insight::GapVerdict::more: return "more";
    case insight::GapVerdict::within: return "within the limit";
    case insight::GapVerdict::cannotTell: break;
  }
  return "cannot tell yet";
}

void shareLimit(figures::GapPicture& picture) {
  const auto first = picture.rows.front().limit;
  if (!first || !std::ranges::all_of(picture.rows, [&](const figures::GapRow& row) { return row.limit == first; })) return;
  picture.limit = first;
  for (figures::GapRow& row : picture.rows) row.limit.reset();
}

}  // namespace oddglass::report
