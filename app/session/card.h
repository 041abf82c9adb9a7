#pragma once

#include "domain/card.h"
#include "domain/chance.h"
#include "store/store.h"

#include <optional>
#include <vector>

namespace oddglass::session {

/// Cards are for those who ask. A card is shown to the person first; only when they have seen it and agree is it shown to the brewer, and then no further than
/// to the day on which they saw it. Whoever is forgotten has no card any more.

/// Everybody who asked, in the order in which they did.
std::vector<CardWish> cards(store::Store& store);
std::optional<CardWish> cardOf(store::Store& store, const TasterId& who);

/// Problem unknown ("taster"). Who has asked already keeps the card as it is.
void askForCard(store::Store& store, Clock& clock, const TasterId& who);
/// Takes the wish back, and with it the leave to show the card. Without a wish nothing happens.
void takeCardBack(store::Store& store, const TasterId& who);
/// The person has seen the card and lets the brewer see it, as it is today. Problem unknown ("card") when they did not ask.
void letCardBeSeen(store::Store& store, Clock& clock, const TasterId& who);

/// The revealed sessions that somebody sat in by name or nickname, as far as a card needs them; with `until` only those that were opened by then. Read in
/// one view, without the rest of the sessions. Problems unknown ("taster"), storeDamaged.
CardTastings cardTastings(store::Store& store, const TasterId& who, std::optional<Millis> until = std::nullopt);

}  // namespace oddglass::session
