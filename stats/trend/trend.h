#pragma once

#include "stats/alike/paired_alike.h"
#include "stats/estimated.h"
#include "stats/trend/shape.h"
#include "stats/trend/visits.h"

namespace oddglass::stats {

/// Variance components of scores over time. What cannot be told is empty.
struct TimeVariance {
  std::optional<double> taster, session, residual;  ///< session beside the line; one estimated below zero is 0
  bool isAtZero = false;                            ///< true when one was estimated at or below zero
  std::optional<Reason> why;                        ///< set where anything is empty
};

enum class TrendFit {
  sessionMeans,  ///< everybody sat in every session: least squares on session means, df sessions - 2
  reml           ///< visits are missing: REML with tasters and sessions, Satterthwaite df
};

/// What the sittings say of change. The session is the unit of information and is never left out.
/// With a control in the rows everything is about the batch minus the control; without one a changed drink and a changed day cannot be told apart.
struct Trend {
  int sessions = 0, tasters = 0;
  TrendFit fit = TrendFit::sessionMeans;
  TimeVariance variance;
  Estimated slope;             ///< change of the score for one unit of age
  ShapeChoice shape;           ///< on session means, freed of who was missing
  Peak peak;                   ///< of a chosen quadratic only; notGiven for another shape
  Estimated changeSinceFirst;  ///< last minus first session, paired by the tasters who sat in both
  int satInBoth = 0;           ///< how many these are
  bool isConfounded = true;    ///< no control
};

/// Fewer than 3 sessions: the slope alone (2) or nothing; one session: oneSession; sessions of one age: oneAge; visits missing among more than 400
/// tasters and 400 sessions: tooLarge. level in (0, 1). BadInput as requireSound.
/// Sources: least squares on means; REML of Patterson and Thompson 1971, Biometrika 58:545; Satterthwaite 1946, Biometrics Bull 2:110; the rest as in shape.h.
Trend trend(const TimeRows& rows, double level);

/// Whether the last two sittings were alike within `limit`, by two one-sided tests paired by the tasters who sat in both; last minus previous.
/// One session: nothing, oneSession. Limits and errors as pairedAlike.
Alike lastTwoAlike(const TimeRows& rows, double limit, double alpha);

}  // namespace oddglass::stats
