#pragma once

#include "insight/sheet_findings.h"
#include "words/came_out.h"

namespace oddglass::words {

/// What came out of a score sheet, in the frame of every verdict, for the room: no person in it. The main questions first; what was looked at
/// afterwards stands in sections that say so.
CameOut sheetOut(const Voice& voice, const RevealedSession& session, const insight::SheetFindings& findings);

/// What a question asks, as it stands in a sentence: "sweet", "liking", "colour".
std::string questionName(const Voice& voice, ItemKind kind, Part part, const std::string& word);

/// Points of a question as people read them: a labelled magnitude line in hundredths of its length, everything else as it is. With one decimal
/// where it is not whole.
std::string points(const Voice& voice, ItemKind kind, double value);
/// A limit, which is a whole number of points, with what it is of: "1 of 9".
std::string limitPoints(const Voice& voice, ItemKind kind, int limit);
/// "of 100", "of 9", "of 10".
std::string outOf(const Voice& voice, ItemKind kind);

/// How many of how many: "5 of 8".
std::string countOf(const Voice& voice, int count, int of);

/// A lot minus the reference in one thing, in one or two sentences.
std::string gapLine(const Voice& voice, const Plan& plan, const insight::SheetFindings& findings, const insight::PointsLine& line, const insight::LotGap& gap);

/// The mean of a lot with its range.
std::string meanLine(const Voice& voice, const Plan& plan, const insight::PointsLine& line, const insight::LotMean& lot);

/// The table's generosity and sharpness in one sentence, for the maker's page alone; empty where nothing can be said.
std::string mannerLine(const Voice& voice, const insight::SheetFindings& findings);

}  // namespace oddglass::words
