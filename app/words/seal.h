#pragma once

#include "domain/plan.h"
#include "planning/outlook.h"
#include "words/voice.h"

#include <optional>
#include <vector>

namespace oddglass::words {

/// What the page before the seal is told.
struct SealFacts {
  std::vector<std::string> drinks;   ///< two or three, each "beverage, lot"
  Method method = Method::triangle;
  Question question = Question::differ;
  std::string attribute;             ///< "more what"
  std::string dose;                  ///< of a known difference; may be empty
  std::optional<Slot> expected;      ///< the drink that is asked about as having more, by its place among `drinks`
  std::optional<Slot> marked;        ///< the drink of the marked cup; nothing: either, drawn
  bool mayHaveNone = false;
  bool alsoPrefer = false;
  int evenings = 1;
  Claim claim = Claim::people;
  Sought sought = Sought::difference;
  std::optional<int> limitPm;
  int alphaPm = 50;
  int panel = 0;                     ///< people whose answers count; one who tastes alone among them
  int makers = 0;                    ///< makers who taste beside a panel
  int rounds = 1;                    ///< of each comparison
  std::optional<int> needed;         ///< right answers, or votes of the larger side, that would show a difference, if everybody answers
  std::vector<std::optional<int>> neededInTurn;  ///< of three comparisons: the clearest, the second, the third
  bool canShow = false;              ///< where it is not one number: some answers would show a difference
  std::optional<Stopping> stopping;
  std::vector<std::optional<int>> alikeInTurn;  ///< right answers up to which they would count as alike, if everybody answers; of three comparisons the one with fewest first
  Routine routine = Routine::pourer;
  std::string pourer;                ///< empty when nobody is named
  Promises promises;
  std::optional<GiveAways> giveAways;
  Serving serving;
};

/// The facts of a draft; `drinks` as the page calls them, in the order of the draft's lots.
SealFacts sealFacts(const Draft& draft, const planning::Setup& setup, const planning::Outlook& outlook, std::vector<std::string> drinks, std::string pourer);

/// The promise on one page: what is asked, how it will be judged, what will be done.
struct SealPage {
  std::string question;
  std::vector<std::string> rule;     ///< how it will be judged
  std::vector<std::string> promises; ///< one for each outcome that can come out
  std::string binding;               ///< what the seal does
};
SealPage sealPage(const Voice& voice, const SealFacts& facts);

/// "If they are told apart", and so on: before what will be done; after the method "If a preference is shown", on a sheet after its question.
std::string outcomeIf(const Voice& voice, Outcome outcome, Method method = Method::triangle, Question question = Question::differ);

/// What to do with the seal mark after the seal.
std::string sealMarkLine(const Voice& voice, const std::string& sealMark);
/// What to do next: nothing is poured by whoever sealed it unless they may.
std::string afterSealLine(const Voice& voice, const std::string& pourer, Routine routine = Routine::pourer);

/// The warnings before a seal is broken or a session abandoned, each asked twice.
struct AskTwice {
  std::string first, second, yes, no;
};
AskTwice breakSeal(const Voice& voice);
AskTwice abandonSession(const Voice& voice);
/// Before a person's words, or everything of theirs, is destroyed.
AskTwice eraseTaster(const Voice& voice, const std::string& name, ErasureKind kind);

/// Said once: what the seal cannot do.
std::string sealLimits(const Voice& voice);

}  // namespace oddglass::words
