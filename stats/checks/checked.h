#pragma once

#include "stats/checks/cochran.h"
#include "stats/long_rows.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// Checks in long form, one box a row: 1 checked, 0 not. A box that nobody answered is simply not here. Columns of one length; two samples or more.
struct CheckRows {
  std::vector<int> checked;
  Factor sample;
  Factor taster;
  Factor descriptor;
};

/// Two samples beside each other, a before b, by those who answered for both.
struct CheckPair {
  int a = 0;
  int b = 0;
  int onlyA = 0;                     ///< checked it for a and not for b
  int onlyB = 0;
  std::optional<double> pMcNemar;    ///< empty where nobody answered for both
  std::optional<double> pHolm;       ///< over the pairs of this descriptor
};

/// One descriptor over all samples.
struct CheckedDescriptor {
  int descriptor = 0;
  std::vector<std::optional<double>> shares;  ///< by sample, of those who answered for it; empty where nobody did
  std::vector<int> checks;                    ///< by sample, of the complete tasters
  int tasters = 0;                            ///< complete ones: they answered for every sample
  int leftOut = 0;                            ///< those who answered for some
  CochranQ test;                              ///< by the complete tasters only
  std::optional<double> pHolm;                ///< over the descriptors that have a test
  std::vector<CheckPair> pairs;
};

/// One entry for each descriptor. Holm over the descriptors takes the exact or drawn p, and chi-square's where there is neither. No p is drawn when
/// those who tell samples apart gave more than 20,000 checks and blanks altogether: it would take too long.
/// BadInput names the column: checked other than 0 or 1, one sample, a box answered twice (taster), labels outside their levels.
/// Sources: `cochran.h`; Holm 1979.
std::vector<CheckedDescriptor> checkedDescriptors(const CheckRows& rows);

}  // namespace oddglass::stats
