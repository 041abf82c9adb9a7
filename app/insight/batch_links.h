#pragma once

#include "insight/side_by_side.h"

#include <map>
#include <set>
#include <vector>

namespace oddglass::insight {

/// For each lot its sessions, and who said anything of it there.
using HadLots = std::vector<std::map<int, std::set<int>>>;

/// From the answers, lots that were flawed on purpose left out.
HadLots whoHad(const AboutLots& about, const std::vector<LotId>& lots);

/// True where the lot was flawed on purpose in that session, so that its answers say nothing about the drink.
bool isFlawed(const LotSession& session, const LotId& lot);

/// For each batch the lot that stands for it, by the rule of `sideBySideOf`; nothing for a batch without lots.
std::vector<std::optional<int>> lotsThatCount(int batches, const BatchTastings& tastings, const HadLots& had);

/// How two lots are held together, with the sessions and people used; `base`, `other` of the step are left as they are.
BatchStep linkBetween(int base, int other, const HadLots& had);

}  // namespace oddglass::insight
