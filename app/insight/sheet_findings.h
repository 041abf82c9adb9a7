#pragma once

#include "insight/counts.h"
#include "insight/drivers.h"
#include "insight/findings.h"
#include "insight/points.h"

#include <optional>
#include <vector>

namespace oddglass::insight {

/// What one maker answered to one question with points, beside the panel and never in it. For the maker's page alone.
struct MakerPoints {
  Place place;
  Item item;
  std::vector<std::optional<double>> lots;  ///< for each coded lot
};

/// How the table scored, without any person. For the maker's page alone.
struct TableManner {
  int likings = 0;                   ///< answers to the overall liking
  std::optional<double> liking;      ///< their mean
  std::optional<double> reference;   ///< of the target reference alone
  std::optional<double> moved;       ///< mean distance between two cups of the same drink
  std::optional<double> control;     ///< liking of the flawed or thinned cup minus that of all others
};

/// The next best test.
enum class NextStep {
  pairOnWord,   ///< a word differs: pour pairs on it
  justRight,    ///< a word differs and nobody was asked whether that is too much or too little
  morePeople,   ///< nothing can be told yet
  addReference, ///< there was nothing to hold it against
  again,        ///< within the limit, or nothing asked: the same table later
};
struct NextTest {
  NextStep step = NextStep::again;
  Item item{};   ///< the question it is about
  Slot lot{};
};

/// What came out of a score sheet.
struct SheetFindings {
  Question question = Question::lacks;
  Claim claim = Claim::people;
  int alphaPm = 50;
  int people = 0;                     ///< of the panel, or alone the one maker, whose sheets count
  int flights = 0, missing = 0, voided = 0, unsure = 0;
  std::vector<Slot> lots;             ///< coded, in the order of the plan
  std::optional<Slot> target;         ///< the reference that the others are held against
  std::optional<Slot> doubled;        ///< the lot that was poured twice
  std::vector<PointsLine> points;     ///< main questions first, then as on the sheet
  Counts counts;
  std::vector<MakerPoints> makers;
  TableManner table;
  Drivers drivers;                    ///< for the maker's page alone
  NextTest next;
  bool hasVerdicts = false;           ///< the seal held and there are three people or more with a reference
  std::optional<NoVerdict> why;       ///< sealBroken, nothing counted
  std::vector<Deviation> deviations;
  std::vector<Caution> cautions;
};

/// Works out everything from the answers; nothing is stored. Problem none: whatever was answered has findings.
SheetFindings sheetFindingsOf(const RevealedSession& session);

}  // namespace oddglass::insight
