#pragma once

#include "domain/chance.h"
#include "domain/shelf.h"
#include "store/store.h"

#include <vector>

namespace oddglass::shelf {

/// Writes down what was done to a drink. A note with `replaces` corrects that note; the old one is kept in the store and no longer listed.
/// A second *stabilised* is refused (alreadyStabilised, with the day of the first) unless `yesAgain`.
/// Problems by argument: beverage (unknown), note (unknown; alreadyThere when it was corrected before; notAChoice when it is another drink's),
/// done_on (notADay), gravity (outOfRange; empty for a reading without one or any words), text (tooLong, 4000 letters; empty for addition, other and changed),
/// level (empty or outOfRange for haze, sediment and sulphur; taken away from all others), word (tooLong, 60 letters).
NoteId add(store::Store& store, Chance& chance, Note note, bool yesAgain = false);

/// Takes a note back: it was wrong and nothing stands in its place.
void withdraw(store::Store& store, Chance& chance, const NoteId& note);

/// The notes of a drink as they stand now, the latest day first; those of one day the last written first.
std::vector<Note> notesOf(store::Store& store, const BeverageId& beverage);

}  // namespace oddglass::shelf
