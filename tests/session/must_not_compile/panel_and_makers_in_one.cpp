#include "domain/revealed.h"

std::vector<oddglass::PanelFlight> all(const oddglass::RevealedSession& session) { return {session.panel.begin(), session.makers.end()}; }
