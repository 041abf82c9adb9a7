#pragma once

#include "insight/sheet_findings.h"
#include "words/came_out.h"

#include <vector>

namespace oddglass::words {

/// What was counted on a score sheet, in sections: too little and too much, words that apply, ranks, behaviour, points, worst things, things to change.
std::vector<OutSection> countSections(const Voice& voice, const Plan& plan, const insight::SheetFindings& findings);

}  // namespace oddglass::words
