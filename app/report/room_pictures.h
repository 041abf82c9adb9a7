#pragma once

#include "figures/gaps.h"
#include "figures/means.h"
#include "words/room.h"

namespace oddglass::report {

/// The pictures of the page about one person, from their words.
figures::GapPicture picture(const words::LeanPicture& words);
figures::MeanPicture picture(const words::CurvePicture& words);

}  // namespace oddglass::report
