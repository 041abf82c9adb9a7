#pragma once

#include "canon/digest.h"

#include <string>

namespace oddglass::blinding {

/// A short form of the commitment that can be said aloud, such as "kapo rilu 7": too short to prove anything alone.
/// The first three bytes, most significant first, give four groups of six bits; of each, the upper four bits choose a
/// consonant of "bdfghklmnprstvwz", the lower two a vowel of "aiou". The fourth byte modulo 10 is the digit.
std::string sealMark(const canon::Digest& commitment);

}  // namespace oddglass::blinding
