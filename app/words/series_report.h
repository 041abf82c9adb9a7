#pragma once

#include "domain/revealed.h"
#include "domain/series.h"
#include "insight/over_time.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// Headings and column heads of the report of a series.
struct SeriesReportWords {
  std::string planHeading, sittingsHeading, lotHeading, lotNote, notesHeading, recordHeading, unknownHeading;
  std::vector<std::string> sittingHeaders;  ///< six: number, due, held, age, people, at the first too
  std::vector<std::string> lotHeaders;      ///< eight
  std::string notHeld, batch, roundHeading, roundNote, servedNote;
};
SeriesReportWords seriesReportWords(const Voice& voice);

/// What was settled when the series began. `lots` are the names of the batch and, where there is one, of its control.
/// `kind` is that of the question it is about.
std::vector<std::string> seriesPlanLines(const Voice& voice, const Series& series, ItemKind kind, const std::vector<std::string>& lots);

/// "Followed from 2025-11-24; sittings held from 2025-12-08 to 2026-05-24."
std::string seriesDates(const Voice& voice, const Series& series, const insight::OverTime& over);

/// What the control of a series is called: "bottles of this bottling, kept cold", "a bought drink".
std::string controlName(const Voice& voice, ControlKind control);

/// What went otherwise at one sitting: "Sitting 2: 1 cup was spilled and poured again under a spare code."
std::string atSitting(const Voice& voice, int number, const std::string& what);

/// That the old pages were opened although this sitting was sealed; empty for never.
std::string seenLine(const Voice& voice, int timesSeen);

/// What sittings to come take of each drink, and what is left of it: "2 sittings to come take 4 bottles, 1 in reserve among them; 6 are there."
std::string stockLine(const Voice& voice, const Series& series, int toCome, const std::string& lot, int bottles);

/// How a series is judged.
std::string seriesMethod(const Voice& voice);

}  // namespace oddglass::words
