#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "store/store.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace oddglass::tasting {

enum class Via { device, paper, file };

/// One reply. A choice gives the code chosen as its value; words give `text` and no value.
struct Reply {
  Item item;
  int value = 0;
  std::optional<std::string> text;
  Code code{};   ///< the cup it is about, on a score sheet; 0: the flight
};

/// The replies of one flight, given in one go and locked as they come.
struct HandIn {
  Place place;
  Round round;
  std::array<std::uint8_t, 16> clientId{};  ///< made by whoever hands in; the same one twice is one hand-in
  Via via = Via::device;
  std::vector<Reply> replies;
  std::optional<Place> typedBy{};   ///< of answers from paper or a form: the place of whoever typed them in, 0 for somebody not at the table; it stands in the log
};

/// Proof that a hand-in is on disk. Only a commit makes one.
class Receipt {
 public:
  Seq seq() const { return seq_; }
  Millis at() const { return at_; }
  bool wasThere() const { return wasThere_; }  ///< the same hand-in had been acknowledged before

 private:
  friend class Desk;
  Receipt(Seq seq, Millis at, bool wasThere) : seq_(seq), at_(at), wasThere_(wasThere) {}
  Seq seq_;
  Millis at_;
  bool wasThere_;
};

/// Takes one hand-in, or all of several or none. Throws Problem: wrongState, tableClosed, placeEmpty, placeLeft, noSuchRound, notThisRound,
/// flightLocked, flightVoid, answerMissing, answerOutOfRange, codeNotHere, notARanking, notFivePoints, alreadyThere (a question answered twice), unknown (one that was not asked).
Receipt handIn(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const HandIn& handIn);
std::vector<Receipt> handInAll(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::vector<HandIn>& all);

}  // namespace oddglass::tasting
