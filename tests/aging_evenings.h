#pragma once

#include "session/sittings.h"
#include "sheet_evening.h"
#include "shelf/series.h"

namespace oddglass::testing {

inline constexpr Millis dayLong = 86'400'000;

/// Honey rises by 12 of 100 from look to look beside the twin, in everybody's own way; two name vinegar at the end.
inline Said risen(int look, int place, const SheetItem& item, Slot slot) {
  const bool isBatch = slot == Slot{1};
  if (item.kind == ItemKind::check) return {isBatch && look == 3 && place <= 2 ? 1 : 0};
  if (item.kind == ItemKind::line) return {30 + 2 * place + (isBatch ? 12 * (look - 1) + (place * look) % 4 : 0)};
  return {4 + (place + look) % 3};
}

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

  /// Three looks of four, from 8 December 2025 on.
  void holdThree() {
    int look = 0;
    for (const int days : {0, 78, 167}) {
      ++look;
      hold(look, 1765200000000 + days * dayLong, [&](int place, int, const SheetItem& item, Slot slot, int) { return risen(look, place, item, slot); });
    }
  }
};

}  // namespace oddglass::testing
