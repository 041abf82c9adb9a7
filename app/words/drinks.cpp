#include "words/drinks.h"

#include "domain/day.h"
#include "words/care.h"
#include "words/mark.h"
#include "words/numbers.h"

#include <algorithm>
#include <array>

namespace oddglass::words {

std::string kindName(const Voice& voice, Kind kind) {
  switch (kind) {
    case Kind::beer: return say(voice, QT_TRANSLATE_NOOP("words", "beer"));
    case Kind::mead: return say(voice, QT_TRANSLATE_NOOP("words", "mead"));
    case Kind::cider: return say(voice, QT_TRANSLATE_NOOP("words", "cider"));
    case Kind::wine: return say(voice, QT_TRANSLATE_NOOP("words", "wine"));
    case Kind::other: return say(voice, QT_TRANSLATE_NOOP("words", "another drink"));
  }
  return {};
}

std::string originName(const Voice& voice, Origin origin) {
  switch (origin) {
    case Origin::batch: return say(voice, QT_TRANSLATE_NOOP("words", "made here"));
    case Origin::reference: return say(voice, QT_TRANSLATE_NOOP("words", "bought, or somebody else's"));
  }
  return {};
}

std::string strengthFrom(const Voice& voice, AbvFrom from) {
  switch (from) {
    case AbvFrom::label: return say(voice, QT_TRANSLATE_NOOP("words", "from the label"));
    case AbvFrom::gravities: return say(voice, QT_TRANSLATE_NOOP("words", "from the gravities"));
    case AbvFrom::measured: return say(voice, QT_TRANSLATE_NOOP("words", "measured"));
    case AbvFrom::guess: return say(voice, QT_TRANSLATE_NOOP("words", "a guess"));
  }
  return {};
}

std::string noteKindName(const Voice& voice, NoteKind kind) {
  switch (kind) {
    case NoteKind::reading: return say(voice, QT_TRANSLATE_NOOP("words", "reading"));
    case NoteKind::addition: return say(voice, QT_TRANSLATE_NOOP("words", "addition"));
    case NoteKind::stabilised: return say(voice, QT_TRANSLATE_NOOP("words", "stabilised"));
    case NoteKind::racked: return say(voice, QT_TRANSLATE_NOOP("words", "racked"));
    case NoteKind::bottled: return say(voice, QT_TRANSLATE_NOOP("words", "bottled"));
    case NoteKind::other: return say(voice, QT_TRANSLATE_NOOP("words", "note"));
    case NoteKind::changed: return say(voice, QT_TRANSLATE_NOOP("words", "done otherwise"));
    case NoteKind::haze: return say(voice, QT_TRANSLATE_NOOP("words", "haze"));
    case NoteKind::sediment: return say(voice, QT_TRANSLATE_NOOP("words", "sediment"));
    case NoteKind::sulphur: return say(voice, QT_TRANSLATE_NOOP("words", "sulphur smell"));
    case NoteKind::gusher: return say(voice, QT_TRANSLATE_NOOP("words", "a bottle gushed"));
  }
  return {};
}

std::string noteLevelName(const Voice& voice, NoteKind kind, int level) {
  static constexpr std::array haze{QT_TRANSLATE_NOOP("words", "bright"), QT_TRANSLATE_NOOP("words", "a slight haze"), QT_TRANSLATE_NOOP("words", "hazy"),
                                   QT_TRANSLATE_NOOP("words", "cloudy")};
  static constexpr std::array sediment{QT_TRANSLATE_NOOP("words", "none to be seen"), QT_TRANSLATE_NOOP("words", "a dusting"), QT_TRANSLATE_NOOP("words", "a firm layer"),
                                       QT_TRANSLATE_NOOP("words", "a third of the bottle or more")};
  static constexpr std::array sulphur{QT_TRANSLATE_NOOP("words", "none"), QT_TRANSLATE_NOOP("words", "faint"), QT_TRANSLATE_NOOP("words", "clear"),
                                      QT_TRANSLATE_NOOP("words", "strong")};
  const auto at = static_cast<std::size_t>(std::clamp(level, 0, 3));
  switch (kind) {
    case NoteKind::haze: return say(voice, haze[at]);
    case NoteKind::sediment: return say(voice, sediment[at]);
    case NoteKind::sulphur: return say(voice, sulphur[at]);
    default: return {};
  }
}

std::string stockChangeName(const Voice& voice, StockChange change) {
  switch (change) {
    case StockChange::added: return say(voice, QT_TRANSLATE_NOOP("words", "added"));
    case StockChange::counted: return say(voice, QT_TRANSLATE_NOOP("words", "counted again"));
    case StockChange::poured: return say(voice, QT_TRANSLATE_NOOP("words", "poured"));
    case StockChange::given: return say(voice, QT_TRANSLATE_NOOP("words", "given away"));
    case StockChange::lost: return say(voice, QT_TRANSLATE_NOOP("words", "lost"));
  }
  return {};
}

std::string shownAsName(const Voice& voice, ShownAs as) {
  switch (as) {
    case ShownAs::signedName: return say(voice, QT_TRANSLATE_NOOP("words", "signed"));
    case ShownAs::nickname: return say(voice, QT_TRANSLATE_NOOP("words", "nickname"));
    case ShownAs::loose: return say(voice, QT_TRANSLATE_NOOP("words", "only in the sums"));
  }
  return {};
}

std::string surenessName(const Voice& voice, Sureness sureness) {
  switch (sureness) {
    case Sureness::guess: return say(voice, QT_TRANSLATE_NOOP("words", "a guess"));
    case Sureness::fairly: return say(voice, QT_TRANSLATE_NOOP("words", "fairly sure"));
    case Sureness::sure: return say(voice, QT_TRANSLATE_NOOP("words", "sure"));
  }
  return {};
}

std::string clueName(const Voice& voice, Clue clue) {
  switch (clue) {
    case Clue::taste: return say(voice, QT_TRANSLATE_NOOP("words", "taste"));
    case Clue::smell: return say(voice, QT_TRANSLATE_NOOP("words", "smell"));
    case Clue::mouthfeel: return say(voice, QT_TRANSLATE_NOOP("words", "feel in the mouth"));
    case Clue::look: return say(voice, QT_TRANSLATE_NOOP("words", "look"));
    case Clue::fizz: return say(voice, QT_TRANSLATE_NOOP("words", "fizz"));
    case Clue::guess: return say(voice, QT_TRANSLATE_NOOP("words", "a guess"));
  }
  return {};
}

std::string notKnown(const Voice& voice) { return say(voice, QT_TRANSLATE_NOOP("words", "not known")); }

std::string ingredientsName(const Voice& voice, const Ingredients& ingredients) {
  switch (ingredients.how) {
    case IngredientsKnown::notKnown: return notKnown(voice);
    case IngredientsKnown::none: return say(voice, QT_TRANSLATE_NOOP("words", "none of the fourteen"));
    case IngredientsKnown::known: break;
  }
  std::vector<std::string> names;
  for (const Allergen each : ingredients.allergens) names.push_back(allergenName(voice, each));
  return names.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "none of the fourteen")) : listed(voice, names);
}

std::string age(const Voice& voice, const std::string& packagedOn, Millis at) {
  const auto days = daysBetween(packagedOn, dayOf(at));
  if (!days || *days < 0) return notKnown(voice);
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 day"), QT_TRANSLATE_NOOP("words", "{n} days"), *days);
}

}  // namespace oddglass::words
