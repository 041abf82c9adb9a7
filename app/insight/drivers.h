#pragma once

#include "insight/sheets.h"
#include "stats/reason.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::insight {

/// How liking goes with one word: a hint, never a finding, for the maker's page alone.
struct DriverLine {
  Item item;
  ItemKind kind = ItemKind::line;   ///< a word on a line, or one that was ticked
  Part part = Part::main;
  std::string word;
  int people = 0;                   ///< who scored the word and liking of two lots or more
  std::optional<double> more;       ///< points of liking for 10 hundredths more of the line; for a ticked word, with it against without
  std::optional<double> low, high;  ///< at level 1 - alpha, over people
  std::optional<double> shrunk;     ///< drawn in towards nothing, by how much of all words' slopes is more than chance
  std::optional<double> pAdjusted;  ///< over the words (Benjamini and Hochberg)
  std::optional<stats::Reason> why; ///< noSpread, fewTasters, fewSamples
};

struct Drivers {
  int lots = 0;                      ///< that take part: all coded ones but a cup flawed on purpose
  std::vector<DriverLine> lines;     ///< in the order of the sheet
  std::optional<stats::Reason> why;  ///< nothing at all: notGiven (no overall liking, or no words), fewSamples (under 4 lots), fewTasters (under 5 people)
};

/// From the panel's sheets, each person's cups and rounds averaged first. Source: stats/drivers/drivers.h.
Drivers driversOf(const Plan& plan, const Sheets<PanelFlight>& sheets);

}  // namespace oddglass::insight
