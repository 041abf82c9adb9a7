#pragma once

#include "insight/reading.h"

#include <optional>
#include <utility>
#include <vector>

namespace oddglass::insight {

/// Right answers among the trials of one level of sureness.
struct SureLine {
  Sureness sureness;
  int trials = 0;
  int right = 0;
};

/// Right answers among the trials that one thing told.
struct ClueLine {
  Clue clue;
  int trials = 0;
  int right = 0;
};

/// Why the printed verdict is weaker than that of all trials.
enum class WeakenedBy { nothing, lookOrFizz, said, either };

/// Whether a place was favoured; looked at afterwards, never part of the verdict. By wrong answers, for there a right one would look like
/// a habit; for a preference by all answers. Only where one cup is chosen.
struct PlaceHabit {
  std::vector<int> counts;  ///< choices of the first, second (and third) cup that could be chosen, a marked one not counted
  double pValue = 1.0;
  bool stands = false;      ///< p at most the plan's alpha
};

/// Whether people differ in how well they tell; looked at afterwards. Only from rounds.
struct PeopleDiffer {
  double mu = 0.0;
  double gamma = 0.0;
  double pValue = 1.0;
};

/// A maker's own answers, beside the panel's and never among them. For the maker's page alone: a count names a person where there is one maker.
struct MakerLine {
  Place place;
  int right = 0;
  int trials = 0;
  int first = 0, second = 0, none = 0;  ///< preferences, where they were asked: for the plan's first and second lot, and neither
};

/// What went otherwise than planned. Each is listed once, with how many.
enum class DeviationKind {
  commitmentBroken,   ///< what was opened is not what was sealed
  pourSheetOpened,    ///< openings of the pourer's sheet, one or more
  pouredOtherwise,    ///< cups that held another lot than drawn
  notSure,            ///< cups the pourer was not sure of
  spilled,            ///< cups replaced by their spare
  voided,             ///< flights that do not count
  missing,            ///< flights without an answer
  late,               ///< people who took a spare place
  left,               ///< people who stopped before the end
  said,               ///< times something was said aloud
  erased,             ///< people whose answers were destroyed on request
};
struct Deviation {
  DeviationKind kind;
  int count = 0;
};

/// What has to be borne in mind.
enum class Caution {
  roundsPooled,      ///< the same people tasted several times: the verdict is about this table
  fewerThanPlanned,  ///< fewer trials counted than were planned for the panel
  halfLikelyMissed,  ///< a difference that half can taste would have come out less than half the time
  mostlyLookOrFizz,  ///< a third or more of the right answers came from look or fizz (own threshold)
  placeHabit,        ///< wrong answers favour a place
  countsOnly,        ///< fewer than 20 people: counts, never percent of people
};

/// All that a revealed session says, for the room: codes and numbers, without any person but the makers.
///
/// With three lots the question is asked of each pair: then `pairs` holds the findings of each by itself, in the order (1, 2), (1, 3), (2, 3),
/// and the rest is said of all of them together: `verdict` is shown where a pair is shown, alike where all are, and `all` holds sums without a p.
struct Findings {
  Question question = Question::differ;
  Method method = Method::triangle;
  std::optional<std::pair<Slot, Slot>> lots;  ///< the pair that is compared, lower slot first; nothing with three lots
  std::optional<Slot> expected;               ///< the lot asked about as having more
  Claim claim = Claim::people;
  Sought sought = Sought::difference;
  int alphaPm = 50;
  std::optional<int> limitPm;

  Verdict verdict = Verdict::none;  ///< the one that is printed: the weakest of the readings below
  std::optional<NoVerdict> why;     ///< with `none` only
  WeakenedBy weakenedBy = WeakenedBy::nothing;
  Reading all;                                ///< every trial that counts
  std::optional<Reading> withoutLookOrFizz;   ///< only where somebody named look or fizz
  std::optional<Reading> withoutSaid;         ///< only where somebody locked after hearing something
  std::optional<Reading> withoutEither;       ///< only where both of the above leave something out

  int flights = 0;  ///< laid before the people who count
  int missing = 0;
  int voided = 0;
  std::vector<SureLine> sureness;  ///< all three, from guess to sure; empty where nobody was asked
  std::vector<ClueLine> clues;     ///< all six, in their order; empty where nobody was asked
  int rightByLookOrFizz = 0;
  int rightWithoutLookOrFizz = 0;
  bool mostlyByLookOrFizz = false;
  std::optional<PlaceHabit> habit;         ///< nothing without wrong answers
  std::optional<PeopleDiffer> peopleDiffer;
  std::optional<Liking> liking;                ///< what those who were right liked better, where it was asked
  std::optional<SurenessIndex> surenessIndex;  ///< same-different and A-not-A
  std::vector<MakerLine> makers;           ///< empty where the maker's answers are the data
  std::vector<Deviation> deviations;       ///< only what happened
  std::vector<Caution> cautions;
  std::vector<Findings> pairs;             ///< three, with three lots; else empty. Without people, makers and deviations of their own

  /// The reading that the printed verdict rests on.
  const Reading& printed() const;
};

/// Works out everything from a revealed or broken session. The plan's question first; the rest is exploratory. Makers never count in
/// the panel; only where the plan's claim is `me` are their answers the data.
Findings findingsOf(const RevealedSession& session);

/// The verdict that findingsOf would print, worked out without the rest; not for a score sheet.
Verdict verdictOf(const RevealedSession& session);

/// One person's tastings, for the maker's page alone.
struct PersonLine {
  Place place;
  int right = 0;
  int trials = 0;
  int first = 0, second = 0, none = 0;  ///< as in MakerLine
};
std::vector<PersonLine> panelByPerson(const RevealedSession& session);

}  // namespace oddglass::insight
