#pragma once

#include "domain/about_lots.h"
#include "domain/shelf.h"

#include <string>
#include <vector>

namespace oddglass {

/// A revealed session in which a lot was poured.
struct PouredIn {
  int lot = 0;           ///< its place among the lots that were asked for
  SessionId session;
  std::string title;
  std::string heldOn;    ///< the day of the first answer
};

/// A bought drink with its vintages and lots, and what the panel said of them in revealed score sheets that poured at least two.
struct Reference {
  Beverage beverage;
  std::vector<Lot> lots;            ///< the oldest first; those put away too
  std::vector<PouredIn> poured;     ///< the first day first
  AboutLots together;               ///< its lots are `lots`
};

}  // namespace oddglass
