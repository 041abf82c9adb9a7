#include "exchange/csv.h"
#include "exchange/sheets.h"
#include "refused.h"
#include "told.h"

#include <algorithm>

using namespace oddglass;
using namespace oddglass::exchange;

namespace {

struct Table : testing::Evening {
  Table() : Evening(2) {
    seal();
    sitAll();
  }
  std::filesystem::path write(const std::string& text) {
    const auto path = folder / "sheet.csv";
    std::ofstream(path, std::ios::binary) << text;
    return path;
  }
  std::string code(int place, int round, int position) {
    for (const Cup& cup : session::record(*store, session).plan.cups)
      if (cup.place.value == place && cup.round.value == round && cup.position.value == position && cup.spare == 0) return std::to_string(cup.code.value);
    return {};
  }
  std::vector<tasting::HandIn> answers(const std::string& rows) { return readAnswers(*store, session, write("place,round,item,code,value\n" + rows)); }
  Problem refusedAnswers(const std::string& rows) {
    return problemOf([&] { answers(rows); });
  }
};

}  // namespace

TEST_CASE("Answers come from a table, one a row, and the table takes them") {
  Table table;
  const std::string c = table.code(1, 1, 2), d = table.code(2, 1, 1);
  const auto all = table.answers("1,1,choose,," + c + "\n1,1,2,0,3\n1,1,clue,,smell\n1,1,words,,\"dry, short\"\n2,1,1," + d + ",\n2,1,sureness,,guess\n2,1,3,,6\n");
  REQUIRE(all.size() == 2);
  CHECK(all[0].place == Place{1});
  CHECK(all[0].via == tasting::Via::file);
  REQUIRE(all[0].replies.size() == 4);
  CHECK(std::to_string(all[0].replies[0].value) == c);
  CHECK(all[0].replies[1].value == 3);
  CHECK(all[0].replies[2].value == static_cast<int>(Clue::smell));
  CHECK(all[0].replies[3].text == "dry, short");
  CHECK(std::to_string(all[1].replies[0].value) == d);
  CHECK(all[1].replies[1].value == 1);
  const auto receipts = tasting::handInAll(*table.store, table.clock, table.chance, table.session, all);
  CHECK(receipts.size() == 2);
  CHECK_FALSE(receipts[0].wasThere());
}

TEST_CASE("The same table twice counts once") {
  Table table;
  const std::string rows = "1,1,choose,," + table.code(1, 1, 2) + "\n1,1,sureness,,2\n1,1,clue,,1\n";
  tasting::handInAll(*table.store, table.clock, table.chance, table.session, table.answers(rows));
  const auto again = tasting::handInAll(*table.store, table.clock, table.chance, table.session, table.answers(rows));
  CHECK(again.at(0).wasThere());
  CHECK(tasting::board(*table.store, table.session).locked == 1);
}

TEST_CASE("Rounds are handed in one after the other, whatever the order of the rows") {
  Table table;
  const auto all = table.answers("1,2,choose,," + table.code(1, 2, 1) + "\n1,2,2,,1\n1,2,3,,1\n1,1,choose,," + table.code(1, 1, 1) + "\n1,1,2,,1\n1,1,3,,1\n");
  REQUIRE(all.size() == 2);
  CHECK(all[0].round == Round{1});
  CHECK(tasting::handInAll(*table.store, table.clock, table.chance, table.session, all).size() == 2);
}

TEST_CASE("A wrong row is named by line and column") {
  Table table;
  const std::string good = "1,1,choose,," + table.code(1, 1, 1) + "\n";
  const auto check = [&](const std::string& row, const std::string& column) {
    INFO(row);
    const Problem problem = table.refusedAnswers(good + row + "\n");
    CHECK(problem.trouble() == Trouble::badFile);
    CHECK(problem.argument() == column);
    CHECK(said(problem, "line") == "3");
    CHECK(said(problem, "file") == "sheet.csv");
  };
  check("99,1,2,,1", "place");
  check("x,1,2,,1", "place");
  check("1,3,2,,1", "round");
  check("1,1,9,,1", "item");
  check("1,1,colour,,1", "item");
  check("1,1,2,,4", "value");
  check("1,1,2,,0", "value");
  check("1,1,2,,1.5", "value");
  check("1,1,2,482,1", "code");
  check("1,1,clue,,seven", "value");
  check("1,1,choose,,482", "item");
  check("2,1,choose,482,913", "value");
  check("2,1,choose,,x", "value");
  CHECK(problemOf([&] { readAnswers(*table.store, table.session, table.write("place,round,item,value\n1,1,2,1\n")); }).argument() == "code");
  CHECK(problemOf([&] { readAnswers(*table.store, table.session, table.write("place,round,item,code,value,mood\n")); }).argument() == "mood");
}

TEST_CASE("Missing values are left out, so that the table asks for them") {
  Table table;
  const auto all = table.answers("1,1,choose,," + table.code(1, 1, 1) + "\n1,1,2,,NA\n1,1,3,,.\n1,1,4,,\n");
  REQUIRE(all.size() == 1);
  CHECK(all[0].replies.size() == 1);
  CHECK(problemOf([&] { tasting::handInAll(*table.store, table.clock, table.chance, table.session, all); }).trouble() == Trouble::answerMissing);
  CHECK(tasting::board(*table.store, table.session).locked == 0);
}

TEST_CASE("What was really poured comes from a table") {
  Table table;
  const std::string one = table.code(1, 1, 1), two = table.code(2, 1, 1), three = table.code(3, 1, 1);
  const auto read = [&](const std::string& rows) { return readPoured(*table.store, table.session, table.write("code,lot\n" + rows)); };
  const auto poured = read(one + ",Heather mead\n" + two + ",not sure\n" + three + ",2\n");
  REQUIRE(poured.size() == 3);
  CHECK(poured[0].slot == Slot{1});
  CHECK_FALSE(poured[1].slot);
  CHECK(poured[2].slot == Slot{2});
  CHECK(problemOf([&] { read(one + ",Heather mead\n999999,2\n"); }).argument() == "code");
  CHECK(problemOf([&] { read(one + ",1\n" + one + ",2\n"); }).argument() == "code");
  CHECK(problemOf([&] { read(one + ",Something Else\n"); }).argument() == "lot");
  CHECK(problemOf([&] { read(one + ",\n"); }).argument() == "lot");
  CHECK(problemOf([&] { read("111,1\n"); }).argument() == "code");
}

TEST_CASE("Tables go out with a codebook that explains every column, and read back") {
  Told told;
  const auto files = exportCsv(*told.store, told.session, told.folder / "csv");
  REQUIRE(files.size() == 4);
  const auto codebook = readCsv(files[3]);
  for (std::size_t i = 0; i < 3; ++i) {
    const auto table = readCsv(files[i]);
    const std::string name = std::vector<std::string>{"answers", "trials", "cups"}[i];
    CHECK(files[i].filename().string().find(name) != std::string::npos);
    for (const auto& column : table.columns)
      CHECK(std::ranges::any_of(codebook.rows, [&](const CsvRow& row) { return row.cells[0].find(name) != std::string::npos && row.cells[1] == column; }));
    CHECK(table.rows.size() > 10);
  }
  const auto trials = readCsv(files[1]), cups = readCsv(files[2]), answers = readCsv(files[0]);
  const RevealedSession revealed = session::revealed(*told.store, told.session);
  CHECK(trials.rows.size() == revealed.panel.size() + revealed.makers.size());
  for (const auto& row : trials.rows)
    if (!trials.text(row, "right").empty()) CHECK((trials.text(row, "chosen") == trials.text(row, "right_cups")) == (trials.text(row, "right") == "1"));
  CHECK(std::ranges::any_of(cups.rows, [&](const CsvRow& row) { return cups.text(row, "poured") == "not sure"; }));
  CHECK(std::ranges::any_of(answers.rows, [&](const CsvRow& row) { return answers.text(row, "words").find("bl\xc3\xa5" "b\xc3\xa6r") != std::string::npos; }));
}

TEST_CASE("Before the reveal only the cups of the plan go out as a table") {
  Table table;
  table.answer(1, 1);
  const auto files = exportCsv(*table.store, table.session, table.folder / "csv");
  REQUIRE(files.size() == 2);
  CHECK(readCsv(files[0]).columns == std::vector<std::string>{"place", "round", "position", "spare", "code"});
}
