// With the orders as the only thing that changes (the codes stay), nothing that can be reached before the reveal changes, whatever the way of asking.
// Left out by name: the pour sheet and the worksheet, the store file and its backups. Masked: commitment, seal mark, the log's hashes.
#include "blind_night.h"
#include "ui/filled_sheet.h"
#include "ui/seen.h"

#include <QGuiApplication>
#include <QStyleHints>
#include <catch2/catch.hpp>

#include <fstream>

using namespace oddglass;
using test::Seen;
using test::Window;
using testing::BlindNight;
using testing::Way;
using Page = ui::Router::Page;

namespace {

enum class Leak { none, property, pixel, fileName };
enum class Pages { all, cups };   ///< all there are, or those that a way of asking changes

/// The same path in every run.
std::filesystem::path place() {
  static const testing::Folder outer;
  return outer / "night";
}

// A leak of each kind, planted on purpose: a number that follows from what stands on the pourer's sheet.
void plant(Leak leak, const BlindNight& night, Window& program) {
  QString lots;
  for (const session::PourLine& line : night.sheet.placeByPlace) lots += QString::number(line.slot.value);
  const auto number = static_cast<unsigned>(qHash(lots) & 0xffffff);
  if (leak == Leak::property) {
    auto* spy = new QObject(&program.app());
    spy->setObjectName(lots);
  } else if (leak == Leak::pixel) {
    program.window().setColor(QColor(number));
  } else if (leak == Leak::fileName) {
    std::ofstream(night.folder / ("label-" + std::to_string(number) + ".txt")) << "cup";
  }
}

void lookAtFiles(const BlindNight& night, Seen& seen) {
  QStringList names;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(night.folder))
    names << QString::fromStdString(std::filesystem::relative(entry.path(), night.folder).string());
  names.sort();
  seen.lines[QStringLiteral("files")] = names;
  std::ifstream settings(night.folder / "window.ini");
  for (std::string line; std::getline(settings, line);) seen.lines[QStringLiteral("settings")] << QString::fromStdString(line);
}

using Here = std::function<void(const QString&)>;

/// From the cups that were confirmed to the lock, by what a taster can see alone.
void choose(Window& at, const Here& here) {
  auto& cups = *at.app().findChild<ui::CupsModel*>();
  for (int cup = cups.cupCount() - 1; cup >= 0 && cups.choosesCups() && !cups.lockReason().isEmpty(); --cup) at.click("cup" + std::to_string(cup));
  for (const char* answer : {"same1", "liking0", "sureness1", "clue0"})
    if (at.item(answer)) at.click(answer);
  here(QStringLiteral("chosen"));
  at.click("primary");
}

/// The same on a score sheet. The pauses stand still while they are looked at.
void fillIn(Window& at, const Here& here) {
  for (int step = 0; at.page() == "MySheet"; ++step) {
    REQUIRE(step < 30);
    here(QStringLiteral("sheet, step %1").arg(step));
    test::goOn(at);
  }
}

void taste(Window& at, const Here& here) {
  at.click("hand1");
  here(QStringLiteral("hand over"));
  REQUIRE(at.page() == "HandOver");
  at.click("primary");
  here(QStringLiteral("are these your cups"));
  REQUIRE(at.page() == "MyCups");
  at.app().findChild<QTimer*>(QStringLiteral("wait"))->setInterval(3600 * 1000);
  at.click("primary");
  REQUIRE(at.until([&] { return at.page() == "MySheet" || at.app().findChild<ui::CupsModel*>()->property("confirmed").toBool(); }));
  at.page() == "MySheet" ? fillIn(at, here) : choose(at, here);
  here(QStringLiteral("locked"));
  REQUIRE(at.page() == "Locked");
}

/// A filled sheet as it is typed in, up to its first line; the lines that follow are made of the same codes.
void typeIn(Window& at, const Here& here) {
  at.app().router()->go(Page::TypeIn);
  here(QStringLiteral("who types in"));
  const auto& model = *at.app().findChild<ui::TypingModel*>();
  at.click("typist" + std::to_string(model.property("typists").toStringList().size() - 1));
  here(QStringLiteral("whose sheet"));
  at.click("typedPlace0");
  here(QStringLiteral("a sheet"));
  at.type("typedLine", "4711");
  at.click("primaryButton");
  here(QStringLiteral("a line that is refused"));
  at.click("typeInLeave");
}

/// Every kind of paper as it is offered; the pourer's is asked for and left.
void choosePaper(Window& at, const Here& here) {
  at.app().router()->go(Page::Paper);
  for (int kind = 0; kind < 7; ++kind) {
    at.click("paperKind" + std::to_string(kind));
    here(QStringLiteral("paper %1").arg(kind));
  }
  at.click("primaryButton");
  here(QStringLiteral("paper for the pourer"));
  at.click("paperNo");
}

Seen evening(const Way& way, int orders, Pages pages, Leak leak = Leak::none) {
  BlindNight night(place(), way, orders);
  night.store.reset();
  Seen seen;
  testing::StillClock clock;
  testing::FixedChance chance(2);
  QGuiApplication::styleHints()->setCursorFlashTime(0);
  {
    Window at(night.folder.string(), clock, chance);
    plant(leak, night, at);
    const Here here = [&](const QString& where) { test::look(at, QString::fromStdString(night.sealed.sealMark), where, seen); };
    here(QStringLiteral("as it comes back"));
    REQUIRE(at.page() == "Places");
    if (at.item("placesLook")) {
      at.click("placesLook");
      here(QStringLiteral("looked at"));
    }
    for (const char* what : {"happenSaid", "happenSpilled", "happenAside"}) {
      if (pages != Pages::all) break;
      at.click(what);
      here(QLatin1String(what));
    }
    taste(at, here);
    typeIn(at, here);
    at.app().router()->go(Page::Places);
    here(QStringLiteral("places again"));
    if (pages == Pages::all) choosePaper(at, here);
    for (const Page page : {Page::Today, Page::OpenKey, Page::History, Page::People, Page::Keeping, Page::Words, Page::Shelf}) {
      if (pages != Pages::all && page != Page::OpenKey && page != Page::History) continue;
      at.app().router()->go(page);
      here(QString::number(static_cast<int>(page)));
    }
    if (pages == Pages::all) {
      at.click("beverage0");
      here(QStringLiteral("a beverage"));
    }
  }
  lookAtFiles(night, seen);
  return seen;
}

/// Two keys for the cups of a way of asking, as unlike as can be.
testing::TwoKeys keysFor(const Way& way) {
  const Plan plan = BlindNight(place(), way, 1).plan();
  const testing::TwoKeys keys(plan);
  REQUIRE(testing::DrawnKey(plan, keys.one).unlike(testing::DrawnKey(plan, keys.other)) >= 3);
  return keys;
}

const Way& wayCalled(const std::string& name) { return *std::ranges::find(testing::waysOfAsking(), name, &Way::name); }

}  // namespace

TEST_CASE("nothing that can be reached before the reveal depends on the key") {
  const Way& triangle = wayCalled("triangle");
  const testing::TwoKeys keys = keysFor(triangle);
  const Seen one = evening(triangle, keys.one, Pages::all);
  CHECK(test::difference(one, evening(triangle, keys.other, Pages::all)).toStdString() == "");
  CHECK(one.pictures.size() >= 29);
  CHECK(one.lines.at(QStringLiteral("are these your cups: properties")).size() > 100);
}

TEST_CASE("before the reveal the table and the cups are the same under every key, however it is asked") {
  for (const Way& way : testing::waysOfAsking()) {
    if (way.name == std::string("triangle")) continue;
    INFO(way.name);
    const testing::TwoKeys keys = keysFor(way);
    const Seen one = evening(way, keys.one, Pages::cups);
    CHECK(test::difference(one, evening(way, keys.other, Pages::cups)).toStdString() == "");
    CHECK(one.pictures.size() >= 12);
  }
}

TEST_CASE("of a sequential plan the look says go on or stop, and that depends on the key") {
  const Way& way = wayCalled("sequential plan");
  const testing::TwoKeys keys = keysFor(way);
  const auto says = [&](int orders) {
    BlindNight night(place(), way, orders);
    night.store.reset();
    Window at(night.folder.string(), night.clock, night.chance);
    at.click("placesLook");
    return at.app().notice()->message().toStdString();
  };
  CHECK(says(keys.one) == "After round 1 it says: go on. The next round is open.");
  CHECK(says(keys.stops) == "After round 1 it says: stop.");
}

TEST_CASE("a planted leak is found") {
  for (const char* name : {"triangle", "how good is it"}) {
    INFO(name);
    const Way& way = wayCalled(name);
    const testing::TwoKeys keys = keysFor(way);
    for (Leak leak : {Leak::property, Leak::pixel, Leak::fileName})
      CHECK_FALSE(test::difference(evening(way, keys.one, Pages::cups, leak), evening(way, keys.other, Pages::cups, leak)).isEmpty());
  }
}
