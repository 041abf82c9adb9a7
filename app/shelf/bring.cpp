#include "shelf/bring.h"

#include "shelf/fields.h"
#include "shelf/rows.h"

namespace oddglass::shelf {

bool bring(store::Store& store, Clock& clock, Beverage beverage) {
  checkUid(beverage.id.text);
  checkBeverage(beverage);
  return store::write(store, [&](SQLite::Database& db) {
    if (maybeRowOf(db, Family::beverage, beverage.id.text)) return false;
    writeBeverage(db, beverage);
    if (beverage.archived) store::run(db, "UPDATE beverage SET archived_at = ? WHERE uid = ?", clock.now(), beverage.id.text);
    return true;
  });
}

bool bring(store::Store& store, Clock& clock, Lot lot) {
  checkUid(lot.id.text);
  checkLot(lot);
  return store::write(store, [&](SQLite::Database& db) {
    if (maybeRowOf(db, Family::lot, lot.id.text)) return false;
    writeLot(db, lot);
    if (lot.archived) store::run(db, "UPDATE lot SET archived_at = ? WHERE uid = ?", clock.now(), lot.id.text);
    return true;
  });
}

bool bring(store::Store& store, Note note) {
  checkUid(note.id.text);
  checkNote(note);
  return store::write(store, [&](SQLite::Database& db) {
    if (maybeRowOf(db, Family::note, note.id.text)) return false;
    writeNote(db, note);
    return true;
  });
}

bool bring(store::Store& store, Clock& clock, Taster taster) {
  checkUid(taster.id.text);
  checkTaster(taster);
  return store::write(store, [&](SQLite::Database& db) {
    if (maybeRowOf(db, Family::taster, taster.id.text)) return false;
    SQLite::Statement here(db, "SELECT 1 FROM taster WHERE is_brewer = 1");
    taster.isBrewer = taster.isBrewer && !here.executeStep();
    writeTaster(db, taster);
    if (taster.archived) store::run(db, "UPDATE taster SET archived_at = ? WHERE uid = ?", clock.now(), taster.id.text);
    return true;
  });
}

}  // namespace oddglass::shelf
