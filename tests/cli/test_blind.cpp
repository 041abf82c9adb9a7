// Two stores that differ in nothing but the orders: no command tells them apart before the reveal, whatever the way of asking. Left out by name: the
// worksheet and the store file. Masked: commitment and seal mark.
#include "blind_night.h"
#include "cli/ran.h"

#include <map>

using namespace oddglass;
using namespace oddglass::testing;

namespace {

void replaceAll(std::string& text, const std::string& from, const std::string& to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) text.replace(at, from.size(), to);
}

/// Everything that commands print and write, by command or file name; and the worksheet, apart.
struct Printed {
  std::map<std::string, std::string> all;
  std::string worksheet;
};

std::string bytes(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

/// The answers of a place as a file for the table.
std::string answersOf(BlindNight& night, int place) {
  const auto flight = tasting::nextFlight(*night.store, night.session, {place}).value();
  std::string table = "place,round,item,code,value\n";
  for (const tasting::Reply& reply : blindly(flight).replies)
    table += std::to_string(place) + ',' + std::to_string(flight.round.value) + ',' + std::to_string(reply.item.value) + ',' +
             (reply.code.value ? std::to_string(reply.code.value) : "") + ',' + reply.text.value_or(std::to_string(reply.value)) + '\n';
  return table;
}

enum class Planted { nothing, guestTitle };

struct Asking {
  bool isWhole;   ///< every command again and again; else those that say most
  BlindNight night;
  Terminal run;
  Printed seen;
  const std::string id = night.session.text, out = (night.folder / "out").string();

  Asking(const std::filesystem::path& folder, const Way& way, int orders) : isWhole(way.name == std::string("triangle") || way.name == std::string("what does it lack")), night(folder, way, orders) { run.store = (night.folder / "cellar.oddglass").string(); }

  void hide(std::string& text) const {
    replaceAll(text, run.folder.path().string(), "FOLDER");
    replaceAll(text, night.sealed.sealMark, "MARK");
    replaceAll(text, night.sealed.commitment, "COMMITMENT");
  }
  void ask(const std::string& words, const std::vector<std::string>& more = {}) {
    for (const char* form : {"", "--json "}) {
      const Ran ran = run(form + words, more);
      std::string& text = seen.all[form + words + " #" + std::to_string(seen.all.size())];
      text = std::to_string(ran.status) + '\n' + ran.out + '\n' + ran.err;
      hide(text);
    }
  }
  void askForEverything() {
    for (const char* command : {"table ", "history "}) ask(command + id);
    ask("export " + id + " --as csv --out", {out});
    if (!isWhole) return;
    for (const char* command : {"verify ", "seal "}) ask(command + id);
    ask("list");
    ask("report " + id + " --out", {out + "/r.html"});
    ask("report " + id + " --out", {out + "/r.json"});
    ask("decide " + id + " --text early");
    for (const char* as : {"json", "csv"}) {
      ask("export " + id + " --as " + as + " --out", {out});
      ask(std::string("export --all --as ") + as + " --out", {out});
    }
  }
};

Printed look(const Way& way, int orders, Planted planted = Planted::nothing) {
  static const Folder outer;
  Asking at(outer / "night", way, orders);
  if (planted == Planted::guestTitle) {
    std::string lots;
    for (const session::PourLine& line : at.night.sheet.placeByPlace) lots += std::to_string(line.slot.value);
    store::write(*at.night.store, [&](SQLite::Database& db) { SQLite::Statement(db, "UPDATE session SET guest_title = '" + lots + "'").exec(); });
  }
  at.night.store.reset();
  const std::string sheet = (at.night.folder / "sheet.csv").string();
  at.ask("worksheet " + at.id + " --out", {sheet});
  at.seen.worksheet = bytes(sheet);
  at.askForEverything();
  at.ask("look " + at.id);
  at.ask("reveal " + at.id);
  at.night.store = store::Store::open(at.run.store, store::Access::read, at.night.clock, at.night.chance);
  const std::string cup = std::to_string(tasting::nextFlight(*at.night.store, at.night.session, {3})->cups[0].code.value);
  const std::string answers = answersOf(at.night, 4);
  at.night.store.reset();
  at.ask("spilled " + at.id + " 101");
  at.ask("poured " + at.id, {at.run.write("poured.csv", "code,lot\n" + cup + ",x\n")});
  at.ask("poured " + at.id, {at.run.write("wrong.csv", "code,lot\n" + cup + ",1\n101,2\n")});
  at.ask("poured " + at.id, {at.run.write("doubt.csv", "code,lot\n" + cup + ",not sure\n")});
  at.ask("answer " + at.id, {at.run.write("answers.csv", answers)});
  at.ask("void " + at.id + " 3 1 --reason mixed_up");
  at.ask("said " + at.id + " --text sweet");
  at.ask("spilled " + at.id + ' ' + cup);
  at.ask("sit " + at.id + " 5 Wenna");
  at.askForEverything();
  at.ask("close " + at.id);
  at.askForEverything();
  for (const auto& entry : std::filesystem::recursive_directory_iterator(at.out)) {
    std::string& text = at.seen.all["file " + entry.path().filename().string()];
    if (entry.is_regular_file()) text = bytes(entry.path());
    at.hide(text);
  }
  return std::move(at.seen);
}

/// The first thing that differs; empty where nothing does.
std::string difference(const Printed& one, const Printed& two) {
  for (const auto& [name, text] : one.all) {
    const auto there = two.all.find(name);
    if (there == two.all.end()) return name + " was seen on one side only";
    if (there->second != text) return name + ":\n" + text + "\n" + there->second;
  }
  return one.all.size() == two.all.size() ? "" : "something was seen on one side only";
}

TwoKeys keysFor(const Way& way) {
  const Folder folder;
  const Plan plan = BlindNight(folder / "night", way, 1).plan();
  const TwoKeys keys(plan);
  REQUIRE(DrawnKey(plan, keys.one).unlike(DrawnKey(plan, keys.other)) >= 3);
  return keys;
}

}  // namespace

TEST_CASE("before the reveal no command depends on the key, however it is asked") {
  for (const Way& way : waysOfAsking()) {
    INFO(way.name);
    const TwoKeys keys = keysFor(way);
    const Printed one = look(way, keys.one), two = look(way, keys.other);
    // The orders do differ, and the comparison would see it: the worksheet is the one thing that may show them.
    REQUIRE(one.worksheet.size() > 200);
    CHECK(one.worksheet != two.worksheet);
    CHECK(one.all.size() > 40);
    CHECK(difference(one, two) == "");
  }
}

TEST_CASE("a leak that is planted in the store of a score sheet is found by its commands") {
  const Way& way = *std::ranges::find(waysOfAsking(), std::string("how good is it"), &Way::name);
  const TwoKeys keys = keysFor(way);
  CHECK_THAT(difference(look(way, keys.one, Planted::guestTitle), look(way, keys.other, Planted::guestTitle)), Catch::Contains("guest_title"));
}

TEST_CASE("of a sequential plan the command says go on or stop, and that depends on the key") {
  const Way& way = *std::ranges::find(waysOfAsking(), std::string("sequential plan"), &Way::name);
  const TwoKeys keys = keysFor(way);
  const auto goesOn = [&](int orders) {
    const Folder folder;
    Asking at(folder / "night", way, orders);
    at.night.store.reset();
    return at.run.json("look " + at.id).at("go_on").get<bool>();
  };
  CHECK(goesOn(keys.one));
  CHECK_FALSE(goesOn(keys.stops));
}
