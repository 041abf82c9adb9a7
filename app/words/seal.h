#pragma once

#include "domain/plan.h"
#include "words/voice.h"

#include <optional>
#include <vector>

namespace oddglass::words {

/// What the page before the seal is told.
struct SealFacts {
  std::vector<std::string> drinks;   ///< the two of them, each "beverage, lot"
  Claim claim = Claim::people;
  Sought sought = Sought::difference;
  std::optional<int> limitPm;
  int alphaPm = 50;
  int panel = 0;                     ///< people whose answers count
  int makers = 0;                    ///< makers who taste as well
  int rounds = 1;
  std::optional<int> needed;         ///< right answers that would show a difference, if everybody answers
  std::optional<int> alikeAtMost;    ///< right answers up to which they would count as alike, if everybody answers
  std::string pourer;                ///< empty when nobody is named
  Promises promises;
};

/// The promise on one page: what is asked, how it will be judged, what will be done.
struct SealPage {
  std::string question;
  std::vector<std::string> rule;     ///< how it will be judged
  std::vector<std::string> promises; ///< one for each outcome that can come out
  std::string binding;               ///< what the seal does
};
SealPage sealPage(const Voice& voice, const SealFacts& facts);

/// "If they are told apart", and so on: before what will be done.
std::string outcomeIf(const Voice& voice, Outcome outcome);

/// What to do with the seal mark after the seal.
std::string sealMarkLine(const Voice& voice, const std::string& sealMark);
/// What to do next: nothing is poured by whoever sealed it unless they may.
std::string afterSealLine(const Voice& voice, const std::string& pourer);

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
