#pragma once

#include "domain/plan.h"
#include "domain/shelf.h"
#include "words/voice.h"

#include <optional>
#include <vector>

namespace oddglass::words {

/// What the care page is told. Nothing here says which drink holds what.
struct CareFacts {
  std::vector<Ingredients> drinks;   ///< of every drink that is poured, in any order
  double gramsAtMost = 0;            ///< ethanol in grams for one person, everything swallowed, worst case over all orders
  std::optional<double> drinksAtMost;  ///< the same in standard drinks; nothing where the country has none
  std::optional<double> drinkGrams;    ///< what a standard drink holds there
  bool isDosed = false;                ///< something was added to a drink, or it was blended or thinned, so that it can be noticed
};

/// The care page, to be read aloud before anything is poured. Every field is one sentence or two.
struct CarePage {
  std::string headline;
  std::string allergens;     ///< one list over all cups; "not known" is said aloud
  std::string dosed;         ///< empty where nothing was added on purpose
  std::string sulphite;      ///< empty when sulphites are neither named nor possible
  std::string amount;
  std::string spitting;
  std::string adults;
  std::string driving;       ///< whoever drives is first offered the pouring
  std::string pregnancy;
  std::string medicines;
  std::string law;
  std::string consent;
  std::vector<std::string> all() const;  ///< every sentence that is not empty, in reading order, without the headline
};

CarePage care(const Voice& voice, const CareFacts& facts);

/// What goes for a drink that something was added to on purpose.
std::string dosedLine(const Voice& voice);

/// What an allergen is called.
std::string allergenName(const Voice& voice, Allergen allergen);

/// One list over all drinks: "gluten and sulphites; for one of the drinks the ingredients are not known".
std::string allergenList(const Voice& voice, const std::vector<Ingredients>& drinks);

/// "Up to 7.1 g of alcohol a person if everything is swallowed, about 0.9 standard drinks of 8 g."
std::string amountLine(const Voice& voice, double grams, std::optional<double> drinks, std::optional<double> drinkGrams);

/// What is asked of every taster at the place, once: of age, care heard, consent, how to be shown.
struct PlaceQuestions {
  std::string ofAge, careHeard, consent;
  std::string signedName, nickname, loose;  ///< the three ways to be shown
  std::string fewFriends;                   ///< said when fewer than four taste: they will be guessed; else empty
  std::string sitOut;
};
PlaceQuestions placeQuestions(const Voice& voice, int tasters);

/// People among whom it would be guessed who answered what: the panel, since whoever reads the answers knows those of the makers; the makers where
/// nobody else tastes.
int guessedAmong(const Plan& plan);

}  // namespace oddglass::words
