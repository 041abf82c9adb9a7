#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "store/store.h"

#include <filesystem>
#include <string>
#include <vector>

namespace oddglass::exchange {

/// What the demo put into a store.
struct Demo {
  std::vector<SessionId> revealed;  ///< evenings that are over
  SessionId waiting;                ///< one that was sealed just now and waits to be tasted
  std::string sealMark;             ///< its seal mark
};

/// Loads the invented shelf and evenings of `folder` (demo_sessions) through the import that anybody's files go through, and seals the plan
/// among them with `chance`. All of it or nothing. Problem sessionThere when the demo was loaded before; storeMissing without the folder.
Demo loadDemo(store::Store& store, Clock& clock, Chance& chance, const std::filesystem::path& folder);

}  // namespace oddglass::exchange
