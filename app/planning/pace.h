#pragma once

namespace oddglass::planning {

/// How long things take; own figures, to be corrected by the evenings to come.
inline constexpr int settleSeconds = 600;    ///< from the door to the first cup: care, consent, the seal mark
inline constexpr int pourSeconds = 20;       ///< a cup
inline constexpr int tasteSeconds = 30;      ///< a cup
inline constexpr int questionSeconds = 5;    ///< a question of a score sheet

}  // namespace oddglass::planning
