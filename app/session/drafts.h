#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "planning/setup.h"
#include "store/store.h"

#include <string>
#include <vector>

namespace oddglass::session {

/// A new plan to be made. Saved at once. The title may be empty until the seal.
SessionId newDraft(store::Store& store, Clock& clock, Chance& chance, const std::string& title = {}, CameFrom cameFrom = CameFrom::here);

/// Saves a draft as it stands; it may be incomplete. Problem alreadySealed, tooLong, outOfRange (rounds, cup_ml, spares, alpha_pm, limit_pm), unknown (a lot or
/// taster that is not there).
void saveDraft(store::Store& store, Clock& clock, const Draft& draft);

/// Problem unknown, alreadySealed.
Draft draft(store::Store& store, const SessionId& session);

/// Throws a draft away. Problem alreadySealed: what was sealed stays.
void discardDraft(store::Store& store, const SessionId& session);

/// One person of a draft, with what the plan needs to know of them.
struct DraftPerson {
  TasterId taster;
  std::string name;
  bool isMaker = false;  ///< had a hand in one of the drinks, or tastes alone
};

/// One lot of a draft as it stands on the shelf today.
struct DraftLot {
  PlannedLot lot;
  int freeBottles = 0;   ///< in stock and not held for another session
};

/// A draft with what the shelf says about it today: what planning needs.
struct DraftFacts {
  Draft draft;
  std::vector<DraftLot> lots;
  std::vector<DraftPerson> panel;    ///< tasters who made none of the drinks, without the pourer
  std::vector<DraftPerson> makers;   ///< tasters who did
  std::string pourerName;
  bool pourerIsMaker = false;
  HouseRules rules;
  int places() const { return static_cast<int>(panel.size() + makers.size()) + draft.spares; }
};

/// The numbers of a draft that amounts and chances follow from.
planning::Setup setupOf(const DraftFacts& facts);

DraftFacts draftFacts(store::Store& store, const SessionId& session);

/// True when a lot of a score sheet is asked about, so that amounts and chances can be worked out.
bool isCoded(const DraftFacts& facts);

/// Throws Problem otherQuestion, naming the method, when the method of a draft does not answer its question.
void requireAnswered(const Draft& draft);

/// Says what is wrong with a plan before it can be sealed, as the Problem that `seal` would throw; nothing is written.
/// needsTwoLots, needsThree, needsALot, needsReference, sheetEmpty, sheetImpossible, noAttribute, doesNotFit, sameLotTwice, empty (title), noPanel, makerPours, pourerTastes, noStrength, aboveCeiling, tooFewBottles, limitTooWide, notByHand, alikeNeedsLimit, giveAwaysOpen, giveAwayUnfit, careNotHeard.
void requireReady(const DraftFacts& facts);

}  // namespace oddglass::session
