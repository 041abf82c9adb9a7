#pragma once

#include "domain/same_setup.h"
#include "insight/over_time.h"
#include "planning/aging.h"
#include "words/came_out.h"

namespace oddglass::words {

/// What a series has shown so far, for everybody: no person in it.
struct OverTimeWords {
  Shape shape = Shape::dash;
  std::string word;                     ///< the shape in words
  std::string headline;                 ///< the one comparison that the series was begun for
  std::vector<std::string> lines;       ///< what it rests on, what it does not say
  std::vector<std::string> cautions;    ///< what cannot be known
  std::vector<OutSection> round;        ///< looking round: one question each
  std::string next;                     ///< the next look
};

/// Findings of a series in sentences. `sayNext` is the day of the next sitting that is not held; empty where there is none.
OverTimeWords overTimeWords(const Voice& voice, const Series& series, const insight::OverTime& over, const std::string& nextOn);

/// One question over the sittings: what it came to, and its numbers as a table.
OutSection timeTable(const Voice& voice, const insight::OverTime& over, const insight::TimeLine& line);

/// An age in months as people say it: "2 weeks", "6 months", "2.5 months".
std::string ageName(const Voice& voice, double months);

/// One sitting in a list: "8 December 2025, at 2 weeks: 6 people, 5 of them at the first sitting too".
std::string sittingLine(const Voice& voice, const insight::TimeSitting& sitting, bool isFirst);

/// What is set up otherwise than at the first sitting: "more or less in each cup, another cleanser"; empty where nothing is.
std::string setupLine(const Voice& voice, const std::vector<SetupPart>& parts);

/// What a series would take and could show, before a bottle is put aside.
struct AgingWords {
  std::string headline;                 ///< bottles needed, and whether there are enough
  std::vector<std::string> lines;
  std::string cheaper;                  ///< empty where nothing cheaper is offered
};
AgingWords agingWords(const Voice& voice, const planning::AgingSetup& setup, const planning::AgingOutlook& outlook);

/// What a sitting is called in a calendar; nothing of any score in it.
std::string sittingTitle(const Voice& voice, const std::string& series, int number);

/// "its cold twin", "a bought drink", "nothing".
std::string controlName(const Voice& voice, ControlKind control);

}  // namespace oddglass::words
