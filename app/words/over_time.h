#pragma once

#include "domain/same_setup.h"
#include "insight/over_time.h"
#include "words/came_out.h"

namespace oddglass::words {

/// What a series has shown so far, for everybody: no person in it.
struct OverTimeWords {
  Shape shape = Shape::dash;
  std::string word;                     ///< the shape in words
  std::string headline;                 ///< the one comparison that the series was begun for
  std::vector<std::string> lines;       ///< what it rests on, what it does not say
  std::vector<std::string> cautions;    ///< what cannot be known
  std::vector<OutSection> round;        ///< looking round: one question each, lines first, then ticked words
  std::vector<OutSection> seen;         ///< what was seen or smelled in the bottle, not blind; then deeds against faults that were not asked about
  std::string next;                     ///< the next look
};

/// Findings of a series in sentences, with what is noted of its batch. `nextOn` is the day of the next sitting that is to come; empty where there is none.
OverTimeWords overTimeWords(const Voice& voice, const Series& series, const insight::OverTime& over, const std::string& nextOn, const std::vector<Note>& notes = {});

/// One question over the sittings: what it came to, and its numbers as a table.
OutSection timeTable(const Voice& voice, const insight::OverTime& over, const insight::TimeLine& line);

/// An age in months as people say it: "2 weeks", "6 months", "2.5 months".
std::string ageName(const Voice& voice, double months);

/// One sitting in a list: "2025-12-08, at 2 weeks: 6 people, 5 of them at the first sitting too".
std::string sittingLine(const Voice& voice, const insight::TimeSitting& sitting, bool isFirst);

/// What is set up otherwise than at the first sitting: "more or less in a cup and another cleanser"; empty where nothing is.
std::string setupLine(const Voice& voice, const std::vector<SetupPart>& parts);

/// What a sitting is called in a calendar; nothing of any score in it.
std::string sittingTitle(const Voice& voice, const std::string& series, int number);

}  // namespace oddglass::words
