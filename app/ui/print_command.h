#pragma once
#include "domain/chance.h"

#include <QStringList>

#include <iosfwd>

namespace oddglass::ui {

/// `oddglass --print WHAT ...`: prints without a window and gives the exit status, 0 or 2. What is wrong goes to `err` in one line, "oddglass: ARGUMENT: sentence".
/// The command line starts this; the options are those of its own commands. The sentences are those of the command line, not of the window.
int printCommand(const QStringList& arguments, Clock& clock, Chance& chance, std::ostream& err);

}  // namespace oddglass::ui
