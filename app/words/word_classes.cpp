#include "words/vocabulary.h"

#include "words/mark.h"

namespace oddglass::words {

std::string className(const Voice& voice, WordClass wordClass) {
  switch (wordClass) {
    case WordClass::grain: return say(voice, QT_TRANSLATE_NOOP("words", "Grain and malt"));
    case WordClass::roast: return say(voice, QT_TRANSLATE_NOOP("words", "Roast and caramel"));
    case WordClass::fruity: return say(voice, QT_TRANSLATE_NOOP("words", "Fruit"));
    case WordClass::floral: return say(voice, QT_TRANSLATE_NOOP("words", "Flowers and honey"));
    case WordClass::hop: return say(voice, QT_TRANSLATE_NOOP("words", "Hops and green things"));
    case WordClass::spice: return say(voice, QT_TRANSLATE_NOOP("words", "Spice, wood and smoke"));
    case WordClass::sweet: return say(voice, QT_TRANSLATE_NOOP("words", "Sweet and dry"));
    case WordClass::sour: return say(voice, QT_TRANSLATE_NOOP("words", "Sour"));
    case WordClass::bitter: return say(voice, QT_TRANSLATE_NOOP("words", "Bitter, salty, mineral"));
    case WordClass::mouthfeel: return say(voice, QT_TRANSLATE_NOOP("words", "Feel and fizz"));
    case WordClass::yeast: return say(voice, QT_TRANSLATE_NOOP("words", "Yeast and ferment"));
    case WordClass::air: return say(voice, QT_TRANSLATE_NOOP("words", "Air, light and age"));
    case WordClass::sulphur: return say(voice, QT_TRANSLATE_NOOP("words", "Sulphur"));
    case WordClass::spoiled: return say(voice, QT_TRANSLATE_NOOP("words", "Gone off"));
    case WordClass::cellar: return say(voice, QT_TRANSLATE_NOOP("words", "Cellar, cork and foreign things"));
    case WordClass::other: return say(voice, QT_TRANSLATE_NOOP("words", "Anything else"));
  }
  return {};
}

std::string classLine(const Voice& voice, WordClass wordClass) {
  switch (wordClass) {
    case WordClass::grain: return say(voice, QT_TRANSLATE_NOOP("words", "Bread, biscuit, husk: what the grain brought."));
    case WordClass::roast: return say(voice, QT_TRANSLATE_NOOP("words", "What heat made: from toast to burnt."));
    case WordClass::fruity: return say(voice, QT_TRANSLATE_NOOP("words", "From fruit, hops, or a lively yeast."));
    case WordClass::floral: return say(voice, QT_TRANSLATE_NOOP("words", "Blossom, rose, honey, wax."));
    case WordClass::hop: return say(voice, QT_TRANSLATE_NOOP("words", "Grass, resin, leaf and stem."));
    case WordClass::spice: return say(voice, QT_TRANSLATE_NOOP("words", "From spice, barrel, fire, or a spicy yeast."));
    case WordClass::sweet: return say(voice, QT_TRANSLATE_NOOP("words", "How much sugar seems to be left."));
    case WordClass::sour: return say(voice, QT_TRANSLATE_NOOP("words", "Which acid, and whether it was meant."));
    case WordClass::bitter: return say(voice, QT_TRANSLATE_NOOP("words", "From hops, peel and water."));
    case WordClass::mouthfeel: return say(voice, QT_TRANSLATE_NOOP("words", "What is felt and not smelled: body, bubbles, burn."));
    case WordClass::yeast: return say(voice, QT_TRANSLATE_NOOP("words", "What the yeast left, or left too early."));
    case WordClass::air: return say(voice, QT_TRANSLATE_NOOP("words", "What comes with air, light, heat and months."));
    case WordClass::sulphur: return say(voice, QT_TRANSLATE_NOOP("words", "Egg, match, corn, onion: smell early, it fades."));
    case WordClass::spoiled: return say(voice, QT_TRANSLATE_NOOP("words", "What bacteria, wild yeast and mould make. Smell before you sip."));
    case WordClass::cellar: return say(voice, QT_TRANSLATE_NOOP("words", "What does not belong in a drink: damp, metal, plastic, soap."));
    case WordClass::other: return say(voice, QT_TRANSLATE_NOOP("words", "Your own words that fit nowhere else."));
  }
  return {};
}

}  // namespace oddglass::words
