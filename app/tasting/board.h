#pragma once

#include "domain/numbers.h"
#include "domain/plan.h"
#include "domain/state.h"
#include "store/store.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::tasting {

/// What a place is doing. `locked` is after the last round; between rounds a place waits.
enum class PlaceStep { empty, waiting, tasting, locked, left };

struct BoardPlace {
  Place place;
  bool isSpare = false;
  PlaceStep step = PlaceStep::empty;
  std::string who;                ///< the name or nickname of whoever sits there, for handing over; empty for a loose taster and an empty place
  std::optional<Round> round;     ///< the flight that comes next or is being tasted
  int lockedRounds = 0;
  int voidRounds = 0;
  std::vector<Round> counting;    ///< rounds that are locked and not set aside
};

/// Somebody who was counted at the plan and may sit down.
struct Invited {
  TasterId taster;
  std::string name;
  std::string nickname;
  bool isSeated = false;
};

/// The table as everybody may see it. Nothing in it depends on the key.
struct Board {
  SessionId id;
  State state = State::sealed;
  std::string guestTitle;
  std::string sealMark;
  int rounds = 1;
  int evenings = 1;               ///< the rounds are spread over them
  int wave = 0;                   ///< how many places are served at a time; 0: all at once
  int evening = 1;                ///< the one that is being tasted, or comes next
  bool isBetweenEvenings = false; ///< everybody has locked the evening before, and nobody has begun the next one
  std::vector<BoardPlace> places;
  std::vector<Invited> invited;   ///< without the pourer
  int locked = 0;                 ///< flights handed in
  int expected = 0;               ///< flights of all places that are taken and have not been left, without void ones
  bool pourReported = false;      ///< the pourer said that everything stands ready
  int timesSaid = 0;
  Millis lastAt = 0;              ///< when the record was last added to
  bool isSequential = false;      ///< looked at after whole rounds, for go on or stop
  int openRounds = 1;             ///< rounds that may be tasted so far
  bool lookIsDue = false;         ///< everybody has locked the open rounds, and others follow unless the look says stop
  bool saidStop = false;          ///< the last look said stop: close the table
  Routine routine = Routine::pourer;  ///< in whose hands the key lies
  int unread = 0;                 ///< flights handed in that count and have not been read off, where hands hid the key
  bool everyoneHasLocked = false; ///< somebody sits, and nobody who sits has a flight open
};

/// Problem unknown (no such session), notSealed (still a draft).
Board board(store::Store& store, const SessionId& session);

}  // namespace oddglass::tasting
