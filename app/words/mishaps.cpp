#include "words/mishaps.h"

#include "words/mark.h"
#include "words/numbers.h"

namespace oddglass::words {
namespace {

std::string numbers(const Voice& voice, const std::vector<Place>& places) {
  std::vector<std::string> all;
  for (const Place each : places) all.push_back(whole(voice, each.value));
  return listed(voice, all);
}

}  // namespace

std::string wrongPersonLine(const Voice& voice, Place place, bool isFreed, int setAside) {
  const Values values{{"place", whole(voice, place.value)}};
  if (isFreed) return say(voice, QT_TRANSLATE_NOOP("words", "Place {place} is free again. If anything was drunk there, have those cups poured anew before somebody sits down."), values);
  if (setAside == 0) return say(voice, QT_TRANSLATE_NOOP("words", "Everything at place {place} was set aside already. The place stays as it is."), values);
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 round at place {place} was locked by the wrong person and does not count. The place stays as it is; whoever should have sat there takes a spare place."),
                  QT_TRANSLATE_NOOP("words", "{n} rounds at place {place} were locked by the wrong person and do not count. The place stays as it is; whoever should have sat there takes a spare place."),
                  setAside, values);
}

std::string matsSwappedLine(const Voice& voice, const std::vector<Place>& beginAgain, const std::vector<Place>& setAside) {
  std::string text;
  const auto add = [&](const std::string& line) { text += (text.empty() ? "" : " ") + line; };
  if (beginAgain.size() == 2) add(say(voice, QT_TRANSLATE_NOOP("words", "Put the mats of places {places} back. Both begin these cups again."), {{"places", numbers(voice, beginAgain)}}));
  if (beginAgain.size() == 1)
    add(say(voice, QT_TRANSLATE_NOOP("words", "Put the mats back. Place {places} begins these cups again; what was drunk of them is poured anew."), {{"places", numbers(voice, beginAgain)}}));
  if (setAside.size() == 1) add(say(voice, QT_TRANSLATE_NOOP("words", "What place {places} had locked does not count."), {{"places", numbers(voice, setAside)}}));
  if (setAside.size() == 2) add(say(voice, QT_TRANSLATE_NOOP("words", "What places {places} had locked does not count."), {{"places", numbers(voice, setAside)}}));
  return text;
}

std::string takeBackQuestion(const Voice& voice, const std::string& who) {
  return say(voice, QT_TRANSLATE_NOOP("words", "All answers of {who} in this session are destroyed at once, and the place is left. It cannot be undone. Nobody asks why."), {{"who", who}});
}

}  // namespace oddglass::words
