#pragma once

#include "print/paper_size.h"
#include "session/pour.h"
#include "words/voice.h"

#include <string>

namespace oddglass::print {

/// The key on paper. Whoever has such a sheet has had it opened: session::openPourSheet logs that before it gives one.

/// The pourer's sheet as the bytes of a PDF: bottle by bottle with boxes to tick, then place by place, spare codes last.
std::string pourSheetPdf(const words::Voice& voice, const session::PourSheet& sheet, PaperSize size);

/// The key to be folded twice and taped, for the day on which the computer is lost: what stands under which code is inside, nothing of it outside. As many cards as it takes.
std::string keyCardPdf(const words::Voice& voice, const session::PourSheet& sheet, PaperSize size);

}  // namespace oddglass::print
