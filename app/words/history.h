#pragma once

#include "domain/plan.h"
#include "domain/revealed.h"
#include "words/voice.h"

#include <optional>

namespace oddglass::words {

/// Where a session stands, as it ends "this session is ...": "sealed", "at the table".
std::string stateName(const Voice& voice, State state);

/// What an entry may hold beside its place and round.
struct LogDetails {
  std::optional<Code> code, byCode;     ///< a spilled cup and the one that took its place
  std::optional<VoidReason> reason;
  std::vector<Place> heardBy;           ///< who heard what was said; empty: everybody
  std::optional<bool> commitmentHolds;  ///< at the reveal
  std::optional<int> missing;           ///< flights without an answer, at the close
  std::optional<bool> goOn;             ///< what a look after a round said
  std::optional<Place> typedBy;         ///< whose place typed answers in; 0: somebody not at the table
  std::string words;                    ///< what was said or written; only after the reveal
  std::vector<Place> places{};          ///< the two that had each other's cups
  bool clockBack = false;               ///< earlier, by the clock, than the entry before it
};

/// One entry of a session's log in plain words, without its time: "Place 4 locked round 2." It names no person and no lot.
std::string eventLine(const Voice& voice, const LoggedEvent& event, const LogDetails& details = {});

/// Why a flight cannot count: "the pourer was not sure".
std::string voidReason(const Voice& voice, VoidReason reason);

/// Where a session came from, for lists: "made here", "read from a file", "demo".
std::string cameFrom(const Voice& voice, CameFrom from);

/// One thing that was checked, by the word of the check (chain, plan, commitment, ...): "Plan and key are what was sealed."
/// `where` is the first place where it does not hold.
std::string checkLine(const Voice& voice, const std::string& what, bool holds, const std::string& where);

/// What the whole check came to. `keyOpen`: without it plan and key cannot be compared yet, and it says so.
std::string checkHeadline(const Voice& voice, bool holds, bool keyOpen);

}  // namespace oddglass::words
