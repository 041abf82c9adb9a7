#pragma once

#include "print/pages.h"
#include "tasting/flight.h"
#include "words/paper.h"

namespace oddglass::print {

/// A score sheet to be filled in by hand: the steps that the window takes, in the same order, cup by cup, with pauses. Lines are 100 mm long, so that
/// millimetres are points of the scale (tenths of them on a labelled magnitude line).
void scoreSheet(Pages& pages, const words::Voice& voice, const words::TablePaperText& text, const tasting::Flight& flight, const SessionId& session);

}  // namespace oddglass::print
