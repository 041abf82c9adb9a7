#pragma once

#include "figures/gaps.h"
#include "insight/side_by_side.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::report {

/// One batch beside another, a picture for each scale that was asked (nine points, lines, ...): one row a question, in the order of the lines. None where the two
/// have no link. `names` are those of the columns.
std::vector<figures::GapPicture> stepPictures(const words::Voice& voice, const std::vector<std::string>& names, const insight::SideBySide& found, const insight::BatchStep& step);

}  // namespace oddglass::report
