#pragma once

#include "figures/interval.h"
#include "figures/shares.h"
#include "words/came_out.h"
#include "words/plan.h"

namespace oddglass::report {

/// The two pictures of the program, from their words; for window, paper and report alike.
figures::IntervalPicture picture(const words::IntervalWords& interval);
figures::SharesPicture picture(const words::OutlookPicture& outlook);

/// The mark of a verdict as a figure of 32 by 32 points: filled disc, open ring, two bars, dash. `word` is what it is called.
figures::Figure verdictMark(words::Shape shape, const std::string& word);

}  // namespace oddglass::report
