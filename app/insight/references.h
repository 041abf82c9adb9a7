#pragma once

#include "domain/reference.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::insight {

/// What a bottle of a reference is today.
struct ReferenceLot {
  std::optional<double> age;           ///< months since it was packaged; nothing where the day is not known or lies ahead
  std::optional<int> daysPast;         ///< days past its best-before; below zero while there are some left
  bool isLast = false;                 ///< one bottle is left
  bool isGone = false;                 ///< none is left
};

/// Where the panel put one vintage in one question.
struct VintageMean {
  int lot = 0;
  int people = 0;                      ///< two or more
  double mean = 0;                     ///< each one's cups averaged first
};

/// One question over the vintages of a reference: how far good ones of its own lie apart.
struct VintageRange {
  LotQuestion question;
  VintageMean low, high;               ///< the lowest and the highest
  int lots = 0;                        ///< how many were compared, two or more
  int sessions = 0;                    ///< that poured two or more of them
};

/// A reference as it stands today, and its own range as a target.
struct ReferenceFindings {
  std::vector<ReferenceLot> lots;      ///< in the order of its lots
  std::vector<VintageRange> ranges;    ///< liking first, then by word; none from a single lot
};

/// Works a reference out for a day. Ranges come from sessions in which two or more of its lots were poured, and from lots that two people or more had; lots that
/// were flawed on purpose are left out. Vintages of one session differ by more than the day; over several sessions each lot's answers are taken together.
ReferenceFindings referenceOf(const Reference& reference, const std::string& today);

}  // namespace oddglass::insight
