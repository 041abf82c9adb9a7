#include "tasting/board.h"

auto look(const oddglass::tasting::Board& board) { return board.places.at(0).slots; }
