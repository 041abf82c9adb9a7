#pragma once

#include "print/label_sheet.h"
#include "words/bottle_tags.h"

#include <string>
#include <vector>

namespace oddglass::print {

/// Tags for bottles on label sheets, as the bytes of a PDF: the letters large, below them drink, lot and what the bottle is kept for, cut marks at the corners. Words
/// that are too long for a tag are made smaller, then cut. Problems of requireLabels.
std::string tagsPdf(const std::string& title, const std::vector<words::BottleTag>& tags, PaperSize size, const LabelSheet& sheet = {});

}  // namespace oddglass::print
