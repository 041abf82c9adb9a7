#include "domain/names.h"

#include "domain/by_hand.h"

#include <utility>

namespace oddglass {
namespace {

template <class E>
struct Table;

#define ODDGLASS_NAMES(E, ...)                                                        \
  template <>                                                                         \
  struct Table<E> {                                                                   \
    static const std::vector<std::pair<E, std::string_view>>& rows() {                \
      using enum E;                                                                   \
      static const std::vector<std::pair<E, std::string_view>> all{__VA_ARGS__};      \
      return all;                                                                     \
    }                                                                                 \
  }
#define N(value, word) {value, word}

ODDGLASS_NAMES(Origin, N(batch, "batch"), N(reference, "reference"));
ODDGLASS_NAMES(Kind, N(beer, "beer"), N(mead, "mead"), N(cider, "cider"), N(wine, "wine"), N(other, "other"));
ODDGLASS_NAMES(AbvFrom, N(label, "label"), N(gravities, "gravities"), N(measured, "measured"), N(guess, "guess"));
ODDGLASS_NAMES(Allergen, N(gluten, "gluten"), N(egg, "egg"), N(fish, "fish"), N(milk, "milk"), N(nuts, "nuts"), N(peanuts, "peanuts"),
               N(soy, "soy"), N(sesame, "sesame"), N(mustard, "mustard"), N(celery, "celery"), N(lupin, "lupin"),
               N(molluscs, "molluscs"), N(crustaceans, "crustaceans"), N(sulphites, "sulphites"));
ODDGLASS_NAMES(IngredientsKnown, N(known, "known"), N(none, "none"), N(notKnown, "not_known"));
ODDGLASS_NAMES(StockChange, N(added, "added"), N(counted, "counted"), N(poured, "poured"), N(given, "given"), N(lost, "lost"));
ODDGLASS_NAMES(NoteKind, N(reading, "reading"), N(addition, "addition"), N(stabilised, "stabilised"), N(racked, "racked"),
               N(bottled, "bottled"), N(other, "other"), N(changed, "changed"), N(haze, "haze"), N(sediment, "sediment"), N(sulphur, "sulphur"),
               N(gusher, "gusher"));
ODDGLASS_NAMES(Question, N(differ, "differ"), N(more, "more"), N(prefer, "prefer"), N(good, "good"), N(lacks, "lacks"), N(notice, "notice"));
ODDGLASS_NAMES(Method, N(triangle, "triangle"), N(duoTrio, "duo-trio"), N(tetrad, "tetrad"), N(twoOutOfFive, "two-out-of-five"), N(pair, "pair"),
               N(threeAfc, "three-afc"), N(sameDifferent, "same-different"), N(aNotA, "a-not-a"), N(preference, "preference"),
               N(sheet, "sheet"));
ODDGLASS_NAMES(Claim, N(people, "people"), N(table, "table"), N(me, "me"));
ODDGLASS_NAMES(Sought, N(difference, "difference"), N(alike, "alike"), N(both, "both"));
ODDGLASS_NAMES(ItemKind, N(choose, "choose"), N(same, "same"), N(prefer, "prefer"), N(sureness, "sureness"), N(clue, "clue"), N(words, "words"),
               N(liking, "liking"), N(line, "line"), N(magnitude, "magnitude"), N(justRight, "just_right"), N(check, "check"), N(rank, "rank"),
               N(split, "split"), N(behaviour, "behaviour"), N(worst, "worst"), N(changeOne, "change_one"), N(distance, "distance"));
ODDGLASS_NAMES(Part, N(look, "look"), N(smell, "smell"), N(main, "main"), N(late, "late"), N(last, "last"));
ODDGLASS_NAMES(LotRole, N(compared, "compared"), N(reference, "reference"), N(control, "control"), N(warmUp, "warm_up"));
ODDGLASS_NAMES(Outcome, N(shown, "shown"), N(notShown, "not_shown"), N(alike, "alike"));
ODDGLASS_NAMES(State, N(draft, "draft"), N(sealed, "sealed"), N(tasting, "tasting"), N(closed, "closed"), N(revealed, "revealed"),
               N(broken, "broken"), N(abandoned, "abandoned"));
ODDGLASS_NAMES(Event, N(sealed, "sealed"), N(pourSheetOpened, "pour_sheet_opened"), N(poured, "poured"), N(asPoured, "as_poured"),
               N(placeTaken, "place_taken"), N(placeLeft, "place_left"), N(spilled, "spilled"), N(voided, "voided"), N(said, "said"), N(matsSwapped, "mats_swapped"),
               N(placeFreed, "place_freed"), N(found, "found"),
               N(opened, "opened"), N(began, "began"), N(answered, "answered"), N(looked, "looked"), N(judged, "judged"), N(closed, "closed"),
               N(revealed, "revealed"), N(broken, "broken"), N(abandoned, "abandoned"), N(decided, "decided"), N(erased, "erased"));
ODDGLASS_NAMES(ShownAs, N(signedName, "signed"), N(nickname, "nickname"), N(loose, "loose"));
ODDGLASS_NAMES(VoidReason, N(notSure, "not_sure"), N(pouredWrong, "poured_wrong"), N(mixedUp, "mixed_up"), N(wrongPerson, "wrong_person"),
               N(cupLost, "cup_lost"), N(other, "other"), N(cannotRead, "cannot_read"), N(doesNotAddUp, "does_not_add_up"), N(misread, "misread"));
ODDGLASS_NAMES(Routine, N(pourer, "pourer"), N(couple, "couple"), N(die, "die"), N(alone, "alone"), N(bottles, "bottles"));
ODDGLASS_NAMES(ReadBy, N(taster, "taster"), N(pourer, "pourer"), N(another, "another"), N(twoSheets, "two_sheets"));
ODDGLASS_NAMES(NotByHand, N(method, "method"), N(threeLots, "three_lots"), N(eitherMarked, "either_marked"), N(stopsEarly, "stops_early"),
               N(duplicate, "duplicate"), N(markedSheet, "marked_sheet"), N(onlyOne, "only_one"), N(needsTwo, "needs_two"), N(needsPourer, "needs_pourer"),
               N(noPourer, "no_pourer"), N(spares, "spares"), N(oneBottle, "one_bottle"), N(oneEvening, "one_evening"));
ODDGLASS_NAMES(GiveAway, N(colour, "colour"), N(haze, "haze"), N(foam, "foam"), N(fizz, "fizz"), N(temperature, "temperature"), N(level, "level"),
               N(sediment, "sediment"), N(vessel, "vessel"), N(hadBefore, "had_before"));
ODDGLASS_NAMES(Mouthful, N(swallowed, "swallowed"), N(spatOut, "spat_out"), N(asTheyLike, "as_they_like"));
ODDGLASS_NAMES(WayOut, N(mend, "mend"), N(ask, "ask"), N(anyMeans, "any_means"));
ODDGLASS_NAMES(CameFrom, N(here, "here"), N(import, "import"), N(demo, "demo"));
ODDGLASS_NAMES(ErasureKind, N(words, "words"), N(everything, "everything"));
ODDGLASS_NAMES(Clue, N(taste, "taste"), N(smell, "smell"), N(mouthfeel, "mouthfeel"), N(look, "look"), N(fizz, "fizz"), N(guess, "guess"));
ODDGLASS_NAMES(Sureness, N(guess, "guess"), N(fairly, "fairly"), N(sure, "sure"));
ODDGLASS_NAMES(WordClass, N(grain, "grain"), N(roast, "roast"), N(fruity, "fruity"), N(floral, "floral"), N(hop, "hop"), N(spice, "spice"), N(sweet, "sweet"),
               N(sour, "sour"), N(bitter, "bitter"), N(mouthfeel, "mouthfeel"), N(yeast, "yeast"), N(air, "air"), N(sulphur, "sulphur"), N(spoiled, "spoiled"),
               N(cellar, "cellar"), N(other, "other"));
ODDGLASS_NAMES(ControlKind, N(none, "none"), N(twin, "twin"), N(reference, "reference"));
ODDGLASS_NAMES(Leaning, N(fault, "fault"), N(either, "either"), N(wanted, "wanted"));
ODDGLASS_NAMES(WordChangeKind, N(added, "added"), N(renamed, "renamed"), N(merged, "merged"), N(takenApart, "taken_apart"), N(retired, "retired"),
               N(broughtBack, "brought_back"));

}  // namespace

template <class E>
std::string_view nameOf(E value) {
  for (const auto& [each, word] : Table<E>::rows())
    if (each == value) return word;
  return {};
}

template <class E>
std::optional<E> named(std::string_view word) {
  for (const auto& [each, text] : Table<E>::rows())
    if (text == word) return each;
  return std::nullopt;
}

template <class E>
const std::vector<E>& allOf() {
  static const std::vector<E> all = [] {
    std::vector<E> values;
    for (const auto& row : Table<E>::rows()) values.push_back(row.first);
    return values;
  }();
  return all;
}

#define FOR(E)                                            \
  template std::string_view nameOf<E>(E);                 \
  template std::optional<E> named<E>(std::string_view);   \
  template const std::vector<E>& allOf<E>();

FOR(Origin) FOR(Kind) FOR(AbvFrom) FOR(Allergen) FOR(IngredientsKnown) FOR(StockChange) FOR(NoteKind) FOR(Question) FOR(Method)
FOR(Claim) FOR(Sought) FOR(ItemKind) FOR(Part) FOR(LotRole) FOR(Outcome) FOR(State) FOR(Event) FOR(ShownAs) FOR(VoidReason) FOR(CameFrom) FOR(ErasureKind)
FOR(Routine) FOR(NotByHand) FOR(ReadBy) FOR(GiveAway) FOR(WayOut) FOR(Mouthful)
FOR(Clue) FOR(Sureness) FOR(WordClass) FOR(Leaning) FOR(WordChangeKind) FOR(ControlKind)

}  // namespace oddglass
