#pragma once

#include "report/document.h"
#include "words/report.h"

namespace oddglass::report {

/// What the reports of all methods hold alike.

/// The lots of a sealed plan by letter, with their age at a moment.
figures::Table lotTable(const words::Voice& voice, const Plan& plan, Millis at);
/// How it was served, with the orders dealt.
Section servingSection(const words::Voice& voice, const RevealedSession& session, const words::ReportWords& text);
/// Commitment, seal mark, openings of the pour sheet, and the standard it follows.
Section recordSection(const words::Voice& voice, const RevealedSession& session, const words::ReportWords& text);

/// An order with the marked cup in brackets: "[A]BA".
std::string asServed(const Plan& plan, const std::string& order);

}  // namespace oddglass::report
