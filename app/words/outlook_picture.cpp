#include "words/mark.h"
#include "words/numbers.h"
#include "words/plan.h"

#include <algorithm>

namespace oddglass::words {

OutlookPicture outlookPicture(const Voice& voice, const planning::Outlook& outlook) {
  OutlookPicture picture;
  const bool isPreference = outlook.shareOf == planning::ShareOf::preferring;
  picture.title = isPreference ? say(voice, QT_TRANSLATE_NOOP("words", "How often this panel would show a preference, if there is one"))
                  : outlook.claim == Claim::me ? say(voice, QT_TRANSLATE_NOOP("words", "How often you would show a difference, if you can taste it"))
                                             : say(voice, QT_TRANSLATE_NOOP("words", "How often this panel would show a difference, if it can be tasted"));
  picture.nothing = say(voice, QT_TRANSLATE_NOOP("words", "hardly ever"));
  picture.always = say(voice, QT_TRANSLATE_NOOP("words", "nearly every time"));
  picture.headers = {isPreference ? say(voice, QT_TRANSLATE_NOOP("words", "who prefers one of them"))
                     : outlook.claim == Claim::me ? say(voice, QT_TRANSLATE_NOOP("words", "how often you can taste it")) : say(voice, QT_TRANSLATE_NOOP("words", "who can taste it")),
                     isPreference ? say(voice, QT_TRANSLATE_NOOP("words", "a preference is shown")) : say(voice, QT_TRANSLATE_NOOP("words", "a difference is shown"))};
  std::vector<std::string> sentences;
  for (const planning::Finding& each : outlook.findings) {
    OutlookBar bar;
    const Values values{{"what", whatIsFound(voice, outlook, each.sharePm)}, {"often", timesIn(voice, each.chance)}};
    bar.label = values.at("what");
    bar.value = timesIn(voice, each.chance);
    bar.readOut = capitalised(say(voice, QT_TRANSLATE_NOOP("words", "{what} would be found {often}."), values));
    bar.share = std::clamp(each.chance, 0.0, 1.0);
    sentences.push_back(bar.readOut);
    picture.rows.push_back({bar.label, bar.value});
    picture.bars.push_back(std::move(bar));
  }
  for (const std::string& each : sentences) picture.sentence += (picture.sentence.empty() ? "" : " ") + each;
  return picture;
}

}  // namespace oddglass::words
