#include "domain/logged.h"

oddglass::Logged forge() { return oddglass::Logged(oddglass::Seq{1}, oddglass::Event::revealed); }
