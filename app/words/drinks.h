#pragma once

#include "domain/plan.h"
#include "domain/shelf.h"
#include "words/voice.h"

#include <optional>

namespace oddglass::words {

/// What the kinds of things on the shelf and on the sheet are called.
std::string kindName(const Voice& voice, Kind kind);
std::string originName(const Voice& voice, Origin origin);
std::string strengthFrom(const Voice& voice, AbvFrom from);
std::string noteKindName(const Voice& voice, NoteKind kind);
/// "a slight haze", "a third of the bottle or more": what a level, 0 to 3, means for haze, sediment and sulphur; empty for other kinds.
std::string noteLevelName(const Voice& voice, NoteKind kind, int level);
std::string stockChangeName(const Voice& voice, StockChange change);
std::string shownAsName(const Voice& voice, ShownAs as);
std::string surenessName(const Voice& voice, Sureness sureness);
std::string clueName(const Voice& voice, Clue clue);

/// The ingredients that matter to allergic people, of one drink: "sulphites", "none of the fourteen", "not known".
std::string ingredientsName(const Voice& voice, const Ingredients& ingredients);

/// The age in words at a moment, of what was packaged on a day: "81 days"; "not known" without a day that exists, or one that lies later.
std::string age(const Voice& voice, const std::string& packagedOn, Millis at);

/// "not known", and the like, for an empty field.
std::string notKnown(const Voice& voice);

}  // namespace oddglass::words
