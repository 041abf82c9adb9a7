// With the orders as the only thing that changes (the codes stay), nothing that can be reached before the reveal changes.
// Left out by name: the pour sheet and the worksheet, the store file and its backups. Masked: commitment, seal mark, the log's hashes.
#include "ui/seen.h"
#include "ui/window.h"

#include "evening.h"

#include <catch2/catch.hpp>

#include <fstream>

using namespace oddglass;
using test::Seen;
using test::Window;
using Page = ui::Router::Page;

namespace {

enum class Leak { none, property, pixel, fileName };

// The same path in every run, since pages may name it; new and empty each time.
struct SamePlace {
  SamePlace() {
    std::filesystem::remove_all(path());
    std::filesystem::create_directories(path());
  }
  static std::filesystem::path path() {
    static const testing::Folder outer;
    return outer / "night";
  }
  std::filesystem::path operator/(const std::string& name) const { return path() / name; }
};

struct Night {
  SamePlace folder;
  testing::FixedClock clock;
  testing::FixedChance chance;
  SessionId session;
  QString sealMark;
  Slot firstCup;   // what the key says of the first cup; only planted leaks look at it
};

// Five places, two drinks that are unlike in everything, codes from one seed and orders from another.
void prepare(Night& night, unsigned char orders) {
  auto store = store::Store::open(night.folder / "cellar.oddglass", store::Access::write, night.clock, night.chance);
  std::vector<TasterId> friends;
  for (const char* name : {"Ash", "Birch", "Cedar", "Dogwood"}) friends.push_back(shelf::save(*store, night.chance, Taster{{}, name, "", false, false}));
  const TasterId brewer = shelf::save(*store, night.chance, Taster{{}, "Wenna Tarn", "", true, false});
  const TasterId pourer = shelf::save(*store, night.chance, Taster{{}, "Odo Pell", "", false, false});
  Beverage batch;
  batch.name = "A";
  batch.kind = Kind::beer;
  batch.abvBp = 310;
  batch.abvFrom = AbvFrom::guess;
  batch.ingredients = {IngredientsKnown::known, {Allergen::gluten, Allergen::milk}};
  batch.makers = {brewer};
  Beverage reference;
  reference.origin = Origin::reference;
  reference.name = "A very long name for a bought mead of a far away valley";
  reference.kind = Kind::mead;
  reference.abvBp = 1450;
  reference.abvFrom = AbvFrom::label;
  std::vector<LotId> lots;
  for (const Beverage& each : {batch, reference}) {
    Lot lot;
    lot.beverage = shelf::save(*store, night.chance, each);
    lot.name = each.origin == Origin::batch ? "x" : "vintage of the dry year";
    lot.bottleMl = each.origin == Origin::batch ? 330 : 750;
    lots.push_back(shelf::save(*store, night.chance, lot));
    shelf::move(*store, night.clock, lots.back(), StockChange::added, each.origin == Origin::batch ? 5 : 40);
  }
  night.session = session::newDraft(*store, night.clock, night.chance, "Two unlike drinks");
  Draft draft = session::draft(*store, night.session);
  draft.title = "Two unlike drinks";
  draft.guestTitle = "An evening";
  draft.lots = lots;
  draft.tasters = friends;
  draft.tasters.push_back(brewer);
  draft.pourer = pourer;
  draft.cupMl = 15;
  draft.rounds = 2;
  draft.careSettled = true;
  session::saveDraft(*store, night.clock, draft);
  blinding::Seed seed{}, other{};
  seed.fill(7);
  other.fill(orders);
  night.sealMark = QString::fromStdString(
      session::sealDrawnFrom(*store, night.clock, night.chance, night.session, seed,
                             {blinding::Stream(other, blinding::StreamName::orders), blinding::Stream(seed, blinding::StreamName::codes)}).sealMark);
  const session::PourSheet sheet = session::openPourSheet(*store, night.clock, night.session);
  night.firstCup = sheet.placeByPlace.front().slot;
  for (const session::PourLine& line : sheet.placeByPlace) session::tick(*store, night.clock, night.session, line.code, line.slot == Slot{1});
  session::pouredReally(*store, night.clock, night.chance, night.session, sheet.placeByPlace[0].code, Slot{1});
  session::sayPoured(*store, night.clock, night.session);
  for (int place = 1; place <= 4; ++place)
    tasting::sit(*store, night.clock, night.session, {{place}, friends[static_cast<std::size_t>(place - 1)], ShownAs::signedName, true, true, true, false});
  const auto flight = tasting::nextFlight(*store, night.session, {2}).value();
  tasting::begin(*store, night.clock, night.session, {2}, flight.round);
  tasting::HandIn in{{2}, flight.round, {}, tasting::Via::device, {{{1}, flight.cups[0].code.value, {}}, {{2}, 1, {}}, {{3}, 6, {}}}};
  tasting::handIn(*store, night.clock, night.chance, night.session, in);
  tasting::spilled(*store, night.clock, night.session, tasting::nextFlight(*store, night.session, {3})->cups[1].code);
  tasting::said(*store, night.clock, night.chance, night.session, {}, "a loud word");
}

// A leak of each kind, planted on purpose.
void plant(Leak leak, Night& night, Window& program) {
  if (leak == Leak::property) {
    auto* spy = new QObject(&program.app());
    spy->setObjectName(night.firstCup == Slot{1} ? QStringLiteral("first") : QStringLiteral("second"));
  } else if (leak == Leak::pixel) {
    auto* speck = new QQuickItem(program.window().contentItem());
    speck->setZ(1000);
    program.window().setColor(night.firstCup == Slot{1} ? QColor(247, 245, 240) : QColor(247, 245, 241));
  } else if (leak == Leak::fileName) {
    std::ofstream(night.folder / ("label-" + std::to_string(night.firstCup.value) + ".txt")) << "cup";
  }
}

void lookAtFiles(const Night& night, Seen& seen) {
  QStringList names;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(night.folder.path()))
    names << QString::fromStdString(std::filesystem::relative(entry.path(), night.folder.path()).string());
  names.sort();
  seen.lines[QStringLiteral("files")] = names;
  std::ifstream settings(night.folder / "settings.ini");
  for (std::string line; std::getline(settings, line);) seen.lines[QStringLiteral("settings")] << QString::fromStdString(line);
}

Seen evening(unsigned char orders, Leak leak = Leak::none) {
  Night night;
  prepare(night, orders);
  Seen seen;
  Window program(night.folder.path().string(), night.clock, night.chance);
  plant(leak, night, program);
  const auto here = [&](const QString& where) { test::look(program, night.sealMark, where, seen); };
  here(QStringLiteral("as it comes back"));
  REQUIRE(program.page() == "Places");
  for (const char* what : {"happenSaid", "happenSpilled", "happenAside"}) {
    program.click(what);
    here(QLatin1String(what));
  }
  program.click("hand1");
  here(QStringLiteral("hand over"));
  REQUIRE(program.page() == "HandOver");
  program.click("primary");
  here(QStringLiteral("are these your cups"));
  REQUIRE(program.page() == "MyCups");
  program.click("primary");
  program.click("cup1");
  here(QStringLiteral("chosen"));
  program.app().router()->go(Page::Places);
  here(QStringLiteral("places again"));
  for (const auto& [page, name] : {std::pair(Page::Today, "today"), std::pair(Page::Shelf, "shelf"), std::pair(Page::People, "people"),
                                   std::pair(Page::Keeping, "keeping"), std::pair(Page::OpenKey, "open the key"), std::pair(Page::History, "history")}) {
    program.app().router()->go(page);
    here(QLatin1String(name));
  }
  program.app().router()->go(Page::Shelf);
  program.settle();
  program.click("beverage0");
  here(QStringLiteral("a beverage"));
  lookAtFiles(night, seen);
  return seen;
}

}  // namespace

TEST_CASE("nothing that can be reached before the reveal depends on the key") {
  const Seen first = evening(1);
  CHECK(first.pictures.size() >= 14);
  CHECK(first.lines.at(QStringLiteral("are these your cups: properties")).size() > 100);
  for (const int orders : {2, 3, 4}) {
    const QString found = test::difference(first, evening(static_cast<unsigned char>(orders)));
    INFO(found.toStdString());
    CHECK(found.isEmpty());
  }
}

TEST_CASE("a planted leak is found") {
  // Two order streams under which the first cup holds different drinks.
  const auto firstCup = [](unsigned char orders) {
    Night night;
    prepare(night, orders);
    return night.firstCup;
  };
  unsigned char other = 2;
  while (firstCup(other) == firstCup(1)) ++other;
  for (Leak leak : {Leak::property, Leak::pixel, Leak::fileName})
    CHECK_FALSE(test::difference(evening(1, leak), evening(other, leak)).isEmpty());
  CHECK(test::difference(evening(1), evening(other)).isEmpty());
}
