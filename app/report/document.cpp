#include "report/document.h"

#include "domain/problem.h"
#include "report/made.h"
#include "report/sections.h"
#include "words/drinks.h"
#include "words/history.h"
#include "words/method.h"
#include "words/numbers.h"
#include "words/report.h"

#include <algorithm>

namespace oddglass::report {
namespace {

using words::Voice;

/// The pieces of one report, all from the same voice and session.
struct Writer {
  const Voice& voice;
  const RevealedSession& session;
  const insight::Findings& findings;
  words::ReportWords text;

  /// What was answered: the cups picked, the word, the cup preferred.
  std::string answerOf(const FlightRow& row) const {
    std::vector<std::string> parts;
    for (const Position pick : row.picks) parts.push_back(words::whole(voice, pick.value));
    std::string answer = words::listed(voice, parts);
    if (row.saidSame) answer = words::sameWord(voice, session.plan.method, *row.saidSame);
    const std::string liked = row.preferredNone ? words::noPreference(voice) : row.preferred ? words::cupLiked(voice, *row.preferred) : std::string();
    if (answer.empty()) answer = liked;
    else if (!liked.empty()) answer += "; " + liked;
    return answer.empty() ? std::string("–") : answer;
  }

  std::string cameTo(const FlightRow& row) const {
    if (row.voided) return words::voidReason(voice, *row.voided);
    if (!row.isAnswered) return text.missing;
    if (!row.counts) return text.notCounted;
    return !row.right ? text.counted : *row.right ? text.right : text.wrong;
  }

  Section purpose() const {
    Section section{text.planHeading, words::planLines(voice, session.plan), std::nullopt};
    for (const auto& [outcome, promise] : session.promises)
      if (!promise.empty()) section.lines.push_back(words::promiseLine(voice, session.plan, outcome, promise));
    return section;
  }

  Section drinks() const { return {text.lotHeading, {text.lotNote}, lotTable(voice, session.plan, tastedAt(session))}; }

  Section answers() const {
    const words::ReadingTable readings = words::readingTable(voice, session.plan, findings);
    return {text.answersHeading, words::answerLines(voice, findings), figures::Table{readings.headers, readings.rows}};
  }

  /// Right answers by what people said of them: by sureness, or by what told them.
  template <class Lines, class Name>
  Section beside(const std::string& heading, const Lines& lines, Name name) const {
    Section section{heading, {}, figures::Table{{heading, text.trials, text.right}, {}}};
    for (const auto& each : lines) section.table->rows.push_back({name(each), words::whole(voice, each.trials), words::whole(voice, each.right)});
    return section;
  }

  Section flights() const {
    Section section{text.flightsHeading, {}, figures::Table{text.flightHeaders, {}}};
    for (const FlightRow& each : flightRows(session)) {
      section.table->rows.push_back({each.who, each.isMaker ? text.maker : text.panel, words::whole(voice, each.round.value), asServed(session.plan, each.poured), answerOf(each), cameTo(each),
                                     each.sureness ? words::surenessName(voice, *each.sureness) : std::string("–"),
                                     each.clue ? words::clueName(voice, *each.clue) : std::string("–")});
    }
    return section;
  }

  void makerSections(std::vector<Section>& sections) const {
    const words::MakerPart part = words::makerPart(voice, session, findings);
    Section people{text.peopleHeading, part.makers, std::nullopt};
    if (!part.people.empty()) {
      people.table = figures::Table{{text.who, session.plan.method == Method::preference ? text.answer : text.right}, {}};
      for (const words::PersonRow& row : part.people) people.table->rows.push_back({row.who, row.right});
    }
    for (const std::string* each : {&part.onlyInSums, &part.differ})
      if (!each->empty()) people.lines.push_back(*each);
    sections.push_back(people);
    if (Section rows = flights(); !rows.table->rows.empty()) sections.push_back(rows);
    if (!part.remarks.empty()) sections.push_back({text.remarksHeading, part.remarks, std::nullopt});
    if (!part.said.empty()) sections.push_back({text.saidHeading, part.said, std::nullopt});
  }
};

}  // namespace

void requireOpen(const RevealedSession& session) {
  if (session.state != State::revealed && session.state != State::broken) throw Problem(Trouble::stillSealed, "session");
}

Document document(const Voice& voice, const RevealedSession& session, const insight::Findings& findings, For whom) {
  requireOpen(session);
  const Writer writer{voice, session, findings, words::reportWords(voice)};
  Document made;
  made.language = voice.language;
  made.title = session.title;
  made.date = words::reportDates(voice, session);
  made.out = words::cameOut(voice, session, findings);
  made.room = {writer.purpose(), writer.drinks(), servingSection(voice, session, writer.text), writer.answers()};
  if (!findings.sureness.empty())
    made.room.push_back(writer.beside(writer.text.surenessHeading, findings.sureness, [&](const insight::SureLine& each) { return words::surenessName(voice, each.sureness); }));
  if (!findings.clues.empty())
    made.room.push_back(writer.beside(writer.text.cluesHeading, findings.clues, [&](const insight::ClueLine& each) { return words::clueName(voice, each.clue); }));
  made.room.push_back(recordSection(voice, session, writer.text));
  if (whom == For::maker) {
    made.makerHeading = writer.text.makerHeading;
    writer.makerSections(made.maker);
  }
  return made;
}

}  // namespace oddglass::report
