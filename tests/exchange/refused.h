#pragma once

#include "cellar.h"

#include <string>

using oddglass::testing::problemOf;

/// A value that goes into the sentence of a Problem; empty when there is none.
inline std::string said(const oddglass::Problem& problem, const std::string& value) {
  const auto found = problem.values().find(value);
  return found == problem.values().end() ? "" : found->second;
}
