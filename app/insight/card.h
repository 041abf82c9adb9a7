#pragma once

#include "domain/card.h"
#include "insight/noticing.h"

#include <optional>
#include <vector>

namespace oddglass::insight {

/// How one person tastes, for that person: never a mark, never a rank.

/// Opened sessions below which nothing is said, and score sheets below which nothing is said of scores (own rule).
constexpr int fewestForCard = 3;
/// Others of the panel who must have scored a session beside the person, so that nobody else's answers can be worked out from a card (own rule).
constexpr int fewestBeside = 2;

/// Two cups of one drink in one session, which the person did not know to be the same.
struct RepeatChange {
  int earlier = 0, later = 0;            ///< repeats in the earlier and in the later half of the sessions that had any; the later half has one more of an odd number
  double earlierSd = 0.0, laterSd = 0.0; ///< points of nine
  double ratio = 1.0, low = 0.0, high = 0.0;  ///< later over earlier, at 0.95; below 1: steadier
};
struct Repeats {
  int sessions = 0;                      ///< that held a repeat
  int repeats = 0;                       ///< answers beyond the first to one drink of one session
  std::optional<double> sd;              ///< pooled, points of nine
  std::optional<RepeatChange> change;    ///< from three sessions, where both halves differ at all
};

/// From the overall liking on nine points of every sheet, also of those at which the person sat as a maker: what a repeat says does not depend on who made it.
Repeats repeatsOf(const std::vector<ScoredSheet>& sheets);

struct Card {
  int sessions = 0;         ///< opened ones in which the person is known: score sheets, and known differences with an answer that counts
  int sheets = 0;           ///< score sheets with enough others that scored, at which the person was none of the makers
  int samples = 0;          ///< drinks scored there, each session's for itself
  bool isTooFew = true;     ///< fewer than three sessions
  // All of the overall liking in points of nine; nothing where too little is known. Raw, then drawn towards the panel by how little is known.
  std::optional<double> level, shrunkLevel;          ///< mean minus the panel's, above 0 scores higher
  std::optional<double> spread, shrunkSpread;        ///< standard deviation from drink to drink
  std::optional<double> othersSpread;                ///< pooled over the others
  std::optional<double> agreement, shrunkAgreement;  ///< correlation with the mean of the others
  Repeats repeats;
  std::optional<double> othersRepeatSd;              ///< pooled over the others
  std::vector<Noticed> noticed;                      ///< by word
};

/// Works it all out. Sources: stats/panel/tasters.h, insight/noticing.h, stats/share_change.h.
Card cardOf(const CardTastings& tastings, const Meaning& meaning);

}  // namespace oddglass::insight
