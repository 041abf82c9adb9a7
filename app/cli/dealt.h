#pragma once

#include "blinding/stream.h"
#include "cli/given.h"
#include "stats/design/williams.h"

#include <vector>

namespace oddglass::cli {

/// A seed as it was typed: 64 hex digits are taken as they are, any other text by its SHA-256.
blinding::Seed seedOf(const Given& typed);

/// Orders for so many tasters, from blocks that belong together: the rows of each block are shuffled, block follows block, and when all are used it
/// begins again. With `renamed` the samples trade names at random each time it begins, which keeps every balance and hides the pattern.
/// `blocks` and `tasters` are not empty.
stats::SampleOrders dealt(const std::vector<stats::SampleOrders>& blocks, int tasters, int samples, bool renamed, blinding::Stream& stream);

}  // namespace oddglass::cli
