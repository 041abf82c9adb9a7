#pragma once

#include "insight/over_time.h"
#include "words/voice.h"

namespace oddglass::words {

/// The words around the picture of one question over time.
struct AgePictureWords {
  std::string title, low, high, sentence;
};
AgePictureWords agePictureWords(const Voice& voice, ControlKind control, const insight::TimeLine& line);

/// An age with how many people: "6 months (5)".
std::string ageDotLabel(const Voice& voice, double age, int people);
/// One dot in a sentence.
std::string ageDotSentence(const Voice& voice, const insight::TimeLine& line, const insight::TimeDot& dot, double age);

}  // namespace oddglass::words
