#pragma once

#include "figures/gaps.h"
#include "insight/sheet_findings.h"
#include "words/voice.h"

#include <optional>

namespace oddglass::report {

/// The lines of a score sheet for one lot beside the reference: one row a word, sorted by its gap. Nothing where no line was asked or no reference is there.
std::optional<figures::GapPicture> gapPicture(const words::Voice& voice, const RevealedSession& session, const insight::SheetFindings& findings, Slot lot);

}  // namespace oddglass::report
