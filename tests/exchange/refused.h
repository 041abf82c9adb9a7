#pragma once

#include "domain/problem.h"

#include <catch2/catch.hpp>

#include <string>

/// What `work` is refused with; fails the test when it is not refused.
template <class Work>
oddglass::Problem refused(Work&& work) {
  try {
    work();
  } catch (const oddglass::Problem& problem) {
    return problem;
  }
  FAIL("nothing was refused");
  throw oddglass::Problem(oddglass::Trouble::empty, "");
}

/// A value that goes into the sentence; empty when there is none.
inline std::string said(const oddglass::Problem& problem, const std::string& value) {
  const auto found = problem.values().find(value);
  return found == problem.values().end() ? "" : found->second;
}
