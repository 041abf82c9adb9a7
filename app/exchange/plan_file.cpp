#include "exchange/plan_file.h"

#include "domain/flight_form.h"
#include "domain/text.h"
#include "exchange/shelf_json.h"
#include "session/drafts.h"
#include "session/follow.h"
#include "shelf/beverages.h"
#include "shelf/folded.h"
#include "shelf/lots.h"
#include "shelf/people.h"
#include "store/together.h"

#include <algorithm>

namespace oddglass::exchange {
namespace {

/// The one id that `matches` gives; refused when it gives none or several.
template <class Id>
Id onlyOne(const Node& node, const std::vector<Id>& found, const char* what) {
  const Problem::Values values{{"what", what}, {"text", node.json().get<std::string>()}};
  if (found.empty()) node.refuse(Trouble::unknown, values);
  if (found.size() > 1) node.refuse(Trouble::ambiguous, values);
  return found.front();
}

LotId lotNamed(store::Store& store, const Node& node) {
  const std::string text = node.text(402, false);
  return onlyOne(node, shelf::lotsCalled(store, text), "lot");
}

TasterId tasterNamed(store::Store& store, const Node& node) {
  const std::string text = node.text(100, false);
  std::vector<TasterId> found;
  for (const Taster& taster : shelf::people(store))
    if (taster.id.text == text || shelf::folded(taster.name) == shelf::folded(text)) found.push_back(taster.id);
  return onlyOne(node, found, "taster");
}

// A question that is left out follows from the method; a method that is left out, from the question until the recommendation is known.
void readAsking(const Node& node, Draft& draft) {
  const auto question = node.maybe("question"), method = node.maybe("method");
  if (question) draft.question = question->choice<Question>();
  if (method) draft.method = method->choice<Method>();
  draft.methodChosen = method.has_value();
  if (question && !method) draft.method = usualMethod(draft.question);
  if (method && !question) draft.question = namesAThing(draft.method) ? Question::more : draft.method == Method::preference ? Question::prefer : draft.method == Method::sheet ? Question::lacks : Question::differ;
}

// What only some methods have; whether it goes with the method is looked at before the seal.
void readExtras(const Node& node, Draft& draft) {
  if (const auto attribute = node.maybe("attribute")) draft.attribute = attribute->text(60);
  if (const auto expected = node.maybe("expected")) draft.expected = Slot{expected->small(1, 3)};
  if (const auto dose = node.maybe("dose")) draft.dose = dose->text(60);
  if (const auto marked = node.maybe("marked")) draft.marked = Slot{marked->small(1, draft.method == Method::sheet ? 40 : 2)};
  if (const auto none = node.maybe("may_have_none")) draft.mayHaveNone = none->truth();
  if (const auto prefer = node.maybe("also_prefer")) draft.alsoPrefer = prefer->truth();
  if (const auto stopping = node.maybe("stopping")) {
    stopping->onlyKeys({"share_pm", "beta_pm"});
    draft.stopping.emplace();
    if (const auto share = stopping->maybe("share_pm")) draft.stopping->sharePm = share->small(1, 1000);
    if (const auto beta = stopping->maybe("beta_pm")) draft.stopping->betaPm = beta->small(10, 500);
  }
  if (const auto evenings = node.maybe("evenings")) draft.evenings = evenings->small(1, 6);
  if (const auto wave = node.maybe("wave")) draft.wave = wave->small(0, 60);
  if (const auto routine = node.maybe("routine")) draft.routine = routine->choice<Routine>();
  if (const auto serving = node.maybe("serving")) {
    serving->onlyKeys({"vessel", "temperature_c", "mouthful"});
    if (const auto vessel = serving->maybe("vessel")) draft.serving.vessel = vessel->text(60);
    if (const auto temperature = serving->maybe("temperature_c")) draft.serving.temperatureC = temperature->small(coldestServed, warmestServed);
    if (const auto mouthful = serving->maybe("mouthful")) draft.serving.mouthful = mouthful->choice<Mouthful>();
  }
  if (const auto lingers = node.maybe("lingers")) draft.lingers = lingers->truth();
  if (const auto expectation = node.maybe("expectation_pc")) draft.expectationPc = expectation->small(1, 99);
}

SheetItem questionFrom(const Node& node) {
  node.onlyKeys({"kind", "required", "part", "word", "limit", "main"});
  SheetItem item;
  item.kind = node.at("kind").choice<ItemKind>();
  if (const auto required = node.maybe("required")) item.required = required->truth();
  if (const auto part = node.maybe("part")) item.part = part->choice<Part>();
  if (const auto word = node.maybe("word")) item.word = word->text(60);
  if (const auto limit = node.maybe("limit")) item.limit = limit->small(1, 1000);
  if (const auto isMain = node.maybe("main")) item.isMain = isMain->truth();
  return item;
}

// What only a score sheet has.
void readSheet(const Node& node, Draft& draft) {
  node.onlyKeys({"items", "roles", "duplicate", "cups_at_once", "pause_s", "cleanser"});
  for (const Node& each : node.at("items").list(200)) draft.sheet.items.push_back(questionFrom(each));
  if (const auto roles = node.maybe("roles"))
    for (const Node& each : roles->list(40)) draft.sheet.roles.push_back(each.choice<LotRole>());
  if (const auto duplicate = node.maybe("duplicate")) draft.sheet.hasDuplicate = duplicate->truth();
  if (const auto cups = node.maybe("cups_at_once")) draft.sheet.cupsAtOnce = cups->small(2, 12);
  if (const auto pause = node.maybe("pause_s")) draft.sheet.pauseSeconds = pause->small(0, 600);
  if (const auto cleanser = node.maybe("cleanser")) draft.sheet.cleanser = cleanser->text(60);
}

// A file that says nothing of give-aways was written before they were looked at, or by hand: the plan may be sealed so, and its record says that nobody looked.
void readGiveAways(const Node& node, Draft& draft) {
  const auto found = node.maybe("give_aways");
  draft.giveAwaysUnasked = !found;
  if (!found) return;
  found->onlyKeys({"colour", "haze", "foam", "fizz", "temperature", "level", "sediment", "vessel", "had_before"});
  draft.giveAways.emplace();
  for (const GiveAway check : allOf<GiveAway>())
    if (const auto way = found->maybe(std::string(nameOf(check)).c_str())) draft.giveAways->emplace(check, way->choice<WayOut>());
}

Draft draftFrom(store::Store& store, const Node& node) {
  node.onlyKeys({"title", "guest_title", "question", "method", "lots", "tasters", "pourer", "pourer_name", "rounds", "cup_ml", "spares", "alpha_pm",
                 "seeks", "limit_pm", "promises", "care_settled", "attribute", "expected", "dose", "marked", "may_have_none", "also_prefer", "stopping", "evenings",
                 "wave", "routine", "lingers", "expectation_pc", "sheet", "give_aways", "serving"});
  Draft draft;
  draft.title = node.at("title").text(200, false);
  if (const auto title = node.maybe("guest_title")) draft.guestTitle = title->text(200);
  readAsking(node, draft);
  for (const Node& each : node.at("lots").list(40)) draft.lots.push_back(lotNamed(store, each));
  for (const Node& each : node.at("tasters").list(200)) draft.tasters.push_back(tasterNamed(store, each));
  if (const auto pourer = node.maybe("pourer")) draft.pourer = tasterNamed(store, *pourer);
  if (const auto name = node.maybe("pourer_name")) draft.pourerName = name->text(100);
  if (const auto rounds = node.maybe("rounds")) draft.rounds = rounds->small(1, 20);
  if (const auto cup = node.maybe("cup_ml")) draft.cupMl = cup->small(5, 200);
  if (const auto spares = node.maybe("spares")) draft.spares = spares->small(0, 12);
  if (const auto alpha = node.maybe("alpha_pm")) draft.alphaPm = alpha->small(1, 200);
  if (const auto sought = node.maybe("seeks")) draft.sought = sought->choice<Sought>();
  if (const auto limit = node.maybe("limit_pm")) draft.limitPm = limit->small(1, 500);
  if (const auto promises = node.maybe("promises")) {
    promises->onlyKeys({"shown", "not_shown", "alike"});
    for (Outcome outcome : allOf<Outcome>())
      if (const auto words = promises->maybe(std::string(nameOf(outcome)).c_str())) draft.promises[outcome] = words->text(500);
  }
  readExtras(node, draft);
  if (const auto sheet = node.maybe("sheet")) readSheet(*sheet, draft);
  readGiveAways(node, draft);
  if (const auto care = node.maybe("care_settled")) draft.careSettled = care->truth();
  return draft;
}

}  // namespace

SessionId planFromFile(store::Store& store, Clock& clock, Chance& chance, const std::filesystem::path& path, CameFrom as) {
  const Document document = readDocument(path);
  const Node file(document);
  requireForm(file);
  for (const char* key : {"sessions", "series"})
    if (file.has(key) && !file.at(key).json().empty())
      file.at(key).refuse(Trouble::notAChoice, {{"text", key}, {"choices", "plan, beverages, lots, notes, tasters, words"}});
  store::Together together(store);
  Brought brought;
  bringShelf(store, clock, file, brought);
  const Node plan = file.at("plan");
  Draft draft = draftFrom(store, plan);
  draft.id = session::newDraft(store, clock, chance, draft.title, as);
  try {
    session::saveDraft(store, clock, draft);
    // What the file says of a method that it does not name is kept, so that it can be said when it does not go with the recommended one.
    if (const auto method = session::methodToFollow(draft, session::recommendationFor(session::draftFacts(store, draft.id)))) {
      draft.method = *method;
      session::saveDraft(store, clock, draft);
    }
  } catch (const Problem& problem) {
    const auto part = plan.maybe(problem.argument().c_str());
    (part ? *part : plan).refuse(problem.trouble(), problem.values());
  }
  together.commit();
  return draft.id;
}

}  // namespace oddglass::exchange
