#pragma once

#include "insight/sheet_findings.h"
#include "words/came_out.h"

#include <vector>

namespace oddglass::words {

/// What is for the maker alone after a score sheet: the makers' own points beside the panel's, how generous and how sharp the table was, what was written
/// (shuffled, with names only of those who signed or took a nickname), and what was said aloud.
std::vector<OutSection> sheetMakerSections(const Voice& voice, const RevealedSession& session, const insight::SheetFindings& findings);

}  // namespace oddglass::words
