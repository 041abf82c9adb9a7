#pragma once

#include "demo/demo_methods.h"

#include <functional>
#include <optional>
#include <string>

/// What somebody says to a question about a cup: which lot is in it, and which cup of that lot it is for them (1 or 2).
struct Said {
  std::optional<int> value{};
  std::string words{};
};
using Script = std::function<Said(int place, const oddglass::SheetItem& item, oddglass::Slot lot, int cupOfLot)>;

/// Seals a draft and lets these people sit, taste and hand in, one after the other; everything that is said comes from the script. The key is opened at the end.
/// The clock stands at `begins`. Of three people one is loose, unless `allSigned`.
oddglass::SessionId carryOut(DemoShelf& demo, oddglass::Draft draft, const std::vector<const char*>& names, oddglass::Millis begins, const Script& script, const char* decision,
                             bool allSigned = false);

/// Evenings with score sheets, each with one sentence on what it shows.

PlayedEvening playMarkedCup(DemoShelf& demo);     ///< two vintages of the bought mead, one marked; how far is the batch?
PlayedEvening playKindFriends(DemoShelf& demo);   ///< kind friends and a frank one
PlayedEvening playMovedTwice(DemoShelf& demo);    ///< the same drink twice, and far apart
PlayedEvening playTwoWords(DemoShelf& demo);      ///< a batch that really differs in two words
