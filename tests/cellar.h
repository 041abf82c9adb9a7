#pragma once

#include "trouble.h"

#include "domain/problem.h"
#include "fixed.h"
#include "store/store.h"

#include <catch2/catch.hpp>

namespace oddglass::testing {

/// A folder with the file of a store in it, a clock and chance.
struct Cellar {
  Folder folder;
  FixedClock clock;
  FixedChance chance;
  std::filesystem::path file = folder / "cellar.oddglass";
  std::unique_ptr<store::Store> open(store::Access access = store::Access::write) { return store::Store::open(file, access, clock, chance); }
};

/// The Problem that `f` is refused with; the test fails when nothing is refused.
template <class F>
Problem problemOf(F&& f) {
  try {
    f();
  } catch (const Problem& problem) {
    return problem;
  }
  FAIL("nothing was refused");
  return {Trouble::storeFailed, ""};
}

}  // namespace oddglass::testing
