#include "domain/revealed.h"

void add(std::vector<oddglass::PanelFlight>& panel, const oddglass::MakerFlight& maker) { panel.push_back(maker); }
