#pragma once

#include "insight/noticing.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// For a table that is being planned: "Nobody here is known to notice “mousy” or “butter”." Empty where somebody notices each of them, or none is asked about.
/// `anyTried`: one of these people has tasted a known difference.
std::string coverageLine(const Voice& voice, const std::vector<std::string>& unnoticed, bool anyTried);

/// One word over everybody, without any person: "“butter”: 2 of 5 who tried it are known to notice it."
std::string wordNoticedLine(const Voice& voice, const insight::WordNoticed& word);

/// What one person has shown to notice, for that person: one word in a few sentences.
std::vector<std::string> noticedLines(const Voice& voice, const insight::Noticed& noticed);

/// Am I getting better at it? In one sentence, "too little known" under three sessions.
std::string changeLine(const Voice& voice, const insight::Noticed& noticed);

/// Where no known difference was tasted: how to begin.
std::string nothingNoticed(const Voice& voice);

/// What *known to notice* means, and what it does not.
std::string noticingRule(const Voice& voice);

}  // namespace oddglass::words
