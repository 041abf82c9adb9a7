// Two stores that differ in nothing but the orders: no command tells them apart before the reveal. Left out by name: the worksheet and the store file.
// Masked: commitment and seal mark.
#include "cli/ran.h"
#include "evening.h"

#include <map>

using namespace oddglass;
using namespace oddglass::testing;

namespace {

void replaceAll(std::string& text, const std::string& from, const std::string& to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) text.replace(at, from.size(), to);
}

/// Everything that commands print and write, by command or file name; and the worksheet, apart.
struct Seen {
  std::map<std::string, std::string> all;
  std::string worksheet;
};

std::string bytes(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

Seen look(unsigned char orders) {
  Evening evening(2, 0, 4);
  blinding::Seed seed{}, other{};
  seed.fill(7);
  other.fill(orders);
  const session::Sealed sealed =
      session::sealDrawnFrom(*evening.store, evening.clock, evening.chance, evening.session, seed,
                             {blinding::Stream(other, blinding::StreamName::orders), blinding::Stream(seed, blinding::StreamName::codes)});
  evening.sitAll();
  evening.answer(2, 1, "plain words");
  const int code = tasting::nextFlight(*evening.store, evening.session, {3})->cups[0].code.value;
  evening.store.reset();

  Terminal run;
  run.store = (evening.folder / "cellar.oddglass").string();
  const std::string id = evening.session.text, out = (evening.folder / "out").string(), sheet = (evening.folder / "sheet.csv").string();
  Seen seen;
  const auto ask = [&](const std::string& words, const std::vector<std::string>& more = {}) {
    for (const char* form : {"", "--json "}) {
      const Ran ran = run(form + words, more);
      std::string& text = seen.all[form + words + " #" + std::to_string(seen.all.size())];
      text = std::to_string(ran.status) + '\n' + ran.out + '\n' + ran.err;
      replaceAll(text, evening.folder.path().string(), "FOLDER");
      replaceAll(text, sealed.sealMark, "MARK");
      replaceAll(text, sealed.commitment, "COMMITMENT");
    }
  };
  ask("worksheet " + id + " --out", {sheet});
  seen.worksheet = bytes(sheet);
  const auto everything = [&] {
    for (const char* command : {"table ", "history ", "verify ", "seal "}) ask(command + id);
    ask("list");
    ask("report " + id + " --out", {out + "/r.html"});
    ask("report " + id + " --out", {out + "/r.json"});
    ask("decide " + id + " --text early");
    for (const char* as : {"json", "csv"}) {
      ask("export " + id + " --as " + as + " --out", {out});
      ask(std::string("export --all --as ") + as + " --out", {out});
    }
  };
  everything();
  ask("reveal " + id);
  const std::string cup = std::to_string(code);
  ask("spilled " + id + ' ' + cup);
  ask("spilled " + id + " 101");
  ask("poured " + id, {run.write("poured.csv", "code,lot\n" + cup + ",Heather mead\n")});
  ask("poured " + id, {run.write("wrong.csv", "code,lot\n" + cup + ",1\n101,2\n")});
  ask("poured " + id, {run.write("doubt.csv", "code,lot\n" + cup + ",not sure\n")});
  ask("void " + id + " 4 1 --reason mixed_up");
  ask("said " + id + " --text sweet");
  ask("answer " + id, {run.write("answers.csv", "place,round,item,code,value\n1,1,choose,," + cup + "\n")});
  ask("sit " + id + " 1 Friend");
  everything();
  ask("close " + id);
  everything();
  for (const auto& entry : std::filesystem::recursive_directory_iterator(out)) {
    const std::string name = entry.path().filename().string();
    std::string& text = seen.all["file " + name];
    if (entry.is_regular_file()) text = bytes(entry.path());
    replaceAll(text, sealed.sealMark, "MARK");
    replaceAll(text, sealed.commitment, "COMMITMENT");
  }
  return seen;
}

}  // namespace

TEST_CASE("before the reveal no command depends on the key") {
  const Seen one = look(11), two = look(12);
  // The orders do differ, and the comparison would see it: the worksheet is the one thing that may show them.
  REQUIRE(one.worksheet.size() > 200);
  CHECK(one.worksheet != two.worksheet);
  REQUIRE(one.all.size() == two.all.size());
  CHECK(one.all.size() > 80);
  auto each = two.all.begin();
  for (const auto& [name, text] : one.all) {
    INFO(name);
    CHECK(name == each->first);
    CHECK(text == each->second);
    ++each;
  }
  CHECK(look(11).all == one.all);
}
