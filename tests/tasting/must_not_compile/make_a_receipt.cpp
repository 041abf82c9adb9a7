#include "tasting/hand_in.h"

auto forge() { return oddglass::tasting::Receipt(oddglass::Seq{1}, 0, false); }
