#pragma once

#include "domain/item_kinds.h"
#include "domain/shelf.h"
#include "domain/uid.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass {

using SeriesId = Uid<struct SeriesTag>;

/// What stands beside an aging batch in every sitting, so that a changed drink and a changed day can be told apart.
enum class ControlKind {
  none,       ///< nothing: they cannot be told apart
  twin,       ///< bottles of the same bottling, kept cold
  reference,  ///< a bought drink, with an age of its own
};

/// One planned sitting of a series.
struct Sitting {
  int number = 0;                     ///< from 1, by age
  std::string dueOn;                  ///< YYYY-MM-DD, as proposed; the real day is the session's
  std::optional<SessionId> session;   ///< once it was planned
  bool operator==(const Sitting&) const = default;
};

/// One question a series is begun for: is the batch, in this, another one at that sitting than at the first?
struct MainComparison {
  int sitting = 0;            ///< 2 or later
  std::string word;           ///< a tasting word; empty: the liking
  std::optional<int> limit;   ///< a change that is too small to matter, in the question's own points
  bool operator==(const MainComparison&) const = default;
};

/// True for the question that a series is begun for; asked of anything that names its question by `kind`, `part` and `word`.
inline bool isAbout(const MainComparison& main, const auto& asked) {
  return main.word.empty() ? isOverallLiking(asked) : asked.part == Part::main && hasPoints(asked.kind) && asked.word == main.word;
}

/// A batch that is tasted again and again while it ages.
struct Series {
  SeriesId id;
  std::string title;                ///< 1 to 200 letters
  LotId batch;
  ControlKind control = ControlKind::none;
  std::optional<LotId> controlLot;  ///< set unless there is no control
  std::string begunOn;              ///< YYYY-MM-DD: the day of bottling, which ages count from
  int bottlesEach = 1;              ///< of each lot for one sitting, 1 to 24
  int reserve = 1;                  ///< bottles kept for a sitting that goes wrong, 0 to 48
  MainComparison main;              ///< fixed when the series begins; all else is looking round
  std::vector<Sitting> sittings;    ///< two or more, by number
  bool archived = false;
  bool operator==(const Series&) const = default;
};

}  // namespace oddglass
