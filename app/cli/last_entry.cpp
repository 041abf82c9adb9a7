#include "cli/last_entry.h"

#include "domain/problem.h"
#include "words/history.h"

#include <algorithm>

namespace oddglass::cli {

std::string entryLine(const words::Voice& voice, const session::HistoryLine& line) {
  words::LogDetails details;
  details.code = line.code;
  details.byCode = line.byCode;
  details.reason = line.reason;
  details.heardBy = line.heardBy;
  details.commitmentHolds = line.commitmentHolds;
  details.missing = line.missing;
  details.goOn = line.goOn;
  details.typedBy = line.typedBy;
  details.words = line.words;
  details.places = line.places;
  details.clockBack = line.clockBack;
  return words::eventLine(voice, {line.seq, line.at, line.event, line.place, line.round, line.goOn, line.readBy}, details);
}

session::HistoryLine lastEntry(store::Store& store, const SessionId& session, Event event) {
  const auto lines = session::history(store, session);
  const auto found = std::find_if(lines.rbegin(), lines.rend(), [&](const session::HistoryLine& line) { return line.event == event; });
  if (found == lines.rend()) throw Problem(Trouble::storeDamaged, "store", {{"file", store.file().string()}});
  return *found;
}

}  // namespace oddglass::cli
