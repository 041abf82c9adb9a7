#include "session/drafts.h"

#include "canon/digest.h"
#include "canon/folded.h"
#include "domain/flight_form.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "domain/text.h"
#include "store/log.h"
#include "store/plan_json.h"

#include <algorithm>
#include <set>

namespace oddglass::session {
namespace {

using store::bound;

std::string text(int value) { return std::to_string(value); }

void within(const char* field, int value, int low, int high) {
  if (value < low || value > high) throw Problem(Trouble::outOfRange, field, {{"text", text(value)}, {"low", text(low)}, {"high", text(high)}});
}

std::string line(const char* field, const std::string& words, std::size_t limit) {
  const std::string clean = cleaned(words);
  if (lettersIn(clean) > limit) throw Problem(Trouble::tooLong, field, {{"limit", std::to_string(limit)}});
  return clean;
}

void requireThere(SQLite::Database& db, const char* table, const char* field, const std::string& uid) {
  auto row = bound(db, ("SELECT 1 FROM " + std::string(table) + " WHERE uid = ?").c_str(), uid);
  if (!row.executeStep()) throw Problem(Trouble::unknown, field, {{"what", field}, {"text", uid}});
}

void requireDraft(SQLite::Database& db, std::int64_t session) {
  if (store::stateOf(db, session) != State::draft) throw Problem(Trouble::alreadySealed, "session");
}

Draft readDraft(SQLite::Database& db, std::int64_t session, const SessionId& id) {
  requireDraft(db, session);
  auto row = bound(db, "SELECT d.body, s.title, s.guest_title FROM session_draft d JOIN session s ON s.id = d.session_id WHERE s.id = ?", session);
  if (!row.executeStep()) throw Problem(Trouble::unknown, "session");
  Draft draft = store::draftFrom(canon::Json::parse(row.getColumn(0).getString()));
  draft.id = id;
  draft.title = row.getColumn(1).getString();
  draft.guestTitle = row.getColumn(2).getString();
  return draft;
}

std::set<TasterId> makersOf(SQLite::Database& db, const std::vector<LotId>& lots) {
  std::set<TasterId> makers;
  for (const LotId& lot : lots) {
    auto rows = bound(db, R"sql(
      SELECT t.uid FROM lot l JOIN made_by m ON m.beverage_id = l.beverage_id JOIN taster t ON t.id = m.taster_id WHERE l.uid = ?)sql", lot.text);
    while (rows.executeStep()) makers.insert({rows.getColumn(0).getString()});
  }
  return makers;
}

// A role that was not chosen: a bought drink is what the others are held against.
LotRole roleOf(const Draft& draft, std::size_t lot, Origin origin) {
  if (lot < draft.sheet.roles.size()) return draft.sheet.roles[lot];
  return draft.question == Question::lacks && origin == Origin::reference ? LotRole::reference : LotRole::compared;
}

DraftLot lotNow(SQLite::Database& db, const LotId& id, int slot) {
  auto row = bound(db, R"sql(
    SELECT b.name, l.name, b.origin, b.kind, b.abv_bp, b.ingredients, l.bottle_ml, coalesce(l.packaged_on, ''), coalesce(l.best_before, ''), l.storage, b.id,
           (SELECT coalesce(sum(bottles), 0) FROM stock_move m WHERE m.lot_id = l.id)
      FROM lot l JOIN beverage b ON b.id = l.beverage_id WHERE l.uid = ?)sql", id.text);
  if (!row.executeStep()) throw Problem(Trouble::unknown, "lot", {{"what", "lot"}, {"text", id.text}});
  DraftLot now;
  PlannedLot& lot = now.lot;
  lot.slot = {slot};
  lot.lot = id;
  lot.beverageName = row.getColumn(0).getString();
  lot.lotName = row.getColumn(1).getString();
  lot.origin = named<Origin>(row.getColumn(2).getString()).value_or(Origin::batch);
  lot.kind = named<Kind>(row.getColumn(3).getString()).value_or(Kind::other);
  if (!row.getColumn(4).isNull()) lot.abvBp = row.getColumn(4).getInt();
  lot.ingredients.how = named<IngredientsKnown>(row.getColumn(5).getString()).value_or(IngredientsKnown::notKnown);
  lot.bottleMl = row.getColumn(6).getInt();
  lot.packagedOn = row.getColumn(7).getString();
  lot.bestBefore = row.getColumn(8).getString();
  lot.storage = row.getColumn(9).getString();
  now.freeBottles = row.getColumn(11).getInt();
  auto allergens = bound(db, "SELECT allergen FROM beverage_allergen WHERE beverage_id = ?", row.getColumn(10).getInt64());
  while (allergens.executeStep())
    if (const auto allergen = named<Allergen>(allergens.getColumn(0).getString())) lot.ingredients.allergens.insert(*allergen);
  return now;
}

std::string tasterName(SQLite::Database& db, const TasterId& id) {
  auto row = bound(db, "SELECT name FROM taster WHERE uid = ?", id.text);
  return row.executeStep() ? row.getColumn(0).getString() : std::string();
}

// Whoever is typed as the pourer and stands among the people is that person, with all that follows from it.
std::optional<TasterId> personCalled(SQLite::Database& db, const std::string& name) {
  if (name.empty()) return std::nullopt;
  const std::string wanted = canon::folded(name);
  SQLite::Statement rows(db, "SELECT uid, name FROM taster ORDER BY id");
  while (rows.executeStep())
    if (canon::folded(rows.getColumn(1).getString()) == wanted) return TasterId{rows.getColumn(0).getString()};
  return std::nullopt;
}

}  // namespace

SessionId newDraft(store::Store& store, Clock& clock, Chance& chance, const std::string& title, CameFrom cameFrom) {
  const std::string clean = line("title", title, 200);
  const SessionId id{canon::hex(chance.bytes<16>())};
  store::write(store, [&](SQLite::Database& db) {
    store::run(db, "INSERT INTO session (uid, title, came_from, created_at) VALUES (?, ?, ?, ?)", id.text, clean, std::string(nameOf(cameFrom)), clock.now());
    store::run(db, "INSERT INTO session_draft VALUES (?, ?, ?)", db.getLastInsertRowid(), canon::canonical(store::draftJson({})), clock.now());
  });
  return id;
}

void saveDraft(store::Store& store, Clock& clock, const Draft& given) {
  Draft draft = given;
  draft.title = line("title", draft.title, 200);
  draft.guestTitle = line("guest_title", draft.guestTitle, 200);
  draft.pourerName = line("pourer", draft.pourerName, 100);
  draft.attribute = line("attribute", draft.attribute, 60);
  draft.dose = line("dose", draft.dose, 60);
  draft.serving.vessel = line("vessel", draft.serving.vessel, 60);
  if (draft.serving.temperatureC) within("temperature_c", *draft.serving.temperatureC, coldestServed, warmestServed);
  for (auto& [outcome, words] : draft.promises) words = line("promises", words, 500);
  std::erase_if(draft.promises, [](const auto& each) { return each.second.empty(); });
  requireAnswered(draft);
  within("rounds", draft.rounds, 1, 20);
  within("cup_ml", draft.cupMl, 5, 200);
  within("spares", draft.spares, 0, 12);
  within("alpha_pm", draft.alphaPm, 1, 200);
  within("evenings", draft.evenings, 1, 6);
  within("wave", draft.wave, 0, 60);
  within("cups_at_once", draft.sheet.cupsAtOnce, 2, 12);
  within("pause_s", draft.sheet.pauseSeconds, 0, 600);
  draft.sheet.cleanser = line("cleanser", draft.sheet.cleanser, 60);
  for (SheetItem& item : draft.sheet.items) item.word = line("items", item.word, 60);
  if (draft.sheet.items.size() > 200) throw Problem(Trouble::sheetEmpty, "items");
  if (draft.expected) within("expected", draft.expected->value, 1, 3);
  if (draft.marked) within("marked", draft.marked->value, 1, 40);
  if (draft.expectationPc) within("expectation_pc", *draft.expectationPc, 1, 99);
  if (draft.stopping) {
    within("share_pm", draft.stopping->sharePm, 1, 1000);
    within("beta_pm", draft.stopping->betaPm, 10, 500);
  }
  if (draft.limitPm) {
    if (*draft.limitPm > 500) throw Problem(Trouble::limitTooWide, "limit_pm");
    within("limit_pm", *draft.limitPm, 1, 500);
  }
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, draft.id);
    requireDraft(db, id);
    for (const LotId& lot : draft.lots) requireThere(db, "lot", "lot", lot.text);
    std::set<TasterId> once;
    for (const TasterId& taster : draft.tasters) {
      requireThere(db, "taster", "taster", taster.text);
      if (!once.insert(taster).second) throw Problem(Trouble::alreadyThere, "tasters", {{"text", tasterName(db, taster)}});
    }
    if (draft.pourer) requireThere(db, "taster", "pourer", draft.pourer->text);
    store::run(db, "UPDATE session SET title = ?, guest_title = ? WHERE id = ?", draft.title, draft.guestTitle, id);
    store::run(db, "UPDATE session_draft SET body = ?, changed_at = ? WHERE session_id = ?", canon::canonical(store::draftJson(draft)), clock.now(), id);
  });
}

Draft draft(store::Store& store, const SessionId& session) {
  return store::read(store, [&](SQLite::Database& db) { return readDraft(db, store::sessionRow(db, session), session); });
}

void discardDraft(store::Store& store, const SessionId& session) {
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    requireDraft(db, id);
    store::run(db, "DELETE FROM session WHERE id = ?", id);
  });
}

DraftFacts draftFacts(store::Store& store, const SessionId& session) {
  return store::read(store, [&](SQLite::Database& db) {
    DraftFacts facts;
    facts.draft = readDraft(db, store::sessionRow(db, session), session);
    const Draft& draft = facts.draft;
    for (const LotId& lot : draft.lots) {
      facts.lots.push_back(lotNow(db, lot, static_cast<int>(facts.lots.size()) + 1));
      if (draft.method == Method::sheet) facts.lots.back().lot.role = roleOf(draft, facts.lots.size() - 1, facts.lots.back().lot.origin);
    }
    const auto makers = makersOf(db, draft.lots);
    for (const TasterId& taster : draft.tasters) {
      // Whoever tastes alone hides the cups too; that person's answers are the data, as a maker's are.
      const DraftPerson person{taster, tasterName(db, taster), makers.contains(taster) || draft.routine == Routine::alone};
      if (person.name.empty()) continue;
      (person.isMaker ? facts.makers : facts.panel).push_back(person);
    }
    if (!draft.pourer) facts.draft.pourer = personCalled(db, draft.pourerName);
    if (draft.pourer) {
      facts.pourerName = tasterName(db, *draft.pourer);
      facts.pourerIsMaker = makers.contains(*draft.pourer);
    } else {
      facts.pourerName = draft.pourerName;
    }
    auto rules = bound(db, "SELECT ceiling_g, country FROM house_rules");
    if (rules.executeStep()) facts.rules = {rules.getColumn(0).getInt(), rules.getColumn(1).getString()};
    return facts;
  });
}

bool isCoded(const DraftFacts& facts) {
  return std::ranges::any_of(facts.lots, [](const DraftLot& each) { return each.lot.role == LotRole::compared; });
}

planning::Setup setupOf(const DraftFacts& facts) {
  planning::Setup setup;
  setup.panel = static_cast<int>(facts.panel.size());
  setup.makers = static_cast<int>(facts.makers.size());
  setup.spares = facts.draft.spares;
  setup.method = facts.draft.method;
  setup.routine = facts.draft.routine;
  setup.thingNamed = !facts.draft.attribute.empty();
  setup.lingers = facts.draft.lingers;
  if (namesAThing(facts.draft.method)) setup.expected = facts.draft.expected;
  setup.marked = facts.draft.marked;
  setup.mayHaveNone = facts.draft.mayHaveNone;
  setup.stopping = facts.draft.stopping;
  setup.evenings = facts.draft.evenings;
  setup.wave = facts.draft.wave;
  setup.rounds = facts.draft.rounds;
  setup.cupMl = facts.draft.cupMl;
  for (const DraftLot& each : facts.lots) setup.lots.push_back({each.lot.abvBp, each.lot.bottleMl, each.freeBottles, each.lot.role});
  if (facts.draft.method == Method::sheet) {
    const SheetDraft& sheet = facts.draft.sheet;
    const auto perCup = std::ranges::count_if(sheet.items, [](const SheetItem& item) { return answerForm(item.kind).isScored; });
    setup.sheet = planning::SheetSetup{sheet.hasDuplicate, sheet.cupsAtOnce, static_cast<int>(perCup), sheet.pauseSeconds};
  }
  setup.alphaPm = facts.draft.alphaPm;
  setup.sought = facts.draft.sought;
  setup.limitPm = facts.draft.limitPm;
  setup.ceilingGrams = facts.rules.ceilingGrams;
  setup.country = facts.rules.country;
  return setup;
}

}  // namespace oddglass::session
