#pragma once

#include "domain/about_lots.h"
#include "domain/series.h"
#include "stats/trend/trend.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::insight {

/// Ages are in months of 365.25 / 12 days.
constexpr double daysOfAMonth = 365.25 / 12.0;

/// One sitting of a series that has answers.
struct TimeSitting {
  int number = 0;
  SessionId session;
  std::string heldOn;
  double age = 0.0;         ///< months after the first day of the series
  int people = 0;           ///< of the panel who had the batch, and the control where there is one
  int alsoAtFirst = 0;      ///< of these, who sat at the first sitting too
};

/// One question at one sitting: what the panel said of the batch and of the control, each person's cups averaged first.
struct TimeDot {
  int sitting = 0;          ///< its place among `sittings`
  int people = 0;
  std::optional<double> batch, control;
  std::optional<double> value;      ///< what is followed: batch minus control, or the batch where there is none
  std::optional<double> low, high;  ///< of that, over people, from three on
};

enum class TimeVerdict {
  rose, fell,     ///< the slope is away from zero, adjusted over the questions that were looked round
  notShown,
  dotsOnly,       ///< fewer than three sittings
  cannotTell,     ///< no slope can be judged by these answers
};

/// One question with points over the sittings.
struct TimeLine {
  LotQuestion question;
  std::vector<TimeDot> dots;               ///< by age
  stats::Trend trend;                      ///< ages in months
  std::optional<double> pAdjusted;         ///< of the slope, over all lines (Holm)
  TimeVerdict verdict = TimeVerdict::dotsOnly;
  std::optional<int> limit;                ///< set at the last sitting
  std::optional<stats::Alike> lastTwo;     ///< only with a limit
};

/// How often a word was checked, for each sitting.
struct TimeMentions {
  LotQuestion question;
  struct Count {
    int sitting = 0;
    int batch = 0, batchOf = 0;            ///< people who checked it, of those who were asked
    int control = 0, controlOf = 0;
    int noticers = 0, noticersOf = 0;      ///< of the batch, among those known to notice the word
  };
  std::vector<Count> counts;
};

enum class ChangeVerdict {
  more, less, within, notShown,
  notHeld,     ///< the sitting that is asked about
  noFirst,     ///< the first sitting was never held, or nobody had both cups at it
  notAsked,
  cannotTell,
};

/// The one comparison the series was begun for: that sitting minus the first, by the people who sat at both.
struct MainChange {
  int sitting = 0;
  std::string word;                        ///< empty: the liking
  ItemKind kind = ItemKind::liking;        ///< of the question
  int people = 0;                          ///< who sat at both
  stats::Estimated change;
  std::optional<stats::Alike> alike;       ///< only with a limit
  ChangeVerdict verdict = ChangeVerdict::notHeld;
};

/// What a series has shown so far.
struct OverTime {
  ControlKind control = ControlKind::none;
  std::vector<TimeSitting> sittings;       ///< by age
  int atBothEnds = 0;                      ///< people who sat at the first and at the last
  MainChange main;
  std::vector<TimeLine> lines;             ///< looking round; liking first, then by word
  std::vector<TimeMentions> mentions;
};

/// Works out a series from the panel's answers about its batch and, where it has one, its control (the lots of `about` in this order). Sittings without answers
/// about both are left out. `noticers`: who is known to notice a word. Verdicts at alpha 0.05, two-sided; a change within the limit by two one-sided tests.
/// Sources: stats/trend; the main comparison by Student's t over people (paired); Holm 1979 over the lines.
OverTime overTimeOf(const Series& series, const AboutLots& about, const Noticers& noticers = {});

/// True for a person who is known to notice a word.
bool notices(const Noticers& noticers, const std::string& word, const AboutLots& about, int person);

}  // namespace oddglass::insight
