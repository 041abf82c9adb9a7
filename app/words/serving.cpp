#include "words/serving.h"

#include "words/mark.h"
#include "words/units.h"

namespace oddglass::words {

std::string mouthfulName(const Voice& voice, Mouthful mouthful) {
  switch (mouthful) {
    case Mouthful::swallowed: return say(voice, QT_TRANSLATE_NOOP("words", "swallowed"));
    case Mouthful::spatOut: return say(voice, QT_TRANSLATE_NOOP("words", "spat out"));
    case Mouthful::asTheyLike: return say(voice, QT_TRANSLATE_NOOP("words", "as each one likes"));
  }
  return {};
}

std::vector<std::string> servedLines(const Voice& voice, const Serving& serving) {
  std::vector<std::string> lines;
  if (!serving.vessel.empty()) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Vessel: {vessel}."), {{"vessel", serving.vessel}}));
  if (serving.temperatureC) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Temperature of the drinks: {temperature}."), {{"temperature", temperature(voice, *serving.temperatureC)}}));
  if (serving.mouthful) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Every mouthful: {what}."), {{"what", mouthfulName(voice, *serving.mouthful)}}));
  return lines;
}

std::string notRecordedLine(const Voice& voice, const Serving& serving) {
  std::vector<std::string> missing;
  if (serving.vessel.empty()) missing.push_back(say(voice, QT_TRANSLATE_NOOP("words", "vessel")));
  if (!serving.temperatureC) missing.push_back(say(voice, QT_TRANSLATE_NOOP("words", "temperature")));
  if (!serving.mouthful) missing.push_back(say(voice, QT_TRANSLATE_NOOP("words", "swallowing or spitting")));
  for (const char* never : {QT_TRANSLATE_NOOP("words", "place"), QT_TRANSLATE_NOOP("words", "light"), QT_TRANSLATE_NOOP("words", "bottle numbers")}) missing.push_back(say(voice, never));
  return say(voice, QT_TRANSLATE_NOOP("words", "Not recorded: {what}."), {{"what", listed(voice, missing)}});
}

}  // namespace oddglass::words
