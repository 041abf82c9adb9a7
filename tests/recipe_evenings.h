#pragma once

#include "session/same_again.h"
#include "sheet_evening.h"
#include "shelf/notes.h"

namespace oddglass::testing {

/// Three batches of one recipe, a lot each and a bottling a season apart, and the bought mead beside which they may stand.
struct RecipeEvenings : SheetEvening {
  std::vector<BeverageId> batches;
  std::vector<LotId> lots;

  explicit RecipeEvenings(int count = 3, const std::string& name = "Hedge mead") {
    const char* days[]{"2025-01-10", "2025-05-12", "2025-09-15"};
    for (int i = 0; i < count; ++i) {
      Beverage batch;
      batch.name = name + ' ' + std::to_string(i + 1);
      batch.recipe = name;
      batch.kind = Kind::mead;
      batch.abvBp = 1200;
      batch.abvFrom = AbvFrom::gravities;
      batch.makers = {maker};
      batches.push_back(shelf::save(*store, chance, batch));
      lots.push_back(addLot(batches.back(), "bottling " + std::to_string(i + 1)));
      Lot lot = shelf::lot(*store, lots.back());
      lot.packagedOn = days[i];
      shelf::save(*store, chance, lot);
    }
  }

  void changed(int batch, const std::string& day, const std::string& what) {
    Note note;
    note.beverage = batches.at(static_cast<std::size_t>(batch));
    note.doneOn = day;
    note.kind = NoteKind::changed;
    note.text = what;
    shelf::add(*store, chance, note);
  }

  /// One evening of these lots, answered and opened.
  void hold(Millis at, const std::vector<LotId>& poured, std::vector<SheetItem> items, const Sayer& say) {
    plan(at, poured, std::move(items));
    sealAndSit();
    answerAll(say);
    end();
  }

  void plan(Millis at, const std::vector<LotId>& poured, std::vector<SheetItem> items) {
    clock.set(at);
    session = session::planSheet(*store, clock, chance, "An evening", poured, std::move(items));
    Draft draft = session::draft(*store, session);
    invite(draft);
    draft.careSettled = true;
    draft.giveAways.emplace();
    session::saveDraft(*store, clock, draft);
  }
};

}  // namespace oddglass::testing
