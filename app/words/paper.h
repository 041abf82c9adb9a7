#pragma once

#include "domain/plan.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// "page 2 of 5".
std::string pageOf(const Voice& voice, int page, int pages);

/// What stands at the foot of every sheet of an evening: what guests are shown as its title, and the seal mark.
std::string paperFoot(const Voice& voice, const std::string& guestTitle, const std::string& sealMark);

/// "Place 3, round 1 of 2"; without the round where there is one.
std::string placeLine(const Voice& voice, Place place, Round round, int rounds);

/// Where a cup stands in its flight, from the taster's side: "left", "middle", "right" of three.
std::string positionWord(const Voice& voice, Position position, int cups);

/// Below the code on a label: "place 3, round 1, left"; before it "spare" on a code that is kept for a spilled cup.
std::string labelLine(const Voice& voice, const Cup& cup, int rounds, int cups);

/// Titles and fixed lines of the sheets for the table. Nothing in them depends on the key.
struct TablePaperText {
  std::string labels, mats, answers;    ///< titles of the files
  std::string leftToRight;              ///< on a mat
  std::string tasterSits;               ///< on a mat, at its lower edge
  std::string mark;                     ///< the sign of a marked cup: "R"
  std::string markedCup;
  std::string howSure, howKnew, likedBetter, remark;
  std::string tickOne, tickTwo;
  std::string noneFound;                ///< "I looked and found none"
  std::string blankPlace, blankCode;    ///< of a sheet without codes
  std::string inMillimetres;            ///< for whoever types a line in
  std::string fold;                     ///< what happens with a filled sheet
};
TablePaperText tablePaperText(const Voice& voice);

/// A question of a score sheet as it stands on paper. As `askedLabel`, but nothing is tapped there.
std::string writtenLabel(const Voice& voice, const SheetItem& item, int cups);
/// What stands over the questions of a part of the sheet, and how the cup is to be met; the second may be empty.
std::string partHeadline(const Voice& voice, Part part);
std::string partLead(const Voice& voice, Part part);
/// Between two cups, and before what comes late.
std::string pauseLine(const Voice& voice, int seconds, const std::string& cleanser);
std::string waitLine(const Voice& voice, int seconds);

/// Titles and lines of the pourer's own paper.
struct PourPaperText {
  std::string title, keyTitle;          ///< of the files
  std::string warning;                  ///< this sheet is the key
  std::string amount;                   ///< "15 mL into each cup."
  std::string pourOrder, placeOrder, spares, spare;
  std::string keyHead, keyHow, keyWhen; ///< outside of the folded card
  std::string keyInside;
  std::vector<std::string> folds;       ///< from the top, what happens with each quarter
};
PourPaperText pourPaperText(const Voice& voice, int cupMl);

/// "Round 2: Heather mead, bottled in March"; the drink alone where there is one round.
struct PourHeading {
  Round round;
  int rounds = 1, evening = 1, evenings = 1;
  Place first, last;       ///< of the wave
  bool isWave = false;     ///< not all places are served at once
  std::string drink;
};
std::string pourHeading(const Voice& voice, const PourHeading& step);

}  // namespace oddglass::words
