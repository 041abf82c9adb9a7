#pragma once

#include "domain/plan.h"
#include "domain/revealed.h"
#include "words/voice.h"

#include <optional>

namespace oddglass::words {

/// Where a session stands, as it ends "this session is ...": "sealed", "at the table".
std::string stateName(const Voice& voice, State state);

/// One entry of a session's log in plain words, without its time: "Place 4 locked round 2." It names no person and no lot.
std::string eventLine(const Voice& voice, const LoggedEvent& event);

/// Why a flight cannot count: "the pourer was not sure".
std::string voidReason(const Voice& voice, VoidReason reason);

/// Where a session came from, for lists: "made here", "read from a file", "demo".
std::string cameFrom(const Voice& voice, CameFrom from);

/// What the check of chain and commitment came to: one sentence.
/// `firstBroken` is the entry at which the chain breaks, if it does; `commitmentHolds` is empty before the reveal.
std::string checkLine(const Voice& voice, std::optional<Seq> firstBroken, std::optional<bool> commitmentHolds);

}  // namespace oddglass::words
