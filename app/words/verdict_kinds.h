#pragma once

#include "words/verdict.h"

namespace oddglass::words {

/// What each kind of question says; shape and word are already set. Called by `speak`.

/// Told apart: triangle, duo-trio, tetrad, two-out-of-five, same-different, A-not-A.
void speakApart(const Voice& voice, const insight::Findings& findings, Spoken& spoken);
/// More of a named thing: directional pair, 3-AFC.
void speakMore(const Voice& voice, const Plan& plan, const insight::Findings& findings, Spoken& spoken);
/// A known difference, noticed or not; what came out as alike is told apart or not like any other.
void speakNoticed(const Voice& voice, const Plan& plan, const insight::Findings& findings, Spoken& spoken);
void speakPreference(const Voice& voice, const Plan& plan, const insight::Findings& findings, Spoken& spoken);
/// Three pairs together.
void speakPairs(const Voice& voice, const Plan& plan, const insight::Findings& findings, Spoken& spoken);
/// The second line of a sequential plan; replaces the one that was there.
void speakStop(const Voice& voice, const insight::Findings& findings, Spoken& spoken);

}  // namespace oddglass::words
