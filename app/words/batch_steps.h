#pragma once

#include "words/side_by_side.h"

namespace oddglass::words {

/// One batch set against another, `names` being those of the columns.
BatchStepWords batchStepWords(const Voice& voice, const std::vector<std::string>& names, const BatchTastings& tastings, const insight::SideBySide& found, const insight::BatchStep& step, const std::string& today);

}  // namespace oddglass::words
