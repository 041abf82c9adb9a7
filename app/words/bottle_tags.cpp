#include "words/bottle_tags.h"

#include "words/mark.h"
#include "words/numbers.h"

#include <string_view>

namespace oddglass::words {
namespace {

constexpr std::string_view letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

/// A, B, ... Z, AA, AB, ...
std::string lettersOf(std::size_t bottle) {
  std::string text;
  for (std::size_t left = bottle + 1; left > 0; left = (left - 1) / letters.size()) text.insert(text.begin(), letters[(left - 1) % letters.size()]);
  return text;
}

std::string titleOf(const Voice& voice, const NamedLot& lot) { return say(voice, QT_TRANSLATE_NOOP("words", "{drink}, {lot}"), {{"drink", lot.drink}, {"lot", lot.lot}}); }

}  // namespace

std::vector<BottleTag> bottleTags(const Voice& voice, const Series& series, const NamedLot& batch, const NamedLot& control) {
  std::vector<BottleTag> tags;
  const auto hang = [&](const NamedLot& lot, int bottles, const std::string& keptFor) {
    for (int i = 0; i < bottles; ++i) tags.push_back({lettersOf(tags.size()), titleOf(voice, lot), keptFor});
  };
  for (const Sitting& sitting : series.sittings) {
    const std::string keptFor = say(voice, QT_TRANSLATE_NOOP("words", "Kept for look {n} of {all}, due on {day}"),
                                    {{"n", whole(voice, sitting.number)}, {"all", whole(voice, static_cast<long long>(series.sittings.size()))}, {"day", sitting.dueOn}});
    hang(batch, series.bottlesEach, keptFor);
    if (series.control != ControlKind::none) hang(control, series.bottlesEach, keptFor);
  }
  hang(batch, series.reserve, say(voice, QT_TRANSLATE_NOOP("words", "Kept in reserve, for a look that goes wrong")));
  return tags;
}

std::string bottleTagsTitle(const Voice& voice, const Series& series) { return say(voice, QT_TRANSLATE_NOOP("words", "Bottle tags: {series}"), {{"series", series.title}}); }

}  // namespace oddglass::words
