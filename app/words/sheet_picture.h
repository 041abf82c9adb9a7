#pragma once

#include "insight/points.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// The words around the picture of a lot's gaps to the reference.
struct GapPictureWords {
  std::string title, zero, range, limit, less, more, why;
  std::vector<std::string> headers;
};
GapPictureWords gapPictureWords(const Voice& voice, const Plan& plan, Slot target, Slot lot);

/// The verdict of a gap in a word or three: "less", "within the limit", "cannot tell yet".
std::string gapWord(const Voice& voice, insight::GapVerdict verdict);
/// How many people it is from: "8 people".
std::string gapCount(const Voice& voice, int people);

}  // namespace oddglass::words
