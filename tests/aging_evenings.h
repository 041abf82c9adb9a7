#pragma once

#include "session/sittings.h"
#include "sheet_evening.h"
#include "shelf/series.h"

namespace oddglass::testing {

inline constexpr Millis dayLong = 86'400'000;

/// A mead beside its cold twin, four sittings; each answered by six friends and the maker.
struct AgingEvenings : SheetEvening {
  LotId twin = shelf::setTwinAside(*store, clock, chance, mine, "kept cold", "fridge", 6);
  SeriesId series;

  AgingEvenings() {
    Series wanted;
    wanted.title = "Heather mead grows old";
    wanted.batch = mine;
    wanted.control = ControlKind::twin;
    wanted.controlLot = twin;
    wanted.begunOn = "2025-11-24";
    wanted.main = {4, "honey", 10};
    for (const char* day : {"2025-12-08", "2026-02-24", "2026-05-24", "2026-11-24"}) wanted.sittings.push_back({0, day, std::nullopt});
    series = shelf::save(*store, clock, chance, wanted);
  }

  std::vector<SheetItem> sheetOf() const { return {asked(ItemKind::line, "honey"), asked(ItemKind::check, "vinegar"), asked(ItemKind::liking)}; }

  void planned(int number) {
    session = session::planSitting(*store, clock, chance, series, number, number == 1 ? sheetOf() : std::vector<SheetItem>());
    Draft draft = session::draft(*store, session);
    if (number == 1) invite(draft);
    draft.careSettled = true;
    draft.giveAways.emplace();
    session::saveDraft(*store, clock, draft);
  }

  void hold(int number, Millis at, const Sayer& say) {
    clock.set(at);
    planned(number);
    sealAndSit();
    answerAll(say);
    end();
  }
};

}  // namespace oddglass::testing
