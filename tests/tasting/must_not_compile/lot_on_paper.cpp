#include "tasting/paper.h"

auto look(const oddglass::tasting::TablePaper& paper) { return paper.cups.at(0).slot; }
