#include "print/pages.h"
#include "print/read_back.h"

using namespace oddglass;
using namespace oddglass::testing;

namespace {

std::string pageLine(int page, int pages) { return "page " + std::to_string(page) + " of " + std::to_string(pages); }

}  // namespace

// ISO 216 (A4, 210 by 297 mm) and ANSI/ASME Y14.1 (Letter, 8.5 by 11 inches), in points of 1/72 inch.
TEST_CASE("pages have the size of the paper, at both sizes") {
  const auto one = [](print::Pages& pages) { pages.paragraph("a line"); };
  const Paper a4("size_a4", print::pdf(print::PaperSize::a4, {"a", "", {}}, one)), letter("size_letter", print::pdf(print::PaperSize::letter, {"a", "", {}}, one));
  CHECK_THAT(a4.size(), Catch::Contains("(A4)"));
  CHECK_THAT(letter.size(), Catch::Contains("612 x 792"));
}

TEST_CASE("long text goes on over pages, and every page says which it is") {
  std::string text;
  for (int i = 1; i <= 3000; ++i) text += "w" + std::to_string(i) + ' ';
  const Paper paper("long_text", print::pdf(print::PaperSize::a4, {"long", "the foot", pageLine}, [&](print::Pages& pages) { pages.paragraph(text); }));
  REQUIRE(paper.pages() > 2);
  const std::string read = paper.text();
  for (int i = 1; i <= 3000; ++i) {
    INFO(i);
    REQUIRE(timesIn(' ' + squeezed(read) + 'w', "w" + std::to_string(i) + 'w') + timesIn(squeezed(read), "w" + std::to_string(i) + "page") >= 1);
  }
  for (int page = 1; page <= paper.pages(); ++page) {
    CHECK(timesIn(paper.text(page), pageLine(page, paper.pages())) == 1);
    CHECK(timesIn(paper.text(page), "the foot") == 1);
  }
  CHECK(beyond(paper, 595.3, 841.9, 45) == "");
}

TEST_CASE("a table keeps within the page and repeats its head, whatever is in it") {
  figures::Table table{{"drink", "what was said of it", "n"}, {}};
  for (int i = 0; i < 60; ++i) table.rows.push_back({"drink " + std::to_string(i), hostileName(), std::to_string(1000 + i)});
  std::string remark;
  for (int i = 0; i < 1200; ++i) remark += "remark" + std::to_string(i) + ' ';
  table.rows.push_back({"the long one", remark, "7"});
  for (const print::PaperSize size : {print::PaperSize::a4, print::PaperSize::letter}) {
    const bool isA4 = size == print::PaperSize::a4;
    const Paper paper(isA4 ? "table_a4" : "table_letter", print::pdf(size, {"table", "", pageLine}, [&](print::Pages& pages) { pages.table(table); }));
    for (int page = 1; page <= paper.pages(); ++page) CHECK_THAT(paper.text(page), Catch::Contains("what was said of it"));
    const std::string read = squeezed(paper.text());
    for (int i = 0; i < 60; ++i) CHECK(timesIn(read, std::to_string(1000 + i)) >= 1);
    CHECK_THAT(read, Catch::Contains("remark1199"));
    CHECK(beyond(paper, isA4 ? 595.3 : 612, isA4 ? 841.9 : 792, 45) == "");
    CHECK(overlapping(paper) == "");
  }
}

TEST_CASE("rows of a table with more columns than the page has room for stand below one another") {
  figures::Table table;
  std::vector<std::string> row;
  for (int i = 0; i < 14; ++i) {
    table.headers.push_back("column" + std::to_string(i));
    row.push_back("unbreakablewords" + std::to_string(i));
  }
  table.rows = {row, row};
  const Paper paper("stacked", print::pdf(print::PaperSize::a4, {"stacked", "", {}}, [&](print::Pages& pages) { pages.table(table); }));
  for (int i = 0; i < 14; ++i) CHECK(timesIn(paper.text(), "column" + std::to_string(i) + ": unbreakablewords" + std::to_string(i) + '\n') == 2);
  CHECK(beyond(paper, 595.3, 841.9, 45) == "");
}

TEST_CASE("fonts are in the file: Inter, or DejaVu Sans where it is not installed") {
  const Paper paper("fonts", print::pdf(print::PaperSize::a4, {"fonts", "", {}}, [](print::Pages& pages) {
    pages.heading("A heading");
    pages.paragraph("Words.");
  }));
  std::istringstream lines(paper.fonts());
  std::string line;
  std::getline(lines, line);
  const std::size_t embedded = line.find("emb");
  REQUIRE(embedded != std::string::npos);
  std::getline(lines, line);
  int fonts = 0;
  while (std::getline(lines, line)) {
    ++fonts;
    INFO(line);
    CHECK(line.substr(embedded, 3) == "yes");
    CHECK((line.find("Inter") != std::string::npos || line.find("DejaVu") != std::string::npos));
  }
  CHECK(fonts >= 1);
}

TEST_CASE("what is written is what is read: digits, signs and other scripts") {
  const std::string name = hostileName();
  const Paper paper("hostile_text", print::pdf(print::PaperSize::letter, {name, name, pageLine}, [&](print::Pages& pages) {
    pages.heading(name);
    pages.paragraph(name + "\n\t" + name);
    pages.at(100, 300, 60, name, {});
  }));
  CHECK(timesIn(squeezed(paper.text()), squeezed(name)) == 5);
  CHECK(beyond(paper, 612, 792, 45) == "");
}
