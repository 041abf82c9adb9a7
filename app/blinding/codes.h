#pragma once

#include "blinding/stream.h"
#include "domain/numbers.h"

#include <vector>

namespace oddglass::blinding {

/// All numbers that may stand on a cup, in rising order. `digits` is 3 or 4. The first digit is not 0, no digit stands twice,
/// and at least one digit is none of 0 1 6 8 9, so that the code never reads as another one when the cup is turned.
/// There are 600 of three digits and 4440 of four.
const std::vector<Code>& allCodes(int digits);

/// True when two codes could be taken for each other: two or more digits alike in the same place, or the same digits in
/// another order, or equal.
bool lookAlike(Code a, Code b);

/// Codes for `flights` flights of `perFlight` cups each, spare ones included; all different, look-alikes never in one flight.
/// Three digits for up to 600 codes, then four. They depend on the stream and the two counts alone, never on what is poured.
/// Rule: all codes of that length are shuffled. Each cup in turn takes the first one left that looks like none of its
/// flight. Where none is left, the first cup of an earlier flight (in the order they were given) is looked for whose code
/// fits here and for which a code that is left (the first such) fits there; that cup takes it, and its old code comes here.
/// Throws Problem(tooManyCups) when there are more cups than codes, or when even that finds nothing;
/// Problem(outOfRange) when a count is below 1.
std::vector<std::vector<Code>> drawCodes(int flights, int perFlight, Stream& codes);

}  // namespace oddglass::blinding
