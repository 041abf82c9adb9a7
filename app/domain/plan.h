#pragma once

#include "domain/numbers.h"
#include "domain/sheet.h"
#include "domain/shelf.h"
#include "domain/uid.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace oddglass {

/// Can anyone tell them apart? Is one of them more ...? Which do people prefer? How good is it really? What is it like, and what does it
/// lack next to the reference? Can my friends, or can I, taste what is known to be there (`notice`)?
enum class Question { differ, more, prefer, good, lacks, notice };
/// How it is asked; what a flight of each looks like stands in domain/flight_form.h. `sheet`: coded cups, each by itself, on a score sheet.
enum class Method { triangle, duoTrio, tetrad, twoOutOfFive, pair, threeAfc, sameDifferent, aNotA, preference, sheet };
enum class Claim { people, table, me };             ///< whom the verdict is about: people like these, this table, or me (alone)
enum class Sought { difference, alike, both };      ///< which verdict is sought
enum class Outcome { shown, notShown, alike };
enum class Sureness { guess = 1, fairly = 2, sure = 3 };
enum class Clue { taste = 1, smell = 2, mouthfeel = 3, look = 4, fizz = 5, guess = 6 };
enum class CameFrom { here, import, demo };

/// How a taster wants to appear: by name, by a nickname, or only in the sums (a new letter each time).
enum class ShownAs { signedName, nickname, loose };

/// Why a flight cannot count; offered reasons only, so that the log holds no words.
enum class VoidReason { notSure, pouredWrong, mixedUp, wrongPerson, cupLost, other, cannotRead, doesNotAddUp, misread };

/// In whose hands the key lies. `pourer`: the program draws it, and a pourer who made none of it follows the sheet. In all others hands hide it, and it is read
/// off afterwards: `couple` two people, half of it each; `die` a die says which of two cups gets what is poured, and the list stays with whoever pours; `alone`
/// under the cups; `bottles` under a label on whole bottles, each with a letter.
enum class Routine { pourer, couple, die, alone, bottles };

/// Who read off what stood under the cups: whoever tasted them, whoever poured, somebody else, or two people from two sheets.
enum class ReadBy { taster, pourer, another, twoSheets };

/// What could tell the drinks apart without tasting them.
enum class GiveAway { colour, haze, foam, fizz, temperature, level, sediment, vessel, hadBefore };

/// What is done about a give-away before the seal: it is mended, it is what is asked, or whatever tells them apart counts, look and fizz too.
enum class WayOut { mend, ask, anyMeans };

/// What becomes of a mouthful.
enum class Mouthful { swallowed, spatOut, asTheyLike };

/// Between what a drink may be served, in degrees Celsius (own bounds).
constexpr int coldestServed = -10, warmestServed = 90;

/// How the drinks are served, alike for all cups; what is empty is not on record.
struct Serving {
  std::string vessel;                ///< in a few words, up to 60 letters
  std::optional<int> temperatureC;   ///< of the drinks, -10 to 90 degrees
  std::optional<Mouthful> mouthful;
  bool operator==(const Serving&) const = default;
};

/// Every give-away that was found, with its way out.
using GiveAways = std::map<GiveAway, WayOut>;

/// What a person may ask to be forgotten: name and words, or every answer too.
enum class ErasureKind { words, everything };

/// What will be done in each outcome, written before anything is poured. Each 0 to 500 letters.
using Promises = std::map<Outcome, std::string>;

/// A plan that is looked at after whole rounds, for *go on* or *stop* only (Wald 1945): it stops as soon as the answers speak clearly enough
/// for nobody telling, or for this share telling. The risk of a false "shown" is the plan's alpha.
struct Stopping {
  int sharePm = 500;  ///< share of people who can tell, in 1/1000, that should not be missed; 1 to 1000
  int betaPm = 200;   ///< risk of missing it, in 1/1000; 10 to 500
  bool operator==(const Stopping&) const = default;
};

/// A plan while it is being made: live, may be incomplete. Checked as a whole by planning and by the seal.
struct Draft {
  SessionId id;
  std::string title;          ///< for the brewer: 1 to 200 letters
  std::string guestTitle;     ///< all that tasters are shown; neutral
  Question question = Question::differ;
  Method method = Method::triangle;
  bool methodChosen = false;  ///< the brewer chose the method; otherwise the recommendation is followed until the seal
  std::vector<LotId> lots;    ///< two; or three for three short comparisons, each pair of them by itself; one or more on a score sheet
  std::string attribute;      ///< "more what", for a directional pair, a 3-AFC and a known difference: one word or a few, 1 to 60 letters
  std::optional<Slot> expected;  ///< the lot that is asked about as having more of it, or is known to have (its place among `lots`)
  std::string dose;           ///< of a known difference: what was done to that lot, in a few words, up to 60 letters; may be empty
  std::optional<Slot> marked;    ///< the lot in the marked cup: always this one (constant); nothing: either, drawn (balanced)
  bool mayHaveNone = false;      ///< "no preference" may be answered
  bool alsoPrefer = false;       ///< after a forced choice it is asked which was liked better
  std::optional<Stopping> stopping;
  SheetDraft sheet;              ///< for a score sheet only
  int evenings = 1;              ///< 1 to 6; the rounds are spread over them
  int wave = 0;                  ///< how many places are served at a time; 0: all at once
  std::vector<TasterId> tasters;   ///< who is invited to taste, makers included
  std::optional<TasterId> pourer;  ///< nobody yet, or somebody who is not a taster; a maker of a poured batch is refused
  std::string pourerName;     ///< a pourer who is not among the people; not stored after the seal
  int rounds = 1;             ///< of each comparison, 1 to 20
  int cupMl = 30;             ///< 5 to 200
  int spares = 0;             ///< places for people who might still come, 0 to 12
  int alphaPm = 50;           ///< risk of a false "shown" in 1/1000; 1 to 200
  Sought sought = Sought::difference;
  std::optional<int> limitPm; ///< share of people, in 1/1000, below which it counts as alike; 1 to 500
  Promises promises;
  std::optional<int> expectationPc;  ///< how likely the brewer thinks it, in 1/100, that the plan comes out as domain/expectation.h says; 1 to 99
  Routine routine = Routine::pourer;
  std::optional<GiveAways> giveAways;  ///< nothing: not looked at yet; empty: looked, and none found
  Serving serving;
  bool giveAwaysUnasked = false;  ///< a plan file that says nothing of give-aways may be sealed so; the record says that nobody looked
  bool lingers = false;       ///< a strong taste that stays from one cup to the next; speaks for fewer cups
  bool careSettled = false;   ///< the Care page was read through
  bool operator==(const Draft&) const = default;
};

/// How many pairs are compared: one of two lots, three of three.
constexpr int comparisonsOf(std::size_t lots) { return lots == 3 ? 3 : 1; }

/// A lot as it was at the seal.
struct PlannedLot {
  Slot slot;
  LotId lot;
  std::string beverageName;
  std::string lotName;
  Origin origin = Origin::batch;
  Kind kind = Kind::beer;
  std::optional<int> abvBp;
  Ingredients ingredients;
  int bottleMl = 0;
  std::string packagedOn;
  std::string bestBefore;
  std::string storage;
  LotRole role = LotRole::compared;
  bool operator==(const PlannedLot&) const = default;
};

/// A cup as everybody may know it. Nothing here depends on the key.
struct Cup {
  Code code;
  Place place;
  Round round;
  Position position;
  int spare = 0;  ///< 0 the cup that is poured first; 1, 2, ... the code that takes its place when it is spilled
  int bottle = 0; ///< with whole bottles: which lettered bottle it is poured from, 1 for A; 0 otherwise
  auto operator<=>(const Cup&) const = default;
};

/// The plan as it was sealed: it is hashed, never changes, and holds no person's name.
struct Plan {
  Question question = Question::differ;
  Method method = Method::triangle;
  Claim claim = Claim::people;
  Sought sought = Sought::difference;
  int alphaPm = 50;
  std::optional<int> limitPm;
  int gammaPm = 300;      ///< how much people are assumed to differ, for what could have been missed
  std::string attribute;         ///< see Draft, also for the next ones
  std::optional<Slot> expected;
  std::string dose;
  std::optional<Slot> marked;
  bool mayHaveNone = false;
  bool alsoPrefer = false;
  std::optional<Stopping> stopping;
  std::optional<SheetPlan> sheet;  ///< of a score sheet, and there always
  int evenings = 1;
  int wave = 0;
  int rounds = 1;         ///< flights of each taster in all
  int cupMl = 30;
  int ceilingGrams = 20;
  std::string country = "GB";
  int panelPlanned = 0;   ///< people who made none of the drinks
  int makersPlanned = 0;
  int places = 0;         ///< all of them; the last `spares` are spare
  int spares = 0;
  bool hasPourer = false; ///< a pourer was named at the plan
  Routine routine = Routine::pourer;
  std::optional<GiveAways> giveAways;  ///< see Draft
  Serving serving;
  std::vector<PlannedLot> lots;
  std::vector<SheetItem> items;
  std::vector<Cup> cups;  ///< ordered by place, round, position, spare
  std::map<Outcome, std::string> promiseDigests;  ///< hex; the words lie beside the plan
  std::optional<int> expectationPc;  ///< see Draft; nobody but the brewer is shown it before the reveal
  int comparisons() const { return sheet ? 1 : comparisonsOf(lots.size()); }
  int roundsEach() const { return rounds / comparisons(); }
  bool operator==(const Plan&) const = default;
};

}  // namespace oddglass
