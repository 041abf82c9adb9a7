#pragma once

#include "canon/canonical.h"
#include "canon/digest.h"
#include "domain/plan.h"
#include "domain/state.h"
#include "session/found.h"
#include "store/log.h"
#include "store/store.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace oddglass::session {

struct RecordedReply {
  Item item;
  Code code;                                 ///< the cup it is about; 0: the flight
  std::optional<int> value;
  std::optional<canon::Digest> textDigest;   ///< of words; the words themselves may be gone
};
struct RecordedWords {
  Item item;
  Code code;
  canon::Salt salt{};
  std::string text;
};
struct RecordedHandIn {
  Seq seq;
  Place place;
  Round round;
  Millis at = 0;
  std::string via;
  canon::Salt clientId{};
  canon::Salt salt{};
  std::vector<RecordedReply> replies;   ///< in the order of the sheet, then of the cups
  std::vector<RecordedWords> words;
};
struct RecordedRemark {
  Seq seq;
  std::string about;   ///< said, reason, decision
  canon::Salt salt{};
  std::string text;
};
struct RecordedPromise {
  Outcome outcome = Outcome::shown;
  canon::Salt salt{};
  std::string text;
};
struct RecordedPour {
  Seq seq;
  canon::Salt salt{};
  Code code;
  std::optional<Slot> slot;   ///< nothing: not sure
};
struct RecordedFound {
  Seq seq;
  canon::Salt salt{};
  FoundFlight flight;
};
struct RecordedKey {
  std::array<std::uint8_t, 32> seed{};
  std::array<std::uint8_t, 32> salt{};
  std::string generator;
  std::vector<std::pair<Code, Slot>> lines;   ///< rising by code; none where hands hid the key
  std::vector<RecordedPour> poured;           ///< every entry, in order; the last of a code counts
  std::vector<RecordedFound> found;           ///< what was read off where hands hid the key, one for each entry
};
struct RecordedPerson {
  Place place;
  TasterId taster;
  std::string name;
  std::string nickname;
};

/// After the reveal, with the labels known; not in the log.
struct RecordedOpen {
  Place place;
  Slot slot;
  Item item;
  int value = 0;
  Millis at = 0;
};

/// A session as it stands in the store, everything the outside may have of it by value. Before the reveal (or the breaking of the seal) it holds
/// no answer and no key, whatever the store holds.
struct SessionRecord {
  SessionId id;
  std::string title;
  std::string guestTitle;
  CameFrom cameFrom = CameFrom::here;
  Millis createdAt = 0;
  State state = State::draft;
  std::string planText;                 ///< canonical JSON, as hashed
  Plan plan;
  canon::Digest commitment{};
  std::string sealMark;
  std::vector<store::LogEntry> log;
  std::vector<RecordedPromise> promises;
  std::vector<RecordedRemark> remarks;
  std::vector<RecordedHandIn> handIns;
  std::vector<RecordedPerson> people;   ///< signed and nickname tasters only
  std::optional<RecordedKey> key;
  std::vector<RecordedOpen> open;       ///< by place, lot and question
};

/// Problem notSealed for a draft.
SessionRecord record(store::Store& store, const SessionId& session);

/// One thing that was looked at.
struct Check {
  std::string what;     ///< chain, states, plan, commitment, orders, answers, words, remarks, poured, people, promises; found where hands hid the key; open where somebody answered with the labels known
  bool holds = true;
  std::string where;    ///< the first place where it does not: "entry 41"
};
struct Verification {
  std::vector<Check> checks;
  int erased = 0;               ///< people whose answers or words were destroyed on request
  int pourSheetOpenings = 0;
  bool holds() const;
};

/// Looks at everything that a record can prove: the chain, the steps from state to state, the hash of the plan, the commitment and the orders (once the key is open), the digests of
/// answers, words, promises, remarks, pours and of what was read off, and that this adds up wherever a flight counts. Erased answers are no break.
Verification check(const SessionRecord& record);
Verification verify(store::Store& store, const SessionId& session);

/// Puts a record into the store as it is, in one transaction, after `check` found that it holds; the tables are filled by going through the log.
/// Problem sessionThere, doesNotVerify, brokenReference. Lots that are not on the shelf are put there from the plan, archived.
void insertRecord(store::Store& store, Clock& clock, Chance& chance, const SessionRecord& record);

}  // namespace oddglass::session
