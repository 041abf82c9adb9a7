#pragma once

#include "domain/plan.h"
#include "domain/state.h"

#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace oddglass {

/// One answer on a score sheet.
struct SheetReply {
  Item item;
  std::optional<Position> cup;  ///< which cup of the flight it is about; nothing: the flight
  std::optional<int> value;     ///< nothing where it is in words
  std::string words;            ///< may be erased
  bool operator==(const SheetReply&) const = default;
};

/// One taster's flight with what the key says about it.
struct RevealedFlight {
  Place place;
  Round round;
  Seq lockedAt;                       ///< 0 when nothing was handed in
  Millis lockedTime = 0;
  std::vector<Slot> drawn;            ///< lot by position as the key says
  std::vector<std::optional<Slot>> poured;  ///< lot by position as really poured; nothing where the pourer was not sure
  std::optional<VoidReason> voided;
  std::vector<Position> picks;        ///< the cups picked, as many as the method asks for; empty when nothing was handed in
  std::optional<bool> saidSame;       ///< "the same" (true) or "not the same"
  std::optional<Position> preferred;  ///< the cup liked better
  bool preferredNone = false;         ///< "no preference" was answered
  std::optional<Sureness> sureness;
  std::optional<Clue> clue;
  std::string words;                  ///< may be empty, or erased
  std::vector<SheetReply> replies;    ///< of a score sheet, in the order of the sheet, then of the cups; all others are empty there

  bool isAnswered() const { return !picks.empty() || saidSame || preferred || preferredNone || !replies.empty(); }
};

/// Panel answers and makers' answers are different types, so that they cannot be added up together; neither is made of the other.
struct MakerFlight;
struct PanelFlight : RevealedFlight {
  PanelFlight() = default;
  explicit PanelFlight(RevealedFlight flight) : RevealedFlight(std::move(flight)) {}
  PanelFlight(const MakerFlight&) = delete;
};
struct MakerFlight : RevealedFlight {
  MakerFlight() = default;
  explicit MakerFlight(RevealedFlight flight) : RevealedFlight(std::move(flight)) {}
  MakerFlight(const PanelFlight&) = delete;
};

/// A person at a place, as they asked to be shown: a name, a nickname, or a letter.
struct ShownPerson {
  Place place;
  ShownAs as = ShownAs::loose;
  std::string shown;
  bool isMaker = false;
  bool left = false;      ///< stopped before the end
  bool late = false;      ///< took a spare place
  bool erased = false;    ///< all answers were destroyed on request
};

/// Something was said aloud: later locks of those who heard it are looked at apart.
struct SaidAloud {
  Seq seq;
  Millis at = 0;
  std::set<Place> heardBy;  ///< empty: everybody
  std::string words;
};

struct LoggedEvent {
  Seq seq;
  Millis at = 0;
  Event event = Event::sealed;
  std::optional<Place> place;
  std::optional<Round> round;
  std::optional<bool> goOn{};   ///< what a look after a round said
  std::optional<ReadBy> readBy{};  ///< who read off what stood under the cups
};

/// Who of those that sat by name or nickname had answered in an earlier session of the same store.
struct SatBefore {
  int panel = 0;
  int makers = 0;
};

/// How many answered flights did not come from the screen, and who brought them in.
struct TypedIn {
  int fromPaper = 0;
  int fromFile = 0;
  int byTasters = 0;   ///< of these, by somebody at the table who had locked
  int byOthers = 0;    ///< of these, by somebody who was not; of older sessions it is not known
};

/// A revealed session by value, all that findings are worked out from.
struct RevealedSession {
  SessionId id;
  std::string title;
  CameFrom cameFrom = CameFrom::here;
  State state = State::revealed;     ///< or broken: then the key is open and no verdict can come of it
  Plan plan;
  std::vector<PanelFlight> panel;    ///< one entry for each place taken and round planned, missing ones included
  std::vector<MakerFlight> makers;
  std::vector<ShownPerson> people;
  std::vector<SaidAloud> said;
  std::vector<LoggedEvent> log;
  Millis sealedAt = 0;
  Millis revealedAt = 0;
  int pourSheetOpenings = 0;
  std::set<ReadBy> readBy;  ///< who read off what stood under the cups, where no key was drawn
  int erasedPeople = 0;
  TypedIn typedIn{};
  std::optional<SatBefore> satBefore{};  ///< nothing where the session came from a file
  bool commitmentHolds = false;
  std::string commitment;   ///< hex
  std::string sealMark;
  Promises promises;        ///< as written before; empty where erased
  std::string decision;     ///< may be empty
};

}  // namespace oddglass
