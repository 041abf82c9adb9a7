#pragma once
#include "ui/window.h"

#include <string>

namespace oddglass::test {

/// What people do on the way through an evening, by mouse.
void addPerson(Window& at, const std::string& name, bool brewer = false);
void addDrink(Window& at, const std::string& name, bool batch, const std::string& lot);
/// From an empty store to a sealed session of five tasters (the first made a drink) and a pourer.
void sealAnEvening(Window& at, int rounds, int spares = 0);
/// The first free person sits down at a place, under their name.
void sitDown(Window& at, int place);
/// One flight: confirms, takes the cup (0 to 2), is fairly sure by taste, locks.
void taste(Window& at, int cup);

}  // namespace oddglass::test
