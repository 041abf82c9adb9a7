#pragma once

#include "print/paper_size.h"
#include "tasting/paper.h"
#include "words/voice.h"

#include <string>

namespace oddglass::print {

/// The run of the evening with its minutes, as the bytes of a PDF; for everybody to see. Its minutes are those of planning/run_list.h.
std::string runPdf(const words::Voice& voice, const tasting::TablePaper& paper, PaperSize size);

}  // namespace oddglass::print
