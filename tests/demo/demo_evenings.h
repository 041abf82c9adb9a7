#pragma once

#include "demo/demo_shelf.h"

/// Two evenings played through the use cases of the program. Who is right is written in the script; the pourer's sheet, opened once as on any
/// evening, tells which cup that is.
oddglass::SessionId playPorterEvening(DemoShelf& demo);
oddglass::SessionId playCiderEvening(DemoShelf& demo);
