#include "exchange/csv.h"
#include "refused.h"

using namespace oddglass;
using namespace oddglass::exchange;

namespace {

std::vector<std::vector<std::string>> cellsOf(const CsvTable& table) {
  std::vector<std::vector<std::string>> all;
  for (const auto& row : table.rows) all.push_back(row.cells);
  return all;
}

using Cells = std::vector<std::vector<std::string>>;

}  // namespace

// RFC 4180, section 2: rules 1, 2 (with and without a last line end), 5 to 7.
TEST_CASE("Quotes, separators and line ends are read as in RFC 4180") {
  const Cells plain{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}};
  CHECK(cellsOf(parseCsv("a,b,c\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "t.csv")) == plain);
  CHECK(cellsOf(parseCsv("a,b,c\r\naaa,bbb,ccc\r\nzzz,yyy,xxx", "t.csv")) == plain);
  CHECK(cellsOf(parseCsv("a,b,c\n\"aaa\",\"b\r\nbb\",\"c\"\"c,c\"\n", "t.csv")) == Cells{{"aaa", "b\r\nbb", "c\"c,c"}});
}

TEST_CASE("Semicolons and tabs are found, a byte order mark and empty lines are passed over") {
  CHECK(cellsOf(parseCsv("\xef\xbb\xbf" "a;b\n\n1;2\n\n", "t.csv")) == Cells{{"1", "2"}});
  CHECK(cellsOf(parseCsv("a\tb\n1\t\n", "t.csv")) == Cells{{"1", ""}});
  CHECK(cellsOf(parseCsv("a,b\n1,\n", "t.csv")) == Cells{{"1", ""}});
  CHECK(cellsOf(parseCsv("a,b\n1,", "t.csv")) == Cells{{"1", ""}});
  CHECK(cellsOf(parseCsv("\n\r\na;b\n1;2\n", "t.csv")) == Cells{{"1", "2"}});
  // The separator is that of the header row alone, whatever stands in its quotes or in later rows.
  CHECK(cellsOf(parseCsv("\"one, two, three\";b\n1;2\n", "t.csv")) == Cells{{"1", "2"}});
  CHECK(cellsOf(parseCsv("a;b\r1,5,7;2\r", "t.csv")) == Cells{{"1,5,7", "2"}});
}

TEST_CASE("Rows know their lines, also after a quoted line end") {
  const auto table = parseCsv("a,b\n\"x\ny\",1\n\n2,z\n", "t.csv");
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[0].line == 2);
  CHECK(table.rows[1].line == 5);
  const auto problem = problemOf([&] { table.whole(table.rows[1], "b", 1, 9); });
  CHECK(problem.trouble() == Trouble::badFile);
  CHECK(problem.argument() == "b");
  CHECK(said(problem, "line") == "5");
  CHECK(said(problem, "file") == "t.csv");
  CHECK(table.whole(table.rows[1], "a", 1, 9) == 2);
  CHECK(said(problemOf([&] { table.whole(table.rows[1], "a", 3, 9); }), "text") == "2 lies outside 3 to 9");
}

TEST_CASE("A wrong table is refused by line and column") {
  const auto why = [](const std::string& text) { return problemOf([&] { parseCsv(text, "t.csv"); }); };
  CHECK(why("").trouble() == Trouble::badFile);
  CHECK(why("a,a\n1,2\n").argument() == "a");
  CHECK(said(why("a,\n1,2\n"), "column") == "2");
  CHECK(said(why("a,b\n1,2\n3\n"), "line") == "3");
  CHECK(said(why("a,b\n1,2,3\n"), "line") == "2");
  CHECK(said(why("a,b\n1,\"open\n"), "line") == "2");
  CHECK(said(why("a,b\n1,\"shut\"x\n"), "line") == "2");
  CHECK(said(why("a,b\n1,2\n\xff,2\n"), "line") == "3");
  CHECK(said(why("a,b\n1,\xc0\xaf\n"), "line") == "2");
  const auto table = parseCsv("a,b\n1,2\n", "t.csv");
  CHECK(problemOf([&] { table.column("code"); }).argument() == "code");
}

TEST_CASE("Missing answers are nothing, NA and a point") {
  CHECK(isMissing(""));
  CHECK(isMissing("NA"));
  CHECK(isMissing("."));
  CHECK_FALSE(isMissing("0"));
}

TEST_CASE("No cell is taken for a formula, and numbers stay numbers") {
  CHECK(csvCell("=1+1") == "'=1+1");
  CHECK(csvCell("+44") == "'+44");
  CHECK(csvCell("-x") == "'-x");
  CHECK(csvCell("@sum") == "'@sum");
  CHECK(csvCell("\tx") == "\"'\tx\"");
  CHECK(csvCell("-5") == "-5");
  CHECK(csvCell("plain") == "plain");
  CHECK(csvCell("a \"b\", c") == "\"a \"\"b\"\", c\"");
  CHECK(csvLine({"a", "", "b;c"}) == "a,,\"b;c\"\r\n");
}

TEST_CASE("What is written is read again") {
  const std::vector<std::string> cells{"a,b", "say \"no\"", "two\nlines", "x;y", "plain", ""};
  const auto table = parseCsv(csvLine({"1c", "2c", "3c", "4c", "5c", "6c"}) + csvLine(cells), "t.csv");
  REQUIRE(table.rows.size() == 1);
  CHECK(table.rows[0].cells == cells);
}
