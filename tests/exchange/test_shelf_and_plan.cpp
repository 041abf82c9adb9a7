#include "exchange/plan_file.h"
#include "exchange/take_in.h"
#include "refused.h"
#include "shelf/notes.h"
#include "told.h"

using namespace oddglass;
using namespace oddglass::exchange;
using canon::Json;

namespace {

const char* const shelfText = R"({"format": "oddglass", "version": 1, "about": "written by hand",
 "tasters": [{"id": "11111111111111111111111111111111", "name": "Ilse Quarrel", "is_brewer": true}, {"id": "22222222222222222222222222222222", "name": "Bo Lind", "nickname": "Reed"}],
 "beverages": [
  {"id": "33333333333333333333333333333333", "origin": "batch", "kind": "beer", "name": "Low Tide", "og": 10480, "fg": 10110, "abv_bp": 490, "abv_from": "gravities",
   "ingredients": "known", "allergens": ["gluten"], "makers": ["11111111111111111111111111111111"]},
  {"id": "44444444444444444444444444444444", "origin": "reference", "kind": "beer", "name": "Harbour Pale", "abv_bp": 500, "abv_from": "label"}],
 "lots": [
  {"id": "55555555555555555555555555555555", "beverage": "33333333333333333333333333333333", "name": "bottled 14 March", "packaged_on": "2026-03-14", "bottle_ml": 330, "bottles": 24},
  {"id": "66666666666666666666666666666666", "beverage": "44444444444444444444444444444444", "name": "bought in May", "best_before": "2026-12-01", "bottle_ml": 330, "bottles": 12}],
 "notes": [{"id": "77777777777777777777777777777777", "beverage": "33333333333333333333333333333333", "done_on": "2026-03-01", "kind": "reading", "gravity": 10110}]
})";

Json planJson() {
  return {{"title", "Low Tide or not"}, {"guest_title", "Three glasses"}, {"lots", {"Low Tide", "Harbour Pale, bought in May"}}, {"tasters", {"Bo Lind", "11111111111111111111111111111111"}},
          {"rounds", 2},               {"cup_ml", 20},                   {"spares", 2},                                         {"promises", {{"shown", "brew it again"}}},
          {"care_settled", true}};
}

struct Desk : Elsewhere {
  std::filesystem::path write(const std::string& text) {
    const auto path = folder / "hand.json";
    std::ofstream(path, std::ios::binary) << text;
    return path;
  }
  Problem refusedPlan(const Json& plan) {
    return problemOf([&] { planFromFile(*store, clock, chance, write(Json{{"format", "oddglass"}, {"version", 1}, {"plan", plan}}.dump())); });
  }
};

}  // namespace

TEST_CASE("A shelf written by hand is put up, once") {
  Desk desk;
  const Brought brought = put(*desk.store, desk.clock, desk.write(shelfText));
  CHECK(brought.beverages == 2);
  CHECK(brought.lots == 2);
  CHECK(brought.notes == 1);
  CHECK(brought.tasters == 2);
  CHECK(brought.alreadyThere == 0);
  const Beverage drink = shelf::beverage(*desk.store, {std::string(32, '3')});
  CHECK(drink.originalGravity == 10480);
  CHECK(drink.ingredients.allergens == std::set{Allergen::gluten});
  CHECK(drink.makers == std::vector{TasterId{std::string(32, '1')}});
  CHECK(shelf::beverage(*desk.store, {std::string(32, '4')}).ingredients.how == IngredientsKnown::notKnown);
  CHECK(shelf::lot(*desk.store, {std::string(32, '5')}).bottles == 24);
  CHECK(shelf::notesOf(*desk.store, drink.id).at(0).gravity == 10110);
  const std::string before = desk.all();
  CHECK(put(*desk.store, desk.clock, desk.write(shelfText)).alreadyThere == 7);
  CHECK(desk.all() == before);
}

TEST_CASE("A shelf with one wrong record is refused whole, with its line") {
  Desk desk;
  std::string text = shelfText;
  text.replace(text.find("2026-03-14"), 10, "2026-03-40");
  const Problem problem = problemOf([&] { put(*desk.store, desk.clock, desk.write(text)); });
  CHECK(problem.trouble() == Trouble::notADay);
  CHECK(problem.argument() == "lots/0/packaged_on");
  CHECK(said(problem, "line") == "8");
  CHECK(shelf::people(*desk.store).empty());
}

TEST_CASE("A shelf file does not bring sessions") {
  Told told;
  CHECK(problemOf([&] { put(*told.store, told.clock, told.write(told.json())); }).argument() == "sessions");
}

TEST_CASE("A plan names drinks and people by id or name, and becomes a draft") {
  Desk desk;
  put(*desk.store, desk.clock, desk.write(shelfText));
  const SessionId id = planFromFile(*desk.store, desk.clock, desk.chance, desk.write(Json{{"format", "oddglass"}, {"version", 1}, {"plan", planJson()}}.dump()));
  const Draft draft = session::draft(*desk.store, id);
  CHECK(draft.title == "Low Tide or not");
  CHECK(draft.guestTitle == "Three glasses");
  CHECK(draft.lots == std::vector{LotId{std::string(32, '5')}, LotId{std::string(32, '6')}});
  CHECK(draft.tasters == std::vector{TasterId{std::string(32, '2')}, TasterId{std::string(32, '1')}});
  CHECK(draft.rounds == 2);
  CHECK(draft.cupMl == 20);
  CHECK(draft.spares == 2);
  CHECK(draft.promises == Promises{{Outcome::shown, "brew it again"}});
  CHECK(draft.careSettled);
  CHECK_FALSE(draft.giveAways);
  CHECK(draft.giveAwaysUnasked);  // the file says nothing of them
}

TEST_CASE("A plan may bring its shelf along") {
  Desk desk;
  Json file = Json::parse(shelfText);
  file["plan"] = planJson();
  const SessionId id = planFromFile(*desk.store, desk.clock, desk.chance, desk.write(file.dump()));
  CHECK(session::draft(*desk.store, id).lots.size() == 2);
}

TEST_CASE("A wrong plan names its field, and neither plan nor shelf is kept") {
  Desk desk;
  put(*desk.store, desk.clock, desk.write(shelfText));
  const auto with = [&](const char* key, Json value) {
    Json plan = planJson();
    plan[key] = std::move(value);
    return desk.refusedPlan(plan);
  };
  CHECK(with("lots", {"Low Tide", "Nothing Like It"}).trouble() == Trouble::unknown);
  CHECK(with("lots", {"Low Tide", "Nothing Like It"}).argument() == "plan/lots/1");
  CHECK(with("tasters", {"Nobody"}).argument() == "plan/tasters/0");
  CHECK(with("rounds", 0).argument() == "plan/rounds");
  CHECK(with("rounds", 21).trouble() == Trouble::outOfRange);
  CHECK(with("cup_ml", 500).argument() == "plan/cup_ml");
  CHECK(with("limit_pm", 600).argument() == "plan/limit_pm");
  CHECK(with("seeks", "glory").trouble() == Trouble::notAChoice);
  CHECK(with("title", "").trouble() == Trouble::empty);
  CHECK(with("title", std::string(201, 'x')).trouble() == Trouble::tooLong);
  CHECK(with("colour", 1).argument() == "plan/colour");
  CHECK(with("seed", std::string(64, '0')).argument() == "plan/seed");
  CHECK(session::sessions(*desk.store).empty());

  Lot second = shelf::lot(*desk.store, {std::string(32, '5')});
  second.id = {};
  second.name = "bottled in June";
  shelf::save(*desk.store, desk.chance, second);
  CHECK(with("rounds", 1).trouble() == Trouble::ambiguous);
}

TEST_CASE("A plan may hold all that a method has, by the keys of the sealed plan") {
  Desk desk;
  put(*desk.store, desk.clock, desk.write(shelfText));
  const auto drafted = [&](const Json& more) {
    Json plan = planJson();
    plan.update(more);
    return session::draft(*desk.store, planFromFile(*desk.store, desk.clock, desk.chance, desk.write(Json{{"format", "oddglass"}, {"version", 1}, {"plan", plan}}.dump())));
  };
  const Draft pair = drafted({{"method", "pair"}, {"attribute", "bitter"}, {"expected", 2}, {"stopping", {{"share_pm", 400}, {"beta_pm", 100}}}, {"evenings", 2}, {"wave", 6}, {"expectation_pc", 65}});
  CHECK(pair.question == Question::more);
  CHECK(pair.method == Method::pair);
  CHECK(pair.attribute == "bitter");
  CHECK(pair.expected == Slot{2});
  CHECK(pair.stopping == Stopping{400, 100});
  CHECK(pair.evenings == 2);
  CHECK(pair.wave == 6);
  CHECK(pair.expectationPc == 65);
  const Draft liked = drafted({{"question", "prefer"}, {"may_have_none", true}, {"lingers", true}});
  CHECK(liked.method == Method::preference);
  CHECK(liked.mayHaveNone);
  CHECK(liked.lingers);
  const Draft duoTrio = drafted({{"method", "duo-trio"}, {"marked", 1}, {"also_prefer", true}, {"stopping", Json::object()}});
  CHECK(duoTrio.question == Question::differ);
  CHECK(duoTrio.marked == Slot{1});
  CHECK(duoTrio.alsoPrefer);
  CHECK(duoTrio.stopping == Stopping{});
  CHECK(duoTrio.methodChosen);
  CHECK(drafted({{"question", "more"}}).method == Method::pair);
  // Nothing is said of the method: the recommended one, which gives way when a taste lingers.
  CHECK(drafted(Json::object()).method == Method::tetrad);
  CHECK_FALSE(drafted(Json::object()).methodChosen);
  CHECK(drafted({{"lingers", true}}).method == Method::triangle);

  const auto refused = [&](const Json& more) {
    Json plan = planJson();
    plan.update(more);
    return desk.refusedPlan(plan).argument();
  };
  CHECK(refused({{"method", "quartet"}}) == "plan/method");
  CHECK(refused({{"method", "triangle"}, {"question", "prefer"}}) == "plan/method");
  CHECK(refused({{"method", "tetrad"}, {"question", "more"}, {"attribute", "bitter"}}) == "plan/method");
  CHECK(refused({{"attribute", std::string(61, 'x')}}) == "plan/attribute");
  CHECK(refused({{"expected", 4}}) == "plan/expected");
  CHECK(refused({{"marked", 3}}) == "plan/marked");
  CHECK(refused({{"stopping", {{"share_pm", 0}}}}) == "plan/stopping/share_pm");
  CHECK(refused({{"stopping", {{"beta_pm", 501}}}}) == "plan/stopping/beta_pm");
  CHECK(refused({{"stopping", {{"alpha_pm", 50}}}}) == "plan/stopping/alpha_pm");
  CHECK(refused({{"evenings", 7}}) == "plan/evenings");
  CHECK(refused({{"wave", 61}}) == "plan/wave");
  CHECK(refused({{"expectation_pc", 100}}) == "plan/expectation_pc");
  CHECK(refused({{"give_aways", {{"smell", "mend"}}}}) == "plan/give_aways/smell");
  CHECK(refused({{"give_aways", {{"fizz", "hide"}}}}) == "plan/give_aways/fizz");
  CHECK(refused({{"give_aways", "none"}}) == "plan/give_aways");
  CHECK(refused({{"also_prefer", 1}}) == "plan/also_prefer");
}
