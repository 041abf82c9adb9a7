#include "report/document.h"

#include "domain/problem.h"
#include "report/made.h"
#include "words/drinks.h"
#include "words/history.h"
#include "words/numbers.h"
#include "words/record.h"
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

  std::string orUnknown(const std::string& value) const { return value.empty() ? words::notKnown(voice) : value; }

  Section purpose() const {
    Section section{text.planHeading, words::planLines(voice, session.plan), std::nullopt};
    for (const auto& [outcome, promise] : session.promises)
      if (!promise.empty()) section.lines.push_back(words::promiseLine(voice, outcome, promise));
    return section;
  }

  Section drinks() const {
    figures::Table table{text.lotHeaders, {}};
    char letter = 'A';
    for (const PlannedLot& lot : session.plan.lots)
      table.rows.push_back({std::string(1, letter++), words::lotTitle(voice, lot), words::kindName(voice, lot.kind), words::originName(voice, lot.origin),
                            lot.abvBp ? words::strength(voice, *lot.abvBp) : words::notKnown(voice), orUnknown(lot.packagedOn),
                            words::age(voice, lot.packagedOn, tastedAt(session)), orUnknown(lot.bestBefore), orUnknown(lot.storage),
                            words::ingredientsName(voice, lot.ingredients)});
    return {text.lotHeading, {text.lotNote}, table};
  }

  Section serving() const {
    figures::Table table{text.orderHeaders, {}};
    for (const OrderCount& each : ordersDealt(session)) table.rows.push_back({each.order, words::whole(voice, each.flights)});
    return {text.servingHeading, words::servingLines(voice, session), table};
  }

  Section answers() const {
    Section section{text.answersHeading, words::answerLines(voice, findings), figures::Table{text.readingHeaders, {}}};
    const auto add = [&](const std::string& what, const std::optional<insight::Reading>& reading) {
      if (reading) section.table->rows.push_back(words::readingRow(voice, what, *reading));
    };
    add(text.allAnswers, findings.all);
    add(text.withoutLookOrFizz, findings.withoutLookOrFizz);
    add(text.withoutSaid, findings.withoutSaid);
    add(text.withoutEither, findings.withoutEither);
    return section;
  }

  /// Right answers by what people said of them: by sureness, or by what told them.
  template <class Lines, class Name>
  Section beside(const std::string& heading, const Lines& lines, Name name) const {
    Section section{heading, {}, figures::Table{{heading, text.trials, text.right}, {}}};
    for (const auto& each : lines) section.table->rows.push_back({name(each), words::whole(voice, each.trials), words::whole(voice, each.right)});
    return section;
  }

  Section record() const {
    return {text.recordHeading, {words::commitmentLine(voice, session), words::openingsLine(voice, session.pourSheetOpenings), text.notCertified}, std::nullopt};
  }

  Section flights() const {
    Section section{text.flightsHeading, {}, figures::Table{text.flightHeaders, {}}};
    for (const FlightRow& each : flightRows(session)) {
      const std::string came = each.voided ? words::voidReason(voice, *each.voided) : each.picks.empty() ? text.missing : !each.right ? text.notCounted : *each.right ? text.right : text.wrong;
      section.table->rows.push_back({each.who, each.isMaker ? text.maker : text.panel, words::whole(voice, each.round.value), each.poured,
                                     !each.picks.empty() ? words::whole(voice, each.picks[0].value) : std::string("–"), came,
                                     each.sureness ? words::surenessName(voice, *each.sureness) : std::string("–"),
                                     each.clue ? words::clueName(voice, *each.clue) : std::string("–")});
    }
    return section;
  }

  void makerSections(std::vector<Section>& sections) const {
    const words::MakerPart part = words::makerPart(voice, session, findings);
    Section people{text.peopleHeading, part.makers, std::nullopt};
    if (!part.people.empty()) {
      people.table = figures::Table{{text.who, text.right}, {}};
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
  made.room = {writer.purpose(), writer.drinks(), writer.serving(), writer.answers()};
  if (!findings.sureness.empty())
    made.room.push_back(writer.beside(writer.text.surenessHeading, findings.sureness, [&](const insight::SureLine& each) { return words::surenessName(voice, each.sureness); }));
  if (!findings.clues.empty())
    made.room.push_back(writer.beside(writer.text.cluesHeading, findings.clues, [&](const insight::ClueLine& each) { return words::clueName(voice, each.clue); }));
  made.room.push_back(writer.record());
  if (whom == For::maker) {
    made.makerHeading = writer.text.makerHeading;
    writer.makerSections(made.maker);
  }
  return made;
}

}  // namespace oddglass::report
