#pragma once

#include "insight/reading.h"

#include <optional>
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

/// Whether wrong answers favoured a place; looked at afterwards, never part of the verdict.
struct PlaceHabit {
  std::vector<int> counts;  ///< wrong choices of the first, second and third cup
  double pValue = 1.0;
  bool stands = false;      ///< p at most the plan's alpha
};

/// Whether people differ in how well they tell; looked at afterwards. Only from rounds.
struct PeopleDiffer {
  double mu = 0.0;
  double gamma = 0.0;
  double pValue = 1.0;
};

/// A maker's own answers, beside the panel's and never among them.
struct MakerLine {
  Place place;
  int right = 0;
  int trials = 0;
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
struct Findings {
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
  std::vector<MakerLine> makers;           ///< empty where the maker's answers are the data
  std::vector<Deviation> deviations;       ///< only what happened
  std::vector<Caution> cautions;

  /// The reading that the printed verdict rests on.
  const Reading& printed() const;
};

/// Works out everything from a revealed or broken session. The plan's question first; the rest is exploratory. Makers never count in
/// the panel; only where the plan's claim is `me` are their answers the data.
Findings findingsOf(const RevealedSession& session);

/// One person's tastings, for the maker's page alone.
struct PersonLine {
  Place place;
  int right = 0;
  int trials = 0;
};
std::vector<PersonLine> panelByPerson(const RevealedSession& session);

}  // namespace oddglass::insight
