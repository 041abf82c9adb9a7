#include "session/seal.h"

#include "blinding/commitment.h"
#include "blinding/seal_mark.h"
#include "domain/flight_form.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "planning/amounts.h"
#include "planning/sheet_cups.h"
#include "session/drafts.h"
#include "session/plan_now.h"
#include "session/vault.h"
#include "store/blob.h"
#include "store/plan_json.h"
#include "tasting/table.h"

namespace oddglass::session {
namespace {

using store::bound;

struct Promised {
  Outcome outcome;
  canon::Salt salt;
  std::string text;
};

Plan planOf(const DraftFacts& facts) {
  const Draft& draft = facts.draft;
  const planning::Setup setup = setupOf(facts);
  Plan plan;
  plan.question = draft.question;
  plan.method = draft.method;
  plan.claim = planning::claimOf(setup);
  plan.sought = draft.sought;
  plan.alphaPm = draft.alphaPm;
  plan.limitPm = draft.limitPm;
  plan.attribute = draft.attribute;
  plan.expected = draft.expected;
  plan.dose = draft.dose;
  plan.marked = draft.marked;
  plan.mayHaveNone = draft.mayHaveNone;
  plan.alsoPrefer = draft.alsoPrefer;
  plan.stopping = draft.stopping;
  plan.evenings = draft.evenings;
  plan.wave = draft.wave;
  plan.expectationPc = draft.expectationPc;
  plan.rounds = setup.flights();
  plan.cupMl = draft.cupMl;
  plan.ceilingGrams = facts.rules.ceilingGrams;
  plan.country = facts.rules.country;
  plan.panelPlanned = static_cast<int>(facts.panel.size());
  plan.makersPlanned = static_cast<int>(facts.makers.size());
  plan.places = facts.places();
  plan.spares = draft.spares;
  plan.hasPourer = !facts.pourerName.empty();
  plan.routine = draft.routine;
  plan.giveAways = draft.giveAways;
  plan.serving = draft.serving;
  for (const DraftLot& each : facts.lots) plan.lots.push_back(each.lot);
  if (draft.method == Method::sheet) {
    const int cups = planning::codedCups(setup);
    plan.sheet = SheetPlan{planning::sheetOrders(planning::samplesOf(setup), cups, plan.places), draft.sheet.hasDuplicate, draft.sheet.pauseSeconds, draft.sheet.cleanser};
    plan.items = numbered(draft.sheet.items, cups);
  } else {
    plan.items = sheetOf(draft.method, draft.mayHaveNone, draft.alsoPrefer);
  }
  return plan;
}

void holdBottles(SQLite::Database& db, std::int64_t session, const DraftFacts& facts, Millis at) {
  const planning::Amounts amounts = planning::amountsOf(setupOf(facts));
  for (std::size_t i = 0; i < facts.lots.size(); ++i)
    if (const int bottles = amounts.lots[i].bottles.value_or(0); bottles > 0)
      store::run(db, "INSERT INTO stock_move (lot_id, session_id, at, kind, bottles) SELECT id, ?, ?, 'held', ? FROM lot WHERE uid = ?", session, at, -bottles,
                 facts.lots[i].lot.lot.text);
}

void writeInvited(SQLite::Database& db, std::int64_t session, const DraftFacts& facts) {
  const auto put = [&](const TasterId& taster, bool pours, bool maker) {
    store::run(db, "INSERT INTO invited SELECT ?, id, ?, ? FROM taster WHERE uid = ?", session, pours ? 1 : 0, maker ? 1 : 0, taster.text);
  };
  for (const DraftPerson& person : facts.panel) put(person.taster, false, false);
  for (const DraftPerson& person : facts.makers) put(person.taster, false, true);
  if (facts.draft.pourer) put(*facts.draft.pourer, true, false);
}

void writePromises(SQLite::Database& db, std::int64_t session, const std::vector<Promised>& promises) {
  for (const Promised& each : promises) {
    auto row = bound(db, "INSERT INTO promise (session_id, outcome, text, salt) VALUES (?, ?, ?, ?)", session, std::string(nameOf(each.outcome)), each.text);
    store::bindBlob(row, 4, each.salt);
    row.exec();
  }
}

}  // namespace

Sealed sealDrawnFrom(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const blinding::Seed& seed, blinding::Streams streams) {
  return store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    // Read inside the step that writes: what was checked is what is sealed.
    const DraftFacts facts = draftFacts(store, session);
    requireReady(facts);
    Plan plan = planOf(facts);
    std::vector<Promised> promises;
    for (const auto& [outcome, words] : facts.draft.promises) {
      promises.push_back({outcome, chance.bytes<16>(), words});
      plan.promiseDigests[outcome] = tasting::digestOf(promises.back().salt, words);
    }
    blinding::Drawn drawn = blinding::draw(shapeOf(plan), streams);
    plan.cups = drawn.cups;
    const canon::Json planText = store::planJson(plan);
    const canon::Digest planHash = blinding::planHash(planText);
    blinding::KeyContents key{seed, chance.bytes<32>(), "chacha20/1", std::move(drawn.lines), blinding::custodyOf(plan.routine)};
    const canon::Digest commitment = blinding::commitment(key, planHash);
    const std::string mark = blinding::sealMark(commitment);
    const Millis at = clock.now();
    store::Log::append(db, id, at, Event::sealed, {{"commitment", canon::hex(commitment)}, {"plan", canon::hex(planHash)}, {"schema", 1}});
    writePlan(db, id, plan, canon::canonical(planText), commitment, mark);
    writeInvited(db, id, facts);
    writePromises(db, id, promises);
    holdBottles(db, id, facts, at);
    vault::put(db, id, blinding::seal(std::move(key), chance));
    store::run(db, "DELETE FROM session_draft WHERE session_id = ?", id);
    return Sealed{mark, canon::hex(commitment)};
  });
}

Sealed seal(store::Store& store, Clock& clock, Chance& chance, const SessionId& session) {
  const blinding::Seed seed = chance.bytes<32>();
  return sealDrawnFrom(store, clock, chance, session, seed, blinding::streamsFrom(seed));
}

}  // namespace oddglass::session
