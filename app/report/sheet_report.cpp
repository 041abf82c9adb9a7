#include "report/sheet_report.h"

#include "domain/names.h"
#include "report/json.h"
#include "report/made.h"
#include "report/sections.h"
#include "report/sheet_pictures.h"
#include "words/history.h"
#include "words/lots.h"
#include "words/numbers.h"
#include "words/report.h"
#include "words/sheet_answers.h"
#include "words/sheet_map.h"
#include "words/sheet_maker.h"
#include "words/sheet_out.h"
#include "words/sheet_plan.h"

#include <algorithm>

namespace oddglass::report {
namespace {

using words::Voice;

Section drinks(const Voice& voice, const RevealedSession& session, const words::ReportWords& text) {
  Section section{text.lotHeading, {text.lotNote}, lotTable(voice, session.plan, tastedAt(session))};
  for (const PlannedLot& lot : session.plan.lots)
    section.lines.push_back(words::lotTitle(voice, lot) + ": " + words::roleName(voice, lot.role) + '.');
  return section;
}

Section purpose(const Voice& voice, const RevealedSession& session, const words::ReportWords& text) {
  Section section{text.planHeading, words::planLines(voice, session.plan), std::nullopt};
  for (const SheetItem& item : session.plan.items) section.lines.push_back(words::sheetItemLine(voice, item));
  for (const auto& [outcome, promise] : session.promises)
    if (!promise.empty()) section.lines.push_back(words::promiseLine(voice, session.plan, outcome, promise));
  return section;
}

// What everybody answered about each cup, but words: these stand under a heading of their own.
Section answers(const Voice& voice, const RevealedSession& session, const words::ReportWords& text) {
  Section section{text.flightsHeading, {}, figures::Table{{text.who, text.panelOrMaker, text.round, text.drink, text.cameTo, text.answer}, {}}};
  for (const SheetRow& row : sheetRows(session)) {
    std::string said;
    for (const auto& [item, value] : row.values) {
      const std::string one = words::answeredTo(voice, *std::ranges::find(session.plan.items, item, &SheetItem::item), value);
      if (!one.empty()) said += (said.empty() ? "" : "; ") + one;
    }
    section.table->rows.push_back({row.who, row.isMaker ? text.maker : text.panel, words::whole(voice, row.round.value), row.lot ? words::lotNamed(voice, session.plan, *row.lot) : std::string("–"),
                                   row.voided ? words::voidReason(voice, *row.voided) : text.counted, said.empty() ? std::string("–") : said});
  }
  return section;
}

// How the lots lie to each other; left out where there is nothing to draw.
std::optional<Section> mapSection(const Voice& voice, const RevealedSession& session, const insight::SheetFindings& findings) {
  const insight::SheetMap map = insight::sheetMapOf(session);
  const auto picture = mapPicture(voice, session.plan, findings, map);
  if (!picture) return std::nullopt;
  return Section{words::mapHeading(voice), words::mapLines(voice, map), std::nullopt, {drawingOf(*picture, figures::mapFigure)}};
}

}  // namespace

Document document(const Voice& voice, const RevealedSession& session, const insight::SheetFindings& findings, For whom) {
  requireOpen(session);
  const words::ReportWords text = words::reportWords(voice);
  Document made;
  made.language = voice.language;
  made.title = session.title;
  made.date = words::reportDates(voice, session);
  made.out = words::sheetOut(voice, session, findings);
  SheetDrawings drawings = sheetDrawings(voice, session, findings, made.out);
  made.lead = std::move(drawings.lead);
  made.drawings = std::move(drawings.sections);
  made.onRequest = mapSection(voice, session, findings);
  made.room = {purpose(voice, session, text), drinks(voice, session, text), servingSection(voice, session, text), recordSection(voice, session, text)};
  if (whom == For::maker) {
    made.makerHeading = text.makerHeading;
    for (words::OutSection& each : words::sheetMakerSections(voice, session, findings)) {
      Section section{each.heading, std::move(each.lines), std::nullopt};
      if (!each.rows.empty()) section.table = figures::Table{each.headers, each.rows};
      made.maker.push_back(std::move(section));
    }
    if (Section rows = answers(voice, session, text); !rows.table->rows.empty()) made.maker.push_back(std::move(rows));
  }
  return made;
}

Document documentOf(const Voice& voice, const RevealedSession& session, For whom) {
  return session.plan.sheet ? document(voice, session, insight::sheetFindingsOf(session), whom) : document(voice, session, insight::findingsOf(session), whom);
}

std::string jsonOf(const Voice& voice, const RevealedSession& session, For whom) {
  return session.plan.sheet ? json(voice, session, insight::sheetFindingsOf(session), whom) : json(voice, session, insight::findingsOf(session), whom);
}

}  // namespace oddglass::report
