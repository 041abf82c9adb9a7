#pragma once

#include "insight/batch_said.h"
#include "insight/side_by_side.h"

#include <optional>

namespace oddglass::insight {

/// The narrowest limit that the sessions of a step set for a question before they were sealed; nothing where one of them set none.
std::optional<int> narrowestLimit(const LotQuestion& question, const BatchStep& step, const AboutLots& about, const std::vector<WordNow>& words);

/// Lot `other` minus lot `base` in one question, by the people who had both as the step's link says; not judged yet. Nothing where nobody had.
std::optional<BatchGap> batchGapOf(int line, const LotQuestion& question, std::optional<int> limit, const BatchStep& step, int base, int other, const SaidOf& said);

/// Adjusts and judges all gaps together, so that many words over many batches do not make one of them speak by chance.
void judgeSteps(SideBySide& found);

}  // namespace oddglass::insight
