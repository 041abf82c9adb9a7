#pragma once
#include "ui/window.h"

#include <functional>
#include <string>

namespace oddglass::test {

/// What people do on the way through an evening, by mouse.
void addPerson(Window& at, const std::string& name, bool brewer = false);
void addDrink(Window& at, const std::string& name, bool batch, const std::string& lot);
/// From an empty store to a sealed session of five tasters (the first made a drink) and a pourer. `asking` is done on the page of the question when
/// drinks and people are ticked, `takes` on the next one; without either a triangle is chosen by hand.
void sealAnEvening(Window& at, int rounds, int spares = 0, const std::function<void()>& asking = {}, const std::function<void()>& takes = {});
/// Takes the way of asking whose line holds these words.
void chooseMethod(Window& at, const std::string& words);
/// The first free person sits down at a place, under their name.
void sitDown(Window& at, int place);
/// One flight: confirms, takes the cup (0 to 2), is fairly sure by taste, locks.
void taste(Window& at, int cup);

}  // namespace oddglass::test
