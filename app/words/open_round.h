#pragma once

#include "words/voice.h"

#include <string>

namespace oddglass::words {

/// What an open round is, before anybody takes part.
struct OpenWords {
  std::string headline, lead;
  std::string voluntary;     ///< nobody has to, and what becomes of the answers
};
OpenWords openWords(const Voice& voice);

/// To whom the device goes; what they are asked.
std::string openFor(const Voice& voice, const std::string& who, bool isLetter, int place);
std::string openAsked(const Voice& voice);

/// After some people have answered.
std::string openThanks(const Voice& voice, int people);

}  // namespace oddglass::words
