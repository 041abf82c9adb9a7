#pragma once

#include "domain/problem.h"
#include "words/voice.h"

namespace oddglass::words {

/// What happened, what is kept and what to do, in one or two sentences. Where the problem brings no value for a place of the
/// sentence, a general word stands there ("this drink"), so that no braces are ever read by people.
std::string sentence(const Voice& voice, const Problem& problem);

/// What a field, option or column is called in a form: "lots" is "the two drinks". An unknown one keeps its own name.
std::string fieldName(const Voice& voice, const std::string& argument);

}  // namespace oddglass::words
