#include "cli/last_entry.h"

#include "domain/problem.h"

#include <algorithm>

namespace oddglass::cli {

session::HistoryLine lastEntry(store::Store& store, const SessionId& session, Event event) {
  const auto lines = session::history(store, session);
  const auto found = std::find_if(lines.rbegin(), lines.rend(), [&](const session::HistoryLine& line) { return line.event == event; });
  if (found == lines.rend()) throw Problem(Trouble::storeDamaged, "store", {{"file", store.file().string()}});
  return *found;
}

}  // namespace oddglass::cli
