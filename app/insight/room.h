#pragma once

#include "domain/own.h"
#include "stats/estimated.h"
#include "stats/lean/expectation.h"

#include <optional>
#include <vector>

namespace oddglass::insight {

/// A person beside the room: how far they lean to their own, and how their expectations hold. For that person alone.

/// Sessions below which neither is said (own rule).
constexpr int fewestOfOwn = 3;

/// One session in which their own stood beside a reference, they scored both and somebody else did.
struct LeanLine {
  std::size_t at = 0;      ///< which of the tastings
  int friends = 0;         ///< people of the panel who scored both
  stats::Estimated lean;   ///< points of nine, their own minus the reference, the person's minus the friends' mean; above 0: kinder to their own
};

enum class LeanVerdict { kinder, harder, notShown, none };
/// Why nothing is said over sessions.
enum class NoLean {
  fewSessions,  ///< fewer than three
  fewKnown,     ///< too many of the others asked to be only in the sums: nobody can tell who is who over sessions
  fewFriends,   ///< one or two others: the estimate stands alone
  noSpread,     ///< the others do not differ: the estimate stands alone
};

struct Lean {
  std::vector<LeanLine> sessions;   ///< by the day of the reveal
  stats::Estimated over;            ///< over all sessions, by the people who are known in them
  int friends = 0;                  ///< whom `over` compares with
  int together = 0;                 ///< sessions with at least one of them
  int onlyInSums = 0;               ///< times that somebody sat who cannot be known again: in their session's line, not in `over`
  LeanVerdict verdict = LeanVerdict::none;
  std::optional<NoLean> why;        ///< with `none`
  bool weaker = false;              ///< all answers show a lean, those given before anything was said aloud do not: not shown is printed
};

/// One session in which they and somebody else scored again with the labels known. The open round comes after the blind one, so that order and label
/// cannot be told apart.
struct LabelLine {
  std::size_t at = 0;
  int friends = 0;              ///< people of the panel who did both
  double own = 0.0, others = 0.0;  ///< open minus blind of own minus reference, points: theirs, and the mean of the friends'; above 0: towards their own
  stats::Estimated label;       ///< the first less the second
};

/// What the label did to them beyond what it did to the friends, by the contrast of the lean.
struct Label {
  std::vector<LabelLine> sessions;  ///< by the day of the reveal
  stats::Estimated over;
  int friends = 0, together = 0;
  LeanVerdict verdict = LeanVerdict::none;   ///< kinder: the label moved them further towards their own than it moved the friends
  std::optional<NoLean> why;                 ///< with `none`
};

/// One thing that was expected, and whether it came true; nothing where the session has no verdict, or nobody scored both.
struct ExpectationLine {
  std::size_t at = 0;
  int percent = 50;
  std::optional<bool> cameTrue;
};

struct RoomFindings {
  Lean lean;
  Label label;
  std::vector<ExpectationLine> expectations;   ///< by the day of the reveal
  int settled = 0;                             ///< of them, known to have come true or not
  std::optional<stats::Calibration> calibration;  ///< from three settled ones
};

/// Works out all of it from a person's tastings at level 0.95. Sources: stats/lean.
RoomFindings roomOf(const OwnTastings& tastings);

}  // namespace oddglass::insight
