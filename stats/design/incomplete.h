#pragma once

#include "stats/design/williams.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// Blocks of samples from 0 on, one block a taster: who is given which.
using Blocks = std::vector<std::vector<int>>;

/// What makes a design of incomplete blocks balanced.
struct BlockBalance {
  bool isBalanced = false;        ///< blocks of one size without repeats, every sample equally often, every pair together equally often
  int size = 0;                   ///< samples in a block; this and the rest are meant where balanced
  int repeats = 0;                ///< blocks that hold a sample, r
  int together = 0;               ///< blocks that hold a pair, lambda
  std::optional<double> efficiency;  ///< lambda t / (r k), against complete blocks of the same number of cups
};

/// By counting. Samples from 0 to samples - 1, else BadInput. Source: r (k - 1) = lambda (t - 1); efficiency lambda t / (r k), Yates 1936.
BlockBalance blockBalance(const Blocks& blocks, int samples);

/// A balanced incomplete block design with exactly so many blocks; empty when there is none, or none is found. All blocks of `size` out of `samples`,
/// their complements, the difference sets of 13, 21 and 31, and a search over designs that one cyclic permutation leaves as they are (cyclic, with a fixed
/// point, or in two to four cycles). 2 <= size < samples <= 60, 1 <= blocks <= 1000; else BadInput.
/// Sources: Bose 1939, Ann. Eugen. 9:353 (differences); Kramer and Mesner 1976, Discrete Math. 15:263 (orbits); Singer 1938 (difference sets).
std::optional<Blocks> balancedBlocks(int samples, int size, int blocks);

/// The balanced design with the fewest blocks, of up to 300; empty when none is found. Bounds as above.
std::optional<Blocks> smallestBalancedBlocks(int samples, int size);

/// One block for each taster: a balanced design, or copies of one, where the number of tasters allows it. Otherwise as many copies as fit and the rest
/// by exchange, so that samples stand equally often, or nearly so, and pairs meet as evenly as the search finds. Bounds as above.
Blocks incompleteBlocks(int samples, int size, int tasters);

/// The blocks as orders: every sample stands in every position equally often, to within one, and the orders in which one sample comes just before
/// another are as even as a search finds. Blocks of one size, without repeats; else BadInput. Source: balanced orientations of a multigraph by
/// Euler circuits, position by position (de Werra 1971: equitable colourings of bipartite graphs).
SampleOrders evenOrders(const Blocks& blocks, int samples);

}  // namespace oddglass::stats
