#pragma once

#include "domain/revealed.h"
#include "domain/same_setup.h"
#include "insight/over_time.h"
#include "session/sittings.h"
#include "store/store.h"

#include <vector>

namespace oddglass::report {

/// What a series has come to, read in one go.
struct SeriesRead {
  Series series;
  std::vector<session::SittingNow> now;
  insight::OverTime over;
  std::vector<Note> notes;                       ///< of its batch
  std::vector<std::vector<SetupPart>> setup;     ///< for each sitting of `over`: what is set otherwise than at the first
};

/// Reads it, whether its pages are closed or not: whoever shows it asks `session::areClosed` first. Problem unknown ("series").
SeriesRead readSeries(store::Store& store, const SeriesId& id);

/// All that its report holds.
struct SeriesReport : SeriesRead {
  std::vector<RevealedSession> held;             ///< the session of each sitting of `over`
  struct Stock {
    Lot lot;
    Beverage drink;
  };
  std::vector<Stock> stock;                      ///< the batch, then its control where it has one, as the shelf has them now
};
SeriesReport readSeriesReport(store::Store& store, const SeriesId& id);

}  // namespace oddglass::report
