// The command line has the program with windows print; no window is opened.
#include "cli/night.h"
#include "print/read_back.h"

using namespace oddglass;
using namespace oddglass::testing;

namespace {

struct PrintNight : Night {
  PrintNight() { printer = ODDGLASS_WINDOWS; }
  std::string out(const std::string& name) const { return (folder / name).string(); }
  bool isThere(const std::string& name) const { return std::filesystem::exists(folder / name); }
  static std::string bytesOf(const std::string& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
  }
  int openings() {
    int count = 0;
    const cli::Json history = json("history " + id);
    for (const cli::Json& each : history.at("entries")) count += each.at("kind") == "pour_sheet_opened";
    return count;
  }
};

}  // namespace

TEST_CASE("a report as PDF is made by the program with windows, with the sentences of the HTML") {
  PrintNight night;
  night.plan();
  night.seal();
  requireRefused(night, "report " + night.id, "key is still sealed", {"--out", night.out("early.pdf")});
  CHECK_FALSE(night.isThere("early.pdf"));
  night.sitAll();
  for (int round = 1; round <= 2; ++round) night.json("answer " + night.id, {night.answers(static_cast<std::size_t>(round))});
  night.json("close " + night.id);
  const std::string headline = night.json("reveal " + night.id).at("headline").get<std::string>();
  CHECK(night.json("report " + night.id, {"--out", night.out("maker.pdf"), "--size", "letter"}).at("file") == night.out("maker.pdf"));
  night.json("report " + night.id, {"--out", night.out("room.pdf"), "--for", "room"});
  const Paper maker("command_report", PrintNight::bytesOf(night.out("maker.pdf"))), room("command_report_room", PrintNight::bytesOf(night.out("room.pdf")));
  CHECK_THAT(squeezed(maker.text()), Catch::Contains(squeezed(headline)));
  CHECK_THAT(squeezed(room.text()), Catch::Contains(squeezed(headline)));
  CHECK_THAT(maker.size(), Catch::Contains("612 x 792"));
  CHECK_THAT(room.size(), Catch::Contains("A4"));
  CHECK_THAT(maker.text(), Catch::Contains("Dogwood"));
  CHECK_THAT(room.text(), !Catch::Contains("Dogwood"));
}

TEST_CASE("paper for the table is printed at any time, and leaves nothing in the record") {
  PrintNight night;
  night.plan();
  requireRefused(night, "paper " + night.id, "sealed", {"--what", "mats", "--out", night.out("draft.pdf")});
  night.seal();
  for (const char* what : {"labels", "mats", "sheets", "blank", "run"}) {
    INFO(what);
    night.json("paper " + night.id, {"--what", what, "--out", night.out(std::string("-") + what + ".pdf"), "--size", "letter"});
    const Paper read(std::string("command_") + what, PrintNight::bytesOf(night.out(std::string("-") + what + ".pdf")));
    CHECK_THAT(read.size(), Catch::Contains("612 x 792"));
    CHECK_THAT(read.text(), !Catch::Contains("mead"));
  }
  CHECK(night.openings() == 0);
  night.json("paper " + night.id, {"--what", "labels", "--out", night.out("small.pdf"), "--labels", "5x13", "--margins", "11,8,11,8", "--gaps", "2.5,0", "--skip", "3"});
  CHECK(night.isThere("small.pdf"));
}

TEST_CASE("the key on paper is an opening on record, and there is none without its paper") {
  PrintNight night;
  night.plan();
  night.seal();
  night.json("paper " + night.id, {"--what", "pour", "--out", night.out("pour.pdf")});
  CHECK(night.openings() == 1);
  CHECK(std::filesystem::status(night.out("pour.pdf")).permissions() == (std::filesystem::perms::owner_read | std::filesystem::perms::owner_write));
  CHECK_THAT(Paper("command_pour", PrintNight::bytesOf(night.out("pour.pdf"))).text(), Catch::Contains("Heather mead, bottled in March"));
  night.json("paper " + night.id, {"--what", "key", "--out", night.out("key.pdf")});
  CHECK(night.openings() == 2);
  std::ofstream(night.out("a file")) << "in the way";
  requireRefused(night, "paper " + night.id, "--out", {"--what", "key", "--out", night.out("a file/key.pdf")});
  CHECK(night.openings() == 2);
  night.sitAll();
  night.json("answer " + night.id, {night.answers()});
  night.json("close " + night.id);
  requireRefused(night, "paper " + night.id, "SESSION", {"--what", "pour", "--out", night.out("late.pdf")});
  CHECK_FALSE(night.isThere("late.pdf"));
  CHECK(night.openings() == 2);
}

TEST_CASE("what cannot be printed is refused in one line that names the argument") {
  PrintNight night;
  night.plan();
  night.seal();
  const std::string file = night.out("no.pdf");
  requireRefused(night, "paper " + night.id, "--what", {"--what", "menu", "--out", file});
  requireRefused(night, "paper " + night.id, "--size", {"--what", "mats", "--size", "A3", "--out", file});
  requireRefused(night, "paper " + night.id, "--out", {"--what", "mats", "--out", night.out("no.txt")});
  requireRefused(night, "paper " + night.id, "--what", {"--what", "mats", "--skip", "2", "--out", file});
  requireRefused(night, "paper " + night.id, "--labels", {"--what", "labels", "--labels", "3", "--out", file});
  requireRefused(night, "paper " + night.id, "--labels", {"--what", "labels", "--labels", "2.5x4", "--out", file});
  requireRefused(night, "paper " + night.id, "--margins", {"--what", "labels", "--margins", "1,2,3,wide", "--out", file});
  requireRefused(night, "paper " + night.id, "--labels", {"--what", "labels", "--labels", "3x30", "--gaps", "0,9", "--out", file});
  requireRefused(night, "paper ffff", "SESSION", {"--what", "mats", "--out", file});
  night.printer = night.out("not there");
  requireRefused(night, "paper " + night.id, "not there", {"--what", "mats", "--out", file});
  night.printer = "/bin/false";
  requireRefused(night, "paper " + night.id, "--out", {"--what", "mats", "--out", file});
  CHECK_FALSE(night.isThere("no.pdf"));
}
