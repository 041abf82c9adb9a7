#include "domain/state.h"

namespace oddglass {

const std::vector<Transition>& transitions() {
  static const std::vector<Transition> table = [] {
    using enum State;
    std::vector<Transition> rows{
        {draft, Event::sealed, sealed},
        {sealed, Event::opened, tasting},
        {tasting, Event::began, tasting},
        {tasting, Event::answered, tasting},
        {tasting, Event::looked, tasting},
        {tasting, Event::judged, tasting},
        {tasting, Event::matsSwapped, tasting},
        {tasting, Event::found, tasting},
        {tasting, Event::closed, closed},
        {closed, Event::found, closed},
        {closed, Event::voided, closed},
        {closed, Event::asPoured, closed},
        {closed, Event::revealed, revealed},
        {revealed, Event::decided, revealed},
    };
    for (State at : {sealed, tasting})
      for (Event event : {Event::pourSheetOpened, Event::poured, Event::asPoured, Event::placeTaken, Event::placeLeft, Event::placeFreed, Event::spilled,
                          Event::voided, Event::said})
        rows.push_back({at, event, at});
    for (State at : {sealed, tasting, closed}) {
      rows.push_back({at, Event::broken, broken});
      rows.push_back({at, Event::abandoned, abandoned});
    }
    for (State at : {sealed, tasting, closed, revealed, broken, abandoned}) rows.push_back({at, Event::erased, at});
    return rows;
  }();
  return table;
}

std::optional<State> stateAfter(State state, Event event) {
  for (const Transition& row : transitions())
    if (row.state == state && row.event == event) return row.after;
  return std::nullopt;
}

}  // namespace oddglass
