#pragma once

#include "domain/chance.h"
#include "domain/shelf.h"
#include "store/store.h"

#include <optional>
#include <string_view>
#include <vector>

namespace oddglass::shelf {

/// Adds a person (empty id), or changes the one with this id. At most one is the brewer, and no two carry the same name (compared without case).
/// Problems by argument: name (empty, tooLong, alreadyThere), nickname (tooLong, 60 letters), is_brewer (alreadyThere, with the brewer's name),
/// taster (unknown).
TasterId save(store::Store& store, Chance& chance, Taster taster);

/// Everybody, by name.
std::vector<Taster> people(store::Store& store, bool includeArchived = false);

/// One person; Problem unknown ("taster").
Taster taster(store::Store& store, const TasterId& id);

/// The maker who owns this machine, if somebody is.
std::optional<Taster> brewer(store::Store& store);

/// The one person who is not archived and whose name is `name` or, when nobody's is, whose name alone begins with it; compared without case.
/// Problem empty, unknown or ambiguous ("taster").
Taster tasterNamed(store::Store& store, std::string_view name);

/// Takes a person out of the lists; answers and makers stay as they are. Problem stillInUse while they sit or pour in a session that is not over.
void archivePerson(store::Store& store, Clock& clock, const TasterId& id);
void bringBackPerson(store::Store& store, const TasterId& id);

}  // namespace oddglass::shelf
