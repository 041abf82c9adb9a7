#pragma once

#include "domain/revealed.h"
#include "insight/findings.h"
#include "words/voice.h"

#include <vector>

namespace oddglass::words {

/// Headings, column heads and fixed lines of the report.
struct ReportWords {
  std::string planHeading, lotHeading, lotNote, servingHeading, answersHeading, surenessHeading, cluesHeading, recordHeading, notCertified;
  std::string makerHeading, peopleHeading, flightsHeading, remarksHeading, saidHeading, deviationsHeading, picture;
  std::vector<std::string> lotHeaders;      ///< ten
  std::vector<std::string> orderHeaders;    ///< two
  std::vector<std::string> readingHeaders;  ///< nine, as `readingRow`
  std::vector<std::string> flightHeaders;   ///< eight
  std::string allAnswers, withoutLookOrFizz, withoutSaid, withoutEither;
  std::string who, trials, right, wrong, missing, notCounted, maker, panel;
};
ReportWords reportWords(const Voice& voice);

/// "Sealed on ..., tasted on ..., opened on ...".
std::string reportDates(const Voice& voice, const RevealedSession& session);

/// Purpose, method and what was settled before anything was poured.
std::vector<std::string> planLines(const Voice& voice, const Plan& plan);
/// "If they are told apart: ..." as it was written.
std::string promiseLine(const Voice& voice, Outcome outcome, const std::string& promise);

/// Volume, cups, tasters' number; and what the program does not record.
std::vector<std::string> servingLines(const Voice& voice, const RevealedSession& session);

/// Answers, missing and set aside; the power this table had.
std::vector<std::string> answerLines(const Voice& voice, const insight::Findings& findings);

/// One reading as a row: what, right, tastings, needed, most for alike, p, low, high, level.
std::vector<std::string> readingRow(const Voice& voice, const std::string& what, const insight::Reading& reading);

/// A p as it is printed: four decimals, "below 0.0001" where they would all be 0.
std::string pValue(const Voice& voice, double p);

}  // namespace oddglass::words
