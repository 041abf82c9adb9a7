#pragma once

#include "domain/numbers.h"
#include "domain/uid.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace oddglass {

enum class Origin { batch, reference };  ///< made here, or bought or somebody else's
enum class Kind { beer, mead, cider, wine, other };
enum class AbvFrom { label, gravities, measured, guess };

/// The fourteen of the EU list (Regulation (EU) No 1169/2011, annex II); sulphites from 10 mg/L.
enum class Allergen { gluten, egg, fish, milk, nuts, peanuts, soy, sesame, mustard, celery, lupin, molluscs, crustaceans, sulphites };

/// Ingredients that matter to allergic people: known (the list), none, or not known. "Not known" is a value and is said aloud.
enum class IngredientsKnown { known, none, notKnown };
struct Ingredients {
  IngredientsKnown how = IngredientsKnown::notKnown;
  std::set<Allergen> allergens;  ///< filled only when `how` is known
  bool operator==(const Ingredients&) const = default;
};

/// A drink as a whole: a batch made here, or a reference.
struct Beverage {
  BeverageId id;
  Origin origin = Origin::batch;
  Kind kind = Kind::beer;
  std::string name;                     ///< 1 to 200 letters
  std::optional<int> originalGravity;   ///< 1/10000, so 1.0500 is 10500; 9500 to 13000
  std::optional<int> finalGravity;      ///< 1/10000; not above the original one
  std::optional<int> abvBp;             ///< strength in 1/100 % by volume; 0 to 9600
  std::optional<AbvFrom> abvFrom;       ///< said whenever a strength is given
  Ingredients ingredients;
  std::vector<TasterId> makers;         ///< who had a hand in it; empty for a reference
  std::string recipe;                   ///< in own words, 0 to 200 letters; batches whose recipes are alike belong together
  bool archived = false;
  bool operator==(const Beverage&) const = default;
};

/// Bottles of one beverage that are alike: one bottling, one vintage year, one purchase.
struct Lot {
  LotId id;
  BeverageId beverage;
  std::string name;         ///< "bottled 14 March", "vintage 2024"; 1 to 200 letters
  std::string packagedOn;   ///< YYYY-MM-DD or empty
  std::string bestBefore;   ///< YYYY-MM-DD or empty; a reference's
  int bottleMl = 0;         ///< 1 to 100000
  std::string storage;      ///< "cellar, 12 C"; may be empty
  std::string source;       ///< where a reference was bought; may be empty
  bool archived = false;
  int bottles = 0;          ///< in stock now, the sum of the moves; not set when a lot is saved
  int held = 0;             ///< of these, set aside for sealed sessions by the worst case over all orders
  bool operator==(const Lot&) const = default;
};

/// Stock is kept as moves; the count is their sum. `counted` puts a wrong count right.
enum class StockChange { added, counted, poured, given, lost };
struct StockMove {
  LotId lot;
  StockChange change = StockChange::added;
  int bottles = 0;  ///< above 0 for added; below 0 for poured, given and lost; any for counted (a correction, plus or minus)
  Millis at = 0;
  bool operator==(const StockMove&) const = default;
};

/// `changed`: one thing that was done otherwise than in the batch before of the same recipe. `haze`, `sediment`, `sulphur`: what was seen or smelled in a
/// bottle, with a level. `gusher`: a bottle that ran over when it was opened.
enum class NoteKind { reading, addition, stabilised, racked, bottled, other, changed, haze, sediment, sulphur, gusher };

/// True for kinds whose notes hold a level.
constexpr bool hasLevel(NoteKind kind) { return kind == NoteKind::haze || kind == NoteKind::sediment || kind == NoteKind::sulphur; }

/// What was done to a beverage on a day. Notes are only added to; a correction names the note it replaces.
struct Note {
  NoteId id;
  BeverageId beverage;
  std::optional<NoteId> replaces;
  bool withdrawn = false;       ///< the note that this one replaces was wrong and nothing stands in its place
  std::string doneOn;           ///< YYYY-MM-DD
  NoteKind kind = NoteKind::other;
  std::optional<int> gravity;   ///< 1/10000; a reading's
  std::optional<int> level;     ///< 0 none to 3 much; of the kinds that have one, and there always
  std::string word;             ///< the fault that was acted against, 0 to 60 letters; a tasting word where one fits
  std::string text;
  bool operator==(const Note&) const = default;
};

/// A person who tastes.
struct Taster {
  TasterId id;
  std::string name;      ///< 1 to 100 letters
  std::string nickname;  ///< how they are shown where they ask for it; may be empty
  bool isBrewer = false; ///< the maker who owns this machine; at most one
  bool archived = false;
  bool operator==(const Taster&) const = default;
};

/// What the host has settled for this machine.
struct HouseRules {
  int ceilingGrams = 20;        ///< most ethanol a person is offered in an evening; our own figure, never called safe
  std::string country = "GB";   ///< ISO 3166, for standard drinks
  bool operator==(const HouseRules&) const = default;
};

}  // namespace oddglass
