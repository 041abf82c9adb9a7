// The pages that look back over years, by how many answers the store holds: 1e4, 1e5, 1e6. Each beside reading one number of every answer in the same store and run.
// bench_years [SESSIONS ...]   (10 100 1000)
#include "bench/timed.h"
#include "demo/demo_sheets.h"
#include "domain/day.h"
#include "insight/noticing.h"
#include "insight/over_time.h"
#include "insight/references.h"
#include "insight/room.h"
#include "insight/side_by_side.h"
#include "session/about_lots.h"
#include "session/known_differences.h"
#include "session/look.h"
#include "session/own.h"
#include "session/sittings.h"
#include "shelf/batches.h"
#include "shelf/people.h"
#include "shelf/references.h"
#include "shelf/series.h"
#include "store/together.h"
#include "words/over_time.h"
#include "words/references.h"
#include "words/room.h"
#include "words/side_by_side.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdio>
#include <cstdlib>
#include <random>

using namespace oddglass;
using testing::medianMs;

namespace {

constexpr int recipes = 25, batchesEach = 8, vintages = 3, words = 27, aged = 8;

/// Ten years of a keen table: recipes of eight batches, each batch beside the one before it and a reference; eight friends and the maker; 27 words and the liking.
struct TenYears {
  DemoShelf demo;
  std::mt19937 chance{20261129};
  std::vector<std::vector<LotId>> lots;     ///< by recipe, then batch
  std::vector<LotId> bought;
  SeriesId series;
  int sessions = 0;

  TenYears() {
    store::Together together(*demo.store);
    for (int recipe = 0; recipe < recipes; ++recipe) {
      lots.emplace_back();
      for (int batch = 0; batch < batchesEach; ++batch) {
        Beverage drink;
        drink.name = "Mead " + std::to_string(recipe) + ", batch " + std::to_string(batch);
        drink.recipe = "Mead " + std::to_string(recipe);
        put(drink, "bottled", lots.back());
      }
      Beverage reference;
      reference.origin = Origin::reference;
      reference.name = "Bought mead " + std::to_string(recipe);
      put(reference, "vintage", bought);
    }
    Series wanted;
    wanted.title = "Mead 0 grows old";
    wanted.batch = lots[0][0];
    wanted.control = ControlKind::reference;
    wanted.controlLot = bought[0];
    wanted.begunOn = "2026-01-10";
    wanted.main = {aged, "word 1", 10};
    for (int i = 0; i < aged; ++i) wanted.sittings.push_back({0, *dayAfter(wanted.begunOn, 30 * (i + 1)), std::nullopt});
    series = shelf::save(*demo.store, demo.clock, demo.chance, wanted);
    together.commit();
  }

  void put(Beverage drink, const char* lotName, std::vector<LotId>& into) {
    drink.kind = Kind::mead;
    drink.abvBp = 1000;
    drink.abvFrom = AbvFrom::label;
    drink.ingredients = {IngredientsKnown::none, {}};
    if (drink.origin == Origin::batch) drink.makers = {demo.people.at("Wenna")};
    Lot lot;
    lot.beverage = shelf::save(*demo.store, demo.chance, drink);
    lot.name = lotName;
    lot.packagedOn = "2026-01-10";
    lot.bottleMl = 750;
    into.push_back(shelf::save(*demo.store, demo.chance, lot));
    shelf::move(*demo.store, demo.clock, into.back(), StockChange::added, 500);
  }

  std::vector<SheetItem> sheet() const {
    std::vector<SheetItem> items(words + 1);
    for (int i = 0; i < words; ++i) {
      items[static_cast<std::size_t>(i)].kind = ItemKind::line;
      items[static_cast<std::size_t>(i)].word = "word " + std::to_string(i + 1);
    }
    items.back().kind = ItemKind::liking;
    return items;
  }

  Draft planned(int number, Millis at) {
    demo.clock.set(at);
    if (number < aged) return session::draft(*demo.store, session::planSitting(*demo.store, demo.clock, demo.chance, series, number + 1, number == 0 ? sheet() : std::vector<SheetItem>()));
    const int recipe = number % recipes, batch = number / recipes % (batchesEach - 1);
    Draft draft;
    draft.title = "Evening " + std::to_string(number);
    draft.id = session::newDraft(*demo.store, demo.clock, demo.chance, draft.title);
    draft.question = Question::lacks;
    draft.method = Method::sheet;
    draft.methodChosen = true;
    const auto& own = lots[static_cast<std::size_t>(recipe)];
    draft.lots = {own[static_cast<std::size_t>(batch)], own[static_cast<std::size_t>(batch) + 1], bought[static_cast<std::size_t>(recipe)], bought[static_cast<std::size_t>((recipe + 1) % recipes)]};
    draft.sheet.roles = {LotRole::compared, LotRole::compared, LotRole::reference, LotRole::reference};
    draft.sheet.items = sheet();
    return draft;
  }

  void grow(int until) {
    std::normal_distribution<double> scatter(0, 12);
    while (sessions < until) {
      store::Together together(*demo.store);
      for (int i = 0; i < 50 && sessions < until; ++i, ++sessions) {
        const Millis at = 1770000000000 + sessions * 3LL * 86'400'000;
        Draft draft = planned(sessions, at);
        draft.guestTitle = "Cups";
        draft.pourer = demo.people.at("Odo");
        draft.cupMl = 5;
        draft.careSettled = true;
        draft.giveAways.emplace();
        const auto say = [&](int place, const SheetItem& item, Slot lot, int) -> Said {
          const double value = 50 + 3 * lot.value + place + scatter(chance);
          return {item.kind == ItemKind::liking ? std::clamp(static_cast<int>(value / 11), 1, 9) : std::clamp(static_cast<int>(value), 0, 100)};
        };
        carryOut(demo, draft, eightAndWenna, at, say, "go on", true);
      }
      together.commit();
    }
  }
};

void measure(TenYears& years) {
  store::Store& store = *years.demo.store;
  const long long answers = store.db().execAndGet("SELECT count(*) FROM answer").getInt64();
  volatile std::size_t read = 0;
  const double every = medianMs(5, [&] { read = read + static_cast<std::size_t>(store.db().execAndGet("SELECT sum(value) FROM answer").getInt64()); });
  const TasterId maker = shelf::brewer(store)->id;
  const words::Voice voice;
  const std::string today = "2036-01-10";
  std::printf("%lld answers in %d sessions; every answer read %.1f ms\n", answers, years.sessions, every);
  const auto page = [&](const char* name, auto&& work) {
    const double ms = medianMs(5, work);
    std::printf("  %-20s %7.1f ms, %5.2f of that, %.2f of the 150 ms allowed\n", name, ms, ms / every, ms / 150);
  };
  page("Today", [&] { read = read + session::sessions(store).size(); });
  page("You and the room", [&] {
    const OwnTastings own = session::ownTastings(store, maker);
    read = read + words::roomPage(voice, own, insight::roomOf(own)).lines.size();
  });
  page("Over time", [&] {
    const Series series = shelf::series(store, years.series);
    const insight::OverTime over = insight::overTimeOf(series, session::aboutLots(store, series));
    read = read + words::overTimeWords(voice, series, over, {}).lines.size();
  });
  page("Side by side", [&] {
    const auto batches = shelf::batchesOf(store, "Mead 1");
    const BatchTastings tastings = session::batchTastings(store, batches);
    const insight::SideBySide found = insight::sideBySideOf(batches, tastings, shelf::wordsNow(store, wordsAsked(tastings.about)));
    read = read + words::sideBySideWords(voice, batches, tastings, found, today).lines.size();
  });
  page("Reference book", [&] {
    std::vector<Reference> all = shelf::references(store);
    std::vector<insight::ReferenceFindings> found;
    for (Reference& each : all) {
      session::readPoured(store, each);
      found.push_back(insight::referenceOf(each, today));
    }
    read = read + words::referenceBookWords(voice, all, found).references.size();
  });
  page("People: noticing", [&] { read = read + insight::noticingOf(session::knownDifferences(store), [](const std::string& word) { return word; }).size(); });
}

}  // namespace

int main(int count, char** given) {
  std::vector<int> stages;
  for (int i = 1; i < count; ++i) stages.push_back(std::atoi(given[i]));
  if (stages.empty()) stages = {10, 100, 1000};
  TenYears years;
  for (const int sessions : stages) {
    years.grow(sessions);
    measure(years);
  }
}
