#pragma once

#include "domain/revealed.h"
#include "insight/findings.h"
#include "words/voice.h"

#include <vector>

namespace oddglass::words {

/// Headings, column heads and fixed lines of the report.
struct ReportWords {
  std::string planHeading, lotHeading, lotNote, servingHeading, answersHeading, surenessHeading, cluesHeading, recordHeading;
  std::string makerHeading, peopleHeading, flightsHeading, remarksHeading, saidHeading, deviationsHeading, picture;
  std::vector<std::string> lotHeaders;      ///< ten
  std::vector<std::string> orderHeaders;    ///< two
  std::vector<std::string> flightHeaders;   ///< eight
  std::string allAnswers, withoutLookOrFizz, withoutSaid, withoutEither;
  std::string who, answer, trials, right, wrong, missing, counted, notCounted, maker, panel;
  std::string panelOrMaker, round, drink, cameTo;
};
ReportWords reportWords(const Voice& voice);

/// "First cup on ... . Sealed on ..., opened on ... .".
std::string reportDates(const Voice& voice, const RevealedSession& session);

/// Purpose, method and what was settled before anything was poured.
std::vector<std::string> planLines(const Voice& voice, const Plan& plan);
/// "If they are told apart: ..." as it was written.
std::string promiseLine(const Voice& voice, const Plan& plan, Outcome outcome, const std::string& promise);

/// Volume, cups, tasters' number; and what the program does not record.
std::vector<std::string> servingLines(const Voice& voice, const RevealedSession& session);

/// Answers, missing and set aside; the power this table had.
std::vector<std::string> answerLines(const Voice& voice, const insight::Findings& findings);

/// The readings as a table: with and without what was told by look or fizz or after something was said; with three lots for each pair. The
/// columns are those of the kind of question: right answers, votes, signal and noise, or the lines of a sequential plan.
struct ReadingTable {
  std::vector<std::string> headers;
  std::vector<std::vector<std::string>> rows;  ///< as many cells as headers
};
ReadingTable readingTable(const Voice& voice, const Plan& plan, const insight::Findings& findings);

/// How many flights came from paper or from a table, and who typed them in; empty where all came from the screen.
std::string typedInLine(const Voice& voice, const TypedIn& typedIn);

/// "After ISO 4120:2021; nobody has certified this test."
std::string standardLine(const Voice& voice, const Plan& plan);

/// What this plan could find, as it was worked out before anything was poured; empty where it cannot be worked out from the plan (one that came with a file may lie beyond what is planned here).
std::vector<std::string> powerBefore(const Voice& voice, const Plan& plan);

/// How many of those who sat had answered in an earlier session; empty where nobody can know.
std::string experienceLine(const Voice& voice, const RevealedSession& session);

/// What was liked better in one flight: "liked cup 2", "no preference".
std::string cupLiked(const Voice& voice, Position position);
std::string noPreference(const Voice& voice);

/// A p as it is printed: four decimals, "below 0.0001" where they would all be 0.
std::string pValue(const Voice& voice, double p);

}  // namespace oddglass::words
