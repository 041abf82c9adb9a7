#include "report/series_read.h"

#include "insight/noticing.h"
#include "session/about_lots.h"
#include "session/known_differences.h"
#include "session/look.h"
#include "session/record.h"
#include "shelf/beverages.h"
#include "shelf/lots.h"
#include "shelf/notes.h"
#include "shelf/series.h"
#include "shelf/vocabulary.h"

namespace oddglass::report {

SeriesRead readSeries(store::Store& store, const SeriesId& id) {
  SeriesRead read;
  read.series = shelf::series(store, id);
  read.now = session::sittingsNow(store, id);
  const AboutLots about = session::aboutLots(store, read.series);
  read.over = insight::overTimeOf(read.series, about, insight::noticersOf(session::knownDifferences(store), about.questions, shelf::meaningNow(store)));
  read.notes = shelf::notesOf(store, shelf::lot(store, read.series.batch).beverage);
  std::optional<Plan> first;
  for (const insight::TimeSitting& each : read.over.sittings) {
    const Plan plan = session::record(store, each.session).plan;
    if (!first) first = plan;
    read.setup.push_back(setupDifferences(*first, plan));
  }
  return read;
}

SeriesReport readSeriesReport(store::Store& store, const SeriesId& id) {
  SeriesReport read{readSeries(store, id), {}, {}};
  for (const insight::TimeSitting& each : read.over.sittings) read.held.push_back(session::revealed(store, each.session));
  std::vector<LotId> lots{read.series.batch};
  if (read.series.controlLot) lots.push_back(*read.series.controlLot);
  for (const LotId& each : lots) {
    const Lot lot = shelf::lot(store, each);
    read.stock.push_back({lot, shelf::beverage(store, lot.beverage)});
  }
  return read;
}

}  // namespace oddglass::report
