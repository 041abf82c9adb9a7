#pragma once

#include "print/label_sheet.h"
#include "tasting/paper.h"
#include "words/voice.h"

#include <string>

namespace oddglass::print {

/// Paper for the table, as the bytes of a PDF each. All of it is made of what the blind side knows: no lot can stand on it.

/// One label for every code that was drawn, place by place, spare codes last: codes large and underlined, cut marks at the corners. Problems of requireLabels.
std::string labelsPdf(const words::Voice& voice, const tasting::TablePaper& paper, PaperSize size, const LabelSheet& sheet = {});

/// One mat for each flight: the cups drawn from left to right as whoever sits there sees them. Two to a page where there is room.
std::string matsPdf(const words::Voice& voice, const tasting::TablePaper& paper, PaperSize size);

/// Sheets to be filled in by hand, a page or more for each place with its own codes only. `isBlank`: one sheet with empty boxes for place and codes, for when
/// everything else is lost; also it holds no key.
std::string answerSheetsPdf(const words::Voice& voice, const tasting::TablePaper& paper, PaperSize size, bool isBlank = false);

}  // namespace oddglass::print
