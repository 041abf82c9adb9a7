#include "session/plan_now.h"

#include "domain/by_hand.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "store/blob.h"
#include "store/plan_json.h"
#include "store/step.h"

namespace oddglass::session {

using store::bound;

PlanNow planNow(SQLite::Database& db, std::int64_t session) {
  auto row = bound(db, R"sql(
    SELECT s.title, s.guest_title, p.body, p.commitment, p.seal_mark FROM session s JOIN session_plan p ON p.session_id = s.id WHERE s.id = ?)sql", session);
  if (!row.executeStep()) throw Problem(Trouble::notSealed, "session");
  PlanNow now{row.getColumn(0).getString(), row.getColumn(1).getString(), row.getColumn(2).getString(), {}, store::blobOf<32>(row.getColumn(3)),
              row.getColumn(4).getString()};
  now.plan = store::planFrom(canon::Json::parse(now.text));
  return now;
}

blinding::Shape shapeOf(const Plan& plan) {
  blinding::Shape shape;
  shape.routine = plan.routine;
  // What was hidden by hand cannot be poured again; from a whole bottle it can.
  if (!isDrawn(plan.routine) && plan.routine != Routine::bottles) shape.spareCodesPerCup = 0;
  shape.deal = {plan.method, plan.expected, plan.marked, plan.comparisons(), plan.places, plan.rounds, std::nullopt};
  if (plan.sheet) {
    shape.deal.sheet = {plan.sheet->orders, {}, {}};
    for (const PlannedLot& lot : plan.lots) {
      if (lot.role == LotRole::warmUp) continue;
      shape.deal.sheet->coded.push_back(lot.slot);
      if (plan.sheet->hasDuplicate && lot.role != LotRole::control) shape.deal.sheet->mayDouble.push_back(lot.slot);
    }
  }
  return shape;
}

void writePlan(SQLite::Database& db, std::int64_t session, const Plan& plan, const std::string& text, const canon::Digest& commitment,
               const std::string& sealMark) {
  auto insert = bound(db, "INSERT INTO session_plan (session_id, body, question, seal_mark, commitment) VALUES (?, ?, ?, ?, ?)", session, text,
                      std::string(nameOf(plan.question)), sealMark);
  store::bindBlob(insert, 5, commitment);
  insert.exec();
  for (const PlannedLot& lot : plan.lots)
    store::run(db, "INSERT INTO session_lot SELECT ?, ?, id FROM lot WHERE uid = ?", session, lot.slot.value, lot.lot.text);
  for (const SheetItem& item : plan.items) {
    auto row = bound(db, "INSERT INTO item (session_id, item, kind, required, per_cup, part, word, low, high) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                     session, item.item.value, std::string(nameOf(item.kind)), item.required ? 1 : 0, item.perCup ? 1 : 0, std::string(nameOf(item.part)), item.word);
    if (item.low) row.bind(8, *item.low);
    if (item.high) row.bind(9, *item.high);
    row.exec();
  }
  for (int place = 1; place <= plan.places; ++place)
    store::run(db, "INSERT INTO place VALUES (?, ?, ?)", session, place, place > plan.places - plan.spares ? 1 : 0);
  SQLite::Statement cup(db, "INSERT INTO cup VALUES (?, ?, ?, ?, ?, ?)");
  for (const Cup& each : plan.cups) {
    cup.bind(1, session);
    cup.bind(2, each.code.value);
    cup.bind(3, each.place.value);
    cup.bind(4, each.round.value);
    cup.bind(5, each.position.value);
    cup.bind(6, each.spare);
    cup.exec();
    cup.reset();
  }
}

}  // namespace oddglass::session
