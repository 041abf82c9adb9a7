#pragma once

#include "tasting/hand_in.h"
#include "tasting/sheet_steps.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace oddglass::tasting {

/// What is typed in next from a filled paper sheet.
struct TypedAsk {
  SheetItem item;
  Code cup;          ///< the cup it is about; 0: the flight
  bool operator==(const TypedAsk&) const = default;
};

/// A filled paper sheet while somebody types it in, line by line, twice: numbers and codes of the second time are held against the first. Nothing is stored here.
class Typing {
 public:
  Typing(Flight flight, const SessionId& session);

  const Flight& flight() const { return flight_; }
  /// In the order in which they stand on the paper.
  const std::vector<TypedAsk>& asks() const { return asks_; }
  /// The first one that is open in this turn; nothing when both turns are done.
  const TypedAsk* next() const;
  /// True in the second turn. Words are typed once.
  bool isSecond() const { return isSecond_; }
  bool isDone() const { return next() == nullptr; }

  enum class Took { yes, differs };
  /// Takes one line for the next question: a number or a code; words where words are asked for; "472 40" for a cup of one's own choice; nothing where nothing was
  /// written. A stroke on a labelled magnitude line is typed in millimetres, tenths after a point or a comma. `differs`: the second time something else was typed;
  /// it is asked again until two lines in a row agree. Problem codeNotHere, answerOutOfRange, answerMissing, notANumber, tooLong; nothing is taken then.
  Took take(std::string_view line);
  /// Opens the question before this one again; does nothing at the first one.
  void back();
  /// What was typed of a question this turn, as it is shown; empty when it is open or was left out.
  std::string shown(std::size_t ask) const;
  /// What is handed in, when both turns are done.
  std::vector<Reply> replies() const;

 private:
  struct Answer {
    bool isLeftOut = false;
    int value = 0;
    std::optional<std::string> text;
    bool operator==(const Answer&) const = default;
  };
  Answer read(const TypedAsk& ask, std::string_view text) const;
  Answer readNumber(const TypedAsk& ask, const std::string& text) const;
  Answer readCode(const TypedAsk& ask, int code) const;
  bool stands(int code) const;
  std::size_t at() const;
  [[noreturn]] void refuseCode(int code) const;
  bool isOpen(std::size_t ask) const;
  Flight flight_;
  std::vector<TypedAsk> asks_;
  std::vector<std::optional<Answer>> first_, second_;
  bool isSecond_ = false;
};

/// Somebody who may be asked to type sheets in.
struct Typist {
  TasterId taster;
  std::string name;
  bool isMaker = false;    ///< made one of the drinks: sees no answers before the close
  bool isPourer = false;   ///< knows the cups
  bool hasOpen = false;    ///< is to taste, or tastes, and has not locked everything yet
  std::optional<Place> place{};   ///< where they sit, as long as that is known
  bool mayType() const { return !isMaker && !isPourer && !hasOpen; }
};

/// Everybody on the shelf, by name. Problem notSealed.
std::vector<Typist> typists(store::Store& store, const SessionId& session);

/// Takes a hand-in that `typist` has typed in from paper; nobody: a person who is not on the shelf and says that they neither made nor poured any of it nor taste. The log holds the place
/// of the typist, or 0. Problem notAChoice ("typist") for who may not type, and those of `handIn`.
Receipt handInTyped(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::optional<TasterId>& typist, HandIn in);
/// The same for answers from a table of any form, all of them or none.
std::vector<Receipt> handInTable(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::optional<TasterId>& typist, std::vector<HandIn> all);

}  // namespace oddglass::tasting
