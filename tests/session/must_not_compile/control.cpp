// The right way; it must compile, so that its neighbours fail for their own reason.
#include "domain/revealed.h"
#include "session/vault.h"

using namespace oddglass;

blinding::OpenedKey look(SQLite::Database& db, const Logged& entry) { return session::vault::open(db, 1, entry); }
void add(std::vector<PanelFlight>& panel, const RevealedFlight& flight) { panel.emplace_back(flight); }
