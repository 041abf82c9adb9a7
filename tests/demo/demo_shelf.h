#pragma once

#include "evening.h"

#include <map>
#include <string>

inline constexpr oddglass::Millis minute = 60000;
inline const std::vector<const char*> eightAndWenna{"Ilse", "Bram", "Tove", "Nia", "Ruan", "Ebba", "Kit", "Sorrel", "Wenna"};

/// An invented shelf in a store of its own. Nobody and nothing on it exists.
struct DemoShelf {
  oddglass::testing::Folder folder;
  oddglass::testing::FixedClock clock{1768068000000};  // 10 January 2026, 18:00 UTC
  oddglass::testing::FixedChance chance{20260110};
  std::unique_ptr<oddglass::store::Store> store = oddglass::store::Store::open(folder / "demo.oddglass", oddglass::store::Access::write, clock, chance);
  std::map<std::string, oddglass::TasterId> people;
  oddglass::LotId porter, porterWarm, boughtPorter, ciderMarch, ciderOak, mead, boughtMead, boughtMeadOlder, amberShort, amberLong;

  DemoShelf();
};
