#pragma once

#include "domain/chance.h"
#include "domain/revealed.h"
#include "store/store.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace oddglass::session {

/// A round after the reveal in which the same people score the same drinks once more, this time knowing what they are. It is nobody's duty.

struct OpenPlace {
  Place place;
  std::string shown;      ///< the name, nickname or letter under which the person is shown
  bool isLetter = false;  ///< only in the sums, or forgotten: known by the place alone
  bool isMaker = false;
  bool isDone = false;    ///< has answered openly
};

/// What is asked: the overall liking of each drink that stood under a code or in the marked cup.
struct OpenRound {
  SessionId id;
  std::string title;
  SheetItem item;
  std::vector<PlannedLot> lots;
  std::vector<OpenPlace> places;   ///< whoever handed in a sheet, rising; whose answers were destroyed is not among them
};

/// True where an open round says something: a revealed score sheet with the overall liking, and a batch beside a reference.
bool mayAnswerOpenly(const RevealedSession& session);

/// Nothing where an open round says nothing: the session is not revealed, asks no overall liking, or has no batch beside a reference. Problem unknown.
std::optional<OpenRound> openRound(store::Store& store, const SessionId& session);

/// What somebody says of each drink with the labels known: by its slot, one value each.
struct OpenAnswers {
  Place place;
  std::map<Slot, int> values;
};

/// Keeps them, all or none; an answer stays as it is. Problems: session (wrongState; doesNotFit where there is no open round), place (noSuchPlace for one that handed in no sheet, alreadyThere),
/// lot (unknown; empty where one is left out), value (outOfRange).
void answerOpenly(store::Store& store, Clock& clock, const SessionId& session, const std::vector<OpenAnswers>& answers);

}  // namespace oddglass::session
