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

/// The words around the picture of a ticked word over time, and what one sitting is called in it: "6 months, 2 of 5".
AgePictureWords mentionPictureWords(const Voice& voice, const insight::TimeMentions& mentions);
std::string mentionDotLabel(const Voice& voice, double age, int ticked, int asked);

/// The words around the picture of what was seen or smelled in the bottle, and one look in it: "At 6 months: a slight haze".
AgePictureWords seenPictureWords(const Voice& voice, NoteKind kind);
std::string seenDotSentence(const Voice& voice, const std::string& age, const std::string& level);

}  // namespace oddglass::words
