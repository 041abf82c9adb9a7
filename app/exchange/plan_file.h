#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "store/store.h"

#include <filesystem>

namespace oddglass::exchange {

/// Makes a draft from the "plan" of an interchange file (keys in demo_sessions/README.md). Lots and tasters are named by id, or by a name that
/// only one of them has: a lot by the drink's name when it has one lot, or by "drink, lot". Nothing is kept of a plan that is refused.
/// Where the file names no method the recommended one is taken as soon as there are two lots and somebody who counts.
/// Problems with file, line and path: badFile, unknown, ambiguous, outOfRange, notAChoice, tooLong.
SessionId planFromFile(store::Store& store, Clock& clock, Chance& chance, const std::filesystem::path& file, CameFrom as = CameFrom::here);

}  // namespace oddglass::exchange
