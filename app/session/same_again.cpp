#include "session/same_again.h"

#include "domain/names.h"
#include "domain/same_setup.h"
#include "session/plan_now.h"
#include "store/log.h"

#include <algorithm>

namespace oddglass::session {
namespace {

// What a question of a sheet is, whatever its number.
SheetItem questionOf(const SheetItem& item) {
  SheetItem question;
  question.kind = item.kind;
  question.required = item.required;
  question.part = item.part;
  question.word = item.word;
  question.limit = item.limit;
  question.isMain = item.isMain;
  return question;
}

SheetDraft sheetFrom(const Plan& plan) {
  SheetDraft sheet;
  sheet.items = questionsOf(plan);
  for (const PlannedLot& lot : plan.lots) sheet.roles.push_back(lot.role);
  sheet.hasDuplicate = plan.sheet->hasDuplicate;
  sheet.cupsAtOnce = std::max(2, cupsAtOnceOf(plan));
  sheet.pauseSeconds = plan.sheet->pauseSeconds;
  sheet.cleanser = plan.sheet->cleanser;
  return sheet;
}

void invite(SQLite::Database& db, std::int64_t session, Draft& draft) {
  auto rows = store::bound(db, R"sql(
    SELECT t.uid, i.pours FROM invited i JOIN taster t ON t.id = i.taster_id WHERE i.session_id = ? AND t.archived_at IS NULL ORDER BY t.id)sql", session);
  while (rows.executeStep()) {
    const TasterId who{rows.getColumn(0).getString()};
    if (rows.getColumn(1).getInt() != 0) draft.pourer = who;
    else draft.tasters.push_back(who);
  }
}

}  // namespace

std::vector<SheetItem> questionsOf(const Plan& plan) {
  std::vector<SheetItem> items;
  for (const SheetItem& item : plan.items) items.push_back(questionOf(item));
  return items;
}

SessionId planSheet(store::Store& store, Clock& clock, Chance& chance, const std::string& title, const std::vector<LotId>& lots, std::vector<SheetItem> sheet) {
  return store::write(store, [&](SQLite::Database& db) {
    Draft draft;
    draft.title = title;
    draft.method = Method::sheet;
    draft.methodChosen = true;
    draft.question = Question::good;
    draft.lots = lots;
    draft.sheet.items = std::move(sheet);
    for (const LotId& lot : lots) {
      auto row = store::bound(db, "SELECT b.origin FROM lot l JOIN beverage b ON b.id = l.beverage_id WHERE l.uid = ?", lot.text);
      const bool isReference = row.executeStep() && row.getColumn(0).getString() == nameOf(Origin::reference);
      draft.sheet.roles.push_back(isReference ? LotRole::reference : LotRole::compared);
      if (isReference) draft.question = Question::lacks;
    }
    // Vintages by themselves: all but the first are held against it.
    if (std::ranges::find(draft.sheet.roles, LotRole::compared) == draft.sheet.roles.end())
      for (std::size_t i = 1; i < draft.sheet.roles.size(); ++i) draft.sheet.roles[i] = LotRole::compared;
    draft.id = newDraft(store, clock, chance, title);
    saveDraft(store, clock, draft);
    return draft.id;
  });
}

Draft sameAgain(store::Store& store, const SessionId& session) {
  return store::read(store, [&](SQLite::Database& db) {
    const auto row = store::sessionRow(db, session);
    const PlanNow now = planNow(db, row);
    const Plan& plan = now.plan;
    Draft draft;
    draft.title = now.title;
    draft.guestTitle = now.guestTitle;
    draft.question = plan.question;
    draft.method = plan.method;
    draft.methodChosen = true;
    for (const PlannedLot& lot : plan.lots) draft.lots.push_back(lot.lot);
    draft.attribute = plan.attribute;
    draft.serving = plan.serving;
    draft.expected = plan.expected;
    draft.dose = plan.dose;
    draft.marked = plan.marked;
    draft.mayHaveNone = plan.mayHaveNone;
    draft.alsoPrefer = plan.alsoPrefer;
    draft.stopping = plan.stopping;
    if (plan.sheet) draft.sheet = sheetFrom(plan);
    draft.evenings = plan.evenings;
    draft.wave = plan.wave;
    draft.rounds = plan.roundsEach();
    draft.cupMl = plan.cupMl;
    draft.spares = plan.spares;
    draft.alphaPm = plan.alphaPm;
    draft.sought = plan.sought;
    draft.limitPm = plan.limitPm;
    draft.giveAways = plan.giveAways;
    invite(db, row, draft);
    return draft;
  });
}

SessionId planAgain(store::Store& store, Clock& clock, Chance& chance, const SessionId& session) {
  return store::write(store, [&](SQLite::Database&) {
    Draft draft = sameAgain(store, session);
    draft.id = newDraft(store, clock, chance, draft.title);
    saveDraft(store, clock, draft);
    return draft.id;
  });
}

}  // namespace oddglass::session
