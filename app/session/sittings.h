#pragma once

#include "domain/chance.h"
#include "domain/plan.h"
#include "domain/state.h"
#include "domain/series.h"
#include "store/store.h"

#include <optional>
#include <vector>

namespace oddglass::session {

/// Plans a sitting of a series: a blind session with the batch and its control. The set-up is that of the series' last sealed sitting ("same table again"); for the
/// first one `sheet` are its questions. The question that the series is about is marked as a main one, with its limit.
/// Problems: series (unknown), sitting (unknown; alreadyThere when it was planned), sheet (empty, for the first one).
SessionId planSitting(store::Store& store, Clock& clock, Chance& chance, const SeriesId& series, int sitting, const std::vector<SheetItem>& sheet = {});

/// What the sittings of a series have come to.
struct SittingNow {
  int number = 0;
  std::string dueOn;
  std::optional<SessionId> session;
  State state = State::draft;
  std::string heldOn;          ///< the day of the first answer; empty before
  int timesSeen = 0;           ///< how often the series' old pages were opened while this sitting was sealed
};
std::vector<SittingNow> sittingsNow(store::Store& store, const SeriesId& series);

/// True for a sitting that nobody has answered in and that was not given up.
bool isToCome(const SittingNow& sitting);
/// The first of them; nullptr where there is none.
const SittingNow* nextSitting(const std::vector<SittingNow>& sittings);

/// The sitting that is sealed and not revealed yet: as long as there is one the series' old pages stay closed.
std::optional<SessionId> sealedSitting(store::Store& store, const SeriesId& series);

/// True while a sitting is sealed and the old pages were not opened although it is.
bool areClosed(const std::vector<SittingNow>& sittings);

/// A series about one of these lots whose old pages are closed: one of its sittings is sealed, and they were not opened although it is.
std::optional<SeriesId> closedSeries(store::Store& store, const std::vector<LotId>& lots);

/// The series one of whose sittings a session is.
std::optional<SeriesId> seriesOf(store::Store& store, const SessionId& session);

/// The series that keeps this session's page closed: it is one of its sittings, and another one is sealed and not revealed yet.
std::optional<SeriesId> closedBy(store::Store& store, const SessionId& session);

/// Opens a series' old pages although a sitting is sealed: it is written down beside that sitting for good. Nothing is written when none is sealed.
void openOldPages(store::Store& store, Clock& clock, const SeriesId& series);

}  // namespace oddglass::session
