#pragma once

#include "domain/chance.h"
#include "domain/series.h"
#include "store/store.h"

#include <vector>

namespace oddglass::shelf {

/// Begins a series (empty id), or changes its title, bottles, reserve and the days of sittings that are not planned yet. Batch, control, the first day and
/// the main comparison stay as they are once a sitting is sealed. Sittings are numbered anew by their day.
/// Problems by argument: title (empty, tooLong), batch and control (unknown; sameLotTwice), control (notAChoice for a twin of another drink, or a reference
/// of the same), begun_on and due_on (empty, notADay; outOfRange for a sitting before the first day or two on one day), sittings (outOfRange 2 to 24), bottles_each (1 to 24),
/// reserve (0 to 48), main (outOfRange: not one of the sittings after the first), main_word (tooLong), main_limit (1 to 1000), series (unknown; seriesBegun).
SeriesId save(store::Store& store, Clock& clock, Chance& chance, Series series);

/// Sets bottles of a lot aside as its cold twin: a lot of their own, kept elsewhere. Problems as `save` of a lot and `move`.
LotId setTwinAside(store::Store& store, Clock& clock, Chance& chance, const LotId& batch, const std::string& name, const std::string& storage, int bottles);

/// Begins a series; with `twinBottles` above 0 so many bottles of the batch become its cold twin and its control, in one step: all of it is kept or nothing.
SeriesId begin(store::Store& store, Clock& clock, Chance& chance, Series series, int twinBottles, const std::string& twinName, const std::string& storage);

/// One series; Problem unknown ("series").
Series series(store::Store& store, const SeriesId& id);

/// The one series whose id begins so; four digits or more. Problem unknown, ambiguous.
SeriesId seriesNamed(store::Store& store, const std::string& start);

/// All of them, the youngest first.
std::vector<Series> allSeries(store::Store& store, bool includeArchived = false);

/// Takes a series out of the lists, or puts it back.
void archive(store::Store& store, Clock& clock, const SeriesId& id);
void bringBack(store::Store& store, const SeriesId& id);

/// That a series' old pages were opened while one of its sittings was sealed.
struct SeriesSeen {
  SessionId session;
  Millis at = 0;
};
std::vector<SeriesSeen> seenOf(store::Store& store, const SeriesId& series);

/// A series from elsewhere under its own id, checked like one that is begun here; false where its id is known already. A sitting whose session is not in this store
/// is one that was not planned yet. Problems as `save`; sittings (alreadyThere for another series' session; notAChoice for one that did not pour the batch).
bool bring(store::Store& store, Clock& clock, Series series, const std::vector<SeriesSeen>& seen = {});

/// Throws a series away none of whose sittings is sealed. Problem seriesBegun.
void discard(store::Store& store, const SeriesId& id);

}  // namespace oddglass::shelf
