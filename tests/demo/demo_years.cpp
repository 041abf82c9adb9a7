#include "demo/demo_years.h"

#include "demo/demo_sheets.h"
#include "domain/day.h"
#include "session/sittings.h"
#include "shelf/notes.h"
#include "shelf/series.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

using namespace oddglass;

namespace two_years {
namespace {

/// What is true of a drink on a day.
struct Truth {
  double honey = 0, sour = 0, cardboard = 0, liking = 0;
  bool isOwn = true;
};

class Model {
 public:
  explicit Model(unsigned seed) : engine_(seed) {
    for (int person = 0; person < people; ++person)
      for (const char* word : words) habit_[{person, word}] = normal(8);
  }

  void newDay() {
    for (const char* word : words) day_[word] = normal(4);
    likingOfDay_ = normal(0.3);
  }

  /// `person` 0 to 5 is a friend, 6 the maker; `drink` names what is in the cup, for what this person makes of it.
  int line(int person, const std::string& word, const std::string& drink, double truth) {
    const auto [own, isNew] = ownWay_.try_emplace({person, word + drink}, 0.0);
    if (isNew) own->second = normal(3);
    return std::clamp(static_cast<int>(std::lround(truth + habit_.at({person, word}) + own->second + day_.at(word) + normal(6))), 0, 100);
  }
  int liking(int person, const Truth& truth) {
    const double kind = person < people - 1 ? kindness[person] : (truth.isOwn ? leanOfMaker : 0.0);
    return std::clamp(static_cast<int>(std::lround(truth.liking + kind + likingOfDay_ + normal(0.7))), 1, 9);
  }

 private:
  static constexpr int people = 7;
  static constexpr const char* words[]{"honey", "sour", "cardboard"};

  double even() { return (static_cast<double>(engine_()) + 0.5) / 4294967296.0; }
  double normal(double sd) { return sd * std::sqrt(-2 * std::log(even())) * std::cos(2 * std::numbers::pi * even()); }

  std::mt19937 engine_;
  std::map<std::pair<int, std::string>, double> habit_, ownWay_;
  std::map<std::string, double> day_;
  double likingOfDay_ = 0;
};

double monthsAt(const std::string& from, Millis at) { return daysBetween(from, dayOf(at)).value_or(0) / (365.25 / 12); }

constexpr const char *bottledFirst = "2024-08-03", *bottledSecond = "2025-03-01", *bottledThird = "2025-09-06";

/// The truth of every lot, by its id, at a moment.
std::map<LotId, Truth> truthAt(const Years& years, Millis at) {
  const double age = monthsAt(bottledFirst, at);
  Truth first{55 + honeyEachMonth * age, 25, 8 + (cardboardOfTwin + cardboardEachMonth) * age, 5.9}, cold = first, second = first;
  cold.cardboard = 8 + cardboardOfTwin * age;
  second.cardboard = 8 + cardboardOfTwin * monthsAt(bottledSecond, at);
  second.sour += sourOfNewYeast;
  second.honey += honeyOfNewYeast;
  second.liking = 5.2;
  Truth third = second;
  third.cardboard = second.cardboard + ofOtherWater;
  Truth younger{58, 24, 10, 6.0, false}, older = younger;
  older.honey += honeyOfOlderVintage;
  return {{years.first, first}, {years.firstCold, cold}, {years.second, second}, {years.third, third}, {years.younger, younger}, {years.older, older}};
}

SheetItem lineAbout(const char* word, std::optional<int> limit = std::nullopt) {
  SheetItem item;
  item.kind = ItemKind::line;
  item.word = word;
  item.limit = limit;
  return item;
}

std::vector<SheetItem> sheet() {
  SheetItem liking;
  liking.kind = ItemKind::liking;
  return {lineAbout("honey", 10), lineAbout("sour"), lineAbout("cardboard", 10), liking};
}

Script saying(Model& model, const Draft& draft, const Years& years, const std::vector<int>& people, Millis at) {
  model.newDay();
  return [&model, lots = draft.lots, truth = truthAt(years, at), people](int place, const SheetItem& item, Slot slot, int) -> Said {
    const LotId& lot = lots.at(static_cast<std::size_t>(slot.value) - 1);
    const Truth& drink = truth.at(lot);
    const int person = people.at(static_cast<std::size_t>(place) - 1);
    if (item.kind == ItemKind::liking) return {model.liking(person, drink)};
    return {model.line(person, item.word, lot.text, item.word == "honey" ? drink.honey : item.word == "sour" ? drink.sour : drink.cardboard)};
  };
}

/// Two years as they are played.
struct PlayedYears : Years {
  DemoShelf& demo;
  Model model{20240803};

  explicit PlayedYears(DemoShelf& shelf) : demo(shelf) {}

  LotId lotOf(const BeverageId& drink, const char* name, const char* packaged, int bottles, const char* storage, const char* source = "") {
    Lot lot;
    lot.beverage = drink;
    lot.name = name;
    lot.packagedOn = packaged;
    lot.bottleMl = 750;
    lot.storage = storage;
    lot.source = source;
    const LotId id = shelf::save(*demo.store, demo.chance, lot);
    shelf::move(*demo.store, demo.clock, id, StockChange::added, bottles);
    return id;
  }

  BeverageId batchOf(const char* name, std::vector<const char*> changed, const char* day) {
    Beverage drink;
    drink.name = name;
    drink.kind = Kind::mead;
    drink.recipe = "Hedge mead";
    drink.originalGravity = 10900;
    drink.finalGravity = 10100;
    drink.abvBp = 1080;
    drink.abvFrom = AbvFrom::gravities;
    drink.ingredients = {IngredientsKnown::known, {Allergen::sulphites}};
    drink.makers = {demo.people.at("Wenna")};
    const BeverageId id = shelf::save(*demo.store, demo.chance, drink);
    for (const char* each : changed) note(id, NoteKind::changed, day, each);
    return id;
  }

  void note(const BeverageId& drink, NoteKind kind, const char* day, const char* text, std::optional<int> level = std::nullopt, std::optional<int> gravity = std::nullopt) {
    Note one;
    one.beverage = drink;
    one.kind = kind;
    one.doneOn = day;
    one.text = text;
    one.level = level;
    one.gravity = gravity;
    shelf::add(*demo.store, demo.chance, one);
  }

  void putOnShelf() {
    const BeverageId one = batchOf("Hedge mead no. 1", {}, bottledFirst);
    first = lotOf(one, "bottled 3 August 2024", bottledFirst, 30, "pantry, 20 degrees");
    note(one, NoteKind::reading, "2024-07-20", "", std::nullopt, 10100);
    note(one, NoteKind::reading, "2024-08-01", "no fall in twelve days", std::nullopt, 10100);
    note(one, NoteKind::haze, "2024-08-17", "", 2);
    note(one, NoteKind::haze, "2024-12-03", "", 1);
    note(one, NoteKind::haze, "2025-10-04", "", 0);
    note(one, NoteKind::sediment, "2025-10-04", "", 1);
    const BeverageId two = batchOf("Hedge mead no. 2", {"another yeast", "a third less blossom"}, "2024-12-28");
    second = lotOf(two, "bottled 1 March 2025", bottledSecond, 24, "cellar, 12 degrees");
    const BeverageId three = batchOf("Hedge mead no. 3", {"water from the other well"}, "2025-06-28");
    third = lotOf(three, "bottled 6 September 2025", bottledThird, 24, "cellar, 12 degrees");
    Beverage bought;
    bought.origin = Origin::reference;
    bought.name = "Bought hedge mead";
    bought.kind = Kind::mead;
    bought.abvBp = 1100;
    bought.abvFrom = AbvFrom::label;
    bought.ingredients = {IngredientsKnown::known, {Allergen::sulphites}};
    const BeverageId stall = shelf::save(*demo.store, demo.chance, bought);
    younger = lotOf(stall, "vintage 2023", "2023-10-01", 14, "cellar, 12 degrees", "a stall at the fair");
    older = lotOf(stall, "vintage 2022", "2022-10-01", 5, "cellar, 12 degrees", "a stall at the fair");
  }

  void beginSeries() {
    firstCold = shelf::setTwinAside(*demo.store, demo.clock, demo.chance, first, "bottled 3 August 2024, kept cold", "fridge, 4 degrees", 8);
    Series wanted;
    wanted.title = "Hedge mead no. 1 grows old";
    wanted.batch = first;
    wanted.control = ControlKind::twin;
    wanted.controlLot = firstCold;
    wanted.begunOn = bottledFirst;
    wanted.main = {5, "cardboard", 10};
    for (const char* day : {"2024-08-17", "2024-12-03", "2025-04-05", "2025-10-04", "2026-04-04", "2026-10-03"}) wanted.sittings.push_back({0, day, std::nullopt});
    series = shelf::save(*demo.store, demo.clock, demo.chance, wanted);
  }

  /// Everybody but those left out, the maker last.
  void tasted(Draft draft, Millis at, int leftOut = -1) {
    std::vector<const char*> names;
    std::vector<int> people;
    for (int i = 0; i < 6; ++i)
      if (i != leftOut) names.push_back(friends[static_cast<std::size_t>(i)]), people.push_back(i);
    names.push_back("Wenna");
    people.push_back(6);
    draft.pourer = demo.people.at("Odo");
    draft.cupMl = 15;
    draft.careSettled = true;
    draft.giveAwaysUnasked = true;
    draft.promises = {{Outcome::shown, "write down what it was"}, {Outcome::notShown, "pour it again in half a year"}};
    sessions.push_back(carryOut(demo, draft, names, at, saying(model, draft, *this, people, at), "go on as planned", true));
  }

  void sitting(int number, Millis at, int leftOut = -1) {
    demo.clock.set(at);
    const SessionId id = session::planSitting(*demo.store, demo.clock, demo.chance, series, number, number == 1 ? sheet() : std::vector<SheetItem>());
    Draft draft = session::draft(*demo.store, id);
    draft.guestTitle = "An evening with mead";
    tasted(draft, at, leftOut);
  }

  void beside(const char* title, std::vector<LotId> lots, std::vector<LotRole> roles, Millis at, int leftOut = -1) {
    demo.clock.set(at);
    Draft draft;
    draft.title = title;
    draft.id = session::newDraft(*demo.store, demo.clock, demo.chance, title);
    draft.guestTitle = "An evening with mead";
    draft.question = Question::lacks;
    draft.method = Method::sheet;
    draft.methodChosen = true;
    draft.lots = std::move(lots);
    draft.sheet.roles = std::move(roles);
    draft.sheet.items = sheet();
    draft.sheet.cleanser = "water";
    tasted(draft, at, leftOut);
  }
};

}  // namespace

Years play(DemoShelf& demo) {
  constexpr auto compared = LotRole::compared, reference = LotRole::reference;
  PlayedYears years(demo);
  demo.clock.set(1722704400000);  // 3 August 2024, 17:00 UTC
  years.putOnShelf();
  years.beginSeries();
  years.sitting(1, 1723914000000);      // 17 August 2024
  years.sitting(2, 1733245200000);      // 3 December 2024
  years.sitting(3, 1743872400000, 5);   // 5 April 2025; Ebba is away
  years.beside("Hedge mead: did the new yeast change it?", {years.first, years.second, years.younger}, {compared, compared, reference}, 1748106000000);      // 24 May 2025
  years.sitting(4, 1759597200000);      // 4 October 2025
  years.beside("Hedge mead: the other well", {years.second, years.third, years.younger}, {compared, compared, reference}, 1762707600000, 1);                // 9 November 2025
  years.beside("Hedge mead: how far do the vintages lie apart?", {years.third, years.younger, years.older}, {compared, reference, reference}, 1768669200000);  // 17 January 2026
  years.sitting(5, 1775322000000);      // 4 April 2026
  years.beside("Hedge mead: all three", {years.first, years.second, years.third, years.younger}, {compared, compared, compared, reference}, 1779642000000);   // 24 May 2026
  return years;
}

}  // namespace two_years
