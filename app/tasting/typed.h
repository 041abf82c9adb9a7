#pragma once

#include "tasting/hand_in.h"

#include <vector>

namespace oddglass::tasting {

/// Keeps what a place has typed of its next flight and not handed in yet, so that a crash loses the last touch at most. It is no answer: it stands in
/// no record and no export, and it is gone with the hand-in, when whoever sits there stops, and at the close. Replies may be incomplete.
/// Problem wrongState, tableClosed, placeEmpty, placeLeft, notThisRound, tooLong (more than a sheet can hold).
void keepTyped(store::Store& store, Clock& clock, const SessionId& session, Place place, Round round, const std::vector<Reply>& replies);

/// What was kept for this flight; empty where nothing was, or where it belongs to another flight or to cups that were replaced since.
std::vector<Reply> typed(store::Store& store, const SessionId& session, Place place, Round round);

}  // namespace oddglass::tasting
